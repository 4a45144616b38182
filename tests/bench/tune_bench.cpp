// The figures of identification, prediction and suggestion, beside a plain loop of exponentials in the same run.
#include <benchmark/benchmark.h>

#include <cmath>
#include <random>
#include <stdexcept>
#include <string>
#include <vector>

#include "core/heat/build.h"
#include "core/heat/identify.h"
#include "core/heat/model.h"
#include "core/oven/oven_file.h"
#include "core/tune/tune.h"
#include "core/window/window_file.h"

namespace ovenwright {
namespace {

constexpr std::size_t kPlacements = 12;

template <class T>
T needed(Result<T> result) {
  if (!result) throw std::runtime_error(result.error().text());
  return *std::move(result);
}

/// A measured run of twelve thermocouples in a ten-zone oven: the model's own march with other parameters than the
/// priors' means, a slow wave that the model does not have, and an instrument's noise.
struct Line {
  oven::Oven oven = needed(oven::load_oven(OVENWRIGHT_PROFILES "/demo/oven.toml"));
  oven::Recipe recipe = needed(oven::load_recipe(OVENWRIGHT_PROFILES "/demo/recipe.toml"));
  window::ProcessWindow window = needed(window::load(OVENWRIGHT_PROFILES "/windows/sac305.toml"));
  run::Run run;
  heat::Built built;

  Line() {
    using M = heat::ParameterMap;
    heat::Problem problem;
    problem.oven = oven;
    for (std::size_t j = 0; j < kPlacements; ++j)
      problem.placements.push_back({"TC" + std::to_string(j + 1), 20.0 + 18.0 * static_cast<double>(j), 0});
    heat::ModelRun first;
    first.recipe = recipe;
    first.start_C.assign(kPlacements, 25.0);
    first.entry = {10, 1, oven::Entry::Source::kLog};
    first.end_s = 10 + (oven.length_mm() + 500) / recipe.speed_mm_per_min * 60;
    problem.runs.push_back(first);
    std::mt19937_64 engine(7);
    std::normal_distribution<double> normal;
    std::vector<double> theta;
    for (const auto& prior : heat::priors(problem)) theta.push_back(prior.mean + 0.5 * prior.sd * normal(engine));
    const auto map = problem.map();
    for (std::size_t j = 0; j < kPlacements; ++j)
      theta[map.placement(j, M::kTimeConstant)] = std::log(24 + 1.5 * static_cast<double>(j));
    const auto march = heat::march(problem, theta, {&recipe, 0, 0, 0, first.end_s, 25, problem.runs[0].start_C}, false);
    std::vector<double> time_s;
    for (double t = 0; t < first.end_s - 1; t += 0.5) time_s.push_back(t);
    const auto clock = needed(run::Clock::make(time_s));
    run.sample_interval_s = 0.5;
    run.to_s = time_s.back();
    for (std::size_t j = 0; j < kPlacements; ++j) {
      std::vector<double> T;
      for (const double t : time_s)
        T.push_back(
            std::round(10 * (march.at(j, t) + 0.4 * std::sin(t / 25 + static_cast<double>(j)) + 0.1 * normal(engine))) /
            10);
      run::Channel channel;
      channel.name = problem.placements[j].name;
      channel.number = static_cast<int>(j + 1);
      channel.trace = needed(run::Trace::make(clock, std::move(T)));
      channel.samples = time_s.size();
      channel.removed_end_from_s = run.to_s;
      run.channels.push_back(std::move(channel));
    }
    const heat::RunInput input{&run, recipe, nullptr, 0, {10, 5.9, oven::Entry::Source::kLog}};
    built = heat::build(oven, window.liquidus_C, {&input, 1});
    for (std::size_t j = 0; j < kPlacements; ++j) built.problem.placements[j].x_mm = problem.placements[j].x_mm;
  }
};

const Line& line() {
  static const Line kLine;
  return kLine;
}

const heat::HeatModel& model() {
  static const heat::HeatModel kModel = needed(heat::identify(line().built.problem));
  return kModel;
}

tune::Subject subject() { return {&line().run, nullptr, {line().window}, 0, line().built.traces[0]}; }

oven::Recipe moved(int by) {
  oven::Recipe recipe = line().recipe;
  for (double& x : recipe.top_C) x += by;
  for (double& x : recipe.bottom_C) x += by;
  return recipe;
}

void OneMillionExponentials(benchmark::State& state) {
  for (auto _ : state) {
    double sum = 0;
    for (int i = 0; i < 1'000'000; ++i) sum += std::exp(-1e-6 * i);
    benchmark::DoNotOptimize(sum);
  }
}
BENCHMARK(OneMillionExponentials)->Unit(benchmark::kMillisecond)->UseRealTime();

void Identify(benchmark::State& state) {
  for (auto _ : state) {
    auto found = heat::identify(line().built.problem);
    state.counters["iterations"] = found->report.iterations;
    benchmark::DoNotOptimize(found);
  }
}
BENCHMARK(Identify)->Unit(benchmark::kMillisecond)->UseRealTime();

void forecast(benchmark::State& state, tune::Detail detail) {
  const tune::Forecaster forecaster(model(), subject());
  int by = 0;
  for (auto _ : state) {
    auto found = forecaster.forecast(moved(by = (by + 1) % 10), detail);
    benchmark::DoNotOptimize(found);
  }
}
void PredictValues(benchmark::State& state) { forecast(state, tune::Detail::kValues); }
BENCHMARK(PredictValues)->Unit(benchmark::kMillisecond)->UseRealTime();
void PredictJudged(benchmark::State& state) { forecast(state, tune::Detail::kJudged); }
BENCHMARK(PredictJudged)->Unit(benchmark::kMillisecond)->UseRealTime();
void PredictWithBand(benchmark::State& state) { forecast(state, tune::Detail::kJudgedAndBand); }
BENCHMARK(PredictWithBand)->Unit(benchmark::kMillisecond)->UseRealTime();

void Suggest(benchmark::State& state) {
  for (auto _ : state) {
    auto found = tune::tune(model(), {subject()}, line().recipe, false, {});
    state.counters["suggestions"] = static_cast<double>(found.suggestions.size());
    benchmark::DoNotOptimize(found);
  }
}
BENCHMARK(Suggest)->Unit(benchmark::kMillisecond)->UseRealTime();

}  // namespace
}  // namespace ovenwright
