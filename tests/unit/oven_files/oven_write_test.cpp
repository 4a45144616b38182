#include <gtest/gtest.h>

#include <filesystem>
#include <string>

#include "core/files/text_file.h"
#include "core/oven/oven_file.h"

namespace ovenwright::oven {
namespace {

constexpr const char* kOven = R"(# Line 2, beside the door
name = "Line 2"   # as on its plate
entrance_mm = 300 # measured with the cover off

[limits]
setpoint_C = [
  50,  # below that the fans stop
  300, # the maker's
]

[[zone]]
name = "1"
length_mm = 350 # nominal

# rebuilt last year
[[zone]]
name = "C1"
kind = "cool"
length_mm = 370
)";
constexpr const char* kRecipe = R"(# For the line's leader: ask before you change zone 2.
name = "LF"
speed_mm_per_min = 800   # the printer makes no more
top_C    = [150,
            160.5] # zone 2 reads high
bottom_C = [150, 160.5]
)";

std::string replaced(std::string text, const std::string& from, const std::string& to) {
  return text.replace(text.find(from), from.size(), to);
}

TEST(OvenText, ChangesTheValuesAndKeepsAllElse) {
  auto oven = *parse_oven("o.toml", kOven);
  EXPECT_EQ(oven_text(oven, kOven), kOven);
  oven.entrance_mm = 312;
  (*oven.limits.setpoint_C)[1] = 290;
  oven.zones[0].length_mm = 346;
  std::string want = replaced(kOven, "entrance_mm = 300", "entrance_mm = 312");
  want = replaced(replaced(want, "  300,", "  290,"), "length_mm = 350", "length_mm = 346");
  EXPECT_EQ(oven_text(oven, want), want);
  EXPECT_EQ(oven_text(oven, kOven), want);
}

TEST(OvenText, ARenamedZoneKeepsItsPlaceAndItsComments) {
  auto oven = *parse_oven("o.toml", kOven);
  oven.zones[0].name = "1a";
  EXPECT_EQ(oven_text(oven, kOven), replaced(kOven, "name = \"1\"", "name = \"1a\""));
  // Changed places: which comment is whose is not known.
  oven.zones[0].name = "C1", oven.zones[1].name = "1";
  EXPECT_EQ(oven_text(oven, kOven), oven_text(oven));
}

TEST(SaveOven, IsANewRevisionInANewFileWithItsComments) {
  namespace fs = std::filesystem;
  const fs::path folder = fs::path{testing::TempDir()} / "save_oven";
  fs::remove_all(folder);
  fs::create_directories(folder);
  const std::string file = (folder / "line2.toml").string(), next = (folder / "new" / "line2_rev2.toml").string();
  ASSERT_TRUE(files::write_file(file, kOven, files::Existing::kReplace));
  auto oven = *load_oven(file);
  oven.entrance_mm = 312;
  const auto saved = save_oven(oven, "2", next);
  ASSERT_TRUE(saved) << saved.error().text();
  EXPECT_EQ(saved->identity.revision, "2");
  EXPECT_EQ(saved->entrance_mm, 312);
  const std::string text = *files::read_text(next);
  EXPECT_NE(text.find("# measured with the cover off"), std::string::npos) << text;
  EXPECT_EQ(*files::read_text(file), kOven);

  EXPECT_EQ(save_oven(oven, "3", next).error().code, ErrorCode::kIo);  // nothing is overwritten
  EXPECT_EQ(*files::read_text(next), text);
  const std::string other = (folder / "other.toml").string();
  EXPECT_EQ(save_oven(*saved, "2", other).error().code, ErrorCode::kBadArgument);
  EXPECT_EQ(save_oven(oven, "", other).error().code, ErrorCode::kBadArgument);
  oven.zones[1].length_mm = -1;
  EXPECT_EQ(save_oven(oven, "2", other).error().code, ErrorCode::kParse);
  EXPECT_FALSE(fs::exists(other));
}

TEST(OvenText, ReadsBackTheSame) {
  auto oven = *parse_oven("o.toml", kOven);
  oven.limits.speed_mm_per_min = {{400, 1500}};
  oven.limits.step_between_zones_C = 60;
  oven.limits.top_bottom_difference_C = 30;
  oven.identity.revision = "4";
  oven.ambient_C = 22.5;
  oven.zones.push_back({"C2", ZoneKind::kCool, 300, 40});  // a zone more: written anew
  for (const auto& text : {oven_text(oven), oven_text(oven, kOven)}) {
    const auto again = parse_oven("o.toml", text);
    ASSERT_TRUE(again) << again.error().text() << text;
    EXPECT_EQ(again->identity.revision, "4");
    EXPECT_EQ(again->ambient_C, 22.5);
    EXPECT_EQ(again->limits.speed_mm_per_min, oven.limits.speed_mm_per_min);
    EXPECT_EQ(again->limits.setpoint_C, oven.limits.setpoint_C);
    EXPECT_EQ(again->limits.step_between_zones_C, 60);
    EXPECT_EQ(again->limits.top_bottom_difference_C, 30);
    ASSERT_EQ(again->zones.size(), 3U);
    EXPECT_EQ(again->zones[2].name, "C2");
    EXPECT_EQ(again->zones[2].kind, ZoneKind::kCool);
    EXPECT_EQ(again->length_mm(), oven.length_mm());
  }
}

TEST(RecipeText, ChangesTheValuesAndKeepsAllElse) {
  auto recipe = *parse_recipe("r.toml", kRecipe);
  recipe.identity.revision = "8";
  recipe.speed_mm_per_min = 772;
  recipe.top_C[1] = recipe.bottom_C[1] = 168;
  std::string want = replaced(kRecipe, "= 800", "= 772");
  want = replaced(replaced(want, "160.5] #", "168] #"), "[150, 160.5]", "[150, 168]");
  EXPECT_EQ(recipe_text(recipe, kRecipe), want + "revision = \"8\"\n");
}

TEST(RecipeText, CautionsStandAboveOnce) {
  const auto folder = std::filesystem::path(testing::TempDir()) / "recipe_text";
  std::filesystem::create_directories(folder);
  const std::string path = (folder / "rev7.toml").string();
  ASSERT_TRUE(files::write_file(path, kRecipe, files::Existing::kReplace));
  auto recipe = *load_recipe(path);
  const files::Identity from = recipe.identity;
  recipe.top_C[0] = 155;
  const std::string first = changed_recipe_text(recipe, from, {"It is a prediction."});
  EXPECT_EQ(first, "# It is a prediction.\n\n" + replaced(kRecipe, "[150,\n", "[155,\n"));
  ASSERT_TRUE(files::write_file(path, first, files::Existing::kReplace));
  EXPECT_EQ(changed_recipe_text(recipe, from, {"It is a prediction."}), first);
  std::filesystem::remove_all(folder);
  const auto alone = parse_recipe("r.toml", changed_recipe_text(recipe, from, {}));  // the file is gone
  ASSERT_TRUE(alone) << alone.error().text();
  EXPECT_EQ(alone->top_C, recipe.top_C);
}

}  // namespace
}  // namespace ovenwright::oven
