#include "app/desktop/window/drop_frame.h"

#include <QCoreApplication>
#include <QPainter>

#include "app/desktop/widgets/theme.h"

namespace ovenwright::desktop {

DropFrame::DropFrame(QWidget* parent) : QWidget(parent) {
  setAttribute(Qt::WA_TransparentForMouseEvents);
  hide();
}

void DropFrame::showFor(int logs) {
  m_text = QCoreApplication::translate("DropFrame", "Drop to read %n log(s)", nullptr, logs);
  setGeometry(parentWidget()->rect());
  raise();
  show();
}

void DropFrame::paintEvent(QPaintEvent*) {
  const auto theme = widgets::Theme::fromPalette(palette(), font());
  QPainter painter(this);
  const double width = theme.px(2);
  painter.setPen(QPen(theme.accent, width));
  painter.drawRect(QRectF(rect()).adjusted(width / 2, width / 2, -width / 2, -width / 2));
  painter.setFont(theme.font(15, true));
  const QFontMetricsF metrics(painter.font());
  QRectF plate(0, 0, metrics.horizontalAdvance(m_text) + theme.px(32), metrics.height() + theme.px(16));
  plate.moveCenter(rect().center());
  painter.setPen(Qt::NoPen);
  painter.setBrush(theme.accent);
  painter.drawRoundedRect(plate, theme.px(3), theme.px(3));
  painter.setPen(theme.onAccent);
  painter.drawText(plate, Qt::AlignCenter, m_text);
}

}  // namespace ovenwright::desktop
