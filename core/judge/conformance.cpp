#include <algorithm>
#include <boost/math/distributions/normal.hpp>

#include "core/judge/decide.h"

namespace ovenwright::judge {
namespace {

/// Φ(b) − Φ(a) for a <= b, from the smaller tails, so that it keeps its digits far outside.
double normal_between(double a, double b) {
  using boost::math::cdf;
  using boost::math::complement;
  const boost::math::normal standard;
  if (a > 0) return cdf(complement(standard, a)) - cdf(complement(standard, b));
  return cdf(standard, b) - cdf(standard, a);
}

}  // namespace

double conformance_probability(double value, double expanded_uncertainty, std::optional<double> lower,
                               std::optional<double> upper) {
  const double u = expanded_uncertainty / 2;
  if (!(u > 0)) return (lower && value < *lower) || (upper && value > *upper) ? 0 : 1;
  constexpr double far = 1e3;  // standard deviations: Φ is 0 or 1 to the last bit
  const double a = lower ? std::clamp((*lower - value) / u, -far, far) : -far;
  const double b = upper ? std::clamp((*upper - value) / u, -far, far) : far;
  return a < b ? normal_between(a, b) : 0;
}

}  // namespace ovenwright::judge
