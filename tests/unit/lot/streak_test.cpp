#include "core/lot/streak.h"

#include <gtest/gtest.h>

#include <algorithm>

namespace ovenwright::lot {
namespace {

Chart chart_of(const std::vector<double>& values, double centre) {
  Chart chart;
  chart.centre = centre;
  for (std::size_t i = 0; i < values.size(); ++i) chart.points.push_back({i, values[i]});
  return chart;
}

// Source: counted by hand.
TEST(Streak, IsTheLastPointsOnOneSide) {
  const auto below = last_streak(chart_of({12, 8, 11, 9, 7, 9.5}, 10));
  ASSERT_TRUE(below);
  EXPECT_FALSE(below->above);
  EXPECT_EQ(below->points, 3u);
  EXPECT_EQ(below->first, 3u);
  const auto above = last_streak(chart_of({11, 12}, 10));
  ASSERT_TRUE(above);
  EXPECT_TRUE(above->above);
  EXPECT_EQ(above->points, 2u);
  EXPECT_EQ(above->first, 0u);
}

TEST(Streak, APointOnTheCentreEndsItAndHasNone) {
  EXPECT_FALSE(last_streak(chart_of({9, 9, 10}, 10)));
  EXPECT_FALSE(last_streak(chart_of({}, 10)));
  const auto after = last_streak(chart_of({9, 10, 9}, 10));
  ASSERT_TRUE(after);
  EXPECT_EQ(after->points, 1u);
}

// Source: the rules themselves: points that alternate far inside one side of the centre signal by the rule of one side
// and by it alone once there are enough of them.
TEST(Streak, OneSideIsTheRuleThatSuchPointsComplete) {
  for (const auto set : {RuleSet::kWesternElectric, RuleSet::kNelson}) {
    const std::vector<double> values{0.1, 0.2, 0.1, 0.2, 0.1, 0.2, 0.1, 0.2, 0.1};
    const auto hits = run_rule_hits(values, 0, 1, set);
    ASSERT_FALSE(hits.empty());
    EXPECT_TRUE(std::ranges::all_of(hits, [&](const RuleHit& hit) { return is_of_one_side(set, hit.rule); }));
    int rules = 0;
    for (int rule = 1; rule <= rule_count(set); ++rule) rules += is_of_one_side(set, rule) ? 1 : 0;
    EXPECT_EQ(rules, 1);
  }
}

}  // namespace
}  // namespace ovenwright::lot
