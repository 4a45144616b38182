// Two groups of runs on the Compare page, from logs that are open and from runs marked in Lots.
#include <QAccessible>
#include <QComboBox>
#include <QFile>
#include <QProcess>
#include <QPushButton>
#include <QTableWidget>
#include <nlohmann/json.hpp>

#include "app/desktop/compare/compare_bar.h"
#include "app/desktop/compare/compare_page.h"
#include "app/desktop/compare/group_picker.h"
#include "app/desktop/lots/filter_bar.h"
#include "app/desktop/lots/lots_page.h"
#include "app/desktop/lots/runs_model.h"
#include "app/desktop/plot/curve_plot.h"
#include "app/desktop/text/language.h"
#include "app/desktop/widgets/limit_lanes.h"
#include "app/desktop/widgets/sentence.h"
#include "app/desktop/widgets/zone_strip.h"
#include "app/sheet/compare_sheet.h"
#include "app/sheet/sheet.h"
#include "tests/desktop/window/window_fixture.h"

namespace ovenwright::desktop {
namespace {

using Json = nlohmann::json;

constexpr int kLongest_ms = 120000;  // only a bound against hanging

class GroupsTest : public WindowTest {
 protected:
  ~GroupsTest() override { useLanguage(QStringLiteral("en")); }
  ComparePage* page() { return m_window->comparePage(); }
  CompareSession* session() { return page()->session(); }
  const Compared& compared() { return *session()->compared(); }

  void wait() {
    EXPECT_TRUE(QTest::qWaitFor([this] { return !session()->isBusy(); }, kLongest_ms));
    QApplication::processEvents();
  }
  /// A log of the demo with every temperature further from 25 °C by this share.
  QString warmed(const char* log, const QString& name, double share) {
    QFile from(demo(log));
    EXPECT_TRUE(from.open(QIODevice::ReadOnly));
    const QByteArray whole = from.readAll();
    const bool german = whole.contains(";");  // decimal commas
    QByteArray all;
    for (const QByteArray& line : whole.split('\n')) {
      QList<QByteArray> cells = line.split(german ? ';' : ',');
      for (qsizetype i = 1; i < cells.size(); ++i) {
        bool number = false;
        const double value = QByteArray(cells[i]).replace(',', '.').toDouble(&number);
        if (number) cells[i] = QByteArray::number(value + (value - 25) * share, 'f', 2);
        if (number && german) cells[i].replace('.', ',');
      }
      all += cells.join(german ? ';' : ',') + '\n';
    }
    return write(name, all);
  }
  Json run(const QStringList& arguments) {
    QProcess process;
    process.start(QStringLiteral(OVENWRIGHT_PROGRAM),
                  arguments + QStringList{QStringLiteral("--format"), QStringLiteral("json")});
    EXPECT_TRUE(process.waitForFinished(kLongest_ms));
    const QByteArray said = process.readAllStandardOutput();
    EXPECT_FALSE(said.isEmpty()) << process.readAllStandardError().toStdString();
    return Json::parse(said.toStdString(), nullptr, false);
  }
  /// Keeps runs by revision 7 as lot QM-1 and by revision 8 as QM-2, in order of time; their ids.
  void keep(int old, int fresh) {
    for (int i = 0; i < old + fresh; ++i) {
      const bool before = i < old;
      const QString name = QStringLiteral("run%1.csv").arg(i + 1);
      const QString log = warmed(before ? "tern_run1.csv" : "tern_run2.csv", name, 0.002 * ((3 * i) % 5 - 2));
      const Json added =
          run({QStringLiteral("archive"), QStringLiteral("add"), log, QStringLiteral("--lot"),
               before ? QStringLiteral("QM-1") : QStringLiteral("QM-2"), QStringLiteral("--window"),
               demo("window.toml"), QStringLiteral("--board"), demo("board.toml"), QStringLiteral("--oven"),
               demo("oven.toml"), QStringLiteral("--recipe"), demo(before ? "recipe.toml" : "recipe_rev8.toml"),
               QStringLiteral("--run-at"), QStringLiteral("2026-03-%1T08:00:00Z").arg(i + 1, 2, 10, QLatin1Char('0')),
               QStringLiteral("--archive"), m_archive->where()});
      (before ? m_a : m_b) << QString::fromStdString(added["added"][0]["id"].get<std::string>());
    }
  }
  /// Marks runs of the list and presses Compare.
  void compareMarked(const std::vector<int>& rows) {
    auto* lots = m_window->lotsPage();
    m_window->showTask(MainWindow::Task::kLots);
    ASSERT_TRUE(QTest::qWaitFor([&] { return !lots->isBusy() && lots->model()->rowCount() > 0; }, kLongest_ms));
    lots->model()->setMarked(rows, true);
    for (auto* button : lots->filterBar()->findChildren<QPushButton*>())
      if (button->text().remove(u'&') == QStringLiteral("Compare")) {
        ASSERT_TRUE(button->isEnabled());
        button->click();
        return;
      }
    FAIL() << "no such button";
  }
  GroupPicker* picker() {
    EXPECT_TRUE(QTest::qWaitFor([this] { return m_window->groupPicker() && m_window->groupPicker()->isVisible(); },
                                kLongest_ms));
    return m_window->groupPicker();
  }
  void openGroups(int old, int fresh) {
    keep(old, fresh);
    std::vector<int> rows;
    for (int i = 0; i < old + fresh; ++i) rows.push_back(i);
    compareMarked(rows);
    picker()->take();
    ASSERT_TRUE(QTest::qWaitFor([this] { return session()->isSettled(); }, kLongest_ms));
    wait();
    ASSERT_EQ(session()->state(), CompareSession::State::kReady) << shownSentence().toStdString();
  }
  Json command() {
    return run(QStringList{QStringLiteral("compare"), QStringLiteral("--a")} + m_a +
               QStringList{QStringLiteral("--b")} + m_b + QStringList{QStringLiteral("--archive"), m_archive->where()});
  }
  static Json number(const std::optional<double>& value) { return value ? Json(*value) : Json(nullptr); }

