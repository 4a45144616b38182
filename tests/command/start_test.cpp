// A first recipe for a board that never ran, by the built program.
#include <gtest/gtest.h>

#include <cmath>
#include <fstream>
#include <nlohmann/json.hpp>

#include "tests/command/process.h"

namespace ovenwright {
namespace {

using Json = nlohmann::json;

constexpr const char* kBoard = R"(
name = "Avocet"
length_mm = 160
width_mm = 120
thickness_mm = 1.6
mass_g = 95
[[part]]
name = "T1"
size_mm = [22, 22]
mass_g = 9
)";

class Start : public testing::Test {
 protected:
  Start() {
    write("board.toml", kBoard);
    const std::string demo = std::string{OVENWRIGHT_SOURCE} + "/profiles/demo/";
    write("runs.toml", "oven = \"" + demo + "oven.toml\"\n[[run]]\nlog = \"" + demo + "tern_run1.csv\"\nrecipe = \"" +
                           demo + "recipe.toml\"\nboard = \"" + demo + "board.toml\"\n");
  }
  void write(const std::string& name, const std::string& text) { std::ofstream(folder_.path(name)) << text; }
  Finished started(std::vector<std::string> more = {}) {
    std::vector<std::string> arguments{
        "start",    "--board", folder_.path("board.toml"), "--oven", "profiles/demo/oven.toml", "--window", "sac305",
        "--format", "json"};
    arguments.insert(arguments.end(), more.begin(), more.end());
    return ovenwright_program(arguments);
  }
  static double half_width(const Json& report, const std::string& trace) {
    for (const auto& result : report["predicted"]["results"])
      if (result["measure"] == "peak" && result["trace"] == trace) return result["prediction_half_width"];
    ADD_FAILURE() << "no peak of " << trace;
    return 0;
  }
  Folder folder_;
};

// Source: the contract; whole numbers inside the oven's limits.
TEST_F(Start, GivesARecipeWithABandThatRunsOfTheOvenNarrow) {
  const auto alone = started({"--write-recipe", folder_.path("first.toml")});
  ASSERT_FALSE(alone.out.empty()) << alone.err;
  const auto blind = Json::parse(alone.out);
  EXPECT_EQ(blind["schema"], "ovenwright.start/1");
  EXPECT_TRUE(blind["learned_from"].empty());
  for (const auto& setpoint_C : blind["recipe"]["top_C"]) {
    EXPECT_EQ(setpoint_C.get<double>(), std::round(setpoint_C.get<double>()));
    EXPECT_GE(setpoint_C.get<double>(), 50);
    EXPECT_LE(setpoint_C.get<double>(), 300);
  }
  EXPECT_EQ(blind["recipe"]["top_C"], blind["recipe"]["bottom_C"]);
  EXPECT_FALSE(blind["caution"].get<std::string>().empty());
  const std::string first = contents(folder_.path("first.toml"));
  EXPECT_NE(first.find("Avocet, first recipe"), std::string::npos);
  EXPECT_NE(first.find("# " + blind["caution"].get<std::string>()), std::string::npos);
  EXPECT_EQ(started({"--write-recipe", folder_.path("first.toml")}).status, 4);  // nothing is overwritten
  EXPECT_EQ(contents(folder_.path("first.toml")), first);

  const auto known = Json::parse(started({"--runs", folder_.path("runs.toml")}).out);
  ASSERT_EQ(known["learned_from"].size(), 1U);
  for (const char* trace : {"T1", "smallest parts"}) {
    // Textbook ranges of exchange alone (25 %) leave some 10 °C; a measured board's band is below 2 °C.
    EXPECT_GT(half_width(known, trace), 4) << trace;
    EXPECT_LT(half_width(known, trace), half_width(blind, trace)) << trace;
  }
}

TEST_F(Start, SaysWhatToEnterWhereTheBoardIsNotKnown) {
  write("board.toml", "name = \"Avocet\"\nlength_mm = 160\n");
  const auto done = started();
  EXPECT_EQ(done.status, 5);
  EXPECT_NE(done.err.find("enter thickness_mm"), std::string::npos) << done.err;
}

TEST_F(Start, RefusesRunsOfAnotherOven) {
  const auto other = ovenwright_program({"start", "--board", folder_.path("board.toml"), "--oven", "seven_zone",
                                         "--window", "sac305", "--runs", folder_.path("runs.toml")});
  EXPECT_EQ(other.status, 3);
  EXPECT_NE(other.err.find("an oven with other zones"), std::string::npos) << other.err;
}

}  // namespace
}  // namespace ovenwright
