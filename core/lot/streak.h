#pragma once
#include <cstddef>
#include <optional>

#include "core/lot/chart.h"

namespace ovenwright::lot {

/// Points in a row on one side of the centre.
struct Streak {
  bool above = false;
  std::size_t first = 0;  ///< index into the chart's points
  std::size_t points = 0;
};

/// The streak that ends at the chart's last point; a point on the centre is on no side. Absent without a point, and
/// where the last one is on the centre.
/// Cost: O(n).
std::optional<Streak> last_streak(const Chart& chart);

/// Whether a rule looks for points in a row on one side of the centre: the fourth of Western Electric, the second of
/// Nelson.
bool is_of_one_side(RuleSet set, int rule);

}  // namespace ovenwright::lot
