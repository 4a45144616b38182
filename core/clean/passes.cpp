#include "core/clean/passes.h"

#include <algorithm>
#include <cmath>
#include <optional>

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
  const auto stride = longest->clock->rows_in(kLookEvery_s);
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

/// Mean change of the tracks on a clock from a row to the next; 0 where none has both values.
double change_at(std::span<const Track> tracks, const run::Clock& clock, std::size_t row) {
  double sum = 0;
  int count = 0;
  for (const auto& track : tracks) {
    if (track.clock.get() != &clock || track.temperature_C.empty()) continue;
    const double change = track.temperature_C[row + 1] - track.temperature_C[row];
    if (std::isnan(change)) continue;
    sum += change;
    ++count;
  }
  return count > 0 ? sum / count : 0;
}

/// The row behind which the traces jump, all of them within one interval and far beyond what they do around it: one run
/// ends there and the next begins though the clock goes on. The largest jump between the rows.
std::optional<std::size_t> jump_between(std::span<const Track> tracks, const run::Clock& clock, std::size_t first,
                                        std::size_t last) {
  constexpr double kLeast_C = 1, kBesides = 3;
  std::optional<std::size_t> jump;
  double largest = kLeast_C, before = 0;
  double here = first < last ? change_at(tracks, clock, first) : 0;
  for (std::size_t row = first; row < last; ++row) {
    const double behind = row + 1 < last ? change_at(tracks, clock, row + 1) : 0;
    const double beside = std::max(std::abs(before), std::abs(behind));
    if (std::abs(here) >= largest && std::abs(here) > kBesides * beside) {
      jump = row;
      largest = std::abs(here);
    }
    before = here;
    here = behind;
  }
  return jump;
}

/// Where between two moments of a cold time a log is cut: in the longest stretch without rows if that is a clock gap,
/// else where the traces jump, else in the middle. Gap and jump may also stand at the very ends, between the last hot
/// moment looked at and the first cold one.
double cut_between(std::span<const Track> tracks, const run::Clock& clock, double from_s, double to_s, double look_s) {
  const auto t = clock.time_s();
  const auto at_or_before = [t](double time_s) {
    const auto behind = static_cast<std::size_t>(std::ranges::upper_bound(t, time_s) - t.begin());
    return behind > 0 ? behind - 1 : 0;
  };
  std::size_t first = at_or_before(from_s);
  const std::size_t last = std::min(at_or_before(to_s + look_s), t.size() - 1);
  const double begun_s = from_s - look_s;
  while (first > 0 && t[first] > begun_s) --first;
  const auto gaps = clock_gaps(clock, first, last);
  if (!gaps.empty()) {
    const auto longest = std::ranges::max_element(gaps, {}, [](const run::Fault& g) { return g.to_s - g.from_s; });
    return (longest->from_s + longest->to_s) / 2;
  }
  if (const auto jump = jump_between(tracks, clock, first, last)) return (t[*jump] + t[*jump + 1]) / 2;
  return (from_s + to_s) / 2;
}

}  // namespace

std::vector<double> cuts_between_passes(std::span<const Track> tracks) {
  if (tracks.empty()) return {};
  const auto curve = mean_of(tracks);
  const auto levels = levels_of(curve);
  if (!levels.any) return {};
  const auto longest = std::ranges::max_element(tracks, {}, [](const Track& t) { return t.clock->size(); });
  const double look_s = std::max(kLookEvery_s, longest->clock->median_interval_s());
  std::vector<double> cuts;
  bool been_hot = false;
  double cold_from_s = 0, cold_to_s = 0;  // the longest cold time since the last heat
  for (std::size_t i = 0; i < curve.mean_C.size(); ++i) {
    if (curve.mean_C[i] > levels.hot_C) {
      if (been_hot && cold_to_s - cold_from_s >= kColdFor_s)
        cuts.push_back(cut_between(tracks, *longest->clock, cold_from_s, cold_to_s, look_s));
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
