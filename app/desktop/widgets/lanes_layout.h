#pragma once
#include <QFontMetricsF>
#include <QRectF>
#include <array>
#include <optional>
#include <set>
#include <vector>

#include "app/desktop/widgets/lane_scale.h"
#include "app/desktop/widgets/lane_table.h"
#include "app/desktop/widgets/theme.h"

namespace ovenwright::widgets {

/// The columns of the lanes, from left to right, for one width. Texts decide the widths, design sizes are their least.
struct LaneColumns {
  qreal left = 0, right = 0;  ///< of the rows
  qreal titleLeft = 0, titleRight = 0;
  qreal lowerRight = 0;
  LaneBody body;
  qreal upperLeft = 0;
  qreal signLeft = 0, markerCenter = 0, nameLeft = 0, nameRight = 0;
  qreal valueRight = 0, unitLeft = 0;  ///< not used where showsValue is false
  qreal marginRight = 0;
  bool showsValue = true;  ///< goes first where the body would get too narrow

  /// Of a table that compares, in place of those behind upperLeft.
  struct Worst {
    qreal signLeft = 0, markerCenter = 0, nameLeft = 0, nameRight = 0, marginRight = 0;
  };
  struct Pair {
    std::array<Worst, 2> worst;
    qreal changeLeft = 0, markerCenter = 0, nameLeft = 0, nameRight = 0, valueRight = 0, unitLeft = 0;
    qreal countsRight = 0;  ///< of groups
    qreal moreLeft = 0;     ///< its texts end at LaneColumns::marginRight
  } pair;
};

/// Where everything stands, in coordinates in which the first lane begins at y = 0; for painting, hitting, hearing.
class LanesLayout {
 public:
  /// @param width   of the whole
  /// @param height  for the lanes under the header: their pitch falls until they fit, then they are higher than that
  /// @param opened  lanes of 13 and more thermocouples that show one track each
  LanesLayout(const LaneTable& table, const Theme& theme, qreal width, qreal height,
              const std::set<std::size_t>& opened);

  qreal headerHeight() const { return m_headerHeight; }
  qreal contentHeight() const { return m_rows.empty() ? 0 : m_rows.back().bottom(); }
  const LaneColumns& columns() const { return m_columns; }
  const QRectF& row(std::size_t lane) const { return m_rows[lane]; }
  /// The body of a lane, inside its row.
  QRectF body(std::size_t lane) const;
  /// Whether a lane shows its thermocouples as a group: a box and the two ends.
  bool grouped(std::size_t lane) const;
  /// Centre of a mark, an off-scale one set back from the edge. `grouped` lanes have one line for all.
  QPointF center(std::size_t lane, std::size_t mark) const;
  qreal radius(std::size_t lane) const;

  /// Where a side of a comparison has its row of marks.
  qreal sideCenter(std::size_t lane, std::size_t side) const;

  std::optional<std::size_t> laneAt(qreal y) const;
  /// The mark that the columns behind the body tell of at `x`; empty elsewhere.
  std::optional<std::size_t> summaryMark(std::size_t lane, qreal x) const;
  /// The mark nearest to a point, within 12 px of it.
  std::optional<LaneTable::Position> markAt(const QPointF& point) const;

 private:
  void placeRows(qreal height);
  void placeColumns(qreal width);
  void placePairColumns(qreal width);  // pair_layout.cpp
  qreal rowHeight(std::size_t lane, qreal squeeze) const;

  const LaneTable& m_table;
  const Theme& m_theme;
  std::set<std::size_t> m_opened;
  qreal m_headerHeight = 0;
  qreal m_pitch = 0;
  LaneColumns m_columns;
  std::vector<QRectF> m_rows;
};

/// What the margin's column says where the value's gave way and the worst result has no margin: why there is none. A
/// number would be read as a margin there.
QString insteadOfMargin(const Lane& lane);

/// From 13 thermocouples on a lane shows the group.
constexpr std::size_t kMostTracks = 12;

}  // namespace ovenwright::widgets
