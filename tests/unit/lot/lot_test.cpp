#include "core/lot/lot.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "core/lot/sentence.h"
#include "core/lot/tolerance.h"
#include "tests/unit/lot/made_lot.h"

namespace ovenwright::lot {
namespace {

using judge::Verdict;
using testing::HasSubstr;

Lot summary(const std::vector<Run>& runs, const Options& options = {}) {
  auto lot = summarise(runs, options);
  EXPECT_TRUE(lot);
  return *std::move(lot);
}

// Source: by hand. Values 240 241 242 243 244 (+ 0): mean 242, sd √2.5, moving ranges all 1, so sd_short_term 1/1.128;
// Pp = 15/(6·√2.5), Ppk = min(8, 7)/(3·√2.5); Cp = 15/(6/1.128), Cpk = 7/(3/1.128). Tolerance: rounding.
TEST(Lot, FiguresByHand) {
  const auto lot = summary(runs_of({240, 241, 242, 243, 244}));
  ASSERT_EQ(lot.series.size(), 1U);
  const auto& s = lot.series[0];
  EXPECT_EQ(s.n(), 5U);
  EXPECT_DOUBLE_EQ(*s.mean, 242);
  EXPECT_DOUBLE_EQ(*s.sd, std::sqrt(2.5));
  EXPECT_EQ(*s.minimum, 240);
  EXPECT_EQ(*s.maximum, 244);
  EXPECT_DOUBLE_EQ(*s.sd_short_term, 1 / 1.128);
  EXPECT_DOUBLE_EQ(*s.capability.pp, 15 / (6 * std::sqrt(2.5)));
  EXPECT_DOUBLE_EQ(*s.capability.ppk, 7 / (3 * std::sqrt(2.5)));
  EXPECT_DOUBLE_EQ(*s.capability.cp, 15 * 1.128 / 6);
  EXPECT_DOUBLE_EQ(*s.capability.cpk, 7 * 1.128 / 3);
  // The factor is checked against published values in its own test: 5.0769 for five.
  EXPECT_NEAR((*s.tolerance_interval)[0], 242 - 5.0769 * std::sqrt(2.5), 1e-4);
  EXPECT_NEAR((*s.tolerance_interval)[1], 242 + 5.0769 * std::sqrt(2.5), 1e-4);
  ASSERT_TRUE(s.control && s.spread);
  EXPECT_DOUBLE_EQ(s.control->upper, 242 + 3 / 1.128);
  EXPECT_EQ(s.spread->kind, ChartKind::kMovingRange);
  EXPECT_EQ(s.note, "5 runs are few");
  EXPECT_EQ(lot.weakest, 0U);
}

TEST(Lot, OneLimitGivesPpkAlone) {
  auto runs = runs_of({240, 241, 242, 243, 244});
  for (auto& run : runs) run.results[0].lower.reset();
  const auto c = summary(runs).series[0].capability;
  EXPECT_FALSE(c.pp || c.pp_low || c.cp);
  EXPECT_DOUBLE_EQ(*c.ppk, 8 / (3 * std::sqrt(2.5)));
  EXPECT_DOUBLE_EQ(*c.cpk, 8 * 1.128 / 3);
}

void expect_no_index(const Series& s) {
  const auto& c = s.capability;
  EXPECT_FALSE(c.pp || c.pp_low || c.pp_high || c.ppk || c.ppk_low || c.ppk_high || c.cp || c.cpk);
  EXPECT_FALSE(s.tolerance_interval && s.unit == Unit::kCount);
}

TEST(Lot, BelowFiveRunsNoIndex) {
  const auto s = summary(runs_of({240, 241, 242, 243})).series[0];
  expect_no_index(s);
  EXPECT_FALSE(s.tolerance_interval);
  EXPECT_TRUE(s.sd);
  EXPECT_EQ(s.note, "4 runs, an index needs 5");
}

TEST(Lot, ARunWithoutValueOrWithABoundGivesNoIndex) {
  auto runs = runs_of({240, 241, 242, 243, 244, 245});
  runs[2].results[0].value.reset();
  auto s = summary(runs).series[0];
  expect_no_index(s);
  EXPECT_FALSE(s.tolerance_interval);
  EXPECT_EQ(s.n(), 5U);
  EXPECT_EQ(s.without_value, 1U);
  EXPECT_EQ(s.note, "1 of 6 runs without a value");
  EXPECT_EQ(s.points[2].run, 3U);  // the hole keeps its place in time

  runs[2].results[0].value = 242;
  runs[2].results[0].at_least = true;
  s = summary(runs).series[0];
  expect_no_index(s);
  EXPECT_EQ(s.bounds, 1U);
  EXPECT_EQ(s.note, "1 of 6 runs with a bound only");

  runs[2].results.clear();
  EXPECT_EQ(summary(runs).series[0].without_value, 1U);
}

TEST(Lot, LimitsThatChangedGiveNoIndex) {
  auto runs = runs_of({240, 241, 242, 243, 244});
  runs[4].results[0].upper = 245;
  const auto s = summary(runs).series[0];
  expect_no_index(s);
  EXPECT_FALSE(s.lower || s.upper);
  EXPECT_TRUE(s.tolerance_interval);  // needs no limit
  EXPECT_EQ(s.note, "the limits changed within the lot");
}

TEST(Lot, EqualRunsHaveNoSpread) {
  const auto s = summary(runs_of(std::vector<double>(7, 241.3))).series[0];
  EXPECT_EQ(*s.mean, 241.3);
  EXPECT_EQ(*s.sd, 0);
  EXPECT_EQ(*s.sd_short_term, 0);
  expect_no_index(s);
  EXPECT_EQ(s.note, "all values are equal");
  EXPECT_TRUE(s.control->signals_found.empty());
}

TEST(Lot, CountsHaveNoIndex) {
  auto runs = runs_of({1, 1, 2, 1, 1});
  for (auto& run : runs) run.results[0].unit = Unit::kCount;
  expect_no_index(summary(runs).series[0]);
}

TEST(Lot, OneRunAndNone) {
  const auto one = summary(runs_of({240}));
  EXPECT_FALSE(one.series[0].sd || one.series[0].sd_short_term || one.series[0].control);
  EXPECT_EQ(*one.series[0].mean, 240);
  EXPECT_THAT(one.sentence, HasSubstr("The run passes"));
  const auto none = summary({});
  EXPECT_EQ(none.verdict, Verdict::kUndetermined);
  EXPECT_TRUE(none.series.empty());
  EXPECT_FALSE(none.margin);
  EXPECT_EQ(none.sentence, "Undetermined. The lot has no run.");
}

// Source: the order of severity: fail, conditional fail, undetermined, conditional pass, pass.
TEST(Lot, TheVerdictIsTheWorstOfItsRuns) {
  auto runs = runs_of({240, 241, 242, 243, 244});
  EXPECT_EQ(summary(runs).verdict, Verdict::kPass);
  runs[1].verdict = Verdict::kConditionalPass;
  EXPECT_EQ(summary(runs).verdict, Verdict::kConditionalPass);
  runs[2].verdict = Verdict::kUndetermined;
  EXPECT_EQ(summary(runs).verdict, Verdict::kUndetermined);
  runs[3].verdict = Verdict::kConditionalFail;
  EXPECT_EQ(summary(runs).verdict, Verdict::kConditionalFail);
  runs[0].verdict = Verdict::kFail;
  const auto lot = summary(runs);
  EXPECT_EQ(lot.verdict, Verdict::kFail);
  EXPECT_EQ(lot.fail, 1U);
  EXPECT_THAT(lot.sentence, HasSubstr("2 of 5 runs are out, 1 is undetermined"));
}

TEST(Lot, TheMarginIsTheSmallestOrNone) {
  auto runs = runs_of({240, 241, 242});
  runs[1].margin = -0.05;
  EXPECT_EQ(*summary(runs).margin, -0.05);
  EXPECT_EQ(summary(runs).margin_bound, judge::MarginBound::kNone);
  runs[2].margin_bound = judge::MarginBound::kAtMost;
  EXPECT_EQ(summary(runs).margin_bound, judge::MarginBound::kAtMost);
  runs[0].margin.reset();
  EXPECT_FALSE(summary(runs).margin);
}

TEST(Lot, ResultsOfOneNameInTwoWindowsStayApart) {
  auto runs = runs_of({240, 241, 242, 243, 244});
  for (auto& run : runs) {
    run.results.push_back(run.results[0]);  // the same window twice
    run.results.push_back(run.results[0]);
    run.results.back().window = "bodies";
  }
  const auto lot = summary(runs);
  ASSERT_EQ(lot.series.size(), 2U);
  EXPECT_EQ(lot.series[0].n(), 5U);
  EXPECT_EQ(lot.series[1].window, "bodies");
}

/// `count` runs of a soak between T1 and 200 °C, with the values from, from + 1, …
std::vector<Run> soaks(double T1, double from, int count) {
  std::vector<Run> runs;
  for (int i = 0; i < count; ++i) {
    RunResult result;
    result.window = "Tern";
    result.requirement = "soak time";
    result.trace = "U1";
    result.measure = measure::Measure::kTimeBetweenOnRise;
    result.unit = Unit::kSecond;
    result.parameters.T1 = T1;
    result.parameters.T2 = 200.0;
    result.value = from + i;
    result.lower = 40;
    result.upper = 120;
    runs.push_back({"r", Verdict::kPass, 0.4, judge::MarginBound::kNone, {result}});
  }
  return runs;
}

// Source: by hand. A revision of the window lets the soak begin at 160 instead of 150 °C. Values 80 … 85 and 60 … 65:
// sd √3.5 each; Ppk = min(42.5, 37.5)/(3·√3.5) and 22.5/(3·√3.5). Pooled, the sd would be above 10.
TEST(Lot, OneDefinitionIsOneSeries) {
  auto runs = soaks(150, 80, 6);
  const auto later = soaks(160, 60, 6);
  runs.insert(runs.end(), later.begin(), later.end());
  const auto lot = summary(runs);
  ASSERT_EQ(lot.series.size(), 2U);
  const double means[] = {82.5, 62.5}, nearest[] = {37.5, 22.5};
  for (int i = 0; i < 2; ++i) {
    const auto& s = lot.series[static_cast<std::size_t>(i)];
    EXPECT_EQ(s.n(), 6U);
    EXPECT_EQ(s.without_value, 0U);
    EXPECT_EQ(s.measured_otherwise, 6U);
    EXPECT_DOUBLE_EQ(*s.mean, means[i]);
    EXPECT_NEAR(*s.sd, std::sqrt(3.5), 1e-12);  // rounding of sums of 6 values below 100
    EXPECT_NEAR(*s.capability.ppk, nearest[i] / (3 * std::sqrt(3.5)), 1e-12);
    EXPECT_TRUE(s.tolerance_interval);
    EXPECT_THAT(s.note, HasSubstr("6 of 12 runs measured otherwise"));
  }
  EXPECT_EQ(requirement_of(lot.series[0]), "soak time (time between on rise, 150 to 200 °C)");
  EXPECT_THAT(lot.sentence, HasSubstr("Not measured alike in all runs, with a row for each definition: soak time."));
  // Another run without a value counts against its own definition alone.
  runs.push_back(soaks(160, 0, 1).front());
  runs.back().results[0].value.reset();
  const auto more = summary(runs);
  EXPECT_TRUE(more.series[0].capability.ppk);
  EXPECT_FALSE(more.series[1].capability.ppk);
  EXPECT_EQ(more.series[1].without_value, 1U);
}

TEST(Lot, SubgroupsAndEwma) {
  std::vector<double> values;
  for (int i = 0; i < 12; ++i) values.push_back(240 + i % 3);
  const auto xbar = summary(runs_of(values), {ChartKind::kXbarR, 3}).series[0];
  EXPECT_EQ(xbar.control->points.size(), 4U);
  EXPECT_EQ(xbar.spread->kind, ChartKind::kRange);
  const auto few = summary(runs_of({240, 241, 242, 243, 244}), {ChartKind::kXbarS, 3}).series[0];
  EXPECT_FALSE(few.control || few.spread);
  const auto ewma = summary(runs_of(values), {ChartKind::kEwma}).series[0];
  EXPECT_EQ(ewma.control->kind, ChartKind::kEwma);
  EXPECT_FALSE(ewma.spread);
  EXPECT_FALSE(summarise(runs_of(values), {ChartKind::kXbarR, 1}));
  EXPECT_FALSE(summarise(runs_of(values), {ChartKind::kXbarR, 26}));
  EXPECT_FALSE(summarise(runs_of(values), {ChartKind::kEwma, 5, RuleSet::kNelson, 0}));
}

TEST(Lot, TheSentenceNamesTheWeakestAndTheSignal) {
  std::vector<double> values(20, 240);
  for (std::size_t i = 0; i < values.size(); ++i) values[i] += i % 2 == 0 ? 0 : 1;
  values[12] = 249;
  const auto lot = summary(runs_of(values));
  EXPECT_THAT(lot.sentence, HasSubstr("Pass. All 20 runs pass; the smallest margin is 40 %."));
  EXPECT_THAT(lot.sentence, HasSubstr("Least capable: peak on U1, Ppk "));
  EXPECT_THAT(lot.sentence, HasSubstr("over 20 runs, which are few."));
  EXPECT_THAT(
      lot.sentence,
      HasSubstr("The control chart of peak on U1 signals at r13: Western Electric 1: 1 point beyond 3 sigma; 2 more."));
}

TEST(Lot, AJudgementBecomesARun) {
  judge::Judgement judgement;
  judgement.windows.resize(1);
  judgement.windows[0].identity.name = "SAC305, general";
  judgement.verdict = Verdict::kConditionalPass;
  judgement.margin = 0.2;
  judge::Outcome outcome;
  outcome.requirement_name = "peak";
  outcome.trace = "U1";
  outcome.value.value = 241;
  outcome.value.at_least = true;
  outcome.upper = 250;
  outcome.required = false;
  judgement.results.push_back(outcome);
  outcome.requirement_name = "lag";
  outcome.trace.clear();
  judgement.board_results.push_back(outcome);
  const auto run = run_of("QM-4712/3", judgement);
  EXPECT_EQ(run.id, "QM-4712/3");
  EXPECT_EQ(run.verdict, Verdict::kConditionalPass);
  ASSERT_EQ(run.results.size(), 2U);
  EXPECT_EQ(run.results[0].window, "SAC305, general");
  EXPECT_TRUE(run.results[0].at_least);
  EXPECT_FALSE(run.results[0].required);
  EXPECT_EQ(run.results[0].upper, 250);
  EXPECT_EQ(run.results[1].trace, "");
}

}  // namespace
}  // namespace ovenwright::lot
