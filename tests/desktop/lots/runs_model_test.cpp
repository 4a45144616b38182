#include "app/desktop/lots/runs_model.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <QAbstractItemModelTester>
#include <QFile>
#include <QSignalSpy>
#include <QTemporaryDir>
#include <QTest>

#include "app/desktop/lots/table_file.h"
#include "tests/app/archive/runs.h"

namespace ovenwright::desktop {
namespace {

constexpr int kLongest_ms = 30000;  // only a bound against hanging
constexpr int kRuns = 2300;         // more than ten pages

/// Made once: the archive that all tests here read.
const std::string& bigArchive() {
  static const QTemporaryDir folder;
  static const std::string path = [] {
    const std::string made = folder.filePath(QStringLiteral("big.sqlite")).toStdString();
    auto archive = archive::Archive::open(made, {});
    EXPECT_TRUE(archive) << archive.error().text();
    for (int first = 1; first <= kRuns; first += 100) {
      const auto added = archive->add(madeUpRuns(first, 100, "QM-" + std::to_string(1000 + first / 100)));
      EXPECT_TRUE(added) << added.error().text();
    }
    return made;
  }();
  return path;
}

class RunsModelTest : public testing::Test {
 protected:
  RunsModelTest() : m_link(QString::fromStdString(bigArchive())), m_model(&m_link) {}

  void list(const archive::Filter& filter = {}, archive::Order order = archive::Order::kNewestFirst) {
    QSignalSpy listed(&m_model, &RunsModel::listed);
    m_model.setFilter(filter, order);
    ASSERT_TRUE(listed.wait(kLongest_ms));
    ASSERT_TRUE(QTest::qWaitFor([this] { return m_model.total() && m_model.totalLots(); }, kLongest_ms));
  }
  void fetchAll() {
    QSignalSpy all(&m_model, &RunsModel::allFetched);
    m_model.fetchAll();
    if (all.isEmpty()) {
      ASSERT_TRUE(all.wait(kLongest_ms));
    }
  }
  /// Source: the archive itself, asked for everything at once.
  static std::vector<std::string> wanted(const archive::Filter& filter, archive::Order order) {
    auto archive = archive::Archive::open(bigArchive(), {});
    std::vector<std::string> ids;
    const auto page = archive->find(filter, SIZE_MAX, std::nullopt, order);
    for (const auto& run : page->runs) ids.push_back(run.id);
    return ids;
  }
  std::vector<std::string> shown() const {
    std::vector<std::string> ids;
    for (int row = 0; row < m_model.rowCount(); ++row) ids.push_back(m_model.row(row).id);
    return ids;
  }

