// The exit statuses of the command, each by running the built program.
#include <gtest/gtest.h>

#include <filesystem>
#include <fstream>
#include <string>

#include "tests/command/process.h"

namespace ovenwright {
namespace {

using Arguments = std::vector<std::string>;

struct Case {
  const char* name;
  Arguments arguments;
  int status;
  const char* said;  ///< on standard error
};
void PrintTo(const Case& c, std::ostream* os) { *os << c.name; }
class ExitStatusOf : public testing::TestWithParam<Case> {};

TEST_P(ExitStatusOf, IsAsAgreed) {
  const auto finished = ovenwright_program(GetParam().arguments);
  EXPECT_EQ(finished.status, GetParam().status) << finished.out << finished.err;
  EXPECT_NE(finished.err.find(GetParam().said), std::string::npos) << finished.err;
}

const std::string kLogs = "tests/data/command/";
std::string name_of(const testing::TestParamInfo<Case>& info) { return info.param.name; }

INSTANTIATE_TEST_SUITE_P(
    Done, ExitStatusOf,
    testing::Values(Case{"pass", {"check", kLogs + "passes.csv"}, 0, ""},
                    Case{"measure", {"measure", kLogs + "too_cold.csv"}, 0, ""},
                    Case{"measure_list", {"measure", "--list"}, 0, ""}, Case{"windows", {"windows"}, 0, ""},
                    Case{"one_window", {"windows", "SAC305, general"}, 0, ""}, Case{"ovens", {"ovens"}, 0, ""},
                    Case{"boards", {"boards"}, 0, ""}, Case{"recipes", {"recipes"}, 0, ""},
                    Case{"help", {"--help"}, 0, ""}, Case{"help_of_check", {"check", "--help"}, 0, ""},
                    Case{"version", {"--version"}, 0, ""}, Case{"version_of_check", {"check", "--version"}, 0, ""}),
    name_of);

INSTANTIATE_TEST_SUITE_P(
    Judged, ExitStatusOf,
    testing::Values(Case{"fail", {"check", kLogs + "too_cold.csv"}, 1, ""},
                    Case{"undetermined", {"check", kLogs + "ends_rising.csv"}, 5, ""},
                    Case{
                        "fail_beats_undetermined", {"check", kLogs + "ends_rising.csv", kLogs + "too_cold.csv"}, 1, ""},
                    Case{"undetermined_beats_pass", {"check", kLogs + "passes.csv", kLogs + "ends_rising.csv"}, 5, ""},
                    Case{"unreadable_beats_fail",
                         {"check", kLogs + "too_cold.csv", kLogs + "missing.csv"},
                         3,
                         "tests/data/command/missing.csv"}),
    name_of);

INSTANTIATE_TEST_SUITE_P(
    Usage, ExitStatusOf,
    testing::Values(
        Case{"nothing", {}, 2, "--help"}, Case{"unknown_command", {"chekc"}, 2, "did you mean \"check\"?"},
        Case{"no_log", {"check"}, 2, "LOG"},
        Case{"unknown_option", {"check", "a.csv", "--windw", "x"}, 2, "did you mean \"--window\"?"},
        Case{"option_without_value", {"check", "a.csv", "--window"}, 2, "--window: expected a value\nRun"},
        Case{"option_without_number", {"check", "a.csv", "--entry"}, 2, "--entry: expected a value\nRun"},
        Case{"format", {"check", "a.csv", "--format", "xml"}, 2, R"(--format: found "xml", expected "text" or "json")"},
        Case{"run_zero", {"check", "a.csv", "--run", "0"}, 2, R"(--run: found "0", expected a whole number from 1)"},
        Case{"entry_is_no_number",
             {"check", "a.csv", "--entry", "soon"},
             2,
             "--entry: found \"soon\", expected a number\nRun"},
        Case{"entry_is_not_finite", {"check", "a.csv", "--entry", "nan"}, 2, "--entry"},
        Case{"oven_without_recipe", {"check", "a.csv", "--oven", "ten_zone"}, 2, "--recipe"},
        Case{"measure_without_log", {"measure"}, 2, "LOG or --list"},
        Case{"unknown_measure", {"measure", kLogs + "passes.csv", "--measure", "peek"}, 2, "there is no measure"},
        Case{"unknown_parameter", {"measure", kLogs + "passes.csv", "--measure", "peak, level=217"}, 2, "level"},
        Case{"missing_parameter", {"measure", kLogs + "passes.csv", "--measure", "time above"}, 2, "needs level"},
        Case{"output_is_the_log",
             {"check", kLogs + "passes.csv", "-o", kLogs + "passes.csv"},
             2,
             "never takes a log's place"},
        Case{"output_is_the_measured_log",
             {"measure", kLogs + "passes.csv", "-o", "./" + kLogs + "passes.csv"},
             2,
             "never takes a log's place"}),
    name_of);

INSTANTIATE_TEST_SUITE_P(
    Unreadable, ExitStatusOf,
    testing::Values(
        Case{"missing_log", {"check", "missing.csv"}, 3, "ovenwright: missing.csv"},
        Case{"folder", {"check", "tests"}, 3, "ovenwright: tests"},
        Case{"header_only", {"check", kLogs + "header_only.csv"}, 3, "header_only.csv"},
        Case{"bad_row", {"check", kLogs + "bad_cell.csv"}, 3, "bad_cell.csv:33"},
        Case{"missing_window", {"check", kLogs + "passes.csv", "--window", "sac35"}, 3, "did you mean \"sac305\"?"},
        Case{"bad_window",
             {"check", kLogs + "passes.csv", "--window", kLogs + "bad_window.toml"},
             3,
             "bad_window.toml:6:1: found the unknown key \"lowr\" in [[requirement]], did you mean \"lower\"?"},
        Case{"board_channel",
             {"check", kLogs + "passes.csv", "--board", "dunlin"},
             3,
             "dunlin.toml:29: the board places the channel \"3\""},
        Case{"recipe_of_another_oven",
             {"check", kLogs + "passes.csv", "--oven", "ten_zone", "--recipe", "six_zone_lead_free"},
             3,
             "six_zone_lead_free.toml:7: found 6 setpoints in \"top_C\", expected 10"},
        Case{"run_out_of_range", {"check", kLogs + "passes.csv", "--run", "2"}, 3, "found 1 run, expected at least 2"},
        Case{"measure_missing", {"measure", "missing.csv"}, 3, "missing.csv"},
        Case{"unknown_recipe_name", {"recipes", "zzz"}, 3, "zzz"}),
    name_of);

TEST(Output, GoesIntoItsFileWhole) {
  const Folder folder;
  const auto printed = ovenwright_program({"check", kLogs + "passes.csv"});
  const auto written = ovenwright_program({"check", kLogs + "passes.csv", "-o", folder.path("a.txt")});
  EXPECT_EQ(written.status, 0);
  EXPECT_EQ(written.out, "");
  EXPECT_EQ(contents(folder.path("a.txt")), printed.out);
  EXPECT_EQ(folder.names(), (std::vector<std::string>{"a.txt"}));
}

TEST(Output, ThatCannotBeWrittenIsStatusFourAndLeavesNothing) {
  const Folder folder;
  for (const auto& output : {folder.path("missing/a.txt"), folder.path(), std::string{"/dev/full"}}) {
    const auto finished = ovenwright_program({"check", kLogs + "passes.csv", "-o", output});
    EXPECT_EQ(finished.status, 4) << output;
    EXPECT_NE(finished.err.find(output), std::string::npos) << finished.err;
  }
  EXPECT_TRUE(folder.names().empty());
  EXPECT_EQ(ovenwright_program({"check", kLogs + "passes.csv"}, "/dev/full").status, 4);
}

// Source: docs/files_people_edit.md, "errors" in JSON: file, line, column, found, expected, message.
TEST(Output, JsonTellsAnErrorWhereItsReportWouldStand) {
  const std::string log = kLogs + "passes.csv", window = kLogs + "bad_window.toml";
  for (const auto& arguments :
       {Arguments{"predict", log, "--oven", "ten_zone", "--recipe", "ten_zone_lead_free", "--new-recipe",
                  "ten_zone_tin_lead", "--window", window},
        Arguments{"tune", log, "--oven", "ten_zone", "--recipe", "ten_zone_lead_free", "--window", window},
        Arguments{"start", "--board", "dunlin", "--oven", "ten_zone", "--window", window},
        Arguments{"compare", log, log, "--window", window}, Arguments{"check", log, "--window", window}}) {
    Arguments json = arguments;
    json.insert(json.end(), {"--format", "json"});
    const auto finished = ovenwright_program(json);
    EXPECT_EQ(finished.status, 3) << arguments[0];
    EXPECT_EQ(finished.err, ovenwright_program(arguments).err) << arguments[0];
    EXPECT_NE(finished.out.find("\"schema\": \"ovenwright." + arguments[0] + "/1\""), std::string::npos)
        << finished.out;
    for (const char* part :
         {"bad_window.toml\"", "\"line\":6", "\"column\":1", "\"found\":\"lowr\"", "\"expected\":\"lower\""})
      EXPECT_NE(finished.out.find(part), std::string::npos) << part << " in " << finished.out;
  }
}

TEST(Output, NeverTakesThePlaceOfWhatIsRead) {
  const Folder folder;
  const std::string window = folder.path("w.toml"), text = contents(kLogs + "bad_window.toml");
  std::ofstream(window) << text;
  for (const char* format : {"text", "json"}) {
    EXPECT_EQ(ovenwright_program({"check", kLogs + "passes.csv", "--window", window, "-o", window, "--format", format})
                  .status,
              2);
    EXPECT_EQ(ovenwright_program({"tune", kLogs + "passes.csv", "--window", window, "--oven", "ten_zone", "--recipe",
                                  "ten_zone_lead_free", "-o", window, "--format", format})
                  .status,
              3);
    EXPECT_EQ(contents(window), text);
  }
}

TEST(Output, AnEntryMayLieBeforeTheLog) {
  const auto finished = ovenwright_program(
      {"check", kLogs + "passes.csv", "--entry", "-3.5", "--oven", "ten_zone", "--recipe", "ten_zone_lead_free"});
  EXPECT_EQ(finished.status, 0) << finished.err;
  EXPECT_NE(finished.out.find("oven entry at \u22123.5 s, as given"), std::string::npos) << finished.out;
}

TEST(Output, ReplacesAnOlderReport) {
  const Folder folder;
  ASSERT_EQ(ovenwright_program({"check", kLogs + "too_cold.csv", "-o", folder.path("a")}).status, 1);
  const std::string before = contents(folder.path("a"));
  ASSERT_EQ(ovenwright_program({"check", kLogs + "passes.csv", "-o", folder.path("a")}).status, 0);
  EXPECT_NE(contents(folder.path("a")), before);
}

TEST(Help, HasExamplesAndTheStatuses) {
  for (const Arguments& arguments :
       {Arguments{"--help"}, Arguments{"check", "--help"}, Arguments{"measure", "--help"}}) {
    const auto help = ovenwright_program(arguments);
    EXPECT_NE(help.out.find("Examples"), std::string::npos);
    EXPECT_NE(help.out.find("Exit status"), std::string::npos);
    // Source: the contract: measure exits with 0 whatever it finds.
    EXPECT_EQ(help.out.find("undetermined") == std::string::npos, arguments[0] == "measure");
  }
  EXPECT_EQ(ovenwright_program({"--version"}).out, "ovenwright " OVENWRIGHT_VERSION "\n");
}

}  // namespace
}  // namespace ovenwright
