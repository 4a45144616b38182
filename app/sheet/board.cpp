#include "app/sheet/board.h"

#include <QPainter>

#include "app/desktop/widgets/glyphs.h"
#include "app/sheet/paragraph.h"

namespace ovenwright::sheet {

void paintSmallBoard(QPainter& painter, const QRectF& rect, const widgets::BoardTable& table,
                     const widgets::Theme& theme) {
  constexpr std::size_t kMostNamed = 8;
  constexpr qreal kPad = 2, kRadius = 3.4;
  QSizeF size = table.size_mm;
  if (size.isEmpty()) size = {1.5, 1};
  size.scale(rect.size() - QSizeF(2 * kPad, 2 * kPad), Qt::KeepAspectRatio);
  const QRectF board(rect.right() - kPad - size.width(), rect.top() + kPad, size.width(), size.height());
  painter.setRenderHint(QPainter::Antialiasing);
  painter.setPen(QPen(theme.secondary, theme.line(1)));
  painter.setBrush(theme.outside);
  painter.drawRoundedRect(board, 2, 2);
  if (!table.picture.isNull()) painter.drawImage(board, table.picture);
  const QFont font = theme.font(10);
  const bool named = table.marks.size() <= kMostNamed && table.picture.isNull();
  for (const auto& mark : table.marks) {
    if (!mark.at_mm || table.size_mm.isEmpty()) continue;
    const QPointF at(board.left() + board.width() * mark.at_mm->x() / table.size_mm.width(),
                     board.bottom() - board.height() * mark.at_mm->y() / table.size_mm.height());
    widgets::paintMarker(painter, at, kRadius, theme.thermocouple(mark.style), true, theme.panel, theme);
    if (!named) continue;
    const bool leftSide = at.x() > board.center().x();
    const qreal room = (leftSide ? at.x() - board.left() : board.right() - at.x()) - kRadius - 2;
    const QRectF text(leftSide ? board.left() : at.x() + kRadius + 2, at.y() - lineHeight(font) / 2, room, 20);
    paintLine(painter, text, mark.name, font, theme.text, leftSide ? Qt::AlignRight : Qt::AlignLeft);
  }
}

}  // namespace ovenwright::sheet
