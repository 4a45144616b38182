#include "app/desktop/widgets/board_painter.h"

#include <QFontMetricsF>
#include <QPainter>
#include <algorithm>

#include "app/desktop/widgets/glyphs.h"
#include "app/desktop/widgets/lane_scale.h"
#include "app/desktop/widgets/wording.h"

namespace ovenwright::widgets {
namespace {

class BoardPainter {
 public:
  BoardPainter(QPainter& painter, const BoardTable& table, const Theme& theme, const BoardState& state,
               const BoardLayout& layout)
      : m_painter(painter), m_table(table), m_theme(theme), m_state(state), m_layout(layout) {}

  void paintGround() const {
    const QRectF board = m_layout.board();
    if (!m_table.picture.isNull()) {
      m_painter.save();
      m_painter.setRenderHint(QPainter::SmoothPixmapTransform);
      m_painter.drawImage(board, m_table.picture);
      m_painter.restore();
      return;
    }
    m_painter.save();
    m_painter.setRenderHint(QPainter::Antialiasing);
    m_painter.setPen(QPen(m_theme.frame, m_theme.line(1)));
    m_painter.setBrush(m_theme.window);
    m_painter.drawRoundedRect(board, m_theme.px(4), m_theme.px(4));
    m_painter.restore();
  }

  void paintHeading() const {
    const QRectF board = m_layout.board();
    const QFont font = m_theme.font(12);
    const QFontMetricsF metrics(font);
    m_painter.save();
    m_painter.setRenderHint(QPainter::Antialiasing);
    m_painter.setFont(font);
    m_painter.setPen(QPen(m_theme.secondary, m_theme.line(1)));
    const qreal y = board.top() - m_theme.px(13);
    const qreal baseline = y + metrics.capHeight() / 2;
    const qreal arrow = m_theme.px(44);
    const qreal left = board.left() + m_theme.px(8), head = m_theme.px(4);
    m_painter.drawLine(QPointF(left, y), QPointF(left + arrow, y));
    m_painter.drawPolyline(QPolygonF({{left + head, y - head}, {left, y}, {left + head, y + head}}));
    const QString into = Wording::tr("into the oven");
    m_painter.drawText(QPointF(left + arrow + m_theme.px(6), baseline), into);
    if (m_table.sizeKnown) {
      const auto mm = [](double length) { return Wording().format().limit(length, desktop::Format::Quantity::kTime); };
      const QString size = Wording::tr("%1 × %2 mm").arg(mm(m_table.size_mm.width()), mm(m_table.size_mm.height()));
      const qreal right = board.right() - metrics.horizontalAdvance(size);
      if (right > left + arrow + metrics.horizontalAdvance(into) + m_theme.px(24))
        m_painter.drawText(QPointF(right, baseline), size);
    }
    m_painter.setFont(m_theme.font(11));
    m_painter.setPen(m_theme.quiet);
    m_painter.drawText(QRectF(board.left(), board.bottom() + m_theme.px(3), board.width(), m_theme.px(18)),
                       int(Qt::AlignHCenter | Qt::AlignTop), Wording::tr("front rail"));
    m_painter.restore();
  }

  void paintLeader(const BoardLayout::Callout& callout) const {
    m_painter.save();
    m_painter.setRenderHint(QPainter::Antialiasing);
    QPen pen(ink(callout.mark, m_theme.secondary), m_theme.line(m_state.hovered == callout.mark ? 1.6 : 1));
    pen.setJoinStyle(Qt::RoundJoin);
    m_painter.setPen(pen);
    m_painter.drawPolyline(m_layout.leader(callout));
    m_painter.restore();
  }

  void paintMark(std::size_t index) const {
    const BoardMark& mark = m_table.marks[index];
    const QPointF at = m_layout.point(index);
    const qreal radius = m_layout.markRadius();
    m_painter.save();
    m_painter.setRenderHint(QPainter::Antialiasing);
    m_painter.setPen(Qt::NoPen);
    m_painter.setBrush(m_theme.panel);
    m_painter.drawEllipse(at, radius + m_theme.px(4), radius + m_theme.px(4));
    m_painter.restore();
    paintMarker(m_painter, at, radius, m_theme.thermocouple(mark.style), !(mark.mark && mark.mark->hollow),
                m_theme.panel, m_theme);
    if (mark.mark && mark.mark->signal) paintRing(m_painter, at, radius, m_theme);
  }

