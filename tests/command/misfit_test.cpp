// What is said where log, oven, recipe and board do not fit together, by the built program. The logs come from the
// simulated oven of simulated.h, whose physics the model does not have, with an instrument's noise and rounding.
#include <gtest/gtest.h>

#include <algorithm>
#include <fstream>
#include <functional>
#include <nlohmann/json.hpp>
#include <random>

#include "tests/command/process.h"
#include "tests/unit/judge/simulated.h"

namespace ovenwright {
namespace {

using Json = nlohmann::json;
using testing::Test;

constexpr const char* kWindow = R"(
name = "wide"
liquidus_C = 217
source = "invented for this test"
[[requirement]]
name = "peak"
measure = "peak"
lower = 225
upper = 260
applies_to = "all"
)";

class Misfit : public Test {
 protected:
  void write(const std::string& name, const std::string& text) { std::ofstream(folder_.path(name)) << text; }

  /// The oven as it is, and recipe.toml as it was set.
  void write_oven() {
    std::string text = "name = \"ten zones\"\nambient_C = 25\nentrance_mm = 300\nexit_mm = 400\n";
    for (const auto& zone : oven_.zones)
      text += "[[zone]]\nname = \"" + zone.name + "\"\nkind = \"" +
              (zone.kind == oven::ZoneKind::kHeat ? "heat" : "cool") + "\"\nlength_mm = 350\ngap_after_mm = 40\n";
    write("oven.toml", text);
    write("window.toml", kWindow);
  }
  void write_recipe(const oven::Recipe& recipe) {
    const auto list = [](const std::vector<double>& values) {
      std::string out;
      for (const double x : values) out += (out.empty() ? "" : ", ") + std::to_string(x);
      return "[" + out + "]\n";
    };
    write("recipe.toml", "name = \"as typed\"\nspeed_mm_per_min = " + std::to_string(recipe.speed_mm_per_min) +
                             "\ntop_C = " + list(recipe.top_C) + "bottom_C = " + list(recipe.bottom_C) +
                             "cooling_C = " + list(recipe.cooling_C));
  }

  /// The log of placements with these time constants, changed by `change` and ended at `end_s`.
  void write_log(const std::vector<double>& time_constants_s, double end_s = 420,
                 const std::function<double(double time_s, double temperature_C)>& change = {}, double start_s = 0) {
    std::vector<run::Channel> channels;
    for (const double tau_s : time_constants_s) channels.push_back(judge::simulate(oven_, recipe_, {tau_s, 40}));
    std::mt19937 random(1);
    std::normal_distribution<double> noise(0, 0.1);
    std::string text = "Time (s)";
    for (std::size_t c = 0; c < channels.size(); ++c) text += ",TC" + std::to_string(c + 1) + " (°C)";
    const auto time_s = channels.front().trace->time_s();
    for (std::size_t i = 0; i < time_s.size() && time_s[i] <= end_s; ++i) {
      if (time_s[i] < start_s) continue;
      text += "\n" + std::to_string(time_s[i]);
      for (const auto& channel : channels) {
        double T = channel.trace->temperature_C()[i];
        if (change) T = change(time_s[i], T);
        text += "," + std::to_string(std::round(10 * (T + noise(random))) / 10);
      }
    }
    write("log.csv", text + "\n");
  }

