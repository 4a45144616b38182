#include "core/clean/pass_means.h"

#include <algorithm>
#include <cmath>

#include "core/clean/parallel.h"
#include "core/run/means.h"

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
  for_each_index(run.channels.size(), threads, [&](std::size_t k) {
    const auto& channel = run.channels[k];
    const bool covers = channel.trace && channel.trace->time_s().front() <= all.from_s &&
                        channel.trace->time_s().back() >= all.from_s + static_cast<double>(count);
    if (covers) means.mean_C[k] = run::means_over(*channel.trace, all.from_s, 1, count);
  });
  return means;
}

}  // namespace ovenwright::clean
