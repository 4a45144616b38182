#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "core/clean/clean.h"
#include "tests/unit/clean/made_log.h"

namespace ovenwright::clean {
namespace {

using testing::ElementsAre;
using testing::IsEmpty;
using testing::SizeIs;

/// Bodies of one mass, T' = (A − T)/τ, in the air of ten zones that follow each other every 28 s within 3 s, and of the
/// room afterwards; noise of 0.1 °C.
MadeLog bodies(const std::vector<double>& time_constants_s) {
  MadeLog log(0.5, 400);
  log.temperature_C.clear();
  std::mt19937 random(3);
  std::normal_distribution<double> noise(0, 0.1);
  constexpr double kZones_C[] = {25, 140, 150, 160, 170, 180, 195, 215, 240, 255, 255, 70};
  for (const double tau_s : time_constants_s) {
    double T = 25, air_C = 25;
    auto& column = log.temperature_C.emplace_back();
    for (const double t : log.time_s) {
      column.push_back(std::round((T + noise(random)) * 10) / 10);
      const double zone_C = kZones_C[std::min(static_cast<std::size_t>(t / 28), std::size(kZones_C) - 1)];
      for (int i = 0; i < 10; ++i) {
        air_C += 0.05 * (zone_C - air_C) / 3;
        T += 0.05 * (air_C - T) / tau_s;
      }
    }
  }
  return log;
}

board::Board board_of(const std::vector<std::pair<const char*, double>>& parts_g) {
  board::Board board;
  for (std::size_t k = 0; k < parts_g.size(); ++k) {
    board::Placement placement;
    placement.channel = "TC" + std::to_string(k + 1);
    placement.part = parts_g[k].first;
    board.placements.push_back(placement);
    board::Part part;
    part.name = parts_g[k].first;
    part.mass_g = parts_g[k].second;
    board.parts.push_back(part);
  }
  return board;
}

std::vector<std::string> found(const MadeLog& log, const board::Board* board = nullptr) {
  const auto runs = clean(log.channels(), {board, {}});
  EXPECT_TRUE(runs) << runs.error().message;
  return runs ? faults_of((*runs)[0]) : std::vector<std::string>{};
}

// The time constants of an array package's centre, a connector, a leaded part and a 1 mm chip, which leads honestly.
TEST(CleanSuspects, SmallPartsLeadHonestly) { EXPECT_THAT(found(bodies({60, 45, 35, 22})), IsEmpty()); }

TEST(CleanSuspects, ABeadInTheAirIsSuspectedAndLeftIn) {
  const auto log = bodies({60, 45, 1.5, 22});
  const auto runs = clean(log.channels());
  ASSERT_TRUE(runs);
  const auto& channel = (*runs)[0].channels[2];
  ASSERT_EQ(channel.faults.size(), 1U);
  EXPECT_EQ(channel.faults[0].kind, run::FaultKind::kDetached);
  EXPECT_EQ(channel.faults[0].action, run::FaultAction::kFlagged);
  EXPECT_EQ(channel.trace->size(), log.time_s.size());
  EXPECT_EQ(faults_of((*runs)[0]).size(), 1U);
}

TEST(CleanSuspects, AThermocoupleMeantForTheAirIsNotDetached) {
  const auto log = bodies({60, 45, 1.5, 22});
  auto board = board_of({{"U1", 5}, {"J1", 5}, {"R1", 5}, {"Q1", 5}});
  board.placements[2].kind = board::Kind::kAir;
  EXPECT_THAT(found(log, &board), IsEmpty());
  for (const char* name : {"Air", "TC3 air", "Zone_AIR_2", "Luft oben", "空气"}) {
    auto channels = log.channels();
    channels[2].name = name;
    const auto runs = clean(std::move(channels));
    ASSERT_TRUE(runs);
    EXPECT_THAT(faults_of((*runs)[0]), IsEmpty()) << name;
  }
  auto channels = log.channels();
  channels[2].name = "Repair";
  EXPECT_FALSE(faults_of((*clean(std::move(channels)))[0]).empty());
}

// A part of 12 g that answers faster than one of 1 mg: the two cables were swapped, or the board file is wrong.
TEST(CleanSuspects, SwappedPlacementsShowInTheOrderOfMasses) {
  const auto log = bodies({60, 22, 45, 35});
  const auto right = board_of({{"U12", 12}, {"R118", 0.001}, {"J4", 14}, {"D7", 0.3}});
  EXPECT_THAT(found(log, &right), IsEmpty());
  const auto wrong = board_of({{"R118", 0.001}, {"U12", 12}, {"J4", 14}, {"D7", 0.3}});
  EXPECT_THAT(found(log, &wrong),
              ElementsAre("TC1 swapped placement 0.0 400.0 flagged", "TC2 swapped placement 0.0 400.0 flagged"));
  const auto unknown = board_of({{"R118", 0.001}, {"U12", 0.002}, {"J4", 0.003}, {"D7", 0.004}});
  EXPECT_THAT(found(log, &unknown), IsEmpty()) << "masses too near each other say nothing";
}

// A bottom-side joint in a wave answers faster than a light part on top: no reason to suspect a swap.
TEST(CleanSuspects, PlacementsOnDifferentSidesAreNotCompared) {
  const auto log = bodies({60, 22, 45, 35});
  auto board = board_of({{"R118", 0.001}, {"U12", 12}, {"J4", 14}, {"D7", 0.3}});
  for (auto& placement : board.placements) placement.side = board::Side::kTop;
  for (auto& part : board.parts) {
    if (part.name == "J4" || part.name == "D7") part.mass_g.reset();
  }
  EXPECT_THAT(found(log, &board), SizeIs(2));
  board.placements[1].side = board::Side::kBottom;
  EXPECT_THAT(found(log, &board), IsEmpty());
}

}  // namespace
}  // namespace ovenwright::clean
