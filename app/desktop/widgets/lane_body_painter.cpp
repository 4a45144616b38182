#include "app/desktop/widgets/lane_body_painter.h"

#include <QPainter>
#include <algorithm>
#include <cmath>

#include "app/desktop/widgets/glyphs.h"

namespace ovenwright::widgets {
namespace {

constexpr qreal kFaded = 0.35;
constexpr qreal kTick = 0.55;  // of a run behind its group's mean

QPen flat(const QColor& color, qreal width) {
  QPen pen(color, width);
  pen.setCapStyle(Qt::FlatCap);
  return pen;
}

}  // namespace

ThermocoupleStyle LaneBodyPainter::style(std::size_t lane, const LaneMark& mark) const {
  if (m_table.lanes[lane].board) return {m_theme.secondary, Marker::kSquare, {}, 1.6};
  return m_theme.thermocouple(mark.style);
}

void LaneBodyPainter::paintBody(std::size_t lane) {
  paintGround(lane);
  paintGuardBands(lane);
  paintLimits(lane);
}

void LaneBodyPainter::paintMarks(std::size_t lane) {
  m_painter.save();
  // The ring of a mark at the edge reaches into the gap before the limits.
  const qreal around = m_theme.px(7);
  m_painter.setClipRect(m_layout.body(lane).adjusted(-around, -m_theme.px(4), around, m_theme.px(4)),
                        Qt::IntersectClip);
  if (m_layout.grouped(lane)) {
    paintGroup(lane);
  } else {
    if (m_table.pair) paintSides(lane);
    if (m_table.groups) paintTicks(lane);
    // The highlighted thermocouple and what is out come last, so that nothing covers them.
    const auto& marks = m_table.lanes[lane].marks;
    const auto last = [&](const LaneMark& mark) {
      return mark.signal || (m_state.highlighted && mark.channel == m_state.highlighted);
    };
    for (const bool front : {false, true})
      for (std::size_t mark = 0; mark < marks.size(); ++mark)
        if (last(marks[mark]) == front) paintMark(lane, mark);
  }
  m_painter.restore();
}

void LaneBodyPainter::paintGround(std::size_t lane) {
  const Lane& l = m_table.lanes[lane];
  const QRectF body = m_layout.body(lane);
  const LaneBody& scale = m_layout.columns().body;
  QRectF inside = body;
  if (l.hasLower) inside.setLeft(scale.x(-1));
  if (l.hasUpper) inside.setRight(scale.x(1));
  m_painter.fillRect(body, m_theme.outside);
  m_painter.fillRect(inside, chosen(lane) ? m_theme.accentSoft : m_theme.panel);
  m_painter.setPen(QPen(m_theme.hairline, m_theme.line(1)));
  m_painter.setBrush(Qt::NoBrush);
  const qreal half = m_theme.line(1) / 2;
  m_painter.drawRect(body.adjusted(half, half, -half, -half));
}

void LaneBodyPainter::paintGuardBands(std::size_t lane) {
  const Lane& l = m_table.lanes[lane];
  const QRectF body = m_layout.body(lane);
  if (l.neverPasses) {
    paintDotGrid(m_painter, body, m_theme);
    return;
  }
  const LaneBody& scale = m_layout.columns().body;
  for (const auto& band : {l.lowerGuard, l.upperGuard}) {
    if (!band) continue;
    paintDotGrid(
        m_painter,
        QRectF(QPointF(scale.clampedX((*band)[0]), body.top()), QPointF(scale.clampedX((*band)[1]), body.bottom())),
        m_theme);
  }
}

void LaneBodyPainter::paintLimits(std::size_t lane) {
  const Lane& l = m_table.lanes[lane];
  const QRectF body = m_layout.body(lane);
  const LaneBody& scale = m_layout.columns().body;
  m_painter.save();
  QPen dots(m_theme.frame, m_theme.line(1));
  dots.setCapStyle(Qt::FlatCap);
  dots.setDashPattern({1, 3});
  m_painter.setPen(dots);
  m_painter.drawLine(QPointF(scale.center(), body.top()), QPointF(scale.center(), body.bottom()));
  m_painter.setRenderHint(QPainter::Antialiasing);
  QPen limit = flat(m_theme.text, m_theme.line(1.6));
  if (l.informative) limit.setDashPattern({3 / 1.6, 2 / 1.6});
  m_painter.setPen(limit);
  if (l.hasLower) m_painter.drawLine(QPointF(scale.x(-1), body.top()), QPointF(scale.x(-1), body.bottom()));
  if (l.hasUpper) m_painter.drawLine(QPointF(scale.x(1), body.top()), QPointF(scale.x(1), body.bottom()));
  m_painter.restore();
}

/// A line from the first to the last mark of each side.
void LaneBodyPainter::paintSides(std::size_t lane) {
  const Lane& l = m_table.lanes[lane];
  m_painter.save();
  m_painter.setRenderHint(QPainter::Antialiasing);
  m_painter.setPen(flat(m_theme.secondary, m_theme.line(1)));
  for (const std::size_t side : {0, 1}) {
    qreal first = 1e9, last = -1e9;
    for (std::size_t i = 0; i < l.marks.size(); ++i) {
      if (l.marks[i].side != side || !l.marks[i].s) continue;
      const qreal x = m_layout.center(lane, i).x();
      first = std::min(first, x);
      last = std::max(last, x);
    }
    const qreal y = m_layout.sideCenter(lane, side);
    if (last > first) m_painter.drawLine(QPointF(first, y), QPointF(last, y));
  }
  m_painter.restore();
}

/// The runs behind the means of groups: those that are out higher, and over the others.
void LaneBodyPainter::paintTicks(std::size_t lane) {
  const LaneBody& scale = m_layout.columns().body;
  const Lane& l = m_table.lanes[lane];
  for (const bool out : {false, true})
    for (const LaneMark& mark : l.marks) {
      const bool pale = m_state.highlighted && mark.channel && mark.channel != m_state.highlighted;
      const qreal y = m_layout.sideCenter(lane, mark.side), half = m_theme.px(out ? 6 : 4.5);
      QColor ink = out ? m_theme.signal : style(lane, mark).color;
      ink.setAlphaF(float(pale ? kFaded * kTick : out ? 1 : kTick));
      m_painter.setPen(flat(ink, m_theme.line(1.1)));
      for (const LaneTick& tick : mark.ticks) {
        if ((tick.signal && !l.informative) != out) continue;
        const qreal x = std::round(scale.clampedX(tick.s) - 0.5) + 0.5;
        m_painter.drawLine(QPointF(x, y - half), QPointF(x, y + half));
      }
    }
}

void LaneBodyPainter::paintMark(std::size_t lane, std::size_t index) {
  const Lane& l = m_table.lanes[lane];
  const LaneMark& mark = l.marks[index];
  const QPointF center = m_layout.center(lane, index);
  const qreal radius = m_layout.radius(lane);
  const ThermocoupleStyle look = style(lane, mark);
  const QColor ink = mark.signal ? m_theme.signal : look.color;
  const QColor ground = chosen(lane) ? m_theme.accentSoft : m_theme.panel;
  m_painter.save();
  m_painter.setRenderHint(QPainter::Antialiasing);
  if (m_state.highlighted && mark.channel && mark.channel != m_state.highlighted)
    m_painter.setOpacity(m_painter.opacity() * kFaded);

  if (mark.state == LaneMark::State::kNotReached) {
    m_painter.setPen(flat(l.informative ? look.color : m_theme.signal, m_theme.line(1.8)));
    const qreal arm = radius * 1.1;
    m_painter.drawLine(center - QPointF(arm, arm), center + QPointF(arm, arm));
    m_painter.drawLine(center - QPointF(arm, -arm), center + QPointF(arm, -arm));
  } else if (mark.state == LaneMark::State::kUndetermined) {
    paintUndetermined(mark, center, look.color);
  } else if (mark.s) {
    if (mark.measured && !m_layout.grouped(lane)) paintMeasured(mark, center);
    const bool offScale = std::abs(*mark.s) > kLaneReach;
    if (offScale)
      paintEdgeArrow(mark, center.y());
    else if (!m_table.pair || mark.atLeast)
      paintWhisker(mark, center, ink);
    paintMarker(m_painter, center, radius, look, !mark.hollow, ground, m_theme);
    if (mark.signal && !mark.mean) paintRing(m_painter, center, radius, m_theme);
  }
  m_painter.restore();
}

void LaneBodyPainter::paintMeasured(const LaneMark& mark, const QPointF& center) {
  const qreal x = m_layout.columns().body.clampedX(*mark.measured), tick = m_theme.px(2.6);
  m_painter.setPen(flat(m_theme.frame, m_theme.line(0.8)));  // pale, so that it is no whisker
  m_painter.drawLine(QPointF(x, center.y()), center);
  m_painter.setPen(flat(m_theme.quiet, m_theme.line(1.6)));
  m_painter.drawLine(QPointF(x, center.y() - tick), QPointF(x, center.y() + tick));
}

void LaneBodyPainter::paintWhisker(const LaneMark& mark, const QPointF& center, const QColor& ink) {
  const LaneBody& scale = m_layout.columns().body;
  m_painter.setPen(flat(ink, m_theme.line(1.3)));
  const qreal cap = m_theme.px(5.2) / 2;
  const qreal y = center.y();
  qreal low = center.x(), high = center.x();
  if (mark.whisker) {
    low = std::min(scale.clampedX((*mark.whisker)[0]), center.x());
    high = scale.clampedX((*mark.whisker)[1]);
  }
  if (mark.atLeast) high = std::min(scale.right - m_theme.px(2), std::max(high, center.x() + m_theme.px(20)));
  m_painter.drawLine(QPointF(low, y), QPointF(high, y));
  if (mark.caps && mark.whisker) {
    if ((*mark.whisker)[0] >= -kLaneReach) m_painter.drawLine(QPointF(low, y - cap), QPointF(low, y + cap));
    if (!mark.atLeast && (*mark.whisker)[1] <= kLaneReach)
      m_painter.drawLine(QPointF(high, y - cap), QPointF(high, y + cap));
  }
  if (mark.atLeast) {
    const qreal head = m_theme.px(3.6);
    m_painter.drawPolyline(QPolygonF({{high - head, y - head}, {high, y}, {high - head, y + head}}));
  }
}

void LaneBodyPainter::paintUndetermined(const LaneMark& mark, const QPointF& center, const QColor& ink) {
  const LaneBody& scale = m_layout.columns().body;
  const QFont font = m_theme.font(m_table.tracks > 6 ? 9 : 11, true);
  const QFontMetricsF metrics(font);
  const qreal gap = metrics.horizontalAdvance(u'?') * 0.8;
  if (mark.range) {
    QPen dotted = flat(ink, m_theme.line(1.4));
    dotted.setDashPattern({1.6, 1.6});
    m_painter.setPen(dotted);
    const qreal low = scale.clampedX((*mark.range)[0]);
    const qreal high = scale.clampedX((*mark.range)[1]);
    if (low < center.x() - gap) m_painter.drawLine(QPointF(center.x() - gap, center.y()), QPointF(low, center.y()));
    if (high > center.x() + gap) m_painter.drawLine(QPointF(center.x() + gap, center.y()), QPointF(high, center.y()));
  } else if (mark.atLeast) {
    m_painter.setPen(flat(ink, m_theme.line(1.3)));
    const qreal tip = std::min(scale.right - m_theme.px(2), center.x() + m_theme.px(20));
    const qreal head = m_theme.px(3);
    m_painter.drawLine(QPointF(center.x() + gap, center.y()), QPointF(tip, center.y()));
    m_painter.drawPolyline(
        QPolygonF({{tip - head, center.y() - head}, {tip, center.y()}, {tip - head, center.y() + head}}));
  }
  m_painter.setFont(font);
  m_painter.setPen(ink);
  const QRectF glyph = metrics.tightBoundingRect(QStringLiteral("?"));
  m_painter.drawText(center - glyph.center(), QStringLiteral("?"));
}

void LaneBodyPainter::paintEdgeArrow(const LaneMark& mark, qreal y) {
  const LaneBody& scale = m_layout.columns().body;
  const bool right = *mark.s > 0;
  const QPointF tip(right ? scale.right - m_theme.px(1) : scale.left + m_theme.px(1), y);
  const QColor ink = mark.signal ? m_theme.signal : m_theme.secondary;
  m_painter.fillPath(arrowHead(tip, m_theme.px(7), m_theme.px(4), right), ink);
}

void LaneBodyPainter::paintGroup(std::size_t lane) {
  const Lane& l = m_table.lanes[lane];
  const LaneBody& scale = m_layout.columns().body;
  std::vector<std::size_t> order;
  for (std::size_t i = 0; i < l.marks.size(); ++i)
    if (l.marks[i].s && l.marks[i].state == LaneMark::State::kValue) order.push_back(i);
  std::ranges::sort(order, {}, [&](std::size_t i) { return *l.marks[i].s; });
  m_painter.save();
  m_painter.setRenderHint(QPainter::Antialiasing);
  if (!order.empty()) {
    const qreal y = m_layout.center(lane, order.front()).y();
    const auto at = [&](std::size_t rank) { return scale.clampedX(*l.marks[order[rank]].s); };
    const std::size_t n = order.size();
    m_painter.setPen(flat(m_theme.secondary, m_theme.line(1)));
    m_painter.drawLine(QPointF(at(0), y), QPointF(at(n - 1), y));
    // The middle half: from the first to the third quarter of the ranks.
    const qreal half = m_theme.px(5);
    m_painter.fillRect(QRectF(QPointF(at(n / 4), y - half), QPointF(at((3 * n) / 4), y + half)), m_theme.frame);
    for (std::size_t rank = 1; rank + 1 < n; ++rank) {
      const LaneMark& mark = l.marks[order[rank]];
      const bool strong = m_state.highlighted && mark.channel == m_state.highlighted;
      m_painter.setPen(strong        ? flat(m_theme.thermocouple(mark.style).color, m_theme.line(2))
                       : mark.signal ? flat(m_theme.signal, m_theme.line(1.4))
                                     : flat(m_theme.secondary, m_theme.line(1)));
      const qreal tick = m_theme.px(8);
      m_painter.drawLine(QPointF(at(rank), y - tick), QPointF(at(rank), y + tick));
    }
    paintGroupEnds(lane, order.front(), order.back());
  }
  for (std::size_t i = 0; i < l.marks.size(); ++i)
    if (l.marks[i].state != LaneMark::State::kValue) paintMark(lane, i);
  m_painter.restore();
}

std::array<qreal, 2> placeNames(const std::array<qreal, 2>& centers, const std::array<qreal, 2>& widths, qreal left,
                                qreal right, qreal gap) {
  std::array<qreal, 2> at;
  for (const std::size_t i : {0, 1}) at[i] = std::max(left, std::min(centers[i] - widths[i] / 2, right - widths[i]));
  const qreal over = at[0] + widths[0] + gap - at[1];
  if (over <= 0) return at;
  // Both give way alike, as far as the edges let them.
  at[0] = std::max(left, std::min(at[0] - over / 2, right - widths[1] - gap - widths[0]));
  at[1] = at[0] + widths[0] + gap;
  return at;
}

/// The first and the last mark with their names over them, cut where both have not enough room.
void LaneBodyPainter::paintGroupEnds(std::size_t lane, std::size_t first, std::size_t last) {
  const LaneBody& scale = m_layout.columns().body;
  const QFont font = m_theme.font(11);
  const QFontMetricsF metrics(font);
  const auto& marks = m_table.lanes[lane].marks;
  const qreal gap = m_theme.px(8), left = scale.left + m_theme.px(2), right = scale.right - m_theme.px(2);
  const std::array<std::size_t, 2> ends{first, last};
  std::array<QString, 2> texts;
  std::array<qreal, 2> centers, widths;
  for (const std::size_t i : {0, 1}) {
    if (i == 0 || last != first) paintMark(lane, ends[i]);
    texts[i] = metrics.elidedText(marks[ends[i]].place, Qt::ElideMiddle, (right - left - gap) / 2);
    centers[i] = m_layout.center(lane, ends[i]).x();
    widths[i] = metrics.horizontalAdvance(texts[i]);
  }
  const auto at = placeNames(centers, widths, left, right, gap);
  m_painter.setFont(font);
  for (const std::size_t i : {0, 1}) {
    if (i == 1 && last == first) break;
    m_painter.setPen(marks[ends[i]].signal ? m_theme.signal : m_theme.secondary);
    m_painter.drawText(QPointF(at[i], m_layout.body(lane).top() + m_theme.px(3) + metrics.ascent()), texts[i]);
  }
}

}  // namespace ovenwright::widgets
