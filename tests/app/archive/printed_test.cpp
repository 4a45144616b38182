// Notes beside records that their sheets were printed: added, listed, moved, sent, and held against their chain.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "app/archive/archive.h"
#include "tests/app/archive/place.h"
#include "tests/app/archive/runs.h"

namespace ovenwright::archive {
namespace {

using testing::HasSubstr;

class Printed : public testing::TestWithParam<TestPlace::Kind> {
 protected:
  /// Adds runs and gives their ids.
  static std::vector<std::string> added(Archive& archive, int from, int count) {
    const auto all = archive.add(madeUpRuns(from, count));
    EXPECT_TRUE(all) << all.error().text();
    std::vector<std::string> ids;
    for (const auto& one : *all) ids.push_back(one.id);
    return ids;
  }
  static void expectBad(Archive& archive, const std::string& id, const char* reason) {
    const auto found = archive.verify();
    ASSERT_TRUE(found) << found.error().text();
    EXPECT_EQ(found->firstBad, id);
    EXPECT_THAT(found->reason, HasSubstr(reason));
  }
  TestPlace place{GetParam()};
};
INSTANTIATE_TEST_SUITE_P(Both, Printed, testing::Values(TestPlace::Kind::kFile, TestPlace::Kind::kServer),
                         [](const auto& at) { return at.param == TestPlace::Kind::kFile ? "File" : "Server"; });

TEST_P(Printed, IsNotedBesideTheRecordsAndListed) {
  auto archive = place.open();
  const auto ids = added(archive, 1, 3);
  const std::string digest = archive.load(ids[0])->digest;
  const auto first = archive.notePrinted(std::vector{ids[0], ids[1], ids[0]}, "R. Quill");
  ASSERT_TRUE(first) << first.error().text();
  const auto second = archive.notePrinted(std::vector{ids[0]}, "M. \"Kade\"\n\u00e4");
  ASSERT_TRUE(second) << second.error().text();
  const auto page = archive.find({}, 10, std::nullopt, Order::kOldestFirst);
  ASSERT_TRUE(page) << page.error().text();
  ASSERT_EQ(page->runs.size(), 3U);
  EXPECT_EQ(page->runs[0].printedAt, *second);
  EXPECT_EQ(page->runs[1].printedAt, *first);
  EXPECT_EQ(page->runs[2].printedAt, std::nullopt);
  const auto notes = archive.printedNotes(ids[0]);
  ASSERT_TRUE(notes) << notes.error().text();
  ASSERT_EQ(notes->size(), 2U);
  EXPECT_EQ(notes->at(0).by, "R. Quill");
  EXPECT_EQ(notes->at(1).by, "M. \"Kade\"\n\u00e4");
  EXPECT_EQ(notes->at(1).at, *second);
  EXPECT_EQ(archive.load(ids[0])->digest, digest);
  const auto found = archive.verify();
  ASSERT_TRUE(found) << found.error().text();
  EXPECT_TRUE(found->holds()) << found->firstBad << found->reason;
  EXPECT_EQ(found->notes, 3U);
  EXPECT_EQ(archive.notePrinted(std::vector<std::string>{"7kq2mv9x-1"}, "").error().code, ErrorCode::kBadArgument);
  EXPECT_EQ(archive.verify()->notes, 3U);
}

TEST_P(Printed, ThatWasChangedOrIsMissingIsFound) {
  auto archive = place.open();
  const auto ids = added(archive, 1, 4);
  for (const auto& id : ids) ASSERT_TRUE(archive.notePrinted(std::vector{id}, "R. Quill"));
  for (const char* change :
       {"printed_at = printed_at + 1", "printed_by = 'somebody'", "station = 'elsewhere'", "record_number = 1"}) {
    place.unlock();
    place.execute("create table aside as select * from note");
    place.execute(std::string{"update note set "} + change + " where number = 2");
    expectBad(archive, std::string{change} == "record_number = 1" ? ids[0] : ids[1], "was changed");
    place.execute("delete from note");
    place.execute("insert into note select * from aside");
    place.execute("drop table aside");
    ASSERT_TRUE(archive.verify()->holds()) << archive.verify()->reason;
  }
  place.execute("delete from note where number = 2");
  expectBad(archive, ids[2], "is missing");
}

TEST_P(Printed, MovesAlong) {
  const TestPlace source{TestPlace::Kind::kFile}, last{TestPlace::Kind::kFile};
  auto from = source.open("station A"), to = place.open("station A");
  const auto ids = added(from, 1, 3);
  const auto printed = from.notePrinted(ids, "R. Quill");
  ASSERT_TRUE(printed) << printed.error().text();
  for (int turn = 0; turn < 2; ++turn) {
    const auto moved = from.moveTo(to);
    ASSERT_TRUE(moved) << moved.error().text();
    EXPECT_EQ(to.find({}, 10)->runs[0].printedAt, *printed);
    EXPECT_EQ(to.verify()->notes, 3U) << to.verify()->reason;
  }
  // Both go on, and what is added follows.
  ASSERT_TRUE(to.notePrinted(std::vector{ids[1]}, "M. Kade"));
  ASSERT_TRUE(from.notePrinted(std::vector{ids[2]}, "R. Quill"));
  auto moved = from.moveTo(to);
  ASSERT_TRUE(moved) << moved.error().text();
  auto end = last.open("station B");
  moved = to.moveTo(end);
  ASSERT_TRUE(moved) << moved.error().text();
  for (Archive* archive : {&to, &end}) {
    const auto found = archive->verify();
    EXPECT_TRUE(found->holds()) << found->firstBad << found->reason;
    EXPECT_EQ(found->notes, 5U);
    EXPECT_EQ(archive->printedNotes(ids[1])->back().by, "M. Kade");
    EXPECT_EQ(archive->printedNotes(ids[2])->size(), 2U);
  }
}

TEST(PrintedOnAServer, WaitsWhileItIsAway) {
  const TestPlace place{TestPlace::Kind::kServer};
  std::string sent;
  {
    auto archive = place.open();
    sent = archive.add(madeUpRuns(1, 1))->front().id;
    ASSERT_TRUE(archive.notePrinted(std::vector{sent}, "R. Quill"));
    ASSERT_TRUE(archive.notePrinted(std::vector{sent}, "R. Quill"));
  }
  std::string waiting;
  {
    auto away = *Archive::open("postgresql://ow@/nothing?host=/nonexistent", place.options());
    waiting = away.add(madeUpRuns(2, 1))->front().id;
    const auto noted = away.notePrinted(std::vector{waiting}, "M. Kade");
    ASSERT_TRUE(noted) << noted.error().text();
    EXPECT_EQ(away.printedNotes(waiting)->size(), 1U);
    // Whether the server has a record cannot be said now.
    EXPECT_EQ(away.notePrinted(std::vector<std::string>{"7kq2mv9x-1"}, "").error().code, ErrorCode::kIo);
  }
  auto archive = place.open();
  EXPECT_EQ(archive.printedNotes(waiting)->size(), 1U);
  EXPECT_EQ(archive.printedNotes(sent)->size(), 2U);
  ASSERT_TRUE(archive.notePrinted(std::vector{sent}, "M. Kade"));
  EXPECT_EQ(place.value("select count(*) from note"), "4");
  const auto found = archive.verify();
  EXPECT_TRUE(found->holds()) << found->firstBad << found->reason;
  EXPECT_EQ(found->notes, 4U);
}

}  // namespace
}  // namespace ovenwright::archive
