// Stations on a server: away, back, restarted, refusing; what waits, in order and without doubles.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <QScopeGuard>
#include <atomic>
#include <cstdlib>
#include <thread>

#include "app/archive/archive.h"
#include "tests/app/archive/own_server.h"
#include "tests/app/archive/place.h"
#include "tests/app/archive/runs.h"

namespace ovenwright::archive {
namespace {

using testing::HasSubstr;
using Kind = State::Kind;

/// A server's address at which nothing answers.
constexpr const char* kNowhere = "postgresql://ow@/nothing?host=/nonexistent";

class Outbox : public testing::Test {
 protected:
  Archive openAway() { return *Archive::open(kNowhere, place.options()); }
  TestPlace place{TestPlace::Kind::kServer};
};

TEST_F(Outbox, KeepsWhatAServerThatIsAwayCannotTake) {
  auto archive = openAway();
  EXPECT_EQ(archive.state().kind, Kind::kServerAway);
  const auto added = archive.add(madeUpRuns(1, 3));
  ASSERT_TRUE(added) << added.error().text();
  EXPECT_EQ(archive.state().waiting, 3U);
  EXPECT_FALSE(archive.state().message.empty());
  // It can be looked at by its id, and lists give what waits.
  EXPECT_EQ(archive.load(added->front().id)->summary.serial, "S1");
  EXPECT_EQ(*archive.rawLog(added->front().id), *madeUpRun(1).log.bytes);
  const auto page = archive.find({}, 10);
  ASSERT_TRUE(page) << page.error().text();
  EXPECT_EQ(page->runs.size(), 3U);
  EXPECT_EQ(*archive.count({}), 3U);
  EXPECT_EQ(archive.lots()->size(), 1U);
  EXPECT_EQ(archive.runsOfLot("QM-1001")->size(), 3U);
  EXPECT_EQ(archive.heads()->size(), 1U);
  EXPECT_EQ(archive.verify().error().code, ErrorCode::kIo);  // of the server nothing can be said
  EXPECT_EQ(*archive.sendWaiting(), 0U);
  // The same log again, in this process and the next.
  EXPECT_TRUE(archive.add(madeUpRuns(2, 1))->front().already);
  EXPECT_TRUE(openAway().add(madeUpRuns(3, 1))->front().already);
}

TEST_F(Outbox, IsListedByAReaderWhileTheServerIsAway) {
  auto options = place.options();
  options.access = Access::kReadOnly;
  {  // nothing waits yet
    auto none = Archive::open(kNowhere, options);
    ASSERT_TRUE(none) << none.error().text();
    EXPECT_EQ(none->state().kind, Kind::kServerAway);
    EXPECT_FALSE(none->state().message.empty());
    EXPECT_EQ(none->find({}, 10).error().code, ErrorCode::kIo);
  }
  ASSERT_TRUE(openAway().add(madeUpRuns(1, 3)));
  auto reader = Archive::open(kNowhere, options);
  ASSERT_TRUE(reader) << reader.error().text();
  EXPECT_EQ(reader->state().kind, Kind::kServerAway);
  EXPECT_FALSE(reader->state().message.empty());
  EXPECT_EQ(reader->find({}, 10)->runs.size(), 3U);
  EXPECT_FALSE(reader->add(madeUpRuns(4, 1)));
}

TEST_F(Outbox, KnowsWhileTheServerIsAwayWhatItKeeps) {
  std::string own, others;
  {
    auto archive = place.open();
    own = archive.add(madeUpRuns(1, 2))->back().id;
  }
  {
    auto other = place.open("station B");
    others = other.add(madeUpRuns(10, 2))->back().id;
  }
  { place.open(); }  // the first station hears of it
  auto away = openAway();
  const auto again = away.add(std::vector{madeUpRun(2), madeUpRun(11), madeUpRun(20)});
  ASSERT_TRUE(again) << again.error().text();
  EXPECT_TRUE(again->at(0).already);
  EXPECT_EQ(again->at(0).id, own);
  EXPECT_TRUE(again->at(1).already);
  EXPECT_EQ(again->at(1).id, others);
  EXPECT_FALSE(again->at(2).already);
  EXPECT_EQ(away.state().waiting, 1U);
  auto back = place.open();
  EXPECT_EQ(*back.count({}), 5U);
  // What was sent by this very process is known as well.
  EXPECT_TRUE(openAway().add(madeUpRuns(20, 1))->front().already);
  EXPECT_TRUE(back.verify()->holds());
}

TEST_F(Outbox, TakesALogAgainThatTheServerHasLost) {
  {
    auto archive = place.open();
    ASSERT_TRUE(archive.add(madeUpRuns(1, 1)));
  }
  for (const char* sql : {"delete from search", "delete from run", "delete from record", "delete from chain"})
    place.execute(sql);
  auto archive = place.open();
  EXPECT_FALSE(archive.add(madeUpRuns(1, 1))->front().already);
}

TEST_F(Outbox, EmptiesInOrderWhenTheServerIsBack) {
  std::vector<std::string> ids;
  for (int i = 0; i < 4; ++i) {
    const auto added = openAway().add(madeUpRuns(1 + 30 * i, 30));
    ASSERT_TRUE(added) << added.error().text();
    for (const auto& one : *added) ids.push_back(one.id);
  }
  auto archive = place.open();
  EXPECT_EQ(archive.state().kind, Kind::kServer);
  EXPECT_EQ(archive.state().waiting, 0U);
  EXPECT_EQ(*archive.count({}), 120U);
  ASSERT_TRUE(archive.add(madeUpRuns(1000, 1)));
  const auto all = archive.find({}, 200, std::nullopt, Order::kOldestFirst);
  ASSERT_TRUE(all) << all.error().text();
  ASSERT_EQ(all->runs.size(), 121U);
  for (std::size_t i = 0; i < ids.size(); ++i) EXPECT_EQ(all->runs[i].id, ids[i]);
  EXPECT_TRUE(archive.verify()->holds());
  EXPECT_EQ(archive.heads()->size(), 1U);
  // Away again, and back: the chain goes on.
  const auto later = openAway().add(madeUpRuns(2000, 2));
  ASSERT_TRUE(later) << later.error().text();
  EXPECT_EQ(*archive.sendWaiting(), 2U);
  EXPECT_EQ(*archive.count({}), 123U);
  EXPECT_TRUE(archive.verify()->holds());
}

TEST_F(Outbox, IsNamedWhereTheServerHasLostRecords) {
  {
    auto archive = place.open();
    ASSERT_TRUE(archive.add(madeUpRuns(1, 3)));
  }
  for (const char* sql : {"delete from search", "delete from run", "delete from record", "delete from chain"})
    place.execute(sql);  // as from an old backup
  auto archive = place.open();
  const auto added = archive.add(madeUpRuns(10, 1));
  ASSERT_TRUE(added) << added.error().text();  // on disk here
  EXPECT_EQ(archive.state().waiting, 1U);
  EXPECT_THAT(archive.state().message, HasSubstr("lost records"));
}

TEST_F(Outbox, OfTwoProcessesIsSentOnce) {
  ASSERT_TRUE(openAway().add(madeUpRuns(1, 200)));
  {
    const auto send = [this] {
      auto archive = Archive::open(place.where(), place.options());
      EXPECT_TRUE(archive) << archive.error().text();
    };
    std::jthread first(send), second(send), third(send);
  }
  auto archive = place.open();
  EXPECT_EQ(*archive.count({}), 200U);
  EXPECT_EQ(archive.state().waiting, 0U);
  EXPECT_TRUE(archive.verify()->holds());
}

TEST(Stations, AddAtOnceThroughARestartWithoutLossOrDoubles) {
  // In full 1000 records each; here fewer, so that the whole suite stays quick.
  const char* const asked = std::getenv("OVENWRIGHT_STATION_RUNS");
  const int each = asked ? std::atoi(asked) : 150;
  OwnServer server;
  std::atomic<int> done = 0, working = 2;
  const auto work = [&](int station) {
    const auto leaves = qScopeGuard([&working] { --working; });  // also where an assertion ends it
    Options options;
    options.outbox = server.outbox(station);
    options.machine = "station " + std::to_string(station);
    options.retryAfter_ms = 0;
    auto archive = Archive::open(server.url(), options);
    ASSERT_TRUE(archive) << archive.error().text();
    for (int i = 0; i < each; ++i, ++done) {
      const auto added = archive->add(madeUpRuns(station * 100'000 + i, 1));
      ASSERT_TRUE(added) << added.error().text();
    }
    for (int turn = 0; archive->state().waiting > 0 && turn < 100; ++turn) {
      const auto sent = archive->sendWaiting();
      ASSERT_TRUE(sent) << sent.error().text();
      std::this_thread::sleep_for(std::chrono::milliseconds{50});
    }
    EXPECT_EQ(archive->state().waiting, 0U) << archive->state().message;
  };
  {
    std::jthread first(work, 1), second(work, 2);
    while (done < each / 2 && working > 0) std::this_thread::sleep_for(std::chrono::milliseconds{5});
    server.restart();
  }
  Options options;
  options.outbox = server.outbox(3);
  auto archive = Archive::open(server.url(), options);
  ASSERT_TRUE(archive) << archive.error().text();
  EXPECT_EQ(*archive->count({}), 2U * static_cast<unsigned>(each));
  const auto found = archive->verify();
  ASSERT_TRUE(found) << found.error().text();
  EXPECT_TRUE(found->holds()) << found->firstBad << found->reason;
  std::size_t chains = 0;
  for (const auto& head : found->heads) {
    EXPECT_EQ(head.count, static_cast<unsigned>(each));
    ++chains;
  }
  EXPECT_EQ(chains, 2U);
}

}  // namespace
}  // namespace ovenwright::archive
