#include <algorithm>
#include <cmath>
#include <limits>
#include <optional>
#include <vector>

#include "core/clean/suspects.h"
#include "core/run/median.h"
#include "core/units/phrase.h"

namespace ovenwright::clean {
namespace {

constexpr std::size_t kMoments = 2000;
constexpr double kLookEvery_s = 5;
constexpr double kOthersRise_C = 30, kFalls_C = 10, kAtLeast_s = 10;
constexpr double kCorrelation = -0.8;
constexpr double kAloneFalls_C = 40, kAloneBelow_C = -15;
constexpr std::size_t kStartSamples = 5;

/// Temperatures of all traces above their starts at the same moments; NaN where a trace has none.
struct Rises {
  std::vector<double> time_s;
  std::vector<std::vector<double>> of_C;  // by channel
};

double start_of(const run::Trace& trace) {
  const auto T = trace.temperature_C();
  std::vector<double> first(T.begin(), T.begin() + static_cast<std::ptrdiff_t>(std::min(kStartSamples, T.size())));
  return run::median(first);
}

Rises rises_of(const run::Run& run) {
  Rises rises;
  const double step_s = std::max(run.sample_interval_s, (run.to_s - run.from_s) / kMoments);
  for (double t = run.from_s; t <= run.to_s && step_s > 0; t += step_s) rises.time_s.push_back(t);
  for (const auto& channel : run.channels) {
    auto& rise = rises.of_C.emplace_back(rises.time_s.size(), std::numeric_limits<double>::quiet_NaN());
    if (!channel.trace) continue;
    const double start_C = start_of(*channel.trace);
    std::ranges::transform(rises.time_s, rise.begin(), [&](double t) { return channel.trace->at(t) - start_C; });
  }
  return rises;
}

/// The median of the other traces at each moment, without those that fall as no board does.
std::vector<double> others(const Rises& rises, const std::vector<bool>& falling, std::size_t channel) {
  std::vector<double> middle(rises.time_s.size(), std::numeric_limits<double>::quiet_NaN());
  std::vector<double> now;
  for (std::size_t i = 0; i < middle.size(); ++i) {
    now.clear();
    for (std::size_t k = 0; k < rises.of_C.size(); ++k)
      if (k != channel && !falling[k] && !std::isnan(rises.of_C[k][i])) now.push_back(rises.of_C[k][i]);
    if (!now.empty()) middle[i] = run::median(now);
  }
  return middle;
}

double correlation(const std::vector<double>& a, const std::vector<double>& b, std::size_t n) {
  double count = 0, sa = 0, sb = 0;
  for (std::size_t i = 0; i < n; ++i)
    if (!std::isnan(a[i]) && !std::isnan(b[i])) ++count, sa += a[i], sb += b[i];
  double ab = 0, aa = 0, bb = 0;
  for (std::size_t i = 0; i < n; ++i) {
    if (std::isnan(a[i]) || std::isnan(b[i])) continue;
    const double da = a[i] - sa / count, db = b[i] - sb / count;
    ab += da * db, aa += da * da, bb += db * db;
  }
  return aa > 0 && bb > 0 ? ab / std::sqrt(aa * bb) : 0;
}

/// Only such a trace can be one. It stays there for long, so a look every 5 s will do.
bool gets_below_its_start(const run::Channel& channel) {
  if (!channel.trace) return false;
  const double least_C = start_of(*channel.trace) - kFalls_C;
  const auto T = channel.trace->temperature_C();
  const auto stride = channel.trace->clock()->rows_in(kLookEvery_s);
  for (std::size_t i = 0; i < T.size(); i += stride)
    if (T[i] < least_C) return true;
  return false;
}

struct Interval {
  double from_s = 0, to_s = 0;
};

/// The longest time in which the trace lies below its start and the others above theirs.
std::optional<Interval> against(const Rises& rises, const std::vector<double>& own, const std::vector<double>& rest) {
  std::optional<Interval> longest;
  for (std::size_t i = 0; i < own.size(); ++i) {
    if (!(own[i] < -kFalls_C && rest[i] > kOthersRise_C)) continue;
    const std::size_t first = i;
    while (i + 1 < own.size() && own[i + 1] < -kFalls_C && rest[i + 1] > kOthersRise_C) ++i;
    if (!longest || rises.time_s[i] - rises.time_s[first] > longest->to_s - longest->from_s)
      longest = Interval{rises.time_s[first], rises.time_s[i]};
  }
  return longest && longest->to_s - longest->from_s >= kAtLeast_s ? longest : std::nullopt;
}

bool falls_alone(const std::vector<double>& own, const run::Trace& trace) {
  const auto [low, high] = std::ranges::minmax(trace.temperature_C());
  return *std::ranges::min_element(own) < -kAloneFalls_C && low < kAloneBelow_C && high - start_of(trace) < kFalls_C;
}

}  // namespace

void flag_reversed_polarity(run::Run& run) {
  if (std::ranges::none_of(run.channels, gets_below_its_start)) return;  // most runs end here
  const auto rises = rises_of(run);
  const auto valid = std::ranges::count_if(run.channels, [](const run::Channel& c) { return c.trace.has_value(); });
  // What falls far below its start and the room is reversed whatever the others do: alone, all of them, or most.
  std::vector<bool> falling;
  for (std::size_t k = 0; k < run.channels.size(); ++k) {
    const auto& trace = run.channels[k].trace;
    falling.push_back(trace && falls_alone(rises.of_C[k], *trace));
  }
  const bool all_fall = std::ranges::count(falling, true) == valid;
  for (std::size_t k = 0; k < run.channels.size(); ++k) {
    auto& channel = run.channels[k];
    if (!channel.trace) continue;
    const auto& own = rises.of_C[k];
    std::optional<Interval> reversed;
    if (falling[k]) {
      reversed = Interval{channel.trace->time_s().front(), channel.trace->time_s().back()};
    } else if (valid > 1) {
      const auto rest = others(rises, falling, k);
      const auto peak = static_cast<std::size_t>(
          std::ranges::max_element(rest, [](double a, double b) { return !std::isnan(b) && !(a >= b); }) -
          rest.begin());
      reversed = against(rises, own, rest);
      if (rest[peak] > kOthersRise_C && own[peak] < -kFalls_C && correlation(own, rest, peak + 1) < kCorrelation)
        reversed = Interval{channel.trace->time_s().front(), channel.trace->time_s().back()};
    }
    if (reversed)
      channel.faults.push_back({run::FaultKind::kReversedPolarity,
                                reversed->from_s,
                                reversed->to_s,
                                run::FaultAction::kFlagged,
                                say(all_fall ? Phrase::kFallsThroughout : Phrase::kFallsAsOthersRise),
                                {}});
  }
}

}  // namespace ovenwright::clean
