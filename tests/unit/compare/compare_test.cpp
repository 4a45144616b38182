#include "core/compare/compare.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "tests/unit/compare/made_run.h"

namespace ovenwright::compare {
namespace {

using testing::HasSubstr;

class CompareRuns : public testing::Test {
 protected:
  Comparison compared(const Options& options = {}) {
    a_ = run_of(sample_a_);
    b_ = run_of(sample_b_);
    return compare_runs({&a_, &request_a_}, {&b_, &request_b_}, options);
  }
  judge::Sample sample_a_, sample_b_;
  check::Request request_a_, request_b_;
  check::CheckedRun a_, b_;
};

// Source: the rule that on the same thermocouples only noise and sampling count: terms 3, 4, 1, 0 give 2·√(1 + 1).
TEST_F(CompareRuns, SharedErrorsCancel) {
  sample_a_.set(judge::kPeak, judge::kCentre, 240);
  sample_b_.set(judge::kPeak, judge::kCentre, 245);
  const auto comparison = compared();
  EXPECT_TRUE(comparison.same_thermocouples);
  const auto& peak = result_of(comparison, "peak", "U12 centre");
  EXPECT_EQ(*peak.difference, 5);
  EXPECT_DOUBLE_EQ(*peak.expanded_uncertainty, 2 * std::sqrt(2.0));
  EXPECT_EQ(peak.significant, true);
  EXPECT_THAT(comparison.sentence, HasSubstr("1 of 42 results differs by more than its uncertainty, most clearly peak "
                                             "on U12 centre: 240.0 to 245.0 °C (+5.0 ± 2.83)."));
}

// Source: else all terms of both count: √2 · 2·√26 = 14.42.
TEST_F(CompareRuns, OnDifferentThermocouplesAllTermsCount) {
  sample_b_.set(judge::kPeak, judge::kCentre, 247.5);
  const auto comparison = compared({.different_thermocouples = true});
  const auto& peak = result_of(comparison, "peak", "U12 centre");
  EXPECT_EQ(*peak.difference, 5);
  EXPECT_DOUBLE_EQ(*peak.expanded_uncertainty, 2 * std::sqrt(52.0));
  EXPECT_EQ(peak.significant, false);
}

TEST_F(CompareRuns, OtherChannelsOrAnotherBoardAreOtherThermocouples) {
  EXPECT_TRUE(compared().same_thermocouples);
  request_a_.board.emplace().identity.name = "Tern";
  EXPECT_FALSE(compared().same_thermocouples);
  request_b_.board.emplace().identity.name = "Tern";
  EXPECT_TRUE(compared().same_thermocouples);
  request_b_.board->identity.name = "Plover";
  EXPECT_FALSE(compared().same_thermocouples);
  request_b_.board->identity.name = "Tern";
  a_ = run_of(sample_a_);
  b_ = run_of(sample_b_);
  b_.run.channels.pop_back();
  EXPECT_FALSE(compare_runs({&a_, &request_a_}, {&b_, &request_b_}).same_thermocouples);
}

TEST_F(CompareRuns, ARunAgainstItselfDiffersInNothing) {
  sample_a_.with_board();
  sample_b_.with_board();
  const auto comparison = compared();
  EXPECT_EQ(comparison.results.size(), 46U);
  for (const auto& result : comparison.results) {
    EXPECT_EQ(*result.difference, 0);
    EXPECT_EQ(result.significant, false);
  }
  EXPECT_FALSE(comparison.margins.more);
  EXPECT_THAT(comparison.sentence, HasSubstr("None of 46 results differs by more than its uncertainty."));
}

TEST_F(CompareRuns, ChangingPlacesChangesTheSign) {
  sample_b_.set(judge::kPeak, judge::kCentre, 236).set(judge::kAbove, judge::kR118, 80);
  const auto one = compared();
  const auto other = compare_runs({&b_, &request_b_}, {&a_, &request_a_});
  ASSERT_EQ(one.results.size(), other.results.size());
  for (std::size_t i = 0; i < one.results.size(); ++i) {
    EXPECT_EQ(*one.results[i].difference, -*other.results[i].difference);
    EXPECT_EQ(one.results[i].expanded_uncertainty, other.results[i].expanded_uncertainty);
    EXPECT_EQ(one.results[i].significant, other.results[i].significant);
  }
  EXPECT_EQ(one.margins.a, other.margins.b);
}

TEST_F(CompareRuns, ABoundOrNoValueGivesNoDifference) {
  sample_a_.at(judge::kAbove, judge::kR118).value.at_least = true;
  judge::Sample::none(sample_b_.at(judge::kPeak, judge::kCentre), {});
  const auto comparison = compared();
  const auto& above = result_of(comparison, "time above", "R118");
  EXPECT_TRUE(above.a && above.b && above.a_at_least);
  EXPECT_FALSE(above.difference || above.expanded_uncertainty || above.significant);
  EXPECT_EQ(above.reason, "A is a bound only");
  EXPECT_EQ(result_of(comparison, "peak", "U12 centre").reason, "B is undetermined");
}

TEST_F(CompareRuns, WhatOnlyOneHasStandsWithoutDifference) {
  sample_a_.judgement().results.erase(sample_a_.judgement().results.begin());  // steepest rise on R118
  sample_b_.judgement().results.pop_back();                                    // peak time on U12 centre
  const auto comparison = compared();
  EXPECT_EQ(comparison.results.size(), 42U);
  EXPECT_EQ(comparison.results.back().requirement, "steepest rise");
  EXPECT_EQ(comparison.results.back().reason, "A has no such result");
  EXPECT_EQ(result_of(comparison, "peak time", "U12 centre").reason, "B has no such result");
}

// Source: the rule that counts have no uncertainty.
TEST_F(CompareRuns, CountsHaveADifferenceAlone) {
  for (auto* sample : {&sample_a_, &sample_b_}) sample->at(judge::kAbove, judge::kR118).value.unit = Unit::kCount;
  a_ = run_of(sample_a_);
  b_ = run_of(sample_b_);
  b_.judgement.results[12].value.value = 2;
  for (auto* run : {&a_, &b_}) run->judgement.results[12].value.expanded_uncertainty.reset();
  const auto comparison = compare_runs({&a_, &request_a_}, {&b_, &request_b_});
  EXPECT_EQ(comparison.results[12].unit, Unit::kCount);
  EXPECT_TRUE(comparison.results[12].difference);
  EXPECT_FALSE(comparison.results[12].significant);
}

TEST_F(CompareRuns, RecipesGiveChangesAndTheFaster) {
  oven::Oven oven;
  oven.zones = {{"1", oven::ZoneKind::kHeat, 300, 0}, {"C1", oven::ZoneKind::kCool, 300, 0}};
  request_a_.oven = request_b_.oven = oven;
  request_a_.recipe.emplace();
  request_a_.recipe->speed_mm_per_min = 800;
  request_a_.recipe->top_C = request_a_.recipe->bottom_C = {150};
  request_a_.recipe->cooling_C = {60};
  request_b_.recipe = request_a_.recipe;
  EXPECT_TRUE(compared().recipes_known);
  EXPECT_TRUE(compared().recipe_changes.empty());
  EXPECT_FALSE(compared().faster);
  EXPECT_THAT(compared().sentence, HasSubstr("Both run at 800 mm/min."));
  request_b_.recipe->speed_mm_per_min = 760;
  request_b_.recipe->top_C = {157};
  request_b_.recipe->cooling_C = {50};
  const auto comparison = compared();
  EXPECT_EQ(comparison.recipe_changes.size(), 3U);
  EXPECT_EQ(comparison.faster, Side::kA);
  EXPECT_THAT(comparison.sentence, HasSubstr("B makes 5 % fewer boards an hour."));
  request_b_.recipe->top_C = {157, 160};  // of another oven
  EXPECT_FALSE(compared().recipes_known);
}

}  // namespace
}  // namespace ovenwright::compare