  Finished ran(const std::string& command, std::vector<std::string> more = {}) {
    std::vector<std::string> arguments{command,    folder_.path("log.csv"),
                                       "--oven",   folder_.path("oven.toml"),
                                       "--recipe", folder_.path("recipe.toml"),
                                       "--window", folder_.path("window.toml"),
                                       "--format", "json"};
    arguments.insert(arguments.end(), more.begin(), more.end());
    return ovenwright_program(arguments);
  }
  /// The fit as `predict` reports it for the recipe that ran.
  Json fit(std::vector<std::string> more = {}) {
    more.insert(more.end(), {"--new-recipe", folder_.path("recipe.toml")});
    const auto done = ran("predict", more);
    EXPECT_FALSE(done.out.empty()) << done.err;
    return done.out.empty() ? Json() : Json::parse(done.out)["fit"];
  }
  static bool warns(const Json& fit, const std::string& of) {
    return std::ranges::any_of(
        fit["warnings"], [&](const Json& warning) { return warning.get<std::string>().find(of) != std::string::npos; });
  }
  /// No suggestion of `tune` says with which chance it passes.
  void states_no_chance(const Finished& tuned) {
    ASSERT_FALSE(tuned.out.empty()) << tuned.err;
    const auto report = Json::parse(tuned.out);
    EXPECT_FALSE(report["suggestions"].empty());
    for (const auto& suggestion : report["suggestions"])
      EXPECT_TRUE(suggestion["predicted"]["pass_probability"].is_null()) << suggestion["predicted"];
  }
  /// `tune` must suggest nothing, say why and end with status 5.
  void refused(const std::string& why, const std::vector<std::string>& more = {}) {
    const auto done = ran("tune", more);
    EXPECT_EQ(done.status, 5) << done.out;
    EXPECT_NE(done.err.find(why), std::string::npos) << done.err;
    if (done.out.empty()) return;
    const auto report = Json::parse(done.out);
    if (report.contains("errors")) {  // nothing could be fitted
      EXPECT_NE(report["errors"][0]["message"].get<std::string>().find(why), std::string::npos) << report;
      EXPECT_FALSE(report.contains("suggestions"));
      return;
    }
    EXPECT_FALSE(report["fit"]["usable"]);
    EXPECT_TRUE(report["suggestions"].empty());
    EXPECT_TRUE(report["infeasible"].is_null());
  }

