#include "app/desktop/tune/recipe_edit.h"

#include <gtest/gtest.h>

#include "app/desktop/tune/field_format.h"

#include "core/oven/oven_file.h"

namespace ovenwright::desktop {
namespace {

using Kind = RecipeField::Kind;

/// Limits of the demo's oven: 50 to 300 °C, 60 °C from zone to zone, 30 °C between the sides, 400 to 1500 mm/min.
class RecipeEdit : public testing::Test {
 protected:
  RecipeEdit() {
    const auto oven = oven::load_oven(OVENWRIGHT_PROFILES "/demo/oven.toml");
    const auto recipe = oven::load_recipe(OVENWRIGHT_PROFILES "/demo/recipe.toml");
    EXPECT_TRUE(oven && recipe);
    m_recipe = *recipe;
    m_limits.emplace(*oven, m_recipe);
  }
  oven::Recipe m_recipe;  // tops and bottoms 159 153 156 165 182 192 202 234 252 256
  std::optional<RecipeLimits> m_limits;
};

TEST_F(RecipeEdit, BothSidesMoveTogether) {
  const auto result = m_limits->set(m_recipe, {Kind::kTop, 7}, 244, true);
  EXPECT_EQ(result.recipe.top_C[7], 244);
  EXPECT_EQ(result.recipe.bottom_C[7], 244);
  EXPECT_TRUE(result.hit.isEmpty());
}

TEST_F(RecipeEdit, ASideMovesAloneWhereTheyAreApart) {
  const auto result = m_limits->set(m_recipe, {Kind::kBottom, 7}, 224, false);
  EXPECT_EQ(result.recipe.top_C[7], 234);
  EXPECT_EQ(result.recipe.bottom_C[7], 224);
}

TEST_F(RecipeEdit, SidesApartStayAsFarApartWhereTheyMoveTogether) {
  m_recipe.bottom_C[7] = 224;
  const auto result = m_limits->set(m_recipe, {Kind::kTop, 7}, 240, true);
  EXPECT_EQ(result.recipe.bottom_C[7], 230);
}

TEST_F(RecipeEdit, TheStepBetweenZonesStopsASetpointAndIsSaid) {
  // Zone 8 may be 60 °C above zone 7, at 202, and 60 below zone 9, at 252.
  const auto up = m_limits->set(m_recipe, {Kind::kTop, 7}, 290, true);
  EXPECT_EQ(up.recipe.top_C[7], 262);
  EXPECT_TRUE(up.hit.contains(QStringLiteral("zone 7"))) << up.hit.toStdString();
  const auto down = m_limits->set(m_recipe, {Kind::kTop, 7}, 100, true);
  EXPECT_EQ(down.recipe.top_C[7], 192);
  EXPECT_TRUE(down.hit.contains(QStringLiteral("zone 9"))) << down.hit.toStdString();
}

TEST_F(RecipeEdit, TheDifferenceBetweenTheSidesStopsOneSide) {
  const auto result = m_limits->set(m_recipe, {Kind::kBottom, 9}, 200, false);
  EXPECT_EQ(result.recipe.bottom_C[9], 226);  // 30 below the top's 256
  EXPECT_FALSE(result.hit.isEmpty());
}

TEST_F(RecipeEdit, TheSpeedStaysInsideTheOvens) {
  EXPECT_EQ(m_limits->set(m_recipe, {Kind::kSpeed, 0}, 9999, true).recipe.speed_mm_per_min, 1500);
  EXPECT_EQ(m_limits->set(m_recipe, {Kind::kSpeed, 0}, 1, true).recipe.speed_mm_per_min, 400);
}

TEST_F(RecipeEdit, NumbersStandAndStepInTheUnitsThatWereChosen) {
  const RecipeField setpoint{Kind::kTop, 7}, speed{Kind::kSpeed, 0};
  const Format format(TemperatureUnit::kFahrenheit, SpeedUnit::kInchesPerMinute, QLocale::c());
  const FieldFormat field(format);
  // Source: definition of the degree Fahrenheit; the international inch, 25.4 mm.
  EXPECT_EQ(field.withUnit(setpoint, 250), QStringLiteral("482 °F"));
  EXPECT_EQ(field.difference(setpoint, 10), QStringLiteral("+18"));
  EXPECT_NEAR(field.stepped(setpoint, 250, 1), (483 - 32) / 1.8, 1e-9);
  EXPECT_EQ(field.withUnit(speed, 812.8), QStringLiteral("32 in/min"));
  EXPECT_NEAR(field.stepped(speed, 812.8, -1), 31.9 * 25.4, 1e-9);
  EXPECT_NEAR(field.stepped(speed, 810, 1), 31.9 * 25.4, 1e-9);  // 31.89 to the next tenth
}

TEST_F(RecipeEdit, WhatWasRunBeyondTheLimitsMayGoBackAndNoFurther) {
  oven::Recipe beyond = m_recipe;
  beyond.speed_mm_per_min = 1600;
  const RecipeLimits limits(*oven::load_oven(OVENWRIGHT_PROFILES "/demo/oven.toml"), beyond);
  EXPECT_EQ(limits.set(beyond, {Kind::kSpeed, 0}, 1700, true).recipe.speed_mm_per_min, 1600);
  EXPECT_EQ(limits.set(beyond, {Kind::kSpeed, 0}, 1550, true).recipe.speed_mm_per_min, 1550);
}

}  // namespace
}  // namespace ovenwright::desktop
