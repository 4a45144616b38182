#include "app/desktop/archive/archive_link.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <QFile>
#include <QSignalSpy>
#include <QTemporaryDir>
#include <QTest>
#include <QThread>

#include "tests/app/archive/runs.h"

namespace ovenwright::desktop {
namespace {

using Reach = ArchiveStatus::Reach;
constexpr int kLongest_ms = 30000;  // only a bound against hanging

class ArchiveLinkTest : public testing::Test {
 protected:
  QString path() const { return m_folder.filePath(QStringLiteral("archive.sqlite")); }

  /// The result of a call that is given `then`.
  template <class T, class Call>
  Result<T> wait(const Call& call) {
    std::optional<Result<T>> got;
    call([&got](Result<T> result) { got = std::move(result); });
    EXPECT_FALSE(got) << "results come later, from the event loop";
    if (!QTest::qWaitFor([&got] { return got.has_value(); }, kLongest_ms))
      return Error{ErrorCode::kCancelled, "no result came", {}, {}, {}};
    return *std::move(got);
  }
  Result<std::size_t> count(ArchiveLink& link) {
    return wait<std::size_t>([&](auto then) { link.count(&m_context, {}, then); });
  }
  Result<std::vector<archive::Added>> add(ArchiveLink& link, std::vector<archive::NewRun> runs) {
    return wait<std::vector<archive::Added>>([&](auto then) { link.add(&m_context, std::move(runs), then); });
  }

