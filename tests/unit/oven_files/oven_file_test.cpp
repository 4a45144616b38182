#include "core/oven/oven_file.h"

#include <gtest/gtest.h>

#include <string>

namespace ovenwright::oven {
namespace {

constexpr const char* kOven = R"(name = "Two-zone oven"
ambient_C = 23
entrance_mm = 300
exit_mm = 400
[limits]
setpoint_C = [50, 300]
step_between_zones_C = 60
speed_mm_per_min = [400, 1500]
top_bottom_difference_C = 30
[[zone]]
name = "1"
kind = "heat"
length_mm = 350
gap_after_mm = 40
[[zone]]
name = 2
length_mm = 360
[[zone]]
name = "C1"
kind = "cool"
length_mm = 370
)";
constexpr const char* kRecipe = R"(name = "LF"
oven = "Two-zone oven"
speed_mm_per_min = 800
top_C = [150, 160]
bottom_C = [150, 165.5]
cooling_C = [60]
)";

TEST(OvenFile, ReadsEveryKey) {
  const auto oven = parse_oven("o.toml", kOven);
  ASSERT_TRUE(oven) << oven.error().text();
  EXPECT_EQ(oven->identity.name, "Two-zone oven");
  EXPECT_EQ(oven->ambient_C, 23);
  EXPECT_EQ(oven->limits.setpoint_C, (std::array<double, 2>{50, 300}));
  EXPECT_EQ(oven->limits.step_between_zones_C, 60);
  ASSERT_EQ(oven->zones.size(), 3U);
  EXPECT_EQ(oven->zones[1].name, "2");
  EXPECT_EQ(oven->zones[1].kind, ZoneKind::kHeat);
  EXPECT_EQ(oven->zones[2].kind, ZoneKind::kCool);
  EXPECT_EQ(oven->heating_zones(), 2U);
  // 300 + 350 + 40 + 360 + 0 + 370 + 0 + 400
  EXPECT_EQ(oven->length_mm(), 1820);
}

TEST(RecipeFile, ReadsEveryKey) {
  const auto recipe = parse_recipe("r.toml", kRecipe);
  ASSERT_TRUE(recipe) << recipe.error().text();
  EXPECT_EQ(recipe->oven, "Two-zone oven");
  EXPECT_EQ(recipe->speed_mm_per_min, 800);
  EXPECT_EQ(recipe->bottom_C, (std::vector<double>{150, 165.5}));
  EXPECT_EQ(recipe->cooling_C, (std::vector<double>{60}));
  EXPECT_EQ(recipe->lines.top_C, 4);
}

struct Case {
  const char* name;
  const char* text;
  const char* want;
};
void PrintTo(const Case& c, std::ostream* os) { *os << c.name; }
class OvenErrors : public testing::TestWithParam<Case> {};
class RecipeErrors : public testing::TestWithParam<Case> {};

TEST_P(OvenErrors, SayWhereWhatWasFoundAndWhatWasExpected) {
  const auto oven = parse_oven("o.toml", GetParam().text);
  ASSERT_FALSE(oven);
  EXPECT_EQ(oven.error().text(), GetParam().want);
}
TEST_P(RecipeErrors, SayWhereWhatWasFoundAndWhatWasExpected) {
  const auto recipe = parse_recipe("r.toml", GetParam().text);
  ASSERT_FALSE(recipe);
  EXPECT_EQ(recipe.error().text(), GetParam().want);
}

INSTANTIATE_TEST_SUITE_P(
    Table, OvenErrors,
    testing::Values(Case{"unknown_key", "entrence_mm = 3\n",
                         R"(o.toml:1:1: found the unknown key "entrence_mm", did you mean "entrance_mm"?)"},
                    Case{"unknown_key_in_zone", "[[zone]]\nname = \"1\"\nlength = 3\n",
                         R"(o.toml:3:1: found the unknown key "length" in [[zone]], did you mean "length_mm"?)"},
                    Case{"no_zone", "name = \"x\"\n",
                         R"(o.toml:1:1: missing "zone", expected at least one [[zone]] of kind "heat")"},
                    Case{"no_length", "[[zone]]\nname = \"1\"\n",
                         R"(o.toml:1:1: missing "length_mm" in [[zone]], expected a length above 0)"},
                    Case{"zone_twice", "[[zone]]\nname = \"1\"\nlength_mm = 3\n[[zone]]\nname = \"1\"\nlength_mm = 3\n",
                         R"(o.toml:5:8: found the zone "1" a second time)"},
                    Case{"kind", "[[zone]]\nname = \"1\"\nlength_mm = 3\nkind = \"hot\"\n",
                         R"(o.toml:4:8: found "hot" for "kind", expected "heat" or "cool")"},
                    Case{
                        "limits_crossed", "[limits]\nsetpoint_C = [300, 50]\n",
                        R"(o.toml:2:14: found [300, 50] for "setpoint_C", expected two numbers, the lower one first)"}),
    [](const auto& c) { return std::string{c.param.name}; });

