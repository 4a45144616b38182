#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "core/compare/compare.h"
#include "core/compare/sentence.h"
#include "tests/unit/lot/made_lot.h"

namespace ovenwright::compare {
namespace {

using testing::HasSubstr;

// Source: by hand. Means 10 and 13 apart, both sd 2.5^½ over 5: half width t(0.975; 8) · √(2·2.5/5) = 2.306004.
TEST(CompareGroups, MeansWithTheTwoSampleInterval) {
  const auto a = lot::runs_of({238, 239, 240, 241, 242}), b = lot::runs_of({241, 242, 243, 244, 245});
  const auto comparison = compare_groups(a, b);
  ASSERT_EQ(comparison.results.size(), 1U);
  const auto& peak = comparison.results[0];
  EXPECT_EQ(*peak.a, 240);
  EXPECT_EQ(*peak.b, 243);
  EXPECT_EQ(peak.n_a, 5U);
  EXPECT_EQ(peak.n_b, 5U);
  EXPECT_NEAR(*peak.expanded_uncertainty, 2.306004, 1e-6);
  EXPECT_EQ(peak.significant, true);
  EXPECT_THAT(comparison.sentence, HasSubstr("most clearly peak on U1: 240.0 to 243.0 °C (+3.0 ± 2.31)."));
}

TEST(CompareGroups, OneRunHasNoInterval) {
  const auto comparison = compare_groups(lot::runs_of({240}), lot::runs_of({241, 242, 243}));
  const auto& peak = comparison.results[0];
  EXPECT_EQ(*peak.difference, 2);
  EXPECT_FALSE(peak.expanded_uncertainty || peak.significant);
  EXPECT_EQ(peak.reason, "an interval needs two runs on each side");
}

TEST(CompareGroups, BoundsAndMissingValuesDoNotCount) {
  auto a = lot::runs_of({240, 241, 242}), b = lot::runs_of({240, 241, 242});
  a[0].results[0].at_least = true;
  for (auto& run : b) run.results[0].value.reset();
  const auto comparison = compare_groups(a, b);
  EXPECT_EQ(comparison.results[0].n_a, 2U);
  EXPECT_EQ(comparison.results[0].n_b, 0U);
  EXPECT_FALSE(comparison.results[0].difference);
  EXPECT_EQ(comparison.results[0].reason, "no run of B has a value");
  EXPECT_FALSE(compare_groups({}, b).results.empty());
}

TEST(CompareGroups, MarginsAreMeansWithTheirSmallest) {
  auto a = lot::runs_of({240, 241, 242}), b = lot::runs_of({240, 241, 242});
  a[0].margin = 0.1, a[1].margin = 0.2, a[2].margin = 0.3;
  b[0].margin = 0.7, b[1].margin = 0.8, b[2].margin = 0.9;
  const auto comparison = compare_groups(a, b);
  EXPECT_NEAR(*comparison.margins.a, 0.2, 1e-12);
  EXPECT_EQ(comparison.margins.smallest_b, 0.7);
  EXPECT_EQ(comparison.margins.more, Side::kB);
  EXPECT_THAT(comparison.sentence, HasSubstr("B has more margin: 80 % against 20 %, means of their runs."));
  b[1].margin.reset();
  EXPECT_FALSE(compare_groups(a, b).margins.b);
}

TEST(CompareGroups, SaysHowManyRunsAreOutAndThatRecipesAreSeveral) {
  auto a = lot::runs_of({240, 241, 242}), b = lot::runs_of({240, 241, 242});
  EXPECT_THAT(compare_groups(a, b).sentence, HasSubstr("No run of either is out."));
  a[0].verdict = judge::Verdict::kFail;
  a[1].verdict = judge::Verdict::kConditionalFail;
  GroupRecipes recipes;
  recipes.several_b = true;
  const auto comparison = compare_groups(a, b, recipes);
  EXPECT_EQ(comparison.out_a, 2U);
  EXPECT_EQ(comparison.out_b, 0U);
  EXPECT_THAT(comparison.sentence, HasSubstr("2 of 3 runs of A are out. No run of B is out."));
  EXPECT_THAT(compose_note(comparison).text,
              HasSubstr("Not all runs of B had the same recipe, so recipes are not compared."));
}

}  // namespace
}  // namespace ovenwright::compare
