#include "core/judge/judge.h"

#include <gtest/gtest.h>

#include <algorithm>

#include "tests/unit/judge/simulated.h"

namespace ovenwright::judge {
namespace {

using measure::Measure;
using window::AppliesTo;
using window::DecisionRule;

window::Requirement requirement(const char* name, Measure measure, std::optional<double> lower,
                                std::optional<double> upper) {
  window::Requirement one;
  one.name = name;
  one.measure.measure = measure;
  if (lower) one.lower = *lower;
  if (upper) one.upper = *upper;
  one.lower_source = "lower note";
  one.upper_source = "upper note";
  if (measure == Measure::kTimeBetweenOnRise) one.measure.parameters.T1 = 150.0, one.measure.parameters.T2 = 200.0;
  if (measure::describe(measure).board) {
    one.applies_to.kind = AppliesTo::Kind::kBoard;
    if (measure == Measure::kLag) one.measure.parameters.level = 217;
  }
  return one;
}

/// Limits that the simulated board meets in part: its heavy placement peaks near 242, its light one near 251.
window::ProcessWindow general() {
  window::ProcessWindow one;
  one.identity.name = "general";
  one.liquidus_C = 217;
  one.classification = window::Classification::kLeadFree;
  one.requirements = {
      requirement("rise", Measure::kSteepestRise, {}, 3),     requirement("soak", Measure::kTimeBetweenOnRise, 60, 120),
      requirement("time above", Measure::kTimeAbove, 45, 90), requirement("peak", Measure::kPeak, 235, 250),
      requirement("once", Measure::kExcursionsAbove, {}, 1),  requirement("lag", Measure::kLag, {}, 50),
      requirement("spread", Measure::kSpreadOfPeaks, {}, 5)};
  one.requirements.back().required = false;
  return one;
}

class JudgeRun : public testing::Test {
 protected:
  JudgeRun() {
    for (const double tau_s : {18.0, 24.0, 38.0}) {
      run_.channels.push_back(simulate(oven_, recipe_, {tau_s, 40}));
      run_.channels.back().name = "TC" + std::to_string(run_.channels.size());
      run_.channels.back().number = static_cast<int>(run_.channels.size());
    }
    run_.to_s = 420;
    place_.oven = &oven_;
    place_.recipe = &recipe_;
    place_.entry.at_s = 10;
  }

  Judgement judged(const window::ProcessWindow& window, const board::Board* board = nullptr) const {
    return judge(run_, {window}, false, board, place_);
  }
  static const Outcome& find(const Judgement& all, const std::string& name, const std::string& trace) {
    for (std::size_t i = 0; i < all.all_size(); ++i)
      if (all.all(i).requirement_name == name && all.all(i).trace == trace) return all.all(i);
    ADD_FAILURE() << name << " " << trace;
    return all.all(0);
  }

