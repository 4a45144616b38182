#include "core/check/attribution.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <map>

#include "core/judge/judge.h"
#include "core/judge/zones.h"
#include "core/window/window_file.h"
#include "tests/unit/judge/simulated.h"

// Shares by the oven model are held against an oven and placements that the model does not know (simulated.h: zones as
// smooth boxes, no radiation, a constant heat capacity, no melting). There each setpoint, and the speed, is really
// moved, the run is made anew and measured, and the changes give the true shares.
namespace ovenwright::check {
namespace {

/// Requirements that no run meets, so that every one is attributed.
constexpr const char* kWindow = R"(
name = "Out of reach"
liquidus_C = 217
source = "invented for this test"
[[requirement]]
name = "peak"
measure = "peak"
lower = 300
upper = 400
applies_to = "all"
[[requirement]]
name = "time above"
measure = "time above"
level = 217
lower = 300
upper = 400
applies_to = "all"
[[requirement]]
name = "soak"
measure = "time between on rise"
T1 = 150
T2 = 200
lower = 300
upper = 400
applies_to = "all"
[[requirement]]
name = "steepest rise"
measure = "steepest rise"
over = 5
lower = 30
upper = 40
applies_to = "all"
[[requirement]]
name = "steepest fall"
measure = "steepest fall"
over = 5
lower = 30
upper = 40
applies_to = "all"
[[requirement]]
name = "cooling"
measure = "mean fall"
T1 = 217
T2 = 187
lower = 30
upper = 40
applies_to = "all"
[[requirement]]
name = "spread of peaks"
measure = "spread of peaks"
upper = 0.1
applies_to = "board"
)";

const std::vector<judge::Placement> kPlacements{{18, 40}, {30, 40}, {42, 40}};

run::Run made(const oven::Oven& oven, const oven::Recipe& recipe, double moved_C = 0, std::size_t zone = 99) {
  run::Run run;
  for (std::size_t i = 0; i < kPlacements.size(); ++i) {
    auto channel = judge::simulate(oven, recipe, kPlacements[i], moved_C, zone);
    channel.name = "TC" + std::to_string(i + 1);
    channel.number = static_cast<int>(i + 1);
    run.channels.push_back(std::move(channel));
  }
  run.to_s = run.channels.front().trace->time_s().back();
  run.sample_interval_s = 0.5;
  return run;
}

judge::Judgement judged(const run::Run& run, const measure::Place& place) {
  auto window = window::parse("window.toml", kWindow);
  EXPECT_TRUE(window) << window.error().text();
  return judge::judge(run, {*window}, false, nullptr, place);
}

measure::Place place_in(const oven::Oven& oven, const oven::Recipe& recipe) {
  measure::Place place;
  place.oven = &oven;
  place.recipe = &recipe;
  place.entry = {10, 0.6, oven::Entry::Source::kLog};
  return place;
}

/// As a logger with steps of `step_C` has it.
run::Run in_steps(run::Run run, double step_C) {
  for (auto& channel : run.channels) {
    std::vector<double> T;
    for (const double exact : channel.trace->temperature_C()) T.push_back(step_C * std::round(exact / step_C));
    channel.trace = *run::Trace::make(channel.trace->clock(), std::move(T));
  }
  return run;
}

class Attribution : public testing::TestWithParam<double> {};

// Tolerances: the zone named first must truly have at least 0.8 of the largest share, and at most 0.15 of the shares
// may stand at a wrong zone (of the first estimate 0.25); the speed's share to 0.1. A log in whole steps must not tell
// other zones because some of its samples are right on a level.
TEST_P(Attribution, NamesTheZonesAndTheSpeedThatMovingThemShows) {
  const auto oven = judge::ten_zones();
  const auto recipe = judge::recipe_of(judge::kSetpoints);
  const auto exact = made(oven, recipe);
  const auto place = place_in(oven, recipe);
  const auto exactly = judged(exact, place);
  const auto run = GetParam() > 0 ? in_steps(exact, GetParam()) : exact;
  auto judgement = judged(run, place);
  ASSERT_EQ(judgement.all_size(), 19U);

  std::vector<std::vector<double>> truth(judgement.all_size());
  const auto measure_moved = [&](const run::Run& moved) {
    const auto again = judged(moved, place);
    for (std::size_t i = 0; i < truth.size(); ++i)
      truth[i].push_back(std::abs(*again.all(i).value.value - *exactly.all(i).value.value));
  };
  for (std::size_t z = 0; z < oven.zones.size(); ++z) measure_moved(made(oven, recipe, 3, z));
  auto faster = recipe;
  faster.speed_mm_per_min += 9;  // counts like 3 °C
  measure_moved(made(oven, faster));

  const Setting setting{nullptr, &oven, &recipe, {}};
  const auto note = attribute(run, setting, place, judgement);
  EXPECT_TRUE(note.starts_with("zones are by the oven model")) << note;
  for (std::size_t i = 0; i < truth.size(); ++i) {
    const auto& outcome = judgement.all(i);
    const std::string name = outcome.requirement_name + " of " + outcome.trace;
    double zones = 0, total = 0, wrong = 0;
    for (std::size_t z = 0; z < oven.zones.size(); ++z) zones += truth[i][z];
    std::map<std::string, double> shares;
    for (const auto& share : outcome.zone_shares) {
      EXPECT_FALSE(share.side) << name;  // both sides are set alike, so nothing tells them apart
      shares[share.zone] += share.share;
      total += share.share;
    }
    EXPECT_NEAR(total, 1, 1e-12) << name;
    std::string seen = name + "\n", first;
    for (std::size_t z = 0; z < oven.zones.size(); ++z) {
      const auto& zone = oven.zones[z].name;
      if (first.empty() || shares[zone] > shares[first]) first = zone;
      wrong += std::abs(shares[zone] - truth[i][z] / zones) / 2;
      seen += zone + " " + std::to_string(shares[zone]) + " " + std::to_string(truth[i][z] / zones) + "\n";
    }
    const auto at = std::ranges::find(oven.zones, first, &oven::Zone::name) - oven.zones.begin();
    const double most = *std::max_element(truth[i].begin(), truth[i].end() - 1);
    EXPECT_GE(truth[i][static_cast<std::size_t>(at)], 0.8 * most) << seen;
    EXPECT_LE(wrong, 0.15) << seen;
    ASSERT_TRUE(outcome.speed_share) << name;
    EXPECT_NEAR(*outcome.speed_share, truth[i].back() / (zones + truth[i].back()), 0.1) << seen;
  }
}

INSTANTIATE_TEST_SUITE_P(Steps, Attribution, testing::Values(0.0, 0.1, 0.5), [](const auto& c) {
  return "of_" + std::to_string(static_cast<int>(c.param * 1000)) + "_mK";
});

// Source: the rule that a bad fit is never used. The log is of another recipe: its last zones were 60 °C hotter.
TEST(AttributionNote, LeavesTheFirstEstimateWhereTheModelDoesNotFit) {
  const auto oven = judge::ten_zones();
  auto recipe = judge::recipe_of(judge::kSetpoints);
  const auto run = made(oven, recipe);
  for (std::size_t z = 0; z < 10; ++z) recipe.top_C[z] = recipe.bottom_C[z] = z % 2 ? 120 : 240;
  const auto place = place_in(oven, recipe);
  auto judgement = judged(run, place);
  const auto before = judgement.results.front().zone_shares;
  const auto note = attribute(run, {nullptr, &oven, &recipe, {}}, place, judgement);
  EXPECT_TRUE(note.starts_with("zones are a first estimate")) << note;
  EXPECT_FALSE(judgement.results.front().speed_share);
  ASSERT_EQ(judgement.results.front().zone_shares.size(), before.size());
  for (std::size_t i = 0; i < before.size(); ++i)
    EXPECT_EQ(judgement.results.front().zone_shares[i].share, before[i].share);
}

TEST(AttributionNote, SaysNothingWhereNothingIsOut) {
  const auto oven = judge::ten_zones();
  const auto recipe = judge::recipe_of(judge::kSetpoints);
  const auto run = made(oven, recipe);
  const auto place = place_in(oven, recipe);
  auto judgement = judged(run, place);
  for (auto& outcome : judgement.results) outcome.verdict = judge::Verdict::kPass;
  for (auto& outcome : judgement.board_results) outcome.verdict = judge::Verdict::kPass;
  EXPECT_EQ(attribute(run, {nullptr, &oven, &recipe, {}}, place, judgement), "");
}

}  // namespace
}  // namespace ovenwright::check