  Misfit() {
    write_oven();
    write_recipe(recipe_);
  }
  const oven::Oven oven_ = judge::ten_zones();
  const oven::Recipe recipe_ = judge::recipe_of(judge::kSetpoints);
  const std::vector<double> usual_{20, 28, 36};
  Folder folder_;
};

TEST_F(Misfit, AGoodLogRaisesNoAlarm) {
  write_log(usual_);
  const auto report = fit();
  EXPECT_TRUE(report["usable"]) << report["message"];
  EXPECT_TRUE(report["warnings"].empty()) << report["warnings"];
  EXPECT_FALSE(report["contradicted"]);
}

TEST_F(Misfit, ASpeedThatIsFivePerCentWrongIsNamed) {
  write_log(usual_);
  for (const double factor : {0.95, 1.05}) {
    auto typed = recipe_;
    typed.speed_mm_per_min *= factor;
    write_recipe(typed);
    EXPECT_TRUE(
        warns(fit(), factor < 1 ? "% faster than the recipe's 760 mm/min" : "% slower than the recipe's 840 mm/min"))
        << fit()["warnings"];
    EXPECT_TRUE(fit()["contradicted"]);
    states_no_chance(ran("tune"));
  }
}

TEST_F(Misfit, ASpeedThatIsFarWrongGivesNoSuggestion) {
  write_log(usual_);
  for (const double factor : {0.8, 0.9, 1.1, 1.2}) {
    auto typed = recipe_;
    typed.speed_mm_per_min *= factor;
    write_recipe(typed);
    refused("check");
  }
}

TEST_F(Misfit, SwappedZonesAreFound) {
  write_log(usual_);
  auto typed = recipe_;
  for (auto* side : {&typed.top_C, &typed.bottom_C}) std::swap((*side)[3], (*side)[8]);
  write_recipe(typed);
  refused("check that recipe and oven belong to this log");
}

TEST_F(Misfit, TheRecipeOfAnotherProductIsFound) {
  write_log(usual_);
  auto typed = recipe_;
  for (auto* side : {&typed.top_C, &typed.bottom_C})
    for (double& setpoint_C : *side) setpoint_C -= 45;
  write_recipe(typed);
  refused("check");
}

TEST_F(Misfit, ARecipeTypedTooColdThroughoutIsNamed) {
  write_log(usual_);
  auto typed = recipe_;
  for (auto* side : {&typed.top_C, &typed.bottom_C})
    for (double& setpoint_C : *side) setpoint_C -= 20;
  write_recipe(typed);
  EXPECT_TRUE(warns(fit(), "hotter than its setpoint"));
}

TEST_F(Misfit, ARecipeWithFewerZonesIsAnErrorAtItsLine) {
  write_log(usual_);
  auto typed = recipe_;
  typed.top_C.pop_back();
  typed.bottom_C.pop_back();
  write_recipe(typed);
  const auto done = ran("tune");
  EXPECT_EQ(done.status, 3);
  EXPECT_NE(done.err.find("recipe.toml:3"), std::string::npos) << done.err;
}

TEST_F(Misfit, CurvesThatIgnoreTheZonesGiveNoSuggestion) {
  write_log(usual_, 420, [](double time_s, double) { return 25 + time_s * 0.5; });
  refused("");
  refused("", {"--entry", "10"});
}

TEST_F(Misfit, ALogAtRoomTemperatureAsksForTheEntry) {
  write_log(usual_, 420, [](double, double) { return 24.0; });
  refused("does not show when the board entered the oven: no thermocouple rises by more than");
  refused("", {"--entry", "10"});
}

TEST_F(Misfit, OnlyAThermocoupleInTheAirTellsNothingOfABoard) {
  write_log({1.5});
  refused("follows the air");
  write("board.toml", "name = \"none\"\n[[placement]]\nchannel = \"TC1\"\nkind = \"air\"\n");
  refused("no thermocouple on the board", {"--board", folder_.path("board.toml")});
}

TEST_F(Misfit, ALogThatEndsInTheOvenGivesNoSuggestion) {
  write_log(usual_, 240);
  refused("s before the board has left zone 10");
}

TEST_F(Misfit, ALogWithoutCoolingSaysSo) {
  write_log(usual_, 332);
  const auto report = fit();
  EXPECT_TRUE(report["usable"]) << report["message"];
  EXPECT_TRUE(warns(report, "how the board cools is little known")) << report["warnings"];
}

// Where the log begins in the heat, how long it took from 25 °C is only known to be at least so much.
TEST_F(Misfit, ALogThatBeginsInTheOvenLeavesItUndetermined) {
  write("window.toml", std::string(kWindow) + R"(
[[requirement]]
name = "25 °C to peak"
measure = "peak time"
level = 25
upper = 480
applies_to = "all"
)");
  write_log(usual_, 420, {}, 45);
  const auto tuned = ran("tune", {"--entry", "10"});
  EXPECT_EQ(tuned.status, 5) << tuned.err;
  states_no_chance(tuned);
}

TEST_F(Misfit, ALogThatBeginsHotSaysSoWithoutAnEntry) {
  write_log(usual_, 420, {}, 80);
  refused("when the board is in the oven already. Log from before the entry, or give the entry with --entry");
}

TEST_F(Misfit, OneThermocoupleSpeaksForItsPlaceAlone) {
  write_log({30});
  const auto report = fit();
  EXPECT_TRUE(report["usable"]) << report["message"];
  EXPECT_TRUE(warns(report, "one thermocouple only")) << report["warnings"];
}

TEST_F(Misfit, ABoardLongerThanAZoneIsNamed) {
  write_log(usual_);
  write("board.toml",
        "name = \"Godwit\"\nlength_mm = 420\n[[placement]]\nchannel = \"TC1\"\nkind = \"joint\"\nx_mm = 0\n");
  EXPECT_TRUE(warns(fit({"--board", folder_.path("board.toml")}), "Godwit is 420 mm long"));
}

TEST_F(Misfit, NoTraceIsLeftWhereAllAreOpen) {
  write_log(usual_, 420, [](double, double) { return 3276.7; });
  const auto done = ran("tune");
  EXPECT_TRUE(done.status == 3 || done.status == 5) << done.status << done.err;
  EXPECT_FALSE(done.err.empty());
}

TEST_F(Misfit, AnEntryThatIsFarOffIsNamed) {
  write_log(usual_);
  const auto report = fit({"--entry", "16"});  // it was 10
  EXPECT_TRUE(warns(report, "earlier than the one given") || !report["usable"]) << report;
  if (report["usable"]) states_no_chance(ran("tune", {"--entry", "16"}));
  EXPECT_TRUE(fit({"--entry", "10.5"})["warnings"].empty());
}

}  // namespace
}  // namespace ovenwright
