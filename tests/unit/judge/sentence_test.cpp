#include "core/judge/sentence.h"

#include <gtest/gtest.h>

#include "tests/unit/judge/sample.h"

// Expected texts: the plate of the sentence's states (design, section 6), row by row; where a row has no plate, its
// template. Numbers of a plate follow from the digits it prints.
namespace ovenwright::judge {
namespace {

TEST(Sentence, Pass) {
  Sample run;
  run.with_board().set(kPeak, kCorner, 237.9);
  EXPECT_EQ(run.text(),
            "Pass. All 45 requirements are met. The closest is U12 corner, which peaks at 237.9 ± 2.1 °C, 2.9 °C above "
            "its lower limit.");
  EXPECT_NEAR(*run.judgement().margin, 0.39, 0.005);
}

TEST(Sentence, WindowAssumed) {
  Sample run(DecisionRule::kSimple, {kRise, kSoak, kAbove, kPeak, kFall, kTime});
  run.set(kAbove, kR118, 80.2);
  run.judgement().window_assumed = true;
  EXPECT_EQ(
      run.text(),
      "Pass against SAC305, general (assumed). All 36 requirements are met. The closest is R118, which stays above "
      "217 °C for 80.2 ± 3.0 s, 9.8 s below its upper limit.");
  EXPECT_NEAR(*run.judgement().margin, 0.44, 0.005);
}

TEST(Sentence, BodiesNotJudged) {
  Sample run;
  run.with_board().set(kPeak, kCentre, 237.7);
  run.judgement().bodies_not_judged = true;
  EXPECT_EQ(
      run.text(),
      "Pass. All 45 requirements are met. The closest is U12 centre, which peaks at 237.7 ± 2.1 °C, 2.7 °C above its "
      "lower limit. Body limits are not judged: no board says what is a body.");
}

TEST(Sentence, ConditionalPassOfOne) {
  Sample run;
  run.with_board().set(kPeak, kCorner, 236.0);
  EXPECT_EQ(
      run.text(),
      "Conditional pass. Nothing is out. U12 corner peaks at 236.0 ± 2.1 °C, 1.0 °C above its lower limit, within its "
      "uncertainty.");
}

TEST(Sentence, ConditionalPassOfMore) {
  Sample run;
  run.with_board().set(kPeak, kCorner, 236.0).set(kAbove, kR118, 88.0).set(kPeak, kCentre, 236.5);
  EXPECT_EQ(
      run.text(),
      "Conditional pass. Nothing is out; 3 of 45 lie within their uncertainty of a limit. The tightest: R118 stays "
      "above 217 °C for 88.0 ± 3.0 s, 2.0 s below its upper limit.");
}

TEST(Sentence, ConditionalFailOfOne) {
  Sample run;
  run.with_board().set(kPeak, kCentre, 234.1).zones(kPeak, kCentre, {"8", "9", "10"});
  EXPECT_EQ(run.text(),
            "Conditional fail. U12 centre peaks at 234.1 ± 2.1 °C, 0.9 °C short, within its uncertainty; set by zones "
            "8\u201310.");
  EXPECT_NEAR(*run.judgement().margin, -0.12, 0.005);
}

TEST(Sentence, ConditionalFailOfTwo) {
  Sample run;
  run.with_board().set(kPeak, kCentre, 234.1).set(kPeak, kCorner, 234.5);
  EXPECT_EQ(
      run.text(),
      "Conditional fail. 2 of 45 requirements are out, within their uncertainty. U12 centre and U12 corner peak too "
      "low, by 0.9 and 0.5 °C, within their uncertainty.");
}

TEST(Sentence, FailOfOne) {
  Sample run;
  run.with_board().set(kRise, kR118, 2.73).zones(kRise, kR118, {"1"});
  EXPECT_EQ(run.text(), "Fail. 1 of 45 requirements is out. R118 rises at 2.73 °C/s, 0.23 °C/s too steep, in zone 1.");
  EXPECT_NEAR(*run.judgement().margin, -0.18, 0.005);
}

TEST(Sentence, FailOfTwo) {
  Sample run;
  run.with_board().set(kRise, kR118, 2.73).zones(kRise, kR118, {"1"});
  run.set(kPeak, kCentre, 232.1).zones(kPeak, kCentre, {"8", "9", "10"});
  EXPECT_EQ(
      run.text(),
      "Fail. 2 of 45 requirements are out. U12 centre peaks at 232.1 °C, 2.9 °C short, set by zones 8\u201310. R118 "
      "rises at 2.73 °C/s, 0.23 °C/s too steep, in zone 1.");
  EXPECT_NEAR(*run.judgement().margin, -0.39, 0.005);
}

TEST(Sentence, FailOfMany) {
  Sample run;
  run.with_board().set(kPeak, kCentre, 230.4).set(kPeak, kCorner, 232.4);
  for (const std::size_t channel : {kCentre, kCorner}) run.zones(kPeak, channel, {"8", "9", "10"});
  for (std::size_t channel = 0; channel < 6; ++channel)
    run.set(kSoak, channel, channel == 2 ? 134.2 : 125.0 + static_cast<double>(channel))
        .zones(kSoak, channel, {"3", "4", "5", "6"});
  run.set(kRise, kR118, 2.73).set(kFall, kR118, 4.5);
  EXPECT_EQ(
      run.text(),
      "Fail. 10 of 45 requirements are out. U12 centre and U12 corner peak too low, by 4.6 and 2.6 °C, set by zones "
      "8\u201310. All six soak too long, by up to 14.2 s, in zones 3\u20136. 2 more.");
  EXPECT_NEAR(*run.judgement().margin, -0.61, 0.005);
}

TEST(Sentence, SeveralButNotAllAreNamedByTheWorst) {
  Sample run;
  run.with_board().set(kSoak, 0, 130).set(kSoak, 1, 134).set(kSoak, 2, 132);
  EXPECT_EQ(run.text(),
            "Fail. 3 of 45 requirements are out. D7 lead, U3 body and R118 soak too long, by up to 14.0 s.");
  run.set(kSoak, 3, 131);
  EXPECT_EQ(run.text(),
            "Fail. 4 of 45 requirements are out. D7 lead, U3 body and 2 others soak too long, by up to 14.0 s.");
}

TEST(Sentence, AllJointsAreNotAllPlacements) {
  Sample run;
  std::erase_if(run.judgement().results,
                [](const Outcome& one) { return one.requirement == kSoak && one.channel == 2u; });
  run.judgement().windows[0].requirements[kSoak].applies_to.kind = window::AppliesTo::Kind::kJoint;
  for (const std::size_t channel : {0, 1, 3, 4, 5}) run.set(kSoak, channel, 130);
  EXPECT_EQ(run.text(), "Fail. 5 of 41 requirements are out. All five joints soak too long, by up to 10.0 s.");
}

TEST(Sentence, BothSidesOfOneRequirementAreTwoProblems) {
  Sample run;
  run.with_board().set(kPeak, 0, 254).set(kPeak, kCentre, 230);
  EXPECT_EQ(
      run.text(),
      "Fail. 2 of 45 requirements are out. U12 centre peaks at 230.0 °C, 5.0 °C short. R118 peaks at 254.0 °C, 4.0 °C "
      "too hot.");
}

TEST(Sentence, Undetermined) {
  Sample run;
  run.with_board().open(kCentre, 330.1, 349.6);
  EXPECT_EQ(
      run.text(),
      "Undetermined. 6 of 45 requirements have no value: U12 centre was open from 330.1 to 349.6 s on the log. The "
      "other 39 are met.");
  EXPECT_EQ(summarise(run.judgement()).of_the_other, 39);
  EXPECT_FALSE(run.judgement().margin);
}

TEST(Sentence, UndeterminedForSeveralReasons) {
  Sample run;
  run.with_board().open(kCentre, 330.1, 349.6);
  for (const auto requirement : {kFall, kAbove})
    Sample::none(run.at(requirement, 0), {.kind = Cause::Kind::kLogEndsHot, .channel = 0, .placement = "R118"});
  EXPECT_EQ(
      run.text(),
      "Undetermined. 8 of 45 requirements have no value. For 6, U12 centre was open from 330.1 to 349.6 s on the log. "
      "For 2, the log ends before R118 cools. The other 37 are met.");
  Sample::none(run.at(kLag), {.kind = Cause::Kind::kOther, .detail = "no trace crosses the level"});
  EXPECT_EQ(
      run.text(),
      "Undetermined. 9 of 45 requirements have no value. For 6, U12 centre was open from 330.1 to 349.6 s on the log. "
      "For 2, the log ends before R118 cools. 1 more has another reason. The other 36 are met.");
}

TEST(Sentence, FailAndUndetermined) {
  Sample run;
  run.with_board().open(kCentre, 302.1, 321.6).set(kRise, kR118, 2.73);
  EXPECT_EQ(
      run.text(),
      "Fail. 1 of 45 requirements is out: R118 rises at 2.73 °C/s, 0.23 °C/s too steep. 6 more have no value: U12 "
      "centre was open from 302.1 to 321.6 s on the log.");
  EXPECT_EQ(summarise(run.judgement()).of_the_other, 39);
}

TEST(Sentence, LevelNeverReached) {
  Sample run;
  run.with_board().set(kPeak, kCentre, 209.8).set(kAbove, kCentre, 0).zones(kPeak, kCentre, {"8", "9", "10"});
  Sample::none(run.at(kLag), {}, measure::NoValue::kNotReached);
  run.at(kLag).not_reached_by = {"U12 centre"};
  EXPECT_EQ(
      run.text(),
      "Fail. 3 of 45 requirements are out. U12 centre never reaches 217 °C: it peaks at 209.8 °C, 25.2 °C short, with "
      "0 s above 217 °C, 45 s short; set by zones 8\u201310. The lag at 217 °C has no value: not reached by U12 "
      "centre.");
  const auto summary = summarise(run.judgement());
  EXPECT_EQ(summary.of_the_other, 44);
  ASSERT_EQ(summary.smallest.size(), 2u);
  EXPECT_NEAR(summary.smallest[0].margin, -3.36, 0.005);
  EXPECT_NEAR(summary.smallest[1].margin, -2, 1e-9);
}

TEST(Sentence, LevelNeverReachedByMore) {
  Sample run;
  run.with_board();
  for (const std::size_t channel : {kCentre, kCorner})
    run.set(kPeak, channel, channel == kCentre ? 209.8 : 211.2).set(kAbove, channel, 0);
  EXPECT_EQ(
      run.text(),
      "Fail. 4 of 45 requirements are out. U12 centre and U12 corner never reach 217 °C: they peak at 209.8 and 211.2 "
      "°C, 25.2 and 23.8 °C short, with 0 s above 217 °C, 45 s short.");
  for (std::size_t channel = 0; channel < 6; ++channel) run.set(kPeak, channel, 200).set(kAbove, channel, 0);
  EXPECT_EQ(
      run.text(),
      "Fail. 12 of 45 requirements are out. None of the six reaches 217 °C: they peak up to 35.0 °C short, with 0 s "
      "above 217 °C, 45 s short.");
}

TEST(Sentence, AtLeastWithOthers) {
  Sample run;
  run.with_board().set(kAbove, kR118, 91.4);
  for (std::size_t channel = 0; channel < 6; ++channel) {
    run.at(kAbove, channel).value.at_least = true;
    run.at(kAbove, channel).cause = {
        .kind = Cause::Kind::kLogEndsHot, .channel = channel, .placement = kPlacements[channel]};
  }
  run.judgement().windows[0].decision_rule = DecisionRule::kSimple;
  EXPECT_EQ(
      run.text(),
      "Fail. 1 of 45 requirements is out. R118 stays above 217 °C for at least 91.4 s, 1.4 s or more too long. 5 more "
      "are undetermined: the log ends before they cool.");
  EXPECT_NEAR(*run.judgement().margin, -0.06, 0.005);
  EXPECT_EQ(run.judgement().margin_bound, MarginBound::kAtMost);
}

// Design, section 6: value ± U on conditional verdicts, also where the value is a bound.
TEST(Sentence, AtLeastWithinItsUncertainty) {
  Sample run;
  run.with_board().set(kAbove, kR118, 91.4).zones(kAbove, kR118, {"6"});
  Outcome& time = run.at(kAbove, kR118);
  time.value.at_least = true;
  time.value.expanded_uncertainty = 3;
  time.cause = {.kind = Cause::Kind::kLogEndsHot, .channel = 0, .placement = "R118"};
  EXPECT_EQ(run.text(),
            "Conditional fail. R118 stays above 217 °C for at least 91.4 ± 3.0 s, 1.4 s or more too long, within its "
            "uncertainty; it arises in zone 6; the log ends before it cools.");
}

TEST(Sentence, AtLeastAlone) {
  Sample run(DecisionRule::kSimple);
  run.with_board().set(kAbove, kR118, 91.4);
  run.at(kAbove, kR118).value.at_least = true;
  run.at(kAbove, kR118).cause = {.kind = Cause::Kind::kLogEndsHot, .channel = 0, .placement = "R118"};
  EXPECT_EQ(
      run.text(),
      "Fail. 1 of 45 requirements is out. R118 stays above 217 °C for at least 91.4 s, 1.4 s or more too long; the log "
      "ends before it cools.");
}

TEST(Sentence, TcUnknownSaysWhatToEnter) {
  Sample run;
  run.with_board().at(kPeak, 2).cause = {.kind = Cause::Kind::kTcUnknown,
                                         .channel = 2,
                                         .placement = "U3 body",
                                         .detail = "enter the package thickness and volume of U3 in the board file"};
  EXPECT_EQ(
      run.text(),
      "Undetermined. 1 of 45 requirements is undetermined: Tc is not known, enter the package thickness and volume of "
      "U3 in the board file. The other 44 are met.");
}

TEST(Sentence, ExcursionsAreCountedAndComeLast) {
  Sample run(DecisionRule::kSimple, {kRise});
  for (auto& outcome : run.judgement().results) {
    outcome.measure.measure = Measure::kExcursionsAbove;
    outcome.measure.parameters.level = 217;
    outcome.value.unit = Unit::kCount;
    outcome.value.expanded_uncertainty.reset();
    outcome.upper = 1;
    outcome.value.value = 1;
  }
  run.set(kRise, kR118, 2);
  EXPECT_EQ(run.text(), "Fail. 1 of 6 requirements is out. R118 goes above 217 °C twice, 1 too many.");
  run.set(kRise, kR118, 4);
  EXPECT_EQ(run.text(), "Fail. 1 of 6 requirements is out. R118 goes above 217 °C 4 times, 3 too many.");
  // Once is no plural: of a window that allows none, and as a bound.
  for (auto& outcome : run.judgement().results) {
    outcome.upper = 0;
    outcome.value.value = 0;
  }
  run.set(kRise, kR118, 1);
  EXPECT_EQ(run.text(), "Fail. 1 of 6 requirements is out. R118 goes above 217 °C once, 1 too many.");
}

TEST(Sentence, NothingRequired) {
  Sample run(DecisionRule::kSimple, {});
  EXPECT_EQ(run.text(), "Pass. Nothing is required of this run.");
}

}  // namespace
}  // namespace ovenwright::judge