INSTANTIATE_TEST_SUITE_P(
    Table, RecipeErrors,
    testing::Values(
        Case{"unknown_key", "speed_mm_per_min = 1\ntop_c = [1]\nbottom_C = [1]\n",
             R"(r.toml:2:1: found the unknown key "top_c", did you mean "top_C"?)"},
        Case{"no_speed", "top_C = [1]\nbottom_C = [1]\n",
             R"(r.toml:1:1: missing "speed_mm_per_min", expected a speed above 0)"},
        Case{"no_bottom", "speed_mm_per_min = 1\ntop_C = [1]\n",
             R"(r.toml:1:1: missing "bottom_C", expected one setpoint for each heating zone)"},
        Case{"speed_zero", "speed_mm_per_min = 0\ntop_C = [1]\nbottom_C = [1]\n",
             R"(r.toml:1:20: found 0 for "speed_mm_per_min", expected a speed above 0)"},
        Case{"sides_differ", "speed_mm_per_min = 1\ntop_C = [1, 2]\nbottom_C = [1]\n",
             R"(r.toml:3:12: found 2 setpoints in "top_C" but 1 in "bottom_C", expected one for each heating )"
             "zone in both"}),
    [](const auto& c) { return std::string{c.param.name}; });

Result<std::vector<Warning>> checked(const std::string& recipe_text) {
  const auto oven = parse_oven("o.toml", kOven);
  const auto recipe = parse_recipe("r.toml", recipe_text);
  EXPECT_TRUE(oven);
  EXPECT_TRUE(recipe) << recipe.error().text();
  return check_recipe(*recipe, *oven);
}

TEST(CheckRecipe, AGoodOneHasNoWarnings) {
  const auto warnings = checked(kRecipe);
  ASSERT_TRUE(warnings) << warnings.error().text();
  EXPECT_TRUE(warnings->empty());
}

TEST(CheckRecipe, FewerSetpointsThanZonesAreRefused) {
  const auto fewer = checked("speed_mm_per_min = 800\ntop_C = [150]\nbottom_C = [150]\n");
  ASSERT_FALSE(fewer);
  EXPECT_EQ(fewer.error().text(),
            "r.toml:2: found 1 setpoint in \"top_C\", expected 2, one for each heating zone of \"Two-zone oven\"");
  const auto more = checked("speed_mm_per_min = 800\ntop_C = [150, 160, 170]\nbottom_C = [150, 160, 170]\n");
  ASSERT_FALSE(more);
  const auto cooling =
      checked("speed_mm_per_min = 800\ntop_C = [150, 160]\nbottom_C = [150, 160]\ncooling_C = [60, 40]\n");
  ASSERT_FALSE(cooling);
  EXPECT_EQ(cooling.error().where.line, 4);
}

TEST(CheckRecipe, WhatIsBeyondTheOvensLimitsIsAWarning) {
  const auto warnings =
      checked("oven = \"another\"\nspeed_mm_per_min = 1600\ntop_C = [40, 160]\nbottom_C = [150, 165]\n");
  ASSERT_TRUE(warnings) << warnings.error().text();
  ASSERT_EQ(warnings->size(), 5U);
  EXPECT_EQ((*warnings)[0].message, "the recipe is for the oven \"another\", not for \"Two-zone oven\"");
  EXPECT_EQ((*warnings)[1].message, "the speed is 1600 mm/min, outside the oven's 400 to 1500 mm/min");
  EXPECT_EQ((*warnings)[1].where.line, 2);
  EXPECT_EQ((*warnings)[2].message, "top_C of zone 1 is 40 °C, outside the oven's 50 to 300 °C");
  EXPECT_EQ((*warnings)[3].message, "top_C steps by 120 °C from zone 1 to 2, more than the oven's 60 °C");
  EXPECT_EQ((*warnings)[4].message, "top and bottom of zone 1 differ by 110 °C, more than the oven's 30 °C");
}

}  // namespace
}  // namespace ovenwright::oven