  QStringList m_a, m_b;  // ids
};

// Source: the command over the same records. Both work from the same logs, window and thermocouples, and a number is
// printed so that it reads back the same.
TEST_F(GroupsTest, MarkedRunsBecomeGroupsByTheirRecipeAndSayWhatTheCommandSays) {
  openGroups(3, 4);
  EXPECT_EQ(m_window->task(), MainWindow::Task::kCompare);
  const Json report = command();
  const auto& comparison = compared().comparison;
  EXPECT_EQ(comparison.runs_a, report["n_a"]);
  EXPECT_EQ(comparison.runs_b, report["n_b"]);
  ASSERT_EQ(comparison.results.size(), report["results"].size());
  std::size_t intervals = 0;
  for (std::size_t i = 0; i < comparison.results.size(); ++i) {
    const auto& shown = comparison.results[i];
    const auto& said = report["results"][i];
    EXPECT_EQ(shown.requirement, said["requirement"]);
    EXPECT_EQ(number(shown.difference), said["difference"]) << shown.requirement;
    EXPECT_EQ(number(shown.expanded_uncertainty), said["expanded_uncertainty"]) << shown.requirement;
    EXPECT_EQ(shown.n_a, said["n_a"]);
    EXPECT_EQ(shown.n_b, said["n_b"]);
    intervals += shown.expanded_uncertainty ? 1 : 0;
  }
  EXPECT_GT(intervals, 20U);
  EXPECT_EQ(number(comparison.margins.a), report["margin"]["a"]);
  EXPECT_EQ(number(comparison.margins.expanded_uncertainty), report["margin"]["expanded_uncertainty"]);
  QString first;
  for (const auto& part : m_window->sentence()->content().first) first += part.text;
  first.replace(QChar(0x00A0), u' ').replace(QChar(0x202F), u' ');
  EXPECT_EQ(first.toStdString(), report["sentence"].get<std::string>());
  EXPECT_TRUE(page()->statusText().startsWith(QStringLiteral("7 runs, 6 thermocouple")))
      << page()->statusText().toStdString();
  // The recipes: one on each side, so their zones are held against each other.
  EXPECT_EQ(comparison.recipe_changes.empty(), report["recipes"]["changes"].empty());
  EXPECT_TRUE(page()->strip(1)->table().against->framed);
}

TEST_F(GroupsTest, LanesShowMeansRunsAndCounts) {
  openGroups(3, 4);
  const auto& table = page()->lanes()->table();
  ASSERT_TRUE(table.pair && table.groups);
  for (const auto& lane : table.lanes) {
    for (const auto& mark : lane.marks) {
      EXPECT_TRUE(mark.mean);
      ASSERT_EQ(mark.ticks.size(), mark.side == 0 ? 3U : 4U) << lane.title.toStdString();
      // Source: algebra: a mean lies between the smallest and the largest; so it does on one side of a scale.
      const auto [least, most] = std::ranges::minmax(mark.ticks, {}, &widgets::LaneTick::s);
      EXPECT_GE(*mark.s, least.s - 1e-9);
      EXPECT_LE(*mark.s, most.s + 1e-9);
    }
    EXPECT_EQ(lane.pair.counts, QStringLiteral("3, 4")) << lane.title.toStdString();
  }
  // All runs of a group are drawn, thin, on one clock; overlaid both groups in one.
  EXPECT_TRUE(page()->plot(0)->scene().thin);
  EXPECT_EQ(page()->plot(0)->scene().behind.size(), 2U);
  EXPECT_EQ(page()->plot(1)->scene().behind.size(), 3U);
  CompareChoice choice = session()->choice();
  choice.curves = CompareCurves::kOverlaid;
  session()->change({}, choice);
  wait();
  EXPECT_EQ(page()->plot(0)->scene().behind.size(), 6U);
  // The table that is copied has a column for each heading.
  const QStringList rows = page()->copyText().split(u'\n', Qt::SkipEmptyParts);
  for (const QString& row : rows) EXPECT_EQ(row.count(u'\t'), rows.front().count(u'\t')) << row.toStdString();
}

TEST_F(GroupsTest, AResultLeadsToTheRunThatIsNearestToItsLimit) {
  openGroups(2, 3);
  page()->stepProblem(1);
  const auto number = page()->lanes()->chosenOutcome();
  ASSERT_TRUE(number);
  const auto mark = markOf(compared(), *number);
  const std::size_t side = mark.side == compare::Side::kA ? 0 : 1;
  QTest::keyClick(page()->lanes(), Qt::Key_Return);
  EXPECT_EQ(m_window->task(), MainWindow::Task::kCheck);
  const auto& result = compared().comparison.results[mark.result];
  double smallest = 1e9;
  for (const auto& run : compared().side(side).runs)
    for (const auto& outcome : run.checked().judgement.results)
      if (outcome.requirement_name == result.requirement && outcome.trace == result.trace)
        smallest = std::min(smallest, *outcome.margin);
  const auto view = m_document->view();
  ASSERT_TRUE(view && m_document->chosen());
  EXPECT_EQ(*view->judgement().all(*m_document->chosen()).margin, smallest);
}

TEST_F(GroupsTest, TwoMarkedRunsAreAAndB) {
  keep(1, 1);
  compareMarked({0, 1});
  ASSERT_TRUE(QTest::qWaitFor([this] { return session()->isSettled(); }, kLongest_ms));
  EXPECT_FALSE(session()->isOfGroups());
  EXPECT_FALSE(compared().comparison.of_groups);
  EXPECT_TRUE(session()->subject(0)->log->source.name.endsWith(m_a.front()));
  EXPECT_TRUE(session()->subject(1)->log->source.name.endsWith(m_b.front()));
}

TEST_F(GroupsTest, OpenLogsAreDividedByTheirMarksAndUndone) {
  m_window->showTask(MainWindow::Task::kCompare);
  drop({warmed("tern_run1.csv", QStringLiteral("a.csv"), 0), warmed("tern_run1.csv", QStringLiteral("b.csv"), 0.004),
        warmed("tern_run2.csv", QStringLiteral("c.csv"), 0), warmed("tern_run2.csv", QStringLiteral("d.csv"), 0.004)});
  settle();
  wait();
  emit page()->bar()->groupsWanted();
  auto* groups = picker();
  // They differ in nothing that is known, so the older half is A.
  EXPECT_EQ(groups->group(0), (QStringList{QStringLiteral("0"), QStringLiteral("1")}));
  // A run is in one group alone, or in none.
  groups->table()->item(1, groups->markColumn(1))->setCheckState(Qt::Checked);
  EXPECT_EQ(groups->group(0), QStringList{QStringLiteral("0")});
  EXPECT_EQ(groups->group(1).size(), 3);
  groups->table()->item(3, groups->markColumn(1))->setCheckState(Qt::Unchecked);
  EXPECT_EQ(groups->group(1).size(), 2);
  const int steps = m_document->undoStack()->index();
  groups->take();
  wait();
  ASSERT_EQ(session()->state(), CompareSession::State::kReady);
  EXPECT_EQ(compared().comparison.runs_a, 1U);
  EXPECT_EQ(compared().comparison.runs_b, 2U);
  EXPECT_EQ(m_document->undoStack()->index(), steps + 1);
  m_document->undoStack()->undo();
  wait();
  EXPECT_FALSE(session()->isOfGroups());
  m_document->undoStack()->redo();
  wait();
  EXPECT_TRUE(session()->isOfGroups());
  session()->swap();
  wait();
  EXPECT_EQ(compared().comparison.runs_a, 2U);
  // A log that is closed leaves its group.
  m_document->close(session()->subjects(0).front().log);
  wait();
  EXPECT_EQ(session()->subjects(0).size(), 1U);
}

TEST_F(GroupsTest, ARunThatIsOpenTwiceCountsOnce) {
  m_window->showTask(MainWindow::Task::kCompare);
  const QString once = warmed("tern_run2.csv", QStringLiteral("c.csv"), 0);
  ASSERT_TRUE(QFile::copy(once, m_folder.filePath(QStringLiteral("copy.csv"))));
  drop({warmed("tern_run1.csv", QStringLiteral("a.csv"), 0), once, m_folder.filePath(QStringLiteral("copy.csv")),
        warmed("tern_run2.csv", QStringLiteral("d.csv"), 0.004)});
  settle();
  wait();
  const auto logs = session()->runs();
  ASSERT_EQ(logs.size(), 4U);
  session()->chooseGroups({logs[0]}, {logs[1], logs[2], logs[3]});
  wait();
  ASSERT_EQ(session()->state(), CompareSession::State::kReady);
  EXPECT_EQ(compared().comparison.runs_b, 2U);
}

TEST_F(GroupsTest, SeveralRecipesOnASideAreSaidAndNotCompared) {
  keep(3, 1);
  compareMarked({0, 1, 2, 3});
  auto* groups = picker();
  ASSERT_EQ(groups->group(0).size(), 3);
  // Chosen as by hand, the marks stay as the recipe divided them: not two and two.
  QTest::keyClick(groups->by(), Qt::Key_End);
  ASSERT_EQ(groups->by()->currentData(), -1);
  EXPECT_EQ(groups->group(0).size(), 3);
  EXPECT_EQ(groups->group(1).size(), 1);
  // One run of revision 7 beside that of revision 8.
  groups->table()->item(1, groups->markColumn(1))->setCheckState(Qt::Checked);
  groups->take();
  ASSERT_TRUE(QTest::qWaitFor([this] { return session()->isSettled(); }, kLongest_ms));
  EXPECT_TRUE(compared().comparison.several_b);
  EXPECT_FALSE(compared().comparison.recipes_known);
  EXPECT_TRUE(shownSentence().contains(QStringLiteral("Not all runs of B had the same recipe")))
      << shownSentence().toStdString();
  EXPECT_EQ(page()->strip(1)->table().state, widgets::ZoneTable::State::kSeveral);
}

TEST_F(GroupsTest, TheSheetOfGroupsIsMadeOfWhatIsShown) {
  openGroups(2, 3);
  const auto record = page()->sheetRecord();
  ASSERT_TRUE(record);
  EXPECT_EQ(record->a.size(), 2U);
  EXPECT_EQ(record->b.size(), 3U);
  const auto comparison = sheet::comparisonOf(*record);
  ASSERT_EQ(comparison.results.size(), compared().comparison.results.size());
  for (std::size_t i = 0; i < comparison.results.size(); ++i)
    EXPECT_EQ(comparison.results[i].expanded_uncertainty, compared().comparison.results[i].expanded_uncertainty);
  const auto document = sheet::compareSheet(*record, {});
  EXPECT_GE(document.pages.size(), 1U);
  EXPECT_TRUE(sheet::toPdf(document).startsWith("%PDF"));
}

TEST_F(GroupsTest, IsHeardAsMeans) {
  openGroups(2, 2);
  auto* heard = QAccessible::queryAccessibleInterface(page()->lanes());
  ASSERT_TRUE(heard && heard->tableInterface());
  const QString cell = heard->tableInterface()->cellAt(0, 0)->text(QAccessible::Name);
  EXPECT_TRUE(cell.contains(QStringLiteral("in the mean of 2 runs"))) << cell.toStdString();
  EXPECT_TRUE(cell.contains(QStringLiteral("B less A"))) << cell.toStdString();
}

}  // namespace
}  // namespace ovenwright::desktop
