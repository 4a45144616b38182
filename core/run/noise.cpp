#include "core/run/noise.h"

#include <algorithm>
#include <cassert>
#include <cmath>
#include <cstddef>
#include <limits>
#include <vector>

#include "core/run/median.h"

namespace ovenwright::run {
namespace {

constexpr double kMedianToDeviation = 1.4826;
constexpr double kSmallestStep_C = 1e-9;

double smallest_step(std::span<const double> temperature_C) {
  double smallest = std::numeric_limits<double>::infinity();
  for (std::size_t i = 0; i + 1 < temperature_C.size(); ++i) {
    const double step = std::abs(temperature_C[i + 1] - temperature_C[i]);
    if (step > kSmallestStep_C) smallest = std::min(smallest, step);
  }
  return std::isfinite(smallest) ? smallest : 0;
}

}  // namespace

double noise_C(std::span<const double> time_s, std::span<const double> temperature_C) {
  assert(time_s.size() == temperature_C.size());
  const double rounding = smallest_step(temperature_C) / std::sqrt(12.0);
  if (temperature_C.size() < 3) return rounding;
  std::vector<double> off_line(temperature_C.size() - 2);
  for (std::size_t i = 1; i + 1 < temperature_C.size(); ++i) {
    const double b = (time_s[i] - time_s[i - 1]) / (time_s[i + 1] - time_s[i - 1]);
    const double line = (1 - b) * temperature_C[i - 1] + b * temperature_C[i + 1];
    off_line[i - 1] = std::abs(temperature_C[i] - line) / std::sqrt(1 + b * b + (1 - b) * (1 - b));
  }
  return std::max(kMedianToDeviation * median(off_line), rounding);
}

}  // namespace ovenwright::run
