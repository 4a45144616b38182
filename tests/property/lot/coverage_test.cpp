// Whether intervals hold what they say, and rules signal as often as published, by Monte Carlo with fixed seeds.
#include <gtest/gtest.h>

#include <cmath>
#include <numbers>
#include <numeric>

#include "core/compare/welch.h"
#include "core/lot/capability.h"
#include "core/lot/run_rules.h"
#include "core/lot/statistics.h"
#include "core/lot/tolerance.h"
#include "tests/property/measure/random_log.h"

namespace ovenwright::lot {
namespace {

constexpr int kTrials = 20000;

/// By how much a share found in the trials may be off: four standard deviations of a binomial share.
double scatter(double share) { return 4 * std::sqrt(share * (1 - share) / kTrials); }

double cumulative(double x) { return std::erfc(-x / std::numbers::sqrt2) / 2; }

struct Drawn {
  double mean, sd;
};
Drawn draw(measure::Random& random, std::size_t n, double mean = 0, double sd = 1) {
  std::vector<double> values(n);
  for (auto& value : values) value = mean + sd * random.normal();
  const auto value = [&](std::size_t i) { return values[i]; };
  return {mean_of(n, value), sd_of(n, value)};
}

class Coverage : public testing::TestWithParam<std::size_t> {
 protected:
  std::size_t n_ = GetParam();
  measure::Random random_{static_cast<unsigned>(1000 + n_)};
};

// Source: the definition. mean ± k·s holds at least 95 % of the population in 95 % of the samples.
TEST_P(Coverage, TheToleranceIntervalHoldsItsShare) {
  const double k = tolerance_factor(n_, 0.95, 0.95);
  int held = 0;
  for (int i = 0; i < kTrials; ++i) {
    const auto [mean, sd] = draw(random_, n_);
    held += cumulative(mean + k * sd) - cumulative(mean - k * sd) >= 0.95 ? 1 : 0;
  }
  EXPECT_NEAR(held / double{kTrials}, 0.95, scatter(0.95));
}

// Source: the limits from χ² are exact for normal values: 95 %.
TEST_P(Coverage, TheLimitsOfPpHoldIt) {
  int held = 0;
  for (int i = 0; i < kTrials; ++i) {
    const auto limits = capability_limits(capability(-4, 5, draw(random_, n_).sd), n_);
    const double truth = capability(-4, 5, 1);
    held += limits.low <= truth && truth <= limits.high ? 1 : 0;
  }
  EXPECT_NEAR(held / double{kTrials}, 0.95, scatter(0.95));
}

// Source: simulated independently (numpy, 400 000 trials each): the normal approximation holds 96.3 % at 5 values,
// 95.6 % at 10, 95.3 % at 20, 95.1 % at 30 and 100 for a mean off the middle. Tolerance: 0.1 for the digit stated.
TEST_P(Coverage, TheLimitsOfPpkHoldWhatTheApproximationCan) {
  const double want = n_ == 5 ? 0.963 : n_ == 10 ? 0.956 : n_ == 30 ? 0.951 : 0.9505;
  int held = 0;
  for (int i = 0; i < kTrials; ++i) {
    const auto [mean, sd] = draw(random_, n_, 1);
    const auto limits = centred_capability_limits(centred_capability(mean, sd, -4, 5), n_);
    const double truth = centred_capability(1, 1, -4, 5);
    held += limits.low <= truth && truth <= limits.high ? 1 : 0;
  }
  EXPECT_NEAR(held / double{kTrials}, want, scatter(want) + 0.001);
}

INSTANTIATE_TEST_SUITE_P(Runs, Coverage, testing::Values(5U, 10U, 30U, 100U));

// Source: Welch's interval holds its 95 % nearly exactly; simulated independently (scipy, 200 000 trials, 5 values
// against 8 of three times the scatter): 95.1 %. Tolerance: 0.1 for the digit stated.
TEST(Coverage, TheTwoSampleIntervalHoldsTheDifference) {
  measure::Random random(7);
  int held = 0;
  for (int i = 0; i < kTrials; ++i) {
    const auto a = draw(random, 5, 10), b = draw(random, 8, 12, 3);
    const auto interval = compare::welch_interval({5, a.mean, a.sd}, {8, b.mean, b.sd});
    held += std::abs(interval->difference - 2) <= interval->half_width ? 1 : 0;
  }
  EXPECT_NEAR(held / double{kTrials}, 0.951, scatter(0.951) + 0.001);
}

// Source: Champ and Woodall, Technometrics 29 (1987) 393: with all four rules of Western Electric a process in control
// signals after 91.75 points on average (as quoted by NIST/SEMATECH e-Handbook 6.3.2), with rule 1 alone after 370.4,
// which is 1/(2Φ(−3)). Tolerance: four standard errors; the wait is nearly geometric, so its deviation is its mean.
TEST(RunRules, SignalInControlAsOftenAsPublished) {
  constexpr int series = 6000;
  measure::Random random(91);
  double all = 0, first = 0;
  for (int i = 0; i < series; ++i) {
    std::vector<double> values;
    bool signalled = false;
    for (bool beyond = false; !beyond;) {
      // In pieces, each looked at with the seven points before it.
      const std::size_t before = values.size();
      for (int k = 0; k < 100; ++k) values.push_back(random.normal());
      const std::size_t from = before < 7 ? 0 : before - 7;
      for (const auto& hit : run_rule_hits(std::span(values).subspan(from), 0, 1, RuleSet::kWesternElectric)) {
        const std::size_t at = from + hit.point;
        if (at < before) continue;
        if (!signalled) all += static_cast<double>(at + 1);
        signalled = true;
        if (hit.rule == 1) {
          first += static_cast<double>(at + 1);
          beyond = true;
          break;
        }
      }
    }
  }
  EXPECT_NEAR(all / series, 91.75, 4 * 91.75 / std::sqrt(series));
  EXPECT_NEAR(first / series, 370.4, 4 * 370.4 / std::sqrt(series));
}

}  // namespace
}  // namespace ovenwright::lot
