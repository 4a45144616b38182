#include "core/measure/slope.h"

#include <cmath>

namespace ovenwright::measure {
namespace {

constexpr std::size_t kFewest = 3;       // samples in a window
constexpr double kEqual = 1e-9;          // °C/s
constexpr double kInterval = 0.1;        // of the sample interval: how far a window's ends may be off
constexpr std::size_t kFreshAfter = 64;  // window lengths between sums that start anew, so that rounding cannot pile up
constexpr double kWaveWindow_s = 1;

/// Σ1, Σt, Σt², ΣT, ΣtT of the samples in a window, times and temperatures counted from near its middle, where the
/// differences in the slope's formula lose no digits.
class RunningFit {
 public:
  RunningFit(const Curve& curve, double half_s) : curve_(&curve), half_s_(half_s) {}

  /// Moves the window to sample i; centres must not go back.
  void move_to(std::size_t centre) {
    const double t = curve_->time_s(centre);
    if (n_ == 0 || centre >= fresh_at_) {
      start(centre);
    } else if (t - zero_s_ > half_s_) {
      shift_zero(t);
    }
    while (end_ < curve_->size() && curve_->time_s(end_) - t <= half_s_) add(end_++, 1);
    while (t - curve_->time_s(first_) > half_s_) add(first_++, -1);
  }
  std::size_t count() const { return end_ - first_; }
  std::size_t first() const { return first_; }
  std::size_t last() const { return end_ - 1; }
  double slope() const { return (n_ * tT_ - t_ * T_) / (n_ * tt_ - t_ * t_); }

 private:
  void start(std::size_t centre) {
    const double t = curve_->time_s(centre);
    n_ = t_ = tt_ = T_ = tT_ = 0;
    zero_s_ = t;
    zero_C_ = curve_->at(centre);
    while (t - curve_->time_s(first_) > half_s_) ++first_;
    end_ = first_;
    while (end_ < curve_->size() && curve_->time_s(end_) - t <= half_s_) add(end_++, 1);
    fresh_at_ = centre + kFreshAfter * (end_ - first_) + 1;
  }
  void add(std::size_t i, double sign) {
    const double t = curve_->time_s(i) - zero_s_, T = curve_->at(i) - zero_C_;
    n_ += sign;
    t_ += sign * t;
    tt_ += sign * t * t;
    T_ += sign * T;
    tT_ += sign * t * T;
  }
  void shift_zero(double zero_s) {
    const double by = zero_s - zero_s_;
    tt_ += by * (n_ * by - 2 * t_);
    tT_ -= by * T_;
    t_ -= n_ * by;
    zero_s_ = zero_s;
  }

  const Curve* curve_;
  double half_s_;
  std::size_t first_ = 0, end_ = 0, fresh_at_ = 0;
  double zero_s_ = 0, zero_C_ = 0;
  double n_ = 0, t_ = 0, tt_ = 0, T_ = 0, tT_ = 0;
};

}  // namespace

Slope fitted(const Curve& curve, std::size_t centre, std::size_t first, std::size_t last) {
  const double n = static_cast<double>(last - first + 1);
  const double zero_s = curve.time_s(centre), zero_C = curve.at(centre);
  double mean_s = 0, mean_C = 0;
  for (std::size_t j = first; j <= last; ++j) {
    mean_s += curve.time_s(j) - zero_s;
    mean_C += curve.at(j) - zero_C;
  }
  mean_s /= n;
  mean_C /= n;
  double squares = 0, products = 0;
  for (std::size_t j = first; j <= last; ++j) {
    const double t = curve.time_s(j) - zero_s - mean_s;
    squares += t * t;
    products += t * (curve.at(j) - zero_C - mean_C);
  }
  return {products / squares, centre, first, last, squares};
}

std::optional<Slope> steepest(const Curve& curve, const SlopeWindows& windows) {
  const double slack_s = kInterval * curve.interval_s();
  const double half_s = windows.over_s / 2;
  const double sign = windows.fall ? -1 : 1;
  const double start_s = curve.time_s(windows.stretch.first), end_s = curve.time_s(windows.stretch.last);
  const bool ranged = std::isfinite(windows.lowest_C) || std::isfinite(windows.highest_C);
  const auto in_range = [&](double T) {
    return above_by(T, windows.lowest_C) >= 0 && above_by(T, windows.highest_C) <= 0;
  };
  RunningFit fit(curve, half_s + slack_s);
  double best = -std::numeric_limits<double>::infinity();
  std::optional<Slope> found;
  for (std::size_t i = windows.stretch.first; i <= windows.stretch.last; ++i) {
    const double t = curve.time_s(i);
    if (t - half_s < start_s - slack_s) continue;
    if (t + half_s > end_s + slack_s) break;
    if (ranged && !in_range(curve.at(i))) continue;
    fit.move_to(i);
    if (fit.count() < kFewest) continue;
    const double slope = sign * fit.slope();
    if (!(slope > best + kEqual)) continue;
    best = slope;
    found = Slope{slope, i, fit.first(), fit.last(), 0};
  }
  if (!found) return std::nullopt;
  return fitted(curve, found->centre, found->first, found->last);
}

std::vector<double> wave_slopes(const Curve& curve) {
  const double slack_s = kInterval * curve.interval_s();
  const double half_s = kWaveWindow_s / 2;
  std::vector<double> slopes(curve.size(), std::numeric_limits<double>::quiet_NaN());
  RunningFit fit(curve, half_s + slack_s);
  for (std::size_t i = 1; i < curve.last(); ++i) {
    const double t = curve.time_s(i);
    fit.move_to(i);
    if (fit.count() < kFewest) {
      slopes[i] = fitted(curve, i, i - 1, i + 1).per_s;
    } else if (t - half_s >= curve.start_s() - slack_s && t + half_s <= curve.end_s() + slack_s) {
      slopes[i] = fit.slope();
    }
  }
  return slopes;
}

}  // namespace ovenwright::measure
