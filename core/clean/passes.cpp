#include "core/clean/passes.h"

#include <algorithm>
#include <cmath>

#include "core/clean/rows.h"

namespace ovenwright::clean {
namespace {

constexpr double kLeastSpan_C = 40, kLeastAboveLowest_C = 10;
constexpr double kHot = 0.5, kCold = 0.15;
constexpr double kLookEvery_s = 2, kColdFor_s = 10;
constexpr double kPlausible_C = 500;  // a raw value beyond this says nothing about passes

/// The mean of the tracks at some moments.
struct Curve {
  std::vector<double> time_s, mean_C;  // for the search by clock the time is the row

  /// Leaves out moments at which no track has a value.
  void add(double time, double sum, int count) {
    if (count == 0) return;
    time_s.push_back(time);
    mean_C.push_back(sum / count);
  }
};

struct Levels {
  double cold_C = 0, hot_C = 0;
  bool any = false;
};

Levels levels_of(const Curve& curve) {
  if (curve.mean_C.empty()) return {};
  const auto [low, high] = std::ranges::minmax_element(curve.mean_C);
  const double span = *high - *low;
  return {*low + std::max(kLeastAboveLowest_C, kCold * span), *low + kHot * span, span >= kLeastSpan_C};
}

Curve mean_of(std::span<const Track> tracks) {
  const auto longest = std::ranges::max_element(tracks, {}, [](const Track& t) { return t.clock->size(); });
  const auto t = longest->clock->time_s();
  const double h = longest->clock->median_interval_s();
  const auto stride = h > 0 ? static_cast<std::size_t>(std::max(1.0, kLookEvery_s / h)) : std::size_t{1};
  std::vector<std::size_t> at(tracks.size());  // each track's row at or before the moment
  Curve curve;
  for (std::size_t row = 0; row < t.size(); row += stride) {
    double sum = 0;
    int count = 0;
    for (std::size_t k = 0; k < tracks.size(); ++k) {
      const auto& track = tracks[k];
      if (track.temperature_C.empty()) continue;
      if (track.clock == longest->clock) {
        at[k] = row;
      } else {
        const auto own = track.clock->time_s();
        while (at[k] + 1 < own.size() && own[at[k] + 1] <= t[row]) ++at[k];
      }
      const double value = track.temperature_C[at[k]];
      if (std::isnan(value)) continue;
      sum += value;
      ++count;
    }
    curve.add(t[row], sum, count);
  }
  return curve;
}

/// The middle of an interval of a clock, or of its longest stretch without rows where that is a clock gap.
double cut_between(const run::Clock& clock, double from_s, double to_s) {
  const auto t = clock.time_s();
  const auto first = static_cast<std::size_t>(std::ranges::lower_bound(t, from_s) - t.begin());
  const auto last = static_cast<std::size_t>(std::ranges::upper_bound(t, to_s) - t.begin()) - 1;
  const auto gaps = clock_gaps(clock, first, last);
  if (gaps.empty()) return (from_s + to_s) / 2;
  const auto longest = std::ranges::max_element(gaps, {}, [](const run::Fault& g) { return g.to_s - g.from_s; });
  return (longest->from_s + longest->to_s) / 2;
}

}  // namespace

std::vector<double> cuts_between_passes(std::span<const Track> tracks) {
  if (tracks.empty()) return {};
  const auto curve = mean_of(tracks);
  const auto levels = levels_of(curve);
  if (!levels.any) return {};
  const auto longest = std::ranges::max_element(tracks, {}, [](const Track& t) { return t.clock->size(); });
  std::vector<double> cuts;
  bool been_hot = false;
  double cold_from_s = 0, cold_to_s = 0;  // the longest cold time since the last heat
  for (std::size_t i = 0; i < curve.mean_C.size(); ++i) {
    if (curve.mean_C[i] > levels.hot_C) {
      if (been_hot && cold_to_s - cold_from_s >= kColdFor_s)
        cuts.push_back(cut_between(*longest->clock, cold_from_s, cold_to_s));
      been_hot = true;
      cold_from_s = cold_to_s = 0;
    } else if (curve.mean_C[i] <= levels.cold_C) {
      const std::size_t start = i;
      while (i + 1 < curve.mean_C.size() && curve.mean_C[i + 1] <= levels.cold_C) ++i;
      if (curve.time_s[i] - curve.time_s[start] > cold_to_s - cold_from_s) {
        cold_from_s = curve.time_s[start];
        cold_to_s = curve.time_s[i];
      }
    }
  }
  return cuts;
}

std::vector<std::size_t> parts_by_clock(std::span<const run::RawChannel> channels) {
  const auto& time_s = *channels.front().time_s;
  const auto starts = restarts(time_s);
  if (starts.size() < 2) return starts;
  Curve curve;
  for (std::size_t row = 0; row < time_s.size(); ++row) {
    double sum = 0;
    int count = 0;
    for (const auto& channel : channels) {
      if (!(std::abs(channel.temperature_C[row]) < kPlausible_C)) continue;
      sum += channel.temperature_C[row];
      ++count;
    }
    curve.add(static_cast<double>(row), sum, count);
  }
  const auto levels = levels_of(curve);
  if (!levels.any) return {0};
  const auto place = [&](std::size_t row) {
    return static_cast<std::size_t>(std::ranges::lower_bound(curve.time_s, static_cast<double>(row)) -
                                    curve.time_s.begin());
  };
  std::vector<std::size_t> parts{0};
  bool hot_before = false;  // since the last part began
  for (std::size_t k = 0; k < starts.size(); ++k) {
    const std::size_t from = place(starts[k]), to = k + 1 < starts.size() ? place(starts[k + 1]) : curve.mean_C.size();
    bool hot = false;
    for (std::size_t i = from; i < to; ++i) hot = hot || curve.mean_C[i] > levels.hot_C;
    if (k > 0 && hot_before && hot && curve.mean_C[from] <= levels.cold_C) {
      parts.push_back(starts[k]);
      hot_before = false;
    }
    hot_before = hot_before || hot;
  }
  return parts;
}

}  // namespace ovenwright::clean
