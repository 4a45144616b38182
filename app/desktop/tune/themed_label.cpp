#include "app/desktop/tune/themed_label.h"

#include <QLabel>
#include <QVBoxLayout>

namespace ovenwright::desktop {

QLabel* themedLabel(const widgets::Theme& theme, const QString& text, int size_px, bool bold, const QColor& color,
                    QWidget* parent) {
  auto* label = new QLabel(text, parent);
  label->setWordWrap(true);
  label->setTextFormat(Qt::PlainText);
  label->setFont(theme.font(size_px, bold));
  label->setTextInteractionFlags(Qt::TextSelectableByMouse);
  QPalette palette = label->palette();
  palette.setColor(QPalette::WindowText, color);
  label->setPalette(palette);
  return label;
}

QVBoxLayout* emptied(QWidget* widget) {
  qDeleteAll(widget->findChildren<QWidget*>(Qt::FindDirectChildrenOnly));
  delete widget->layout();
  auto* layout = new QVBoxLayout(widget);
  layout->setContentsMargins({});
  return layout;
}

}  // namespace ovenwright::desktop