  ArchiveLink m_link;
  RunsModel m_model;
};

TEST_F(RunsModelTest, IsASoundModel) {
  QAbstractItemModelTester tester(&m_model, QAbstractItemModelTester::FailureReportingMode::Fatal);
  list();
  m_model.fetchMore({});
  ASSERT_TRUE(QTest::qWaitFor([this] { return m_model.rowCount() > int(RunsModel::kPage); }, kLongest_ms));
  m_model.setMarked({0, 3}, true);
}

TEST_F(RunsModelTest, ListsPageByPageWhatTheArchiveFinds) {
  using Key = archive::Order::Key;
  for (const auto order : {archive::Order::kNewestFirst, archive::Order::kOldestFirst,
                           archive::Order{Key::kBoard, true}, archive::Order{Key::kMargin, false}}) {
    list({}, order);
    const auto all = wanted({}, order);
    ASSERT_EQ(all.size(), std::size_t(kRuns));
    EXPECT_EQ(m_model.total(), all.size());
    EXPECT_EQ(m_model.totalLots(), std::size_t(kRuns / 100));
    ASSERT_EQ(std::size_t(m_model.rowCount()), RunsModel::kPage) << "the first page alone at first";
    EXPECT_TRUE(m_model.canFetchMore({}));
    m_model.fetchMore({});
    EXPECT_FALSE(m_model.canFetchMore({})) << "not twice at once";
    ASSERT_TRUE(QTest::qWaitFor([this] { return m_model.rowCount() > int(RunsModel::kPage); }, kLongest_ms));
    EXPECT_EQ(std::size_t(m_model.rowCount()), 2 * RunsModel::kPage);
    fetchAll();
    EXPECT_EQ(shown(), all);
    EXPECT_FALSE(m_model.canFetchMore({}));
  }
}

struct Filtered {
  const char* name;
  archive::Filter filter;
};
void PrintTo(const Filtered& filtered, std::ostream* os) { *os << filtered.name; }

std::vector<Filtered> filters() {
  std::vector<Filtered> all(6);
  all[0].name = "lot";
  all[0].filter.lot = "QM-1007";
  all[1].name = "board";
  all[1].filter.board = "Dunlin";
  all[2].name = "verdict";
  all[2].filter.verdicts = {judge::Verdict::kFail};
  all[3].name = "dates";
  all[3].filter.from = *archive::parseMoment("2026-03-01T10:00:00Z");
  all[3].filter.to = *archive::parseMoment("2026-03-02T00:00:00Z");
  all[4].name = "words";
  all[4].filter.text = "run77";
  all[5].name = "several";
  all[5].filter.board = "Tern";
  all[5].filter.verdicts = {judge::Verdict::kFail};
  all[5].filter.text = "quill";
  return all;
}

class RunsModelFilter : public RunsModelTest, public testing::WithParamInterface<Filtered> {};
TEST_P(RunsModelFilter, ListsWhatTheArchiveFinds) {
  const auto& filter = GetParam().filter;
  list(filter);
  fetchAll();
  const auto all = wanted(filter, archive::Order::kNewestFirst);
  ASSERT_GT(all.size(), 0u);
  ASSERT_LT(all.size(), std::size_t(kRuns));
  EXPECT_EQ(shown(), all);
  EXPECT_EQ(m_model.total(), all.size());
}
INSTANTIATE_TEST_SUITE_P(Filters, RunsModelFilter, testing::ValuesIn(filters()),
                         [](const auto& tested) { return std::string{tested.param.name}; });

TEST_F(RunsModelTest, TheLastFilterWins) {
  archive::Filter first, last;
  first.board = "Dunlin";
  last.lot = "QM-1003";
  QSignalSpy listed(&m_model, &RunsModel::listed);
  m_model.setFilter({}, archive::Order::kNewestFirst);
  m_model.setFilter(first, archive::Order::kNewestFirst);
  m_model.setFilter(last, archive::Order::kNewestFirst);
  ASSERT_TRUE(listed.wait(kLongest_ms));
  QTest::qWait(50);
  EXPECT_EQ(listed.count(), 1);
  EXPECT_EQ(shown(), wanted(last, archive::Order::kNewestFirst));
}

TEST_F(RunsModelTest, MarksStayOverFiltersAndComeInOrderOfTime) {
  list();
  const std::string newest = m_model.row(0).id, third = m_model.row(2).id;
  QSignalSpy changed(&m_model, &RunsModel::marksChanged);
  m_model.setMarked({0, 2}, true);
  EXPECT_EQ(changed.count(), 1);
  EXPECT_THAT(m_model.marked(), testing::ElementsAre(third, newest)) << "the newest is listed first and comes last";
  archive::Filter other;
  other.lot = "QM-1001";
  list(other);
  EXPECT_EQ(m_model.markedCount(), 2u);
  list();
  EXPECT_TRUE(m_model.isMarked(0));
  EXPECT_TRUE(m_model.setData(m_model.index(0, RunsModel::kMark), Qt::Unchecked, Qt::CheckStateRole));
  EXPECT_THAT(m_model.marked(), testing::ElementsAre(third));
  m_model.clearMarks();
  EXPECT_EQ(m_model.markedCount(), 0u);
}

TEST_F(RunsModelTest, SaysWhichRunOfItsLotOnceARowIsSeen) {
  list();
  EXPECT_EQ(m_model.index(0, RunsModel::kRun).data().toString(), "");
  QSignalSpy changed(&m_model, &QAbstractItemModel::dataChanged);
  m_model.showRows(0, 4);
  ASSERT_TRUE(changed.wait(kLongest_ms));
  // Source: the runs of a lot were added in order of time, a hundred each; the newest is the last of its lot.
  EXPECT_EQ(m_model.index(0, RunsModel::kRun).data().toString(), "100");
  EXPECT_EQ(m_model.index(4, RunsModel::kRun).data().toString(), "96");
  EXPECT_EQ(m_model.index(5, RunsModel::kRun).data().toString(), "");
}

TEST_F(RunsModelTest, EveryCellSaysItsHeadingToScreenReaders) {
  list();
  const auto heading = m_model.headerData(RunsModel::kVerdict, Qt::Horizontal, Qt::DisplayRole).toString();
  EXPECT_EQ(m_model.index(0, RunsModel::kVerdict).data(Qt::AccessibleTextRole).toString(),
            heading + ": " + m_model.index(0, RunsModel::kVerdict).data().toString());
  EXPECT_EQ(m_model.index(0, RunsModel::kMark).data(Qt::AccessibleTextRole).toString(), "not marked");
}

// Source: the archive's own list; RFC 4180.
TEST(TableFile, HasEveryRunOfTheFilterAndNoFormula) {
  const QTemporaryDir folder;
  const std::string path = folder.filePath(QStringLiteral("archive.sqlite")).toStdString();
  auto archive = archive::Archive::open(path, {});
  ASSERT_TRUE(archive) << archive.error().text();
  auto runs = madeUpRuns(1, 3);
  runs[1].labels.lot = "=cmd()|' /C calc'!A0";
  runs[2].labels.serial = "two,\"parts\"";
  ASSERT_TRUE(archive->add(runs));
  const QString file = folder.filePath(QStringLiteral("runs.csv"));
  const auto written = writeTable(*archive, {}, archive::Order::kOldestFirst, file.toStdString());
  ASSERT_TRUE(written) << written.error().text();
  EXPECT_EQ(*written, 3u);
  QFile csv(file);
  ASSERT_TRUE(csv.open(QIODevice::ReadOnly));
  const auto lines = csv.readAll().split('\n');
  ASSERT_EQ(lines.size(), 5);
  EXPECT_TRUE(lines[0].startsWith("record,run_at,"));
  EXPECT_TRUE(lines[1].contains("2026-03-01T00:01:00.000Z"));
  EXPECT_TRUE(lines[2].contains(",'=cmd()")) << lines[2].constData();
  EXPECT_TRUE(lines[3].contains("\"two,\"\"parts\"\"\"")) << lines[3].constData();
  const auto nowhere = writeTable(*archive, {}, archive::Order::kOldestFirst, "/nowhere/runs.csv");
  ASSERT_FALSE(nowhere);
  EXPECT_EQ(nowhere.error().code, ErrorCode::kIo);
}

}  // namespace
}  // namespace ovenwright::desktop
