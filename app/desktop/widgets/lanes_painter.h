#pragma once
#include <QRectF>
#include <optional>
#include <set>

#include "app/desktop/widgets/lane_table.h"
#include "app/desktop/widgets/lanes_layout.h"
#include "app/desktop/widgets/theme.h"

class QPainter;

namespace ovenwright::widgets {

/// What is chosen and pointed at, and how far the lanes are scrolled.
struct LanesState {
  std::optional<LaneTable::Position> chosen;
  std::optional<std::size_t> highlighted;  ///< channel drawn at full strength, the others at 35 %
  std::set<std::size_t> opened;            ///< lanes of 13 and more thermocouples shown track by track
  qreal scroll = 0;
  bool focused = false;
  bool dimmed = false;  ///< at half strength while a new answer is awaited
};

/// The header and the lanes into `area`; rows that do not fit are cut at its lower edge.
void paintLanes(QPainter& painter, const QRectF& area, const LaneTable& table, const Theme& theme,
                const LanesState& state = {});
/// The same with a layout that is there already, made for the size of `area`.
void paintLanes(QPainter& painter, const QRectF& area, const LaneTable& table, const Theme& theme,
                const LanesState& state, const LanesLayout& layout);

/// A line of text on the baseline of a row's body text, cut in its middle where it does not fit.
void paintLaneText(QPainter& painter, const Theme& theme, const QFont& font, const QRectF& rect,
                   Qt::Alignment alignment, const QString& what);

}  // namespace ovenwright::widgets
