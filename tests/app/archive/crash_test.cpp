// A writer killed at random moments: what it printed is kept, whole, and the archive opens.
#include <gtest/gtest.h>
#include <unistd.h>

#include <cstdlib>
#include <filesystem>
#include <random>
#include <set>
#include <thread>

#include "app/archive/archive.h"
#include "tests/app/archive/child.h"
#include "tests/app/archive/place.h"
#include "tests/app/archive/runs.h"

namespace ovenwright::archive {
namespace {

/// How often a writer is killed: 200 times in full, fewer in the suite that is run all the time.
int crashes() {
  const char* const asked = std::getenv("OVENWRIGHT_CRASHES");
  return asked ? std::atoi(asked) : 30;
}

class Crash : public testing::TestWithParam<TestPlace::Kind> {
 protected:
  TestPlace place{GetParam()};
  std::mt19937 random{20260314};

  /// Lets a child work for a random while, then kills it; the lines it printed until then. With `first`, the while
  /// begins at its first line, so that also on a busy machine it comes to its work.
  std::vector<std::string> killed(const std::vector<std::string>& command, int most_ms, bool first = false) {
    Child child(command);
    std::string begun;
    if (first && !child.readLine(begun)) return {};
    std::jthread killer([&child, after = std::chrono::milliseconds{random() % static_cast<unsigned>(most_ms)}] {
      std::this_thread::sleep_for(after);
      child.kill();
    });
    std::vector<std::string> lines;
    for (std::string line; child.readLine(line);) lines.push_back(line);
    return lines;
  }
};
INSTANTIATE_TEST_SUITE_P(Both, Crash, testing::Values(TestPlace::Kind::kFile, TestPlace::Kind::kServer),
                         [](const auto& at) { return at.param == TestPlace::Kind::kFile ? "File" : "Server"; });

TEST_P(Crash, WhileAddingLosesNothingThatWasReported) {
  std::set<std::string> printed;
  const auto options = place.options();
  for (int turn = 0; turn < crashes(); ++turn) {
    for (const auto& line : killed({OVENWRIGHT_ARCHIVE_WRITER, "add", place.where(), options.outbox, options.machine,
                                    std::to_string(1 + turn * 1000), "1000", std::to_string(1 + turn % 5)},
                                   200)) {
      ASSERT_TRUE(line.starts_with("kept ")) << line;
      EXPECT_TRUE(printed.insert(line.substr(5)).second) << line << " was given twice";
    }
    if (turn % 5 != 4 && turn + 1 < crashes()) continue;
    auto archive = place.open();
    const auto found = archive.verify();
    ASSERT_TRUE(found) << found.error().text();
    ASSERT_TRUE(found->holds()) << found->firstBad << ": " << found->reason;
    EXPECT_GE(found->records, printed.size());
    for (const auto& id : printed) {
      const auto record = archive.load(id);
      ASSERT_TRUE(record) << record.error().text();
    }
  }
  EXPECT_FALSE(printed.empty());
  RecordProperty("records", static_cast<int>(printed.size()));
}

TEST_P(Crash, WhileMovingLosesAndDoublesNothing) {
  TestPlace source{TestPlace::Kind::kFile};
  constexpr std::size_t kRecords = 400;
  { ASSERT_TRUE(source.open().add(madeUpRuns(1, kRecords))); }
  const auto options = place.options();
  const std::vector<std::string> move{OVENWRIGHT_ARCHIVE_WRITER, "move", source.where(), place.where(), options.outbox};
  for (int turn = 0; turn < crashes(); ++turn) {
    killed(move, 60, turn % 2 == 0);
    auto archive = place.open();
    const auto found = archive.verify();
    ASSERT_TRUE(found) << found.error().text();
    ASSERT_TRUE(found->holds()) << found->firstBad << ": " << found->reason;
  }
  EXPECT_TRUE(linesOf(move).back().starts_with("moved"));
  EXPECT_EQ(*place.open().count({}), kRecords);
  EXPECT_TRUE(source.open().verify()->holds());
}

TEST_P(Crash, WhileMigratingLeavesTheOldOrTheNew) {
  { ASSERT_TRUE(place.open().add(madeUpRuns(1, 300))); }
  const auto options = place.options();
  const int turns = std::max(3, crashes() / 3);
  for (int turn = 0; turn < turns; ++turn) {
    place.unlock();
    for (const char* table : {"search", "released_window", "note", "superseded", "kept_by_server", "repeated"})
      place.execute(std::string{"drop table if exists "} + table);
    place.execute("alter table run drop column run_at_given");
    place.execute("update archive set value = '1'");
    if (GetParam() == TestPlace::Kind::kServer) {
      place.execute("drop schema if exists ovenwright_before_version_2 cascade");
    } else {
      std::filesystem::remove(place.where() + ".before-version-2");
    }
    killed({OVENWRIGHT_ARCHIVE_WRITER, "add", place.where(), options.outbox, options.machine, "1", "0", "1"}, 60);
    auto archive = place.open();
    EXPECT_EQ(*archive.count({}), 300U);
    const auto found = archive.verify();
    ASSERT_TRUE(found) << found.error().text();
    ASSERT_TRUE(found->holds()) << found->firstBad << ": " << found->reason;
  }
}

}  // namespace
}  // namespace ovenwright::archive
