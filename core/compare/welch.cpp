#include "core/compare/welch.h"

#include <boost/math/distributions/students_t.hpp>
#include <cmath>

namespace ovenwright::compare {

std::optional<TwoSampleInterval> welch_interval(const Sample& a, const Sample& b, double confidence) {
  if (a.n < 2 || b.n < 2) return std::nullopt;
  const auto count_a = static_cast<double>(a.n), count_b = static_cast<double>(b.n);
  const double variance_a = a.sd * a.sd / count_a, variance_b = b.sd * b.sd / count_b;
  const double variance = variance_a + variance_b;
  TwoSampleInterval interval{b.mean - a.mean, 0, 0};
  if (!(variance > 0)) return interval;
  // Shares of the variance, not squares of variances: tiny ones would vanish.
  const double share_a = variance_a / variance, share_b = variance_b / variance;
  interval.freedom = 1 / (share_a * share_a / (count_a - 1) + share_b * share_b / (count_b - 1));
  const boost::math::students_t distribution(interval.freedom);
  interval.half_width = quantile(complement(distribution, (1 - confidence) / 2)) * std::sqrt(variance);
  return interval;
}

}  // namespace ovenwright::compare
