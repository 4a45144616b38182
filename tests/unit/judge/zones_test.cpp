#include "core/judge/zones.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

#include "core/judge/main_zones.h"
#include "tests/unit/judge/simulated.h"

// The estimate is held against an oven and a placement that it does not know (simulated.h). There a zone is really
// moved by 5 °C, the run is made anew and measured, and the changes give the true shares.
namespace ovenwright::judge {
namespace {

using measure::Definition;
using measure::Measure;

measure::Subject subject_of(const run::Channel& channel) {
  measure::Subject subject;
  subject.channel = &channel;
  return subject;
}

struct Case {
  const char* name;
  Definition definition;
  bool from_peak = false;
};
void PrintTo(const Case& c, std::ostream* os) { *os << c.name; }

Definition of(Measure measure, measure::Parameters parameters = {}) { return {measure, std::move(parameters)}; }
measure::Parameters level(double C) {
  measure::Parameters p;
  p.level = C;
  return p;
}
measure::Parameters between(double T1, double T2) {
  measure::Parameters p;
  p.T1 = T1;
  p.T2 = T2;
  return p;
}
measure::Parameters over(double s) {
  measure::Parameters p;
  p.over = s;
  return p;
}
measure::Parameters fall(double T2) {
  measure::Parameters p;
  p.T1 = measure::OwnPeak{};
  p.T2 = T2;
  return p;
}

measure::Parameters rise(double T1) {
  measure::Parameters p;
  p.T1 = T1;
  p.T2 = measure::OwnPeak{};
  return p;
}
measure::Parameters near_peak() {
  measure::Parameters p;
  p.offset = 5;
  p.reference = measure::OwnPeak{};
  return p;
}

class ZoneShares : public testing::TestWithParam<std::tuple<Case, double>> {};

// Tolerances: the estimate is a first one. The zone it puts first must truly have at least 0.8 of the largest share,
// and no more than a quarter of the shares may stand at the wrong zone. Where the peak's moment counts, which hangs on
// the air's fine structure behind the last heated zone, the true first zone must be among those it names.
TEST_P(ZoneShares, NameTheZonesThatMovingThemShows) {
  const auto& [test, tau_s] = GetParam();
  const auto oven = ten_zones();
  const auto recipe = recipe_of(kSetpoints);
  const Placement placement{tau_s, 40};
  const std::vector definitions{test.definition};
  const auto value_of = [&](const run::Channel& channel) {
    return *measure::evaluate(subject_of(channel), definitions, {})[0].value;
  };
  const auto channel = simulate(oven, recipe, placement);
  const double base = value_of(channel);
  std::vector<double> truth;
  double sum = 0;
  for (std::size_t z = 0; z < oven.zones.size(); ++z) {
    truth.push_back(std::abs(value_of(simulate(oven, recipe, placement, 5, z)) - base));
    sum += truth.back();
  }
  ASSERT_GT(sum, 0);

  measure::Place place;
  place.oven = &oven;
  place.recipe = &recipe;
  place.entry.at_s = 10;
  const auto shares = ZoneEstimate(place).of_trace(subject_of(channel), definitions)[0];
  std::vector<double> estimate(oven.zones.size(), 0.0);
  double total = 0;
  for (const auto& share : shares) {
    EXPECT_FALSE(share.side);
    total += share.share;
    for (std::size_t z = 0; z < oven.zones.size(); ++z)
      if (oven.zones[z].name == share.zone) estimate[z] = share.share;
  }
  EXPECT_NEAR(total, 1, 1e-12);
  double wrong = 0;
  std::string seen;
  for (std::size_t z = 0; z < truth.size(); ++z) {
    wrong += std::abs(estimate[z] - truth[z] / sum) / 2;
    seen += oven.zones[z].name + " " + std::to_string(estimate[z]) + " " + std::to_string(truth[z] / sum) + "\n";
  }
  const auto first = static_cast<std::size_t>(std::ranges::max_element(estimate) - estimate.begin());
  if (test.from_peak) {
    const auto true_first = static_cast<std::size_t>(std::ranges::max_element(truth) - truth.begin());
    EXPECT_GE(estimate[true_first], 0.1) << seen;
    return;
  }
  EXPECT_GE(truth[first], 0.8 * std::ranges::max(truth)) << seen;
  EXPECT_LE(wrong, 0.25) << seen;
}

INSTANTIATE_TEST_SUITE_P(
    LumpedOven, ZoneShares,
    testing::Combine(testing::Values(Case{"peak", of(Measure::kPeak)},
                                     Case{"time_above", of(Measure::kTimeAbove, level(217))},
                                     Case{"area", of(Measure::kAreaAbove, level(217))},
                                     Case{"soak", of(Measure::kTimeBetweenOnRise, between(150, 200))},
                                     Case{"steepest_rise", of(Measure::kSteepestRise, over(5))},
                                     Case{"steepest_fall", of(Measure::kSteepestFall, over(5))},
                                     Case{"mean_fall", of(Measure::kMeanFall, between(210, 150))},
                                     Case{"mean_fall_from_peak", of(Measure::kMeanFall, fall(217)), true},
                                     Case{"mean_rise_to_peak", of(Measure::kMeanRise, rise(217)), true},
                                     Case{"peak_time", of(Measure::kPeakTime, level(25)), true},
                                     Case{"time_near_peak", of(Measure::kTimeNearPeak, near_peak()), true},
                                     Case{"mean_rise", of(Measure::kMeanRise, between(200, 217))}),
                     testing::Values(18.0, 30.0, 42.0)),
    [](const auto& c) {
      return std::string(std::get<0>(c.param).name) + "_tau_" + std::to_string(static_cast<int>(std::get<1>(c.param)));
    });

// A board of a light and a heavy placement: the spread of their peaks hangs on the last zones, their lag on those in
// which the first and the last of them cross the level.
TEST(BoardZoneShares, NameTheZonesThatMovingThemShows) {
  const auto oven = ten_zones();
  const auto recipe = recipe_of(kSetpoints);
  const Placement light{18, 40}, heavy{38, 40};
  const std::vector definitions{of(Measure::kSpreadOfPeaks), of(Measure::kLag, level(217)),
                                of(Measure::kSpreadWhenHottestReaches, level(217))};
  const auto values_of = [&](const run::Channel& a, const run::Channel& b) {
    const std::vector subjects{subject_of(a), subject_of(b)};
    return measure::evaluate_board(subjects, definitions, {});
  };
  const auto a = simulate(oven, recipe, light), b = simulate(oven, recipe, heavy);
  measure::Place place;
  place.oven = &oven;
  place.recipe = &recipe;
  place.entry.at_s = 10;
  const std::vector subjects{subject_of(a), subject_of(b)};
  const auto shares = ZoneEstimate(place).of_board(subjects, definitions);
  const auto base = values_of(a, b);
  std::vector<std::vector<double>> truth(definitions.size());
  for (std::size_t z = 0; z < oven.zones.size(); ++z) {
    const auto moved = values_of(simulate(oven, recipe, light, 5, z), simulate(oven, recipe, heavy, 5, z));
    for (std::size_t d = 0; d < definitions.size(); ++d) truth[d].push_back(std::abs(*moved[d].value - *base[d].value));
  }
  for (std::size_t d = 0; d < definitions.size(); ++d) {
    const auto main = std::ranges::max_element(shares[d], {}, &ZoneShare::share)->zone;
    const auto at = std::ranges::find(oven.zones, main, &oven::Zone::name) - oven.zones.begin();
    EXPECT_GE(truth[d][static_cast<std::size_t>(at)], 0.8 * std::ranges::max(truth[d])) << d << " zone " << main;
  }
}

// Source: exact solution of dT/dt = (A − T)/τ for air that is constant in each zone. A zone passed from t1 to t2 counts
// at t >= t2 with e^(−(t − t2)/τ) − e^(−(t − t1)/τ), the one the placement is in with 1 − e^(−(t − t1)/τ); a level is
// crossed earlier by that over the slope, so its shares are those of the temperature at the crossing.
// Tolerance: the estimate mixes the air over 35 mm, 2.1 s of a τ of 25 s: 2 % inside a zone, 6 % at its edge.
TEST(ZoneShares, AreThoseOfOneMassInZonesOfConstantAir) {
  oven::Oven oven;
  oven.entrance_mm = 0;
  oven.exit_mm = 2000;
  for (int z = 1; z <= 4; ++z) oven.zones.push_back({std::to_string(z), oven::ZoneKind::kHeat, 600, 0});
  oven::Recipe recipe;
  recipe.speed_mm_per_min = 1000;  // 36 s in each zone
  recipe.top_C = recipe.bottom_C = {140, 190, 230, 270};
  constexpr double tau_s = 25, zone_s = 36, entry_s = 20;
  run::Channel channel;
  std::vector<double> time_s, T;
  double at_start = 25;
  for (int z = -1; z <= 5; ++z) {  // before the oven, four zones, behind it
    const double air = z < 0 || z > 3 ? 25 : recipe.top_C[static_cast<std::size_t>(z)];
    const double from_s = z < 0 ? 0 : entry_s + zone_s * z, length_s = z < 0 ? entry_s : zone_s;
    for (double t = 0; t < length_s - 1e-9; t += 0.5) {
      time_s.push_back(from_s + t);
      T.push_back(air + (at_start - air) * std::exp(-t / tau_s));
    }
    at_start = air + (at_start - air) * std::exp(-length_s / tau_s);
  }
  channel.samples = T.size();
  channel.removed_end_from_s = time_s.back();
  channel.trace = *run::Trace::make(*run::Clock::make(time_s), std::move(T));
  measure::Place place;
  place.oven = &oven;
  place.recipe = &recipe;
  place.entry.at_s = entry_s;

  const auto expect = [&](const Definition& definition, double at_s, double tolerance) {
    std::vector<double> weights;
    double sum = 0;
    for (int z = 0; z < 4; ++z) {
      const double t1 = entry_s + zone_s * z, t2 = std::min(t1 + zone_s, at_s);
      weights.push_back(t1 < at_s ? std::exp(-(at_s - t2) / tau_s) - std::exp(-(at_s - t1) / tau_s) : 0);
      sum += weights.back();
    }
    const auto shares = ZoneEstimate(place).of_trace(subject_of(channel), std::vector{definition})[0];
    for (int z = 0; z < 4; ++z) {
      double share = 0;
      for (const auto& one : shares)
        if (one.zone == std::to_string(z + 1)) share += one.share;
      EXPECT_NEAR(share, weights[static_cast<std::size_t>(z)] / sum, tolerance) << "zone " << z + 1;
    }
  };
  measure::Parameters at;
  at.time = entry_s + 2.5 * zone_s;  // the middle of the third zone
  expect(of(Measure::kTemperatureAt, at), *at.time, 0.02);
  expect(of(Measure::kPeak), entry_s + 4 * zone_s, 0.06);
  const auto crossing_s =
      *measure::evaluate(subject_of(channel), std::vector{of(Measure::kMeanRise, between(100, 150))}, {})[0].to_s;
  measure::Parameters crossed;
  crossed.time = crossing_s;
  expect(of(Measure::kTemperatureAt, crossed), crossing_s, 0.03);
}

TEST(ZoneShares, ALevelNeverReachedHangsOnTheZonesOfThePeak) {
  const auto oven = ten_zones();
  const auto recipe = recipe_of(kSetpoints);
  const auto channel = simulate(oven, recipe, {60, 40});
  measure::Place place;
  place.oven = &oven;
  place.recipe = &recipe;
  place.entry.at_s = 10;
  const std::vector definitions{of(Measure::kTimeAbove, level(245)), of(Measure::kPeak)};
  const auto shares = ZoneEstimate(place).of_trace(subject_of(channel), definitions);
  EXPECT_EQ(main_zones(shares[0]), main_zones(shares[1]));
  EXPECT_FALSE(shares[0].empty());
}

TEST(ZoneShares, AreEmptyWhereTheTraceWasNeverInTheOven) {
  const auto oven = ten_zones();
  const auto recipe = recipe_of(kSetpoints);
  const auto channel = simulate(oven, recipe, {30, 40});
  measure::Place place;
  place.oven = &oven;
  place.recipe = &recipe;
  place.entry.at_s = 5000;
  const std::vector definitions{of(Measure::kPeak)};
  EXPECT_TRUE(ZoneEstimate(place).of_trace(subject_of(channel), definitions)[0].empty());
}

// Own rule of the file format: 10 % or more, both sides together.
TEST(MainZones, CountBothSidesTogether) {
  const std::vector<ZoneShare> shares{{"8", board::Side::kTop, 0.06},
                                      {"8", board::Side::kBottom, 0.05},
                                      {"9", board::Side::kTop, 0.09},
                                      {"10", {}, 0.8}};
  EXPECT_EQ(main_zones(shares), (std::vector<std::string>{"8", "10"}));
}

}  // namespace
}  // namespace ovenwright::judge
