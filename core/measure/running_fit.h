#pragma once
#include <algorithm>
#include <cstddef>
#include <span>

namespace ovenwright::measure {

/// The least-squares slope of a window that slides over samples: Σ1, Σt, Σt², ΣT, ΣtT of the samples in it, times and
/// temperatures counted from near its middle, where the differences in the slope's formula lose no digits. The sums
/// start anew now and then, so that rounding cannot pile up; a slope is good to about 1e-11 of the window's spread of
/// temperatures over its length.
/// @tparam Temperature  callable with a sample's index
template <class Temperature>
class RunningFit {
 public:
  /// @param half_s  a window holds the samples with |t_j − t_i| <= half_s
  RunningFit(std::span<const double> time_s, Temperature temperature, double half_s)
      : time_s_(time_s), temperature_(temperature), half_s_(half_s) {}

  /// Moves the window to a sample; centres must not go back. Cost: O(samples entering and leaving), at most O(window).
  void move_to(std::size_t centre) {
    const double t = time_s_[centre];
    if (centre >= fresh_at_ || centre - centre_ > (end_ - first_) / 2) {
      start(centre);
      return;
    }
    centre_ = centre;
    if (t - zero_s_ > half_s_) shift_zero(t);
    if (enters(end_, t) && leaves(first_, t) && !enters(end_ + 1, t) && !leaves(first_ + 1, t)) {
      exchange(first_++, end_++);  // an even clock: one comes, one goes
      return;
    }
    while (enters(end_, t)) add(end_++, 1);
    while (leaves(first_, t)) add(first_++, -1);
  }
  std::size_t count() const { return end_ - first_; }
  std::size_t first() const { return first_; }
  std::size_t last() const { return end_ - 1; }
  /// The slope is numerator() / denominator(), the latter > 0 with two samples or more.
  double numerator() const { return n_ * tT_ - t_ * T_; }
  double denominator() const { return n_ * tt_ - t_ * t_; }

 private:
  static constexpr std::size_t kFreshAfter = 64;  // lengths of the window

  bool enters(std::size_t i, double t) const { return i < time_s_.size() && time_s_[i] - t <= half_s_; }
  bool leaves(std::size_t i, double t) const { return t - time_s_[i] > half_s_; }

  void start(std::size_t centre) {
    const double t = time_s_[centre];
    n_ = t_ = tt_ = T_ = tT_ = 0;
    centre_ = centre;
    zero_s_ = t;
    zero_C_ = temperature_(centre);
    const auto gone = std::partition_point(time_s_.begin() + static_cast<std::ptrdiff_t>(first_), time_s_.end(),
                                           [&](double other) { return t - other > half_s_; });
    first_ = end_ = static_cast<std::size_t>(gone - time_s_.begin());
    while (enters(end_, t)) add(end_++, 1);
    fresh_at_ = centre + kFreshAfter * (end_ - first_) + 1;
  }
  void add(std::size_t i, double sign) {
    const double t = time_s_[i] - zero_s_, T = temperature_(i) - zero_C_;
    n_ += sign;
    t_ += sign * t;
    tt_ += sign * t * t;
    T_ += sign * T;
    tT_ += sign * t * T;
  }
  void exchange(std::size_t out, std::size_t in) {
    const double t0 = time_s_[out] - zero_s_, t1 = time_s_[in] - zero_s_;
    const double T0 = temperature_(out) - zero_C_, T1 = temperature_(in) - zero_C_;
    t_ += t1 - t0;
    tt_ += t1 * t1 - t0 * t0;
    T_ += T1 - T0;
    tT_ += t1 * T1 - t0 * T0;
  }
  void shift_zero(double zero_s) {
    const double by = zero_s - zero_s_;
    tt_ += by * (n_ * by - 2 * t_);
    tT_ -= by * T_;
    t_ -= n_ * by;
    zero_s_ = zero_s;
  }

  std::span<const double> time_s_;
  Temperature temperature_;
  double half_s_;
  std::size_t first_ = 0, end_ = 0, centre_ = 0, fresh_at_ = 0;
  double zero_s_ = 0, zero_C_ = 0;
  double n_ = 0, t_ = 0, tt_ = 0, T_ = 0, tT_ = 0;
};

}  // namespace ovenwright::measure
