#include <QFontMetricsF>
#include <algorithm>
#include <cmath>

#include "app/desktop/widgets/board_painter.h"

namespace ovenwright::widgets {
namespace {

constexpr qreal kInset = 16;
constexpr qreal kHeading = 26;  // the line over the board
constexpr qreal kFooting = 20;  // the line under it
constexpr qreal kGutter = 56;   // between the board and the call-outs
constexpr qreal kCalloutWidth = 152;
constexpr qreal kCalloutHeight = 46;
constexpr qreal kOneLine = 24;
constexpr qreal kNote = 16;
constexpr qreal kBetween = 8;

/// Moves sorted positions apart to at least `gap(i)` between i and i + 1, keeping them within low and high.
template <class Gap>
void spread(std::vector<qreal>& at, qreal low, qreal high, const Gap& gap) {
  for (std::size_t i = 0; i < at.size(); ++i) at[i] = std::max(at[i], i == 0 ? low : at[i - 1] + gap(i - 1));
  for (std::size_t i = at.size(); i-- > 0;) at[i] = std::min(at[i], i + 1 == at.size() ? high : at[i + 1] - gap(i));
}

}  // namespace

BoardLayout::BoardLayout(const BoardTable& table, const Theme& theme, const QRectF& area)
    : m_table(table), m_theme(theme), m_area(area) {
  const QFontMetricsF bold(theme.bodyFont(true)), body(theme.bodyFont());
  qreal width = theme.px(kCalloutWidth);
  for (const BoardMark& mark : table.marks)
    width = std::max(
        width, theme.px(32) + bold.horizontalAdvance(mark.name) + theme.px(12) + body.horizontalAdvance(mark.value));
  width = std::min(width, area.width() * 0.3);
  const QRectF inside = area.adjusted(theme.px(kInset), theme.px(kInset) / 2, -theme.px(kInset), -theme.px(kInset) / 2);
  const QRectF room =
      inside.adjusted(width + theme.px(kGutter), theme.px(kHeading), -width - theme.px(kGutter), -theme.px(kFooting));
  const QSizeF size =
      table.size_mm.scaled(QSizeF(std::max(1.0, room.width()), std::max(1.0, room.height())), Qt::KeepAspectRatio);
  m_board = QRectF(
      QPointF(std::round(room.center().x() - size.width() / 2), std::round(room.center().y() - size.height() / 2)),
      size);

  assignSides();
  m_showsLanes = std::max(sideHeight(true), sideHeight(false)) <= inside.height();
  const qreal gutter = theme.px(kGutter);
  placeSide(true, QRectF(m_board.left() - gutter - width, inside.top(), width, inside.height()));
  placeSide(false, QRectF(m_board.right() + gutter, inside.top(), width, inside.height()));
}

qreal BoardLayout::markRadius() const { return m_theme.px(6); }

QPointF BoardLayout::point(std::size_t mark) const {
  const QPointF at = *m_table.marks[mark].at_mm;
  // The leading edge is at the left; the front rail, nearest to who stands at the oven, is at the bottom.
  return {m_board.left() + at.x() / m_table.size_mm.width() * m_board.width(),
          m_board.bottom() - at.y() / m_table.size_mm.height() * m_board.height()};
}

/// Left half to the left, as long as neither side has more than its half and two of all.
void BoardLayout::assignSides() {
  std::vector<std::size_t> order;
  for (std::size_t i = 0; i < m_table.marks.size(); ++i) order.push_back(i);
  const auto x = [this](std::size_t i) {
    return m_table.marks[i].at_mm ? m_table.marks[i].at_mm->x() : m_table.size_mm.width() / 2;
  };
  std::ranges::stable_sort(order, {}, x);
  const int n = int(order.size());
  int left = int(std::ranges::count_if(order, [&](std::size_t i) { return x(i) < m_table.size_mm.width() / 2; }));
  left = std::clamp(left, (n - 2) / 2, (n + 3) / 2);
  for (int rank = 0; rank < n; ++rank) {
    const std::size_t mark = order[std::size_t(rank)];
    m_callouts.push_back({mark, rank < left, {}, 0, m_table.marks[mark].at_mm.has_value()});
  }
  const auto y = [this](const Callout& c) { return c.placed ? point(c.mark).y() : m_board.bottom() + 1; };
  std::ranges::stable_sort(m_callouts, {}, y);
}

qreal BoardLayout::calloutHeight(const Callout& callout) const {
  const QFontMetricsF body(m_theme.bodyFont(true));
  if (!m_showsLanes) return std::max(m_theme.px(kOneLine), body.height() + m_theme.px(4));
  return std::max(m_theme.px(kCalloutHeight), 2 * body.height() + m_theme.px(12)) +
         (m_table.marks[callout.mark].note.isEmpty() ? 0 : m_theme.px(kNote));
}

qreal BoardLayout::sideHeight(bool left) const {
  qreal sum = 0;
  for (const Callout& callout : m_callouts)
    if (callout.left == left) sum += calloutHeight(callout) + m_theme.px(kBetween);
  return sum;
}

void BoardLayout::placeSide(bool left, const QRectF& column) {
  std::vector<Callout*> side;
  for (Callout& callout : m_callouts)
    if (callout.left == left) side.push_back(&callout);
  if (side.empty()) return;
  const qreal between = m_showsLanes ? m_theme.px(kBetween) : m_theme.px(2);
  const auto noteHeight = [this](const Callout& c) {
    return m_showsLanes && !m_table.marks[c.mark].note.isEmpty() ? m_theme.px(kNote) : 0;
  };
  const auto boxHeight = [&](const Callout& c) { return calloutHeight(c) - noteHeight(c); };
  std::vector<qreal> tops, leaders;
  for (const Callout* c : side) {
    const qreal y = c->placed ? point(c->mark).y() : column.bottom();
    tops.push_back(y - boxHeight(*c) / 2);
    leaders.push_back(y);
  }
  spread(tops, column.top(), column.bottom() - calloutHeight(*side.back()),
         [&](std::size_t i) { return calloutHeight(*side[i]) + between; });
  spread(leaders, m_board.top(), std::max(m_board.bottom(), leaders.back()),
         [this](std::size_t) { return m_theme.px(3); });
  for (std::size_t i = 0; i < side.size(); ++i) {
    side[i]->rect = QRectF(column.left(), std::round(tops[i]), column.width(), boxHeight(*side[i]));
    side[i]->leader_y = leaders[i];
  }
}

QPolygonF BoardLayout::leader(const Callout& callout) const {
  const QPointF mark = point(callout.mark);
  const qreal end = callout.left ? callout.rect.right() : callout.rect.left();
  const qreal turn = callout.left ? m_board.left() - m_theme.px(12) : m_board.right() + m_theme.px(12);
  const qreal middle = callout.rect.center().y();
  if (std::abs(middle - callout.leader_y) < 1) return QPolygonF(QList<QPointF>{{mark.x(), middle}, {end, middle}});
  return QPolygonF({{mark.x(), callout.leader_y}, {turn, callout.leader_y}, {end, middle}});
}

std::optional<std::size_t> BoardLayout::markAt(const QPointF& at) const {
  for (const Callout& callout : m_callouts)
    if (callout.rect.contains(at)) return callout.mark;
  std::optional<std::size_t> nearest;
  qreal best = m_theme.px(12);
  for (const Callout& callout : m_callouts) {
    if (!callout.placed) continue;
    const QPointF away = point(callout.mark) - at;
    if (const qreal distance = std::hypot(away.x(), away.y()); distance <= best) {
      best = distance;
      nearest = callout.mark;
    }
  }
  return nearest;
}

}  // namespace ovenwright::widgets
