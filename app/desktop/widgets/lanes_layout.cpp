#include "app/desktop/widgets/lanes_layout.h"

#include <algorithm>
#include <cmath>

#include "app/desktop/widgets/wording.h"

namespace ovenwright::widgets {
namespace {

constexpr qreal kTrackInset = 2.9;  // above and below the tracks
constexpr qreal kPitchUpTo6 = 4.6;
constexpr qreal kPitchUpTo12 = 3.2;
constexpr qreal kSmallestPitch = 3.1;
constexpr qreal kPair = 34, kPairBoard = 25, kLowestPair = 23, kLowestPairBoard = 20;  // rows with A over B
constexpr qreal kReach = 12;  // how near a click must be to a mark

/// Of more than 12 a lane is opened to read it one by one, and scrolls: there the pitch is wide and stays so.
qreal naturalPitch(std::size_t tracks) { return tracks <= 6 || tracks > kMostTracks ? kPitchUpTo6 : kPitchUpTo12; }

qreal smallestPitch(std::size_t tracks) { return tracks > kMostTracks ? kPitchUpTo6 : kSmallestPitch; }

}  // namespace

LanesLayout::LanesLayout(const LaneTable& table, const Theme& theme, qreal width, qreal height,
                         const std::set<std::size_t>& opened)
    : m_table(table), m_theme(theme), m_opened(opened) {
  m_headerHeight = std::ceil(std::max(theme.px(19), QFontMetricsF(theme.font(11, true)).height() + theme.px(4)));
  if (table.pair)
    placePairColumns(width);
  else
    placeColumns(width);
  placeRows(height);
}

/// @param squeeze  0: as designed, 1: as low as it goes
qreal LanesLayout::rowHeight(std::size_t lane, qreal squeeze) const {
  // Letters do not fill the line of their font: rows of one mark may be a little lower than that.
  const qreal least = 0.92 * QFontMetricsF(m_theme.bodyFont(true)).height();
  if (m_table.pair) {
    const bool board = m_table.lanes[lane].board;
    const qreal natural = board ? kPairBoard : kPair, lowest = board ? kLowestPairBoard : kLowestPair;
    return std::max(m_theme.px(natural + (lowest - natural) * squeeze), least);
  }
  if (m_table.lanes[lane].board) return std::max(m_theme.px(16 - 2 * squeeze), least);
  const std::size_t tracks = std::max<std::size_t>(m_table.tracks, 1);
  if (grouped(lane)) return m_theme.px(48 - 8 * squeeze);
  if (tracks == 1) return std::max(m_theme.px(22), least);
  const qreal natural = naturalPitch(tracks);
  const qreal pitch = natural + (smallestPitch(tracks) - natural) * squeeze;
  return std::max({m_theme.px(double(tracks) * pitch + 2 * kTrackInset), m_theme.px(22), least});
}

void LanesLayout::placeRows(qreal height) {
  const auto total = [this](qreal squeeze) {
    qreal sum = 0;
    for (std::size_t lane = 0; lane < m_table.lanes.size(); ++lane) sum += rowHeight(lane, squeeze);
    return sum;
  };
  // Every row's height falls on a straight line with the squeeze until it meets its least: bisect on the sum.
  qreal squeeze = 0;
  if (total(0) > height) {
    qreal low = 0, high = 1;
    constexpr int kSteps = 12;
    for (int step = 0; step < kSteps; ++step) (total((low + high) / 2) > height ? low : high) = (low + high) / 2;
    squeeze = high;
  }
  const qreal natural = naturalPitch(m_table.tracks);
  m_pitch = m_theme.px(natural + (smallestPitch(m_table.tracks) - natural) * squeeze);
  qreal y = 0;
  for (std::size_t lane = 0; lane < m_table.lanes.size(); ++lane) {
    const qreal bottom = y + rowHeight(lane, squeeze);
    m_rows.emplace_back(m_columns.left, std::round(y), m_columns.right - m_columns.left,
                        std::round(bottom) - std::round(y));
    y = bottom;
  }
}

void LanesLayout::placeColumns(qreal width) {
  const auto px = [this](qreal design) { return m_theme.px(design); };
  const QFontMetricsF body(m_theme.bodyFont());
  const QFontMetricsF bold(m_theme.bodyFont(true));
  const QFontMetricsF note(m_theme.font(11));
  const QFontMetricsF limit(m_theme.font(13));
  const QFontMetricsF unit(m_theme.font(11));
  const QFontMetricsF header(m_theme.font(11, true));
  qreal titles = 0, lower = 0, upper = 0, names = 0, values = 0, units = 0, margins = 0, noMargins = 0;
  for (const Lane& lane : m_table.lanes) {
    titles = std::max(titles, bold.horizontalAdvance(lane.title) +
                                  (lane.note.isEmpty() ? 0 : px(8) + note.horizontalAdvance(lane.note)));
    lower = std::max(lower, limit.horizontalAdvance(lane.lower));
    upper = std::max(upper, limit.horizontalAdvance(lane.upper));
    if (!lane.marks.empty()) names = std::max(names, bold.horizontalAdvance(lane.marks[lane.worst.mark].place));
    qreal value = body.horizontalAdvance(lane.worst.value);
    if (!lane.worst.uncertainty.isEmpty())
      value += body.horizontalAdvance(QStringLiteral(" ± ") + lane.worst.uncertainty);
    values = std::max(values, value);
    units = std::max(units, unit.horizontalAdvance(lane.worst.unit));
    margins = std::max(margins, bold.horizontalAdvance(lane.worst.margin));
    if (lane.worst.margin.isEmpty()) noMargins = std::max(noMargins, bold.horizontalAdvance(insteadOfMargin(lane)));
  }
  margins = std::max({margins, header.horizontalAdvance(Wording::tr("Margin")), px(44)});
  values = std::max({values, header.horizontalAdvance(Wording::tr("Value")), px(74)});
  names = std::max({names, px(84)});
  const qreal lowerWidth = std::max(px(46), lower + px(14));
  const qreal upperWidth = std::max(px(46), upper + px(14));
  const qreal signWidth = px(18 * 1.7);
  qreal fixedSummary = signWidth + px(4) + px(14) + px(6) + px(10) + margins + px(12);
  const qreal valueWidth = px(8) + values + px(6) + std::max(units, px(22));
  const qreal inset = px(16);
  qreal leastBody = px(240);

  LaneColumns& c = m_columns;
  c.left = 0;
  c.right = width;
  const auto bodyWith = [&](qreal title, qreal name, bool value) {
    return width - inset - title - lowerWidth - upperWidth - fixedSummary - name - (value ? valueWidth : 0);
  };
  const qreal natural = std::max(px(170), titles);
  qreal title = natural;
  qreal name = names;
  const auto give = [&](qreal& column, qreal least) {
    const qreal missing = leastBody - bodyWith(title, name, c.showsValue);
    if (missing > 0 && column > least) column = std::max(least, column - missing);
  };
  // Room is found in this order: titles down to their design width, the value column, then titles and names.
  give(title, px(170));
  c.showsValue = bodyWith(title, name, true) >= leastBody;
  if (!c.showsValue) {
    title = natural;
    fixedSummary += std::max(0.0, noMargins - margins);  // there "not reached" stands in the margin's place
    give(title, std::min(natural, px(110)));
    give(name, std::min(names, px(60)));
    give(name, 0);        // the marker still says which
    leastBody = px(170);  // large text in a narrow window: a name that can be read first
    give(title, px(80));
  }

  c.titleLeft = inset;
  c.titleRight = inset + title;
  c.lowerRight = c.titleRight + lowerWidth - px(6);
  c.body.left = std::round(c.titleRight + lowerWidth);
  c.marginRight = width - px(12);
  const qreal summary = fixedSummary + name + (c.showsValue ? valueWidth : 0);
  c.body.right = std::round(std::max(c.body.left + 1, width - summary - upperWidth));
  c.upperLeft = c.body.right + px(7);
  c.signLeft = c.body.right + upperWidth;
  c.markerCenter = c.signLeft + signWidth + px(4) + px(7);
  c.nameLeft = c.markerCenter + px(7) + px(6);
  c.nameRight = c.nameLeft + name;
  c.valueRight = c.nameRight + px(8) + values;
  c.unitLeft = c.valueRight + px(6);
}

QString insteadOfMargin(const Lane& lane) {
  if (lane.marks.empty()) return {};
  switch (lane.marks[lane.worst.mark].state) {
    case LaneMark::State::kNotReached:
      return lane.worst.value;
    case LaneMark::State::kUndetermined:
      return Wording::verdict(judge::Verdict::kUndetermined);
    case LaneMark::State::kValue:
      break;
  }
  return QStringLiteral("–");
}

QRectF LanesLayout::body(std::size_t lane) const {
  const QRectF& row = m_rows[lane];
  const qreal gap = m_theme.px(1);
  return QRectF(QPointF(m_columns.body.left, row.top() + gap), QPointF(m_columns.body.right, row.bottom() - gap));
}

bool LanesLayout::grouped(std::size_t lane) const {
  return !m_table.pair && !m_table.lanes[lane].board && m_table.lanes[lane].marks.size() > kMostTracks &&
         !m_opened.contains(lane);
}

qreal LanesLayout::radius(std::size_t lane) const {
  const bool tight =
      m_table.tracks > 6 && (m_table.tracks <= kMostTracks || m_table.pair) && !m_table.lanes[lane].board;
  return m_theme.px(tight ? 2.7 : 3.5);
}

QPointF LanesLayout::center(std::size_t lane, std::size_t mark) const {
  const LaneMark& m = m_table.lanes[lane].marks[mark];
  const LaneBody& body = m_columns.body;
  const QRectF& row = m_rows[lane];
  qreal y = row.center().y();
  if (m_table.pair) {
    y = sideCenter(lane, m.side);
  } else if (grouped(lane)) {
    y = row.bottom() - m_theme.px(16);
  } else if (!m_table.lanes[lane].board) {
    const qreal middle = (double(m_table.tracks) - 1) / 2;
    y += (double(m.track) - middle) * m_pitch;
  }
  if (m.state == LaneMark::State::kNotReached) return {body.left + m_theme.px(19), y};
  double s = m.s.value_or(0);
  if (m.state == LaneMark::State::kUndetermined && m.range) s = ((*m.range)[0] + (*m.range)[1]) / 2;
  const qreal setBack = m_theme.px(16);
  if (s > kLaneReach) return {body.right - setBack, y};
  if (s < -kLaneReach) return {body.left + setBack, y};
  // An arrow that says "or more" needs its room before the edge.
  if (m.atLeast) return {std::min(body.x(s), body.right - setBack), y};
  return {body.x(s), y};
}

qreal LanesLayout::sideCenter(std::size_t lane, std::size_t side) const {
  const QRectF& row = m_rows[lane];
  return row.center().y() + (side == 0 ? -1 : 1) * row.height() * 0.23;
}

std::optional<std::size_t> LanesLayout::summaryMark(std::size_t lane, qreal x) const {
  const Lane& l = m_table.lanes[lane];
  if (l.marks.empty()) return std::nullopt;
  if (!m_table.pair) return x >= m_columns.signLeft ? std::optional(l.worst.mark) : std::nullopt;
  const auto& columns = m_columns.pair;
  if (x < columns.worst[0].signLeft) return std::nullopt;
  if (x < columns.worst[1].signLeft) return l.pair.worst[0].mark;
  return x < columns.changeLeft ? l.pair.worst[1].mark : l.pair.change;
}

std::optional<std::size_t> LanesLayout::laneAt(qreal y) const {
  const auto row = std::ranges::find_if(m_rows, [y](const QRectF& r) { return y >= r.top() && y < r.bottom(); });
  if (row == m_rows.end()) return std::nullopt;
  return static_cast<std::size_t>(row - m_rows.begin());
}

std::optional<LaneTable::Position> LanesLayout::markAt(const QPointF& point) const {
  const auto lane = laneAt(point.y());
  if (!lane) return std::nullopt;
  std::optional<LaneTable::Position> nearest;
  qreal best = m_theme.px(kReach);
  for (std::size_t mark = 0; mark < m_table.lanes[*lane].marks.size(); ++mark) {
    const QPointF away = center(*lane, mark) - point;
    const qreal distance = std::hypot(away.x(), away.y());
    if (distance <= best) {
      best = distance;
      nearest = LaneTable::Position{*lane, mark};
    }
  }
  return nearest;
}

}  // namespace ovenwright::widgets
