#include "core/run/means.h"

#include <algorithm>
#include <array>
#include <cassert>
#include <utility>

namespace ovenwright::run {
namespace {

/// How far along a trace the steps have come.
struct Place {
  std::size_t next = 0;  ///< the first sample behind it
  double at_s = 0, at_C = 0;
};

/// The area under the polyline from a place to a later time, to which the place moves.
double area_to(double end_s, std::span<const double> t, std::span<const double> T, Place& place) {
  constexpr std::size_t kLanes = 4, kAhead = 512;
  auto [next, at_s, at_C] = place;
  double area = 0;
  const auto go_to = [&area, &at_s = at_s, &at_C = at_C](double to_s, double to_C) {
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
      // The next step of this trace comes after those of others: what the processor foresaw is forgotten by then.
      if (next + kAhead < T.size()) __builtin_prefetch(&T[next + kAhead]);
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
  place = {next, at_s, at_C};
  return area;
}

}  // namespace

std::vector<double> means_over(const Trace& trace, double from_s, double step_s, std::size_t count) {
  const Trace* const one = &trace;
  return std::move(means_over(std::span(&one, 1), from_s, step_s, count).front());
}

std::vector<std::vector<double>> means_over(std::span<const Trace* const> traces, double from_s, double step_s,
                                            std::size_t count) {
  std::vector<std::vector<double>> means(traces.size(), std::vector<double>(count));
  std::vector<Place> places;
  for (const Trace* const trace : traces) {
    const auto t = trace->time_s();
    assert(step_s > 0 && from_s >= t.front() && trace->clock() == traces.front()->clock());
    places.push_back(
        {static_cast<std::size_t>(std::ranges::upper_bound(t, from_s) - t.begin()), from_s, trace->at(from_s)});
  }
  for (std::size_t k = 0; k < count; ++k) {
    const double end_s = from_s + static_cast<double>(k + 1) * step_s;
    for (std::size_t i = 0; i < traces.size(); ++i)
      means[i][k] = area_to(end_s, traces[i]->time_s(), traces[i]->temperature_C(), places[i]) / step_s;
  }
  return means;
}

}  // namespace ovenwright::run
