#include "core/clean/track.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <limits>
#if defined(__SSE2__)
#include <emmintrin.h>
#endif

namespace ovenwright::clean {

void Track::remove(run::FaultKind kind, std::size_t first, std::size_t last) {
  const auto from = temperature_C.begin() + static_cast<std::ptrdiff_t>(first);
  const auto to = temperature_C.begin() + static_cast<std::ptrdiff_t>(last) + 1;
  stretches.push_back({kind, first, last, run::FaultAction::kRemoved, {from, to}});
  std::fill(from, to, std::numeric_limits<double>::quiet_NaN());
}

// What is not finite shows in the sum of changes, which no longer is; NaN stays out of the others.
Overview look_over(std::span<const double> values) {
  Overview overview;
  if (values.empty()) return overview;
  overview.lowest = overview.highest = values[0];
  const double* const T = values.data();
  std::size_t i = 1;
  double changes = values[0] * 0;
#if defined(__SSE2__)
  // Pairs of neighbours, two pairs beside each other; the operations take their second operand where one is NaN.
  constexpr std::size_t kLanes = 2, kAtOnce = 2 * kLanes;
  const __m128d nothing = _mm_setzero_pd(), sign = _mm_set1_pd(-0.0), first = _mm_set1_pd(T[0]);
  __m128d low[] = {first, first}, high[] = {first, first}, step[] = {nothing, nothing}, sum[] = {nothing, nothing};
  const auto look = [&](std::size_t k, std::size_t at) {
    const __m128d value = _mm_loadu_pd(T + at);
    const __m128d change = _mm_andnot_pd(sign, _mm_sub_pd(value, _mm_loadu_pd(T + at - 1)));
    sum[k] = _mm_add_pd(sum[k], change);
    low[k] = _mm_min_pd(value, low[k]);
    high[k] = _mm_max_pd(value, high[k]);
    step[k] = _mm_max_pd(change, step[k]);
  };
  constexpr std::size_t kAhead = 512;
  for (; i + kAtOnce <= values.size(); i += kAtOnce) {
    if (i + kAhead < values.size()) __builtin_prefetch(T + i + kAhead);
    look(0, i);
    look(1, i + kLanes);
  }
  const auto lanes = [](__m128d pair) {
    std::array<double, kLanes> both{};
    _mm_storeu_pd(both.data(), pair);
    return both;
  };
  const auto lows = lanes(_mm_min_pd(low[0], low[1])), highs = lanes(_mm_max_pd(high[0], high[1]));
  const auto steps = lanes(_mm_max_pd(step[0], step[1])), sums = lanes(_mm_add_pd(sum[0], sum[1]));
  overview.lowest = std::min(lows[0], lows[1]);
  overview.highest = std::max(highs[0], highs[1]);
  overview.largest_step = std::max(steps[0], steps[1]);
  changes += sums[0] + sums[1];
#endif
  for (; i < values.size(); ++i) {
    const double value = T[i], change = std::abs(value - T[i - 1]);
    changes += change;
    overview.lowest = value < overview.lowest ? value : overview.lowest;
    overview.highest = value > overview.highest ? value : overview.highest;
    overview.largest_step = change > overview.largest_step ? change : overview.largest_step;
  }
  overview.all_finite = std::isfinite(changes);
  return overview;
}

double suspicious_step_C(const Track& track) { return std::max(5.0, 6.0 * track.clock->median_interval_s()); }

}  // namespace ovenwright::clean
