#include "core/run/trace.h"

#include <algorithm>
#include <array>
#include <cassert>
#include <cmath>
#include <cstdint>
#include <limits>
#include <optional>
#include <string>

#include "core/run/median.h"

namespace ovenwright::run {
namespace {

/// One pass in lanes beside each other, so that it runs at the speed of memory.
bool all_finite(const std::vector<double>& values) {
  constexpr std::size_t kLanes = 8, kAhead = 512;  // the processor itself does not look ahead over the end of a page
  std::array<double, kLanes> sums{};               // of zeros; NaN once a value is not finite
  std::size_t i = 0;
  for (; i + kLanes <= values.size(); i += kLanes) {
    if (i + kAhead < values.size()) __builtin_prefetch(&values[i + kAhead]);
    for (std::size_t lane = 0; lane < kLanes; ++lane) sums[lane] += values[i + lane] * 0;
  }
  for (; i < values.size(); ++i) sums[0] += values[i] * 0;
  return std::ranges::none_of(sums, [](double sum) { return std::isnan(sum); });
}

Error bad_argument(std::string message) { return {ErrorCode::kBadArgument, std::move(message), {}, {}, {}}; }

/// Why these are no trace, but for temperatures that are not finite.
std::optional<Error> misfit(const std::shared_ptr<const Clock>& clock, const std::vector<double>& temperature_C) {
  if (!clock || clock->size() != temperature_C.size()) return bad_argument("times and temperatures differ in number");
  if (temperature_C.size() < 3)
    return bad_argument("a trace needs at least 3 samples, found " + std::to_string(temperature_C.size()));
  return std::nullopt;
}

}  // namespace

/// The intervals between neighbouring times.
struct Clock::Intervals {
  double shortest_s = 0, longest_s = 0;
  bool forward = true;  ///< all above zero and finite

  explicit Intervals(const std::vector<double>& t) {
    if (t.empty()) return;
    forward = std::isfinite(t.front()) && std::isfinite(t.back());  // what lies between two finite times is finite
    if (t.size() < 2) return;
    // Some of each beside each other, so that none waits for the one before it.
    constexpr std::size_t kLanes = 4, kAhead = 512;
    std::array<double, kLanes> shortest{}, longest{};
    std::array<std::uint64_t, kLanes> later{};
    shortest.fill(t[1] - t[0]);
    longest = shortest;
    const auto look = [&](std::size_t lane, std::size_t i) {
      const double interval = t[i] - t[i - 1];
      shortest[lane] = interval < shortest[lane] ? interval : shortest[lane];
      longest[lane] = interval > longest[lane] ? interval : longest[lane];
      later[lane] += t[i] > t[i - 1] ? 1U : 0U;
    };
    std::size_t i = 1;
    for (; i + kLanes <= t.size(); i += kLanes) {
      __builtin_prefetch(t.data() + i + kAhead);
      for (std::size_t lane = 0; lane < kLanes; ++lane) look(lane, i + lane);
    }
    for (; i < t.size(); ++i) look(0, i);
    shortest_s = std::ranges::min(shortest);
    longest_s = std::ranges::max(longest);
    forward = forward && later[0] + later[1] + later[2] + later[3] + 1 == t.size();
  }
};

Clock::Clock(std::shared_ptr<const std::vector<double>> time_s, const Intervals& intervals)
    : time_s_(std::move(time_s)),
      median_interval_s_(median_difference(*time_s_)),
      shortest_interval_s_(intervals.shortest_s),
      longest_interval_s_(intervals.longest_s) {}

std::size_t Clock::rows_in(double span_s) const noexcept {
  const double rows = span_s / median_interval_s_;
  if (!(rows >= 1)) return 1;
  return rows < static_cast<double>(size()) ? static_cast<std::size_t>(rows) : size();
}

Result<std::shared_ptr<const Clock>> Clock::make(std::vector<double> time_s) {
  return make_sharing(std::make_shared<const std::vector<double>>(std::move(time_s)));
}

Result<std::shared_ptr<const Clock>> Clock::make_sharing(std::shared_ptr<const std::vector<double>> time_s) {
  assert(time_s);
  const std::vector<double>& t = *time_s;
  const Intervals intervals(t);
  if (!intervals.forward) {
    std::size_t i = 0;
    while (std::isfinite(t[i]) && (i == 0 || t[i] > t[i - 1])) ++i;
    return Error{ErrorCode::kBadArgument,
                 "sample " + std::to_string(i + 1) + " is not later than the one before it",
                 {},
                 {},
                 {}};
  }
  return std::shared_ptr<const Clock>(new Clock(std::move(time_s), intervals));
}

Result<Trace> Trace::make(std::shared_ptr<const Clock> clock, std::vector<double> temperature_C) {
  if (auto error = misfit(clock, temperature_C)) return *error;
  if (!all_finite(temperature_C)) {
    const auto bad = std::ranges::find_if_not(temperature_C, [](double value) { return std::isfinite(value); });
    return bad_argument("temperature " + std::to_string(bad - temperature_C.begin() + 1) + " is not a number");
  }
  return Trace(std::move(clock), std::move(temperature_C));
}

Result<Trace> Trace::make_of_finite(std::shared_ptr<const Clock> clock, std::vector<double> temperature_C) {
  assert(all_finite(temperature_C));
  if (auto error = misfit(clock, temperature_C)) return *error;
  return Trace(std::move(clock), std::move(temperature_C));
}

double Trace::at(double time_s) const noexcept {
  const auto t = clock_->time_s();
  if (!(time_s >= t.front() && time_s <= t.back())) return std::numeric_limits<double>::quiet_NaN();
  const auto after = std::upper_bound(t.begin(), t.end(), time_s);
  if (after == t.end()) return temperature_C_.back();
  const auto i = static_cast<std::size_t>(after - t.begin());
  return std::lerp(temperature_C_[i - 1], temperature_C_[i], (time_s - t[i - 1]) / (t[i] - t[i - 1]));
}

}  // namespace ovenwright::run