  oven::Oven oven_ = ten_zones();
  oven::Recipe recipe_ = recipe_of(kSetpoints);
  run::Run run_;
  measure::Place place_;
};

// Source: what each limit guards: a joint that never melts is no short lag, joints of the first side must not melt
// again at the wave, and at a wave there is no paste that slumps.
TEST_F(JudgeRun, TheRiskIsThatOfWhatWentWrong) {
  auto window = general();
  window.requirements = {requirement("lag", Measure::kLag, {}, 50), requirement("soak", Measure::kMeanRise, {}, 3)};
  window.requirements[0].measure.parameters.level = 270;  // above every peak of this board
  window.requirements[1].measure.parameters.T1 = 265.0;
  window.requirements[1].measure.parameters.T2 = 270.0;
  const auto never = judged(window);
  ASSERT_EQ(never.board_results.size(), 1u);  // the lag
  ASSERT_EQ(never.results.size(), 3u);        // the soak of each trace
  for (const auto& outcome : never.board_results) EXPECT_NE(outcome.risk.find("melt only in part"), outcome.risk.npos);
  for (const auto& outcome : never.results) EXPECT_NE(outcome.risk.find("melt only in part"), outcome.risk.npos);

  window.process = window::Process::kWave;
  window.solidus_C = 217;
  window.requirements = {requirement("top side", Measure::kPeak, {}, 217), requirement("peak", Measure::kPeak, {}, 230),
                         requirement("rise", Measure::kSteepestRise, {}, 0.5)};
  window.requirements[0].target = 177.0;
  window.requirements[1].target = 225.0;
  const auto wave = judged(window);
  EXPECT_NE(find(wave, "top side", "TC1").risk.find("melt again"), std::string::npos);
  EXPECT_EQ(find(wave, "peak", "TC1").risk.find("melt again"), std::string::npos);
  EXPECT_NE(find(wave, "rise", "TC1").risk.find("eramic"), std::string::npos);
  EXPECT_EQ(find(wave, "rise", "TC1").risk.find("Paste"), std::string::npos);
}

TEST_F(JudgeRun, EveryOutcomeFollowsFromItsValueAndLimits) {
  const auto all = judged(general());
  ASSERT_EQ(all.results.size(), 15u);
  ASSERT_EQ(all.board_results.size(), 2u);
  Verdict worst = Verdict::kPass;
  double smallest = 1;
  for (std::size_t i = 0; i < all.all_size(); ++i) {
    const auto& outcome = all.all(i);
    ASSERT_TRUE(outcome.value.value) << outcome.requirement_name;
    EXPECT_EQ(outcome.verdict, decide(*outcome.value.value, 0, outcome.lower, outcome.upper, DecisionRule::kSimple));
    EXPECT_EQ(outcome.risk.empty(), !is_out(outcome.verdict));
    EXPECT_EQ(outcome.zone_shares.empty(), !is_out(outcome.verdict));
    if (outcome.required) worst = std::max(worst, outcome.verdict);
    if (outcome.required && outcome.margin) smallest = std::min(smallest, *outcome.margin);
  }
  EXPECT_EQ(all.verdict, worst);
  EXPECT_EQ(all.margin, smallest);
  EXPECT_EQ(find(all, "peak", "TC1").verdict, Verdict::kFail);
  EXPECT_EQ(find(all, "peak", "TC1").source, "upper note");
  EXPECT_EQ(find(all, "once", "TC1").value.value, 1);
}

// Property: the order of channels in the log changes neither verdict nor margin, nor any result.
TEST_F(JudgeRun, ChannelOrderDoesNotMatter) {
  const auto all = judged(general());
  std::ranges::reverse(run_.channels);
  const auto reversed = judged(general());
  EXPECT_EQ(reversed.verdict, all.verdict);
  EXPECT_EQ(reversed.margin, all.margin);
  for (const auto& outcome : all.results) {
    const auto& other = find(reversed, outcome.requirement_name, outcome.trace);
    EXPECT_EQ(other.value.value, outcome.value.value);
    EXPECT_EQ(other.zones, outcome.zones);
  }
}

// Property: a log whose clock starts elsewhere is the same run.
TEST_F(JudgeRun, TheClocksZeroDoesNotMatter) {
  const auto all = judged(general());
  for (auto& channel : run_.channels) {
    const auto t = channel.trace->time_s();
    const auto T = channel.trace->temperature_C();
    std::vector<double> later(t.begin(), t.end());
    for (double& s : later) s += 4096;  // keeps every sum exact in binary
    channel.trace = *run::Trace::make(*run::Clock::make(later), {T.begin(), T.end()});
    channel.removed_start_to_s += 4096;
    channel.removed_end_from_s += 4096;
  }
  place_.entry.at_s += 4096;
  const auto shifted = judged(general());
  EXPECT_EQ(shifted.verdict, all.verdict);
  EXPECT_NEAR(*shifted.margin, *all.margin, 1e-9);
  EXPECT_EQ(shifted.sentence.text, all.sentence.text);
}

TEST_F(JudgeRun, EachWindowHasItsOwnLiquidusRuleAndUncertainty) {
  auto guarded = general();
  guarded.decision_rule = DecisionRule::kGuarded;
  guarded.liquidus_C = 183;
  guarded.uncertainty.instrument_C = 3;
  const auto all = judge(run_, {general(), guarded}, false, nullptr, place_);
  ASSERT_EQ(all.results.size(), 30u);
  const auto of = [&](std::size_t window, const char* name, std::size_t channel) -> const Outcome& {
    return *std::ranges::find_if(all.results, [&](const Outcome& outcome) {
      return outcome.window == window && outcome.requirement_name == name && outcome.channel == channel;
    });
  };
  EXPECT_EQ(of(0, "time above", 2).measure.parameters.level, 217);
  EXPECT_EQ(of(1, "time above", 2).measure.parameters.level, 183);
  EXPECT_GT(*of(1, "time above", 2).value.value, *of(0, "time above", 2).value.value);
  EXPECT_GT(*of(1, "peak", 0).value.expanded_uncertainty, *of(0, "peak", 0).value.expanded_uncertainty);
  for (std::size_t channel = 0; channel < 3; ++channel) {
    const auto& simple = of(0, "peak", channel);
    const auto& guard = of(1, "peak", channel);
    EXPECT_EQ(simple.verdict, decide(*simple.value.value, 0, 235, 250, DecisionRule::kSimple));
    EXPECT_EQ(guard.verdict,
              decide(*guard.value.value, *guard.value.expanded_uncertainty, 235, 250, DecisionRule::kGuarded));
  }
}

// Source: J-STD-020E, Table 4-2: 2.0 mm and 1500 mm³ give 250 °C, 3.0 mm and 1500 mm³ 245 °C.
TEST_F(JudgeRun, TcLimitsBodiesByTheirPart) {
  auto window = general();
  window.requirements = {requirement("peak", Measure::kPeak, 230, {})};
  window.requirements[0].upper = window::TcOffset{};
  board::Board board;
  board.placements.resize(3);
  board.parts.resize(2);
  for (std::size_t i = 0; i < 3; ++i) {
    board.placements[i].channel = "TC" + std::to_string(i + 1);
    board.placements[i].kind = board::Kind::kBody;
  }
  board.placements[2].kind = board::Kind::kJoint;
  board.placements[0].part = board.placements[2].part = "U1";
  board.placements[1].part = "U2";
  board.parts[0].name = "U1";
  board.parts[0].package_thickness_mm = 2.0;
  board.parts[0].package_volume_mm3 = 1500;
  board.parts[1].name = "U2";
  auto all = judged(window, &board);
  EXPECT_EQ(find(all, "peak", "TC1").upper, 250);
  EXPECT_EQ(find(all, "peak", "TC2").verdict, Verdict::kUndetermined);
  EXPECT_TRUE(find(all, "peak", "TC2").value.value);
  EXPECT_NE(find(all, "peak", "TC2").value.reason.find("thickness and volume of U2"), std::string::npos);
  EXPECT_FALSE(find(all, "peak", "TC3").upper);
  EXPECT_FALSE(all.margin);
  EXPECT_NE(all.sentence.text.find("enter the package thickness and volume of U2"), std::string::npos)
      << all.sentence.text;
  board.parts[1].package_thickness_mm = 3.0;
  board.parts[1].package_volume_mm3 = 1500;
  all = judged(window, &board);
  EXPECT_EQ(find(all, "peak", "TC2").upper, 245);
}

TEST_F(JudgeRun, AThermocoupleOfItsOwnStandsBeforeTheWindows) {
  board::Board board;
  board.placements.resize(1);
  board.placements[0].channel = "TC1";
  board.placements[0].thermocouple = "K class 2";
  const auto all = judged(general(), &board);
  // IEC 60584-1: at 250 °C class 1 is ± 1.5 °C, class 2 ± 2.5 °C; u by half width / sqrt(3). Tolerance: the peak lies
  // within 2 °C of 250, where class 1 is flat and class 2 changes by 0.0075 per °C only above 333 °C.
  EXPECT_NEAR(find(all, "peak", "TC1").value.terms.thermocouple, 2.5 / std::sqrt(3), 1e-9);
  EXPECT_NEAR(find(all, "peak", "TC2").value.terms.thermocouple, 1.5 / std::sqrt(3), 1e-9);
}

TEST_F(JudgeRun, WarnsOnceThatANarrowWindowCannotPass) {
  auto window = general();
  window.decision_rule = DecisionRule::kGuarded;
  window.requirements = {requirement("peak", Measure::kPeak, 243, 246)};
  const auto all = judged(window);
  EXPECT_EQ(std::ranges::count_if(all.warnings, [](const auto& text) { return text.find("guarded") != text.npos; }), 1);
  EXPECT_TRUE(all.results[0].cannot_pass);
  EXPECT_TRUE(std::ranges::none_of(all.results, [](const Outcome& one) { return one.verdict == Verdict::kPass; }));
}

TEST_F(JudgeRun, AllChannelsOpenIsUndetermined) {
  for (auto& channel : run_.channels) {
    channel.trace.reset();
    channel.faults = {{run::FaultKind::kOpen, 0, 420, run::FaultAction::kRemoved, "", {}}};
  }
  const auto all = judged(general());
  EXPECT_EQ(all.verdict, Verdict::kUndetermined);
  EXPECT_FALSE(all.margin);
  EXPECT_NE(all.sentence.text.find("TC1 was open from 0.0 to 420.0 s on the log"), std::string::npos)
      << all.sentence.text;
}

TEST_F(JudgeRun, AReversedThermocoupleIsSuspectedAndHasNoZones) {
  auto& channel = run_.channels[1];
  const auto T = channel.trace->temperature_C();
  std::vector<double> mirrored(T.begin(), T.end());
  for (double& C : mirrored) C = 50 - C;
  channel.trace = *run::Trace::make(channel.trace->clock(), mirrored);
  channel.faults = {{run::FaultKind::kReversedPolarity, 0, 420, run::FaultAction::kFlagged, "", {}}};
  const auto all = judged(general());
  ASSERT_EQ(all.suspicions.size(), 1u);
  EXPECT_EQ(all.suspicions[0].placement, "TC2");
  EXPECT_TRUE(find(all, "peak", "TC2").zone_shares.empty());
  EXPECT_TRUE(all.sentence.text.ends_with(" TC2 falls where a run rises: is it plugged in the wrong way round?"))
      << all.sentence.text;
  EXPECT_EQ(all.sentence.parts.back().link, SentencePart::Link::kFault);
  EXPECT_FALSE(all.sentence.parts.back().outcomes.empty());
}

TEST_F(JudgeRun, WithoutAKnownEntryThereAreNoZones) {
  place_.entry_known = false;
  const auto all = judged(general());
  for (const auto& outcome : all.results) EXPECT_TRUE(outcome.zone_shares.empty());
  EXPECT_EQ(find(all, "peak", "TC1").verdict, Verdict::kFail);
}

TEST_F(JudgeRun, ACutLogIsJudgedAtItsBound) {
  for (auto& channel : run_.channels) {  // cut at 330 s: some are still above the liquidus
    const auto t = channel.trace->time_s();
    const auto T = channel.trace->temperature_C();
    const auto n = static_cast<std::ptrdiff_t>(std::ranges::find_if(t, [](double s) { return s > 330; }) - t.begin());
    channel.trace = *run::Trace::make(*run::Clock::make({t.begin(), t.begin() + n}), {T.begin(), T.begin() + n});
    channel.removed_end_from_s = channel.trace->time_s().back();
  }
  auto window = general();
  window.requirements = {requirement("time above", Measure::kTimeAbove, 20, 300)};
  const auto all = judged(window);
  const auto& cut = find(all, "time above", "TC3");
  ASSERT_TRUE(cut.value.at_least);
  EXPECT_EQ(cut.verdict, Verdict::kUndetermined);
  EXPECT_EQ(cut.cause.kind, Cause::Kind::kLogEndsHot);
  EXPECT_NE(all.sentence.text.find("the log ends before"), std::string::npos) << all.sentence.text;
}

TEST_F(JudgeRun, NamedChannelsThatTheLogLacksNeverPassSilently) {
  auto window = general();
  window.requirements = {requirement("peak", Measure::kPeak, 200, 300)};
  window.requirements[0].applies_to = {AppliesTo::Kind::kChannels, {"TC1", "U9"}};
  const auto all = judged(window);
  EXPECT_EQ(all.verdict, Verdict::kUndetermined);
  EXPECT_EQ(all.sentence.text,
            "Undetermined. 1 of 2 requirements has no value: the log has no channel U9. The other one is met.");
}

TEST_F(JudgeRun, OnlyBodyLimitsWithoutABoardDoNotPass) {
  auto window = general();
  window.requirements = {requirement("peak", Measure::kPeak, {}, 260)};
  window.requirements[0].applies_to.kind = AppliesTo::Kind::kBody;
  const auto all = judged(window);
  EXPECT_EQ(all.verdict, Verdict::kUndetermined);
  EXPECT_EQ(all.sentence.text, "Undetermined. Body limits are not judged: no board says what is a body.");
}

}  // namespace
}  // namespace ovenwright::judge
