// A watched folder: files that grow, files that are no logs, files that change, an archive that cannot take them.
#include "app/archive/watch.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <filesystem>
#include <fstream>
#include <thread>

#include "app/archive/database.h"
#include "tests/app/archive/place.h"
#include "tests/app/archive/runs.h"

namespace ovenwright::archive {
namespace {

using testing::HasSubstr;
using namespace std::chrono_literals;

constexpr auto kSettle = 150ms;

class Watch : public testing::Test {
 protected:
  Watch() { std::filesystem::create_directory(folder); }
  Result<std::vector<WatchRule>> rules(const std::string& text) {
    const std::string path = place.folder() + "/rules.toml";
    std::ofstream(path) << text;
    return loadWatchRules(path);
  }
  void write(const std::string& name, const std::string& bytes) { std::ofstream(folder + "/" + name) << bytes; }
  /// Looks until nothing is waited for.
  std::vector<Watched> settled(FolderWatch& watch) {
    std::vector<Watched> all;
    do {
      const auto some = watch.look();
      EXPECT_TRUE(some) << some.error().text();
      all.insert(all.end(), some->begin(), some->end());
      std::this_thread::sleep_for(20ms);
    } while (watch.isWaiting());
    return all;
  }
  TestPlace place{TestPlace::Kind::kFile};
  std::string folder = place.folder() + "/logs";
  const std::string log = contents(OVENWRIGHT_PROFILES "/demo/tern_run2.csv");
  const std::string rule =
      "[[rule]]\nfiles = \"*.csv\"\nlot = \"(QM-[0-9]+)\"\nwindow = \"" OVENWRIGHT_PROFILES "/demo/window.toml\"\n";
};

TEST_F(Watch, WaitsForAFileThatGrows) {
  auto archive = place.open();
  FolderWatch watch(folder, *rules(rule), archive, kSettle);
  const std::size_t step = log.size() / 8;
  for (std::size_t size = step; size < log.size(); size += step) {
    write("QM-1.csv", log.substr(0, size));
    EXPECT_TRUE(watch.look()->empty());
    std::this_thread::sleep_for(kSettle / 3);
  }
  write("QM-1.csv", log);
  const auto taken = settled(watch);
  ASSERT_EQ(taken.size(), 1U);
  EXPECT_FALSE(taken[0].error);
  EXPECT_EQ(*archive.rawLog(taken[0].id), log);
  EXPECT_EQ(archive.load(taken[0].id)->summary.lot, "QM-1");
  EXPECT_TRUE(settled(watch).empty());
  // Another program that watches the same folder, or this one the next day.
  FolderWatch next(folder, *rules(rule), archive, kSettle);
  const auto again = settled(next);
  ASSERT_EQ(again.size(), 1U);
  EXPECT_TRUE(again[0].already);
  EXPECT_EQ(again[0].id, taken[0].id);
}

TEST_F(Watch, NamesWhatItCannotReadOnceUntilItChanges) {
  auto archive = place.open();
  FolderWatch watch(folder, *rules(rule), archive, kSettle);
  write("QM-1.csv", "no log");
  write("other.csv", log);  // no lot in its name
  write(".QM-2.csv.part", log);
  write("QM-3.txt", log);
  const auto first = settled(watch);
  ASSERT_EQ(first.size(), 2U);
  for (const auto& one : first) EXPECT_TRUE(one.error);
  EXPECT_THAT(first[1].error->message, HasSubstr("expression"));
  EXPECT_TRUE(settled(watch).empty());
  EXPECT_EQ(*archive.count({}), 0U);
  write("QM-1.csv", log);
  const auto second = settled(watch);
  ASSERT_EQ(second.size(), 1U);
  EXPECT_FALSE(second[0].error);
  EXPECT_TRUE(std::filesystem::exists(folder + "/QM-1.csv"));
}

TEST_F(Watch, TriesAgainWhatTheArchiveCouldNotTake) {
  auto options = place.options();
  options.busyTimeout_ms = 20;
  auto archive = *Archive::open(place.where(), options);
  FolderWatch watch(folder, *rules(rule), archive, 0ms);
  write("QM-1.csv", log);
  auto holder = *Database::openFile(place.where(), Database::Mode::kReadWrite, 1000);
  ASSERT_FALSE(holder->begin());
  (void)watch.look();
  const auto first = watch.look();
  const auto second = watch.look();
  EXPECT_TRUE(watch.isWaiting());
  holder->rollback();
  const auto taken = settled(watch);
  ASSERT_EQ(taken.size(), 1U);
  EXPECT_FALSE(taken[0].error);
}

TEST_F(Watch, KeepsInTheOutboxWhileTheServerIsAway) {
  auto archive = *Archive::open("postgresql://ow@/nothing?host=/nonexistent", place.options());
  FolderWatch watch(folder, *rules(rule), archive, kSettle);
  write("QM-1.csv", log);
  const auto taken = settled(watch);
  ASSERT_EQ(taken.size(), 1U);
  EXPECT_FALSE(taken[0].error) << taken[0].error->text();
  EXPECT_EQ(archive.state().waiting, 1U);
}

TEST_F(Watch, RulesAreCheckedWhenTheyAreRead) {
  struct Case {
    const char* text;
    const char* said;
  };
  for (const auto& [text, said] : {Case{"", "[[rule]]"},
                                   {"[[rule]]\nlot = \"x\"\n", "files"},
                                   {"[[rule]]\nfiles = \"*\"\nlots = \"x\"\n", "lots"},
                                   {"[[rule]]\nfiles = \"*\"\nlot = \"(QM\"\n", "regular expression"},
                                   {"[[rule]]\nfiles = \"*\"\nwindow = \"nowhere\"\n", "nowhere"},
                                   {"[[rule]]\nfiles = \"*\"\noven = \"ten_zone\"\n", "recipe"}}) {
    const auto read = rules(text);
    ASSERT_FALSE(read) << text;
    EXPECT_THAT(read.error().text(), HasSubstr(said));
  }
}

TEST_F(Watch, ANameThatNothingHasIsToldAtItsPlaceInTheRules) {
  for (const char* key : {"window", "board", "layout"}) {
    const auto read = rules("[[rule]]\nfiles = \"*\"\n" + std::string{key} + " = \"nowhere\"\n");
    ASSERT_FALSE(read) << key;
    EXPECT_THAT(read.error().text(),
                HasSubstr(":3:" + std::to_string(std::string{key}.size() + 4) + ": found no " + key));
  }
  const auto missing = rules("[[rule]]\nfiles = \"*\"\nboard = \"nowhere.toml\"\n");
  ASSERT_FALSE(missing);
  EXPECT_THAT(missing.error().text(), HasSubstr(":3:9: nowhere.toml: cannot be read: "));
}

}  // namespace
}  // namespace ovenwright::archive
