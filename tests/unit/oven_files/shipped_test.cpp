// Every board, oven and recipe that is shipped loads, and every recipe runs on its oven without a warning.
#include <gtest/gtest.h>

#include "core/board/board_file.h"
#include "core/files/profiles.h"
#include "core/oven/oven_file.h"

namespace ovenwright {
namespace {

std::vector<files::Listed> shipped(files::Kind kind) {
  auto all = files::list_profiles(kind);
  EXPECT_TRUE(all) << all.error().text();
  std::vector<files::Listed> shipped;
  for (auto& listed : *all) {
    if (!listed.users) shipped.push_back(std::move(listed));
  }
  EXPECT_FALSE(shipped.empty());
  return shipped;
}

TEST(Shipped, BoardsLoad) {
  for (const auto& listed : shipped(files::Kind::kBoard)) {
    const auto board = board::load(listed.file);
    ASSERT_TRUE(board) << board.error().text();
    EXPECT_FALSE(board->placements.empty()) << listed.file;
  }
}

TEST(Shipped, RecipesRunOnTheirOvens) {
  for (const auto& listed : shipped(files::Kind::kOven)) {
    const auto oven = oven::load_oven(listed.file);
    ASSERT_TRUE(oven) << oven.error().text();
  }
  for (const auto& listed : shipped(files::Kind::kRecipe)) {
    const auto recipe = oven::load_recipe(listed.file);
    ASSERT_TRUE(recipe) << recipe.error().text();
    ASSERT_TRUE(recipe->oven.has_value()) << listed.file;
    const auto oven = oven::find_oven(*recipe->oven);
    ASSERT_TRUE(oven) << oven.error().text();
    const auto warnings = oven::check_recipe(*recipe, *oven);
    ASSERT_TRUE(warnings) << warnings.error().text();
    EXPECT_TRUE(warnings->empty()) << listed.file << ": " << warnings->front().message;
  }
}

}  // namespace
}  // namespace ovenwright
