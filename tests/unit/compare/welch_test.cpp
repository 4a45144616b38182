#include "core/compare/welch.h"

#include <gtest/gtest.h>

#include <cmath>

namespace ovenwright::compare {
namespace {

// Source: NIST/SEMATECH e-Handbook 1.3.5.3, miles per gallon of cars (AUTO83B.DAT): 249 of one make with mean 20.14458
// and s 6.41470, 79 of the other with 30.48101 and 6.10771; t without equal variances −12.94627 with 136.8750 degrees
// of freedom (from memory; both follow from the printed means and s). t(0.975; 136.875) = 1.977447 by scipy. Tolerance:
// the digits of the printed means and s.
TEST(Welch, TheHandbooksCars) {
  const auto interval = welch_interval({249, 20.14458, 6.41470}, {79, 30.48101, 6.10771});
  ASSERT_TRUE(interval);
  EXPECT_NEAR(interval->freedom, 136.8750, 1e-3);
  EXPECT_NEAR(interval->difference, 10.33643, 1e-9);
  EXPECT_NEAR(interval->half_width, 10.33643 / 12.94627 * 1.977447, 1e-4);
}

// Source: algebra. Equal sizes and standard deviations give 2(n − 1) degrees of freedom; t(0.975; 8) = 2.306004 (any
// table of t).
TEST(Welch, EqualSamplesHaveTheFreedomOfBoth) {
  const auto interval = welch_interval({5, 10, 2}, {5, 13, 2});
  ASSERT_TRUE(interval);
  EXPECT_NEAR(interval->freedom, 8, 1e-12);
  EXPECT_NEAR(interval->half_width, 2.306004 * 2 * std::sqrt(2.0 / 5), 1e-6);
  EXPECT_EQ(interval->difference, 3);
}

TEST(Welch, NeedsTwoOfEachAndStandsWithoutScatter) {
  EXPECT_FALSE(welch_interval({1, 10, 0}, {5, 13, 2}));
  const auto still = welch_interval({3, 10, 0}, {3, 11, 0});
  ASSERT_TRUE(still);
  EXPECT_EQ(still->half_width, 0);
  EXPECT_EQ(still->difference, 1);
  const auto tiny = welch_interval({5, 0, 1e-170}, {5, 0, 1e-170});
  EXPECT_TRUE(std::isfinite(tiny->half_width));
}

}  // namespace
}  // namespace ovenwright::compare
