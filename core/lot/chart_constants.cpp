#include "core/lot/chart_constants.h"

#include <algorithm>
#include <array>
#include <boost/math/quadrature/gauss.hpp>
#include <cmath>
#include <numbers>

namespace ovenwright::lot {
namespace {

constexpr std::size_t kMost = 25;

double cumulative(double x) { return std::erfc(-x / std::numbers::sqrt2) / 2; }
double density(double x) { return std::exp(-x * x / 2) / std::sqrt(2 * std::numbers::pi); }

/// P(range > w) of n standard normal values: 1 − n ∫ φ(x) (Φ(x + w) − Φ(x))^(n−1) dx, trapezoidal.
double range_exceeds(double w, int n) {
  constexpr double step = 0.1, far = 9;
  double within = 0;
  for (double x = -far - w; x <= far; x += step)
    within += density(x) * std::pow(cumulative(x + w) - cumulative(x), n - 1);
  return 1 - n * step * within;
}

ChartConstants computed(std::size_t size) {
  const int n = static_cast<int>(size);
  const double count = n;
  constexpr double farthest = 14;  // a range beyond it has a probability below 1e-18
  using Rule = boost::math::quadrature::gauss<double, 60>;
  const double mean = Rule::integrate([n](double w) { return range_exceeds(w, n); }, 0.0, farthest);
  const double square = Rule::integrate([n](double w) { return 2 * w * range_exceeds(w, n); }, 0.0, farthest);

  ChartConstants c;
  c.c4 = std::sqrt(2 / (count - 1)) * std::exp(std::lgamma(count / 2) - std::lgamma((count - 1) / 2));
  c.d2 = mean;
  c.d3 = std::sqrt(square - mean * mean);
  c.A2 = 3 / (c.d2 * std::sqrt(count));
  c.A3 = 3 / (c.c4 * std::sqrt(count));
  const double ranges = 3 * c.d3 / c.d2, deviations = 3 * std::sqrt(1 - c.c4 * c.c4) / c.c4;
  c.D3 = std::max(0.0, 1 - ranges);
  c.D4 = 1 + ranges;
  c.B3 = std::max(0.0, 1 - deviations);
  c.B4 = 1 + deviations;
  return c;
}

}  // namespace

ChartConstants chart_constants(std::size_t n) {
  static const auto all = [] {
    std::array<ChartConstants, kMost + 1> table{};
    for (std::size_t size = 2; size <= kMost; ++size) table[size] = computed(size);
    return table;
  }();
  return all[n];
}

}  // namespace ovenwright::lot
