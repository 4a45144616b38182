#include <QAction>
#include <QApplication>
#include <QClipboard>
#include <QFile>
#include <QLineEdit>
#include <QMimeData>
#include <QScopeGuard>
#include <QScrollBar>
#include <QStatusBar>
#include <QTabBar>
#include <algorithm>

#include "app/desktop/panels/derivation_panel.h"
#include "app/desktop/plot/curve_plot.h"
#include "app/desktop/table/results_table.h"
#include "app/desktop/widgets/board_picture.h"
#include "app/desktop/widgets/limit_lanes.h"
#include "app/desktop/widgets/sentence.h"
#include "app/desktop/widgets/zone_strip.h"
#include "app/desktop/window/check_page.h"
#include "app/desktop/window/chooser_bar.h"
#include "app/desktop/window/help_window.h"
#include "app/desktop/window/roomy_area.h"
#include "tests/desktop/window/window_fixture.h"

// Everything can be reached without a mouse: each key of the design's list, pressed.
namespace ovenwright::desktop {
namespace {

class KeyboardTest : public WindowTest {
 protected:
  void press(int key, Qt::KeyboardModifiers with = Qt::NoModifier) {
    QWidget* focus = QApplication::focusWidget();
    QTest::keyClick(focus ? focus : m_window.get(), Qt::Key(key), with);
  }
  QAction* withKeys(const QKeySequence& keys) const {
    for (QAction* action : m_window->findChildren<QAction*>())
      if (action->shortcuts().contains(keys)) return action;
    return nullptr;
  }
  CheckPage* page() const { return m_window->checkPage(); }
  std::size_t chosen() const { return *m_document->chosen(); }
};

TEST_F(KeyboardTest, EveryShortcutOfTheListBelongsToAnAction) {
  openDemo();
  for (const QKeySequence& keys :
       {QKeySequence(Qt::CTRL | Qt::Key_1), QKeySequence(Qt::CTRL | Qt::Key_2), QKeySequence(Qt::CTRL | Qt::Key_O),
        QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_V), QKeySequence(Qt::CTRL | Qt::Key_P),
        QKeySequence(Qt::CTRL | Qt::Key_Z), QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_Z),
        QKeySequence(Qt::CTRL | Qt::Key_F), QKeySequence(Qt::Key_F1), QKeySequence(Qt::Key_F6),
        QKeySequence(Qt::SHIFT | Qt::Key_F6), QKeySequence(Qt::Key_F8), QKeySequence(Qt::SHIFT | Qt::Key_F8),
        QKeySequence(Qt::Key_F9), QKeySequence(Qt::Key_Escape), QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_C)}) {
    const QAction* action = withKeys(keys);
    ASSERT_NE(action, nullptr) << keys.toString().toStdString();
    const bool undo = keys.toString().endsWith(u'Z');  // nothing to undo yet
    EXPECT_TRUE(action->isEnabled() || undo) << keys.toString().toStdString();
  }
}

TEST_F(KeyboardTest, NoTwoActionsShareAShortcut) {
  QMap<QString, QString> taken;
  for (const QAction* action : m_window->findChildren<QAction*>()) {
    for (const QKeySequence& keys : action->shortcuts()) {
      EXPECT_FALSE(taken.contains(keys.toString()))
          << keys.toString().toStdString() << ": " << taken[keys.toString()].toStdString() << " and "
          << action->text().toStdString();
      taken[keys.toString()] = action->text();
    }
  }
}

TEST_F(KeyboardTest, TasksByNumber) {
  openDemo();
  press(Qt::Key_2, Qt::ControlModifier);
  EXPECT_EQ(m_window->task(), MainWindow::Task::kTune);
  press(Qt::Key_3, Qt::ControlModifier);
  EXPECT_EQ(m_window->task(), MainWindow::Task::kCompare);
  press(Qt::Key_4, Qt::ControlModifier);
  EXPECT_EQ(m_window->task(), MainWindow::Task::kLots);
  press(Qt::Key_1, Qt::ControlModifier);
  EXPECT_EQ(m_window->task(), MainWindow::Task::kCheck);
}

