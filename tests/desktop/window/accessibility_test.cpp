#include <QAbstractButton>
#include <QAbstractItemView>
#include <QAccessible>
#include <QAction>
#include <QComboBox>
#include <QLineEdit>
#include <QMenuBar>
#include <QSpinBox>

#include "app/desktop/compare/compare_page.h"
#include "app/desktop/plot/curve_plot.h"
#include "app/desktop/tune/tune_page.h"
#include "app/desktop/widgets/sentence.h"
#include "app/desktop/window/check_page.h"
#include "tests/desktop/window/window_fixture.h"

namespace ovenwright::desktop {
namespace {

/// Everything that a person can act on or that holds content of its own.
bool isControl(const QWidget* widget) {
  if (widget->objectName().startsWith(QStringLiteral("qt_"))) return false;  // parts inside stock widgets
  return widget->focusPolicy() != Qt::NoFocus || qobject_cast<const QAbstractButton*>(widget) ||
         qobject_cast<const QComboBox*>(widget) || qobject_cast<const QLineEdit*>(widget) ||
         qobject_cast<const QAbstractItemView*>(widget);
}

QStringList namelessControls(QWidget* window) {
  QStringList nameless;
  for (QWidget* widget : window->findChildren<QWidget*>()) {
    if (!widget->isVisible() || !isControl(widget)) continue;
    // A line inside a combo or spin box is heard through its box, the headings of a table through the table.
    if (qobject_cast<QAbstractItemView*>(widget->parentWidget())) continue;
    if (qobject_cast<QComboBox*>(widget->parentWidget()) || qobject_cast<QAbstractSpinBox*>(widget->parentWidget()))
      continue;
    QAccessibleInterface* heard = QAccessible::queryAccessibleInterface(widget);
    if (heard && !heard->text(QAccessible::Name).isEmpty()) continue;
    nameless << QStringLiteral("%1 in %2")
                    .arg(QLatin1String(widget->metaObject()->className()),
                         QLatin1String(widget->parentWidget()->metaObject()->className()));
  }
  return nameless;
}

TEST_F(WindowTest, EveryControlHasANameWhileNothingIsOpen) {
  EXPECT_EQ(namelessControls(m_window.get()).join(u'\n').toStdString(), "");
}

TEST_F(WindowTest, EveryControlHasANameOnEveryPage) {
  openDemo();
  auto* page = m_window->checkPage();
  page->stepProblem(1);
  for (const auto tab : {CheckPage::kLanes, CheckPage::kTable, CheckPage::kBoard}) {
    page->showTab(tab);
    QApplication::processEvents();
    EXPECT_EQ(namelessControls(m_window.get()).join(u'\n').toStdString(), "") << "tab " << int(tab);
  }
  m_window->showTask(MainWindow::Task::kTune);
  ASSERT_TRUE(QTest::qWaitFor([this] { return !m_window->tunePage()->session()->isBusy(); }, 60000));
  EXPECT_EQ(namelessControls(m_window.get()).join(u'\n').toStdString(), "") << "tune";
  m_window->showTask(MainWindow::Task::kLots);
  QApplication::processEvents();
  EXPECT_EQ(namelessControls(m_window.get()).join(u'\n').toStdString(), "") << "lots";
  m_window->showTask(MainWindow::Task::kCompare);
  QApplication::processEvents();
  EXPECT_EQ(namelessControls(m_window.get()).join(u'\n').toStdString(), "") << "compare, one run";
  m_window->openDemoPair();
  ASSERT_TRUE(QTest::qWaitFor([this] { return !m_window->comparePage()->session()->isBusy(); }, 60000));
  EXPECT_EQ(namelessControls(m_window.get()).join(u'\n').toStdString(), "") << "compare";
  m_window->showTask(MainWindow::Task::kCheck);
  m_window->showImport();
  QApplication::processEvents();
  EXPECT_EQ(namelessControls(m_window.get()).join(u'\n').toStdString(), "") << "how the log was read";
  m_window->showWindowEditor();
  QApplication::processEvents();
  EXPECT_EQ(namelessControls(m_window.get()).join(u'\n').toStdString(), "") << "window editor";
}

TEST_F(WindowTest, EveryLinkOfTheSentenceHasANameAndAPress) {
  openDemo();
  auto* heard = QAccessible::queryAccessibleInterface(m_window->sentence());
  ASSERT_NE(heard, nullptr);
  EXPECT_EQ(heard->role(), QAccessible::StaticText);
  ASSERT_EQ(heard->childCount(), int(m_window->sentence()->content().links.size()));
  for (int i = 0; i < heard->childCount(); ++i) {
    auto* link = heard->child(i);
    EXPECT_EQ(link->role(), QAccessible::Link);
    EXPECT_FALSE(link->text(QAccessible::Name).isEmpty()) << "link " << i;
    EXPECT_FALSE(link->rect().isEmpty()) << "link " << i;
    ASSERT_NE(link->actionInterface(), nullptr);
    EXPECT_TRUE(link->actionInterface()->actionNames().contains(QAccessibleActionInterface::pressAction()));
  }
  m_document->choose(std::nullopt);
  heard->child(0)->actionInterface()->doAction(QAccessibleActionInterface::pressAction());
  EXPECT_TRUE(m_document->chosen());
}

TEST_F(WindowTest, ThePlotIsAChartThatSaysWhatItsCursorReads) {
  openDemo();
  auto* plot = m_window->checkPage()->plot();
  auto* heard = QAccessible::queryAccessibleInterface(plot);
  ASSERT_NE(heard, nullptr);
  EXPECT_EQ(heard->role(), QAccessible::Chart);
  EXPECT_EQ(heard->text(QAccessible::Name), QStringLiteral("Temperature over time, 6 thermocouples"));
  EXPECT_TRUE(heard->text(QAccessible::Description).startsWith(QStringLiteral("Fail.")));
  EXPECT_TRUE(heard->text(QAccessible::Value).isEmpty());
  m_document->choose(std::nullopt);
  plot->setCursor_s(m_document->view()->origin_s() + 120);
  const QString reads = heard->text(QAccessible::Value);
  EXPECT_TRUE(reads.startsWith(QStringLiteral("At 120.0 s"))) << reads.toStdString();
  EXPECT_TRUE(reads.contains(QStringLiteral("U12 centre"))) << reads.toStdString();
}

TEST_F(WindowTest, EveryMenuEntryDoesSomething) {
  for (const QAction* menu : m_window->menuBar()->actions()) {
    ASSERT_NE(menu->menu(), nullptr);
    EXPECT_FALSE(menu->menu()->isEmpty()) << menu->text().toStdString();
  }
}

TEST_F(WindowTest, F6GoesThroughAllParts) {
  openDemo();
  std::set<const QWidget*> visited;
  for (int i = 0; i < 8; ++i) {
    QTest::keyClick(m_window.get(), Qt::Key_F6);
    visited.insert(QApplication::focusWidget());
  }
  EXPECT_GE(visited.size(), 5u);
}

TEST_F(WindowTest, F8GoesToWhatIsNotAPass) {
  openDemo();
  QTest::keyClick(m_window.get(), Qt::Key_F8);
  ASSERT_TRUE(m_document->chosen());
  EXPECT_NE(m_document->view()->judgement().all(*m_document->chosen()).verdict, judge::Verdict::kPass);
  QTest::keyClick(m_window.get(), Qt::Key_Escape);
  EXPECT_FALSE(m_document->chosen());
}

}  // namespace
}  // namespace ovenwright::desktop
