#pragma once
#include <algorithm>
#include <cmath>

namespace ovenwright::measure {

/// A common error of a whole trace: T becomes gain·T + shift + sign·max(floor, fraction·|T|). All errors used here
/// keep the order of temperatures, so what is found by comparing samples (the peak, a block's extremes) stays in place.
struct Perturbation {
  double gain = 1;
  double shift_C = 0;
  double sign = 0;
  double floor_C = 0;
  double fraction = 0;

  double operator()(double temperature_C) const noexcept {
    return gain * temperature_C + shift_C + sign * std::max(floor_C, fraction * std::abs(temperature_C));
  }
  friend bool operator==(const Perturbation&, const Perturbation&) = default;
  /// Whether it is one straight line, a·T + b with a > 0, over all temperatures from lowest to highest.
  bool straight(double lowest_C, double highest_C) const noexcept {
    if (sign == 0 || fraction == 0) return true;
    const double bend_C = floor_C / fraction;
    return (lowest_C >= -bend_C && highest_C <= bend_C) || lowest_C >= bend_C || highest_C <= -bend_C;
  }
};

}  // namespace ovenwright::measure
