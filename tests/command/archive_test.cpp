// archive and watch, by running the built program.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <nlohmann/json.hpp>
#include <sstream>

#include "tests/command/process.h"

namespace ovenwright {
namespace {

using Json = nlohmann::json;
using testing::HasSubstr;

const std::string kRun1 = "profiles/demo/tern_run1.csv", kRun2 = "profiles/demo/tern_run2.csv";
const std::vector<std::string> kJudgedBy{
    "--window", "profiles/demo/window.toml", "--board",  "profiles/demo/board.toml",
    "--oven",   "profiles/demo/oven.toml",   "--recipe", "profiles/demo/recipe.toml"};

class ArchiveCommand : public testing::Test {
 protected:
  Finished run(std::vector<std::string> arguments, const std::vector<std::string>& more = {}) {
    arguments.insert(arguments.end(), more.begin(), more.end());
    arguments.insert(arguments.end(), {"--archive", folder.path("a.sqlite")});
    return ovenwright_program(arguments);
  }
  Json json(std::vector<std::string> arguments, const std::vector<std::string>& more = {}) {
    arguments.insert(arguments.end(), {"--format", "json"});
    const auto finished = run(arguments, more);
    const auto parsed = Json::parse(finished.out, nullptr, false);
    EXPECT_FALSE(parsed.is_discarded()) << finished.out << finished.err;
    return parsed;
  }
  std::string added(const std::string& log, const std::string& lot = "QM-2201") {
    return json({"archive", "add", log, "--lot", lot}, kJudgedBy).at("added").at(0).at("id");
  }
  Folder folder;
};

TEST_F(ArchiveCommand, AddKeepsEachLogOnce) {
  const auto first = run({"archive", "add", kRun1, kRun2, "--lot", "QM-2201"}, kJudgedBy);
  EXPECT_EQ(first.status, 1) << first.err;  // the first run fails its window
  EXPECT_THAT(first.out, testing::MatchesRegex("kept [a-z0-9]+-1: profiles/demo/tern_run1.csv, fail, margin .*\n"
                                               "kept [a-z0-9]+-2: profiles/demo/tern_run2.csv, pass, margin .*\n"));
  const auto again = json({"archive", "add", kRun2, "--lot", "QM-2202"}, kJudgedBy);
  EXPECT_TRUE(again.at("added").empty());
  EXPECT_EQ(again.at("already").at(0).at("log"), kRun2);
  const auto list = json({"archive", "list"});
  EXPECT_EQ(list.at("total"), 2);
  const auto& run2 = list.at("runs").at(0).at("log") == "tern_run2.csv" ? list.at("runs").at(0) : list.at("runs").at(1);
  EXPECT_EQ(run2.at("lot"), "QM-2201");
  EXPECT_EQ(run2.at("board"), "Tern, main side");
  EXPECT_EQ(run2.at("verdict"), "pass");
  EXPECT_EQ(run2.at("run_at_from"), "file time");
  EXPECT_THAT(run({"archive", "list"}).out, HasSubstr("* that of the log's file"));
}

TEST_F(ArchiveCommand, TheTimeOfARunIsThatOfTheLogsOwnClockUnlessGiven) {
  // The demo's rows have times of a day (09:14:22,0); a date before the table makes moments of them.
  std::string dated = contents(std::string{OVENWRIGHT_SOURCE} + "/" + kRun1);
  dated.insert(dated.find("Lot;"), "Datum;2026-03-11\n");
  std::ofstream(folder.path("dated.csv")) << dated;
  std::ofstream(folder.path("dated2.csv")) << dated << "\n";
  const auto one = json({"archive", "add", folder.path("dated.csv"), "--lot", "QM-1"}, kJudgedBy).at("added").at(0);
  EXPECT_EQ(one.at("run_at_from"), "log clock");
  // The log names no zone: it is this computer's, of which the test knows nothing but that it is less than a day away.
  EXPECT_THAT(one.at("run_at").get<std::string>(), testing::MatchesRegex("2026-03-1[012]T..:..:22.000Z"));
  const auto record = run({"archive", "show", one.at("id").get<std::string>()});
  EXPECT_THAT(record.out, HasSubstr(one.at("run_at").get<std::string>() + ", by the log's own clock"));
  const auto given = run(
      {"archive", "add", folder.path("dated2.csv"), "--lot", "QM-1", "--run-at", "2026-03-20T10:00:00Z"}, kJudgedBy);
  EXPECT_THAT(given.out, HasSubstr("run at 2026-03-20T10:00:00.000Z (as given)"));
  EXPECT_THAT(run({"archive", "add", kRun2, "--lot", "QM-1"}, kJudgedBy).out, HasSubstr("Z (time of the log's file)"));
  const auto list = run({"archive", "list"});
  EXPECT_EQ(std::ranges::count(list.out, '*'), 2) << "in the heading and at the one of the file: " << list.out;
}

TEST_F(ArchiveCommand, ShowPrintsWhatCheckPrinted) {
  const std::string id = added(kRun1);
  std::vector<std::string> check{"check", kRun1};
  check.insert(check.end(), kJudgedBy.begin(), kJudgedBy.end());
  const auto text = ovenwright_program(check);
  check.insert(check.end(), {"--format", "json"});
  const auto report = ovenwright_program(check);
  EXPECT_EQ(run({"archive", "show", id, "--format", "json"}).out, report.out);
  const auto shown = run({"archive", "show", id});
  EXPECT_EQ(shown.status, 0);
  EXPECT_TRUE(shown.out.starts_with(text.out)) << shown.out;
  EXPECT_THAT(shown.out, HasSubstr("Kept as " + id));
  EXPECT_THAT(shown.out, HasSubstr("by ovenwright " OVENWRIGHT_VERSION));
  EXPECT_EQ(run({"archive", "show", id, "--quiet"}).out, text.out);
}

TEST_F(ArchiveCommand, JudgeAddsBesideTheOld) {
  const std::string id = added(kRun1);
  const auto judged = json({"archive", "judge", id, "--window", "sac305"});
  EXPECT_EQ(judged.at("added").at(0).at("judged_from"), id);
  const auto list = json({"archive", "list"});
  EXPECT_EQ(list.at("total"), 2);
  EXPECT_EQ(run({"archive", "judge", "nowhere-1"}).status, 3);
}

TEST_F(ArchiveCommand, ExportWritesTheBytesThatCame) {
  const std::string id = added(kRun1);
  const std::string to = folder.path("out/logs");
  for (int turn = 0; turn < 2; ++turn) {  // again: what is there is left
    const auto exported = run({"archive", "export", id, "-o", to});
    EXPECT_EQ(exported.status, 0) << exported.err;
    EXPECT_TRUE(exported.out.starts_with(id + ": " + to + "/tern_run1.csv, SHA-256 ")) << exported.out;
  }
  EXPECT_EQ(contents(to + "/tern_run1.csv"), contents(std::string{OVENWRIGHT_SOURCE} + "/" + kRun1));
  std::ofstream(to + "/tern_run1.csv") << "another";
  EXPECT_THAT(run({"archive", "export", id, "-o", to}).out, HasSubstr(": " + to + "/" + id + "_tern_run1.csv, "));
  EXPECT_EQ(contents(to + "/tern_run1.csv"), "another");
  EXPECT_EQ(run({"archive", "export", id}).status, 2);
}

// The auditor's path: from a digest on paper to the raw log and the same verdict, in one command.
TEST_F(ArchiveCommand, ADigestFromASheetLeadsToTheLogAndItsVerdict) {
  const std::string id = added(kRun1);
  added(kRun2);
  // Source: sha256sum of the log.
  const std::string digest = "d40cd78c6dde7c184c4f38200bb7401ac16f16998c50309b39c1721c3d3689c0";
  const std::string record = json({"archive", "verify"}).at("heads").at(0).at("digest");
  for (const std::string& typed : {digest, digest.substr(0, 8), std::string{"D40C\u202689C0"},
                                   std::string{"d40c...89c0"}, digest.substr(0, 16) + " " + digest.substr(16)}) {
    const std::string to = folder.path("out of " + typed);
    const auto exported = run({"archive", "export", typed, "-o", to});
    EXPECT_EQ(exported.status, 0) << exported.err;
    EXPECT_THAT(exported.out, HasSubstr(id + ": " + to + "/tern_run1.csv, SHA-256 " + digest));
    EXPECT_THAT(exported.out, HasSubstr("fail on the day, fail judged again from these bytes"));
    EXPECT_EQ(contents(to + "/tern_run1.csv"), contents(std::string{OVENWRIGHT_SOURCE} + "/" + kRun1));
    EXPECT_EQ(run({"archive", "show", typed}).out, run({"archive", "show", id}).out);
  }
  // The head of the chain is a record's digest: the last one's.
  EXPECT_THAT(run({"archive", "show", record.substr(0, 4) + "\u2026" + record.substr(60)}).out,
              HasSubstr("tern_run2.csv"));
  EXPECT_EQ(run({"archive", "verify", "--head", record.substr(0, 4) + "\u2026" + record.substr(60)}).status, 0);
  EXPECT_EQ(run({"archive", "verify", "--head", "head"}).status, 2);
  EXPECT_EQ(run({"archive", "show", "d40c"}).status, 3);      // too short to name anything
  EXPECT_EQ(run({"archive", "show", "00000000"}).status, 3);  // nobody's
  const std::string again = json({"archive", "judge", id}).at("added").at(0).at("id");
  const auto several = run({"archive", "show", digest});
  EXPECT_EQ(several.status, 3);
  EXPECT_THAT(several.err, HasSubstr("is of 2 records: " + id + ", " + again));
}

TEST_F(ArchiveCommand, VerifyKnowsTheHeadOnPaper) {
  added(kRun1);
  const auto first = json({"archive", "verify"});
  EXPECT_EQ(first.at("holds"), true);
  EXPECT_EQ(first.at("records"), 1);
  const std::string head = first.at("heads").at(0).at("digest");
  added(kRun2);
  EXPECT_EQ(run({"archive", "verify", "--head", head}).status, 0);
  const auto unknown = run({"archive", "verify", "--head", std::string(64, 'a')});
  EXPECT_EQ(unknown.status, 1);
  EXPECT_THAT(unknown.out, HasSubstr("does not hold"));
}

TEST_F(ArchiveCommand, MoveKeepsIds) {
  const std::string id = added(kRun1);
  const std::string other = folder.path("b.sqlite");
  EXPECT_EQ(json({"archive", "move", "--to", other}).at("moved"), 1);
  EXPECT_EQ(json({"archive", "move", "--to", other}).at("moved"), 0);
  const auto shown = ovenwright_program({"archive", "show", id, "--archive", other});
  EXPECT_EQ(shown.status, 0) << shown.err;
  EXPECT_EQ(shown.out, run({"archive", "show", id}).out);
}

TEST_F(ArchiveCommand, ReleaseIsShownWithTheRecord) {
  const std::string id = added(kRun1);
  EXPECT_EQ(run({"archive", "release"}).out, "No window was released.\n");
  EXPECT_EQ(run({"archive", "release", "profiles/demo/window.toml"}).status, 2);
  const auto released = json({"archive", "release", "profiles/demo/window.toml", "--by", "R. Quill"});
  EXPECT_EQ(released.at("released").at(0).at("name"), "Tern SAC305");
  EXPECT_THAT(run({"archive", "show", id}).out, testing::ContainsRegex("released 20[^ ]*Z by R. Quill"));
}

TEST_F(ArchiveCommand, SaysWhatIsWrong) {
  struct Case {
    std::vector<std::string> arguments;
    int status;
    const char* said;
  };
  for (const auto& [arguments, status, said] :
       {Case{{"archive"}, 2, "archive --help"},
        {{"archive", "add", kRun1}, 2, "--lot"},
        {{"archive", "add", kRun1, "--lot", "a", "--run-at", "soon"}, 2, "soon"},
        {{"archive", "add", "missing.csv", "--lot", "a", "--archive", "/nonexistent/a.sqlite"}, 4, "/nonexistent"},
        {{"archive", "list", "--archive", "/nonexistent/a.sqlite"}, 3, "there is no archive"},
        {{"archive", "list", "--archive", kRun1}, 3, "no database"},
        {{"archive", "list", "--from", "14.3.2026"}, 2, "14.3.2026"},
        {{"archive", "list", "--verdict", "good"}, 2, "conditional pass"},
        {{"archive", "list", "--archive", "postgresql://u:secret@h/d"}, 3, "password"},
        {{"watch", "/nonexistent", "--rules", kRun1}, 3, kRun1.c_str()},
        {{"watch", "."}, 2, "--rules"}}) {
    const auto finished = ovenwright_program(arguments);
    EXPECT_EQ(finished.status, status) << finished.err;
    EXPECT_THAT(finished.err, HasSubstr(said));
    EXPECT_EQ(finished.err.find("secret"), std::string::npos);
  }
}

TEST_F(ArchiveCommand, ALogThatCannotBeReadStopsNoOther) {
  const auto finished = run({"archive", "add", "missing.csv", kRun2, "--lot", "QM-2201"}, kJudgedBy);
  EXPECT_EQ(finished.status, 3);
  EXPECT_THAT(finished.err, HasSubstr("missing.csv"));
  EXPECT_THAT(finished.out, HasSubstr("tern_run2.csv, pass"));
}

TEST_F(ArchiveCommand, NamesAreDataOnATerminalToo) {
  added(kRun2, "\x1b[2J\nQM\"; drop table run; --");
  const auto list = run({"archive", "list"});
  EXPECT_EQ(list.status, 0);
  EXPECT_EQ(list.out.find('\x1b'), std::string::npos);
  EXPECT_EQ(std::ranges::count(list.out, '\n'), 4) << list.out;
  EXPECT_EQ(json({"archive", "list"}).at("runs").at(0).at("lot"), "\x1b[2J\nQM\"; drop table run; --");
  added(kRun1, "\u202Edesrever");
  EXPECT_EQ(run({"archive", "list"}).out.find("\u202E"), std::string::npos) << "it would turn the rest of the line";
}

TEST_F(ArchiveCommand, RulesNameFilesBesideThem) {
  const std::string logs = folder.path("logs"), source = std::string{OVENWRIGHT_SOURCE} + "/";
  std::filesystem::create_directory(logs);
  std::filesystem::copy(source + kRun2, logs + "/QM-2203.csv");
  std::filesystem::copy(source + "profiles/demo/window.toml", folder.path("tern_window.toml"));
  std::ofstream(folder.path("rules.toml")) << "[[rule]]\nfiles = \"*.csv\"\nwindow = \"tern_window.toml\"\n";
  const auto watch = run({"watch", logs, "--rules", folder.path("rules.toml"), "--once"});
  EXPECT_EQ(watch.status, 0) << watch.err;
  EXPECT_EQ(json({"archive", "list"}).at("runs").at(0).at("window"), "Tern SAC305");
}

TEST_F(ArchiveCommand, WatchTakesWhatIsThere) {
  const std::string logs = folder.path("logs"), source = std::string{OVENWRIGHT_SOURCE} + "/";
  std::filesystem::create_directory(logs);
  std::filesystem::copy(source + kRun2, logs + "/QM-2203_0017.csv");
  std::ofstream(logs + "/QM-2204.csv") << "no log at all";
  std::ofstream(logs + "/notes.md") << "no rule for it";
  std::ofstream(folder.path("rules.toml")) << "[[rule]]\nfiles = \"QM-*.csv\"\nlot = \"(QM-[0-9]+)\"\n"
                                              "serial = \"_([0-9]+)\"\noperator = \"R. Quill\"\n"
                                              "window = \"profiles/demo/window.toml\"\n[[rule]]\nfiles = \"*.csv\"\n";
  const auto watch = run({"watch", logs, "--rules", folder.path("rules.toml"), "--once"});
  EXPECT_EQ(watch.status, 3) << watch.err;
  std::istringstream lines(watch.out);
  std::string first, second, rest;
  std::getline(lines, first);
  std::getline(lines, second);
  EXPECT_FALSE(std::getline(lines, rest));
  const auto kept = Json::parse(first), named = Json::parse(second);
  EXPECT_EQ(kept.at("schema"), "ovenwright.watch/1");
  EXPECT_EQ(kept.at("file"), logs + "/QM-2203_0017.csv");
  EXPECT_EQ(kept.at("already"), false);
  EXPECT_EQ(named.at("file"), logs + "/QM-2204.csv");
  EXPECT_TRUE(named.at("error").contains("message"));
  EXPECT_EQ(kept.at("lot"), "QM-2203");
  EXPECT_EQ(kept.at("run_at_from"), "file time");
  const auto list = json({"archive", "list"});
  EXPECT_EQ(list.at("runs").at(0).at("lot"), "QM-2203");
  EXPECT_EQ(list.at("runs").at(0).at("serial"), "0017");
  EXPECT_EQ(list.at("runs").at(0).at("operator"), "R. Quill");
}

TEST_F(ArchiveCommand, ARunCountsOnceInGroups) {
  const auto a = added(kRun1), b = added(kRun2);
  EXPECT_EQ(run({"compare", "--a", a, "--b", b}).status, 0);
  const auto twice = run({"compare", "--a", a, b, "--b", b});
  EXPECT_EQ(twice.status, 2);
  EXPECT_THAT(twice.err, HasSubstr("a run counts once"));
}

}  // namespace
}  // namespace ovenwright
