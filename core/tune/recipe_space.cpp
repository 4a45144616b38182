#include "core/tune/recipe_space.h"

#include <algorithm>
#include <cmath>

namespace ovenwright::tune {

RecipeSpace::RecipeSpace(const oven::Oven& oven, const oven::Recipe& now, const Freedom& freedom)
    : now_(now), split_(freedom.split_sides), zones_(now.top_C.size()) {
  const std::size_t n = (split_ ? 2 : 1) * zones_ + 1;
  const auto x = vector(now);
  lower_.assign(n, 0);
  upper_.assign(n, 0);
  std::vector<const oven::Zone*> heating;
  for (const auto& zone : oven.zones)
    if (zone.kind == oven::ZoneKind::kHeat) heating.push_back(&zone);
  for (std::size_t i = 0; i + 1 < n; ++i) {
    const std::size_t z = i % zones_;
    const bool locked =
        z < heating.size() && std::ranges::find(freedom.locked_zones, heating[z]->name) != freedom.locked_zones.end();
    // A recipe that was run outside the oven's limits may stay where it is.
    const auto limit = oven.limits.setpoint_C.value_or(std::array{now.top_C[z] - 50, now.top_C[z] + 50});
    // Sides that move together: the bottom keeps its distance, and its limits.
    const double apart = split_ ? 0 : now.bottom_C[z] - now.top_C[z];
    lower_[i] = locked ? x[i] : std::min(x[i], std::max(limit[0], limit[0] - apart));
    upper_[i] = locked ? x[i] : std::max(x[i], std::min(limit[1], limit[1] - apart));
    if (freedom.reach_C) {
      lower_[i] = std::max(lower_[i], x[i] - *freedom.reach_C);
      upper_[i] = std::min(upper_[i], x[i] + *freedom.reach_C);
    }
  }
  const auto speed =
      oven.limits.speed_mm_per_min.value_or(std::array{0.7 * now.speed_mm_per_min, 1.3 * now.speed_mm_per_min});
  lower_[n - 1] =
      freedom.keep_speed ? x[n - 1] : std::max(speed[0], freedom.min_speed_mm_per_min) / kSpeedUnit_mm_per_min;
  upper_[n - 1] = freedom.keep_speed ? x[n - 1] : std::max(speed[1] / kSpeedUnit_mm_per_min, lower_[n - 1]);

  if (freedom.reach_speed && !freedom.keep_speed) {
    const double reach = *freedom.reach_speed * x[n - 1];
    const double least = lower_[n - 1], most = upper_[n - 1];
    lower_[n - 1] = std::clamp(x[n - 1] - reach, least, most);
    upper_[n - 1] = std::clamp(x[n - 1] + reach, least, most);
  }

  for (std::size_t side = 0; side < (split_ ? 2 : 1); ++side)
    for (std::size_t z = 0; z + 1 < zones_; ++z)
      neighbours_.push_back({side * zones_ + z, side * zones_ + z + 1, z + 2 == zones_});

  // x[a] − x[b] + plus within ± most, or what the recipe was run with.
  const auto row = [&](std::size_t a, std::size_t b, double most, double plus = 0) {
    LinearProgram::Row out;
    out.weights.assign(n, 0.0);
    out.weights[a] = 1;
    out.weights[b] = -1;
    most = std::max(most, std::abs(x[a] - x[b] + plus));
    out.lower = -most - plus;
    out.upper = most - plus;
    rows_.push_back(std::move(out));
  };
  if (oven.limits.step_between_zones_C)
    for (std::size_t z = 0; z + 1 < zones_; ++z) {
      row(z, z + 1, *oven.limits.step_between_zones_C);
      const auto apart = [&](std::size_t k) { return now.bottom_C[k] - now.top_C[k]; };
      if (split_)
        row(zones_ + z, zones_ + z + 1, *oven.limits.step_between_zones_C);
      else if (apart(z) != apart(z + 1))
        row(z, z + 1, *oven.limits.step_between_zones_C, apart(z) - apart(z + 1));
    }
  if (split_ && oven.limits.top_bottom_difference_C)
    for (std::size_t z = 0; z < zones_; ++z) row(z, zones_ + z, *oven.limits.top_bottom_difference_C);
}

std::vector<double> RecipeSpace::vector(const oven::Recipe& recipe) const {
  std::vector<double> x = recipe.top_C;
  if (split_) x.insert(x.end(), recipe.bottom_C.begin(), recipe.bottom_C.end());
  x.push_back(recipe.speed_mm_per_min / kSpeedUnit_mm_per_min);
  return x;
}

oven::Recipe RecipeSpace::recipe(const std::vector<double>& x) const {
  oven::Recipe out = now_;
  for (std::size_t z = 0; z < zones_; ++z) {
    out.top_C[z] = x[z];
    out.bottom_C[z] = split_ ? x[zones_ + z] : now_.bottom_C[z] + (x[z] - now_.top_C[z]);
  }
  const double speed = x.back() * kSpeedUnit_mm_per_min, whole = std::round(speed);
  out.speed_mm_per_min = std::abs(speed - whole) < 1e-6 ? whole : speed;  // the unit leaves the last digits
  return out;
}

std::vector<double> RecipeSpace::rounded(std::vector<double> x) const {
  for (std::size_t i = 0; i < x.size(); ++i) {
    const double unit = i == speed() ? kSpeedUnit_mm_per_min : 1;
    double whole = std::round(x[i] * unit);
    if (whole < lower_[i] * unit - 1e-6) whole = std::ceil(lower_[i] * unit - 1e-6);
    if (whole > upper_[i] * unit + 1e-6) whole = std::floor(upper_[i] * unit + 1e-6);
    if (upper_[i] - lower_[i] < 1e-9) continue;  // locked: as it was run
    x[i] = whole / unit;
  }
  // Rounding may have pushed two neighbours a degree too far apart: the one that can gives way.
  for (const auto& row : rows_) {
    const auto over = [&] {
      double sum = 0;
      for (std::size_t i = 0; i < x.size(); ++i) sum += row.weights[i] * x[i];
      return sum > row.upper + 1e-6 ? 1 : sum < row.lower - 1e-6 ? -1 : 0;
    };
    for (int tries = 0; over() != 0 && tries < 4; ++tries) {
      const int too_far = over();
      for (std::size_t i = 0; i < x.size(); ++i) {
        const double moved = x[i] - too_far * row.weights[i];
        if (row.weights[i] == 0 || moved < lower_[i] - 1e-6 || moved > upper_[i] + 1e-6) continue;
        x[i] = moved;
        break;
      }
    }
  }
  return x;
}

bool RecipeSpace::allows(const std::vector<double>& x) const {
  for (std::size_t i = 0; i < x.size(); ++i)
    if (x[i] < lower_[i] - 1e-6 || x[i] > upper_[i] + 1e-6) return false;
  return std::ranges::all_of(rows_, [&](const LinearProgram::Row& row) {
    double sum = 0;
    for (std::size_t i = 0; i < x.size(); ++i) sum += row.weights[i] * x[i];
    return sum >= row.lower - 1e-6 && sum <= row.upper + 1e-6;
  });
}

}  // namespace ovenwright::tune
