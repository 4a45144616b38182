#include "core/heat/model.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

#include "core/heat/identify.h"
#include "core/heat/predict.h"

namespace ovenwright::heat {
namespace {

using M = ParameterMap;

oven::Oven oven_of(const std::vector<double>& lengths_mm, double gap_mm, std::size_t cooling) {
  oven::Oven oven;
  oven.entrance_mm = oven.exit_mm = 300;
  for (std::size_t z = 0; z < lengths_mm.size(); ++z)
    oven.zones.push_back({std::to_string(z + 1),
                          z + cooling < lengths_mm.size() ? oven::ZoneKind::kHeat : oven::ZoneKind::kCool,
                          lengths_mm[z], gap_mm});
  return oven;
}

oven::Recipe recipe_of(std::vector<double> setpoints_C, std::vector<double> cooling_C, double speed_mm_per_min) {
  oven::Recipe recipe;
  recipe.top_C = recipe.bottom_C = std::move(setpoints_C);
  recipe.cooling_C = std::move(cooling_C);
  recipe.speed_mm_per_min = speed_mm_per_min;
  return recipe;
}

/// One placement on one run whose parameters are set to pure convection of one mass with the given time constant.
struct Lumped {
  Problem problem;
  std::vector<double> theta;
  Drive drive;
  Lumped(oven::Oven oven, oven::Recipe recipe, double tau_s, double start_C, double ambient_C, double end_s) {
    problem.oven = std::move(oven);
    problem.placements.push_back({"TC1", 0.0, 0});
    ModelRun run;
    run.recipe = std::move(recipe);
    run.start_C = {start_C};
    run.ambient_C = ambient_C;
    run.entry = {0, 0.1, oven::Entry::Source::kGiven};
    problem.runs.push_back(run);
    for (const auto& prior : priors(problem)) theta.push_back(prior.mean);
    const auto map = problem.map();
    theta[M::kMixingUpstream] = theta[M::kMixingDownstream] = std::log(0.5);  // mm: as good as none
    theta[M::kExchangeTunnel] = theta[M::kExchangeCooling] = 0;
    theta[M::kRadiation] = theta[M::kHeatCapacitySlope] = 0;
    for (auto [which, value] :
         std::initializer_list<std::pair<M::Placement, double>>{{M::kTimeConstant, std::log(tau_s)},
                                                                {M::kToSide, -50.0},
                                                                {M::kSideShare, 0},
                                                                {M::kAirShare, 0},
                                                                {M::kBoard, 0},
                                                                {M::kLatent, 0}})
      theta[map.placement(0, which)] = value;
    drive = {&problem.runs[0].recipe, 0, 0, 0, end_s, ambient_C, problem.runs[0].start_C};
  }
  March run(bool with_gradient = false) { return march(problem, theta, drive, with_gradient); }
};

// Source: chain of constant-temperature zones, exact solution T = Ta + (T0 − Ta) exp(−t/τ) zone by zone; computed
// values of a lumped body with τ = 30 s from 25 °C, 40 s each at 150, 180, 200, 250, 25 °C. Tolerance: the zone edges
// lie within half a grid step (2.5 mm = 0.15 s at 1000 mm/min) at up to 4 °C/s.
TEST(March, FollowsAChainOfConstantZones) {
  const double speed = 1000, length = speed / 60 * 40;
  auto oven = oven_of({length, length, length, length, length}, 0, 0);
  oven.entrance_mm = 0;
  Lumped body(oven, recipe_of({150, 180, 200, 250, 25}, {}, speed), 30, 25, 25, 200);
  const auto result = body.run();
  const double want_C[] = {117.050358, 163.406654, 190.354099, 234.277511, 80.164953};
  for (int z = 0; z < 5; ++z) EXPECT_NEAR(result.at(0, 40.0 * (z + 1)), want_C[z], 0.15 * 4) << "zone " << z + 1;
}

// Source: two lags in series, unit step: 1 − (τ1 e^(−t/τ1) − τ2 e^(−t/τ2))/(τ1 − τ2); τ1 = 30, τ2 = 2, t = 30 s →
// 0.6058435. The reading is the mass beside (s = 1) with b = 1/2 and no heat back. Tolerance: steps of 1 s against τ2 =
// 2 s, trapezoid, 2e-3 of the step.
TEST(March, ReadsThroughASecondLag) {
  auto oven = oven_of({100000}, 0, 0);
  oven.entrance_mm = 0;
  Lumped body(oven, recipe_of({125}, {}, 1000), 30, 25, 125, 60);
  const auto map = body.problem.map();
  body.theta[map.placement(0, M::kSideShare)] = 1;
  body.theta[map.placement(0, M::kFromSide)] = std::log(0.5);
  EXPECT_NEAR(body.run().at(0, 30), 25 + 100 * 0.6058435, 0.2);
}

// Source: energy balance. Heat of melting L delays a body by L/7.5 of extra capacity integrated over the melting peak:
// ∫ (L/7.5) exp(−½(x/3)²) dx = L·3·√(2π)/7.5 = L·1.0027. With constant drive (steep ramp of air) the body's final state
// is the same; here the time to go from 200 to 240 °C in air at 1000 °C grows by L·1.0027/(rate at the peak).
// Tolerance: 2 %.
TEST(March, MeltingTakesItsHeat) {
  auto oven = oven_of({100000}, 0, 0);
  oven.entrance_mm = 0;
  const auto reach_s = [&](double latent_K) {
    Lumped body(oven, recipe_of({1000}, {}, 1000), 400, 180, 1000, 60);
    body.theta[body.problem.map().placement(0, M::kLatent)] = latent_K;
    const auto result = body.run();
    double t = 0;
    while (result.at(0, t) < 245) t += 0.01;
    return t;
  };
  const double rate = (1000 - 219) / 400.0;
  EXPECT_NEAR(reach_s(20) - reach_s(0), 20 * 3 * std::sqrt(2 * M_PI) / 7.5 / rate, 0.02 * 20 / rate);
}

// Source: definition of a derivative. Central differences of 1e-4 prior standard deviations against the automatic ones.
// With heat through the board what a placement's own parameters do to the others comes back to it, which the gradient
// leaves out: (κ/n)² of them, here some 2 % with three placements.
class Derivative : public testing::TestWithParam<bool> {};
TEST_P(Derivative, IsTheGradient) {
  const bool through_the_board = GetParam();
  Problem problem;
  problem.oven = oven_of({300, 300, 300, 300, 300}, 25, 1);
  for (int j = 0; j < 3; ++j) problem.placements.push_back({"TC" + std::to_string(j + 1), 40.0 + 60 * j, 0});
  ModelRun run;
  run.recipe = recipe_of({150, 180, 220, 260}, {60}, 500);
  run.recipe.bottom_C = {160, 175, 225, 255};
  run.start_C = {25, 26, 25};
  run.entry = {10, 1, oven::Entry::Source::kLog};
  problem.runs.push_back(run);
  const auto prior = priors(problem);
  std::vector<double> theta;
  for (std::size_t i = 0; i < prior.size(); ++i)
    theta.push_back(prior[i].mean + 0.3 * prior[i].sd * (i % 3 == 0 ? 1 : -0.5));
  const auto map = problem.map();
  for (std::size_t j = 0; j < 3 && !through_the_board; ++j) theta[map.placement(j, M::kBoard)] = 0;
  const Drive drive{&problem.runs[0].recipe, 0, 0, 0, 260, 25, problem.runs[0].start_C};
  const auto exact = march(problem, theta, drive, true);
  std::vector<double> row(exact.columns.width());
  for (std::size_t i = 0; i < theta.size(); ++i) {
    if (prior[i].sd == 0) continue;
    const double h = 1e-4 * prior[i].sd;
    auto up = theta, down = theta;
    up[i] += h;
    down[i] -= h;
    const auto a = march(problem, up, drive, false), b = march(problem, down, drive, false);
    for (std::size_t j = 0; j < 3; ++j)
      for (double t : {60.0, 120.0, 180.0, 240.0}) {
        std::size_t column = 0;
        while (column < row.size() && exact.columns.parameter(column, j) != i) ++column;
        if (column == row.size()) continue;  // another placement's own
        exact.gradient_at(j, t, row);
        const double numeric = (a.at(j, t) - b.at(j, t)) / (2 * h);
        // Kinks of the piecewise linear grid cost up to a few parts in a thousand of the derivative.
        const double left_out = through_the_board && column > exact.columns.entry() ? 0.25 : 0;
        EXPECT_NEAR(row[column] * prior[i].sd, numeric * prior[i].sd,
                    0.02 + left_out + 0.01 * std::abs(numeric * prior[i].sd))
            << prior[i].name << " of " << j << " at " << t;
      }
  }
}

INSTANTIATE_TEST_SUITE_P(March, Derivative, testing::Bool(),
                         [](const auto& c) { return c.param ? "coupled" : "alone"; });

// Source: identity. A recipe predicted from its own run is the measured run, noise and all. Of its band's terms
// (core/heat/predict.cpp) those of a change vanish; what is left is the floor of 0.25 °C and 0.11 s of a slope below
// 5 °C/s (the curve's is 215/90·√(2/e) = 2 °C/s).
TEST(Predict, TheSameRecipeGivesTheMeasuredRun) {
  Problem problem;
  problem.oven = oven_of({300, 300, 300, 300, 300, 300}, 25, 1);
  problem.placements.push_back({"TC1", 100.0, 0});
  std::vector<double> t, T;
  for (int i = 0; i < 700; ++i) {
    t.push_back(i * 0.5);
    T.push_back(25 + 215 * std::exp(-std::pow((i * 0.5 - 210) / 90, 2)) + 0.1 * ((i * 7919) % 11 - 5) / 5);
  }
  const auto clock = run::Clock::make(t);
  ASSERT_TRUE(clock);
  const auto trace = run::Trace::make(*clock, T);
  ASSERT_TRUE(trace);
  ModelRun run;
  run.recipe = recipe_of({150, 180, 200, 230, 250}, {50}, 500);
  run.end_s = t.back();
  run.entry = {10, 3, oven::Entry::Source::kLog};
  run.start_C = {25};
  run.mean_C.resize(1);
  for (std::size_t i = 0; i + 4 <= T.size(); i += 4)
    run.mean_C[0].push_back((T[i] + T[i + 1] + T[i + 2] + T[i + 3]) / 4);
  problem.runs.push_back(run);
  const auto model = identify(problem);
  ASSERT_TRUE(model) << model.error().message;
  const auto predicted = Predictor(*model, 0, {&*trace}).predict(problem.runs[0].recipe, true);
  ASSERT_EQ(predicted.size(), 1u);
  ASSERT_EQ(predicted[0].time_s.size(), t.size());
  const double least_C = 1.96 * std::sqrt(model->strangeness) * 0.25;
  const double most_C = 1.96 * std::sqrt(model->strangeness) * std::hypot(0.25, 0.11 * 5);
  for (std::size_t i = 0; i < t.size(); ++i) {
    EXPECT_NEAR(predicted[0].temperature_C[i], T[i], 1e-9);
    EXPECT_GE(predicted[0].band_C[i], least_C * (1 - 1e-12));
    EXPECT_LE(predicted[0].band_C[i], most_C);
  }
}

/// A log of the model itself: three places whose parameters stand `pull` prior standard deviations off, to the one side
/// and the other.
HeatModel identified_from_itself(double pull) {
  Problem problem;
  problem.oven = oven_of({300, 300, 300, 300, 300, 300}, 25, 1);
  for (int j = 0; j < 3; ++j) problem.placements.push_back({"TC" + std::to_string(j + 1), 40.0 + 60 * j, 0});
  ModelRun run;
  run.recipe = recipe_of({150, 175, 195, 230, 255}, {50}, 450);
  run.start_C = {25, 25, 25};
  run.end_s = 360;
  run.entry = {10, 3, oven::Entry::Source::kLog};
  problem.runs.push_back(run);
  std::vector<double> theta;
  const auto prior = priors(problem);
  for (std::size_t i = 0; i < prior.size(); ++i) theta.push_back(prior[i].mean + (i % 2 ? pull : -pull) * prior[i].sd);
  auto& made = problem.runs[0];
  const auto readings = march(problem, theta, {&made.recipe, 0, 0, 0, made.end_s, 25, made.start_C}, false);
  made.mean_C.resize(3);
  for (std::size_t j = 0; j < 3; ++j)
    for (double t = kBin_s / 2; t < made.end_s; t += kBin_s) made.mean_C[j].push_back(readings.at(j, t));
  auto model = identify(problem);
  EXPECT_TRUE(model) << model.error().message;
  return *std::move(model);
}

// Source: the evidence framework (MacKay, Bayesian interpolation, Neural Computation 4 (1992); from memory): where the
// priors are right, the squared pulls sum to the number γ of parameters that the data determine, so their ratio is 1;
// where all truth lies at the priors' means it is 0, and two deviations off, each pull that is well determined has a
// square of 4. Ordinary ovens are counted in, so that 0 becomes 1/(1 + γ/n) with an n that is not part of the contract:
// between 0 and 1. Upper bound: no pull can be found larger than in truth on average, 2² (Tikhonov shrinks).
TEST(Identify, SaysHowStrangeAnOvenIs) {
  const double as_expected = identified_from_itself(0).strangeness, strange = identified_from_itself(2).strangeness;
  EXPECT_GT(as_expected, 0);
  EXPECT_LT(as_expected, 1);
  EXPECT_GT(strange, 1);
  EXPECT_LT(strange, 4);
}

/// The band of the first placement for a hotter recipe, as far as the log reaches.
std::vector<double> band_C(const HeatModel& model) {
  const auto& run = model.problem.runs[0];
  std::vector<double> t, T;
  for (std::size_t i = 0; i < run.mean_C[0].size(); ++i) {
    t.push_back(kBin_s * (static_cast<double>(i) + 0.5));
    T.push_back(run.mean_C[0][i]);
  }
  const auto trace = run::Trace::make(*run::Clock::make(t), T);
  auto hotter = run.recipe;
  for (auto* side : {&hotter.top_C, &hotter.bottom_C})
    for (double& setpoint : *side) setpoint += 20;
  std::vector<const run::Trace*> traces(model.problem.placements.size());
  traces[0] = &*trace;
  return Predictor(model, 0, traces).predict(hotter, true).at(0).band_C;
}

// Source: scaling of variances. An oven four times as strange has all its standard deviations doubled. Tolerance:
// rounding.
TEST(Predict, TheBandGrowsWithTheRootOfStrangeness) {
  auto model = identified_from_itself(0);
  const auto before = band_C(model);
  model.strangeness *= 4;
  const auto after = band_C(model);
  ASSERT_EQ(after.size(), before.size());
  for (std::size_t i = 0; i < before.size(); ++i) EXPECT_NEAR(after[i], 2 * before[i], 1e-9 * before[i]);
}

// Source: energy balance, as in MeltingTakesItsHeat: with constant drive a heat of melting L sets a body back by
// L·1.0027. What melts in the new run and did not in the measured one is known no better than its solder's heat, of
// which the band must hold a good part of a kelvin and less than the range of 10 K that simulated joints show
// (core/heat/priors.cpp): here half of 2 K, as the air falls behind the melting, to 10 K.
TEST(Predict, TheBandHoldsHowSolderMelts) {
  auto melts = identified_from_itself(0);
  std::ranges::fill(melts.covariance, 0.0);
  melts.strangeness = 1;
  const double highest_C = *std::ranges::max_element(melts.problem.runs[0].mean_C[0]);
  melts.problem.liquidus_C = highest_C + 8;  // reached by the hotter recipe alone
  auto never = melts;
  never.problem.liquidus_C = 400;
  const auto with = band_C(melts), without = band_C(never);
  double most_K = 0;
  for (std::size_t i = 0; i < with.size(); ++i)
    most_K = std::max(most_K, std::sqrt(std::max(0.0, with[i] * with[i] - without[i] * without[i])) / 1.96);
  EXPECT_GT(most_K, 1);
  EXPECT_LT(most_K, 10);
}

// A heat of melting that no run has shown may be that of a ball grid: by geometry 4 to 5 K (0.5 mm balls every 1 mm,
// 7.4 g/cm³, 60 J/g, under a part that doubles a 1.6 mm board of 1850 kg/m³ and 1100 J/(kg·K)), and little is known of
// it.
TEST(Priors, WhatDidNotMeltMayHoldMuchSolder) {
  const double solder_J = M_PI / 6 * std::pow(0.5e-3, 3) * 7400 * 60e3, per_K = 2 * 1.6e-3 * 1850 * 1100 * 1e-6;
  Problem problem;
  problem.oven = oven_of({300, 300, 300}, 25, 1);
  problem.placements = {{"cold", 0.0, 0}, {"hot", 0.0, 0}, {"of another board", 0.0, 1}};
  ModelRun run;
  run.mean_C = {{25, 150, 216, 120}, {25, 150, 225, 120}, {NAN, NAN, NAN, NAN}};
  problem.runs.push_back(run);
  run.board = 1;
  run.imagined = true;
  problem.runs.push_back(run);
  const auto all = priors(problem);
  const auto latent = [&](std::size_t j) { return all[problem.map().placement(j, M::kLatent)]; };
  EXPECT_LT(latent(1).mean, latent(0).mean);
  EXPECT_NEAR(latent(0).mean, solder_J / per_K, 0.5);
  EXPECT_GT(latent(0).sd, latent(1).sd);
  EXPECT_EQ(latent(2).mean, latent(1).mean);
}

}  // namespace
}  // namespace ovenwright::heat
