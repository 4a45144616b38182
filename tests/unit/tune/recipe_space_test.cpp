#include "core/tune/recipe_space.h"

#include <gtest/gtest.h>

#include <cmath>
#include <random>

namespace ovenwright::tune {
namespace {

oven::Oven four_zones() {
  oven::Oven oven;
  for (const char* name : {"1", "2", "3", "4"}) oven.zones.push_back({name, oven::ZoneKind::kHeat, 300, 20});
  oven.limits.setpoint_C = {50, 280};
  oven.limits.speed_mm_per_min = {400, 1200};
  oven.limits.step_between_zones_C = 60;
  oven.limits.top_bottom_difference_C = 20;
  return oven;
}

oven::Recipe recipe_of(std::vector<double> top_C, std::vector<double> bottom_C) {
  oven::Recipe recipe;
  recipe.top_C = std::move(top_C);
  recipe.bottom_C = std::move(bottom_C);
  recipe.speed_mm_per_min = 800;
  return recipe;
}

/// Written against the limits themselves, not the space's rows.
void expect_inside(const oven::Oven& oven, const oven::Recipe& recipe) {
  for (std::size_t z = 0; z < recipe.top_C.size(); ++z) {
    for (const auto* side : {&recipe.top_C, &recipe.bottom_C}) {
      EXPECT_GE((*side)[z], (*oven.limits.setpoint_C)[0] - 1e-6);
      EXPECT_LE((*side)[z], (*oven.limits.setpoint_C)[1] + 1e-6);
      EXPECT_NEAR((*side)[z], std::round((*side)[z]), 1e-6);
      const double step = z > 0 ? std::abs((*side)[z] - (*side)[z - 1]) : 0;
      EXPECT_LE(step, *oven.limits.step_between_zones_C + 1e-6);
    }
    EXPECT_LE(std::abs(recipe.top_C[z] - recipe.bottom_C[z]), *oven.limits.top_bottom_difference_C + 1e-6);
  }
  EXPECT_NEAR(recipe.speed_mm_per_min, std::round(recipe.speed_mm_per_min), 1e-6);
}

// Source: the oven's limits, for both sides, also where the bottom is run hotter than the top and only the top is
// searched. Random points; rounding may not push one over a limit.
TEST(RecipeSpace, WhatItAllowsKeepsEveryLimitOnBothSides) {
  const auto oven = four_zones();
  const auto now = recipe_of({150, 180, 220, 260}, {165, 180, 230, 270});
  for (const bool split : {false, true}) {
    Freedom freedom;
    freedom.split_sides = split;
    const RecipeSpace space(oven, now, freedom);
    std::mt19937_64 engine(5);
    std::uniform_real_distribution<double> share(0, 1);
    int allowed = 0;
    for (int round = 0; round < 20000; ++round) {
      std::vector<double> x(space.size());
      for (std::size_t k = 0; k < x.size(); ++k) {
        const double wide = std::lerp(space.lower()[k], space.upper()[k], share(engine));
        x[k] = round % 2
                   ? wide
                   : std::clamp(space.vector(now)[k] + 80 * (share(engine) - 0.5), space.lower()[k], space.upper()[k]);
      }
      if (!space.allows(x)) continue;
      const auto whole = space.rounded(x);
      if (!space.allows(whole)) continue;
      ++allowed;
      expect_inside(oven, space.recipe(whole));
    }
    EXPECT_GT(allowed, 50);
  }
}

TEST(RecipeSpace, RoundingMendsAStepThatItBroke) {
  const auto oven = four_zones();
  const auto now = recipe_of({100, 150, 200, 250}, {100, 150, 200, 250});
  const RecipeSpace space(oven, now, {});
  const auto x = space.vector(now);
  EXPECT_TRUE(space.allows(space.rounded({100.49, 160.49, 220.49, 250, x.back()})));
  EXPECT_TRUE(space.allows(space.rounded({100.5, 160.4999, 220.4998, 250, x.back()})));
}

TEST(RecipeSpace, LockedZonesAndSpeedStay) {
  const auto oven = four_zones();
  Freedom freedom;
  freedom.locked_zones = {"2"};
  freedom.keep_speed = true;
  const RecipeSpace space(oven, recipe_of({150, 180.5, 220, 260}, {150, 180.5, 220, 260}), freedom);
  auto x = space.rounded({140.2, 180.5, 230, 250, 800.0 / RecipeSpace::kSpeedUnit_mm_per_min});
  EXPECT_EQ(x[1], 180.5);
  EXPECT_FALSE(space.allows({150, 181, 220, 260, 800.0 / RecipeSpace::kSpeedUnit_mm_per_min}));
  EXPECT_FALSE(space.allows({150, 180.5, 220, 260, 801.0 / RecipeSpace::kSpeedUnit_mm_per_min}));
}

TEST(RecipeSpace, ReachAndTaktNarrowIt) {
  const auto oven = four_zones();
  Freedom freedom;
  freedom.reach_C = 30;
  freedom.reach_speed = 0.2;
  freedom.min_speed_mm_per_min = 700;
  const RecipeSpace space(oven, recipe_of({150, 180, 220, 260}, {150, 180, 220, 260}), freedom);
  EXPECT_EQ(space.lower()[0], 120);
  EXPECT_EQ(space.upper()[3], 280);  // the oven's own limit is nearer
  EXPECT_DOUBLE_EQ(space.lower().back() * RecipeSpace::kSpeedUnit_mm_per_min, 700);
  EXPECT_DOUBLE_EQ(space.upper().back() * RecipeSpace::kSpeedUnit_mm_per_min, 960);
}

}  // namespace
}  // namespace ovenwright::tune
