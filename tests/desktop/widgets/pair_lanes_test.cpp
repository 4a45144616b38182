#include "app/desktop/widgets/pair_lanes.h"

#include <gtest/gtest.h>

#include "app/desktop/widgets/lanes_layout.h"
#include "app/desktop/widgets/zone_table.h"
#include "tests/desktop/widgets/samples.h"

namespace ovenwright::widgets {
namespace {

using Names = std::vector<std::string>;

/// Two thermocouples' peaks between 235 and 250 °C in two runs, and their comparison: U of every difference is 0.7.
struct Pair {
  judge::Judgement a, b;
  Channels looks_a = samples::channels(2), looks_b = samples::channels(2);
  compare::Comparison comparison;
  std::vector<PairChannel> pairs = pairChannels(Names{"TC1", "TC2"}, Names{"TC1", "TC2"});

  explicit Pair(std::vector<double> in_a, std::vector<double> in_b) {
    const auto judged = [](const std::vector<double>& values) {
      samples::JudgementBuilder builder;
      builder.add("peak", samples::peak(), Unit::kCelsius,
                  {{values[0], 2, 235, 250, {}}, {values[1], 2, 235, 250, {}}});
      return builder.judgement();
    };
    a = judged(in_a);
    b = judged(in_b);
    comparison.same_thermocouples = true;
    for (std::size_t i = 0; i < 2; ++i) {
      compare::Difference difference;
      difference.window = a.windows[0].identity.name;
      difference.requirement = a.results[i].requirement_name;
      difference.trace = a.results[i].trace;
      difference.difference = in_b[i] - in_a[i];
      difference.expanded_uncertainty = 0.7;
      comparison.results.push_back(difference);
    }
  }
  LaneTable table() const { return pairLaneTable({a, looks_a}, {b, looks_b}, pairs, comparison); }
};

TEST(PairLanes, MarksStandWhereTheyDoInARunsOwnLanes) {
  const Pair pair({240, 238}, {243, 237});
  const LaneTable table = pair.table();
  ASSERT_EQ(table.lanes.size(), 1u);
  ASSERT_EQ(table.lanes[0].marks.size(), 4u);
  const Lane own[] = {laneTable(pair.a, pair.looks_a).lanes[0], laneTable(pair.b, pair.looks_b).lanes[0]};
  for (const LaneMark& mark : table.lanes[0].marks) {
    const LaneMark& alone = own[mark.side].marks[mark.track];
    EXPECT_EQ(mark.s, alone.s);
    EXPECT_EQ(mark.outcome, alone.outcome + (mark.side == 0 ? 0 : pair.a.all_size()));
    EXPECT_FALSE(mark.whisker);
  }
  EXPECT_FALSE(table.lanes[0].lowerGuard || table.lanes[0].upperGuard);
}

// Source: by hand. 240 to 243 is +3.0, 238 to 237 is −1.0: the first changes most. Margins: A 238: 3/7.5 = 40 %;
// B 237: 2/7.5 = 27 %.
TEST(PairLanes, TheLastColumnsSayWhatChanged) {
  const LaneTable table = Pair({240, 238}, {243, 237}).table();
  const auto& lane = table.lanes[0];
  EXPECT_EQ(lane.pair.difference, "+3.0");
  EXPECT_EQ(lane.pair.uncertainty, "0.7");
  EXPECT_EQ(lane.pair.unit, QString::fromUtf8("°C"));
  EXPECT_EQ(lane.marks[*lane.pair.change].track, 0u);
  EXPECT_EQ(QString(lane.pair.worst[0].margin).remove(QChar(0x202F)), "40%");
  EXPECT_EQ(QString(lane.pair.worst[1].margin).remove(QChar(0x202F)), "27%");
  EXPECT_TRUE(lane.marks[0].tip.contains(QString::fromUtf8("B − A: +3.0 ± 0.7 °C")));
  EXPECT_TRUE(lane.marks[0].tip.startsWith("A: "));
}

TEST(PairLanes, ThermocouplesAreMatchedByNameWithOneStyle) {
  const auto pairs = pairChannels(Names{"TC1", "TC2"}, Names{"TC2", "new"});
  ASSERT_EQ(pairs.size(), 3u);
  EXPECT_FALSE(pairs[0].b);
  EXPECT_EQ(pairs[1].b, 0u);
  EXPECT_EQ(pairs[2].b, 1u);
  const Channels looks = matched(samples::channels(2), samples::channels(2), pairs);
  EXPECT_EQ(looks.looks[0].style, 1u);  // as A's TC2
  EXPECT_EQ(looks.looks[1].style, 2u);  // no thermocouple of A has it
}

TEST(PairLanes, EachSideHasARowAndColumnsOfItsOwn) {
  const LaneTable table = Pair({240, 238}, {243, 237}).table();
  EXPECT_EQ(table.columns(), 4u);
  const Theme theme = Theme::light(QFont(QStringLiteral("DejaVu Sans"), 10));
  for (const qreal width : {900.0, 1280.0}) {
    const LanesLayout layout(table, theme, width, 400, {});
    EXPECT_GE(layout.columns().body.right - layout.columns().body.left, theme.px(230) - 1) << width;
    EXPECT_LT(layout.sideCenter(0, 0), layout.sideCenter(0, 1));
    EXPECT_LE(layout.columns().pair.unitLeft, layout.columns().pair.moreLeft);
    for (std::size_t mark = 0; mark < 4; ++mark) {
      const auto hit = layout.markAt(layout.center(0, mark));
      ASSERT_TRUE(hit);
      EXPECT_EQ(table.at(*hit).side, table.lanes[0].marks[mark].side);
    }
    EXPECT_EQ(layout.summaryMark(0, layout.columns().pair.worst[1].nameLeft), table.lanes[0].pair.worst[1].mark);
    EXPECT_EQ(layout.summaryMark(0, layout.columns().pair.nameLeft), table.lanes[0].pair.change);
  }
}

// Source: algebra. Setpoints that differ give their difference, equal ones none.
TEST(ZonesAgainst, DifferencesStandInB) {
  const auto oven = samples::tenZoneOven();
  const auto recipe = samples::ternRecipe();
  auto other = recipe;
  other.top_C[0] -= 14;
  other.bottom_C[0] -= 14;
  other.speed_mm_per_min -= 60;
  const auto strip = [&](const oven::Recipe& of) {
    return zoneTable(&oven, &of, samples::ternEntry(), {0, {}}, nullptr);
  };
  ZoneTable a = strip(recipe), b = strip(other);
  holdAgainst(a, b, false);
  EXPECT_TRUE(b.against->framed);
  EXPECT_FALSE(a.against->framed);
  EXPECT_EQ(b.cells[0].topChange_C, -14);
  EXPECT_FALSE(b.cells[1].changed());
  EXPECT_EQ(b.against->speedChange_mm_per_min, -60);
  other.bottom_C[0] += 5;
  ZoneTable c = strip(other);
  holdAgainst(a, c, false);
  EXPECT_FALSE(c.together());
  EXPECT_EQ(c.cells[0].bottomChange_C, -9);
  ZoneTable none;
  holdAgainst(a, none, false);
  EXPECT_FALSE(none.against->framed);
}

}  // namespace
}  // namespace ovenwright::widgets
