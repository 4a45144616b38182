// Sheets of runs that an archive keeps.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <nlohmann/json.hpp>

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

}  // namespace
}  // namespace ovenwright
