#include "core/run/noise.h"

#include <gtest/gtest.h>

#include <cmath>
#include <random>
#include <vector>

namespace ovenwright::run {
namespace {

std::vector<double> seconds(std::size_t n, double interval_s) {
  std::vector<double> t(n);
  for (std::size_t i = 0; i < n; ++i) t[i] = interval_s * static_cast<double>(i);
  return t;
}

// Source: definition of white noise; the median of 20 000 absolute deviations has a relative standard error of about
// 1.17/√(2n)·√3 (neighbouring deviations overlap) = 1 %, so 4 % is four of them.
TEST(Noise, OfWhiteNoiseOnACurveIsItsStandardDeviation) {
  std::mt19937 random(7);
  std::normal_distribution<double> noise(0, 0.3);
  const auto t = seconds(20000, 0.5);
  std::vector<double> T(t.size());
  for (std::size_t i = 0; i < t.size(); ++i) T[i] = 130 + 100 * std::sin(t[i] / 60) + noise(random);
  EXPECT_NEAR(noise_C(t, T), 0.3, 0.012);
}

// Source: same, on a clock whose intervals alternate 1 s and 3 s (b = 1/4 and 3/4).
TEST(Noise, TakesTheSpacingIntoAccount) {
  std::mt19937 random(8);
  std::normal_distribution<double> noise(0, 0.3);
  std::vector<double> t(20000), T(t.size());
  for (std::size_t i = 0; i < t.size(); ++i) {
    t[i] = 2 * static_cast<double>(i) + (i % 2 ? -1 : 0);
    T[i] = 0.4 * t[i] + noise(random);
  }
  EXPECT_NEAR(noise_C(t, T), 0.3, 0.012);
}

// Source: hand calculation. Deviations from the line through both neighbours, at the spacing's b:
// t 0 1 3 4: sample 1 has b = 1/3, line 10 + 6/3 = 12, |13 − 12|/√(1 + 1/9 + 4/9) = 0.801784;
// sample 2 has b = 2/3, line 13 + 2/3·(10 − 13) = 11, |16 − 11|/√(14/9) = 4.008919; their mean times 1.4826.
TEST(Noise, MatchesAHandCalculation) {
  EXPECT_NEAR(noise_C(std::vector<double>{0, 1, 3, 4}, std::vector<double>{10, 13, 16, 10}),
              1.4826 * (0.801784 + 4.008919) / 2, 1e-5);
}

// Source: JCGM 100:2008, F.2.2.1: resolution q has the standard uncertainty q/√12. A straight line has no other noise.
TEST(Noise, IsAtLeastThatOfRounding) {
  const std::vector<double> t{0, 1, 2, 3, 4}, T{20, 20.5, 21, 21.5, 22};
  EXPECT_NEAR(noise_C(t, T), 0.5 / std::sqrt(12.0), 1e-12);
}

// 0.1 °C steps that went through another unit and back differ in the last bits; those are not the resolution.
TEST(Noise, DoesNotTakeArithmeticForResolution) {
  const std::vector<double> t{0, 1, 2, 3, 4}, T{20, 20 + 4e-15, 20.1, 20.2, 20.3};
  EXPECT_NEAR(noise_C(t, T), 0.1 / std::sqrt(12.0), 1e-9);
}

TEST(Noise, OfAConstantOrOfTooFewSamplesIsZero) {
  EXPECT_EQ(noise_C(std::vector<double>{0, 1, 2}, std::vector<double>{5, 5, 5}), 0);
  EXPECT_EQ(noise_C(std::vector<double>{0}, std::vector<double>{5}), 0);
  EXPECT_EQ(noise_C(std::vector<double>{}, std::vector<double>{}), 0);
}

}  // namespace
}  // namespace ovenwright::run