TEST_F(KeyboardTest, ALogIsPasted) {
  QFile file(demo("tern_run2.csv"));
  ASSERT_TRUE(file.open(QIODevice::ReadOnly)) << "the demo is not there";
  QApplication::clipboard()->setText(QString::fromUtf8(file.readAll()));
  press(Qt::Key_V, Qt::ControlModifier | Qt::ShiftModifier);
  settle();
  ASSERT_NE(m_document->view(), nullptr);
  EXPECT_EQ(m_document->view()->channels().size(), 6u);
}

TEST_F(KeyboardTest, TheTabsAreReachedByTheirLetters) {
  openDemo();
  press(Qt::Key_T, Qt::AltModifier);
  EXPECT_EQ(page()->tab(), CheckPage::kTable);
  press(Qt::Key_B, Qt::AltModifier);
  EXPECT_EQ(page()->tab(), CheckPage::kBoard);
  press(Qt::Key_L, Qt::AltModifier);
  EXPECT_EQ(page()->tab(), CheckPage::kLanes);
}

TEST_F(KeyboardTest, UndoAndRedo) {
  openDemo();
  check::Request setup = m_document->setup();
  setup.board.reset();
  m_document->edit(QStringLiteral("No board"), setup);
  settle();
  press(Qt::Key_Z, Qt::ControlModifier);
  EXPECT_TRUE(m_document->setup().board);
  press(Qt::Key_Z, Qt::ControlModifier | Qt::ShiftModifier);
  EXPECT_FALSE(m_document->setup().board);
}

TEST_F(KeyboardTest, F6GoesThroughThePartsInTheirOrderAndBack) {
  openDemo();
  page()->setPanelShown(true);
  m_window->sentence()->setFocus();
  const auto inside = [](const QWidget* part) {
    const QWidget* focus = QApplication::focusWidget();
    return focus && (focus == part || part->isAncestorOf(focus));
  };
  const QList<QWidget*> order{
      page()->plot(),      page()->strip(), page()->lanes(), page()->panel(), m_window->findChild<ChooserBar*>(),
      m_window->sentence()};
  for (QWidget* part : order) {
    press(Qt::Key_F6);
    EXPECT_TRUE(inside(part)) << part->metaObject()->className();
  }
  for (auto part = order.rbegin() + 1; part != order.rend(); ++part) {
    press(Qt::Key_F6, Qt::ShiftModifier);
    EXPECT_TRUE(inside(*part)) << (*part)->metaObject()->className();
  }
}

TEST_F(KeyboardTest, F8GoesToTheNextAndBackToThePreviousProblem) {
  openDemo();
  m_document->choose(std::nullopt);
  press(Qt::Key_F8);
  const std::size_t first = chosen();
  press(Qt::Key_F8);
  const std::size_t second = chosen();
  EXPECT_NE(first, second);
  for (const std::size_t result : {first, second})
    EXPECT_NE(m_document->view()->judgement().all(result).verdict, judge::Verdict::kPass);
  press(Qt::Key_F8, Qt::ShiftModifier);
  EXPECT_EQ(chosen(), first);
}

TEST_F(KeyboardTest, F9TakesThePanelAwayAndEscapeTheChoice) {
  openDemo();
  const bool shown = page()->isPanelShown();
  press(Qt::Key_F9);
  EXPECT_NE(page()->isPanelShown(), shown);
  press(Qt::Key_F9);
  EXPECT_EQ(page()->isPanelShown(), shown);
  press(Qt::Key_F8);
  ASSERT_TRUE(m_document->chosen());
  press(Qt::Key_Escape);
  EXPECT_FALSE(m_document->chosen());
}

TEST_F(KeyboardTest, F1IsAboutWhatHasTheFocus) {
  openDemo();
  page()->setPanelShown(true);
  const auto asked = [this](QWidget* on) {
    m_window->activateWindow();
    on->setFocus(Qt::OtherFocusReason);
    withKeys(QKeySequence(Qt::Key_F1))->trigger();
    auto* help = m_window->findChild<HelpWindow*>();
    return help ? help->part().toStdString() : std::string("none");
  };
  EXPECT_EQ(asked(m_window->sentence()), "sentence");
  EXPECT_EQ(asked(page()->plot()), "plot");
  EXPECT_EQ(asked(page()->strip()), "strip");
  EXPECT_EQ(asked(page()->lanes()), "lanes");
  page()->showTab(CheckPage::kTable);
  EXPECT_EQ(asked(page()->table()), "table");
  page()->showTab(CheckPage::kBoard);
  EXPECT_EQ(asked(page()->board()), "board");
}

