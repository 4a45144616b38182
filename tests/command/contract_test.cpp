// The keys of the JSON that every command promises, by running the built program on the demo. Source: the contract of
// the command: keys are only ever added, so each listed here stays, in every object it was promised for.
#include <gtest/gtest.h>

#include <cmath>
#include <fstream>
#include <map>
#include <nlohmann/json.hpp>
#include <set>
#include <string>
#include <vector>

#include "tests/command/process.h"

namespace ovenwright {
namespace {

using Json = nlohmann::json;
using Keys = std::vector<const char*>;

const std::string kDemo = "profiles/demo/";
const Keys kIdentity{"name", "revision", "sha256"};
const Keys kRun{"log",     "entry",   "board",  "oven",     "recipe",  "traces",
                "windows", "verdict", "margin", "sentence", "results", "board_results"};
const std::set<std::string> kVerdicts{"pass", "conditional pass", "conditional fail", "fail", "undetermined"};
const std::set<std::string> kFaults{"open",      "over-range",         "dropout",        "spike",
                                    "stuck",     "reversed polarity",  "detached",       "swapped placement",
                                    "clock gap", "cold-junction step", "time going back"};
const std::set<std::string> kUnits{"degC", "s", "degC/s", "degC*s", "count"};

/// Runs the command with --format json. A status that was not to be expected is a failure.
Json printed(std::vector<std::string> arguments, const std::set<int>& statuses = {0, 1, 5}) {
  arguments.insert(arguments.end(), {"--format", "json"});
  const auto finished = ovenwright_program(arguments);
  EXPECT_TRUE(statuses.count(finished.status)) << finished.status << finished.err;
  return Json::parse(finished.out, nullptr, false);
}

std::vector<std::string> line_of(std::vector<std::string> arguments, const std::string& recipe = "recipe.toml") {
  for (const auto* more : {"--window", "window.toml", "--board", "board.toml", "--oven", "oven.toml"})
    arguments.push_back(*more == '-' ? more : kDemo + more);
  arguments.insert(arguments.end(), {"--recipe", kDemo + recipe});
  return arguments;
}

void has(const Json& object, const Keys& keys, const std::string& what) {
  ASSERT_TRUE(object.is_object()) << what << ": " << object.dump().substr(0, 200);
  for (const char* key : keys) EXPECT_TRUE(object.contains(key)) << what << " lacks " << key;
}
void each_has(const Json& list, const Keys& keys, const std::string& what) {
  ASSERT_TRUE(list.is_array()) << what;
  for (const auto& one : list) has(one, keys, what);
}
void is_identity(const Json& value, const std::string& what) {
  if (!value.is_null()) has(value, kIdentity, what);
}

void faults_hold(const Json& faults) {
  each_has(faults, {"kind", "from_s", "to_s", "action"}, "fault");
  for (const auto& fault : faults) {
    EXPECT_TRUE(kFaults.count(fault["kind"])) << fault;
    EXPECT_TRUE(fault["action"] == "removed" || fault["action"] == "flagged") << fault;
  }
}

void log_holds(const Json& log) {
  has(log, {"file", "sha256", "bytes", "part", "read_as", "sample_interval_s", "duration_s", "faults"}, "log");
  has(log["read_as"],
      {"encoding", "delimiter", "decimal", "time", "unit", "header_line", "rows", "rows_skipped", "assumed", "notes"},
      "read_as");
  if (!log["part"].is_null()) has(log["part"], {"index", "of", "from_s", "to_s"}, "part");
  faults_hold(log["faults"]);
}

void traces_hold(const Json& traces) {
  each_has(traces, {"name", "channel", "kind", "label", "samples", "faults"}, "trace");
  for (const auto& trace : traces) faults_hold(trace["faults"]);
}

void value_holds(const Json& result) {
  has(result, {"measure", "parameters", "trace", "value", "unit", "expanded_uncertainty", "from_s", "to_s"}, "result");
  EXPECT_TRUE(kUnits.count(result["unit"])) << result;
  EXPECT_EQ(result["value"].is_null(), result.contains("no_value")) << result;
  if (result.contains("no_value")) {
    EXPECT_TRUE(result["no_value"] == "not reached" || result["no_value"] == "undetermined") << result;
    EXPECT_FALSE(result["reason"].get<std::string>().empty()) << result;
  }
}

void results_hold(const Json& results) {
  for (const auto& result : results) {
    value_holds(result);
    has(result,
        {"requirement", "uncertainty_terms", "lower", "upper", "target", "source", "margin", "verdict",
         "conformance_probability", "zones", "zone_shares", "risk", "required"},
        "result");
    EXPECT_TRUE(kVerdicts.count(result["verdict"])) << result;
    each_has(result["zone_shares"], {"zone", "side", "share"}, "zone share");
    std::map<std::string, double> shares;
    for (const auto& share : result["zone_shares"]) shares[share["zone"]] += share["share"].get<double>();
    for (const auto& [zone, share] : shares) {
      const auto& named = result["zones"];
      EXPECT_EQ(std::find(named.begin(), named.end(), zone) != named.end(), share >= 0.1 - 1e-9) << zone << result;
    }
    // What is out says what it risks.
    const bool out = result["verdict"] == "fail" || result["verdict"] == "conditional fail";
    EXPECT_EQ(out && result["risk"].is_null(), false) << result;
    if (!result.contains("bound")) continue;
    EXPECT_EQ(result["bound"], "at least");
    EXPECT_TRUE(result["conformance_probability"].is_null()) << result;
  }
}

void run_holds(const Json& run) {
  has(run, kRun, "run");
  log_holds(run["log"]);
  if (!run["entry"].is_null()) has(run["entry"], {"at_s", "uncertainty_s", "found_from"}, "entry");
  for (const char* key : {"board", "oven", "recipe"}) is_identity(run[key], key);
  traces_hold(run["traces"]);
  each_has(run["windows"], {"name", "revision", "sha256", "decision_rule", "assumed"}, "window");
  results_hold(run["results"]);
  results_hold(run["board_results"]);
  for (const auto& result : run["results"]) EXPECT_FALSE(result["trace"].is_null());
  for (const auto& result : run["board_results"]) EXPECT_TRUE(result["trace"].is_null());
  EXPECT_TRUE(kVerdicts.count(run["verdict"]));
}

void recipe_holds(const Json& recipe) { has(recipe, {"name", "speed_mm_per_min", "top_C", "bottom_C"}, "recipe"); }
void changes_hold(const Json& changes) {
  for (const auto& change : changes) {
    if (change.contains("zone"))
      has(change, {"zone", "side", "from_C", "to_C"}, "change");
    else
      has(change, {"speed_from_mm_per_min", "speed_to_mm_per_min"}, "change");
  }
}
void predicted_holds(const Json& predicted) {
  has(predicted, {"verdict", "margin", "margin_uncertainty", "pass_probability", "results"}, "predicted");
  results_hold(predicted["results"]);
}
void fit_holds(const Json& fit) {
  has(fit, {"usable", "rmse_C", "termination", "iterations", "not_determined", "warnings", "traces"}, "fit");
  each_has(fit["traces"], {"name", "rmse_C", "max_error_C"}, "trace of the fit");
}

TEST(Contract, Check) {
  const auto report = printed(line_of({"check", kDemo + "tern_run1.csv", kDemo + "tern_run2.csv"}));
  EXPECT_EQ(report["schema"], "ovenwright.check/1");
  ASSERT_EQ(report["runs"].size(), 2U);
  for (const auto& run : report["runs"]) run_holds(run);
  EXPECT_FALSE(report["runs"][0]["entry"].is_null());
  for (const auto& log : {"tests/data/command/ends_rising.csv", "tests/data/command/too_cold.csv"})
    run_holds(printed({"check", log})["runs"][0]);
  run_holds(printed({"check", kDemo + "tern_faults.txt", "--window", kDemo + "window.toml"})["runs"][0]);
  const auto unread = printed({"check", kDemo + "tern_run2.csv", "missing.csv"}, {3});
  EXPECT_EQ(unread["runs"].size(), 1U);
  ASSERT_EQ(unread["errors"].size(), 1U);
  has(unread["errors"][0], {"file", "line", "column", "found", "expected", "message"}, "error");
}

TEST(Contract, Measure) {
  const auto report = printed({"measure", kDemo + "tern_run1.csv", "--measure", "time above, level=217", "--measure",
                               "lag, level=217", "--measure", "peak"});
  EXPECT_EQ(report["schema"], "ovenwright.measure/1");
  has(report, {"log", "traces", "results"}, "measure");
  log_holds(report["log"]);
  traces_hold(report["traces"]);
  ASSERT_EQ(report["results"].size(), 13U);  // six traces twice, the board once
  for (const auto& result : report["results"]) value_holds(result);
  EXPECT_EQ(report["results"][0]["parameters"]["level"], 217);
  EXPECT_TRUE(report["results"][6]["trace"].is_null());
}

TEST(Contract, Lists) {
  for (const std::string kind : {"windows", "ovens", "boards", "recipes"}) {
    const auto listed = printed({kind});
    ASSERT_FALSE(listed[kind].empty());
    each_has(listed[kind], {"name", "title", "revision", "file", "source"}, kind);
  }
}

TEST(Contract, Predict) {
  auto arguments = line_of({"predict", kDemo + "tern_run1.csv"});
  arguments.insert(arguments.end(), {"--new-recipe", kDemo + "recipe_rev8.toml"});
  const auto report = printed(arguments);
  EXPECT_EQ(report["schema"], "ovenwright.predict/1");
  fit_holds(report["fit"]);
  ASSERT_EQ(report["traces"].size(), 6U);
  for (const auto& trace : report["traces"]) {
    has(trace, {"name", "time_s", "temperature_C", "band_C"}, "trace");
    EXPECT_EQ(trace["time_s"].size(), trace["temperature_C"].size());
    EXPECT_EQ(trace["time_s"].size(), trace["band_C"].size());
  }
  const auto& judged = report["judged"];
  run_holds(judged);
  // As a run of check on the log, but with the new recipe; the log and its entry are the measured run's.
  const auto checked = printed(line_of({"check", kDemo + "tern_run1.csv"}))["runs"][0];
  EXPECT_EQ(judged["log"]["sha256"], checked["log"]["sha256"]);
  EXPECT_EQ(judged["entry"]["at_s"], checked["entry"]["at_s"]);
  EXPECT_EQ(judged["oven"], checked["oven"]);
  EXPECT_EQ(judged["board"], checked["board"]);
  EXPECT_EQ(judged["windows"], checked["windows"]);
  EXPECT_EQ(judged["recipe"]["revision"], "8");
  EXPECT_EQ(judged["results"].size(), checked["results"].size());
  EXPECT_EQ(judged["board_results"].size(), checked["board_results"].size());
}

TEST(Contract, Tune) {
  const auto report = printed(line_of({"tune", kDemo + "tern_run1.csv"}));
  EXPECT_EQ(report["schema"], "ovenwright.tune/1");
  has(report, {"fit", "now", "suggestions", "infeasible", "next_run"}, "tune");
  fit_holds(report["fit"]);
  has(report["now"], {"verdict", "margin"}, "now");
  const std::set<std::string> aims{"least change", "most margin", "fastest", "coolest"};
  ASSERT_FALSE(report["suggestions"].empty());
  for (const auto& suggestion : report["suggestions"]) {
    has(suggestion, {"aim", "recipe", "changes", "predicted", "sentence", "caution"}, "suggestion");
    EXPECT_TRUE(aims.count(suggestion["aim"]));
    recipe_holds(suggestion["recipe"]);
    changes_hold(suggestion["changes"]);
    predicted_holds(suggestion["predicted"]);
  }
}

TEST(Contract, Start) {
  const auto report =
      printed({"start", "--board", kDemo + "board.toml", "--oven", kDemo + "oven.toml", "--window", "sac305"});
  EXPECT_EQ(report["schema"], "ovenwright.start/1");
  has(report, {"recipe", "predicted", "learned_from", "sentence"}, "start");
  recipe_holds(report["recipe"]);
  predicted_holds(report["predicted"]);
}

TEST(Contract, Compare) {
  auto arguments = line_of({"compare", kDemo + "tern_run1.csv", kDemo + "tern_run2.csv"});
  arguments.insert(arguments.end(), {"--recipe", kDemo + "recipe_rev8.toml"});
  const auto report = printed(arguments);
  EXPECT_EQ(report["schema"], "ovenwright.compare/1");
  has(report, {"aligned_at", "results", "recipes", "margin", "sentence"}, "compare");
  EXPECT_EQ(report["aligned_at"], "oven entry");
  each_has(report["results"],
           {"requirement", "trace", "a", "b", "difference", "unit", "expanded_uncertainty", "significant"}, "result");
  changes_hold(report["recipes"]["changes"]);
  has(report["margin"], {"a", "b"}, "margin");
}

TEST(Contract, ArchiveAndLot) {
  const Folder folder;
  const std::vector<std::string> kept{"--archive", folder.path("runs.db")};
  const auto in_archive = [&](std::vector<std::string> arguments) {
    arguments.insert(arguments.end(), kept.begin(), kept.end());
    return printed(std::move(arguments));
  };
  const auto added = in_archive(line_of({"archive", "add", kDemo + "tern_run1.csv", "--lot", "QM-1"}));
  EXPECT_EQ(added["schema"], "ovenwright.archive/1");
  ASSERT_EQ(added["added"].size(), 1U);
  each_has(added["added"], {"id", "log", "sha256", "verdict", "margin"}, "added");
  const auto again = in_archive(line_of({"archive", "add", kDemo + "tern_run1.csv", "--lot", "QM-1"}));
  ASSERT_EQ(again["already"].size(), 1U);
  each_has(again["already"], {"id", "log"}, "already");
  const auto list = in_archive({"archive", "list"});
  EXPECT_EQ(list["total"], 1);
  each_has(list["runs"],
           {"id", "run_at", "added_at", "lot", "serial", "board", "oven", "recipe", "window", "window_revision",
            "verdict", "margin", "sha256", "operator"},
           "listed");
  const auto shown = in_archive({"archive", "show", added["added"][0]["id"]});
  EXPECT_EQ(shown["schema"], "ovenwright.check/1");
  run_holds(shown["runs"][0]);
  const auto lot = in_archive({"lot", "QM-1"});
  EXPECT_EQ(lot["schema"], "ovenwright.lot/1");
  has(lot, {"lot", "runs", "verdict", "results"}, "lot");
  ASSERT_FALSE(lot["results"].empty());
  for (const auto& result : lot["results"]) {
    has(result,
        {"requirement", "trace", "n", "mean", "sd", "minimum", "maximum", "pp", "ppk", "ppk_low", "ppk_high",
         "sd_short_term", "cp", "cpk", "tolerance_interval", "control", "spread"},
        "result of the lot");
    for (const char* chart : {"control", "spread"})
      if (!result[chart].is_null()) has(result[chart], {"chart", "centre", "lower", "upper", "signals"}, chart);
  }
}

/// A log of one trace that rises straight from 25 °C to `peak_C` and falls again, in steps of 1 s.
void write_triangle(const std::string& path, double peak_C) {
  std::ofstream log{path};
  log << "Time (s),TC1 (\u00B0C)\n";
  for (int i = 0; i <= 400; ++i)
    log << i << "," << 25 + (peak_C - 25) * (i <= 200 ? i / 200.0 : (400 - i) / 200.0) << "\n";
}

struct Case {
  const char* verdict;
  double peak_C;
  const char* rule;
  int status;
};
void PrintTo(const Case& c, std::ostream* os) { *os << c.verdict << " " << c.rule; }
class StatusOfAVerdict : public testing::TestWithParam<Case> {};

// Source: the contract: a conditional pass exits 0, a conditional fail 1. U of a peak is 2.1 °C by the defaults
// (1.5 and 1 °C as half widths of rectangles), so 1 °C beside the limit of 240 °C is within it, 4 °C is not.
TEST_P(StatusOfAVerdict, IsAsAgreed) {
  const Folder folder;
  write_triangle(folder.path("log.csv"), GetParam().peak_C);
  std::ofstream{folder.path("window.toml")} << "name = \"w\"\ndecision_rule = \"" << GetParam().rule << "\"\n"
                                            << "[[requirement]]\nmeasure = \"peak\"\nlower = 240\nupper = 260\n";
  const auto report =
      printed({"check", folder.path("log.csv"), "--window", folder.path("window.toml")}, {GetParam().status});
  EXPECT_EQ(report["runs"][0]["verdict"], GetParam().verdict);
  run_holds(report["runs"][0]);
}

INSTANTIATE_TEST_SUITE_P(Rules, StatusOfAVerdict,
                         testing::Values(Case{"pass", 241, "simple", 0}, Case{"fail", 239, "simple", 1},
                                         Case{"pass", 244, "guarded", 0}, Case{"conditional pass", 241, "guarded", 0},
                                         Case{"conditional fail", 239, "guarded", 1}, Case{"fail", 236, "guarded", 1}),
                         [](const auto& c) {
                           return std::string{c.param.rule} + "_" + std::to_string(static_cast<int>(c.param.peak_C));
                         });

// Source: the contract: where all channels are open, 5.
TEST(StatusOfALog, WithAllChannelsOpenIsUndetermined) {
  const Folder folder;
  std::ofstream{folder.path("log.csv")}
      << "Time (s),TC1 (\u00B0C),TC2 (\u00B0C)\n0,open,open\n1,open,open\n2,open,open\n";
  const auto report = printed({"check", folder.path("log.csv")}, {5});
  EXPECT_EQ(report["runs"][0]["verdict"], "undetermined");
  for (const auto& trace : report["runs"][0]["traces"]) EXPECT_EQ(trace["faults"][0]["kind"], "open");
}

}  // namespace
}  // namespace ovenwright
