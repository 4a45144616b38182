#include <algorithm>
#include <cmath>
#include <limits>
#include <string>

#include "core/clean/suspects.h"

namespace ovenwright::clean {
namespace {

constexpr double kStuck_s = 20, kOtherMoves_C = 10;
constexpr double kArithmetic_C = 1e-9, kNearStart_C = 5, kBeenHot_C = 30;
constexpr double kAcceleration_C_per_s2 = 0.5;
constexpr std::size_t kGentleSamples = 3;

double longest_interval(std::span<const double> time_s) {
  double longest = 0;
  for (std::size_t i = 0; i + 1 < time_s.size(); ++i) longest = std::max(longest, time_s[i + 1] - time_s[i]);
  return longest;
}

/// Whether the trace spans 10 °C between two times.
bool moves(const run::Trace& trace, double from_s, double to_s) {
  const auto t = trace.time_s();
  const auto T = trace.temperature_C();
  double low = std::numeric_limits<double>::infinity(), high = -low;
  for (auto i = static_cast<std::size_t>(std::ranges::lower_bound(t, from_s) - t.begin()); i < t.size() && t[i] <= to_s;
       ++i) {
    low = std::min(low, T[i]);
    high = std::max(high, T[i]);
  }
  return high - low >= kOtherMoves_C;
}

/// The smallest step between neighbouring samples: the resolution of the trace's digits.
double resolution(const run::Trace& trace) {
  const auto T = trace.temperature_C();
  double step = std::numeric_limits<double>::infinity();
  for (std::size_t i = 0; i + 1 < T.size(); ++i)
    if (const double change = std::abs(T[i + 1] - T[i]); change > kArithmetic_C) step = std::min(step, change);
  return std::isfinite(step) ? step : 0;
}

/// The trace comes to rest and leaves again as a curve does that is flatter than its digits are fine: by no more than
/// one digit a sample and what 0.5 °C/s² make of it. Or it is back at rest near where it began, having been hot.
bool honestly_flat(const run::Trace& trace, std::size_t first, std::size_t last) {
  const auto t = trace.time_s();
  const auto T = trace.temperature_C();
  if (std::abs(T[last] - T[0]) < kNearStart_C && std::ranges::max(T.first(first + 1)) > T[last] + kBeenHot_C)
    return true;
  const double step = 1.01 * resolution(trace);
  const auto gentle = [&](std::size_t from, std::size_t to, double samples) {
    const double away_s = t[to] - t[from];
    return std::abs(T[to] - T[from]) <= samples * step + kAcceleration_C_per_s2 / 2 * away_s * away_s;
  };
  bool gentle_all = step > 0 && last + 1 < T.size();
  for (std::size_t k = 1; k <= kGentleSamples; ++k) {
    const auto samples = static_cast<double>(k);
    if (first >= k) gentle_all = gentle_all && gentle(first - k, first, samples);
    if (last + k < T.size()) gentle_all = gentle_all && gentle(last, last + k, samples);
  }
  return gentle_all;
}

/// Stretches of equal samples of 20 s or more, by first and last sample.
template <class Found>
void each_still_stretch(const run::Trace& trace, std::size_t stride, Found found) {
  const auto t = trace.time_s();
  const auto T = trace.temperature_C();
  for (std::size_t i = 0; i + stride < T.size();) {
    if (T[i] != T[i + stride]) {
      i += stride;
      continue;
    }
    std::size_t first = i, last = i;
    while (first > 0 && T[first - 1] == T[i]) --first;
    while (last + 1 < T.size() && T[last + 1] == T[i]) ++last;
    if (t[last] - t[first] >= kStuck_s) found(first, last);
    i = std::max(last + 1, i + 1);
  }
}

}  // namespace

void flag_stuck(run::Run& run) {
  const run::Clock* clock = nullptr;
  std::size_t stride = 1;
  for (auto& channel : run.channels) {
    if (!channel.trace) continue;
    const auto& trace = *channel.trace;
    if (trace.clock().get() != clock) {
      clock = trace.clock().get();
      // Any stretch of 20 s holds two neighbours of samples that are this far apart.
      const double longest_s = longest_interval(trace.time_s());
      stride = static_cast<std::size_t>(std::clamp(kStuck_s / (2 * longest_s), 1.0, 1000.0));
    }
    const auto t = trace.time_s();
    each_still_stretch(trace, stride, [&](std::size_t first, std::size_t last) {
      const bool other_moves = std::ranges::any_of(run.channels, [&](const run::Channel& other) {
        return &other != &channel && other.trace && moves(*other.trace, t[first], t[last]);
      });
      if (!other_moves || honestly_flat(trace, first, last)) return;
      auto digits = std::to_string(trace.temperature_C()[first]);
      digits.resize(digits.find('.') + 2);
      channel.faults.push_back(
          {run::FaultKind::kStuck, t[first], t[last], run::FaultAction::kFlagged, "stands at " + digits + " °C", {}});
    });
  }
}

}  // namespace ovenwright::clean
