#include "core/lot/capability.h"

#include <gtest/gtest.h>

namespace ovenwright::lot {
namespace {

// Source: NIST/SEMATECH e-Handbook 6.1.6, its example (from memory, arithmetic checked): USL 20, LSL 8, mean 16, s 2.
// Tolerance: exact fractions.
TEST(Capability, MatchesTheHandbooksExample) {
  EXPECT_DOUBLE_EQ(capability(8, 20, 2), 1.0);
  EXPECT_DOUBLE_EQ(centred_capability(16, 2, 8, 20), 2.0 / 3);
  EXPECT_DOUBLE_EQ(centred_capability(16, 2, {}, 20), 2.0 / 3);
  EXPECT_DOUBLE_EQ(centred_capability(16, 2, 8, {}), 4.0 / 3);
  // k = |middle − mean|/half width: Cpk = Cp(1 − k).
  EXPECT_DOUBLE_EQ(centred_capability(16, 2, 8, 20), capability(8, 20, 2) * (1 - 2.0 / 6));
}

TEST(Capability, AMeanOutsideIsNegative) {
  EXPECT_DOUBLE_EQ(centred_capability(22, 2, 8, 20), -1.0 / 3);
  EXPECT_DOUBLE_EQ(centred_capability(20, 2, 8, 20), 0);
}

// Source: a textbook's example (from memory: 2.29 with 1.57 to 3.01), computed with scipy 1.10 chi2.ppf.
// Tolerance: half of the last digit stated.
TEST(Capability, LimitsOfCp) {
  const double estimate = capability(38, 62, 1.75);
  EXPECT_NEAR(estimate, 2.2857, 5e-5);
  const auto limits = capability_limits(estimate, 20);
  EXPECT_NEAR(limits.low, 1.565, 5e-4);
  EXPECT_NEAR(limits.high, 3.006, 5e-4);
}

struct Case {
  const char* name;
  double estimate;
  std::size_t n;
  double low, high;
};
void PrintTo(const Case& c, std::ostream* os) { *os << c.name; }
class LimitsOfCpk : public testing::TestWithParam<Case> {};

// Source: the normal approximation estimate ± z·√(1/(9n) + estimate²/(2(n − 1))), computed independently; the first is
// a textbook's example (from memory: 0.88 to 1.78). Tolerance: half of the last digit stated.
TEST_P(LimitsOfCpk, MatchThePublishedFormula) {
  const auto limits = centred_capability_limits(GetParam().estimate, GetParam().n);
  EXPECT_NEAR(limits.low, GetParam().low, 5e-4);
  EXPECT_NEAR(limits.high, GetParam().high, 5e-4);
}
INSTANTIATE_TEST_SUITE_P(Published, LimitsOfCpk,
                         testing::Values(Case{"twenty_values", 1.33, 20, 0.883, 1.777},
                                         Case{"fifty_values", 1.1111, 50, 0.8725, 1.3497}),
                         [](const auto& c) { return std::string{c.param.name}; });

// Source: questions with LSL, USL, mean, s of which the answers were computed by hand: min(4, 6)/3.6, min(3, 7)/4.8.
TEST(Capability, MoreExamples) {
  EXPECT_NEAR(centred_capability(16, 1.2, 10, 20), 1.1111, 5e-5);
  EXPECT_NEAR(centred_capability(97, 1.6, 90, 100), 0.625, 1e-12);
}

}  // namespace
}  // namespace ovenwright::lot
