#include "core/lot/streak.h"

namespace ovenwright::lot {

std::optional<Streak> last_streak(const Chart& chart) {
  if (chart.points.empty()) return std::nullopt;
  const auto side = [&](std::size_t i) {
    const double away = chart.points[i].value - chart.centre;
    return away > 0 ? 1 : away < 0 ? -1 : 0;
  };
  const std::size_t last = chart.points.size() - 1;
  if (side(last) == 0) return std::nullopt;
  std::size_t first = last;
  while (first > 0 && side(first - 1) == side(last)) --first;
  return Streak{side(last) > 0, first, last - first + 1};
}

bool is_of_one_side(RuleSet set, int rule) { return rule == (set == RuleSet::kWesternElectric ? 4 : 2); }

}  // namespace ovenwright::lot
