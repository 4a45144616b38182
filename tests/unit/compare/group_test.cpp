#include "core/compare/group.h"

#include <gtest/gtest.h>

#include "core/compare/margins.h"
#include "tests/unit/compare/made_run.h"

namespace ovenwright::compare {
namespace {

/// A run with one result, "peak" on U1, and the margin that the limits 235 and 250 give around 240 °C.
check::CheckedRun peak_of(std::optional<double> value, judge::Verdict verdict = judge::Verdict::kPass) {
  check::CheckedRun run;
  run.run.channels.emplace_back();
  run.run.channels.back().name = "U1";
  judge::Outcome outcome;
  outcome.requirement_name = "peak";
  outcome.trace = "U1";
  outcome.channel = 0;
  outcome.lower = 235;
  outcome.upper = 250;
  outcome.target = 240;
  outcome.value.value = value;
  outcome.value.expanded_uncertainty = 2;
  outcome.verdict = verdict;
  if (value) outcome.margin = *value < 240 ? (*value - 235) / 5 : (250 - *value) / 10;
  window::ProcessWindow window;
  window.identity.name = "SAC305, general";
  run.judgement.windows = {window};
  run.judgement.results = {outcome};
  run.judgement.verdict = verdict;
  run.judgement.margin = outcome.margin;
  return run;
}

// Source: by hand. Peaks 238, 240, 244: mean 240 2/3; margins 0.6, 1.0, 0.6: mean 11/15.
TEST(Group, HasTheMeanOfValuesAndOfMargins) {
  const check::CheckedRun runs[] = {peak_of(238), peak_of(240), peak_of(244)};
  const check::CheckedRun* all[] = {&runs[0], &runs[1], &runs[2]};
  const auto group = group_of(all);
  ASSERT_EQ(group.means.all_size(), 1U);
  const auto& mean = group.means.all(0);
  EXPECT_NEAR(*mean.value.value, 722.0 / 3, 1e-9);
  EXPECT_FALSE(mean.value.expanded_uncertainty);
  EXPECT_NEAR(*mean.margin, 11.0 / 15, 1e-12);
  EXPECT_NEAR(*group.means.margin, 11.0 / 15, 1e-12);
  EXPECT_EQ(mean.verdict, judge::Verdict::kPass);
  EXPECT_EQ(*group.runs[0][2]->value.value, 244);
}

TEST(Group, IsAsBadAsItsWorstRun) {
  const check::CheckedRun runs[] = {peak_of(238), peak_of(231, judge::Verdict::kFail)};
  const check::CheckedRun* all[] = {&runs[0], &runs[1]};
  const auto group = group_of(all);
  const std::size_t peak[] = {0};
  EXPECT_EQ(group.means.verdict, judge::Verdict::kFail);
  EXPECT_EQ(group.means.all(0).verdict, judge::Verdict::kFail);
  EXPECT_EQ(runs_out(group, peak), 1U);
  // Source: by hand: (238 − 235)/5 and (231 − 235)/5.
  EXPECT_EQ(smallest_margins(group, peak), (std::vector<double>{0.6, -0.8}));
}

TEST(Group, BoundsAndWhatIsMissingGiveNoMargin) {
  check::CheckedRun runs[] = {peak_of(238), peak_of(244), peak_of(std::nullopt, judge::Verdict::kUndetermined)};
  runs[1].judgement.results[0].value.at_least = true;
  runs[1].judgement.results[0].margin_bound = judge::MarginBound::kAtMost;
  const check::CheckedRun* all[] = {&runs[0], &runs[1], &runs[2]};
  const auto group = group_of(all);
  const std::size_t peak[] = {0};
  EXPECT_EQ(*group.means.all(0).value.value, 238);  // the only plain value
  EXPECT_FALSE(group.means.all(0).margin);
  EXPECT_TRUE(smallest_margins(group, peak).empty());
}

TEST(Group, TakesWhatOnlySomeRunsHave) {
  check::CheckedRun runs[] = {peak_of(238), peak_of(244)};
  runs[1].run.channels[0].name = "R2";
  runs[1].judgement.results[0].trace = "R2";
  const check::CheckedRun* all[] = {&runs[0], &runs[1]};
  const auto group = group_of(all);
  EXPECT_EQ(group.traces, (std::vector<std::string>{"U1", "R2"}));
  ASSERT_EQ(group.means.all_size(), 2U);
  EXPECT_EQ(group.means.all(1).channel, 1U);
  EXPECT_EQ(group.runs[1][0], nullptr);
  EXPECT_EQ(*group.runs[1][1]->value.value, 244);
}

// Source: by hand. Margins 0.1, 0.2, 0.3 and 0.7, 0.8, 0.9: means 0.2 and 0.8, sd 0.1 both; Welch's half width
// t(0.975; 4)·√(2·0.01/3) = 2.776445·0.0816497 (any table of t).
TEST(Group, MarginsAtHandAreHeldByTheTwoSampleInterval) {
  const double a[] = {0.1, 0.2, 0.3}, b[] = {0.7, 0.8, 0.9};
  const auto margins = margins_of(a, b);
  EXPECT_NEAR(*margins.a, 0.2, 1e-12);
  EXPECT_EQ(*margins.smallest_b, 0.7);
  EXPECT_NEAR(*margins.expanded_uncertainty, 2.776445 * std::sqrt(0.02 / 3), 1e-6);
  EXPECT_EQ(margins.more, Side::kB);
}

}  // namespace
}  // namespace ovenwright::compare