TEST_F(KeyboardTest, TabGoesThroughTheLinksOfTheSentenceAndEnterFollows) {
  openDemo();
  m_document->choose(std::nullopt);
  auto* sentence = m_window->sentence();
  sentence->setFocus(Qt::TabFocusReason);
  const auto links = sentence->content().links.size();
  ASSERT_GT(links, 2);
  for (qsizetype i = 1; i < links; ++i) {
    press(Qt::Key_Tab);
    EXPECT_EQ(QApplication::focusWidget(), sentence) << i;
  }
  press(Qt::Key_Tab);
  EXPECT_NE(QApplication::focusWidget(), sentence);  // past the last one
  sentence->setFocus(Qt::TabFocusReason);
  press(Qt::Key_Return);
  EXPECT_TRUE(m_document->chosen());
}

TEST_F(KeyboardTest, LanesByArrowsAndCopied) {
  openDemo();
  auto* lanes = page()->lanes();
  lanes->setFocus();
  m_document->choose(std::nullopt);
  press(Qt::Key_Down);
  const auto at = [&] { return *lanes->table().find(chosen()); };
  const auto start = at();
  press(Qt::Key_Down);
  EXPECT_EQ(at().lane, start.lane + 1);
  press(Qt::Key_Up);
  EXPECT_EQ(at().lane, start.lane);
  press(Qt::Key_Home);
  EXPECT_EQ(at().mark, 0u);
  press(Qt::Key_Right);
  EXPECT_EQ(at().mark, 1u);
  press(Qt::Key_Left);
  EXPECT_EQ(at().mark, 0u);
  press(Qt::Key_End);
  EXPECT_EQ(at().mark, lanes->table().lanes[start.lane].marks.size() - 1);
  press(Qt::Key_C, Qt::ControlModifier);
  EXPECT_EQ(QApplication::clipboard()->text(), lanes->rowAsText(start.lane));
  EXPECT_EQ(m_window->statusBar()->currentMessage(), QStringLiteral("The row is on the clipboard."));
  press(Qt::Key_C, Qt::ControlModifier | Qt::ShiftModifier);
  EXPECT_TRUE(QApplication::clipboard()->mimeData()->hasImage());
  page()->setPanelShown(false);
  press(Qt::Key_Return);
  EXPECT_TRUE(page()->isPanelShown());
}

TEST_F(KeyboardTest, CurvesByArrowsZoomAndNumbers) {
  openDemo();
  m_document->choose(std::nullopt);
  auto* plot = page()->plot();
  plot->setFocus();
  plot->setCursor_s(m_document->view()->origin_s() + 120);
  const double interval_s = m_document->view()->run().sample_interval_s;
  const double before = *plot->cursor_s();
  press(Qt::Key_Right);
  EXPECT_NEAR(*plot->cursor_s() - before, interval_s, interval_s);  // onto a sample, then one on
  const double on_sample = *plot->cursor_s();
  press(Qt::Key_Right);
  EXPECT_NEAR(*plot->cursor_s(), on_sample + interval_s, 1e-6);
  press(Qt::Key_Left);
  EXPECT_NEAR(*plot->cursor_s(), on_sample, 1e-6);
  press(Qt::Key_Right, Qt::ControlModifier);
  const double border = *plot->cursor_s();
  EXPECT_GT(border, on_sample + interval_s);
  EXPECT_TRUE(std::ranges::count(plot->scene().zoneBorders_s, border));
  press(Qt::Key_Left, Qt::ControlModifier);
  EXPECT_LT(*plot->cursor_s(), border);
  EXPECT_TRUE(std::ranges::count(plot->scene().zoneBorders_s, *plot->cursor_s()));
  const double whole_s = plot->viewTo_s() - plot->viewFrom_s();
  press(Qt::Key_Plus);
  EXPECT_LT(plot->viewTo_s() - plot->viewFrom_s(), whole_s);
  press(Qt::Key_Minus);
  press(Qt::Key_0);
  EXPECT_NEAR(plot->viewTo_s() - plot->viewFrom_s(), whole_s, 1e-6);
  press(Qt::Key_Down);
  ASSERT_TRUE(m_document->chosenChannel());
  const auto channel = *m_document->chosenChannel();
  press(Qt::Key_Down);
  EXPECT_NE(*m_document->chosenChannel(), channel);
  press(Qt::Key_Up);
  EXPECT_EQ(*m_document->chosenChannel(), channel);
  const auto hottest = m_document->view()->hottestFirst().front();
  plot->setFocus();
  press(Qt::Key_1, Qt::AltModifier);
  EXPECT_TRUE(plot->isHidden(hottest));
  press(Qt::Key_1, Qt::AltModifier);
  EXPECT_FALSE(plot->isHidden(hottest));
}

