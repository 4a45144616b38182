// Records moved between archives of both kinds, stopped and started again.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <filesystem>

#include "app/archive/archive.h"
#include "core/files/digest.h"
#include "tests/app/archive/place.h"
#include "tests/app/archive/runs.h"

namespace ovenwright::archive {
namespace {

using testing::HasSubstr;
using Kinds = std::tuple<TestPlace::Kind, TestPlace::Kind>;

class Moved : public testing::TestWithParam<Kinds> {
 protected:
  TestPlace from{std::get<0>(GetParam())}, to{std::get<1>(GetParam())};
};
INSTANTIATE_TEST_SUITE_P(Archives, Moved,
                         testing::Combine(testing::Values(TestPlace::Kind::kFile, TestPlace::Kind::kServer),
                                          testing::Values(TestPlace::Kind::kFile, TestPlace::Kind::kServer)),
                         [](const auto& at) {
                           const auto word = [](TestPlace::Kind kind) {
                             return std::string{kind == TestPlace::Kind::kFile ? "File" : "Server"};
                           };
                           return word(std::get<0>(at.param)) + "To" + word(std::get<1>(at.param));
                         });

/// Everything that is kept under the ids of `a` is kept in `b`.
void expectSame(Archive& a, Archive& b) {
  const auto page = a.find({}, 1000);
  ASSERT_TRUE(page) << page.error().text();
  for (const auto& run : page->runs) {
    const auto there = b.load(run.id);
    ASSERT_TRUE(there) << there.error().text();
    EXPECT_EQ(there->digest, a.load(run.id)->digest);
    EXPECT_EQ(*b.report(run.id), *a.report(run.id));
    EXPECT_EQ(*b.rawLog(run.id), *a.rawLog(run.id));
    for (const auto& window : there->windows) EXPECT_EQ(*b.content(window.sha256), *a.content(window.sha256));
  }
}

TEST_P(Moved, KeepsIdsChainsAndEvidence) {
  auto source = from.open("station A");
  ASSERT_TRUE(source.add(madeUpRuns(1, 70)));
  {
    auto second = from.open("station B");
    ASSERT_TRUE(second.add(madeUpRuns(100, 3)));
  }
  auto target = to.open("station C");
  ASSERT_TRUE(target.add(madeUpRuns(200, 2)));
  const auto moved = source.moveTo(target);
  ASSERT_TRUE(moved) << moved.error().text();
  EXPECT_EQ(*moved, 73U);
  EXPECT_EQ(*target.count({}), 75U);
  EXPECT_EQ(*source.count({}), 73U);
  EXPECT_TRUE(target.verify()->holds());
  expectSame(source, target);
  EXPECT_EQ(*source.moveTo(target), 0U);
  // What is added later follows, and both go on.
  ASSERT_TRUE(source.add(madeUpRuns(300, 2)));
  ASSERT_TRUE(target.add(madeUpRuns(400, 1)));
  EXPECT_EQ(*source.moveTo(target), 2U);
  EXPECT_EQ(*target.count({}), 78U);
  EXPECT_TRUE(target.verify()->holds());
}

TEST_P(Moved, MayBeStoppedAndStartedAgain) {
  auto source = from.open("station A");
  ASSERT_TRUE(source.add(madeUpRuns(1, 120)));
  auto target = to.open("station C");
  int turns = 0;
  for (;; ++turns) {
    const auto moved = source.moveTo(target, [](double) { return false; });
    EXPECT_TRUE(target.verify()->holds());
    if (moved) break;
    ASSERT_EQ(moved.error().code, ErrorCode::kCancelled) << moved.error().text();
    ASSERT_LT(turns, 10);
  }
  EXPECT_GT(turns, 1);
  EXPECT_EQ(*target.count({}), 120U);
}

TEST_P(Moved, TakesReleasesOfWindowsAlong) {
  auto source = from.open("station A");
  ASSERT_TRUE(source.add(madeUpRuns(1, 1)));
  const auto window = madeUpRun(1).windows.front();
  const auto used = source.release(window, "R. Quill");
  ASSERT_TRUE(used) << used.error().text();
  // One that no record names: its bytes must come along too.
  const NewFile other{"Dunlin window", std::nullopt, std::make_shared<const std::string>("name = \"Dunlin window\"\n"),
                      files::sha256_hex("name = \"Dunlin window\"\n")};
  ASSERT_TRUE(source.release(other, "M. Kade"));
  auto target = to.open("station C");
  for (int turn = 0; turn < 2; ++turn) {
    const auto moved = source.moveTo(target);
    ASSERT_TRUE(moved) << moved.error().text();
    const auto released = target.releasedWindows();
    ASSERT_TRUE(released) << released.error().text();
    ASSERT_EQ(released->size(), 2U);
    EXPECT_EQ(released->at(1).window.name, "Tern window");
    EXPECT_EQ(released->at(1).window.revision, "2");
    EXPECT_EQ(released->at(1).releasedAt, used->releasedAt);
    EXPECT_EQ(released->at(1).releasedBy, "R. Quill");
    EXPECT_EQ(*target.content(other.sha256), *other.bytes);
  }
}

TEST(Move, LetsTheSameMachineGoOnInBothFiles) {
  const TestPlace place{TestPlace::Kind::kFile}, other{TestPlace::Kind::kFile};
  auto source = place.open(), target = other.open();
  ASSERT_TRUE(source.add(madeUpRuns(1, 2)));
  ASSERT_TRUE(source.moveTo(target));
  ASSERT_TRUE(target.add(madeUpRuns(10, 1)));
  ASSERT_TRUE(source.add(madeUpRuns(20, 1)));
  const auto moved = source.moveTo(target);
  ASSERT_TRUE(moved) << moved.error().text();
  EXPECT_EQ(*target.count({}), 4U);
  EXPECT_EQ(target.heads()->size(), 2U);
  EXPECT_TRUE(target.verify()->holds());
}

TEST(Move, RefusesACopyThatWentOnByItself) {
  const TestPlace place{TestPlace::Kind::kFile}, target{TestPlace::Kind::kServer};
  { ASSERT_TRUE(place.open().add(madeUpRuns(1, 2))); }
  const std::string copy = place.folder() + "/copy.sqlite";
  std::filesystem::copy_file(place.where(), copy);
  auto first = place.open();
  ASSERT_TRUE(first.add(madeUpRuns(3, 1)));
  auto second = *Archive::open(copy, place.options());
  ASSERT_TRUE(second.add(madeUpRuns(4, 1)));
  auto to = target.open("station C");
  ASSERT_TRUE(first.moveTo(to));
  const auto moved = second.moveTo(to);
  ASSERT_FALSE(moved);
  EXPECT_EQ(moved.error().code, ErrorCode::kBadArgument);
  EXPECT_THAT(moved.error().message, HasSubstr("continued from a copy"));
  EXPECT_EQ(*to.count({}), 3U);
  EXPECT_TRUE(to.verify()->holds());
}

TEST(Move, RefusesARecordThatDoesNotHold) {
  const TestPlace place{TestPlace::Kind::kFile}, target{TestPlace::Kind::kFile};
  auto from = place.open();
  ASSERT_TRUE(from.add(madeUpRuns(1, 5)));
  place.unlock();
  place.execute("update record set packed = (select packed from record where number = 1) where number = 4");
  auto to = target.open();
  const auto moved = from.moveTo(to);
  ASSERT_FALSE(moved);
  EXPECT_THAT(moved.error().message, HasSubstr("-4 does not hold"));
  EXPECT_EQ(*to.count({}), 0U);
}

}  // namespace
}  // namespace ovenwright::archive
