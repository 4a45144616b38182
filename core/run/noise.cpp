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
constexpr double kEven = 1e-9, kEvenShare = 0.81649658092772603;  // 1/√(1 + 1/4 + 1/4)

}  // namespace

double resolution_C(std::span<const double> temperature_C) {
  constexpr double kNone = std::numeric_limits<double>::infinity();
  double smallest = kNone;
  for (std::size_t i = 0; i + 1 < temperature_C.size(); ++i) {
    const double step = std::abs(temperature_C[i + 1] - temperature_C[i]);
    const double counted = step > kSmallestStep_C ? step : kNone;
    smallest = counted < smallest ? counted : smallest;
  }
  return smallest < kNone ? smallest : 0;
}

double noise_C(std::span<const double> time_s, std::span<const double> temperature_C) {
  assert(time_s.size() == temperature_C.size());
  const double rounding = resolution_C(temperature_C) / std::sqrt(12.0);
  if (temperature_C.size() < 3) return rounding;
  std::vector<double> off_line(temperature_C.size() - 2);
  for (std::size_t i = 1; i + 1 < temperature_C.size(); ++i) {
    const double before_s = time_s[i] - time_s[i - 1], behind_s = time_s[i + 1] - time_s[i];
    if (std::abs(behind_s - before_s) <= kEven * behind_s) {  // b = 1/2 but for the clock's last digits
      off_line[i - 1] = std::abs(temperature_C[i] - (temperature_C[i - 1] + temperature_C[i + 1]) / 2) * kEvenShare;
      continue;
    }
    const double b = before_s / (before_s + behind_s);
    const double line = (1 - b) * temperature_C[i - 1] + b * temperature_C[i + 1];
    off_line[i - 1] = std::abs(temperature_C[i] - line) / std::sqrt(1 + b * b + (1 - b) * (1 - b));
  }
  return std::max(kMedianToDeviation * median(off_line), rounding);
}

}  // namespace ovenwright::run
