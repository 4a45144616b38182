#include "core/lot/tolerance.h"

#include <boost/math/distributions/normal.hpp>
#include <boost/math/special_functions/gamma.hpp>
#include <boost/math/tools/roots.hpp>
#include <cmath>
#include <cstdint>
#include <vector>

namespace ovenwright::lot {
namespace {

using boost::math::normal;

/// Half width r of the interval around x that holds the share of a standard normal: Φ(x + r) − Φ(x − r) = share.
/// Newton's steps, halved where one leaves what is known to hold the answer.
/// @param central  its value at x = 0; the answer lies between this and x + this
double half_width_at(double x, double share, double central) {
  const normal standard;
  double low = central, high = x + central, r = x + central / 2;
  constexpr int most = 200;
  for (int i = 0; i < most && high - low > 1e-14 * high; ++i) {
    if (!(r > low && r < high)) r = low + (high - low) / 2;
    const double excess = cdf(standard, x + r) - cdf(standard, x - r) - share;
    (excess > 0 ? high : low) = r;
    const double next = r - excess / (pdf(standard, x + r) + pdf(standard, x - r));
    if (std::abs(next - r) <= 1e-15 * r) return next;
    r = next;
  }
  return low + (high - low) / 2;
}

/// A sample mean at u standard errors with its weight, and ν r²/2 there: what s² must exceed.
struct Node {
  double weight, demand;
};

std::vector<Node> nodes_of(std::size_t n, double coverage) {
  // The trapezoidal rule on a smooth integrand under a Gaussian converges faster than any power of the step.
  constexpr double step = 0.1, far = 8.5;
  const normal standard;
  const double central = quantile(complement(standard, (1 - coverage) / 2));
  const double root = std::sqrt(static_cast<double>(n)), half_freedom = (static_cast<double>(n) - 1) / 2;
  std::vector<Node> nodes;
  for (int i = 0; i * step <= far; ++i) {
    const double u = i * step, r = half_width_at(u / root, coverage, central);
    nodes.push_back({(i == 0 ? 1 : 2) * step * pdf(standard, u), half_freedom * r * r});
  }
  return nodes;
}

}  // namespace

double tolerance_factor(std::size_t n, double coverage, double confidence) {
  const auto nodes = nodes_of(n, coverage);
  const double half_freedom = (static_cast<double>(n) - 1) / 2;
  const auto excess = [&](double k) {
    double held = 0;
    for (const auto& node : nodes) held += node.weight * boost::math::gamma_q(half_freedom, node.demand / (k * k));
    return held - confidence;
  };
  std::uintmax_t most = 200;
  const auto found =
      boost::math::tools::bracket_and_solve_root(excess, std::sqrt(nodes.front().demand / half_freedom), 1.5, true,
                                                 boost::math::tools::eps_tolerance<double>(40), most);
  return (found.first + found.second) / 2;
}

}  // namespace ovenwright::lot
