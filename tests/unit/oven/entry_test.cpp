#include "core/oven/entry.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <string>

#include "core/board/board_file.h"
#include "core/clean/clean.h"
#include "core/log/reading.h"
#include "core/oven/oven_file.h"

namespace ovenwright::oven {
namespace {

/// Four heated zones of 300 mm behind a tunnel of 250 mm.
Oven made_oven() {
  Oven oven;
  oven.entrance_mm = 250;
  oven.exit_mm = 300;
  for (const char* name : {"1", "2", "3", "4"}) oven.zones.push_back({name, ZoneKind::kHeat, 300, 25});
  return oven;
}

Recipe made_recipe(double speed_mm_per_min = 720) {
  Recipe recipe;
  recipe.speed_mm_per_min = speed_mm_per_min;
  recipe.top_C = recipe.bottom_C = {130, 150, 180, 240};
  return recipe;
}

struct MadePlacement {
  const char* name;
  double x_mm, tau_s;
};
constexpr MadePlacement kPlacements[] = {{"A", 20, 25}, {"B", 90, 60}, {"C", 160, 40}, {"D", 210, 100}};

/// Bodies of one mass, T' = (A − T)/τ, in air that is ambient before the first zone and at the setpoint in each: the
/// textbook case, with a kink exactly at the zone's edge. The leading edge enters `entry_s` after the first sample.
run::Run made_run(double entry_s, double interval_s = 0.5, const Recipe& recipe = made_recipe()) {
  const auto oven = made_oven();
  const double end_s = 150;
  std::vector<double> time_s;
  for (std::size_t i = 0; static_cast<double>(i) * interval_s <= end_s; ++i)
    time_s.push_back(static_cast<double>(i) * interval_s);
  const auto clock = *run::Clock::make(time_s);
  run::Run run;
  run.sample_interval_s = interval_s;
  run.from_s = time_s.front();
  run.to_s = time_s.back();
  for (const auto& placement : kPlacements) {
    double T = 25, next_s = 0;
    std::vector<double> temperature_C;
    for (double t = 0; temperature_C.size() < time_s.size(); t += 0.01) {
      if (t >= next_s - 1e-6) {
        temperature_C.push_back(std::round(T * 10) / 10);
        next_s += interval_s;
      }
      const double position_mm = recipe.speed_mm_per_min / 60 * (t - entry_s) - placement.x_mm;
      double air_C = 25;
      for (std::size_t zone = 0; zone < 4; ++zone)
        if (position_mm >= oven.zone_start_mm(zone)) air_C = recipe.top_C[zone];
      T += 0.01 * (air_C - T) / placement.tau_s;
    }
    run::Channel channel;
    channel.name = placement.name;
    channel.number = static_cast<int>(run.channels.size()) + 1;
    channel.trace = *run::Trace::make(clock, std::move(temperature_C));
    run.channels.push_back(std::move(channel));
  }
  return run;
}

board::Board made_board() {
  board::Board board;
  for (const auto& placement : kPlacements) {
    board::Placement on_board;
    on_board.channel = placement.name;
    on_board.x_mm = placement.x_mm;
    board.placements.push_back(on_board);
  }
  return board;
}

// Source: the model above has its kinks at the zone's edge by construction. Tolerance: the half second that beads take
// in a real log and these bodies do not, half a second for the means over whole seconds.
TEST(Entry, IsFoundWhereTheFirstZoneBegins) {
  const auto board = made_board();
  for (const double interval_s : {0.1, 0.5, 1.0, 2.0}) {
    const auto entry = find_entry(made_run(14.3, interval_s), made_oven(), made_recipe(), &board);
    ASSERT_TRUE(entry) << interval_s;
    EXPECT_NEAR(entry->at_s, 14.3, 1.0) << interval_s;
    EXPECT_GT(entry->uncertainty_s, 1.0);
    EXPECT_LT(entry->uncertainty_s, 2.5);
    EXPECT_EQ(entry->found_from, Entry::Source::kLog);
  }
}

// A first zone that is hardly warm: the step into the second is larger than that into the first, and so is the bend.
TEST(Entry, IsNotFoundAtAHotterZoneBehindAColdFirst) {
  auto recipe = made_recipe();
  recipe.top_C = recipe.bottom_C = {76, 132, 180, 240};
  const auto board = made_board();
  const auto entry = find_entry(made_run(12, 0.5, recipe), made_oven(), recipe, &board);
  ASSERT_TRUE(entry);
  EXPECT_NEAR(entry->at_s, 12, entry->uncertainty_s);
}

// First zones that are hardly warm, each a step of its own: the bends at all of them tell which is which.
TEST(Entry, IsToldFromTheBendsAtAllOfTheFirstZones) {
  const auto board = made_board();
  for (const auto& top_C : {std::vector<double>{59, 70, 97, 240}, {45, 150, 180, 240}, {60, 62, 150, 240}}) {
    auto recipe = made_recipe();
    recipe.top_C = recipe.bottom_C = top_C;
    const auto entry = find_entry(made_run(12, 0.5, recipe), made_oven(), recipe, &board);
    ASSERT_TRUE(entry) << top_C[1];
    EXPECT_NEAR(entry->at_s, 12, entry->uncertainty_s) << top_C[1];
  }
}

TEST(Entry, MayLieBeforeTheLogsFirstSample) {
  const auto board = made_board();
  const auto entry = find_entry(made_run(-8), made_oven(), made_recipe(), &board);
  ASSERT_TRUE(entry);
  EXPECT_NEAR(entry->at_s, -8, 1.0);
}

TEST(Entry, MovesWithTheClockAndNotWithTheOrderOfChannels) {
  const auto board = made_board();
  const auto here = find_entry(made_run(14.3), made_oven(), made_recipe(), &board);
  auto shifted = made_run(14.3);
  std::vector<double> time_s(shifted.channels[0].trace->time_s().begin(), shifted.channels[0].trace->time_s().end());
  for (double& t : time_s) t += 1024;
  const auto clock = *run::Clock::make(time_s);
  for (auto& channel : shifted.channels) {
    const auto T = channel.trace->temperature_C();
    channel.trace = *run::Trace::make(clock, {T.begin(), T.end()});
  }
  const auto later = find_entry(shifted, made_oven(), made_recipe(), &board);
  ASSERT_TRUE(here && later);
  EXPECT_NEAR(later->at_s - here->at_s, 1024, 1e-6);
  auto turned = made_run(14.3);
  std::ranges::reverse(turned.channels);
  const auto reversed = find_entry(turned, made_oven(), made_recipe(), &board);
  ASSERT_TRUE(reversed);
  EXPECT_NEAR(reversed->at_s, here->at_s, 1e-9);
}

// Without places the four lie evenly on the board: the first at a third of (210 − 20) mm, 63 mm, behind the edge where
// 20 mm are true. The uncertainty must own up to the difference of 3.6 s.
TEST(Entry, WithoutABoardIsLessSure) {
  const auto entry = find_entry(made_run(14.3), made_oven(), made_recipe(), nullptr);
  ASSERT_TRUE(entry);
  EXPECT_NEAR(entry->at_s, 14.3 - (190.0 / 3 - 20) / 12, 1.5);
  EXPECT_GT(entry->uncertainty_s, 5);
}

TEST(Entry, LeavesOutAirAndPlacementsWithoutAPlace) {
  auto board = made_board();
  board.placements[0].kind = board::Kind::kAir;
  board.placements[1].x_mm.reset();
  auto run = made_run(14.3);
  const auto entry = find_entry(run, made_oven(), made_recipe(), &board);
  ASSERT_TRUE(entry);
  EXPECT_NEAR(entry->at_s, 14.3, 1.0);
}

TEST(Entry, IsNotMadeUp) {
  const auto board = made_board();
  const auto oven = made_oven();
  const auto recipe = made_recipe();
  EXPECT_FALSE(find_entry(run::Run{}, oven, recipe, &board));
  EXPECT_FALSE(find_entry(made_run(500), oven, recipe, &board)) << "the board never enters";
  EXPECT_FALSE(find_entry(made_run(-60), oven, recipe, &board)) << "the log begins inside the oven";
  auto still = recipe;
  still.speed_mm_per_min = 0;
  EXPECT_FALSE(find_entry(made_run(14.3), oven, still, &board));
  Oven cold = oven;
  for (auto& zone : cold.zones) zone.kind = ZoneKind::kCool;
  EXPECT_FALSE(find_entry(made_run(14.3), cold, recipe, &board));
}

struct Demo {
  const char *name, *log, *board, *recipe;
  double entry_s;
};
void PrintTo(const Demo& demo, std::ostream* os) { *os << demo.name; }
class DemoEntry : public testing::TestWithParam<Demo> {};

// Source: scripts/make_demo.py sends the boards in at these moments. Its ovens are not made by the model above.
TEST_P(DemoEntry, IsWithinItsUncertainty) {
  const std::string folder = OVENWRIGHT_PROFILES "/demo/";
  const auto reading = log::read(folder + GetParam().log);
  ASSERT_TRUE(reading) << reading.error().text();
  const auto runs = clean::clean(reading->channels);
  ASSERT_TRUE(runs) << runs.error().text();
  ASSERT_EQ(runs->size(), 1U);
  const auto oven = load_oven(folder + "oven.toml");
  const auto recipe = load_recipe(folder + GetParam().recipe);
  const auto board = board::load(folder + GetParam().board);
  ASSERT_TRUE(oven && recipe && board);
  const auto entry = find_entry((*runs)[0], *oven, *recipe, &*board);
  ASSERT_TRUE(entry);
  EXPECT_NEAR(entry->at_s, GetParam().entry_s, entry->uncertainty_s);
  EXPECT_LT(entry->uncertainty_s, 2);
}
INSTANTIATE_TEST_SUITE_P(Logs, DemoEntry,
                         testing::Values(Demo{"run1", "tern_run1.csv", "board.toml", "recipe.toml", 3.4},
                                         Demo{"run2", "tern_run2.csv", "board.toml", "recipe_rev8.toml", 8.2},
                                         Demo{"second_side", "tern_second_side.txt", "board_second_side.toml",
                                              "recipe_second_side.toml", 12.6},
                                         Demo{"faults", "tern_faults.txt", "board_with_air.toml", "recipe_rev8.toml",
                                              9.0}),
                         [](const auto& c) { return std::string{c.param.name}; });

}  // namespace
}  // namespace ovenwright::oven
