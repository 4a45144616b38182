#include "core/lot/tolerance.h"

#include <gtest/gtest.h>

namespace ovenwright::lot {
namespace {

struct Case {
  std::size_t n;
  double p95_95, p99_95, p9973_95, p99_99;
};
void PrintTo(const Case& c, std::ostream* os) { *os << c.n << " values"; }
class ToleranceFactor : public testing::TestWithParam<Case> {};

// Source: two-sided factors in the sense of ISO 16269-6, both parameters unknown, from an independent solution of the
// integral equation (scipy, adaptive quadrature); 5.077 and 3.393 agree with the standard's printed tables as
// remembered. Columns: coverage/confidence. Tolerance: half of the last digit stated.
TEST_P(ToleranceFactor, IsExact) {
  const auto& c = GetParam();
  EXPECT_NEAR(tolerance_factor(c.n, 0.95, 0.95), c.p95_95, 5.1e-5);
  EXPECT_NEAR(tolerance_factor(c.n, 0.99, 0.95), c.p99_95, 5.1e-5);
  EXPECT_NEAR(tolerance_factor(c.n, 0.9973, 0.95), c.p9973_95, 5.1e-5);
  EXPECT_NEAR(tolerance_factor(c.n, 0.99, 0.99), c.p99_99, 5.1e-5);
}
INSTANTIATE_TEST_SUITE_P(
    Table, ToleranceFactor,
    testing::Values(Case{5, 5.0769, 6.5980, 7.6368, 10.2201}, Case{10, 3.3934, 4.4369, 5.1518, 5.6102},
                    Case{20, 2.7603, 3.6210, 4.2121, 4.1747}, Case{30, 2.5549, 3.3546, 3.9044, 3.7425},
                    Case{50, 2.3816, 3.1288, 3.6430, 3.3897}, Case{100, 2.2339, 2.9355, 3.4187, 3.0976}),
    [](const auto& c) { return "n" + std::to_string(c.param.n); });

// Source: the data of NIST/SEMATECH e-Handbook 7.2.6.3, n = 43, coverage 90 %, confidence 99 %. Its approximation
// prints 2.2173; the exact factor was computed independently. Tolerance: half of the last digit stated.
TEST(ToleranceFactor, TheHandbooksExample) { EXPECT_NEAR(tolerance_factor(43, 0.90, 0.99), 2.2228252, 5.1e-8); }

// Source: the same integral equation solved with scipy (quad, brentq). Tolerance: relative 1e-8, that solution's own.
TEST(ToleranceFactor, TwoAndThreeValues) {
  EXPECT_NEAR(tolerance_factor(2, 0.95, 0.95), 36.51921461, 4e-7);
  EXPECT_NEAR(tolerance_factor(3, 0.95, 0.95), 9.788752403, 1e-7);
  EXPECT_NEAR(tolerance_factor(1000, 0.95, 0.95), 2.036114278, 2e-8);
}

// Source: the approximation of the e-Handbook tends to the exact factor, and that to the normal quantile 1.959964.
TEST(ToleranceFactor, ManyValuesTendToTheQuantile) {
  const double many = tolerance_factor(1'000'000, 0.95, 0.95);
  EXPECT_GT(many, 1.959964);
  EXPECT_LT(many, 1.959964 * 1.002);
  EXPECT_GT(tolerance_factor(2, 0.95, 0.95), tolerance_factor(3, 0.95, 0.95));
}

}  // namespace
}  // namespace ovenwright::lot