  QTemporaryDir m_folder;
  QObject m_context;
};

TEST_F(ArchiveLinkTest, LookingAtAMissingArchiveMakesNone) {
  ArchiveLink link(path());
  EXPECT_EQ(link.status().reach, Reach::kNotLooked);
  const auto counted = count(link);
  ASSERT_FALSE(counted);
  EXPECT_TRUE(ArchiveLink::isMissing(counted.error())) << counted.error().text();
  EXPECT_EQ(link.status().reach, Reach::kNone);
  EXPECT_FALSE(QFile::exists(path()));
}

TEST_F(ArchiveLinkTest, KeepsRunsAndFindsThemAsTheArchiveDoes) {
  ArchiveLink link(path());
  QSignalSpy changed(&link, &ArchiveLink::changed);
  const auto added = add(link, madeUpRuns(1, 25));
  ASSERT_TRUE(added) << added.error().text();
  ASSERT_EQ(added->size(), 25u);
  EXPECT_EQ(changed.count(), 1);
  ASSERT_TRUE(QTest::qWaitFor([&] { return link.status().records == 25; }, kLongest_ms));
  EXPECT_EQ(link.status().reach, Reach::kOpen);

  const auto page = wait<archive::Page>(
      [&](auto then) { link.find(&m_context, {}, 10, std::nullopt, archive::Order::kNewestFirst, then); });
  ASSERT_TRUE(page) << page.error().text();
  auto direct = archive::Archive::open(path().toStdString(), {});
  ASSERT_TRUE(direct) << direct.error().text();
  const auto want = direct->find({}, 10);
  ASSERT_TRUE(want) << want.error().text();
  ASSERT_EQ(page->runs.size(), want->runs.size());
  for (std::size_t i = 0; i < want->runs.size(); ++i) EXPECT_EQ(page->runs[i].id, want->runs[i].id);
  ASSERT_TRUE(page->next);

  const auto log = wait<std::string>([&](auto then) { link.rawLog(&m_context, added->front().id, then); });
  ASSERT_TRUE(log) << log.error().text();
  EXPECT_EQ(*log, *madeUpRun(1).log.bytes);
  const auto record = wait<archive::Record>([&](auto then) { link.load(&m_context, added->front().id, then); });
  ASSERT_TRUE(record) << record.error().text();
  EXPECT_EQ(record->summary.serial, "S1");
  const auto lot = wait<std::vector<archive::Summary>>([&](auto then) { link.runsOfLot(&m_context, "QM-1001", then); });
  ASSERT_TRUE(lot) << lot.error().text();
  EXPECT_EQ(lot->size(), 25u);
  const auto lots = wait<std::vector<archive::LotSummary>>([&](auto then) { link.lots(&m_context, {}, then); });
  ASSERT_TRUE(lots) << lots.error().text();
  EXPECT_EQ(lots->size(), 1u);
}

TEST_F(ArchiveLinkTest, WorksOnAThreadOfItsOwnAndAnswersOnThisOne) {
  ArchiveLink link(path());
  ASSERT_TRUE(add(link, madeUpRuns(1, 1)));
  QThread* answered = nullptr;
  const auto worked = wait<QThread*>([&](auto then) {
    link.ask<QThread*>(
        &m_context, QStringLiteral("thread"),
        [](archive::Archive&, const ArchiveLink::Stop&) { return Result<QThread*>(QThread::currentThread()); },
        [&answered, then](Result<QThread*> thread) {
          answered = QThread::currentThread();
          then(thread);
        });
  });
  ASSERT_TRUE(worked);
  EXPECT_NE(*worked, QThread::currentThread());
  EXPECT_EQ(answered, QThread::currentThread());
}

TEST_F(ArchiveLinkTest, TheNewestRequestOfAKindWins) {
  ArchiveLink link(path());
  ASSERT_TRUE(add(link, madeUpRuns(1, 3)));
  std::vector<int> answers;
  const auto ask = [&](QObject* of, int number) {
    link.ask<int>(
        of, QStringLiteral("number"),
        [number](archive::Archive&, const ArchiveLink::Stop&) { return Result<int>(number); },
        [&answers](Result<int> result) { answers.push_back(*result); });
  };
  QObject other;
  for (int i = 1; i <= 5; ++i) ask(&m_context, i);
  ask(&other, 6);  // of another object: not superseded
  {
    QObject gone;
    ask(&gone, 7);
  }
  ASSERT_TRUE(count(link));  // behind all of them
  EXPECT_THAT(answers, testing::ElementsAre(5, 6));
}

TEST_F(ArchiveLinkTest, LongWorkHearsThatItIsNoLongerWanted) {
  ArchiveLink link(path());
  ASSERT_TRUE(add(link, madeUpRuns(1, 1)));
  std::atomic<bool> begun = false, stopped = false;
  link.ask<int>(
      &m_context, QStringLiteral("long"),
      [&](archive::Archive&, const ArchiveLink::Stop& stop) {
        begun = true;
        while (stop.isWanted()) QThread::msleep(1);
        stopped = true;
        return Result<int>(1);
      },
      [](Result<int>) { FAIL() << "its result is not wanted"; });
  ASSERT_TRUE(QTest::qWaitFor([&] { return begun.load(); }, kLongest_ms));
  link.drop(&m_context, QStringLiteral("long"));
  ASSERT_TRUE(count(link));
  EXPECT_TRUE(stopped);
}

TEST_F(ArchiveLinkTest, RunsGivenBeforeClosingAreKept) {
  {
    ArchiveLink link(path());
    link.add(&m_context, madeUpRuns(1, 40), [](const auto&) {});
  }
  auto direct = archive::Archive::open(path().toStdString(), {});
  ASSERT_TRUE(direct) << direct.error().text();
  EXPECT_EQ(*direct->count({}), 40u);
}

TEST_F(ArchiveLinkTest, AnotherArchiveIsAskedFromThenOn) {
  ArchiveLink link(path());
  ASSERT_TRUE(add(link, madeUpRuns(1, 4)));
  const QString other = m_folder.filePath(QStringLiteral("other.sqlite"));
  QSignalSpy changed(&link, &ArchiveLink::changed);
  link.setWhere(other);
  EXPECT_EQ(changed.count(), 1);
  EXPECT_EQ(link.status().reach, Reach::kNotLooked);
  EXPECT_FALSE(count(link));
  EXPECT_EQ(link.status().reach, Reach::kNone);
  link.setWhere(path());
  const auto counted = count(link);
  ASSERT_TRUE(counted) << counted.error().text();
  EXPECT_EQ(*counted, 4u);
}

struct Broken {
  const char* name;
  QByteArray bytes;
};
void PrintTo(const Broken& broken, std::ostream* os) { *os << broken.name; }
class BrokenArchive : public ArchiveLinkTest, public testing::WithParamInterface<Broken> {};

TEST_P(BrokenArchive, IsAnErrorThatNamesTheFileAndStaysAsItIs) {
  {
    QFile file(path());
    ASSERT_TRUE(file.open(QIODevice::WriteOnly));
    file.write(GetParam().bytes);
  }
  ArchiveLink link(path());
  const auto counted = count(link);
  ASSERT_FALSE(counted);
  EXPECT_FALSE(ArchiveLink::isMissing(counted.error()));
  EXPECT_EQ(link.status().reach, Reach::kTrouble);
  ASSERT_TRUE(link.status().error);
  EXPECT_EQ(link.status().error->where.file, path().toStdString());
  QFile file(path());
  ASSERT_TRUE(file.open(QIODevice::ReadOnly));
  EXPECT_EQ(file.readAll(), GetParam().bytes);
}
INSTANTIATE_TEST_SUITE_P(Files, BrokenArchive,
                         testing::Values(Broken{"text", "a text and no database, long enough for a header of one\n"},
                                         Broken{"empty", ""}),
                         [](const auto& tested) { return std::string{tested.param.name}; });

}  // namespace
}  // namespace ovenwright::desktop
