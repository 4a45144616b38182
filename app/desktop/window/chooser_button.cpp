#include "app/desktop/window/chooser_button.h"

#include <QFontMetrics>
#include <QStyle>
#include <QStyleOptionButton>

namespace ovenwright::desktop {

ChooserButton::ChooserButton(const QString& what, QWidget* parent) : QPushButton(parent), m_what(what) {
  setSizePolicy(QSizePolicy::Maximum, QSizePolicy::Fixed);
  setAutoDefault(false);
}

void ChooserButton::setChosen(const QString& text) {
  m_chosen = text;
  setAccessibleName(tr("%1: %2").arg(m_what, text));
  updateGeometry();
  fit();
}

QSize ChooserButton::sizeFor(const QString& text) const {
  QStyleOptionButton option;
  initStyleOption(&option);
  option.text = text;
  const QSize content(fontMetrics().horizontalAdvance(text) +
                          style()->pixelMetric(QStyle::PM_MenuButtonIndicator, &option, this) +
                          fontMetrics().averageCharWidth(),
                      fontMetrics().height());
  return style()->sizeFromContents(QStyle::CT_PushButton, &option, content, this);
}

QSize ChooserButton::sizeHint() const { return sizeFor(m_chosen); }
QSize ChooserButton::minimumSizeHint() const { return sizeFor(QStringLiteral("MMMM")).boundedTo(sizeHint()); }

void ChooserButton::resizeEvent(QResizeEvent* event) {
  QPushButton::resizeEvent(event);
  fit();
}

void ChooserButton::changeEvent(QEvent* event) {
  QPushButton::changeEvent(event);
  if (event->type() == QEvent::FontChange || event->type() == QEvent::StyleChange) fit();
}

void ChooserButton::fit() {
  const int missing = sizeHint().width() - width();
  QString shown = m_chosen;
  if (missing > 0) {
    shown = fontMetrics().elidedText(m_chosen, Qt::ElideMiddle, fontMetrics().horizontalAdvance(m_chosen) - missing);
  }
  const bool cut = shown != m_chosen;
  setText(shown.replace(u'&', QStringLiteral("&&")));
  setToolTip(cut ? m_chosen : QString());
}

}  // namespace ovenwright::desktop
