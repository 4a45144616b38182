// Source: NIST StRD nonlinear regression, certified values in tests/data/heat/strd_nls.toml.
#include "core/heat/least_squares.h"

#include <gtest/gtest.h>
#include <toml++/toml.h>

#include <cmath>
#include <functional>

namespace ovenwright::heat {
namespace {

/// Value and derivatives with respect to the parameters.
using Model = std::function<double(double x, const double* b, double* d)>;

struct Set {
  const char* name;
  Model model;
};
void PrintTo(const Set& set, std::ostream* os) { *os << set.name; }

double exponential_rise(double x, const double* b, double* d) {
  const double e = std::exp(-b[1] * x);
  d[0] = 1 - e;
  d[1] = b[0] * x * e;
  return b[0] * (1 - e);
}
double rational(double x, const double* b, double* d) {
  const double n = x * x + b[1] * x, q = x * x + b[2] * x + b[3], y = b[0] * n / q;
  d[0] = n / q;
  d[1] = b[0] * x / q;
  d[2] = -y * x / q;
  d[3] = -y / q;
  return y;
}
double cubics(double x, const double* b, double* d) {
  const double n = b[0] + x * (b[1] + x * (b[2] + x * b[3])), q = 1 + x * (b[4] + x * (b[5] + x * b[6])), y = n / q;
  for (int k = 0; k < 4; ++k) d[k] = std::pow(x, k) / q;
  for (int k = 1; k < 4; ++k) d[3 + k] = -y * std::pow(x, k) / q;
  return y;
}
double two_exponentials(double x, const double* b, double* d) {
  const double e = std::exp(-x * b[3]), f = std::exp(-x * b[4]);
  d[0] = 1;
  d[1] = e;
  d[2] = f;
  d[3] = -b[1] * x * e;
  d[4] = -b[2] * x * f;
  return b[0] + b[1] * e + b[2] * f;
}

class CertifiedFit : public testing::TestWithParam<Set> {};

TEST_P(CertifiedFit, RecoversTheCertifiedParameters) {
  const auto file = toml::parse_file(OVENWRIGHT_TEST_DATA "/heat/strd_nls.toml");
  const auto& set = *file[GetParam().name].as_table();
  const auto numbers = [&](const char* key) {
    std::vector<double> out;
    for (const auto& x : *set[key].as_array()) out.push_back(*x.value<double>());
    return out;
  };
  const auto x = numbers("x"), y = numbers("y"), certified = numbers("certified");
  const LeastSquaresProblem problem{x.size(), certified.size(),
                                    [&](const double* b, double* residual, double* jacobian) {
                                      std::vector<double> d(certified.size());
                                      for (std::size_t i = 0; i < x.size(); ++i) {
                                        residual[i] = GetParam().model(x[i], b, d.data()) - y[i];
                                        for (std::size_t k = 0; jacobian && k < d.size(); ++k)
                                          jacobian[k * x.size() + i] = d[k];
                                      }
                                    }};
  // Start 2, the nearer one of the certificate: the far one makes undamped methods overflow and is no use case of ours.
  const auto fit =
      minimise(problem, numbers("start2"),
               {.most_iterations = 500, .cost_tolerance = 1e-16, .gradient_tolerance = 0, .step_tolerance = 1e-12});
  // Pass mark of the literature: at least 6 correct significant digits (from memory).
  for (std::size_t k = 0; k < certified.size(); ++k)
    EXPECT_NEAR(fit.x[k], certified[k], 1e-6 * std::abs(certified[k])) << "b" << k + 1 << ", " << fit.termination;
  // The certified residual sum of squares has 11 digits; it is flat at the minimum.
  EXPECT_NEAR(2 * fit.cost, *set["rss"].value<double>(), 1e-9 * *set["rss"].value<double>());
}

INSTANTIATE_TEST_SUITE_P(Strd, CertifiedFit,
                         testing::Values(Set{"Misra1a", exponential_rise}, Set{"BoxBOD", exponential_rise},
                                         Set{"MGH09", rational}, Set{"Thurber", cubics},
                                         Set{"MGH17", two_exponentials}),
                         [](const auto& set) { return std::string{set.param.name}; });

}  // namespace
}  // namespace ovenwright::heat
