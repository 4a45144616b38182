#include <QAccessible>
#include <QAction>
#include <QActionGroup>
#include <QLineEdit>
#include <QMenu>
#include <QMenuBar>
#include <QRegularExpression>

#include "app/desktop/plot/curve_plot.h"
#include "app/desktop/widgets/limit_lanes.h"
#include "app/desktop/widgets/sentence.h"
#include "app/desktop/widgets/zone_strip.h"
#include "app/desktop/window/check_page.h"
#include "app/desktop/window/focus_marker.h"
#include "tests/desktop/window/window_fixture.h"

namespace ovenwright::desktop {
namespace {

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

TEST_F(WindowTest, WhateverIsTickedInAMenuCanBeTickedAndUnticked) {
  openDemo();
  for (const QAction* menu : m_window->menuBar()->actions()) emit menu->menu()->aboutToShow();  // ticks are set there
  int ticked = 0;
  for (QAction* action : m_window->findChildren<QAction*>()) {
    if (!action->isCheckable() || action->actionGroup() || !action->isEnabled()) continue;
    const bool was = action->isChecked();
    action->trigger();
    QApplication::processEvents();
    EXPECT_NE(action->isChecked(), was) << action->text().toStdString();
    action->trigger();
    QApplication::processEvents();
    EXPECT_EQ(action->isChecked(), was) << action->text().toStdString();
    ++ticked;
  }
  EXPECT_GE(ticked, 2);  // raw samples, the panel at the right
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

TEST_F(WindowTest, WhatTheKeyboardWentToIsFramed) {
  const FocusMarker marker;
  openDemo();
  auto* page = m_window->checkPage();
  page->showTab(CheckPage::kTable);
  page->find();  // by a shortcut
  auto* filter = qobject_cast<QLineEdit*>(QApplication::focusWidget());
  ASSERT_NE(filter, nullptr);
  EXPECT_EQ(marker.framed(), filter);
  QApplication::processEvents();
  const QColor accent = widgets::Theme::fromPalette(QApplication::palette(), QApplication::font()).accent;
  const QImage picture = filter->grab().toImage();
  // Two pixels of the accent all around; the corners are blended.
  for (const QPoint& at :
       {QPoint(picture.width() / 2, 0), QPoint(picture.width() / 2, 1), QPoint(0, picture.height() / 2),
        QPoint(1, picture.height() / 2), QPoint(picture.width() / 2, picture.height() - 1)})
    EXPECT_EQ(QColor(picture.pixel(at)).name(), accent.name()) << at.x() << ' ' << at.y();
  // The mouse needs no frame, and what paints its own gets none.
  filter->clearFocus();
  filter->setFocus(Qt::MouseFocusReason);
  EXPECT_EQ(marker.framed(), nullptr);
  page->showTab(CheckPage::kLanes);
  page->lanes()->setFocus(Qt::TabFocusReason);
  EXPECT_EQ(marker.framed(), nullptr);
}

TEST_F(WindowTest, LanesAndStripAreTables) {
  openDemo();
  auto* page = m_window->checkPage();
  auto* lanes = QAccessible::queryAccessibleInterface(page->lanes());
  ASSERT_NE(lanes->tableInterface(), nullptr);
  EXPECT_EQ(lanes->tableInterface()->rowCount(), int(page->lanes()->table().lanes.size()));
  EXPECT_EQ(lanes->tableInterface()->columnCount(), 7);  // six thermocouples and the board
  const auto cell = [](QAccessibleInterface* table, int row, int column) {
    return table->tableInterface()->cellAt(row, column)->text(QAccessible::Name);
  };
  // The design's own form of a cell.
  bool found = false;
  for (int row = 0; row < lanes->tableInterface()->rowCount(); ++row)
    for (int column = 0; column < 7; ++column) {
      auto* at = lanes->tableInterface()->cellAt(row, column);
      if (at)
        found |= at->text(QAccessible::Name)
                     .contains(QRegularExpression(QStringLiteral(
                         "^Peak, U12 centre, 2[0-9.]+ plus or minus 2\\.1 °C, limits 235 to 250, margin minus "
                         "[0-9]+ percent, fail$")));
    }
  EXPECT_TRUE(found);
  auto* strip = QAccessible::queryAccessibleInterface(page->strip());
  ASSERT_NE(strip->tableInterface(), nullptr);
  EXPECT_EQ(strip->tableInterface()->rowCount(), 2);
  EXPECT_EQ(strip->tableInterface()->columnCount(), 12);
  EXPECT_EQ(cell(strip, 0, 8), QString::fromUtf8("Zone 9, top, 252 °C, result 1 traces here"));
}

}  // namespace
}  // namespace ovenwright::desktop
