// The way from a measured run to another recipe, run as a process on the demo.
#include <gtest/gtest.h>

#include <algorithm>
#include <map>
#include <nlohmann/json.hpp>

#include "tests/command/process.h"

namespace ovenwright {
namespace {

using Json = nlohmann::json;

std::vector<std::string> demo(std::vector<std::string> arguments,
                              const std::string& recipe = "profiles/demo/recipe.toml") {
  for (const auto& more :
       {std::string{"--oven"}, std::string{"profiles/demo/oven.toml"}, std::string{"--recipe"}, recipe,
        std::string{"--board"}, std::string{"profiles/demo/board.toml"}, std::string{"--format"}, std::string{"json"}})
    arguments.push_back(more);
  return arguments;
}

// Source: the demo's second run, made by another model (scripts/make_demo.py) with the very recipe that is predicted.
// Tolerance: the band that the prediction itself states, 95 %, plus 0.2 °C for the noise of the second log's maximum.
TEST(Predict, TheSecondRunLiesInItsBand) {
  const auto predicted = ovenwright_program(
      demo({"predict", "profiles/demo/tern_run1.csv", "--new-recipe", "profiles/demo/recipe_rev8.toml"}));
  ASSERT_EQ(predicted.status, 0) << predicted.err;
  const auto measured = ovenwright_program({"measure", "profiles/demo/tern_run2.csv", "--board",
                                            "profiles/demo/board.toml", "--measure", "peak", "--format", "json"});
  ASSERT_EQ(measured.status, 0) << measured.err;
  std::map<std::string, double> peak_C;
  const auto measures = Json::parse(measured.out);
  for (const auto& result : measures["results"]) peak_C[result["trace"]] = result["value"];
  const auto report = Json::parse(predicted.out);
  EXPECT_TRUE(report["fit"]["usable"]);
  ASSERT_EQ(report["traces"].size(), peak_C.size());
  for (const auto& trace : report["traces"]) {
    const auto T = trace["temperature_C"].get<std::vector<double>>();
    const auto top = static_cast<std::size_t>(std::max_element(T.begin(), T.end()) - T.begin());
    EXPECT_NEAR(T[top], peak_C.at(trace["name"]), trace["band_C"][top].get<double>() + 0.2) << trace["name"];
  }
}

// Source: the contract. The first run fails; a suggestion passes, in whole °C and inside the oven's limits, with its
// caution.
TEST(Tune, SuggestsARecipeThatIsPredictedToPass) {
  const auto tuned = ovenwright_program(
      demo({"tune", "profiles/demo/tern_run1.csv", "--window", "profiles/demo/window.toml", "--keep-speed"}));
  ASSERT_EQ(tuned.status, 0) << tuned.err;
  const auto report = Json::parse(tuned.out);
  EXPECT_EQ(report["schema"], "ovenwright.tune/1");
  EXPECT_EQ(report["now"]["verdict"], "fail");
  ASSERT_FALSE(report["suggestions"].empty());
  EXPECT_EQ(report["suggestions"][0]["aim"], "least change");
  for (const auto& suggestion : report["suggestions"]) {
    EXPECT_GE(suggestion["predicted"]["margin"].get<double>(), 0);
    EXPECT_FALSE(suggestion["caution"].get<std::string>().empty());
    EXPECT_EQ(suggestion["recipe"]["speed_mm_per_min"], 810);  // --keep-speed
    for (const auto& setpoint_C : suggestion["recipe"]["top_C"])
      EXPECT_EQ(setpoint_C.get<double>(), std::round(setpoint_C.get<double>()));
  }
}

// Source: the rule that a bad fit never gives a confident suggestion.
TEST(Tune, ARecipeThatDoesNotBelongToTheLogGivesNoSuggestion) {
  const auto tuned = ovenwright_program(
      demo({"tune", "profiles/demo/tern_run1.csv", "--window", "profiles/demo/window.toml", "--entry", "3"},
           "tests/data/command/cold_recipe.toml"));
  EXPECT_EQ(tuned.status, 5) << tuned.out;
  const auto report = Json::parse(tuned.out);
  EXPECT_FALSE(report["fit"]["usable"]);
  EXPECT_TRUE(report["suggestions"].empty());
}

// Source: the contract of the note; the log's digest as sha256sum gives it.
TEST(Tune, WritesAChangeNoteToSign) {
  const Folder folder;
  const auto tuned =
      ovenwright_program(demo({"tune", "profiles/demo/tern_run1.csv", "--window", "profiles/demo/window.toml",
                               "--keep-speed", "--note", folder.path("note.txt"), "--note-for", "most margin"}));
  ASSERT_EQ(tuned.status, 0) << tuned.err;
  const auto note = contents(folder.path("note.txt"));
  const auto report = Json::parse(tuned.out);
  for (const auto& suggestion : report["suggestions"])
    if (suggestion["aim"] == "most margin") {
      EXPECT_NE(note.find(suggestion["recipe"]["name"].get<std::string>()), std::string::npos) << note;
    }
  EXPECT_NE(note.find("d40cd78c6dde7c184c4f38200bb7401ac16f16998c50309b39c1721c3d3689c0"), std::string::npos) << note;
  EXPECT_NE(note.find("A qualified person confirms it with an instrumented run"), std::string::npos) << note;
  // With the speed kept there is no fastest.
  EXPECT_EQ(ovenwright_program(demo({"tune", "profiles/demo/tern_run1.csv", "--window", "profiles/demo/window.toml",
                                     "--keep-speed", "--note", folder.path("none.txt"), "--note-for", "fastest"}))
                .status,
            1);
  EXPECT_EQ(folder.names(), std::vector<std::string>{"note.txt"});
}

TEST(Tune, NeedsAWindowAndARecipeForEachLog) {
  EXPECT_EQ(ovenwright_program(demo({"tune", "profiles/demo/tern_run1.csv"})).status, 2);
  EXPECT_EQ(ovenwright_program(
                {"tune", "profiles/demo/tern_run1.csv", "--window", "sac305", "--oven", "profiles/demo/oven.toml"})
                .status,
            2);
}

}  // namespace
}  // namespace ovenwright
