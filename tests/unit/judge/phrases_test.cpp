#include "core/judge/phrases.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <set>

namespace ovenwright::judge {
namespace {

TEST(Phrases, EveryTemplateIsAWholeSentenceWithClosedLinksAndFields) {
  const auto ids = sentence_ids();
  EXPECT_EQ(std::set<std::string>(ids.begin(), ids.end()).size(), ids.size());
  for (const auto& id : ids) {
    for (const int count : {1, 2}) {
      const std::string text = Phrases().text(id, count);
      ASSERT_FALSE(text.empty()) << id;
      EXPECT_EQ(std::ranges::count(text, '['), std::ranges::count(text, ']')) << id << ": " << text;
      EXPECT_EQ(std::ranges::count(text, '{'), std::ranges::count(text, '}')) << id << ": " << text;
      EXPECT_TRUE(text.ends_with(".") || text.ends_with(".]") || text.ends_with("?]") || text.ends_with(":"))
          << id << ": " << text;
      EXPECT_EQ(text.find("  "), std::string::npos) << id << ": " << text;
    }
  }
}

TEST(Phrases, WhatIsPredictedIsToldInTemplatesOfItsOwn) {
  for (const auto& id : sentence_ids()) {
    if (!is_told_of_predictions(id) || id.starts_with("chance")) continue;
    const std::string own = kOfPredictions + id;
    EXPECT_NE(Phrases().text(own, 2), Phrases().text(id, 2)) << id;
    EXPECT_FALSE(is_told_of_predictions(own)) << id;
  }
  EXPECT_EQ(Phrases().text("predicted.verdict.fail", 1), "[verdict:Predicted fail.]");
  EXPECT_EQ(Phrases().text("predicted.verdict.pass.assumed", 1),
            "[verdict:Predicted pass] [window:against {window} (assumed)].");
  EXPECT_EQ(Phrases().text("predicted.bodies", 1), "");
}

TEST(Phrases, AnUnknownIdHasNoText) {
  EXPECT_EQ(Phrases().text("", 1), "");
  EXPECT_EQ(Phrases().text("problem", 1), "");
  EXPECT_EQ(Phrases().text("problem.nothing.low.one", 1), "");
  EXPECT_EQ(Phrases().text("closest.", 1), "");
}

TEST(Phrases, ZonesInARowBecomeARange) {
  const Phrases english;
  EXPECT_EQ(english.zones({"1"}), "zone 1");
  EXPECT_EQ(english.zones({"8", "9", "10"}), "zones 8\u201310");
  EXPECT_EQ(english.zones({"9", "10"}), "zones 9 and 10");
  EXPECT_EQ(english.zones({"1", "3", "4", "5", "C1"}), "zones 1, 3\u20135 and C1");
  EXPECT_EQ(english.zones({"C1", "C2"}), "zones C1 and C2");
  EXPECT_EQ(english.zones({"soak", "peak"}), "zones soak and peak");
}

TEST(Phrases, CountsUpToTwelveAreWords) {
  EXPECT_EQ(Phrases().count_word(6), "six");
  EXPECT_EQ(Phrases().count_word(13), "13");
}

}  // namespace
}  // namespace ovenwright::judge
