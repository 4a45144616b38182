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
  constexpr std::size_t kLanes = 8;
  std::array<double, kLanes> sums{};  // of zeros; NaN once a value is not finite
  std::size_t i = 0;
  for (; i + kLanes <= values.size(); i += kLanes)
    for (std::size_t lane = 0; lane < kLanes; ++lane) sums[lane] += values[i + lane] * 0;
  for (; i < values.size(); ++i) sums[0] += values[i] * 0;
  return std::ranges::none_of(sums, [](double sum) { return std::isnan(sum); });
}

}  // namespace

Clock::Clock(std::vector<double> time_s) : time_s_(std::move(time_s)) {
  if (time_s_.size() < 2) return;
  std::vector<double> intervals_s(time_s_.size() - 1);
  for (std::size_t i = 0; i + 1 < time_s_.size(); ++i) intervals_s[i] = time_s_[i + 1] - time_s_[i];
  const auto [shortest, longest] = std::ranges::minmax_element(intervals_s);
  shortest_interval_s_ = *shortest;
  longest_interval_s_ = *longest;
  median_interval_s_ = median(intervals_s);
}

std::size_t Clock::rows_in(double span_s) const noexcept {
  const double rows = span_s / median_interval_s_;
  if (!(rows >= 1)) return 1;
  const auto all = static_cast<double>(time_s_.size());
  return rows < all ? static_cast<std::size_t>(rows) : time_s_.size();
}

Result<std::shared_ptr<const Clock>> Clock::make(std::vector<double> time_s) {
  for (std::size_t i = 0; i < time_s.size(); ++i) {
    if (!std::isfinite(time_s[i]) || (i > 0 && !(time_s[i] > time_s[i - 1])))
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
