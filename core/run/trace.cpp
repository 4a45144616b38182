#include "core/run/trace.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <limits>
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

/// Finite and strictly increasing: what lies between two finite times is finite.
bool runs_forward(const std::vector<double>& time_s) {
  if (time_s.empty()) return true;
  std::size_t not_later = 0;
  for (std::size_t i = 1; i < time_s.size(); ++i) not_later += time_s[i] > time_s[i - 1] ? 0 : 1;
  return not_later == 0 && std::isfinite(time_s.front()) && std::isfinite(time_s.back());
}

}  // namespace

Clock::Clock(std::vector<double> time_s) : time_s_(std::move(time_s)) {
  if (time_s_.size() < 2) return;
  // Two of each beside each other, so that none waits for the one before it.
  std::array<double, 2> shortest{}, longest{};
  shortest.fill(time_s_[1] - time_s_[0]);
  longest = shortest;
  for (std::size_t i = 1; i < time_s_.size(); ++i) {
    const double interval = time_s_[i] - time_s_[i - 1];
    shortest[i % 2] = std::min(shortest[i % 2], interval);
    longest[i % 2] = std::max(longest[i % 2], interval);
  }
  shortest_interval_s_ = std::min(shortest[0], shortest[1]);
  longest_interval_s_ = std::max(longest[0], longest[1]);
  median_interval_s_ = median_difference(time_s_);
}

std::size_t Clock::rows_in(double span_s) const noexcept {
  const double rows = span_s / median_interval_s_;
  if (!(rows >= 1)) return 1;
  const auto all = static_cast<double>(time_s_.size());
  return rows < all ? static_cast<std::size_t>(rows) : time_s_.size();
}

Result<std::shared_ptr<const Clock>> Clock::make(std::vector<double> time_s) {
  if (!runs_forward(time_s)) {
    std::size_t i = 0;
    while (std::isfinite(time_s[i]) && (i == 0 || time_s[i] > time_s[i - 1])) ++i;
    return Error{ErrorCode::kBadArgument,
                 "sample " + std::to_string(i + 1) + " is not later than the one before it",
                 {},
                 {},
                 {}};
  }
  return std::shared_ptr<const Clock>(new Clock(std::move(time_s)));
}

Result<Trace> Trace::make(std::shared_ptr<const Clock> clock, std::vector<double> temperature_C) {
  const auto fail = [](std::string message) { return Error{ErrorCode::kBadArgument, std::move(message), {}, {}, {}}; };
  if (!clock || clock->size() != temperature_C.size()) return fail("times and temperatures differ in number");
  if (temperature_C.size() < 3)
    return fail("a trace needs at least 3 samples, found " + std::to_string(temperature_C.size()));
  if (!all_finite(temperature_C)) {
    const auto bad = std::ranges::find_if_not(temperature_C, [](double value) { return std::isfinite(value); });
    return fail("temperature " + std::to_string(bad - temperature_C.begin() + 1) + " is not a number");
  }
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
