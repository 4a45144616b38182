#include "app/desktop/widgets/board_picture.h"

#include <gtest/gtest.h>

#include <QAccessible>
#include <QApplication>
#include <QSignalSpy>
#include <QTest>
#include <random>

#include "tests/desktop/widgets/samples.h"

namespace ovenwright::widgets {
namespace {

Theme themeAt(int points) { return Theme::light(QFont(QStringLiteral("DejaVu Sans"), points)); }

BoardTable ternBoardTable() {
  const judge::Judgement judgement = samples::tern();
  const Channels channels = samples::ternChannels();
  const LaneTable lanes = laneTable(judgement, channels);
  return boardTable(samples::ternBoard(), {}, channels, judgement, &lanes.lanes[3]);
}

BoardTable scattered(std::size_t count, unsigned seed) {
  std::mt19937 random(seed);
  std::uniform_real_distribution<double> x(0, 244), y(0, 190);
  BoardTable table;
  table.size_mm = QSizeF(244, 190);
  for (std::size_t i = 0; i < count; ++i) {
    BoardMark mark;
    mark.name = QStringLiteral("TC%1").arg(i + 1);
    mark.channel = i;
    mark.at_mm = QPointF(x(random), y(random));
    table.marks.push_back(mark);
  }
  return table;
}

/// Whether two segments meet at more than an end; source: orientation test.
bool cross(const QLineF& a, const QLineF& b) {
  QPointF at;
  if (a.intersects(b, &at) != QLineF::BoundedIntersection) return false;
  constexpr double kTouch = 0.01;
  const auto end = [&](const QLineF& line) {
    return QLineF(at, line.p1()).length() < kTouch || QLineF(at, line.p2()).length() < kTouch;
  };
  return !(end(a) && end(b));
}

TEST(BoardTable, HasValuesMarginsAndOwnLimits) {
  const BoardTable table = ternBoardTable();
  ASSERT_EQ(table.marks.size(), 6u);
  EXPECT_EQ(table.marks[5].value, "232.1");
  EXPECT_EQ(table.marks[5].margin, QString::fromUtf8("−39\u202F%"));
  EXPECT_EQ(table.marks[2].note, "upper limit 245, Tc");
  EXPECT_TRUE(table.sizeKnown);
}

// Source: the board's scale is one for both directions; x counts from the leading edge at the left, y from the front
// rail at the bottom.
TEST(BoardLayout, MarksStandAtTheirPlaces) {
  const BoardTable table = ternBoardTable();
  const BoardLayout layout(table, themeAt(10), QRectF(0, 0, 984, 390));
  EXPECT_NEAR(layout.board().width() / layout.board().height(), 244.0 / 190, 1e-6);
  const double scale = layout.board().width() / 244;
  EXPECT_NEAR(layout.point(0).x() - layout.board().left(), 38 * scale, 1e-6);
  EXPECT_NEAR(layout.board().bottom() - layout.point(0).y(), 150 * scale, 1e-6);
}

TEST(BoardLayout, LeadersOfASideNeverCrossAndCalloutsAreInOrder) {
  for (unsigned seed = 1; seed <= 60; ++seed) {
    const BoardTable table = scattered(4 + seed % 16, seed);
    const QRectF area(0, 0, 984, 420);
    const BoardLayout layout(table, themeAt(10), area);
    for (const bool left : {true, false}) {
      std::vector<BoardLayout::Callout> side;
      for (const auto& callout : layout.callouts())
        if (callout.left == left) side.push_back(callout);
      for (std::size_t i = 0; i + 1 < side.size(); ++i) {
        EXPECT_LE(layout.point(side[i].mark).y(), layout.point(side[i + 1].mark).y());
        EXPECT_LE(side[i].rect.bottom(), side[i + 1].rect.top() + 1) << seed;
        const QPolygonF a = layout.leader(side[i]), b = layout.leader(side[i + 1]);
        for (int p = 1; p < a.size(); ++p)
          for (int q = 1; q < b.size(); ++q)
            EXPECT_FALSE(cross(QLineF(a[p - 1], a[p]), QLineF(b[q - 1], b[q]))) << seed;
      }
      for (const auto& callout : side) EXPECT_TRUE(area.contains(callout.rect)) << seed;
    }
  }
}

TEST(BoardLayout, ManyThermocouplesHaveCalloutsOfOneLine) {
  EXPECT_TRUE(BoardLayout(scattered(6, 1), themeAt(10), QRectF(0, 0, 984, 390)).showsLanes());
  EXPECT_FALSE(BoardLayout(scattered(24, 1), themeAt(10), QRectF(0, 0, 984, 390)).showsLanes());
}

class Board : public testing::Test {
 protected:
  Board() {
    board.setTable(ternBoardTable());
    board.resize(984, 390);
    board.show();
    board.setFocus();
    QApplication::setActiveWindow(&board);
  }
  BoardPicture board;
};

TEST_F(Board, ClickOnAMarkOrItsCalloutChooses) {
  QSignalSpy spy(&board, &BoardPicture::chosen);
  const BoardLayout layout = board.layoutNow();
  QTest::mouseClick(&board, Qt::LeftButton, {}, layout.point(5).toPoint());
  for (const auto& callout : layout.callouts())
    if (callout.mark == 0) QTest::mouseClick(&board, Qt::LeftButton, {}, callout.rect.center().toPoint());
  ASSERT_EQ(spy.size(), 2);
  EXPECT_EQ(spy[0][0].value<std::size_t>(), samples::kTernPeak);
  EXPECT_EQ(spy[1][0].value<std::size_t>(), samples::kTernPeak - 5);
}

TEST_F(Board, KeysGoThroughTheCallouts) {
  QTest::keyClick(&board, Qt::Key_Down);
  EXPECT_EQ(board.state().chosen, std::optional<std::size_t>(0));  // R118 is the uppermost at the left
  QTest::keyClick(&board, Qt::Key_Down);
  EXPECT_EQ(board.state().chosen, std::optional<std::size_t>(4));
  QTest::keyClick(&board, Qt::Key_End);
  EXPECT_EQ(board.state().chosen, std::optional<std::size_t>(1));
  QSignalSpy spy(&board, &BoardPicture::activated);
  QTest::keyClick(&board, Qt::Key_Return);
  EXPECT_EQ(spy.size(), 1);
}

TEST_F(Board, IsATableForScreenReaders) {
  QAccessibleInterface* face = QAccessible::queryAccessibleInterface(&board);
  ASSERT_TRUE(face && face->tableInterface());
  EXPECT_EQ(face->tableInterface()->rowCount(), 6);
  EXPECT_EQ(face->tableInterface()->rowDescription(5), "U12 centre");
  EXPECT_TRUE(face->tableInterface()->cellAt(5, 0)->text(QAccessible::Name).startsWith("Peak, U12 centre, 232.1"));
}

TEST_F(Board, WithoutABoardItIsALink) {
  board.setTable(std::nullopt);
  QSignalSpy spy(&board, &BoardPicture::boardWanted);
  QTest::keyClick(&board, Qt::Key_Return);
  EXPECT_EQ(spy.size(), 1);
}

}  // namespace
}  // namespace ovenwright::widgets
