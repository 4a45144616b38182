#include "core/lot/chart_constants.h"

#include <gtest/gtest.h>

#include <cmath>
#include <numbers>

namespace ovenwright::lot {
namespace {

struct Case {
  std::size_t n;
  double A2, A3, c4, d2, d3, D3, D4, B3, B4;
};
void PrintTo(const Case& c, std::ostream* os) { *os << c.n << " values"; }
class Constants : public testing::TestWithParam<Case> {};

// Source: a textbook's appendix table, "Factors for constructing control charts", confirmed by a second handbook.
// Tolerance: half of the last printed digit; D4 of three values is 2.5746, printed 2.574 from rounded d2 and d3.
TEST_P(Constants, MatchThePrintedTable) {
  const auto& want = GetParam();
  const auto got = chart_constants(want.n);
  EXPECT_NEAR(got.A2, want.A2, 5.1e-4);
  EXPECT_NEAR(got.A3, want.A3, 5.1e-4);
  EXPECT_NEAR(got.c4, want.c4, 5.1e-5);
  EXPECT_NEAR(got.d2, want.d2, 5.1e-4);
  EXPECT_NEAR(got.d3, want.d3, 5.1e-4);
  EXPECT_NEAR(got.D3, want.D3, 5.1e-4);
  EXPECT_NEAR(got.D4, want.D4, 7e-4);
  EXPECT_NEAR(got.B3, want.B3, 5.1e-4);
  EXPECT_NEAR(got.B4, want.B4, 5.1e-4);
}
INSTANTIATE_TEST_SUITE_P(Table, Constants,
                         testing::Values(Case{2, 1.880, 2.659, 0.7979, 1.128, 0.853, 0, 3.267, 0, 3.267},
                                         Case{3, 1.023, 1.954, 0.8862, 1.693, 0.888, 0, 2.574, 0, 2.568},
                                         Case{4, 0.729, 1.628, 0.9213, 2.059, 0.880, 0, 2.282, 0, 2.266},
                                         Case{5, 0.577, 1.427, 0.9400, 2.326, 0.864, 0, 2.114, 0, 2.089},
                                         Case{6, 0.483, 1.287, 0.9515, 2.534, 0.848, 0, 2.004, 0.030, 1.970},
                                         Case{7, 0.419, 1.182, 0.9594, 2.704, 0.833, 0.076, 1.924, 0.118, 1.882},
                                         Case{8, 0.373, 1.099, 0.9650, 2.847, 0.820, 0.136, 1.864, 0.185, 1.815},
                                         Case{9, 0.337, 1.032, 0.9693, 2.970, 0.808, 0.184, 1.816, 0.239, 1.761},
                                         Case{10, 0.308, 0.975, 0.9727, 3.078, 0.797, 0.223, 1.777, 0.284, 1.716}),
                         [](const auto& c) { return "n" + std::to_string(c.param.n); });

// Source: closed forms. Two values: d2 = 2/√π, d3² = 2 − d2²; three values: d2 = 3/√π; c4(2) = √(2/π).
// Tolerance: the integration's own error, about 1e-10.
TEST(Constants, ClosedForms) {
  const double pi = std::numbers::pi;
  const auto two = chart_constants(2);
  EXPECT_NEAR(two.d2, 2 / std::sqrt(pi), 1e-9);
  EXPECT_NEAR(two.d3, std::sqrt(2 - 4 / pi), 1e-9);
  EXPECT_NEAR(two.c4, std::sqrt(2 / pi), 1e-14);
  EXPECT_NEAR(chart_constants(3).d2, 3 / std::sqrt(pi), 1e-9);
  EXPECT_NEAR(chart_constants(3).D4, 2.5746, 5e-5);
}

}  // namespace
}  // namespace ovenwright::lot
