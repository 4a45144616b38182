#include "core/clean/pass_means.h"

#include <algorithm>
#include <cmath>
#include <utility>

#include "core/run/means.h"
#include "core/units/parallel.h"

namespace ovenwright::clean {
namespace {

constexpr double kLongest_s = 3600, kCoarsest_s = 2, kLookEvery_s = 2, kAround_s = 30;
constexpr double kWarm = 0.1;

struct Interval {
  double from_s = 0, to_s = 0;
};

/// When a trace is above the lowest tenth of its range, looked at every 2 s.
Interval warm_time(const run::Trace& trace) {
  const auto t = trace.time_s();
  const auto T = trace.temperature_C();
  const auto stride = trace.clock()->rows_in(kLookEvery_s);
  double low = T[0], high = T[0];
  for (std::size_t i = 0; i < T.size(); i += stride) {
    low = std::min(low, T[i]);
    high = std::max(high, T[i]);
  }
  const double warm_C = low + kWarm * (high - low);
  Interval interval{t.back(), t.front()};
  for (std::size_t i = 0; i < T.size(); i += stride) {
    if (T[i] < warm_C) continue;
    interval.from_s = std::min(interval.from_s, t[i]);
    interval.to_s = std::max(interval.to_s, t[i]);
  }
  return interval;
}

}  // namespace

PassMeans pass_means(const run::Run& run, unsigned threads) {
  PassMeans means;
  if (run.sample_interval_s > kCoarsest_s) return means;
  Interval all{run.to_s, run.from_s};
  for (const auto& channel : run.channels) {
    if (!channel.trace) continue;
    const auto warm = warm_time(*channel.trace);
    all.from_s = std::min(all.from_s, warm.from_s);
    all.to_s = std::max(all.to_s, warm.to_s);
  }
  all.from_s = std::max(all.from_s - kAround_s, run.from_s);
  all.to_s = std::min(all.to_s + kAround_s, run.to_s);
  if (!(all.to_s - all.from_s >= 1) || all.to_s - all.from_s > kLongest_s) return means;
  means.from_s = all.from_s;
  const auto count = static_cast<std::size_t>(all.to_s - all.from_s);
  means.mean_C.resize(run.channels.size());
  // Traces of one clock a few at a time: what a step holds of the clock is then near when the next one needs it.
  constexpr std::size_t kMostTogether = 8;
  const std::size_t together = std::clamp<std::size_t>(run.channels.size() / std::max(1U, threads), 1, kMostTogether);
  std::vector<std::vector<std::size_t>> groups;
  for (std::size_t k = 0; k < run.channels.size(); ++k) {
    const auto& trace = run.channels[k].trace;
    const bool covers = trace && trace->time_s().front() <= all.from_s &&
                        trace->time_s().back() >= all.from_s + static_cast<double>(count);
    if (!covers) continue;
    const bool joins = !groups.empty() && groups.back().size() < together &&
                       run.channels[groups.back().front()].trace->clock() == trace->clock();
    if (!joins) groups.emplace_back();
    groups.back().push_back(k);
  }
  for_each_index(groups.size(), threads, [&](std::size_t g) {
    std::vector<const run::Trace*> traces;
    for (const std::size_t k : groups[g]) traces.push_back(&*run.channels[k].trace);
    auto found = run::means_over(traces, all.from_s, 1, count);
    for (std::size_t i = 0; i < found.size(); ++i) means.mean_C[groups[g][i]] = std::move(found[i]);
  });
  return means;
}

}  // namespace ovenwright::clean
