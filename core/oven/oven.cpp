#include "core/oven/oven.h"

#include <algorithm>

namespace ovenwright::oven {

double Oven::zone_start_mm(std::size_t zone) const {
  double at_mm = entrance_mm;
  for (std::size_t i = 0; i < zone; ++i) at_mm += zones[i].length_mm + zones[i].gap_after_mm;
  return at_mm;
}

double Oven::zone_end_mm(std::size_t zone) const { return zone_start_mm(zone) + zones[zone].length_mm; }

double Oven::length_mm() const { return zone_start_mm(zones.size()) + exit_mm; }

std::size_t Oven::heating_zones() const {
  return static_cast<std::size_t>(std::ranges::count(zones, ZoneKind::kHeat, &Zone::kind));
}

double position_mm(double time_s, const Entry& entry, const Recipe& recipe, double x_mm) {
  return recipe.speed_mm_per_min / 60 * (time_s - entry.at_s) - x_mm;
}

double time_at_s(double position_mm, const Entry& entry, const Recipe& recipe, double x_mm) {
  return entry.at_s + (position_mm + x_mm) * 60 / recipe.speed_mm_per_min;
}

}  // namespace ovenwright::oven
