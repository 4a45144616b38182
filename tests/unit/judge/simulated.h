#pragma once
#include <cmath>
#include <string>
#include <vector>

#include "core/oven/oven.h"
#include "core/run/run.h"

// An invented oven and placement by a model that is not the estimate's: air mixed further, gaps filled by both
// neighbours, a side mass behind the placement, weaker exchange while cooling. Sampled every 0.5 s, without noise.
namespace ovenwright::judge {

inline const std::vector<double> kSetpoints{150, 160, 165, 170, 180, 192, 208, 240, 258, 262};

inline oven::Oven ten_zones() {
  oven::Oven oven;
  oven.entrance_mm = 300;
  oven.exit_mm = 400;
  for (int z = 1; z <= 10; ++z) oven.zones.push_back({std::to_string(z), oven::ZoneKind::kHeat, 350, 40});
  for (int z = 1; z <= 2; ++z) oven.zones.push_back({"C" + std::to_string(z), oven::ZoneKind::kCool, 350, 40});
  return oven;
}

inline oven::Recipe recipe_of(const std::vector<double>& setpoints_C) {
  oven::Recipe recipe;
  recipe.speed_mm_per_min = 800;
  recipe.top_C = recipe.bottom_C = setpoints_C;
  recipe.cooling_C = {70, 45};
  return recipe;
}

struct Placement {
  double tau_s, side_s;  ///< of the main mass to the air; of the side mass to the main one
};

inline run::Channel simulate(const oven::Oven& oven, const oven::Recipe& recipe, const Placement& placement,
                             double moved_C = 0, std::size_t moved_zone = 99) {
  constexpr double mixing_mm = 60, step_s = 0.05, entry_s = 10;
  const auto air = [&](double x_mm) {  // each zone a smooth box, gaps filled by both neighbours
    double sum_C = 25;
    for (std::size_t z = 0; z < oven.zones.size(); ++z) {
      const double half_gap = oven.zones[z].gap_after_mm / 2;
      const double from = oven.zone_start_mm(z) - half_gap, to = oven.zone_end_mm(z) + half_gap;
      const double share = (std::tanh((x_mm - from) / mixing_mm) - std::tanh((x_mm - to) / mixing_mm)) / 2;
      const double set_C = (z < 10 ? recipe.top_C[z] : recipe.cooling_C[z - 10]) + (z == moved_zone ? moved_C : 0);
      sum_C += share * (set_C - 25);
    }
    return sum_C;
  };
  std::vector<double> time_s, temperature_C;
  double T = 25, side = 25;
  const double cooling_mm = oven.zone_start_mm(10);
  for (int i = 0; i <= 420 * 20; ++i) {
    const double t = i * step_s, x_mm = recipe.speed_mm_per_min / 60 * (t - entry_s);
    if (i % 10 == 0) {
      time_s.push_back(t);
      temperature_C.push_back(T);
    }
    const double exchange = x_mm > cooling_mm ? 0.7 : 1;
    T += step_s * (exchange * (air(x_mm) - T) / placement.tau_s + 0.01 * (side - T));
    side += step_s * (T - side) / placement.side_s;
  }
  run::Channel channel;
  channel.name = "TC1";
  channel.number = 1;
  channel.trace = *run::Trace::make(*run::Clock::make(time_s), std::move(temperature_C));
  channel.removed_end_from_s = time_s.back();
  channel.samples = time_s.size();
  return channel;
}

}  // namespace ovenwright::judge