TEST_F(KeyboardTest, TheTableIsFoundFilteredMarkedAndCopied) {
  openDemo();
  press(Qt::Key_F, Qt::ControlModifier);
  EXPECT_EQ(page()->tab(), CheckPage::kTable);
  auto* filter = qobject_cast<QLineEdit*>(QApplication::focusWidget());
  ASSERT_NE(filter, nullptr);
  auto* table = page()->table();
  table->setFocus();
  const int rows = table->QTableView::model()->rowCount();
  press(Qt::Key_A, Qt::ControlModifier);
  press(Qt::Key_C, Qt::ControlModifier);
  const auto lines = [] { return int(QApplication::clipboard()->text().trimmed().count(u'\n')); };
  EXPECT_EQ(lines(), rows);  // and a heading
  // Two rows that do not stand together, marked with Space: the arrows leave them marked.
  table->clearSelection();
  table->setCurrentIndex(table->QTableView::model()->index(0, 0));
  press(Qt::Key_Space);
  press(Qt::Key_Down);
  press(Qt::Key_Down);
  press(Qt::Key_Space);
  const auto marked = [&] {
    QList<int> found;
    for (const QModelIndex& index : table->selectionModel()->selectedRows()) found << index.row();
    std::ranges::sort(found);
    return found;
  };
  EXPECT_EQ(marked(), (QList<int>{0, 2}));
  press(Qt::Key_C, Qt::ControlModifier);
  EXPECT_EQ(lines(), 2);
  press(Qt::Key_Space);
  EXPECT_EQ(marked(), QList<int>{0});
  // Without marks the arrows choose, as anywhere.
  press(Qt::Key_Escape);
  press(Qt::Key_Down);
  EXPECT_EQ(table->selectionModel()->selectedRows().size(), 1);
}

TEST_F(KeyboardTest, TypingFindsARowOfTheTable) {
  openDemo();
  page()->showTab(CheckPage::kTable);
  auto* table = page()->table();
  table->setFocus();
  const auto* rows = table->QTableView::model();
  // Whatever column is current, first that of the verdicts: the requirement, then the placement.
  const auto text = [&](int column) { return rows->index(table->currentIndex().row(), column).data().toString(); };
  table->setCurrentIndex(rows->index(0, 0));
  QTest::keyClicks(table, QStringLiteral("spr"));
  EXPECT_TRUE(text(1).startsWith(QStringLiteral("Spread at 217"))) << text(1).toStdString();
  QTest::qWait(QApplication::keyboardInputInterval() + 50);
  QTest::keyClicks(table, QStringLiteral("u12 ce"));
  EXPECT_EQ(text(2), QStringLiteral("U12 centre"));
  const int row = table->currentIndex().row();
  QTest::qWait(QApplication::keyboardInputInterval() + 50);
  QTest::keyClicks(table, QStringLiteral("u12 ce"));  // the next one
  EXPECT_EQ(text(2), QStringLiteral("U12 centre"));
  EXPECT_NE(table->currentIndex().row(), row);
}

