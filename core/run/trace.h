#pragma once
#include <memory>
#include <span>
#include <vector>

#include "core/units/result.h"

namespace ovenwright::run {

/// Strictly increasing, finite times in seconds on the log's own clock. Holding a Clock means it was checked.
class Clock {
 public:
  /// Errors: kBadArgument where a time is not finite or not later than the one before it (the message gives the index).
  static Result<std::shared_ptr<const Clock>> make(std::vector<double> time_s);
  /// The same of times that others hold too: they are not copied. Never null.
  static Result<std::shared_ptr<const Clock>> make_sharing(std::shared_ptr<const std::vector<double>> time_s);
  std::span<const double> time_s() const noexcept { return *time_s_; }
  std::size_t size() const noexcept { return time_s_->size(); }
  /// The median interval between neighbouring samples, h of the measures; 0 with fewer than two samples.
  double median_interval_s() const noexcept { return median_interval_s_; }
  /// The shortest and the longest interval; 0 with fewer than two samples.
  double shortest_interval_s() const noexcept { return shortest_interval_s_; }
  double longest_interval_s() const noexcept { return longest_interval_s_; }
  /// How many median intervals a span of time holds: at least 1, at most the number of samples.
  std::size_t rows_in(double span_s) const noexcept;

 private:
  struct Intervals;
  Clock(std::shared_ptr<const std::vector<double>> time_s, const Intervals& intervals);
  std::shared_ptr<const std::vector<double>> time_s_;
  double median_interval_s_ = 0, shortest_interval_s_ = 0, longest_interval_s_ = 0;
};

/// Cleaned samples of one thermocouple on a clock, linear between samples: n >= 3, all finite.
/// Traces of one log share one clock where they can: twelve traces do not hold the same times twelve times.
class Trace {
 public:
  /// Errors: kBadArgument where the lengths differ, there are fewer than 3 samples, or a temperature is not finite.
  static Result<Trace> make(std::shared_ptr<const Clock> clock, std::vector<double> temperature_C);
  /// The same without looking at each temperature once more: the caller has, and all are finite.
  static Result<Trace> make_of_finite(std::shared_ptr<const Clock> clock, std::vector<double> temperature_C);
  std::span<const double> time_s() const noexcept { return clock_->time_s(); }
  std::span<const double> temperature_C() const noexcept { return temperature_C_; }
  std::size_t size() const noexcept { return temperature_C_.size(); }
  double median_interval_s() const noexcept { return clock_->median_interval_s(); }
  const std::shared_ptr<const Clock>& clock() const noexcept { return clock_; }
  /// The temperature at a time inside the trace, interpolated; NaN outside, never extrapolated. Cost: O(log n).
  double at(double time_s) const noexcept;

 private:
  Trace(std::shared_ptr<const Clock> clock, std::vector<double> temperature_C)
      : clock_(std::move(clock)), temperature_C_(std::move(temperature_C)) {}
  std::shared_ptr<const Clock> clock_;
  std::vector<double> temperature_C_;
};

}  // namespace ovenwright::run
