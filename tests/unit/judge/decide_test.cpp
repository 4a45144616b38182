#include "core/judge/decide.h"

#include <gtest/gtest.h>

#include <cmath>

#include "core/judge/decide_run.h"

namespace ovenwright::judge {
namespace {

using measure::Measure;
using window::DecisionRule;

// Source: JCGM 106:2012, its worked examples as remembered, arithmetic done apart with an independent normal
// distribution. Upper limit -5.40 V, y = -5.47 V, u = 0.05 V: 0.9192, printed 0.92. Reading 107 km/h, u = 2 % of it:
// above 100 km/h with 0.99946, printed at least 99.9 %. Two-sided cases: the difference of both terms, not the smaller.
struct Probability {
  const char* name;
  double value, u;
  std::optional<double> lower, upper;
  double want, tolerance;  ///< half of the last digit of `want`
};
void PrintTo(const Probability& c, std::ostream* os) { *os << c.name; }
class ConformanceProbability : public testing::TestWithParam<Probability> {};

TEST_P(ConformanceProbability, MatchesTheWorkedExample) {
  const auto& c = GetParam();
  EXPECT_NEAR(conformance_probability(c.value, 2 * c.u, c.lower, c.upper), c.want, c.tolerance);
}
INSTANTIATE_TEST_SUITE_P(Jcgm106, ConformanceProbability,
                         testing::Values(Probability{"breakdown_voltage", -5.47, 0.05, {}, -5.40, 0.9192, 5e-5},
                                         Probability{"speed", 107, 0.02 * 107, 100, {}, 0.99946, 5e-6},
                                         Probability{"soak_118_of_60_to_120", 118, 2, 60, 120, 0.8413, 5e-5},
                                         Probability{"narrow_window", 236.5, 1.5, 235, 238, 0.6827, 5e-5},
                                         Probability{"package_peak", 258.6, 0.9, {}, 260.0, 0.9401, 5e-5},
                                         // From the check plate: peak 232.1 with U 2.1 against 235 to 250 is 0.3 %.
                                         Probability{"peak_2_9_short", 232.1, 1.05, 235, 250, 0.0029, 5e-5}),
                         [](const auto& c) { return std::string{c.param.name}; });

// Source: the false-accept risk of ILAC-G8:09/2019 at the edge of each guard band r·U, r = 0, 0.83, 1, 1.5, 3.
// Tolerance: half of the last printed digit.
TEST(ConformanceProbability, LeavesTheRiskOfEachGuardBand) {
  const double U = 2, limit = 100;
  const auto risk = [&](double r) { return 1 - conformance_probability(limit - r * U, U, {}, limit); };
  EXPECT_NEAR(risk(0), 0.5, 1e-12);
  EXPECT_NEAR(risk(0.83), 0.04846, 5e-6);
  EXPECT_NEAR(risk(0.825), 0.04947, 5e-6);
  EXPECT_NEAR(risk(1), 0.02275, 5e-6);
  EXPECT_NEAR(risk(1.5), 0.001350, 5e-7);
  EXPECT_NEAR(risk(3), 9.87e-10, 5e-13);
}

// Algebra: symmetric in its limits; keeps digits far outside; U = 0 is a step.
TEST(ConformanceProbability, Edges) {
  EXPECT_DOUBLE_EQ(conformance_probability(240, 2, 235, 245), conformance_probability(-240, 2, -245, -235));
  const double far = conformance_probability(0, 2, 30, {});  // Q(30) = 4.9e-198
  EXPECT_GT(far, 1e-199);
  EXPECT_LT(far, 1e-197);
  EXPECT_EQ(conformance_probability(5, 0, 5, 6), 1);
  EXPECT_EQ(conformance_probability(4.99, 0, 5, 6), 0);
  EXPECT_EQ(conformance_probability(4.99, 1, {}, {}), 1);
}

// Source: ILAC-G8:09/2019, 4.2.1 (simple) and 4.2.3 (guarded, w = U), with the boundary to the better word, which the
// guide leaves open. Limits 235 and 250, U 2.1; and the guide's one-sided reading.
struct Decision {
  const char* name;
  double value;
  std::optional<double> lower, upper;
  Verdict simple, guarded;
};
void PrintTo(const Decision& c, std::ostream* os) { *os << c.name; }
class Decide : public testing::TestWithParam<Decision> {};

TEST_P(Decide, FollowsTheRule) {
  const auto& c = GetParam();
  EXPECT_EQ(decide(c.value, 2.1, c.lower, c.upper, DecisionRule::kSimple), c.simple);
  EXPECT_EQ(decide(c.value, 2.1, c.lower, c.upper, DecisionRule::kGuarded), c.guarded);
}
constexpr auto kPass = Verdict::kPass, kCp = Verdict::kConditionalPass, kCf = Verdict::kConditionalFail,
               kFail = Verdict::kFail;
INSTANTIATE_TEST_SUITE_P(
    IlacG8, Decide,
    testing::Values(
        Decision{"middle", 242.5, 235, 250, kPass, kPass}, Decision{"at_guard", 237.1, 235, 250, kPass, kPass},
        Decision{"inside_guard", 237.09, 235, 250, kPass, kCp}, Decision{"at_limit", 235, 235, 250, kPass, kCp},
        Decision{"rounding_in_hand", 235 - 9e-7, 235, 250, kPass, kCp},
        Decision{"just_out", 235 - 2e-6, 235, 250, kFail, kCf}, Decision{"at_outer_guard", 232.9, 235, 250, kFail, kCf},
        Decision{"clear_out", 232.89, 235, 250, kFail, kFail},
        Decision{"upper_at_guard", 247.9, 235, 250, kPass, kPass},
        Decision{"upper_inside_guard", 248, 235, 250, kPass, kCp}, Decision{"upper_out", 250.1, 235, 250, kFail, kCf},
        Decision{"upper_clear", 252.2, 235, 250, kFail, kFail}, Decision{"lower_alone", 300, 235, {}, kPass, kPass},
        Decision{"upper_alone", -300, {}, 250, kPass, kPass},
        Decision{"narrow_cannot_pass", 236.5, 235, 238, kPass, kCp},
        // Narrower than U and outside by less than U: the far limit does not make it worse.
        Decision{"narrow_out", 234, 235, 236, kFail, kCf}),
    [](const auto& c) { return std::string{c.param.name}; });

// Algebra of measures' one rule: 1 at the target, 0 at a limit, straight between, 1 on a side without limit.
TEST(Margin, IsOneAtTheTargetAndZeroAtALimit) {
  EXPECT_DOUBLE_EQ(*margin(242.5, 235, 250, 242.5), 1);
  EXPECT_DOUBLE_EQ(*margin(235, 235, 250, 242.5), 0);
  EXPECT_DOUBLE_EQ(*margin(250, 235, 250, 242.5), 0);
  EXPECT_DOUBLE_EQ(*margin(238.75, 235, 250, 242.5), 0.5);
  EXPECT_DOUBLE_EQ(*margin(227.5, 235, 250, 242.5), -1);
  EXPECT_DOUBLE_EQ(*margin(245, 235, 255, 240), 2.0 / 3);  // a target off the middle: each side its own scale
  EXPECT_DOUBLE_EQ(*margin(300, 235, {}, 240), 1);
  EXPECT_DOUBLE_EQ(*margin(0.5, {}, 3, 1.5), 1);
  EXPECT_NEAR(*margin(233, 235, 250, 242.5), -0.267, 5e-4);  // the example of the file format's description
  EXPECT_NEAR(*margin(0, 45, 90, 67.5), -2, 1e-12);          // never above the liquidus: -200 %
}

TEST(Margin, IsAbsentWithoutLimitsOrTargetOrOutsideThem) {
  EXPECT_FALSE(margin(1, {}, {}, 2));
  EXPECT_FALSE(margin(1, 0, 2, {}));
  EXPECT_FALSE(margin(1, 0, 2, 2));
  EXPECT_FALSE(margin(1, 0, {}, -1));
}

TEST(EffectiveTarget, IsGivenElseTheMiddleElseHalfOfALoneUpperLimit) {
  EXPECT_EQ(effective_target(235, 250, 240, Measure::kPeak), 240);
  EXPECT_EQ(effective_target(235, 250, {}, Measure::kPeak), 242.5);
  EXPECT_EQ(effective_target({}, 3, {}, Measure::kSteepestRise), 1.5);
  EXPECT_EQ(effective_target({}, 480, {}, Measure::kPeakTime), 240);
  EXPECT_EQ(effective_target({}, 10, {}, Measure::kSpreadOfPeaks), 5);
  EXPECT_EQ(effective_target({}, 150, {}, Measure::kWaveStep), 75);
  EXPECT_EQ(effective_target({}, 600, {}, Measure::kAreaAbove), 300);
  EXPECT_FALSE(effective_target({}, 250, {}, Measure::kPeak));
  EXPECT_FALSE(effective_target({}, 130, {}, Measure::kWavePreheatTemperature));
  EXPECT_FALSE(effective_target(45, {}, {}, Measure::kTimeAbove));
  EXPECT_FALSE(effective_target({}, 1, {}, Measure::kExcursionsAbove));
}

Outcome outcome(std::optional<double> lower, std::optional<double> upper, double value, bool at_least) {
  Outcome one;
  one.measure.measure = Measure::kTimeAbove;
  one.lower = lower;
  one.upper = upper;
  one.value.unit = Unit::kSecond;
  one.value.value = value;
  one.value.at_least = at_least;
  one.value.expanded_uncertainty = 3.0;
  return one;
}

// measures, "at least": judged at its bound where that can only get worse or better, else undetermined. Margin: at or
// above the target at most, below it none, at least where only a lower limit exists.
struct AtLeast {
  const char* name;
  std::optional<double> lower, upper;
  double value;
  Verdict simple, guarded;
  std::optional<double> margin;
  MarginBound bound;
};
void PrintTo(const AtLeast& c, std::ostream* os) { *os << c.name; }
class SettleAtLeast : public testing::TestWithParam<AtLeast> {};

TEST_P(SettleAtLeast, IsJudgedAtItsBoundOnlyWhereThatIsSafe) {
  const auto& c = GetParam();
  for (const auto rule : {DecisionRule::kSimple, DecisionRule::kGuarded}) {
    Outcome one = outcome(c.lower, c.upper, c.value, true);
    if (c.name == std::string("lower_alone_with_target_above")) one.target = 60;
    settle(one, rule);
    EXPECT_EQ(one.verdict, rule == DecisionRule::kSimple ? c.simple : c.guarded);
    EXPECT_EQ(one.margin, c.margin);
    EXPECT_EQ(one.margin_bound, c.bound);
    EXPECT_FALSE(one.conformance_probability);
  }
}
constexpr auto kUn = Verdict::kUndetermined;
INSTANTIATE_TEST_SUITE_P(
    Measures, SettleAtLeast,
    testing::Values(AtLeast{"above_upper", 50, 90, 91, kFail, kCf, (90 - 91.0) / 20, MarginBound::kAtMost},
                    AtLeast{"far_above_upper", 50, 90, 94, kFail, kFail, (90 - 94.0) / 20, MarginBound::kAtMost},
                    AtLeast{"at_upper", 50, 90, 90, kUn, kUn, 0, MarginBound::kAtMost},
                    AtLeast{"above_target", 50, 90, 80, kUn, kUn, 0.5, MarginBound::kAtMost},
                    AtLeast{"at_target", 50, 90, 70, kUn, kUn, 1, MarginBound::kAtMost},
                    AtLeast{"below_target", 50, 90, 60, kUn, kUn, {}, MarginBound::kNone},
                    AtLeast{"below_lower_of_two", 50, 90, 40, kUn, kUn, {}, MarginBound::kNone},
                    AtLeast{"upper_alone", {}, 90, 10, kUn, kUn, {}, MarginBound::kNone},
                    AtLeast{"lower_alone_without_target", 50, {}, 51, kPass, kCp, {}, MarginBound::kNone},
                    AtLeast{"lower_alone_with_target_above", 50, {}, 55, kPass, kPass, 0.5, MarginBound::kAtLeast},
                    AtLeast{"lower_alone_short", 50, {}, 49, kUn, kUn, {}, MarginBound::kNone}),
    [](const auto& c) { return std::string{c.param.name}; });

TEST(Settle, CountsHaveNoMarginAndNoProbability) {
  Outcome one = outcome({}, 1, 2, false);
  one.measure.measure = Measure::kExcursionsAbove;
  one.value.unit = Unit::kCount;
  one.value.expanded_uncertainty.reset();
  settle(one, DecisionRule::kGuarded);
  EXPECT_EQ(one.verdict, kFail);
  EXPECT_FALSE(one.margin);
  EXPECT_FALSE(one.conformance_probability);
  one.value.value = 1;
  settle(one, DecisionRule::kGuarded);
  EXPECT_EQ(one.verdict, kPass);
}

TEST(Settle, NotReachedFailsAndUndeterminedIsUndetermined) {
  Outcome one = outcome(50, 90, 0, false);
  one.value.value.reset();
  one.value.no_value = measure::NoValue::kNotReached;
  settle(one, DecisionRule::kSimple);
  EXPECT_EQ(one.verdict, kFail);
  EXPECT_FALSE(one.margin);
  one.value.no_value = measure::NoValue::kUndetermined;
  settle(one, DecisionRule::kSimple);
  EXPECT_EQ(one.verdict, kUn);
}

TEST(Settle, AnUnknownTcLimitIsUndeterminedWhateverTheValue) {
  Outcome one = outcome(50, {}, 10, false);
  one.cause.kind = Cause::Kind::kTcUnknown;
  settle(one, DecisionRule::kSimple);
  EXPECT_EQ(one.verdict, kUn);
  EXPECT_FALSE(one.margin);
}

TEST(Settle, FlagsAWindowNarrowerThanTwoU) {
  Outcome one = outcome(50, 55, 52, false);  // 2U = 6
  settle(one, DecisionRule::kGuarded);
  EXPECT_TRUE(one.cannot_pass);
  settle(one, DecisionRule::kSimple);
  EXPECT_FALSE(one.cannot_pass);
  one.upper = 56;
  settle(one, DecisionRule::kGuarded);
  EXPECT_FALSE(one.cannot_pass);
}

Judgement judgement(std::vector<Outcome> outcomes) {
  Judgement all;
  all.windows.resize(1);
  for (auto& one : outcomes) {
    settle(one, DecisionRule::kSimple);
    all.results.push_back(std::move(one));
  }
  decide_run(all);
  return all;
}

Outcome informative(Outcome one) {
  one.required = false;
  return one;
}

Outcome without_value(measure::NoValue why) {
  Outcome one = outcome(50, 90, 0, false);
  one.value.value.reset();
  one.value.no_value = why;
  return one;
}

// measures, Verdict: the worst of the required results in the order fail, conditional fail, undetermined, conditional
// pass, pass; the margin the smallest of them, none if one has no value.
TEST(DecideRun, TakesTheWorstVerdictAndTheSmallestMarginOfTheRequiredResults) {
  const auto fine = outcome(50, 90, 70, false), close = outcome(50, 90, 88, false), out = outcome(50, 90, 92, false);
  auto all = judgement({fine, close});
  EXPECT_EQ(all.verdict, kPass);
  EXPECT_DOUBLE_EQ(*all.margin, 0.1);
  all = judgement({fine, out, close});
  EXPECT_EQ(all.verdict, kFail);
  EXPECT_DOUBLE_EQ(*all.margin, -0.1);
  all = judgement({fine, informative(out)});
  EXPECT_EQ(all.verdict, kPass);
  EXPECT_DOUBLE_EQ(*all.margin, 1);
  all = judgement({fine, without_value(measure::NoValue::kUndetermined)});
  EXPECT_EQ(all.verdict, kUn);
  EXPECT_FALSE(all.margin);
  all = judgement({out, without_value(measure::NoValue::kUndetermined)});
  EXPECT_EQ(all.verdict, kFail);
  EXPECT_FALSE(all.margin);
  all = judgement({});
  EXPECT_EQ(all.verdict, kPass);
  EXPECT_FALSE(all.margin);
}

TEST(DecideRun, ABoundMakesTheMarginABound) {
  const auto fine = outcome(50, 90, 80, false);
  auto all = judgement({fine, outcome(50, 90, 91, true)});
  EXPECT_DOUBLE_EQ(*all.margin, -0.05);
  EXPECT_EQ(all.margin_bound, MarginBound::kAtMost);
  all = judgement({fine, outcome(50, 90, 60, true)});  // unknown altogether: the true one may be smaller
  EXPECT_DOUBLE_EQ(*all.margin, 0.5);
  EXPECT_EQ(all.margin_bound, MarginBound::kAtMost);
  auto lower_alone = outcome(50, {}, 52, true);
  lower_alone.target = 70;
  all = judgement({fine, lower_alone});
  EXPECT_DOUBLE_EQ(*all.margin, 0.1);
  EXPECT_EQ(all.margin_bound, MarginBound::kAtLeast);
}

TEST(DecideRun, ARunWithoutRequirementsIsUndeterminedWhereBodiesWereLeftOut) {
  Judgement all;
  all.bodies_not_judged = true;
  decide_run(all);
  EXPECT_EQ(all.verdict, kUn);
}

TEST(Summarise, CountsAddUpToTheRequiredResults) {
  const auto all = judgement({outcome(50, 90, 70, false), outcome(50, 90, 92, false),
                              informative(outcome(50, 90, 99, false)), without_value(measure::NoValue::kUndetermined)});
  const auto summary = summarise(all);
  EXPECT_EQ(summary.required, 3);
  EXPECT_EQ(summary.pass, 1);
  EXPECT_EQ(summary.fail, 1);
  EXPECT_EQ(summary.undetermined, 1);
  EXPECT_EQ(summary.of_the_other, 2);
  ASSERT_EQ(summary.smallest.size(), 1u);
  EXPECT_EQ(summary.smallest[0].outcome, 1u);
  EXPECT_EQ(summary.informative_out, std::vector<std::size_t>{2});
}

}  // namespace
}  // namespace ovenwright::judge
