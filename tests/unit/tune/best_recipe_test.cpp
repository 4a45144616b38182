#include "core/tune/best_recipe.h"

#include <gtest/gtest.h>

#include <cmath>
#include <set>

namespace ovenwright::tune {
namespace {

Limit limit(bool upper, double slack, double half_width, bool common = true) {
  Limit out;
  out.upper = upper;
  out.slack = slack;
  out.half_width = half_width;
  out.common = common;
  return out;
}

Point point(std::vector<Limit> limits) {
  Point out;
  out.limits = std::move(limits);
  return out;
}

// Source: the definition, by hand. Half widths of 2: a shared error of at most 2 and an own one of at most 1 for each.
TEST(MayPass, OneErrorCannotHeatOneJointAndCoolAnother) {
  EXPECT_TRUE(may_pass(point({limit(false, 1, 2), limit(true, 1, 2)})));     // inside as predicted
  EXPECT_TRUE(may_pass(point({limit(false, -2.9, 2), limit(true, 3, 2)})));  // all read 2 low, this one 0.9 more
  EXPECT_FALSE(may_pass(point({limit(false, -3.1, 2), limit(true, 9, 2)})));
  EXPECT_TRUE(may_pass(point({limit(false, -0.9, 2), limit(true, -0.9, 2)})));   // each by its own error
  EXPECT_FALSE(may_pass(point({limit(false, -1.9, 2), limit(true, -1.9, 2)})));  // each alone might
}

TEST(MayPass, WhatDoesNotShareTheErrorHasAllOfItsOwn) {
  EXPECT_TRUE(may_pass(point({limit(true, -1.9, 2, false), limit(false, -2.9, 2)})));
  EXPECT_FALSE(may_pass(point({limit(true, -2.1, 2, false), limit(false, 5, 2)})));
}

TEST(MayPass, BoardsOfOneOvenShareItsError) {
  auto cold = limit(false, -1.9, 2), hot = limit(true, -1.9, 2);
  hot.board = 1;
  EXPECT_FALSE(may_pass(point({cold, hot})));
}

// Source: a half width is 1.96 standard deviations; Φ(1.96) = 0.9750021, Φ(1) = 0.8413447 (tables of the normal
// distribution).
TEST(PointChance, IsThatOfOneCommonErrorForEachKind) {
  EXPECT_NEAR(point({limit(true, 1, 1.96)}).chance(), 0.8413447, 1e-6);
  EXPECT_NEAR(point({limit(false, 2, 2), limit(true, 2, 2)}).chance(), 2 * 0.9750021 - 1, 1e-6);
  // Two lower limits are one: if the tighter holds, so does the other.
  EXPECT_NEAR(point({limit(false, 2, 2), limit(false, 5, 2)}).chance(), 0.9750021, 1e-6);
  auto rise = limit(true, 2, 2);
  rise.kind = Limit::Kind::kRise;
  EXPECT_NEAR(point({limit(true, 2, 2), rise}).chance(), 0.9750021 * 0.9750021, 1e-6);
  EXPECT_EQ(point({limit(false, -1, 2), limit(true, -1, 2)}).chance(), 0);
  auto other_board = limit(true, 1, 1.96);
  other_board.board = 1;
  EXPECT_NEAR(point({limit(true, 2, 2), other_board}).chance(), 0.8413447, 1e-6);
}

// Starts lie within the oven's bounds, differ, and leave alone what is locked.
TEST(OtherStarts, StayWithinTheBounds) {
  oven::Oven oven;
  for (const char* name : {"1", "2", "3", "4", "5"}) oven.zones.push_back({name, oven::ZoneKind::kHeat, 300, 20});
  oven.limits.setpoint_C = {60, 280};
  oven.limits.speed_mm_per_min = {600, 1200};
  oven::Recipe now;
  now.top_C = now.bottom_C = {120, 150, 180, 230, 255};
  now.speed_mm_per_min = 800;
  for (const bool split : {false, true}) {
    Freedom freedom;
    freedom.locked_zones = {"3"};
    freedom.split_sides = split;
    const RecipeSpace space(oven, now, freedom);
    const auto x = space.vector(now);
    const auto starts = other_starts(space, x);
    EXPECT_GT(starts.size(), 5u);
    std::set<std::vector<double>> seen{x};
    for (const auto& start : starts) {
      ASSERT_EQ(start.size(), x.size());
      for (std::size_t k = 0; k < x.size(); ++k) {
        EXPECT_GE(start[k], space.lower()[k]);
        EXPECT_LE(start[k], space.upper()[k]);
      }
      EXPECT_EQ(start[2], 180) << "locked";
      EXPECT_TRUE(seen.insert(start).second) << "one start twice";
    }
  }
}

}  // namespace
}  // namespace ovenwright::tune
