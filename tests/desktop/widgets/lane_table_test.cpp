#include "app/desktop/widgets/lane_table.h"

#include <gtest/gtest.h>

#include "tests/desktop/widgets/samples.h"

namespace ovenwright::widgets {
namespace {

const LaneTable& tern() {
  static const LaneTable table = laneTable(samples::tern(), samples::ternChannels());
  return table;
}

TEST(LaneTable, OneLaneForEachRequirementBoardLast) {
  ASSERT_EQ(tern().lanes.size(), 11u);
  EXPECT_EQ(tern().lanes[3].title, "Peak");
  for (std::size_t i = 0; i < 11; ++i) EXPECT_EQ(tern().lanes[i].board, i >= 7) << i;
  EXPECT_TRUE(tern().lanes[10].informative);
  EXPECT_EQ(tern().tracks, 6u);
  EXPECT_EQ(tern().columns(), 7u);
}

TEST(LaneTable, LimitsThatDifferReadByPartAndTheNoteNamesASingleOne) {
  const Lane& peak = tern().lanes[3];
  EXPECT_EQ(peak.lower, "235");
  EXPECT_EQ(peak.upper, "by part");
  EXPECT_TRUE(peak.upperTip.contains("U3 body: 245")) << peak.upperTip.toStdString();
  EXPECT_TRUE(peak.lowerTip.isEmpty());
  EXPECT_EQ(peak.note, "U3 body to 245, Tc");
  EXPECT_EQ(peak.marks[2].ownLimit, "upper limit 245, Tc");
  EXPECT_TRUE(peak.marks[0].ownLimit.isEmpty());
  EXPECT_EQ(tern().lanes[0].lower, QString::fromUtf8("–"));
}

// Source: algebra. U3 body at 239.7 °C between 235 and its own 245 °C: s = (239.7 − 240)/(240 − 235) = −0.06;
// the others between 235 and 250: U12 centre s = (232.1 − 242.5)/7.5 = −1.38666...
TEST(LaneTable, EachMarkStandsByItsOwnLimits) {
  const Lane& peak = tern().lanes[3];
  EXPECT_NEAR(*peak.marks[2].s, -0.06, 1e-9);
  EXPECT_NEAR(*peak.marks[5].s, -10.4 / 7.5, 1e-9);
  // Both ends of the whisker go through the same mapping: v ± 2.1.
  EXPECT_NEAR((*peak.marks[5].whisker)[0], -12.5 / 7.5, 1e-9);
  EXPECT_NEAR((*peak.marks[5].whisker)[1], -8.3 / 7.5, 1e-9);
}

// Source: algebra. Limits 235 and 250, w = 2.1: the band is (±2.1)/7.5 on both sides of s = ±1.
TEST(LaneTable, GuardBandIsThatOfTheMostCommonLimits) {
  const Lane& peak = tern().lanes[3];
  ASSERT_TRUE(peak.lowerGuard && peak.upperGuard);
  EXPECT_NEAR((*peak.lowerGuard)[0], -1 - 0.28, 1e-9);
  EXPECT_NEAR((*peak.lowerGuard)[1], -1 + 0.28, 1e-9);
  EXPECT_NEAR((*peak.upperGuard)[1], 1 + 0.28, 1e-9);
  EXPECT_FALSE(tern().lanes[0].lowerGuard);
}

TEST(LaneTable, RuleSimpleHasNoGuardBand) {
  samples::JudgementBuilder builder(window::DecisionRule::kSimple);
  builder.add("peak", samples::peak(), Unit::kCelsius, {{249, 2, 235, 250, {}}});
  const LaneTable table = laneTable(builder.judgement(), samples::channels(1));
  EXPECT_FALSE(table.lanes[0].upperGuard);
  EXPECT_FALSE(table.lanes[0].marks[0].caps);
  EXPECT_FALSE(table.lanes[0].marks[0].hollow);
}

TEST(LaneTable, LastColumnIsTheWorstThenTheTightest) {
  EXPECT_EQ(tern().lanes[3].marks[tern().lanes[3].worst.mark].place, "U12 centre");
  EXPECT_EQ(tern().lanes[1].marks[tern().lanes[1].worst.mark].place, "R118");
  EXPECT_TRUE(tern().lanes[3].worst.bold);
  EXPECT_FALSE(tern().lanes[1].worst.bold);
  EXPECT_FALSE(tern().lanes[10].worst.bold);  // informative
  EXPECT_FALSE(tern().lanes[10].marks[0].signal);
}

TEST(LaneTable, StatesOfAMark) {
  const LaneTable table = laneTable(samples::everyState(), samples::channels(1));
  const auto mark = [&](const char* title) -> const LaneMark& {
    for (const Lane& lane : table.lanes)
      if (lane.title == title) return lane.marks[0];
    ADD_FAILURE() << title;
    return table.lanes[0].marks[0];
  };
  EXPECT_FALSE(mark("Pass").hollow || mark("Pass").caps || mark("Pass").signal);
  EXPECT_TRUE(mark("Conditional pass").hollow && mark("Conditional pass").caps && !mark("Conditional pass").signal);
  EXPECT_TRUE(mark("Conditional fail").hollow && mark("Conditional fail").signal);
  EXPECT_TRUE(!mark("Fail").hollow && mark("Fail").caps && mark("Fail").signal);
  EXPECT_EQ(mark("Undetermined, range known").state, LaneMark::State::kUndetermined);
  EXPECT_TRUE(mark("Undetermined, range known").range);
  EXPECT_EQ(mark("Not reached").state, LaneMark::State::kNotReached);
  EXPECT_TRUE(mark("Not reached").signal);
  EXPECT_TRUE(mark("At least, log cut short").atLeast);
  EXPECT_TRUE(mark("Informative, over the limit").hollow && !mark("Informative, over the limit").signal);
  EXPECT_TRUE(table.lanes.back().neverPasses);
  EXPECT_EQ(table.lanes.back().note, "cannot pass as guarded");
}

// A body that a joint window and a part window bind is one thermocouple on one track: the worse result is shown.
TEST(LaneTable, TwoWindowsOnOneThermocoupleShareTheLane) {
  samples::JudgementBuilder builder;
  builder.add("peak", samples::peak(), Unit::kCelsius, {{247, 2, 235, 250, {}}, {241, 2, 235, 250, {}}});
  builder.add("body peak", samples::peak(), Unit::kCelsius, {{247, 2, {}, 245, 240}});
  const LaneTable table = laneTable(builder.judgement(), samples::channels(2));
  ASSERT_EQ(table.lanes.size(), 1u);
  EXPECT_EQ(table.lanes[0].title, "Peak");
  ASSERT_EQ(table.lanes[0].marks.size(), 2u);
  EXPECT_EQ(table.lanes[0].marks[0].outcome, 2u);
  EXPECT_TRUE(table.find(2));
  EXPECT_EQ(table.lanes[0].marks[0].covered, std::vector<std::size_t>{0});
  ASSERT_TRUE(table.find(0));
  EXPECT_EQ(table.find(0)->mark, 0u);
  EXPECT_EQ(table.lanes[0].marks[0].tip.count(u'\n'), 1);
}

// A channel that a window names and the log lacks is a result all the same: it has a track of its own, the last.
TEST(LaneTable, AChannelThatTheLogLacksHasATrack) {
  samples::JudgementBuilder builder;
  builder.add("peak", samples::peak(), Unit::kCelsius, {{240, 2, 235, 250, {}}, {std::nullopt, 0, 235, 250, {}}});
  judge::Outcome& lacking = builder.judgement().results[1];
  lacking.channel.reset();
  lacking.trace = lacking.placement = "J9";
  const LaneTable table = laneTable(builder.judgement(), samples::channels(1));
  ASSERT_EQ(table.tracks, 2u);
  ASSERT_EQ(table.lanes[0].marks.size(), 2u);
  EXPECT_EQ(table.lanes[0].marks[1].place, "J9");
  EXPECT_EQ(table.lanes[0].marks[table.lanes[0].worst.mark].place, "J9");
}

TEST(LaneTable, ANoteThatTheNameSaysIsLeftOut) {
  EXPECT_EQ(tern().lanes[2].title, QString::fromUtf8("Time above 217 °C"));
  EXPECT_TRUE(tern().lanes[2].note.isEmpty());
  EXPECT_TRUE(tern().lanes[6].note.isEmpty());  // "25 °C to peak" needs no "from 25 °C"
  EXPECT_EQ(tern().lanes[0].note, "over 5 s");
}

TEST(LaneTable, MarksSayThemselves) {
  const LaneMark& mark = tern().lanes[3].marks[5];
  EXPECT_EQ(mark.tip,
            QString::fromUtf8("Peak, U12 centre: 232.1\u00A0±\u00A02.1\u00A0°C, 2.9 short, margin −39\u202F%, fail"));
  EXPECT_EQ(mark.spoken, QString::fromUtf8("Peak, U12 centre, 232.1 plus or minus 2.1 °C, limits 235 to 250, "
                                           "margin minus 39 percent, fail"));
}

}  // namespace
}  // namespace ovenwright::widgets
