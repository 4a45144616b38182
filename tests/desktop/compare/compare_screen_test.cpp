#include <QAccessible>
#include <QDoubleSpinBox>
#include <QLabel>
#include <QProcess>
#include <QPushButton>
#include <QSignalSpy>
#include <nlohmann/json.hpp>

#include "app/desktop/compare/compare_bar.h"
#include "app/desktop/compare/compare_page.h"
#include "app/desktop/plot/curve_plot.h"
#include "app/desktop/text/language.h"
#include "app/desktop/widgets/limit_lanes.h"
#include "app/desktop/widgets/sentence.h"
#include "app/desktop/widgets/zone_strip.h"
#include "tests/desktop/window/window_fixture.h"

namespace ovenwright::desktop {
namespace {

using Json = nlohmann::json;

constexpr int kLongest_ms = 120000;  // only a bound against hanging

class CompareTest : public WindowTest {
 protected:
  ~CompareTest() override { useLanguage(QStringLiteral("en")); }
  ComparePage* page() { return m_window->comparePage(); }
  CompareSession* session() { return page()->session(); }
  const Compared& compared() { return *session()->compared(); }

  void wait() {
    EXPECT_TRUE(QTest::qWaitFor([this] { return !session()->isBusy(); }, kLongest_ms));
    QApplication::processEvents();
  }
  void openPair() {
    m_window->showTask(MainWindow::Task::kCompare);
    m_window->openDemoPair();
    wait();
    ASSERT_EQ(session()->state(), CompareSession::State::kReady) << shownSentence().toStdString();
  }
  /// What the command says of the same two logs, as a process.
  static Json command(bool swapped, const QStringList& more = {}) {
    const QString log[] = {demo("tern_run1.csv"), demo("tern_run2.csv")};
    const QString recipe[] = {demo("recipe.toml"), demo("recipe_rev8.toml")};
    const int a = swapped ? 1 : 0;
    QProcess process;
    process.start(
        QStringLiteral(OVENWRIGHT_PROGRAM),
        QStringList{QStringLiteral("compare"), log[a], log[1 - a], QStringLiteral("--window"), demo("window.toml"),
                    QStringLiteral("--board"), demo("board.toml"), QStringLiteral("--oven"), demo("oven.toml"),
                    QStringLiteral("--recipe"), recipe[a], QStringLiteral("--recipe"), recipe[1 - a],
                    QStringLiteral("--format"), QStringLiteral("json")} +
            more);
    EXPECT_TRUE(process.waitForFinished(kLongest_ms));
    return Json::parse(process.readAllStandardOutput().toStdString(), nullptr, false);
  }
  static Json number(const std::optional<double>& value) { return value ? Json(*value) : Json(nullptr); }
  /// Results, alignment and margins that are shown against a report of the command.
  void expectSame(const Json& report) {
    ASSERT_TRUE(report.is_object());
    const auto& comparison = compared().comparison;
    ASSERT_EQ(comparison.results.size(), report["results"].size());
    for (std::size_t i = 0; i < comparison.results.size(); ++i) {
      const auto& shown = comparison.results[i];
      const auto& said = report["results"][i];
      EXPECT_EQ(shown.requirement, said["requirement"]);
      EXPECT_EQ(number(shown.a), said["a"]);
      EXPECT_EQ(number(shown.b), said["b"]);
      EXPECT_EQ(number(shown.difference), said["difference"]);
      EXPECT_EQ(number(shown.expanded_uncertainty), said["expanded_uncertainty"]);
    }
    EXPECT_EQ(number(comparison.margins.a), report["margin"]["a"]);
    EXPECT_EQ(number(comparison.margins.b), report["margin"]["b"]);
    ASSERT_TRUE(comparison.alignment);
    EXPECT_EQ(compare::alignment_name(*comparison.alignment), report["aligned_at"]);
    EXPECT_EQ(comparison.alignment->a_s, report["alignment"]["a_s"]);
    EXPECT_EQ(comparison.alignment->b_s, report["alignment"]["b_s"]);
  }
  QString firstLine() const {
    QString text;
    for (const auto& run : m_window->sentence()->content().first) text += run.text;
    return text.replace(QChar(0x00A0), u' ').replace(QChar(0x202F), u' ');
  }
  /// Follows the link of the sentence whose text holds this.
  void follow(const QString& text) {
    const auto& content = m_window->sentence()->content();
    for (int i = 0; i < int(content.links.size()); ++i) {
      if (!content.linkText(i).contains(text)) continue;
      m_window->sentence()->activate(i);
      return;
    }
    FAIL() << text.toStdString() << " in " << content.spoken.toStdString();
  }
};

TEST_F(CompareTest, TwoDemoRunsShowWhatTheCommandSays) {
  openPair();
  const Json report = command(false);
  expectSame(report);
  EXPECT_EQ(firstLine().toStdString(), report["sentence"].get<std::string>());
}

// Source: algebra. B − A becomes A − B; neither U nor which of them is larger changes.
TEST_F(CompareTest, SwapNegatesEveryDifference) {
  openPair();
  const auto before = compared().comparison;
  session()->swap();
  wait();
  expectSame(command(true));
  const auto& after = compared().comparison;
  ASSERT_EQ(after.results.size(), before.results.size());
  for (std::size_t i = 0; i < before.results.size(); ++i) {
    if (!before.results[i].difference) continue;
    EXPECT_DOUBLE_EQ(*after.results[i].difference, -*before.results[i].difference);
    // Tolerance: the last bits (4 ULP), as the contributions of A and B are added in the other order.
    ASSERT_EQ(after.results[i].expanded_uncertainty.has_value(), before.results[i].expanded_uncertainty.has_value());
    if (before.results[i].expanded_uncertainty) {
      EXPECT_DOUBLE_EQ(*after.results[i].expanded_uncertainty, *before.results[i].expanded_uncertainty);
    }
  }
  EXPECT_EQ(after.margins.more == compare::Side::kA, before.margins.more == compare::Side::kB);
  QTest::keyClick(m_window.get(), Qt::Key_Z, Qt::ControlModifier);
  wait();
  expectSame(command(false));
}

TEST_F(CompareTest, ATypedLevelLinesBothUpThere) {
  openPair();
  CompareChoice choice = session()->choice();
  choice.align_C = 150;
  session()->change({}, choice);
  wait();
  auto* level = page()->bar()->level();
  ASSERT_TRUE(level->isVisible());
  level->setFocus();
  level->selectAll();
  QTest::keyClicks(level, QStringLiteral("217"));
  QTest::keyClick(level, Qt::Key_Return);
  wait();
  expectSame(command(false, {QStringLiteral("--align"), QStringLiteral("217")}));
  // The moment stands at the same place of both plots, and both see the same stretch around it.
  for (const std::size_t side : {0, 1}) {
    const auto& scene = page()->plot(side)->scene();
    const auto& at = *compared().comparison.alignment;
    EXPECT_EQ(scene.origin_s(), side == 0 ? at.a_s : at.b_s);
  }
  const auto seen = [&](std::size_t side) {
    const auto* plot = page()->plot(side);
    return std::pair(plot->viewFrom_s() - plot->scene().origin_s(), plot->viewTo_s() - plot->scene().origin_s());
  };
  EXPECT_NEAR(seen(0).first, seen(1).first, 1e-6);
  EXPECT_NEAR(seen(0).second, seen(1).second, 1e-6);
  page()->plot(0)->zoomBy(2);
  EXPECT_NEAR(seen(0).first, seen(1).first, 1e-6);
  EXPECT_NEAR(seen(0).second, seen(1).second, 1e-6);
}

TEST_F(CompareTest, ChoicesAreUndoneOneByOne) {
  openPair();
  const auto a = session()->subject(0), b = session()->subject(1);
  const int steps = m_document->undoStack()->index();
  session()->choose(0, *b);  // the same run on the other side: they change places
  EXPECT_EQ(session()->subject(0), b);
  EXPECT_EQ(session()->subject(1), a);
  CompareChoice choice = session()->choice();
  choice.curves = CompareCurves::kOverlaid;
  session()->change({}, choice);
  wait();
  EXPECT_FALSE(page()->plot(1)->isVisible());
  EXPECT_EQ(m_document->undoStack()->index(), steps + 2);
  m_document->undoStack()->undo();
  wait();
  EXPECT_TRUE(page()->plot(1)->isVisible());
  m_document->undoStack()->undo();
  wait();
  EXPECT_EQ(session()->subject(0), a);
  m_document->undoStack()->redo();
  EXPECT_EQ(session()->subject(0), b);
}

TEST_F(CompareTest, OneLogAloneSaysWhatToDo) {
  openDemo();
  m_window->showTask(MainWindow::Task::kCompare);
  wait();
  EXPECT_EQ(session()->state(), CompareSession::State::kOneRun);
  EXPECT_TRUE(shownSentence().contains(QStringLiteral("Compare needs a second one."))) << shownSentence().toStdString();
  ASSERT_EQ(m_window->sentence()->content().links.size(), 2);
  // A log that is dropped here becomes B.
  const auto a = session()->subject(0);
  drop({demo("tern_run2.csv")});
  settle();
  wait();
  EXPECT_EQ(session()->state(), CompareSession::State::kReady);
  EXPECT_EQ(session()->subject(0), a);
  EXPECT_EQ(session()->subject(1)->log->source.name, QStringLiteral("tern_run2.csv"));
  m_document->close(session()->subject(1)->log);
  wait();
  EXPECT_EQ(session()->state(), CompareSession::State::kOneRun);
}

TEST_F(CompareTest, NothingOpenLeadsToTwoDemoRuns) {
  m_window->showTask(MainWindow::Task::kCompare);
  EXPECT_EQ(session()->state(), CompareSession::State::kNothing);
  follow(QStringLiteral("demo"));
  wait();
  EXPECT_EQ(session()->state(), CompareSession::State::kReady);
  EXPECT_EQ(session()->subject(0)->log->source.name, QStringLiteral("tern_run1.csv"));
  EXPECT_EQ(session()->subject(1)->log->source.name, QStringLiteral("tern_run2.csv"));
}

TEST_F(CompareTest, LanesHaveBothRunsAndWhatIsOutLeadsThere) {
  openPair();
  const auto& table = page()->lanes()->table();
  ASSERT_TRUE(table.pair);
  std::size_t marks = 0;
  for (const auto& lane : table.lanes)
    for (const auto& mark : lane.marks) marks += 1 + mark.covered.size();
  EXPECT_EQ(marks, compared().a.judgement().all_size() + compared().b.judgement().all_size());
  follow(QStringLiteral("out"));
  ASSERT_TRUE(page()->chosenResult());
  const auto chosen = page()->lanes()->chosenOutcome();
  ASSERT_TRUE(chosen);
  const auto mark = markOf(compared(), *chosen);
  const auto& result = compared().comparison.results[mark.result];
  const auto verdict = mark.side == compare::Side::kA ? result.verdict_a : result.verdict_b;
  EXPECT_TRUE(verdict && judge::is_out(*verdict));
  // Its interval stands on both curves.
  EXPECT_TRUE(page()->plot(0)->scene().chosen);
  EXPECT_TRUE(page()->plot(1)->scene().chosen);
  QSignalSpy wanted(page(), &ComparePage::resultWanted);
  QTest::keyClick(page()->lanes(), Qt::Key_Return);
  EXPECT_EQ(wanted.count(), 1);
  EXPECT_EQ(m_window->task(), MainWindow::Task::kCheck);
}

// Source: the recipes of the demo: what the command lists as changed is framed.
TEST_F(CompareTest, ChangedSetpointsAreFramedInB) {
  openPair();
  const Json report = command(false);
  std::map<std::string, double> changes;
  for (const auto& change : report.at("recipes").at("changes")) {
    if (!change.contains("zone")) continue;  // that of the conveyor speed
    changes[change.at("zone").get<std::string>()] = change.at("to_C").get<double>() - change.at("from_C").get<double>();
  }
  EXPECT_FALSE(changes.empty());
  const auto& strip = page()->strip(1)->table();
  ASSERT_TRUE(strip.against && strip.against->framed);
  for (const auto& cell : strip.cells) {
    const auto said = changes.find(cell.id);
    EXPECT_EQ(cell.changed(), said != changes.end()) << cell.id;
    if (said != changes.end()) {
      EXPECT_EQ(cell.topChange_C, said->second) << cell.id;
    }
  }
  EXPECT_FALSE(page()->strip(0)->table().against->marked);
  follow(QStringLiteral("differ"));
  EXPECT_TRUE(page()->chosenResult() || page()->strip(0)->table().against->marked);
}

TEST_F(CompareTest, IsHeardAsATableWithNames) {
  openPair();
  auto* heard = QAccessible::queryAccessibleInterface(page()->lanes());
  ASSERT_NE(heard, nullptr);
  ASSERT_NE(heard->tableInterface(), nullptr);
  EXPECT_EQ(heard->tableInterface()->columnCount(), int(page()->lanes()->table().columns()));
  EXPECT_TRUE(heard->tableInterface()->columnDescription(0).startsWith(QStringLiteral("A, ")));
  const QString cell = heard->tableInterface()->cellAt(0, 0)->text(QAccessible::Name);
  EXPECT_TRUE(cell.startsWith(QStringLiteral("A, "))) << cell.toStdString();
  EXPECT_TRUE(cell.contains(QStringLiteral("B less A"))) << cell.toStdString();
  for (const std::size_t side : {0, 1}) {
    auto* plot = QAccessible::queryAccessibleInterface(page()->plot(side));
    EXPECT_TRUE(plot->text(QAccessible::Name).contains(QStringLiteral("6 thermocouples")));
  }
  std::set<const QWidget*> visited;
  for (int i = 0; i < 9; ++i) {
    QTest::keyClick(m_window.get(), Qt::Key_F6);
    visited.insert(QApplication::focusWidget());
  }
  for (const QWidget* part : page()->parts())
    EXPECT_TRUE(visited.contains(part)) << part->accessibleName().toStdString();
}

// Source: °F = 1.8 °C + 32, for a difference 1.8 °C; 25.4 mm to the inch.
TEST_F(CompareTest, UnitsHoldForDifferencesToo) {
  openPair();
  const auto lane = [&] {
    for (const auto& each : page()->lanes()->table().lanes)
      if (each.title == QStringLiteral("Peak")) return each;
    return widgets::Lane{};
  };
  const double celsius = lane().pair.difference.toDouble();
  page()->setFormat(Format(TemperatureUnit::kFahrenheit, SpeedUnit::kInchesPerMinute, QLocale::c()));
  EXPECT_NEAR(lane().pair.difference.toDouble(), 1.8 * celsius, 0.15);  // both are rounded to 0.1
  EXPECT_EQ(lane().pair.unit, QStringLiteral("°F"));
  EXPECT_TRUE(widgets::stripNote(page()->strip(0)->table()).constFirst().contains(QStringLiteral("31.9 in/min")));
}

TEST_F(CompareTest, TheSheetIsOfWhatIsShown) {
  openPair();
  const auto record = page()->sheetRecord();
  ASSERT_TRUE(record);
  EXPECT_EQ(record->a.front().reading().file.sha256, compared().a.first().view->reading().file.sha256);
  EXPECT_FALSE(record->overlaid);
}

}  // namespace
}  // namespace ovenwright::desktop
