#include "core/measure/bridge.h"

#include <algorithm>
#include <cmath>

#include "core/measure/slope.h"

namespace ovenwright::measure {
namespace {

constexpr double kFaster = 1.5;       // than the steepest slope elsewhere
constexpr double kSlowest_per_s = 3;  // °C/s
constexpr double kWindow_s = 5;
constexpr double kSameMoment = 1e-3;  // of the sample interval

/// The steepest slope up or down of the windows that touch no gap.
double steepest_elsewhere(const run::Trace& trace, const std::vector<run::Gap>& gaps) {
  const Blocks blocks(trace.temperature_C());
  const Curve curve(trace, blocks);
  const auto time_s = trace.time_s();
  double steepest_per_s = 0;
  const auto look = [&](std::size_t first, std::size_t last) {
    if (last < first + 2) return;
    for (const bool fall : {false, true}) {
      SlopeWindows windows;
      windows.over_s = kWindow_s;
      windows.stretch = {first, last};
      windows.fall = fall;
      if (const auto slope = steepest(curve, windows))
        steepest_per_s = std::max(steepest_per_s, std::abs(slope->per_s));
    }
  };
  std::size_t first = 0;
  for (const auto& gap : gaps) {
    const auto end = static_cast<std::size_t>(std::ranges::upper_bound(time_s, gap.from_s) - time_s.begin());
    if (end > 0) look(first, end - 1);
    first = static_cast<std::size_t>(std::ranges::lower_bound(time_s, gap.to_s) - time_s.begin());
  }
  if (first < time_s.size()) look(first, time_s.size() - 1);
  return steepest_per_s;
}

/// One gap of a trace with the good samples at its ends.
struct Bridge {
  double from_s, to_s, from_C, to_C, per_s;
  double at(double time_s, double sign) const {
    const double straight_per_s = (to_C - from_C) / (to_s - from_s);
    if (std::abs(straight_per_s) >= per_s) return from_C + straight_per_s * (time_s - from_s);
    const double out = sign * from_C + per_s * (time_s - from_s), back = sign * to_C + per_s * (to_s - time_s);
    return sign * std::min(out, back);
  }
  double turn_s(double sign) const { return (from_s + to_s) / 2 + sign * (to_C - from_C) / (2 * per_s); }
};

std::optional<run::Trace> course(const run::Trace& trace, const std::vector<run::Gap>& gaps, double per_s,
                                 double sign) {
  const double interval_s = trace.median_interval_s();
  const auto time_s = trace.time_s(), temperature_C = trace.temperature_C();
  std::vector<double> times, temperatures;
  std::size_t next = 0;
  const auto put = [&](double at_s, double at_C) {
    times.push_back(at_s);
    temperatures.push_back(at_C);
  };
  for (const auto& gap : gaps) {
    for (; next < time_s.size() && time_s[next] <= gap.from_s; ++next) put(time_s[next], temperature_C[next]);
    const Bridge bridge{gap.from_s, gap.to_s, trace.at(gap.from_s), trace.at(gap.to_s), per_s};
    std::vector<double> inside;
    for (; next < time_s.size() && time_s[next] < gap.to_s; ++next) inside.push_back(time_s[next]);
    if (inside.empty())
      for (double steps = 1; gap.from_s + steps * interval_s < gap.to_s - kSameMoment * interval_s; ++steps)
        inside.push_back(gap.from_s + steps * interval_s);
    const double turn_s = bridge.turn_s(sign);
    const bool at_sample =
        std::ranges::any_of(inside, [&](double at_s) { return std::abs(at_s - turn_s) <= kSameMoment * interval_s; });
    const double edge_s = kSameMoment * interval_s;
    if (!at_sample && turn_s > gap.from_s + edge_s && turn_s < gap.to_s - edge_s)
      inside.insert(std::ranges::upper_bound(inside, turn_s), turn_s);
    for (const double at_s : inside) put(at_s, bridge.at(at_s, sign));
  }
  for (; next < time_s.size(); ++next) put(time_s[next], temperature_C[next]);
  auto clock = run::Clock::make(std::move(times));
  if (!clock) return std::nullopt;
  auto made = run::Trace::make(*clock, std::move(temperatures));
  if (!made) return std::nullopt;
  return *std::move(made);
}

}  // namespace

std::optional<std::array<run::Trace, 2>> extreme_courses(const run::Channel& channel) {
  if (!channel.trace || channel.gaps.empty()) return std::nullopt;
  const double per_s = std::max(kFaster * steepest_elsewhere(*channel.trace, channel.gaps), kSlowest_per_s);
  auto lowest = course(*channel.trace, channel.gaps, per_s, -1);
  auto highest = course(*channel.trace, channel.gaps, per_s, 1);
  if (!lowest || !highest) return std::nullopt;
  return std::array<run::Trace, 2>{*std::move(lowest), *std::move(highest)};
}

}  // namespace ovenwright::measure
