#include "app/desktop/widgets/limit_lanes.h"

#include <gtest/gtest.h>

#include <QAccessible>
#include <QApplication>
#include <QClipboard>
#include <QScrollBar>
#include <QSignalSpy>
#include <QTest>

#include "tests/desktop/widgets/samples.h"

namespace ovenwright::widgets {
namespace {

class Lanes : public testing::Test {
 protected:
  Lanes() {
    lanes.setTable(laneTable(samples::tern(), samples::ternChannels()));
    lanes.resize(984, 340);
    lanes.show();
    lanes.setFocus();
    QApplication::setActiveWindow(&lanes);
  }
  QPoint at(std::size_t lane, std::size_t mark) const {
    return lanes.toViewport(lanes.layoutNow().center(lane, mark)).toPoint();
  }
  void key(Qt::Key key, Qt::KeyboardModifiers modifiers = {}) { QTest::keyClick(&lanes, key, modifiers); }
  LaneTable::Position chosen() const { return lanes.state().chosen.value_or(LaneTable::Position{99, 99}); }

  LimitLanes lanes;
};

TEST_F(Lanes, ClickChoosesTheNearestMark) {
  QSignalSpy spy(&lanes, &LimitLanes::chosen);
  QTest::mouseClick(lanes.viewport(), Qt::LeftButton, {}, at(3, 5));
  ASSERT_EQ(spy.size(), 1);
  EXPECT_EQ(spy[0][0].value<std::size_t>(), samples::kTernPeak);
}

TEST_F(Lanes, ClickBesideAllMarksChoosesTheLanesWorst) {
  const QPoint title(40, at(3, 0).y());
  QTest::mouseClick(lanes.viewport(), Qt::LeftButton, {}, title);
  EXPECT_EQ(lanes.chosenOutcome(), samples::kTernPeak);
}

TEST_F(Lanes, ArrowsGoThroughLanesAndThermocouples) {
  key(Qt::Key_Down);
  EXPECT_EQ(chosen().lane, 0u);
  EXPECT_EQ(chosen().mark, 0u);  // the worst of the first lane, R118
  key(Qt::Key_Down);
  key(Qt::Key_Right);
  EXPECT_EQ(chosen().lane, 1u);
  EXPECT_EQ(chosen().mark, 1u);
  key(Qt::Key_Up);
  EXPECT_EQ(chosen().lane, 0u);
  EXPECT_EQ(chosen().mark, 1u);  // stays on its thermocouple
  key(Qt::Key_End);
  EXPECT_EQ(chosen().mark, 5u);
  key(Qt::Key_Right);
  EXPECT_EQ(chosen().mark, 5u);
  key(Qt::Key_Home);
  EXPECT_EQ(chosen().mark, 0u);
  for (int i = 0; i < 20; ++i) key(Qt::Key_Down);
  EXPECT_EQ(chosen().lane, 10u);
}

TEST_F(Lanes, EnterAsksForTheDerivationAndEscapeGoesBack) {
  QSignalSpy activated(&lanes, &LimitLanes::activated), cleared(&lanes, &LimitLanes::choiceCleared);
  lanes.setChosenOutcome(samples::kTernPeak);
  key(Qt::Key_Return);
  ASSERT_EQ(activated.size(), 1);
  EXPECT_EQ(activated[0][0].value<std::size_t>(), samples::kTernPeak);
  key(Qt::Key_Escape);
  EXPECT_EQ(cleared.size(), 1);
  EXPECT_FALSE(lanes.chosenOutcome());
}

TEST_F(Lanes, CopiesTheRowAsTextAndAllAsAPicture) {
  lanes.setChosenOutcome(samples::kTernPeak);
  key(Qt::Key_C, Qt::ControlModifier);
  EXPECT_EQ(QApplication::clipboard()->text(),
            QString::fromUtf8("Peak\tU3 body to 245, Tc\t235\tby part\tU12 centre\t232.1\t2.1\t°C\t-39 %\tfail"));
  key(Qt::Key_C, Qt::ControlModifier | Qt::ShiftModifier);
  EXPECT_FALSE(QApplication::clipboard()->pixmap().isNull());
}

TEST_F(Lanes, HoverNamesTheThermocouple) {
  QSignalSpy spy(&lanes, &LimitLanes::channelHovered);
  QTest::mouseMove(lanes.viewport(), at(3, 5));
  ASSERT_GE(spy.size(), 1);
  EXPECT_EQ(spy.last()[0].value<std::optional<std::size_t>>(), std::optional<std::size_t>(5));
  EXPECT_EQ(lanes.state().highlighted, std::optional<std::size_t>(5));
  QTest::mouseMove(lanes.viewport(), QPoint(40, at(3, 5).y()));
  EXPECT_FALSE(lanes.state().highlighted);
}

TEST_F(Lanes, ScrollUnderAFixedHeaderAndRevealTheChosen) {
  lanes.resize(984, 150);
  ASSERT_GT(lanes.verticalScrollBar()->maximum(), 0);
  for (int i = 0; i < 12; ++i) key(Qt::Key_Down);
  EXPECT_EQ(lanes.verticalScrollBar()->value(), lanes.verticalScrollBar()->maximum());
  const auto layout = lanes.layoutNow();
  EXPECT_GE(lanes.toViewport({0, layout.row(10).top()}).y(), layout.headerHeight());
  EXPECT_LE(lanes.toViewport({0, layout.row(10).bottom()}).y(), lanes.viewport()->height() + 1);
}

TEST_F(Lanes, ClickOpensALaneOfManyThermocouples) {
  lanes.setTable(laneTable(samples::manyChannels(32), samples::channels(32)));
  QTest::mouseClick(lanes.viewport(), Qt::LeftButton, {}, QPoint(40, at(0, 0).y()));
  EXPECT_FALSE(lanes.layoutNow().grouped(0));
  EXPECT_TRUE(lanes.layoutNow().grouped(1));
}

TEST_F(Lanes, AreATableForScreenReaders) {
  QAccessibleInterface* face = QAccessible::queryAccessibleInterface(&lanes);
  ASSERT_TRUE(face);
  EXPECT_EQ(face->role(), QAccessible::Table);
  EXPECT_EQ(face->text(QAccessible::Name), "Limit lanes");
  QAccessibleTableInterface* table = face->tableInterface();
  ASSERT_TRUE(table);
  EXPECT_EQ(table->rowCount(), 11);
  EXPECT_EQ(table->columnCount(), 7);
  EXPECT_EQ(table->rowDescription(3), "Peak");
  EXPECT_EQ(table->columnDescription(5), "U12 centre");
  EXPECT_EQ(table->columnDescription(6), "board");
  QAccessibleInterface* cell = table->cellAt(3, 5);
  ASSERT_TRUE(cell);
  EXPECT_EQ(cell->role(), QAccessible::Cell);
  EXPECT_EQ(cell->text(QAccessible::Name),
            QString::fromUtf8("Peak, U12 centre, 232.1 plus or minus 2.1 °C, limits 235 to 250, "
                              "margin minus 39 percent, fail"));
  const QPoint center = lanes.viewport()->mapToGlobal(at(3, 5));
  EXPECT_TRUE(cell->rect().contains(center));
  EXPECT_TRUE(table->cellAt(7, 0)->state().invisible);  // the lag has no thermocouple
  EXPECT_EQ(face->childCount(), 12 * 8);
  EXPECT_EQ(face->indexOfChild(cell), 4 * 8 + 6);
  for (int i = 1; i < face->childCount(); ++i) {
    if (face->child(i)->state().invisible) continue;
    EXPECT_FALSE(face->child(i)->text(QAccessible::Name).isEmpty()) << i;
  }
}

TEST_F(Lanes, ACellCanBePressed) {
  QSignalSpy spy(&lanes, &LimitLanes::chosen);
  QAccessibleInterface* cell = QAccessible::queryAccessibleInterface(&lanes)->tableInterface()->cellAt(0, 2);
  ASSERT_TRUE(cell->actionInterface());
  cell->actionInterface()->doAction(QAccessibleActionInterface::pressAction());
  ASSERT_EQ(spy.size(), 1);
  EXPECT_EQ(spy[0][0].value<std::size_t>(), 2u);
  EXPECT_TRUE(cell->state().selected);
}

TEST_F(Lanes, ANewTableForgetsTheOldCells) {
  QAccessibleTableInterface* table = QAccessible::queryAccessibleInterface(&lanes)->tableInterface();
  ASSERT_TRUE(table->cellAt(10, 6));
  lanes.setTable(laneTable(samples::manyChannels(2), samples::channels(2)));
  EXPECT_EQ(table->rowCount(), 2);
  EXPECT_FALSE(table->cellAt(10, 6));
  EXPECT_EQ(table->columnDescription(0), "TC1");
}

}  // namespace
}  // namespace ovenwright::widgets
