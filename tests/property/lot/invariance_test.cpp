// What holds for the statistics of any lot, on seeded random ones.
#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

#include "core/lot/lot.h"
#include "tests/property/measure/random_log.h"
#include "tests/unit/lot/made_lot.h"

namespace ovenwright::lot {
namespace {

constexpr unsigned kSeeds = 60;
// Sums of some 100 values of a few hundred, rounded at 2^-53 each, divided by a spread of about 1.
constexpr double kRounding = 1e-10;

/// 5 to 100 peaks: scatter, sometimes a drift, a step or an outlier; some rounded so that there are ties.
std::vector<double> random_values(measure::Random& random) {
  std::vector<double> values(5 + random.below(96));
  const double drift = random.one_in(3) ? random.between(-0.1, 0.1) : 0;
  const bool rounded = random.one_in(3);
  for (std::size_t i = 0; i < values.size(); ++i) {
    values[i] = 242 + random.normal() + drift * static_cast<double>(i) + (random.one_in(30) ? 6 : 0);
    if (rounded) values[i] = std::round(2 * values[i]) / 2;
  }
  values[0] = 240;  // never all equal
  return values;
}

Series series_of(const std::vector<Run>& runs, const Options& options = {}) {
  return summarise(runs, options)->series.at(0);
}

void expect_same_indices(const Capability& a, const Capability& b) {
  EXPECT_NEAR(*a.pp, *b.pp, kRounding);
  EXPECT_NEAR(*a.ppk, *b.ppk, kRounding);
  EXPECT_NEAR(*a.ppk_low, *b.ppk_low, kRounding);
  EXPECT_NEAR(*a.ppk_high, *b.ppk_high, kRounding);
}

std::vector<std::pair<int, std::size_t>> signals_of(const Series& series) {
  std::vector<std::pair<int, std::size_t>> all;
  for (const auto& signal : series.control->signals_found) all.emplace_back(signal.rule, signal.run);
  return all;
}

class Lots : public testing::TestWithParam<unsigned> {
 protected:
  measure::Random random_{GetParam()};
  std::vector<double> values_ = random_values(random_);
  Series plain_ = series_of(runs_of(values_));
};

TEST_P(Lots, TheOrderMattersToShortTermFiguresOnly) {
  auto shuffled = values_;
  for (std::size_t i = shuffled.size() - 1; i > 0; --i) std::swap(shuffled[i], shuffled[random_.below(i + 1)]);
  const auto other = series_of(runs_of(shuffled));
  EXPECT_NEAR(*other.mean, *plain_.mean, kRounding);
  EXPECT_NEAR(*other.sd, *plain_.sd, kRounding);
  EXPECT_EQ(*other.minimum, *plain_.minimum);
  EXPECT_EQ(*other.maximum, *plain_.maximum);
  expect_same_indices(other.capability, plain_.capability);
  EXPECT_NEAR((*other.tolerance_interval)[0], (*plain_.tolerance_interval)[0], kRounding);

  auto reversed = values_;
  std::ranges::reverse(reversed);
  const auto back = series_of(runs_of(reversed));
  EXPECT_NEAR(*back.sd_short_term, *plain_.sd_short_term, kRounding);
  EXPECT_NEAR(*back.capability.cpk, *plain_.capability.cpk, kRounding);
}

/// The runs with values and limits taken through v → factor·v + shift; a negative factor changes the limits' places.
std::vector<Run> moved(const std::vector<double>& values, double factor, double shift) {
  auto runs = runs_of(values);
  for (auto& run : runs) {
    auto& result = run.results[0];
    result.value = factor * *result.value + shift;
    const double lower = factor * *result.lower + shift, upper = factor * *result.upper + shift;
    result.lower = std::min(lower, upper);
    result.upper = std::max(lower, upper);
  }
  return runs;
}

TEST_P(Lots, AnotherScaleChangesNoIndexAndNoSignal) {
  // Exact in binary, so that ties and points on a line stay such.
  for (const double factor : {1.0, 4.0, -1.0}) {
    for (const double shift : {0.0, 64.0}) {
      for (const auto rules : {RuleSet::kWesternElectric, RuleSet::kNelson}) {
        const auto want = series_of(runs_of(values_), {.rules = rules});
        const auto other = series_of(moved(values_, factor, shift), {.rules = rules});
        EXPECT_NEAR(*other.mean, factor * *want.mean + shift, kRounding);
        EXPECT_NEAR(*other.sd, std::abs(factor) * *want.sd, kRounding);
        EXPECT_NEAR(*other.sd_short_term, std::abs(factor) * *want.sd_short_term, kRounding);
        expect_same_indices(other.capability, want.capability);
        EXPECT_EQ(signals_of(other), signals_of(want)) << factor << " " << shift;
      }
    }
  }
}

TEST_P(Lots, FiguresStandInOrder) {
  const auto& c = plain_.capability;
  EXPECT_LE(*plain_.minimum, *plain_.mean);
  EXPECT_LE(*plain_.mean, *plain_.maximum);
  EXPECT_LE(*c.ppk, *c.pp);
  EXPECT_LE(*c.cpk, *c.cp);
  EXPECT_LT(*c.ppk_low, *c.ppk);
  EXPECT_LT(*c.ppk, *c.ppk_high);
  EXPECT_LT(*c.pp_low, *c.pp);
  EXPECT_LT(*c.pp, *c.pp_high);
  EXPECT_LT((*plain_.tolerance_interval)[0], *plain_.mean);
  EXPECT_EQ(plain_.n(), values_.size());
}

TEST_P(Lots, SignalsLieWhereTheRunsAre) {
  for (const auto kind : {ChartKind::kIndividuals, ChartKind::kXbarR, ChartKind::kXbarS, ChartKind::kEwma}) {
    const auto series = series_of(runs_of(values_), {kind, 2, RuleSet::kNelson});
    for (const auto* chart : {&series.control, &series.spread}) {
      if (!*chart) continue;
      std::size_t before = 0;
      for (const auto& signal : (*chart)->signals_found) {
        EXPECT_GE(signal.point, before);
        before = signal.point;
        ASSERT_LT(signal.point, (*chart)->points.size());
        EXPECT_EQ(signal.run, (*chart)->points[signal.point].run);
        EXPECT_LT(signal.run, values_.size());
      }
    }
  }
}

INSTANTIATE_TEST_SUITE_P(Seeded, Lots, testing::Range(0U, kSeeds));

}  // namespace
}  // namespace ovenwright::lot
