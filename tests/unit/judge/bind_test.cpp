#include "core/judge/bind.h"

#include <gtest/gtest.h>

#include <algorithm>

namespace ovenwright::judge {
namespace {

using measure::Measure;
using window::AppliesTo;
using window::Requirement;
using window::TcOffset;

run::Run run_of(const std::vector<std::string>& names) {
  run::Run run;
  for (const auto& name : names) {
    run.channels.emplace_back();
    run.channels.back().name = name;
    run.channels.back().number = static_cast<int>(run.channels.size());
  }
  return run;
}

Requirement peak(AppliesTo::Kind kind, std::optional<window::Limit> lower, std::optional<window::Limit> upper) {
  Requirement one;
  one.name = "peak";
  one.measure.measure = Measure::kPeak;
  one.applies_to.kind = kind;
  one.lower = lower;
  one.upper = upper;
  one.source = "note 14";
  return one;
}

window::ProcessWindow window_of(std::vector<Requirement> requirements) {
  window::ProcessWindow one;
  one.identity.name = "test";
  one.liquidus_C = 217;
  one.classification = window::Classification::kLeadFree;
  one.requirements = std::move(requirements);
  return one;
}

board::Placement placement(const std::string& channel, board::Kind kind, const char* part = nullptr) {
  board::Placement one;
  one.channel = channel;
  one.kind = kind;
  if (part) one.part = part;
  return one;
}

/// TC1 joint of U1, TC2 body of U1 (2.0 mm, 1500 mm³), TC3 body of U2 without a size, TC4 board, TC5 air.
board::Board board_of() {
  board::Board board;
  board.length_mm = 200;
  board.placements = {placement("TC1", board::Kind::kJoint, "U1"), placement("TC2", board::Kind::kBody, "U1"),
                      placement("TC3", board::Kind::kBody, "U2"), placement("TC4", board::Kind::kBoard),
                      placement("TC5", board::Kind::kAir)};
  board.placements[0].label = "U1 corner";
  board.placements[0].x_mm = 30;
  board.parts.resize(2);
  board.parts[0].name = "U1";
  board.parts[0].package_thickness_mm = 2.0;
  board.parts[0].package_volume_mm3 = 1500;
  board.parts[0].side = board::Side::kBottom;
  board.parts[1].name = "U2";
  return board;
}
const std::vector<std::string> kChannels{"TC1", "TC2", "TC3", "TC4", "TC5"};

std::vector<std::string> traces(const Bound& bound) {
  std::vector<std::string> names;
  for (const auto& outcome : bound.results) names.push_back(outcome.trace);
  return names;
}

Bound bind_one(Requirement requirement, const board::Board* board) {
  const std::vector windows{window_of({std::move(requirement)})};
  return bind_requirements(run_of(kChannels), windows, board);
}

TEST(Bind, WithoutABoardEveryTraceIsAJoint) {
  EXPECT_EQ(traces(bind_one(peak(AppliesTo::Kind::kJoint, 235.0, 250.0), nullptr)), kChannels);
  EXPECT_EQ(traces(bind_one(peak(AppliesTo::Kind::kAll, 235.0, 250.0), nullptr)), kChannels);
  const auto body = bind_one(peak(AppliesTo::Kind::kBody, 235.0, 250.0), nullptr);
  EXPECT_TRUE(body.results.empty());
  EXPECT_TRUE(body.bodies_not_judged);
}

TEST(Bind, WithABoardKindsDecide) {
  const auto board = board_of();
  using Names = std::vector<std::string>;
  EXPECT_EQ(traces(bind_one(peak(AppliesTo::Kind::kAll, 235.0, 250.0), &board)), (Names{"TC1", "TC2", "TC3", "TC4"}));
  EXPECT_EQ(traces(bind_one(peak(AppliesTo::Kind::kJoint, 235.0, 250.0), &board)), (Names{"TC1"}));
  const auto body = bind_one(peak(AppliesTo::Kind::kBody, 235.0, 250.0), &board);
  EXPECT_EQ(traces(body), (Names{"TC2", "TC3"}));
  EXPECT_FALSE(body.bodies_not_judged);
}

TEST(Bind, AListBindsByNameElseByNumberAndAMissingOneIsUndetermined) {
  auto requirement = peak(AppliesTo::Kind::kChannels, 235.0, 250.0);
  requirement.applies_to.channels = {"TC4", "2", "TC9"};
  const auto bound = bind_one(requirement, nullptr);
  EXPECT_EQ(traces(bound), (std::vector<std::string>{"TC2", "TC4", "TC9"}));
  const auto& missing = bound.results.back();
  EXPECT_FALSE(missing.channel);
  EXPECT_EQ(missing.value.no_value, measure::NoValue::kUndetermined);
  EXPECT_EQ(missing.cause.kind, Cause::Kind::kNoChannel);
  ASSERT_EQ(bound.warnings.size(), 1u);
}

TEST(Bind, SidesAreThePlacementsElseTheParts) {
  auto requirement = peak(AppliesTo::Kind::kAll, 235.0, 250.0);
  requirement.side = board::Side::kBottom;
  const auto none = bind_one(requirement, nullptr);
  EXPECT_TRUE(none.results.empty());
  EXPECT_TRUE(none.sides_not_judged);
  auto board = board_of();
  board.placements[1].side = board::Side::kTop;  // its own side stands before its part's
  const auto bound = bind_one(requirement, &board);
  EXPECT_EQ(traces(bound), (std::vector<std::string>{"TC1"}));
  EXPECT_FALSE(bound.sides_not_judged);
  EXPECT_EQ(bound.warnings.size(), 2u);  // TC3 and TC4 have no side
}

// Source: J-STD-020E, Table 4-2: 1.6 to 2.5 mm, 350 to 2000 mm³: 250 °C.
TEST(Bind, TcBindsBodiesAlone) {
  const auto board = board_of();
  const auto bound = bind_one(peak(AppliesTo::Kind::kAll, 235.0, TcOffset{-5}), &board);
  ASSERT_EQ(traces(bound), (std::vector<std::string>{"TC1", "TC2", "TC3", "TC4"}));
  EXPECT_EQ(bound.results[0].lower, 235);  // a joint of the same part keeps the window's own limit
  EXPECT_FALSE(bound.results[0].upper);
  EXPECT_FALSE(bound.results[0].tc_C);
  EXPECT_EQ(bound.results[1].upper, 245);
  EXPECT_EQ(bound.results[1].tc_C, 250);
  EXPECT_EQ(bound.results[2].cause.kind, Cause::Kind::kTcUnknown);
  EXPECT_EQ(bound.results[2].cause.detail, "enter the package thickness and volume of U2 in the board file");
  EXPECT_FALSE(bound.results[2].upper);
  EXPECT_FALSE(bound.results[3].upper);
  EXPECT_FALSE(bound.warnings.empty());
}

TEST(Bind, ARequirementWithNothingButTcLeavesJointsOut) {
  const auto board = board_of();
  EXPECT_EQ(traces(bind_one(peak(AppliesTo::Kind::kAll, {}, TcOffset{}), &board)),
            (std::vector<std::string>{"TC2", "TC3"}));
  const auto bare = bind_one(peak(AppliesTo::Kind::kAll, {}, TcOffset{}), nullptr);
  EXPECT_TRUE(bare.results.empty());
  EXPECT_TRUE(bare.bodies_not_judged);
}

TEST(Bind, AReferenceOfTcBecomesANumberForBodiesAndLeavesJointsOut) {
  const auto board = board_of();
  auto requirement = peak(AppliesTo::Kind::kAll, {}, 30.0);
  requirement.measure.measure = Measure::kTimeNearPeak;
  requirement.measure.parameters.reference = measure::TcReference{};
  const auto bound = bind_one(requirement, &board);
  ASSERT_EQ(traces(bound), (std::vector<std::string>{"TC2", "TC3"}));
  EXPECT_EQ(std::get<double>(*bound.results[0].measure.parameters.reference), 250);
  EXPECT_EQ(bound.results[1].cause.kind, Cause::Kind::kTcUnknown);
}

TEST(Bind, ATargetThatTcLeavesOutsideIsDroppedWithAWarning) {
  const auto board = board_of();
  auto requirement = peak(AppliesTo::Kind::kBody, 235.0, TcOffset{});
  requirement.target = 255.0;
  const auto bound = bind_one(requirement, &board);
  EXPECT_FALSE(bound.results[0].target);
  EXPECT_TRUE(std::ranges::any_of(bound.warnings, [](const auto& text) { return text.find("target") != text.npos; }));
}

TEST(Bind, LevelsWithoutOneAreTheWindowsOwnLiquidus) {
  auto requirement = peak(AppliesTo::Kind::kAll, 45.0, 90.0);
  requirement.measure.measure = Measure::kTimeAbove;
  std::vector windows{window_of({requirement}), window_of({requirement})};
  windows[1].liquidus_C = 183;
  const auto bound = bind_requirements(run_of({"TC1"}), windows, nullptr);
  ASSERT_EQ(bound.results.size(), 2u);
  EXPECT_EQ(bound.results[0].measure.parameters.level, 217);
  EXPECT_EQ(bound.results[1].measure.parameters.level, 183);
  EXPECT_EQ(bound.results[1].window, 1u);
}

TEST(Bind, BoardMeasuresBindTheBoardOnce) {
  auto requirement = peak(AppliesTo::Kind::kBoard, {}, 10.0);
  requirement.measure.measure = Measure::kSpreadOfPeaks;
  const auto bound = bind_one(requirement, nullptr);
  EXPECT_TRUE(bound.results.empty());
  ASSERT_EQ(bound.board_results.size(), 1u);
  EXPECT_EQ(bound.board_results[0].trace, "");
  EXPECT_EQ(bound.board_results[0].upper, 10);
}

// measures: contact is a bottom-side measure, so a top-side placement that never meets the wave is not asked for it.
TEST(Bind, WaveContactsLeaveTheTopSideOut) {
  auto board = board_of();
  for (auto& placement : board.placements) placement.side = board::Side::kBottom;
  board.placements[1].side = board::Side::kTop;
  board.placements[3].side.reset();
  auto requirement = peak(AppliesTo::Kind::kAll, {}, 10.0);
  requirement.measure.measure = Measure::kWaveContactTime;
  EXPECT_EQ(traces(bind_one(requirement, &board)), (std::vector<std::string>{"TC1", "TC3", "TC4"}));
  EXPECT_EQ(traces(bind_one(requirement, nullptr)), kChannels);
}

TEST(Bind, OneWarningNamesWhatBindsNothing) {
  board::Board board;
  auto window = window_of({peak(AppliesTo::Kind::kBody, {}, 250.0), peak(AppliesTo::Kind::kBody, {}, 260.0)});
  window.requirements[1].name = "peak again";
  const std::vector windows{window};
  EXPECT_EQ(bind_requirements(run_of(kChannels), windows, &board).warnings,
            (std::vector<std::string>{"the board has no placement that these bind: peak, peak again"}));
}

TEST(SeatOf, IsCalledByTheLabelOnlyWhereTheLogsNameSaysNothing) {
  board::Board board;
  board.placements.resize(1);
  board.placements[0].label = "U1 corner ball";
  const auto name_of = [&](const std::string& channel) {
    board.placements[0].channel = channel;
    return seat_of(run_of({channel}).channels[0], &board).name;
  };
  for (const char* bare : {"TC1", "CH 01", "channel 1", "Temp_1", "1", "T1"})
    EXPECT_EQ(name_of(bare), "U1 corner ball");
  for (const char* own : {"U1 corner", "R118", "Kanal 1 \u00b0", "Air"}) EXPECT_EQ(name_of(own), own);
}

TEST(SeatOf, PositionIsItsOwnElseTheBoardsMiddleElseTheLeadingEdge) {
  const auto run = run_of(kChannels);
  const auto board = board_of();
  EXPECT_EQ(seat_of(run.channels[0], &board).x_mm, 30);
  EXPECT_EQ(seat_of(run.channels[0], &board).name, "U1 corner");
  EXPECT_EQ(seat_of(run.channels[1], &board).x_mm, 100);
  EXPECT_EQ(seat_of(run.channels[1], nullptr).x_mm, 0);
}

}  // namespace
}  // namespace ovenwright::judge