TEST_F(KeyboardTest, NoShortcutActsOnWhatIsNotShown) {
  openDemo();
  const auto enabled = [this](const QKeySequence& keys) { return withKeys(keys)->isEnabled(); };
  const QKeySequence panel(Qt::Key_F9), problem(Qt::Key_F8), whole(Qt::CTRL | Qt::Key_0);
  const bool shown = page()->isPanelShown();
  m_window->showTask(MainWindow::Task::kCompare);
  press(Qt::Key_F9);  // Compare has no panel
  EXPECT_FALSE(enabled(panel));
  m_window->showTask(MainWindow::Task::kCheck);
  EXPECT_EQ(page()->isPanelShown(), shown);
  EXPECT_TRUE(enabled(panel));
  m_window->showImport();
  for (const auto& keys : {panel, problem, whole}) EXPECT_FALSE(enabled(keys)) << keys.toString().toStdString();
  m_window->showResult();
  for (const auto& keys : {panel, problem, whole}) EXPECT_TRUE(enabled(keys)) << keys.toString().toStdString();
}

TEST_F(KeyboardTest, EscapeTakesANoticeAwayWithNothingOpen) {
  QApplication::clipboard()->clear();
  press(Qt::Key_V, Qt::ControlModifier | Qt::ShiftModifier);
  ASSERT_TRUE(shownSentence().startsWith(QStringLiteral("Nothing was pasted."))) << shownSentence().toStdString();
  press(Qt::Key_Escape);
  EXPECT_TRUE(shownSentence().startsWith(QStringLiteral("No run is open."))) << shownSentence().toStdString();
}

TEST_F(KeyboardTest, F6ScrollsToWhatItGoesTo) {
  QFont large = QApplication::font();
  const auto back = qScopeGuard([usual = large] { QApplication::setFont(usual); });
  large.setPointSize(20);
  QApplication::setFont(large);
  m_window = std::make_unique<MainWindow>(m_document.get(), m_settings.get(), m_archive.get());
  m_window->resize(1280, 800);
  m_window->show();
  openDemo();
  m_window->showImport();
  QApplication::processEvents();
  auto* area = m_window->findChild<RoomyArea*>();
  ASSERT_GT(area->verticalScrollBar()->maximum(), 0);
  EXPECT_EQ(area->verticalScrollBar()->value(), 0);  // the verdict comes first
  for (int i = 0; i < 6; ++i) {
    press(Qt::Key_F6);
    QApplication::processEvents();
    const QWidget* focus = QApplication::focusWidget();
    ASSERT_NE(focus, nullptr);
    const int top = focus->mapTo(area->viewport(), QPoint(0, 0)).y();
    if (!area->widget()->isAncestorOf(focus)) continue;
    EXPECT_GE(top, 0) << focus->metaObject()->className();
    EXPECT_LT(top, area->viewport()->height()) << focus->metaObject()->className();
  }
  m_window->showWindowEditor();
  EXPECT_EQ(area->verticalScrollBar()->value(), 0);
}

TEST_F(KeyboardTest, TheStripIsGoneThroughByArrows) {
  openDemo();
  auto* strip = page()->strip();
  strip->setFocus();
  press(Qt::Key_Right);
  const auto first = strip->state().current;
  ASSERT_TRUE(first);
  press(Qt::Key_Right);
  EXPECT_EQ(*strip->state().current, *first + 1);
  press(Qt::Key_Left);
  EXPECT_EQ(*strip->state().current, *first);
}

TEST_F(KeyboardTest, InALowWindowEveryTabIsReachedByF6) {
  m_window->resize(1280, 800);
  QFont large = QApplication::font();
  const auto back = qScopeGuard([usual = large] { QApplication::setFont(usual); });
  large.setPointSize(20);
  QApplication::setFont(large);
  m_window = std::make_unique<MainWindow>(m_document.get(), m_settings.get(), m_archive.get());
  m_window->resize(1280, 800);
  m_window->show();
  openDemo();
  QApplication::processEvents();
  ASSERT_TRUE(page()->isStacked());
  m_window->sentence()->setFocus();
  press(Qt::Key_F6);
  auto* tabs = qobject_cast<QTabBar*>(QApplication::focusWidget());
  ASSERT_NE(tabs, nullptr);
  press(Qt::Key_Right);
  EXPECT_EQ(page()->tab(), CheckPage::kLanes);
  press(Qt::Key_F6);
  EXPECT_EQ(QApplication::focusWidget(), page()->lanes());
  press(Qt::Key_Down);
  EXPECT_TRUE(m_document->chosen());
}

}  // namespace
}  // namespace ovenwright::desktop
