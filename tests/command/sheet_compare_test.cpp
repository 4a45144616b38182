// The sheet of two logs, run as a process: golden files of its exports, and what its page says.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <nlohmann/json.hpp>

#include "tests/command/sheet_run.h"

namespace ovenwright {
namespace {

using testing::HasSubstr;
using Json = nlohmann::json;

const std::vector<std::string> kPair{"profiles/demo/tern_run1.csv",
                                     "profiles/demo/tern_run2.csv",
                                     "--window",
                                     "profiles/demo/window.toml",
                                     "--board",
                                     "profiles/demo/board.toml",
                                     "--oven",
                                     "profiles/demo/oven.toml",
                                     "--recipe",
                                     "profiles/demo/recipe.toml",
                                     "--recipe",
                                     "profiles/demo/recipe_rev8.toml"};

Finished compare_sheet(const std::string& file, const std::vector<std::string>& more = {}) {
  ::setenv("SOURCE_DATE_EPOCH", "1773312120", 1);  // 2026-03-12T10:42:00Z
  std::vector<std::string> arguments{"sheet", "--compare"};
  arguments.insert(arguments.end(), kPair.begin(), kPair.end());
  arguments.insert(arguments.end(), {"-o", file});
  arguments.insert(arguments.end(), more.begin(), more.end());
  return ovenwright_program(arguments);
}

/// What `ovenwright compare` says of the same logs.
Json compared(const std::vector<std::string>& more = {}) {
  std::vector<std::string> arguments{"compare"};
  arguments.insert(arguments.end(), kPair.begin(), kPair.end());
  arguments.insert(arguments.end(), {"--format", "json"});
  arguments.insert(arguments.end(), more.begin(), more.end());
  return Json::parse(ovenwright_program(arguments).out, nullptr, false);
}

class SheetCompareGolden : public testing::TestWithParam<const char*> {};

TEST_P(SheetCompareGolden, IsWrittenByteForByte) {
  const Folder folder;
  const std::string file = folder.path(std::string("pair.") + GetParam());
  const auto finished = compare_sheet(file);
  EXPECT_EQ(finished.status, 0) << finished.err;
  const std::string golden = OVENWRIGHT_TEST_DATA "/golden/sheet_compare." + std::string(GetParam());
  if (::getenv("OVENWRIGHT_WRITE_GOLDEN") != nullptr) write(golden, without_pictures(contents(file)));
  EXPECT_EQ(without_pictures(contents(file)), contents(golden));
}

INSTANTIATE_TEST_SUITE_P(Files, SheetCompareGolden, testing::Values("csv", "html", "json"),
                         [](const auto& c) { return std::string(c.param); });

// Source: what `ovenwright compare` says of the same two logs.
TEST(SheetCompare, SaysWhatTheCommandSays) {
  const Folder folder;
  const std::string file = folder.path("pair.json");
  ASSERT_EQ(compare_sheet(file).status, 0);
  const auto sheet = Json::parse(contents(file), nullptr, false);
  ASSERT_TRUE(sheet.is_object());
  EXPECT_EQ(sheet["comparison"], compared());
  ASSERT_EQ(sheet["runs"].size(), 2u);
  EXPECT_EQ(sheet["runs"][0]["check"]["log"]["sha256"], compared()["runs"]["a"]["sha256"]);
  ASSERT_EQ(compare_sheet(file, {"--align", "217", "--different-thermocouples"}).status, 0);
  EXPECT_EQ(Json::parse(contents(file))["comparison"], compared({"--align", "217", "--different-thermocouples"}));
}

TEST(SheetCompare, IsOnePageWithEverythingThatIdentifiesBothRuns) {
  const Folder folder;
  const auto report = compared();
  for (const std::string paper : {"A4", "Letter"}) {
    const std::string file = folder.path(paper + ".pdf");
    const auto finished = compare_sheet(file, {"--paper", paper, "--company", "Quillmarsh Assembly, Line 2"});
    ASSERT_EQ(finished.status, 0) << finished.err;
    EXPECT_EQ(pdf_info(file, "Pages"), "1") << paper;
    const std::string text = pdf_text(file);
    std::string joined = text;
    std::erase(joined, ' ');
    for (const std::string& said :
         {std::string("B has more margin:"), std::string("Quillmarsh Assembly, Line 2"), std::string("tern_run1.csv"),
          std::string("tern_run2.csv"), std::string("revision 7"), std::string("revision 8"),
          std::string("A, smallest margin"), std::string("Largest change, A to B"), std::string("whose errors cancel"),
          std::string("instrumented run before production"), std::string("Page 1 of 1")})
      EXPECT_THAT(text, HasSubstr(said)) << paper;
    for (const char* side : {"a", "b"})
      EXPECT_THAT(joined, HasSubstr(report["runs"][side]["sha256"].get<std::string>())) << paper;
  }
}

// German is a third longer, Letter 18 mm shorter than A4.
TEST(SheetCompare, IsOnePageInGermanOnLetter) {
  const Folder folder;
  const std::string file = folder.path("pair.pdf");
  ASSERT_EQ(compare_sheet(file, {"--paper", "Letter", "--language", "de"}).status, 0);
  EXPECT_EQ(pdf_info(file, "Pages"), "1");
  const std::string text = pdf_text(file);
  for (const char* said : {"Unterschiede:", "Mehr Reserve:", "Seite 1 von 1"}) EXPECT_THAT(text, HasSubstr(said));
}

TEST(SheetCompare, CurvesMayLieOverEachOther) {
  const Folder folder;
  const std::string file = folder.path("over.pdf");
  ASSERT_EQ(compare_sheet(file, {"--overlaid"}).status, 0);
  EXPECT_THAT(pdf_text(file), HasSubstr("A solid, B dashed"));
}

TEST(SheetCompare, InEveryLanguage) {
  const Folder folder;
  const std::string file = folder.path("pair.pdf");
  for (const auto& [language, said] : std::vector<std::pair<std::string, std::string>>{
           {"de", "B hat mehr Reserve:"}, {"es", "B tiene más margen:"}, {"zh_TW", "裕度"}, {"zh_CN", "裕量"}}) {
    ASSERT_EQ(compare_sheet(file, {"--language", language}).status, 0);
    EXPECT_THAT(pdf_text(file), HasSubstr(said)) << language;
  }
}

TEST(SheetCompare, NamesWhatIsWrong) {
  const Folder folder;
  const std::string file = folder.path("pair.pdf");
  EXPECT_EQ(ovenwright_program({"sheet", "--compare", kPair[0], "-o", file}).status, 2);
  EXPECT_EQ(ovenwright_program({"sheet", "--compare", "-o", file}).status, 2);
  EXPECT_EQ(ovenwright_program({"sheet", "--compare", kPair[0], kPair[1], "--each", "-o", file}).status, 2);
  EXPECT_EQ(ovenwright_program({"sheet", kPair[0], "--align", "217", "-o", file}).status, 2);
  EXPECT_EQ(compare_sheet(file, {"--recipe", "profiles/demo/recipe.toml"}).status, 2);  // a third one
  EXPECT_EQ(ovenwright_program({"sheet", "--compare", kPair[0], folder.path("missing.csv"), "-o", file}).status, 3);
  EXPECT_EQ(ovenwright_program({"sheet", "--compare", kPair[0], kPair[1], "-o", kPair[1]}).status, 2);
  EXPECT_TRUE(folder.names().empty());
}

}  // namespace
}  // namespace ovenwright
