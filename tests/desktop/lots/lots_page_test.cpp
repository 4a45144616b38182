#include "app/desktop/lots/lots_page.h"

#include <QAction>
#include <QApplication>
#include <QClipboard>
#include <QHeaderView>
#include <QMenu>
#include <QMenuBar>

#include "app/archive/database.h"
#include "app/desktop/lots/figures_pane.h"
#include "app/desktop/lots/filter_bar.h"
#include "app/desktop/lots/lot_sheet_panel.h"
#include "app/desktop/lots/runs_model.h"
#include "app/desktop/lots/runs_table.h"
#include "app/desktop/widgets/sentence.h"
#include "tests/app/archive/runs.h"
#include "tests/desktop/window/window_fixture.h"

namespace ovenwright::desktop {
namespace {

constexpr int kLongest_ms = 30000;  // only a bound against hanging
using Reach = ArchiveStatus::Reach;

class LotsPageTest : public WindowTest {
 protected:
  LotsPage* page() { return m_window->lotsPage(); }
  std::string path() const { return m_archive->where().toStdString(); }
  void keep(const std::vector<archive::NewRun>& runs) {
    auto archive = archive::Archive::open(path(), {});
    ASSERT_TRUE(archive) << archive.error().text();
    ASSERT_TRUE(archive->add(runs));
  }
  void show() {
    m_window->showTask(MainWindow::Task::kLots);
    ASSERT_TRUE(QTest::qWaitFor([this] { return m_archive->status().reach != Reach::kNotLooked && !page()->isBusy(); },
                                kLongest_ms));
  }
};

TEST_F(LotsPageTest, SaysThatNoRunIsKeptYetAndMakesNothing) {
  show();
  ASSERT_TRUE(page()->notice());
  EXPECT_EQ(page()->notice()->title, "No run is kept yet.");
  EXPECT_FALSE(page()->notice()->text.isEmpty()) << "what to do";
  EXPECT_FALSE(QFile::exists(m_archive->where()));
  EXPECT_EQ(m_window->windowTitle(), "Lots – Ovenwright");
}

struct Broken {
  const char* name;
  std::function<void(const std::string& path)> make;
};
void PrintTo(const Broken& broken, std::ostream* os) { *os << broken.name; }
class BrokenArchive : public LotsPageTest, public testing::WithParamInterface<Broken> {};

void writeText(const std::string& path) {
  QFile file(QString::fromStdString(path));
  ASSERT_TRUE(file.open(QIODevice::WriteOnly));
  file.write(QByteArray(4096, 'x'));
}
void makeNewer(const std::string& path) {
  { ASSERT_TRUE(archive::Archive::open(path, {})->add(madeUpRuns(1, 1))); }
  auto database = archive::Database::openFile(path, archive::Database::Mode::kReadWrite, 1000);
  ASSERT_TRUE(database) << database.error().text();
  ASSERT_FALSE((*database)->execute(QStringLiteral("update archive set value = '99' where name = 'schema'")));
}
void tear(const std::string& path) {
  { ASSERT_TRUE(archive::Archive::open(path, {})->add(madeUpRuns(1, 200))); }
  QFile file(QString::fromStdString(path));
  ASSERT_TRUE(file.open(QIODevice::ReadWrite));
  for (qint64 at = 4096; at + 512 < file.size(); at += 4096) {
    file.seek(at);
    file.write(QByteArray(512, '\x5a'));
  }
}

TEST_P(BrokenArchive, IsOneNoticeAndTheWindowGoesOn) {
  GetParam().make(path());
  show();
  ASSERT_TRUE(page()->notice());
  EXPECT_EQ(page()->notice()->title, "The archive cannot be read.");
  EXPECT_TRUE(page()->notice()->text.contains(m_archive->where())) << page()->notice()->text.toStdString();
  EXPECT_FALSE(page()->notice()->cures.empty());
  EXPECT_EQ(page()->model()->rowCount(), 0);
  openDemo();  // the rest of the window works
  EXPECT_EQ(m_window->task(), MainWindow::Task::kCheck);
  m_window->showTask(MainWindow::Task::kLots);
  EXPECT_TRUE(QTest::qWaitFor([this] { return !page()->isBusy(); }, kLongest_ms));
  EXPECT_TRUE(page()->notice());
}
INSTANTIATE_TEST_SUITE_P(Archives, BrokenArchive,
                         testing::Values(Broken{"no_database", writeText}, Broken{"newer", makeNewer},
                                         Broken{"torn", tear}),
                         [](const auto& tested) { return std::string{tested.param.name}; });

TEST_F(LotsPageTest, ListsWhatIsKeptAndFollowsWhatIsAdded) {
  keep(madeUpRuns(1, 30));
  show();
  EXPECT_FALSE(page()->notice());
  EXPECT_EQ(page()->model()->rowCount(), 30);
  EXPECT_TRUE(page()->statusText().startsWith(QStringLiteral("30 run"))) << page()->statusText().toStdString();
  m_archive->add(this->m_window.get(), madeUpRuns(31, 5), [](const auto&) {});
  EXPECT_TRUE(QTest::qWaitFor([this] { return page()->model()->rowCount() == 35; }, kLongest_ms));
}

TEST_F(LotsPageTest, PanelTabAndColumnsAreKept) {
  keep(madeUpRuns(1, 8));
  show();
  page()->table()->setColumnWidth(RunsModel::kBoard, 71);
  page()->table()->horizontalHeader()->moveSection(RunsModel::kMargin, RunsModel::kWhen);
  page()->figures()->showTab(FiguresPane::kTrend);
  page()->setPanelShown(false);
  const int width = m_settings->panelWidth(), lots = m_settings->lotsPanelWidth();
  m_window->saveState();
  m_window = std::make_unique<MainWindow>(m_document.get(), m_settings.get(), m_archive.get());
  m_window->resize(1440, 900);
  m_window->show();
  show();
  EXPECT_EQ(page()->table()->columnWidth(RunsModel::kBoard), 71);
  EXPECT_EQ(page()->table()->horizontalHeader()->visualIndex(RunsModel::kMargin), int(RunsModel::kWhen));
  EXPECT_EQ(page()->figures()->tab(), FiguresPane::kTrend);
  EXPECT_FALSE(page()->isPanelShown());
  // What nobody moved stays as it is, however often it is left, also that of a page that was not looked at.
  EXPECT_EQ(m_settings->panelWidth(), width);
  EXPECT_EQ(m_settings->lotsPanelWidth(), lots);
}

TEST_F(LotsPageTest, TypingFindsARunByItsLot) {
  keep(madeUpRuns(1, 4, "QM-1001"));
  keep(madeUpRuns(5, 4, "QM-2002"));
  show();
  const auto* model = page()->model();
  const auto lot = [&] {
    return model->index(page()->table()->currentIndex().row(), RunsModel::kLot).data().toString().toStdString();
  };
  page()->table()->setFocus();
  for (const char* wanted : {"QM-1001", "QM-2002", "QM-1001"}) {
    QTest::qWait(QApplication::keyboardInputInterval() + 50);
    QTest::keyClicks(page()->table(), QLatin1String(wanted));
    EXPECT_EQ(lot(), wanted);
  }
}

TEST_F(LotsPageTest, NoRunThatPassesTheFilterIsSaidWithAWayBack) {
  keep(madeUpRuns(1, 3));
  show();
  archive::Filter filter;
  filter.text = "nowhere";
  page()->filterBar()->setFilter(filter);
  ASSERT_TRUE(QTest::qWaitFor([this] { return page()->notice().has_value(); }, kLongest_ms));
  EXPECT_EQ(page()->notice()->title, "No run passes the filter.");
  page()->notice()->cures.front().act();
  EXPECT_TRUE(QTest::qWaitFor([this] { return page()->model()->rowCount() == 3; }, kLongest_ms));
  EXPECT_FALSE(page()->notice());
}

TEST_F(LotsPageTest, KeysMarkCopyAndFind) {
  keep(madeUpRuns(1, 260));
  show();
  auto* table = page()->table();
  table->setFocus();
  table->setCurrentIndex(page()->model()->index(0, RunsModel::kWhen));
  EXPECT_EQ(page()->panel()->records().size(), 1u) << "the run that is looked at";
  QTest::keyClick(table, Qt::Key_Space);
  QTest::keyClick(table, Qt::Key_Down, Qt::ShiftModifier);
  QTest::keyClick(table, Qt::Key_Down, Qt::ShiftModifier);
  QTest::keyClick(table, Qt::Key_Space);
  EXPECT_EQ(page()->model()->markedCount(), 3u);
  EXPECT_EQ(page()->panel()->records(), page()->model()->marked());
  QTest::keyClick(table, Qt::Key_C, Qt::ControlModifier);
  const QStringList lines = QApplication::clipboard()->text().split(u'\n');
  ASSERT_EQ(lines.size(), 5) << "headings, three rows, the end of the last";
  EXPECT_TRUE(lines[0].contains(QStringLiteral("Lot\tRun\tBoard")));
  QTest::keyClick(table, Qt::Key_A, Qt::ControlModifier);
  ASSERT_TRUE(QTest::qWaitFor([table] { return table->selectionModel()->selectedRows().size() == 260; }, kLongest_ms))
      << "all of them, not the first page alone";
  m_window->activateWindow();
  ASSERT_TRUE(QTest::qWaitForWindowActive(m_window.get()));
  QTest::keyClick(m_window.get(), Qt::Key_F, Qt::ControlModifier);
  ASSERT_NE(QApplication::focusWidget(), nullptr);
  EXPECT_EQ(QApplication::focusWidget()->accessibleName(), "Find");
}

class LotsOrderTest : public LotsPageTest {
 protected:
  void SetUp() override {
    LotsPageTest::SetUp();
    keep(madeUpRuns(1, 9));  // a fourth fails, a third is of another board, margins rise with time
    show();
  }
  QHeaderView* header() { return page()->table()->horizontalHeader(); }
  QString arrow() {
    return page()->model()->headerData(header()->sortIndicatorSection(), Qt::Horizontal, Qt::DisplayRole).toString() +
           (header()->sortIndicatorOrder() == Qt::AscendingOrder ? u'+' : u'-');
  }
  /// Numbers of the runs in the order that is shown, once it is.
  std::string shown(const std::string& wanted) {
    const auto numbers = [this] {
      std::string all;
      for (int row = 0; row < page()->model()->rowCount(); ++row)
        all += page()->model()->row(row).id.back();  // added one by one: the number in the chain
      return all;
    };
    (void)QTest::qWaitFor([&] { return numbers() == wanted; }, kLongest_ms);
    return numbers();
  }
  void click(int column) {
    const QPoint at(header()->sectionViewportPosition(column) + header()->sectionSize(column) / 2,
                    header()->height() / 2);
    QTest::mouseClick(header()->viewport(), Qt::LeftButton, {}, at);
  }
};

TEST_F(LotsOrderTest, AClickOnAHeadingSortsAndASecondTurnsTheOrder) {
  EXPECT_EQ(shown("987654321"), "987654321");
  EXPECT_EQ(arrow(), "When-");
  click(RunsModel::kWhen);
  EXPECT_EQ(shown("123456789"), "123456789");
  EXPECT_EQ(arrow(), "When+");
  click(RunsModel::kMargin);
  EXPECT_EQ(arrow(), "Margin+") << "the smallest first";
  EXPECT_EQ(shown("123456789"), "123456789");
  click(RunsModel::kMargin);
  EXPECT_EQ(shown("987654321"), "987654321");
  EXPECT_EQ(arrow(), "Margin-");
  click(RunsModel::kVerdict);
  EXPECT_EQ(arrow(), "Verdict-") << "the worst first";
  EXPECT_EQ(shown("849765321"), "849765321");
  click(RunsModel::kBoard);
  EXPECT_EQ(shown("963875421"), "963875421") << "Dunlin before Tern, each the newest first";
  EXPECT_EQ(arrow(), "Board+");
  for (const int column : {RunsModel::kRun, RunsModel::kRecipe, RunsModel::kSmallest, RunsModel::kSheet}) {
    click(column);
    EXPECT_EQ(arrow(), "Board+") << "what cannot be sorted by leaves the arrow";
    EXPECT_FALSE(page()->model()->headerData(column, Qt::Horizontal, Qt::ToolTipRole).toString().isEmpty());
  }
  EXPECT_EQ(shown("963875421"), "963875421");
  archive::Filter filter;
  filter.verdicts = {judge::Verdict::kPass};
  page()->filterBar()->setFilter(filter);
  EXPECT_EQ(shown("9637521"), "9637521") << "another filter keeps the order";
}

TEST_F(LotsOrderTest, KeysSortToo) {
  QMenu* menu = page()->table()->sortMenu();
  const auto trigger = [menu](const QString& text) {
    for (QAction* action : menu->actions())
      if (action->text() == text) action->trigger();
  };
  QAction* in_view = nullptr;
  for (QAction* top : m_window->menuBar()->actions())
    if (top->menu() && top->menu()->actions().contains(menu->menuAction())) in_view = menu->menuAction();
  ASSERT_NE(in_view, nullptr);
  EXPECT_TRUE(in_view->isEnabled());
  trigger("Margin");
  EXPECT_EQ(arrow(), "Margin+");
  trigger("Margin");
  EXPECT_EQ(arrow(), "Margin+") << "it is chosen already";
  trigger("The other way &round");
  EXPECT_EQ(arrow(), "Margin-");
  EXPECT_EQ(shown("987654321"), "987654321");
  m_window->showTask(MainWindow::Task::kCheck);
  EXPECT_FALSE(in_view->isEnabled());
}

TEST_F(LotsPageTest, ADroppedLogIsShownOnCheck) {
  show();
  drop({demo("tern_run1.csv")});
  settle();
  EXPECT_TRUE(QTest::qWaitFor([this] { return m_window->task() == MainWindow::Task::kCheck; }, kLongest_ms));
}

}  // namespace
}  // namespace ovenwright::desktop
