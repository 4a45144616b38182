// What the command prints as JSON, parsed again; and several logs in one call.
#include <gtest/gtest.h>

#include <fstream>
#include <nlohmann/json.hpp>
#include <string>

#include "tests/command/process.h"

namespace ovenwright {
namespace {

using Json = nlohmann::ordered_json;

const std::string kLogs = "tests/data/command/";

Json json_of(std::vector<std::string> arguments) {
  arguments.insert(arguments.end(), {"--format", "json"});
  const auto finished = ovenwright_program(arguments);
  EXPECT_TRUE(Json::accept(finished.out)) << finished.out << finished.err;
  return Json::parse(finished.out, nullptr, false);
}

std::vector<std::string> keys_of(const Json& object) {
  std::vector<std::string> keys;
  for (const auto& [key, value] : object.items()) keys.push_back(key);
  return keys;
}

void expect_keys(const Json& object, const std::vector<std::string>& wanted) {
  for (const auto& key : wanted) EXPECT_TRUE(object.contains(key)) << key << " in " << object.dump();
}

TEST(CheckJson, HasTheAgreedKeys) {
  const auto report = json_of({"check", kLogs + "too_cold.csv"});
  EXPECT_EQ(keys_of(report), (std::vector<std::string>{"schema", "program", "runs"}));
  EXPECT_EQ(report["schema"], "ovenwright.check/1");
  const auto& run = report["runs"].at(0);
  expect_keys(run, {"log", "entry", "board", "oven", "recipe", "traces", "windows", "verdict", "margin", "sentence",
                    "results", "board_results"});
  expect_keys(run["log"], {"file", "sha256", "bytes", "part", "read_as", "sample_interval_s", "duration_s", "faults"});
  expect_keys(run["log"]["read_as"], {"encoding", "delimiter", "decimal", "time", "unit", "header_line", "rows",
                                      "rows_skipped", "assumed", "notes"});
  expect_keys(run["traces"].at(0), {"name", "channel", "kind", "label", "samples", "faults"});
  expect_keys(run["windows"].at(0), {"name", "revision", "sha256", "decision_rule", "assumed"});
  for (const auto* list : {"results", "board_results"}) {
    for (const auto& result : run[list]) {
      expect_keys(result, {"requirement",
                           "measure",
                           "parameters",
                           "trace",
                           "value",
                           "unit",
                           "expanded_uncertainty",
                           "uncertainty_terms",
                           "lower",
                           "upper",
                           "target",
                           "source",
                           "margin",
                           "verdict",
                           "conformance_probability",
                           "from_s",
                           "to_s",
                           "zones",
                           "zone_shares",
                           "risk",
                           "required"});
    }
  }
  EXPECT_TRUE(run["windows"][0]["assumed"].get<bool>());
  EXPECT_TRUE(run["entry"].is_null());
  EXPECT_TRUE(run["log"]["part"].is_null());
  EXPECT_EQ(run["verdict"], "fail");
  EXPECT_EQ(run["board_results"][0]["trace"], nullptr);
}

// Expected: the largest of the log's own samples, read from the file.
TEST(CheckJson, ThePeakIsTheLargestSample) {
  const auto report = json_of({"check", kLogs + "too_cold.csv"});
  for (const auto& result : report["runs"][0]["results"]) {
    if (result["measure"] != "peak" || result["trace"] != "U1") continue;
    EXPECT_EQ(result["value"].get<double>(), 230.06);
    EXPECT_EQ(result["lower"].get<double>(), 235);
    // (v − lower)/(t − lower) with the target in the middle of 235 and 250.
    EXPECT_DOUBLE_EQ(result["margin"].get<double>(), (230.06 - 235) / 7.5);
    return;
  }
  FAIL() << "no peak of U1";
}

TEST(CheckJson, LogsStandInTheOrderGivenWithErrorsBeside) {
  const std::vector<std::string> logs{kLogs + "too_cold.csv", kLogs + "missing.csv", kLogs + "passes.csv",
                                      kLogs + "bad_cell.csv", kLogs + "ends_rising.csv"};
  std::vector<std::string> arguments{"check"};
  arguments.insert(arguments.end(), logs.begin(), logs.end());
  const auto report = json_of(arguments);
  ASSERT_EQ(report["runs"].size(), 3U);
  EXPECT_EQ(report["runs"][0]["log"]["file"], logs[0]);
  EXPECT_EQ(report["runs"][1]["log"]["file"], logs[2]);
  EXPECT_EQ(report["runs"][2]["log"]["file"], logs[4]);
  ASSERT_EQ(report["errors"].size(), 2U);
  EXPECT_EQ(keys_of(report["errors"][0]),
            (std::vector<std::string>{"file", "line", "column", "found", "expected", "message"}));
  EXPECT_EQ(report["errors"][0]["file"], logs[1]);
  EXPECT_EQ(report["errors"][0]["line"], nullptr);
  EXPECT_EQ(report["errors"][1]["file"], logs[3]);
  EXPECT_EQ(report["errors"][1]["line"], 33);
}

TEST(CheckJson, ManyLogsGiveTheSameAsEachAlone) {
  std::vector<std::string> arguments{"check"};
  for (int i = 0; i < 30; ++i) arguments.push_back(kLogs + (i % 3 == 0 ? "passes.csv" : "too_cold.csv"));
  const auto together = json_of(arguments);
  const auto alone = json_of({"check", kLogs + "passes.csv"});
  ASSERT_EQ(together["runs"].size(), 30U);
  EXPECT_EQ(together["runs"][27], alone["runs"][0]);
}

TEST(CheckJson, AnInputThatCannotBeReadIsAnErrorWithoutRuns) {
  const auto report = json_of({"check", kLogs + "passes.csv", "--window", kLogs + "bad_window.toml"});
  EXPECT_TRUE(report["runs"].empty());
  EXPECT_EQ(report["errors"][0]["line"], 6);
  EXPECT_EQ(report["errors"][0]["found"], "lowr");
  EXPECT_EQ(report["errors"][0]["expected"], "lower");
}

// Peaks of about 230 °C lie far from the window for bismuth-tin, 160 to 185 °C; nobody named that window though.
TEST(CheckText, NamesABetterWindowOnlyWhereItWasAssumed) {
  const auto assumed = ovenwright_program({"check", kLogs + "tin_lead.csv", "--quiet"});
  EXPECT_NE(assumed.out.find("Sn63Pb37, general"), std::string::npos) << assumed.out;
  const auto named = ovenwright_program({"check", kLogs + "tin_lead.csv", "--quiet", "--window", "sac305"});
  EXPECT_EQ(named.out.find("Sn63Pb37"), std::string::npos) << named.out;
}

TEST(CheckText, SeveralLogsBeginWithAnOverview) {
  const auto finished =
      ovenwright_program({"check", kLogs + "too_cold.csv", kLogs + "passes.csv", kLogs + "missing.csv"});
  EXPECT_EQ(finished.out.substr(0, finished.out.find('\n')), "2 runs: 1 fail, 1 pass. 1 log could not be read.");
}

TEST(MeasureJson, HasTheAgreedKeys) {
  const auto report = json_of({"measure", kLogs + "passes.csv", "--measure", "time above, level=217", "--measure",
                               "spread of peaks", "--measure", "time between on rise, T1=150, T2=200"});
  EXPECT_EQ(report["schema"], "ovenwright.measure/1");
  ASSERT_EQ(report["results"].size(), 5U);
  for (const auto& result : report["results"]) {
    expect_keys(result, {"measure", "parameters", "trace", "value", "unit", "expanded_uncertainty", "from_s", "to_s"});
  }
  EXPECT_EQ(report["results"][0]["measure"], "time above");
  EXPECT_EQ(report["results"][0]["parameters"]["level"].get<double>(), 217);
  EXPECT_EQ(report["results"][0]["trace"], "U1");
  EXPECT_EQ(report["results"][1]["trace"], "R2");
  EXPECT_EQ(report["results"][2]["trace"], nullptr);
  EXPECT_EQ(report["results"][2]["unit"], "degC");
}

TEST(ListJson, HoldsTheStemTheTitleAndTheFile) {
  const auto report = json_of({"windows"});
  bool found = false;
  for (const auto& window : report["windows"]) {
    EXPECT_EQ(keys_of(window), (std::vector<std::string>{"name", "title", "revision", "file", "source"}));
    found = found || (window["name"] == "sac305" && window["title"] == "SAC305, general");
  }
  EXPECT_TRUE(found);
  EXPECT_EQ(ovenwright_program({"windows", "sac305"}).out,
            contents(std::string{OVENWRIGHT_SOURCE} + "/profiles/windows/sac305.toml"));
}


// Source: the file that is made here.
TEST(CheckJson, ListsTheTablesOfAFileAndPicksOne) {
  const Folder folder;
  const std::string file = folder.path("two.csv");
  std::ofstream out(file);
  for (const char* names : {"U1,U2,R118", "Lid,Rail,Exit"}) {
    out << "Time (s)," << names << "\n";
    for (int i = 0; i < (names[0] == 'U' ? 60 : 40); ++i) out << i << ",25.0," << 25 + 2 * i << ".0,26.5\n";
    out << "\n";
  }
  out.close();
  const auto names_of = [](const Json& report) {
    std::string names;
    for (const auto& trace : report["runs"].at(0)["traces"]) names += trace["name"].get<std::string>() + " ";
    return names;
  };
  const auto found = json_of({"check", file});
  EXPECT_EQ(names_of(found), "U1 U2 R118 ");
  const auto& tables = found["runs"].at(0)["log"]["read_as"]["tables"];
  EXPECT_EQ(
      tables,
      Json::parse(R"([{"index":1,"name":"line 1","member":null,"sheet":null,"header_line":1,"rows":60,"read":true},
      {"index":2,"name":"line 63","member":null,"sheet":null,"header_line":63,"rows":40,"read":false}])"));
  EXPECT_EQ(names_of(json_of({"check", file, "--table", "2"})), "Lid Rail Exit ");
  EXPECT_EQ(names_of(json_of({"check", file, "--table", "line 63"})), "Lid Rail Exit ");
  const auto refused = ovenwright_program({"check", file, "--table", "3"});
  EXPECT_EQ(refused.status, 3);
  EXPECT_NE(refused.err.find("found no table \"3\", expected one of: 1 (line 1), 2 (line 63)"), std::string::npos)
      << refused.err;
}

}  // namespace
}  // namespace ovenwright
