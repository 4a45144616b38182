#pragma once
#include <cstddef>

#include "app/desktop/widgets/lanes_layout.h"

class QPainter;

namespace ovenwright::widgets {

/// The columns behind the lanes of a comparison: the smallest margin on each side (of groups its mean), the largest
/// change, and which side has more margin.
void paintPairHeader(QPainter& painter, const LaneTable& table, const Theme& theme, const LanesLayout& layout);
void paintPairSummary(QPainter& painter, const LaneTable& table, std::size_t lane, const Theme& theme,
                      const LanesLayout& layout);

}  // namespace ovenwright::widgets
