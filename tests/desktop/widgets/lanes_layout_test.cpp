#include "app/desktop/widgets/lanes_layout.h"
#include "app/desktop/widgets/lane_body_painter.h"

#include <gtest/gtest.h>

#include <QPainter>

#include "app/desktop/widgets/lanes_painter.h"
#include "tests/desktop/widgets/longer_text.h"
#include "tests/desktop/widgets/samples.h"

namespace ovenwright::widgets {
namespace {

Theme themeAt(int points) { return Theme::light(QFont(QStringLiteral("DejaVu Sans"), points)); }

TEST(LanesLayout, SizesAreThoseOfTheDesign) {
  // Source: lanes are 2.9 px + one pitch for each track + 2.9 px: 6 tracks of 4.6 px, 12 of 3.2 px; one 22 px.
  const Theme theme = themeAt(10);
  constexpr qreal kWholePixel = 0.51;
  for (const auto& [count, height] : {std::pair{1, 22.0}, {6, 33.4}, {12, 44.2}}) {
    const LaneTable table = laneTable(samples::manyChannels(std::size_t(count)), samples::channels(std::size_t(count)));
    const LanesLayout layout(table, theme, 900, 2000, {});
    EXPECT_NEAR(layout.row(0).height(), height, kWholePixel) << count;
  }
  const LaneTable tern = laneTable(samples::tern(), samples::ternChannels());
  const LanesLayout layout(tern, theme, 984, 2000, {});
  EXPECT_NEAR(layout.row(7).height(), 16, kWholePixel);
  EXPECT_NEAR(layout.center(0, 1).y() - layout.center(0, 0).y(), 4.6, 1e-9);
}

TEST(LanesLayout, PitchFallsUntilTheLanesFitAndThenTheyScroll) {
  const LaneTable table = laneTable(samples::tern(), samples::ternChannels());
  const Theme theme = themeAt(10);
  const LanesLayout natural(table, theme, 984, 2000, {});
  const LanesLayout tight(table, theme, 984, natural.contentHeight() - 30, {});
  EXPECT_LE(tight.contentHeight(), natural.contentHeight() - 30 + 1);
  const LanesLayout tooLow(table, theme, 984, 100, {});
  EXPECT_GT(tooLow.contentHeight(), 100);
  EXPECT_NEAR(tooLow.center(0, 1).y() - tooLow.center(0, 0).y(), 3.1, 1e-9);
}

TEST(LanesLayout, AThermocoupleHasTheSameHeightInEveryLane) {
  const LaneTable table = laneTable(samples::tern(), samples::ternChannels());
  const LanesLayout layout(table, themeAt(10), 984, 2000, {});
  for (std::size_t mark = 0; mark < 6; ++mark)
    for (std::size_t lane = 1; lane < 7; ++lane)
      EXPECT_NEAR(layout.center(lane, mark).y() - layout.row(lane).center().y(),
                  layout.center(0, mark).y() - layout.row(0).center().y(), 1e-9);
}

TEST(LanesLayout, OffTheScaleTheMarkStandsBackFromTheEdge) {
  const LaneTable table = laneTable(samples::everyState(), samples::channels(1));
  const LanesLayout layout(table, themeAt(10), 984, 2000, {});
  EXPECT_DOUBLE_EQ(layout.center(4, 0).x(), layout.columns().body.right - 16);
  EXPECT_DOUBLE_EQ(layout.center(5, 0).x(), layout.columns().body.left + 16);
}

// Its arrow is 16 px long at least; every other mark stands where its margin is.
TEST(LanesLayout, AtLeastKeepsRoomForItsArrow) {
  for (const double value : {90.0, 103.0, 110.0, 111.5, 112.3, 112.4, 130.0}) {
    samples::JudgementBuilder builder;
    builder.add("time", samples::timeAbove(217), Unit::kSecond, {{value, 3, 60, 100, {}}, {value, 3, 60, 100, {}}});
    builder.judgement().results[0].value.at_least = true;
    const LaneTable table = laneTable(builder.judgement(), samples::channels(2));
    const LanesLayout layout(table, themeAt(10), 984, 2000, {});
    const qreal edge = layout.columns().body.right - 16;
    EXPECT_LE(layout.center(0, 0).x(), edge + 1e-9) << value;
    const double s = (value - 80) / 20;
    EXPECT_NEAR(layout.center(0, 1).x(), s > kLaneReach ? edge : layout.columns().body.x(s), 1e-9) << value;
    if (layout.columns().body.x(s) < edge) {
      EXPECT_NEAR(layout.center(0, 0).x(), layout.center(0, 1).x(), 1e-9) << value;
    }
  }
}

// Under "Margin" a value without one would be read as a margin.
TEST(LanesLayout, WhereTheValueGaveWayTheMarginsColumnSaysWhyThereIsNone) {
  const LaneTable table = laneTable(samples::everyState(), samples::channels(1));
  int seen = 0;
  for (const Lane& lane : table.lanes) {
    const QString text = insteadOfMargin(lane);
    if (lane.title == "Not reached") {
      ++seen;
      EXPECT_EQ(text, "not reached");
    }
    if (lane.title == "At least, undetermined" || lane.title == "Undetermined, no range") {
      ++seen;
      EXPECT_EQ(text, "undetermined");
    }
  }
  EXPECT_EQ(seen, 3);
  samples::JudgementBuilder counts;
  counts.add("excursions", {measure::Measure::kExcursionsAbove, {}}, Unit::kCount, {{1, 0, {}, 1, {}}});
  EXPECT_EQ(insteadOfMargin(laneTable(counts.judgement(), samples::channels(1)).lanes[0]), QString::fromUtf8("–"));
}

TEST(LanesLayout, FindsTheNearestMarkWithinReach) {
  const LaneTable table = laneTable(samples::tern(), samples::ternChannels());
  const LanesLayout layout(table, themeAt(10), 984, 2000, {});
  for (std::size_t lane = 0; lane < table.lanes.size(); ++lane) {
    for (std::size_t mark = 0; mark < table.lanes[lane].marks.size(); ++mark) {
      const auto hit = layout.markAt(layout.center(lane, mark));
      ASSERT_TRUE(hit) << lane << ' ' << mark;
      EXPECT_EQ(hit->lane, lane);
      EXPECT_EQ(hit->mark, mark);
    }
  }
  const QPointF loneMark = layout.center(3, 5);
  EXPECT_TRUE(layout.markAt(loneMark - QPointF(11.9, 0)));
  EXPECT_FALSE(layout.markAt(loneMark - QPointF(12.1, 0)));
  EXPECT_EQ(layout.laneAt(layout.row(3).top()), 3u);
  EXPECT_EQ(layout.laneAt(layout.row(3).bottom()), 4u);
  EXPECT_FALSE(layout.laneAt(-1));
  EXPECT_FALSE(layout.laneAt(layout.contentHeight() + 1));
}

TEST(LanesLayout, ThirteenAndMoreShowTheGroupUntilOpened) {
  const LaneTable table = laneTable(samples::manyChannels(32), samples::channels(32));
  const LanesLayout closed(table, themeAt(10), 984, 2000, {});
  EXPECT_TRUE(closed.grouped(0));
  EXPECT_DOUBLE_EQ(closed.center(0, 0).y(), closed.center(0, 31).y());
  const LanesLayout open(table, themeAt(10), 984, 2000, {0});
  EXPECT_FALSE(open.grouped(0));
  EXPECT_GT(open.row(0).height(), 32 * 3.1);
  EXPECT_LT(open.center(0, 0).y(), open.center(0, 31).y());
  const LaneTable twelve = laneTable(samples::manyChannels(12), samples::channels(12));
  EXPECT_FALSE(LanesLayout(twelve, themeAt(10), 984, 2000, {}).grouped(0));
}

struct Fit {
  const char* name;
  int points;
  qreal width;
  bool longer;
};
void PrintTo(const Fit& f, std::ostream* os) { *os << f.name; }
class LanesFit : public testing::TestWithParam<Fit> {};

TEST_P(LanesFit, ColumnsFollowOneAnotherAndTheBodyKeepsItsRoom) {
  std::optional<samples::LongerText> longer;
  if (GetParam().longer) longer.emplace();
  const Theme theme = themeAt(GetParam().points);
  for (const judge::Judgement& judgement : {samples::tern(), samples::everyState()}) {
    const LaneTable table = laneTable(judgement, samples::ternChannels());
    const LanesLayout layout(table, theme, GetParam().width, 2000, {});
    const LaneColumns& c = layout.columns();
    const std::vector<qreal> edges = {c.left,         c.titleLeft,  c.titleRight, c.lowerRight,
                                      c.body.left,    c.body.right, c.upperLeft,  c.signLeft,
                                      c.markerCenter, c.nameLeft,   c.nameRight,  c.marginRight};
    for (std::size_t i = 1; i < edges.size(); ++i) EXPECT_LE(edges[i - 1], edges[i]) << i;
    EXPECT_LE(c.marginRight, c.right);
    EXPECT_GE(c.body.right - c.body.left, theme.px(240) - 1);
    EXPECT_TRUE(!c.showsValue || c.unitLeft <= c.marginRight);
    for (std::size_t lane = 0; lane < table.lanes.size(); ++lane) {
      EXPECT_GE(layout.row(lane).height(), QFontMetricsF(theme.bodyFont()).height() - 1) << lane;
      EXPECT_LE(QFontMetricsF(theme.bodyFont()).horizontalAdvance(table.lanes[lane].upper), c.signLeft - c.upperLeft)
          << lane;
      EXPECT_LE(QFontMetricsF(theme.bodyFont()).horizontalAdvance(table.lanes[lane].lower), c.lowerRight - c.titleRight)
          << lane;
      EXPECT_LE(QFontMetricsF(theme.bodyFont(true)).horizontalAdvance(table.lanes[lane].worst.margin),
                c.marginRight - c.nameRight)
          << lane;
    }
  }
}

INSTANTIATE_TEST_SUITE_P(Fonts, LanesFit,
                         testing::Values(Fit{"at_8_pt", 8, 920, false}, Fit{"at_10_pt", 10, 920, false},
                                         Fit{"at_10_pt_longer", 10, 920, true}, Fit{"at_13_pt_longer", 13, 1200, true},
                                         Fit{"at_20_pt", 20, 1400, false}, Fit{"at_20_pt_longer", 20, 1500, true}),
                         [](const auto& c) { return std::string{c.param.name}; });

// Whatever does not fit is cut at the area's edge; around it nothing is touched.
TEST(LanesPainter, StaysInsideItsArea) {
  const LaneTable table = laneTable(samples::tern(), samples::ternChannels());
  for (const int points : {8, 10, 20}) {
    QImage image(700, 300, QImage::Format_RGB32);
    image.fill(Qt::magenta);
    QPainter painter(&image);
    const QRect area(20, 20, 660, 260);
    paintLanes(painter, area, table, themeAt(points), {});
    painter.end();
    for (int x = 0; x < image.width(); ++x)
      for (int y = 0; y < image.height(); ++y)
        ASSERT_TRUE(area.contains(x, y) || image.pixelColor(x, y) == QColor(Qt::magenta)) << x << ' ' << y;
  }
}

/// How far a pixel is from the panel towards the signal colour, 0 to 1, by its blue part, in which the two differ most.
double signalAt(const QImage& image, const QPointF& at, const Theme& theme) {
  const QColor found = image.pixelColor(at.toPoint());
  return double(theme.panel.blue() - found.blue()) / (theme.panel.blue() - theme.signal.blue());
}

// The ring of the hottest reaches over the lane into the header, that of the coldest into the next lane: both are
// whole.
TEST(LanesPainter, RingsOfTheOutermostTracksAreWhole) {
  samples::JudgementBuilder builder;
  for (const char* name : {"first", "second"}) {
    std::vector<samples::Given> givens(6, {80, 1, 60, 100, {}});
    givens.front().value = givens.back().value = 110;
    builder.add(name, samples::timeAbove(name[0]), Unit::kSecond, givens);
  }
  const LaneTable table = laneTable(builder.judgement(), samples::channels(6));
  const Theme theme = themeAt(10);
  const LanesLayout layout(table, theme, 984, 2000, {});
  QImage image(984, 200, QImage::Format_RGB32);
  image.fill(theme.panel);
  QPainter painter(&image);
  paintLanes(painter, image.rect(), table, theme, {}, layout);
  painter.end();
  const qreal ring = layout.radius(0) + 2.6;
  // Half of a line of 1.4 px in one pixel at least: the limit for a line that is there, and none is at a quarter.
  constexpr double kThere = 0.4;
  for (const std::size_t lane : {0, 1})
    for (const auto& [mark, side] : {std::pair<std::size_t, int>{0, -1}, {5, 1}}) {
      const QPointF top = layout.center(lane, mark) + QPointF(0, layout.headerHeight() + side * ring);
      double most = 0;
      for (const double off : {-0.5, 0.0, 0.5})
        most = std::max(most, signalAt(image, {std::floor(top.x()), std::floor(top.y() + off)}, theme));
      EXPECT_GT(most, kThere) << lane << ' ' << mark;
    }
}

// Source: algebra. Over their marks where there is room; else apart by the gap, never out of the lane.
TEST(LanesLayout, NamesOfTwoEndsNeverTouch) {
  EXPECT_EQ(placeNames({100, 300}, {40, 60}, 0, 400, 8), (std::array<qreal, 2>{80, 270}));
  for (const qreal first : {0.0, 10.0, 150.0, 199.0, 390.0, 400.0})
    for (const qreal apart : {0.0, 1.0, 30.0, 120.0})
      for (const qreal width : {20.0, 90.0, 196.0}) {
        const auto at = placeNames({first, std::min(400.0, first + apart)}, {width, width}, 0, 400, 8);
        EXPECT_GE(at[0], 0);
        EXPECT_GE(at[1], at[0] + width + 8 - 1e-9);
        EXPECT_LE(at[1] + width, 400 + 1e-9);
      }
}

}  // namespace
}  // namespace ovenwright::widgets