  void paintCallout(const BoardLayout::Callout& callout) const {
    const BoardMark& mark = m_table.marks[callout.mark];
    const QRectF rect = callout.rect;
    const bool chosen = m_state.chosen == callout.mark;
    m_painter.save();
    m_painter.setPen(
        QPen(ink(callout.mark, m_state.hovered == callout.mark ? m_theme.secondary : m_theme.frame), m_theme.line(1)));
    m_painter.setBrush(chosen ? m_theme.accentSoft : m_theme.panel);
    const qreal half = m_theme.line(1) / 2;
    m_painter.drawRect(rect.adjusted(half, half, -half, -half));
    if (chosen) m_painter.fillRect(QRectF(rect.left(), rect.top(), m_theme.px(3), rect.height()), m_theme.accent);
    const qreal pad = m_theme.px(8);
    const QRectF inside = rect.adjusted(pad, 0, -pad, 0);
    const qreal lineHeight = m_layout.showsLanes() ? rect.height() / 2 : rect.height();
    const QRectF first(inside.left(), rect.top() + (m_layout.showsLanes() ? m_theme.px(2) : 0), inside.width(),
                       lineHeight);
    paintMarker(m_painter, QPointF(inside.left() + m_theme.px(4), first.center().y()), m_theme.px(4.2),
                m_theme.thermocouple(mark.style), true, m_theme.panel, m_theme);
    const QFont bold = m_theme.bodyFont(true), body = m_theme.bodyFont();
    // One line has no lane: there the margin stands in the value's place.
    const QString right = m_layout.showsLanes() || mark.margin.isEmpty() ? mark.value : mark.margin;
    m_painter.setPen(m_theme.text);
    m_painter.setFont(body);
    m_painter.drawText(first, int(Qt::AlignRight | Qt::AlignVCenter), right);
    const qreal nameLeft = inside.left() + m_theme.px(14);
    const qreal nameRoom = inside.right() - QFontMetricsF(body).horizontalAdvance(right) - m_theme.px(8) - nameLeft;
    m_painter.setFont(bold);
    m_painter.drawText(QRectF(nameLeft, first.top(), nameRoom, first.height()), int(Qt::AlignLeft | Qt::AlignVCenter),
                       QFontMetricsF(bold).elidedText(mark.name, Qt::ElideMiddle, nameRoom));
    if (m_layout.showsLanes() && mark.mark)
      paintMiniLane(mark, QRectF(inside.left(), rect.top() + lineHeight - m_theme.px(1), inside.width(), lineHeight));
    if (m_layout.showsLanes() && !mark.note.isEmpty()) {
      m_painter.setFont(m_theme.font(11));
      m_painter.setPen(m_theme.secondary);
      m_painter.drawText(QPointF(rect.left() + m_theme.px(2),
                                 rect.bottom() + m_theme.px(2) + QFontMetricsF(m_theme.font(11)).ascent()),
                         mark.note);
    }
    m_painter.restore();
    if (chosen && m_state.focused) paintFocusFrame(m_painter, rect.adjusted(-2, -2, 2, 2), m_theme);
  }

 private:
  QColor ink(std::size_t mark, const QColor& other) const {
    const auto& result = m_table.marks[mark].mark;
    return result && result->signal ? m_theme.signal : other;
  }

  void paintMiniLane(const BoardMark& mark, const QRectF& rect) const {
    const bool bold = mark.mark->verdict != judge::Verdict::kPass;
    const QFont font = m_theme.bodyFont(bold);
    const QString text = mark.margin;
    const qreal textWidth = std::max(m_theme.px(44), QFontMetricsF(font).horizontalAdvance(text));
    m_painter.setFont(font);
    m_painter.setPen(mark.mark->signal ? m_theme.signal : m_theme.text);
    m_painter.drawText(rect, int(Qt::AlignRight | Qt::AlignVCenter), text);
    const LaneBody body{rect.left(), rect.right() - textWidth - m_theme.px(8)};
    const qreal y = rect.center().y(), tick = m_theme.px(5.5);
    m_painter.setRenderHint(QPainter::Antialiasing);
    m_painter.setPen(QPen(m_theme.frame, m_theme.line(1.2)));
    m_painter.drawLine(QPointF(body.left, y), QPointF(body.right, y));
    QPen limit(m_theme.text, m_theme.line(1.4));
    limit.setCapStyle(Qt::FlatCap);
    m_painter.setPen(limit);
    if (mark.hasLower) m_painter.drawLine(QPointF(body.x(-1), y - tick), QPointF(body.x(-1), y + tick));
    if (mark.hasUpper) m_painter.drawLine(QPointF(body.x(1), y - tick), QPointF(body.x(1), y + tick));
    if (mark.mark->state != LaneMark::State::kValue || !mark.mark->s) return;
    const ThermocoupleStyle dot{mark.mark->signal ? m_theme.signal : m_theme.secondary, Marker::kCircle, {}, 1.6};
    const qreal radius = m_theme.px(3.8);
    const qreal x = std::clamp(body.x(*mark.mark->s), body.left + radius, body.right - radius);
    paintMarker(m_painter, QPointF(x, y), radius, dot, !mark.mark->hollow, m_theme.panel, m_theme);
  }

  QPainter& m_painter;
  const BoardTable& m_table;
  const Theme& m_theme;
  const BoardState& m_state;
  const BoardLayout& m_layout;
};

}  // namespace

void paintBoard(QPainter& painter, const QRectF& area, const BoardTable& table, const Theme& theme,
                const BoardState& state) {
  const BoardLayout layout(table, theme, area);
  const BoardPainter board(painter, table, theme, state, layout);
  painter.save();
  painter.setClipRect(area, Qt::IntersectClip);
  board.paintGround();
  board.paintHeading();
  for (const auto& callout : layout.callouts())
    if (callout.placed) board.paintLeader(callout);
  for (const auto& callout : layout.callouts())
    if (callout.placed) board.paintMark(callout.mark);
  for (const auto& callout : layout.callouts()) board.paintCallout(callout);
  painter.restore();
}

}  // namespace ovenwright::widgets
