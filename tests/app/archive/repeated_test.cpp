// One log kept by two stations which could not know of each other: one run in every list, and no record lost.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <QScopeGuard>
#include <algorithm>
#include <atomic>
#include <cstdlib>
#include <set>
#include <thread>

#include "app/archive/archive.h"
#include "app/archive/schema.h"
#include "core/files/digest.h"
#include "tests/app/archive/own_server.h"
#include "tests/app/archive/place.h"
#include "tests/app/archive/runs.h"

namespace ovenwright::archive {
namespace {

using testing::ElementsAre;
using testing::HasSubstr;

constexpr const char* kNowhere = "postgresql://ow@/nothing?host=/nonexistent";

NewRun by(NewRun run, const std::string& lot) {
  run.labels.lot = lot;
  return run;
}

/// The same log judged by another window.
NewRun otherwise(NewRun run) {
  auto& window = run.windows.front();
  window.bytes = std::make_shared<const std::string>("name = \"Dunlin window\"\n");
  window.name = "Dunlin window";
  window.sha256 = files::sha256_hex(*window.bytes);
  run.verdict = judge::Verdict::kFail;
  run.margin = -0.5;
  return run;
}

std::vector<std::string> serials(Archive& archive, bool latestOnly = false) {
  Filter filter;
  filter.latestOnly = latestOnly;
  const auto page = archive.find(filter, 100, std::nullopt, Order::kOldestFirst);
  EXPECT_TRUE(page) << page.error().text();
  std::vector<std::string> all;
  for (const auto& run : page->runs) all.push_back(run.serial + " " + run.lot);
  return all;
}

class Repetition : public testing::Test {
 protected:
  /// Station A keeps runs 1 to 3 while the server is away, B meanwhile 2 to 4, the third by another window.
  void SetUp() override {
    { ASSERT_TRUE(place.open("station A").add(madeUpRuns(50, 1))); }
    auto away = *Archive::open(kNowhere, place.options("station A"));
    const auto kept = away.add(madeUpRuns(1, 3, "QM-A"));
    ASSERT_TRUE(kept) << kept.error().text();
    for (const auto& one : *kept) a.push_back(one.id);
    auto other = place.open("station B");
    const auto others =
        other.add(std::vector{by(madeUpRun(2), "QM-B"), otherwise(by(madeUpRun(3), "QM-B")), by(madeUpRun(4), "QM-B")});
    ASSERT_TRUE(others) << others.error().text();
    for (const auto& one : *others) b.push_back(one.id);
  }
  TestPlace place{TestPlace::Kind::kServer};
  std::vector<std::string> a, b;
};

TEST_F(Repetition, IsRecognisedAtSendingAndSaid) {
  auto archive = place.open("station A");
  EXPECT_EQ(archive.state().waiting, 0U) << archive.state().message;
  const auto repeated = archive.takeRepeated();
  ASSERT_EQ(repeated.size(), 1U);
  EXPECT_EQ(repeated[0].id, a[1]);
  EXPECT_EQ(repeated[0].of, b[0]);
  EXPECT_EQ(repeated[0].lot, "QM-B");
  EXPECT_FALSE(repeated[0].station.empty());
  EXPECT_TRUE(archive.takeRepeated().empty());
}

TEST_F(Repetition, IsNoSecondRunInAnyList) {
  auto archive = place.open("station A");
  // Of the third, B's judgement is another one and stands beside A's.
  EXPECT_THAT(serials(archive), ElementsAre("S1 QM-A", "S2 QM-B", testing::StartsWith("S3"), testing::StartsWith("S3"),
                                            "S4 QM-B", "S50 QM-1001"));
  EXPECT_EQ(*archive.count({}), 6U);
  // Of a run judged twice, the later judgement is the last, whoever made it: B's was.
  EXPECT_THAT(serials(archive, true), ElementsAre("S1 QM-A", "S2 QM-B", "S3 QM-B", "S4 QM-B", "S50 QM-1001"));
  EXPECT_EQ(archive.runsOfLot("QM-A")->size(), 1U);
  EXPECT_EQ(archive.runsOfLot("QM-B")->size(), 3U);
  std::size_t records = 0;
  const auto lots = archive.lots();
  ASSERT_TRUE(lots) << lots.error().text();
  for (const auto& lot : *lots) records += lot.records;
  EXPECT_EQ(records, 6U);
  Filter words;
  words.text = "run2.csv";
  EXPECT_EQ(*archive.count(words), 1U);
  EXPECT_EQ(archive.find(words, 10)->runs.at(0).id, b[0]);
}

TEST_F(Repetition, IsARecordInItsChainAllTheSame) {
  auto archive = place.open("station A");
  const auto record = archive.load(a[1]);
  ASSERT_TRUE(record) << record.error().text();
  EXPECT_EQ(record->repeats, b[0]);
  EXPECT_EQ(record->summary.lot, "QM-A");
  EXPECT_TRUE(archive.load(b[0])->repeats.empty());
  // The digest of the log names one run; the record's own, as on its sheet, names it.
  EXPECT_THAT(*archive.idsOf(record->log.sha256), ElementsAre(b[0]));
  EXPECT_THAT(*archive.idsOf(record->digest), ElementsAre(a[1]));
  const auto found = archive.verify(record->digest);
  ASSERT_TRUE(found) << found.error().text();
  EXPECT_TRUE(found->holds()) << found->firstBad << found->reason;
  EXPECT_EQ(found->records, 7U);
  EXPECT_EQ(found->repeated, 1U);
  // The log is not added a third time, and what is said to have it is what lists show.
  const auto again = archive.add(std::vector{madeUpRun(2)});
  ASSERT_TRUE(again) << again.error().text();
  EXPECT_TRUE(again->front().already);
  EXPECT_EQ(again->front().id, b[0]);
}

TEST_F(Repetition, JudgedAnewIsTheLastJudgementOfTheRun) {
  auto archive = place.open("station A");
  auto again = otherwise(by(madeUpRun(2), "QM-A"));
  again.judgedFrom = a[1];
  const auto added = archive.add({&again, 1});
  ASSERT_TRUE(added) << added.error().text();
  Filter filter;
  filter.logSha256 = madeUpRun(2).log.sha256;
  filter.latestOnly = true;
  const auto page = archive.find(filter, 10);
  ASSERT_EQ(page->runs.size(), 1U);
  EXPECT_EQ(page->runs[0].id, added->front().id);
  EXPECT_TRUE(archive.verify()->holds());
}

TEST_F(Repetition, MovesAlongAndIsOneThereToo) {
  for (const auto kind : {TestPlace::Kind::kFile, TestPlace::Kind::kServer}) {
    auto source = place.open("station A");
    const TestPlace to{kind};
    auto target = to.open("station C");
    // Chains come one after the other: which of the two is first may change, that there is one may not.
    ASSERT_TRUE(source.moveTo(target));
    EXPECT_EQ(*target.count({}), 6U);
    const auto found = target.verify();
    EXPECT_TRUE(found->holds()) << found->firstBad << found->reason;
    EXPECT_EQ(found->records, 7U);
    EXPECT_EQ(found->repeated, 1U);
  }
}

TEST_F(Repetition, ThatIsNoneIsFoundOut) {
  place.open("station A");
  place.execute("insert into repeated(chain, number, of_chain, of_number) select chain, number, '" + b[0].substr(0, 8) +
                "', 1 from run where serial = 'S1'");
  auto archive = place.open("station A");
  const auto found = archive.verify();
  ASSERT_TRUE(found);
  EXPECT_FALSE(found->holds());
  EXPECT_EQ(found->firstBad, a[0]);
}

class Found : public testing::TestWithParam<TestPlace::Kind> {};
INSTANTIATE_TEST_SUITE_P(Both, Found, testing::Values(TestPlace::Kind::kFile, TestPlace::Kind::kServer),
                         [](const auto& at) { return at.param == TestPlace::Kind::kFile ? "File" : "Server"; });

TEST_P(Found, InAnArchiveThatDidNotKnowOfRepetitions) {
  const TestPlace place{GetParam()}, other{TestPlace::Kind::kFile};
  auto archive = place.open();
  ASSERT_TRUE(archive.add(madeUpRuns(1, 3)));
  auto second = other.open("station B");
  ASSERT_TRUE(second.add(std::vector{madeUpRun(2), otherwise(madeUpRun(3)), madeUpRun(4)}));
  ASSERT_TRUE(second.moveTo(archive));
  const auto listed = serials(archive), last = serials(archive, true);
  place.unlock();
  place.execute("drop table repeated");
  place.execute("delete from superseded");
  place.execute("update archive set value = '4' where name = 'schema'");
  auto again = place.open();
  EXPECT_EQ(place.value("select value from archive where name = 'schema'"), std::to_string(newestSchema()));
  EXPECT_EQ(serials(again), listed);
  EXPECT_EQ(serials(again, true), last);
  const auto found = again.verify();
  EXPECT_TRUE(found->holds()) << found->firstBad << found->reason;
  EXPECT_EQ(found->repeated, 1U);
}

TEST(StationsOfOneLine, KeepTheSameLogsThroughARestartWithoutDoubles) {
  // In full 1000 records each; here fewer, so that the whole suite stays quick. Half of the logs reach both stations.
  const char* const asked = std::getenv("OVENWRIGHT_STATION_RUNS");
  const int each = asked ? std::atoi(asked) : 100;
  OwnServer server;
  std::atomic<int> done = 0, working = 2;
  const auto options = [&](int station) {
    Options own;
    own.outbox = server.outbox(station);
    own.machine = "station " + std::to_string(station);
    own.retryAfter_ms = 0;
    return own;
  };
  const auto work = [&](int station) {
    const auto leaves = qScopeGuard([&working] { --working; });  // also where an assertion ends it
    auto archive = Archive::open(server.url(), options(station));
    ASSERT_TRUE(archive) << archive.error().text();
    for (int i = 0; i < each; ++i, ++done) {
      const int log = i % 2 == 0 ? i : station * 100'000 + i;
      const auto added = archive->add(madeUpRuns(log, 1));
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
  auto archive = Archive::open(server.url(), options(3));
  ASSERT_TRUE(archive) << archive.error().text();
  const std::size_t shared = static_cast<std::size_t>((each + 1) / 2);
  EXPECT_EQ(*archive->count({}), 2U * static_cast<std::size_t>(each) - shared);
  const auto page = archive->find({}, SIZE_MAX);
  std::set<std::string> logs;
  for (const auto& run : page->runs) EXPECT_TRUE(logs.insert(run.logSha256).second) << run.logName;
  const auto found = archive->verify();
  ASSERT_TRUE(found) << found.error().text();
  EXPECT_TRUE(found->holds()) << found->firstBad << found->reason;
  EXPECT_EQ(found->records, logs.size() + found->repeated);
  RecordProperty("repeated", static_cast<int>(found->repeated));
}

}  // namespace
}  // namespace ovenwright::archive
