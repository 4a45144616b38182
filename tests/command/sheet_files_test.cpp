// What `sheet` writes, compared with files that a person looked at, and what it leaves where it cannot write.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <filesystem>

#include "tests/command/sheet_run.h"

namespace ovenwright {
namespace {

using testing::HasSubstr;

class SheetGolden : public testing::TestWithParam<const char*> {};

TEST_P(SheetGolden, IsWrittenByteForByte) {
  const Folder folder;
  const std::string file = folder.path(std::string("demo.") + GetParam());
  const auto finished = demo_sheet(file);
  EXPECT_EQ(finished.status, 1) << finished.err;
  const std::string golden = OVENWRIGHT_TEST_DATA "/golden/sheet." + std::string(GetParam());
  if (::getenv("OVENWRIGHT_WRITE_GOLDEN") != nullptr) write(golden, without_pictures(contents(file)));
  EXPECT_EQ(without_pictures(contents(file)), contents(golden));
}

INSTANTIATE_TEST_SUITE_P(Files, SheetGolden, testing::Values("csv", "html", "json"),
                         [](const auto& c) { return std::string(c.param); });

TEST(SheetFiles, AreWholeOrNotThere) {
  const Folder folder;
  const std::string missing = folder.path("no/such/folder/sheet.pdf");
  auto finished = demo_sheet(missing);
  EXPECT_EQ(finished.status, 4) << finished.err;
  EXPECT_THAT(finished.err, HasSubstr(missing));
  // A disk that is full: what was written before stays, nothing else is left behind.
  const std::string full = folder.path("full.pdf");
  std::filesystem::create_symlink("/dev/full", full);
  finished = demo_sheet(full);
  EXPECT_EQ(finished.status, 4) << finished.err;
  EXPECT_EQ(folder.names(), std::vector<std::string>{"full.pdf"});
}

TEST(SheetFiles, NeedAKnownEnding) {
  const Folder folder;
  const auto finished = demo_sheet(folder.path("sheet.docx"));
  EXPECT_EQ(finished.status, 2);
  EXPECT_THAT(finished.err, HasSubstr(".pdf, .html, .csv or .json"));
  EXPECT_TRUE(folder.names().empty());
}

TEST(SheetFiles, NeverTakeALogsPlace) {
  const Folder folder;
  const std::string log = folder.path("run.csv");
  write(log, made_log({"U1"}));
  const std::string before = contents(log);
  EXPECT_EQ(ovenwright_program({"sheet", log, "-o", log}).status, 2);
  EXPECT_EQ(contents(log), before);
}

TEST(SheetFiles, AreNotMadeOfALogThatCannotBeRead) {
  const Folder folder;
  const auto finished = ovenwright_program({"sheet", folder.path("missing.csv"), "-o", folder.path("sheet.pdf")});
  EXPECT_EQ(finished.status, 3);
  EXPECT_TRUE(folder.names().empty());
}

TEST(SheetFiles, StandApartForEachLogWithProgress) {
  const Folder folder;
  const std::string one = folder.path("a"), other = folder.path("b"), out = folder.path("sheets");
  for (const auto& place : {one, other}) {
    std::filesystem::create_directory(place);
    write(place + "/run 7.csv", made_log({"U1", "U2"}));
  }
  const auto finished =
      ovenwright_program({"sheet", one + "/run 7.csv", other + "/run 7.csv", "--apart", "pdf", "-o", out});
  EXPECT_LT(finished.status, 3) << finished.err;
  EXPECT_TRUE(std::filesystem::exists(out + "/run_7.pdf"));
  EXPECT_TRUE(std::filesystem::exists(out + "/run_7-2.pdf"));
  EXPECT_THAT(finished.err, HasSubstr("2 of 2: "));
}

TEST(SheetFiles, TellHowTheyAreAskedFor) {
  EXPECT_EQ(ovenwright_program({"sheet", "--help"}).status, 0);
  EXPECT_EQ(ovenwright_program({"sheet", "a.csv"}).status, 2);        // no output
  EXPECT_EQ(ovenwright_program({"sheet", "-o", "a.pdf"}).status, 2);  // no log
}

}  // namespace
}  // namespace ovenwright
