// What stands on a change note. Expected texts follow from the recipes given here and the contract of the note.
#include "core/report/change_note.h"

#include <gtest/gtest.h>

namespace ovenwright::report {
namespace {

oven::Oven oven() {
  oven::Oven oven;
  oven.identity.name = "Two-zone oven";
  oven.zones = {{"1", oven::ZoneKind::kHeat, 300, 20},
                {"2", oven::ZoneKind::kHeat, 300, 20},
                {"C1", oven::ZoneKind::kCool, 300, 0}};
  return oven;
}

oven::Recipe recipe(const char* name, double first_C, double second_bottom_C, double cooling_C, double speed) {
  oven::Recipe recipe;
  recipe.identity.name = name;
  recipe.speed_mm_per_min = speed;
  recipe.top_C = {first_C, 250};
  recipe.bottom_C = {first_C, second_bottom_C};
  recipe.cooling_C = {cooling_C};
  return recipe;
}

class Note : public testing::Test {
 protected:
  Note() {
    forecast_.judgement.verdict = judge::Verdict::kPass;
    forecast_.judgement.margin = 0.22;
    forecast_.margin_uncertainty = 0.09;
    forecast_.pass_probability = 0.9999;
    note_.oven = &oven_;
    note_.from = &from_;
    note_.to = &to_;
    note_.predicted = {&forecast_, 1};
    note_.learned_from = {{"run7.csv", "0123abcd", 2, 3, "rev 7", "Tern"}};
  }
  const oven::Oven oven_ = oven();
  const oven::Recipe from_ = recipe("rev 7", 150, 245, 60, 800), to_ = recipe("rev 8", 157, 240, 50, 762);
  tune::Forecast forecast_;
  ChangeNote note_;
};

TEST_F(Note, SaysWhatChangesByZoneSideAndSpeed) {
  const auto text = change_note_text(note_);
  EXPECT_NE(text.find("1         top and bottom   150  157      +7  °C"), std::string::npos) << text;
  EXPECT_NE(text.find("2         bottom           245  240      \u22125  °C"), std::string::npos) << text;
  EXPECT_NE(text.find("C1                          60   50     \u221210  °C"), std::string::npos) << text;
  EXPECT_NE(text.find("conveyor                   800  762     \u221238  mm/min"), std::string::npos) << text;
}

TEST_F(Note, SaysWhatItRestsOn) {
  const auto text = change_note_text(note_);
  EXPECT_NE(text.find("Predicted pass, smallest margin 22 % ± 9 %, passes with a probability of more than 99 %."),
            std::string::npos)
      << text;
  EXPECT_NE(text.find("run7.csv, run 2 of 3, recipe rev 7, board Tern\n    sha256 0123abcd"), std::string::npos)
      << text;
  EXPECT_NE(text.find("Hot surfaces"), std::string::npos);
  EXPECT_NE(text.find("To be confirmed by an instrumented run"), std::string::npos);
  EXPECT_NE(text.find("Signature"), std::string::npos);
  EXPECT_EQ(text.find("not predicted to pass"), std::string::npos);
}

TEST_F(Note, OfARecipeThatIsNotPredictedToPassSaysSoFirst) {
  forecast_.judgement.verdict = judge::Verdict::kFail;
  EXPECT_TRUE(change_note_text(note_).starts_with("CHANGE NOTE\n\nThis recipe is not predicted to pass."));
}

TEST_F(Note, OfARecipeThatIsNotSureToPassSaysSoFirst) {
  EXPECT_EQ(change_note_text(note_).find("not sure to pass"), std::string::npos);
  for (const std::optional<double> chance : {std::optional(0.51), std::optional<double>()}) {
    forecast_.pass_probability = chance;
    EXPECT_TRUE(
        change_note_text(note_).starts_with("CHANGE NOTE\n\nIt is not sure to pass. Make a test run of it first."));
  }
}

TEST_F(Note, OfSidesThatNoRunToldApartWarns) {
  EXPECT_EQ(change_note_text(note_).find("top and bottom are set apart"), std::string::npos);
  note_.sides_untold = true;
  EXPECT_NE(change_note_text(note_).find("Warning: top and bottom are set apart"), std::string::npos);
}

TEST_F(Note, NamesCannotBreakTheLayout) {
  note_.learned_from[0].recipe = "x\nConfirmed by      A. Nobody";
  EXPECT_EQ(change_note_text(note_).find("\nConfirmed by"), std::string::npos);
}

}  // namespace
}  // namespace ovenwright::report
