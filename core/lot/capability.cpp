#include "core/lot/capability.h"

#include <algorithm>
#include <boost/math/distributions/chi_squared.hpp>
#include <boost/math/distributions/normal.hpp>
#include <cmath>
#include <limits>

namespace ovenwright::lot {

double capability(double lower, double upper, double sigma) { return (upper - lower) / (6 * sigma); }

double centred_capability(double mean, double sigma, std::optional<double> lower, std::optional<double> upper) {
  double index = std::numeric_limits<double>::infinity();
  if (upper) index = std::min(index, (*upper - mean) / (3 * sigma));
  if (lower) index = std::min(index, (mean - *lower) / (3 * sigma));
  return index;
}

Limits capability_limits(double estimate, std::size_t n, double confidence) {
  const double freedom = static_cast<double>(n) - 1;
  const boost::math::chi_squared distribution(freedom);
  const double tail = (1 - confidence) / 2;
  return {estimate * std::sqrt(quantile(distribution, tail) / freedom),
          estimate * std::sqrt(quantile(complement(distribution, tail)) / freedom)};
}

Limits centred_capability_limits(double estimate, std::size_t n, double confidence) {
  const auto runs = static_cast<double>(n);
  const double z = quantile(complement(boost::math::normal(), (1 - confidence) / 2));
  const double half = z * std::sqrt(1 / (9 * runs) + estimate * estimate / (2 * (runs - 1)));
  return {estimate - half, estimate + half};
}

}  // namespace ovenwright::lot
