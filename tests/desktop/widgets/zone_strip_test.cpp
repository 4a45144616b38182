#include "app/desktop/widgets/zone_strip.h"

#include <gtest/gtest.h>

#include <QAccessible>
#include <QApplication>
#include <QSignalSpy>
#include <QTest>

#include "tests/desktop/widgets/longer_text.h"
#include "tests/desktop/widgets/samples.h"

namespace ovenwright::widgets {
namespace {

ZoneTable ternZones(double x_mm = 124) {
  const oven::Oven oven = samples::tenZoneOven();
  const oven::Recipe recipe = samples::ternRecipe();
  const judge::Judgement judgement = samples::tern();
  return zoneTable(&oven, &recipe, samples::ternEntry(), {x_mm, QStringLiteral("U12 centre")}, &judgement);
}

// Source: algebra. 810 mm/min = 13.5 mm/s; zone 1 from 300 to 650 mm, a placement 124 mm behind the leading edge:
// (300 + 124)/13.5 to (650 + 124)/13.5 s after entry; zone 2 begins 390 mm further on.
TEST(ZoneTable, TimesAreThoseOfThePlacement) {
  const ZoneTable table = ternZones();
  ASSERT_EQ(table.cells.size(), 12u);
  EXPECT_NEAR(table.cells[0].from_s, 424 / 13.5, 1e-9);
  EXPECT_NEAR(table.cells[0].to_s, 774 / 13.5, 1e-9);
  EXPECT_NEAR(table.cells[1].from_s, 814 / 13.5, 1e-9);
  EXPECT_NEAR(ternZones(0).cells[0].from_s, 300 / 13.5, 1e-9);
}

TEST(ZoneTable, SetpointsHatchingAndDiscs) {
  const ZoneTable table = ternZones();
  EXPECT_EQ(table.cells[0].top_C, 146);
  EXPECT_EQ(table.cells[9].bottom_C, 258);
  EXPECT_TRUE(table.cells[10].cooling);
  EXPECT_EQ(table.cells[10].top_C, 80);
  EXPECT_FALSE(table.cells[10].bottom_C);
  EXPECT_TRUE(table.cells[0].hatched);
  EXPECT_EQ(table.cells[0].discs, std::vector<int>{2});
  for (std::size_t i = 1; i < 7; ++i) EXPECT_FALSE(table.cells[i].hatched) << i;
  for (std::size_t i = 7; i < 10; ++i) EXPECT_EQ(table.cells[i].discs, std::vector<int>{1}) << i;
}

TEST(ZoneTable, SaysWhatIsMissing) {
  const oven::Oven oven = samples::tenZoneOven();
  const oven::Recipe recipe = samples::ternRecipe();
  EXPECT_EQ(zoneTable(nullptr, &recipe, samples::ternEntry(), {}, nullptr).state, ZoneTable::State::kNoOven);
  EXPECT_EQ(zoneTable(&oven, nullptr, samples::ternEntry(), {}, nullptr).state, ZoneTable::State::kNoOven);
  EXPECT_EQ(zoneTable(&oven, &recipe, std::nullopt, {}, nullptr).state, ZoneTable::State::kNoEntry);
}

TEST(StripPlace, IsTheChosenPlacementElseTheMiddleElseTheLeadingEdge) {
  const board::Board board = samples::ternBoard();
  EXPECT_EQ(stripPlace(&board, &board.placements[5], QStringLiteral("U12 centre")).x_mm, 124);
  EXPECT_EQ(stripPlace(&board, nullptr, {}).x_mm, 122);
  EXPECT_EQ(stripPlace(nullptr, nullptr, {}).x_mm, 0);
  EXPECT_EQ(stripPlace(nullptr, nullptr, {}).name, "the leading edge");
}

class Strip : public testing::Test {
 protected:
  Strip() {
    strip.setTable(ternZones());
    strip.resize(984, strip.sizeHint().height());
    strip.setAxis(0, 430, 58, 122);
    strip.show();
    strip.setFocus();
    QApplication::setActiveWindow(&strip);
  }
  ZoneStrip strip;
};

TEST_F(Strip, SharesTheMappingOfThePlot) {
  const ZoneStripLayout layout = strip.layoutNow();
  EXPECT_DOUBLE_EQ(layout.x(0), 58);
  EXPECT_DOUBLE_EQ(layout.x(430), 984 - 122);
  EXPECT_DOUBLE_EQ(layout.x(215), (58 + 984 - 122) / 2.0);
  EXPECT_NEAR(layout.cell(0).left(), layout.x(424 / 13.5), 0.5);
}

TEST_F(Strip, CellsAreCutToTheAxis) {
  strip.setAxis(40, 100, 58, 122);
  const ZoneStripLayout layout = strip.layoutNow();
  EXPECT_DOUBLE_EQ(layout.cell(0).left(), 58);
  EXPECT_TRUE(layout.cell(5).isEmpty());
  EXPECT_FALSE(layout.cellAt(QPointF(20, 30)));
}

TEST_F(Strip, ClickAndKeysGoToZones) {
  QSignalSpy spy(&strip, &ZoneStrip::zoneActivated);
  QTest::mouseClick(&strip, Qt::LeftButton, {}, strip.layoutNow().topRect(8).center().toPoint());
  ASSERT_EQ(spy.size(), 1);
  EXPECT_EQ(spy[0][0].toString(), "9");
  QTest::keyClick(&strip, Qt::Key_Right);
  QTest::keyClick(&strip, Qt::Key_Return);
  EXPECT_EQ(spy.last()[0].toString(), "10");
  QTest::keyClick(&strip, Qt::Key_Home);
  QTest::keyClick(&strip, Qt::Key_Left);
  EXPECT_EQ(strip.state().current, std::optional<std::size_t>(0));
}

TEST_F(Strip, IsATableForScreenReaders) {
  QAccessibleInterface* face = QAccessible::queryAccessibleInterface(&strip);
  ASSERT_TRUE(face && face->tableInterface());
  EXPECT_EQ(face->role(), QAccessible::Table);
  EXPECT_EQ(face->tableInterface()->cellAt(0, 8)->text(QAccessible::Name),
            QString::fromUtf8("Zone 9, top, 252 °C, result 1 traces here"));
  EXPECT_EQ(face->tableInterface()->cellAt(0, 10)->text(QAccessible::Name), QString::fromUtf8("Zone C1, 80 °C"));
  EXPECT_TRUE(face->tableInterface()->cellAt(1, 10)->state().invisible);
}

TEST_F(Strip, WithoutOvenItIsALink) {
  strip.setTable({});
  QSignalSpy spy(&strip, &ZoneStrip::ovenWanted);
  QTest::mouseClick(&strip, Qt::LeftButton, {}, strip.lineRect().center().toPoint());
  QTest::keyClick(&strip, Qt::Key_Return);
  QAccessibleInterface* face = QAccessible::queryAccessibleInterface(&strip);
  EXPECT_EQ(face->role(), QAccessible::Link);
  EXPECT_EQ(face->text(QAccessible::Name), "Choose an oven and recipe to see the zones");
  face->actionInterface()->doAction(QAccessibleActionInterface::pressAction());
  EXPECT_EQ(spy.size(), 3);
  EXPECT_GE(strip.lineRect().height(), 24);
}

TEST(ZoneStripLayout, RowNamesAndNoteFitTheirInsets) {
  for (const bool longer : {false, true}) {
    std::optional<samples::LongerText> text;
    if (longer) text.emplace();
    for (const int points : {8, 10, 20}) {
      const Theme theme = Theme::light(QFont(QStringLiteral("DejaVu Sans"), points));
      const ZoneTable table = ternZones();
      const QFontMetricsF metrics(theme.font(12));
      for (const QString& line : stripNote(table).mid(0, 2))
        EXPECT_LT(metrics.horizontalAdvance(line), ZoneStripLayout::leastRightInset(theme, table));
      EXPECT_GE(ZoneStripLayout::height(theme, table) / 3, QFontMetricsF(theme.font(12, true)).height());
    }
  }
}

}  // namespace
}  // namespace ovenwright::widgets
