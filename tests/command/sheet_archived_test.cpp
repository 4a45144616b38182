// Sheets of runs that an archive keeps.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <cstdlib>
#include <nlohmann/json.hpp>
#include <sstream>

#include "tests/command/sheet_run.h"

namespace ovenwright {
namespace {

using Json = nlohmann::json;

class ArchivedSheet : public testing::Test {
 protected:
  Finished run(std::vector<std::string> arguments) {
    arguments.insert(arguments.end(), {"--archive", folder.path("a.sqlite")});
    return ovenwright_program(arguments);
  }
  Json json(std::vector<std::string> arguments) {
    arguments.insert(arguments.end(), {"--format", "json"});
    const auto finished = run(arguments);
    const auto parsed = Json::parse(finished.out, nullptr, false);
    EXPECT_FALSE(parsed.is_discarded()) << finished.out << finished.err;
    return parsed;
  }
  /// Adds a log of the demo and gives its id.
  std::string added(const std::string& log, const std::string& lot = "QM-2201") {
    return json({"archive", "add", log, "--lot", lot, "--window", "profiles/demo/window.toml", "--board",
                 "profiles/demo/board.toml", "--oven", "profiles/demo/oven.toml", "--recipe",
                 "profiles/demo/recipe.toml"})
        .at("added")
        .at(0)
        .at("id");
  }
  Folder folder;
};

/// "81c0…9e2d"
std::string short_form(const std::string& digest) { return digest.substr(0, 4) + "\u2026" + digest.substr(60); }

// Source: the contract of the sheet (records, chains with count and head, logs, all cautions, lines to sign on).
TEST_F(ArchivedSheet, OfALotNamesRecordsChainsAndCautions) {
  const std::string first = added("profiles/demo/tern_run1.csv");
  const std::string second = added("profiles/demo/tern_run2.csv");
  const std::string file = folder.path("lot.pdf");
  EXPECT_EQ(run({"sheet", "--lot", "QM-2201", "--company", "Quillmarsh Assembly", "-o", file}).status, 1);
  const std::string text = pdf_text(file);
  const std::string head = json({"archive", "verify"}).at("heads").at(0).at("digest");
  for (const std::string& said :
       {std::string{"Lot QM-2201"}, std::string{"Quillmarsh Assembly"}, first, second, std::string{"2 records, head"},
        head.substr(0, 16), std::string{"No index: it takes 5 runs at least."},
        std::string{"a qualified person confirms it with an instrumented run"}, std::string{"Hot surfaces"},
        std::string{"the paste\u2019s own data sheet is the authority"}, std::string{"Checked by, date"},
        std::string{"Released by, date"}, std::string{"d40cd78c6dde7c18 4c4f38200bb7401a"}})
    EXPECT_THAT(text, testing::HasSubstr(said));
  // Two runs of one board are one page: the curves of the one that is out, and what the other came to.
  EXPECT_EQ(pdf_info(file, "Pages"), "1");
  for (const std::string said : {"1 of 2 runs pass.", "Run 1: tern_run1.csv", "Run 2: tern_run2.csv", "margin, run 2",
                                 "s from oven entry", "Smallest margin"})
    EXPECT_THAT(text, testing::HasSubstr(said));
  // A page for each run where asked, each with the two lines to sign on.
  EXPECT_EQ(run({"sheet", "--lot", "QM-2201", "--each", "-o", file}).status, 1);
  EXPECT_GT(std::stoi(pdf_info(file, "Pages")), 2);
}

TEST_F(ArchivedSheet, OfALotInHtmlBeginsWithWhatSumsItUp) {
  const std::string first = added("profiles/demo/tern_run1.csv");
  const std::string second = added("profiles/demo/tern_run2.csv");
  const std::string file = folder.path("lot.html");
  EXPECT_EQ(run({"sheet", "--lot", "QM-2201", "-o", file}).status, 1);
  const std::string html = contents(file);
  const auto count = [&html](const std::string& part) {
    int found = 0;
    for (auto at = html.find(part); at != std::string::npos; at = html.find(part, at + 1)) ++found;
    return found;
  };
  EXPECT_EQ(count("<article>"), 3);  // the lot and its two runs
  EXPECT_EQ(count("</article>"), 3);
  EXPECT_EQ(count("Statistics by requirement and placement"), 1);
  EXPECT_EQ(count("Hot surfaces"), 3);
  EXPECT_LT(html.find("1 of 2 runs pass."), html.find("2 of 45 requirements are out."));
  for (const auto& id : {first, second}) EXPECT_LT(html.find(id), html.find("</article>"));
}

TEST_F(ArchivedSheet, OfALotOfTwoStationsNamesBothChains) {
  const std::string other = folder.path("b.sqlite");
  const auto second =
      ovenwright_program({"archive", "add", "profiles/demo/tern_run2.csv", "--lot", "QM-2201", "--archive", other});
  EXPECT_EQ(second.status, 0) << second.err;
  const std::string first = added("profiles/demo/tern_run1.csv");
  EXPECT_EQ(ovenwright_program({"archive", "move", "--to", folder.path("a.sqlite"), "--archive", other}).status, 0);
  EXPECT_EQ(run({"sheet", "--lot", "QM-2201", "-o", folder.path("lot.pdf")}).status, 1);
  const std::string text = pdf_text(folder.path("lot.pdf"));
  const auto heads = json({"archive", "verify"}).at("heads");
  ASSERT_EQ(heads.size(), 2U);
  for (const auto& head : heads)
    EXPECT_THAT(text, testing::HasSubstr("1 record, head " + short_form(head.at("digest"))));
}

TEST_F(ArchivedSheet, OfARunIsFoundByADigestFromPaper) {
  const std::string id = added("profiles/demo/tern_run1.csv");
  const std::string file = folder.path("run.json");
  EXPECT_EQ(run({"sheet", "--run", "d40c\u202689c0", "-o", file}).status, 1);
  const auto sheet = Json::parse(contents(file));
  EXPECT_EQ(sheet.at("runs").at(0).at("archive").at("id"), id);
  EXPECT_EQ(sheet.at("runs").at(0).at("run_at_from"), "file time");
  EXPECT_EQ(run({"sheet", "--run", id, "-o", folder.path("run.pdf")}).status, 1);
  EXPECT_THAT(pdf_text(folder.path("run.pdf")), testing::HasSubstr("UTC, time of"));
}

TEST_F(ArchivedSheet, IsNotedAsPrintedWhereAsked) {
  const std::string id = added("profiles/demo/tern_run1.csv");
  EXPECT_TRUE(json({"archive", "list"}).at("runs").at(0).at("printed_at").is_null());
  const auto sheet = run({"sheet", "--run", id, "--mark-printed", "R. Quill", "-o", folder.path("a.json")});
  EXPECT_EQ(sheet.status, 1) << sheet.err;  // the run fails its window
  EXPECT_TRUE(json({"archive", "list"}).at("runs").at(0).at("printed_at").is_string());
  EXPECT_THAT(run({"archive", "show", id}).out, testing::ContainsRegex("Printed  20[^ ]*Z, by R. Quill, at "));
  EXPECT_EQ(json({"archive", "verify"}).at("notes"), 1);
  // Not where nothing was written, and only beside records.
  EXPECT_EQ(run({"sheet", "--run", id, "--mark-printed", "R. Quill", "-o", "/nonexistent/a.json"}).status, 4);
  EXPECT_EQ(json({"archive", "verify"}).at("notes"), 1);
  EXPECT_EQ(
      run({"sheet", "profiles/demo/tern_run1.csv", "--mark-printed", "R. Quill", "-o", folder.path("b.json")}).status,
      2);
}

// Source: what `compare` says of the same records; all were kept with one window.
TEST_F(ArchivedSheet, OfTwoGroupsSaysWhatCompareSays) {
  std::vector<std::string> groups;
  for (const std::string side : {"--a", "--b"}) {
    groups.push_back(side);
    for (const double share : {0.0, 0.003}) {
      // The demo's log with its temperatures further from 25 °C: another run.
      const std::string log = "run" + side.substr(2);
      std::istringstream from(contents(OVENWRIGHT_SOURCE "/profiles/demo/tern_run2.csv"));
      std::string all, line;
      while (std::getline(from, line)) {
        std::istringstream cells(line);
        std::string cell, moved;
        for (int i = 0; std::getline(cells, cell, ','); ++i) {
          char* end = nullptr;
          const double value = std::strtod(cell.c_str(), &end);
          const bool number = i > 0 && end != cell.c_str() && *end == '\0';
          const double by = share + (side == "--b" ? -0.01 : 0);
          moved += (i > 0 ? "," : "") + (number ? std::to_string(value + (value - 25) * by) : cell);
        }
        all += moved + "\n";
      }
      const std::string path = folder.path(log + std::to_string(share) + ".csv");
      write(path, all);
      groups.push_back(added(path, side == "--a" ? "QM-2201" : "QM-2202"));
    }
  }
  auto arguments = groups;
  arguments.insert(arguments.begin(), "compare");
  const auto report = json(arguments);
  arguments = groups;
  arguments.insert(arguments.begin(), {"sheet", "--compare"});
  arguments.insert(arguments.end(), {"-o", folder.path("groups.json")});
  ASSERT_EQ(run(arguments).status, 0);
  const auto sheet = Json::parse(contents(folder.path("groups.json")), nullptr, false);
  EXPECT_EQ(sheet.at("comparison"), report);
  EXPECT_EQ(sheet.at("runs").size(), 4U);
  for (const std::string ending : {"pdf", "html", "csv"}) {
    arguments.back() = folder.path("groups." + ending);
    EXPECT_EQ(run(arguments).status, 0) << ending;
  }
  const std::string text = pdf_text(folder.path("groups.pdf"));
  for (const std::string said : {"Means of 2 and 2 runs", "A, mean margin", "Runs of A", "Logs of B",
                                 "A: Lot QM-2201, 2 runs", "two samples (Welch)", "On the next page"})
    EXPECT_THAT(text, testing::HasSubstr(said));
  EXPECT_THAT(contents(folder.path("groups.csv")), testing::HasSubstr(",2,2\r\n"));
  // A run counts once; a digest names a run; groups have no other settings than those they were kept with.
  auto twice = groups;
  twice.insert(twice.begin(), {"sheet", "--compare"});
  twice.insert(twice.end(), {groups[1], "-o", folder.path("twice.pdf")});
  EXPECT_EQ(run(twice).status, 2);
  EXPECT_EQ(run({"sheet", "--compare", "--a", groups[1], "-o", folder.path("one.pdf")}).status, 2);
  EXPECT_EQ(run({"sheet", "--compare", "--a", groups[1], "--b", groups[4], "--recipe", "profiles/demo/recipe.toml",
                 "--oven", "profiles/demo/oven.toml", "-o", folder.path("one.pdf")})
                .status,
            2);
  EXPECT_EQ(
      run({"sheet", "--compare", "--a", "00000000deadbeef", "--b", groups[4], "-o", folder.path("one.pdf")}).status, 3);
}

}  // namespace
}  // namespace ovenwright
