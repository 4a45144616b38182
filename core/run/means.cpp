#include "core/run/means.h"

#include <algorithm>
#include <array>
#include <cassert>

namespace ovenwright::run {

std::vector<double> means_over(const Trace& trace, double from_s, double step_s, std::size_t count) {
  const auto t = trace.time_s();
  const auto T = trace.temperature_C();
  assert(step_s > 0 && from_s >= t.front());
  constexpr std::size_t kLanes = 4;
  std::vector<double> means(count);
  auto next = static_cast<std::size_t>(std::ranges::upper_bound(t, from_s) - t.begin());
  double at_s = from_s, at_C = trace.at(from_s);
  for (std::size_t k = 0; k < count; ++k) {
    const double end_s = from_s + static_cast<double>(k + 1) * step_s;
    double area = 0;
    const auto go_to = [&](double to_s, double to_C) {
      area += (to_s - at_s) * (to_C + at_C) / 2;
      at_s = to_s;
      at_C = to_C;
    };
    if (next < t.size() && t[next] <= end_s) {
      go_to(t[next], T[next]);
      ++next;
    }
    // Where many samples lie within the step: four sums beside each other.
    if (next + kLanes <= t.size() && t[next + kLanes - 1] <= end_s) {
      std::array<double, kLanes> twice{};
      for (; next + kLanes <= t.size() && t[next + kLanes - 1] <= end_s; next += kLanes) {
        for (std::size_t lane = 0; lane < kLanes; ++lane)
          twice[lane] += (t[next + lane] - t[next + lane - 1]) * (T[next + lane] + T[next + lane - 1]);
      }
      area += (twice[0] + twice[1] + twice[2] + twice[3]) / 2;
      at_s = t[next - 1];
      at_C = T[next - 1];
    }
    for (; next < t.size() && t[next] <= end_s; ++next) go_to(t[next], T[next]);
    if (at_s < end_s && next < t.size())
      go_to(end_s, T[next - 1] + (T[next] - T[next - 1]) * (end_s - t[next - 1]) / (t[next] - t[next - 1]));
    means[k] = area / step_s;
  }
  return means;
}

}  // namespace ovenwright::run
