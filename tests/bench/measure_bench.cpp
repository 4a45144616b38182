#include <benchmark/benchmark.h>

#include <algorithm>
#include <cmath>
#include <memory>
#include <random>
#include <stdexcept>
#include <string>
#include <vector>

#include "core/measure/measure.h"
#include "core/measure/parameter.h"
#include "core/window/window_file.h"

namespace ovenwright::measure {
namespace {

constexpr std::size_t kTraces = 12;
constexpr std::size_t kSamples = 1'000'000;
constexpr double kDuration_s = 400;

double S(double x) { return 1 / (1 + std::exp(-x)); }

Subject subject_of(const run::Channel& channel) {
  Subject subject;
  subject.channel = &channel;
  return subject;
}

/// Twelve noisy reflow traces on one clock, and what the shipped SAC305 window asks of them with every board measure.
struct Board {
  std::vector<run::Channel> channels{kTraces};
  std::vector<Request> requests;
  std::vector<Definition> board;

  Board() {
    std::vector<double> time_s(kSamples);
    for (std::size_t i = 0; i < kSamples; ++i) time_s[i] = kDuration_s * static_cast<double>(i) / kSamples;
    const auto clock = run::Clock::make(std::move(time_s));
    std::mt19937_64 engine(1);
    std::normal_distribution<double> noise(0, 0.05);
    for (std::size_t k = 0; k < kTraces; ++k) {
      std::vector<double> T(kSamples);
      const double late = 0.7 * static_cast<double>(k);
      for (std::size_t i = 0; i < kSamples; ++i) {
        const double t = (*clock)->time_s()[i] - late;
        const double clean = 25 + 125 * S((t - 70) / 16) + 45 * S((t - 150) / 22) + (73 - late) * S((t - 213) / 10) -
                             (225 - late) * S((t - 274) / 13);
        T[i] = std::round((clean + noise(engine)) * 100) / 100;
      }
      channels[k].trace = *run::Trace::make(*clock, std::move(T));
      channels[k].samples = kSamples;
    }
    const auto window = window::load(OVENWRIGHT_PROFILES "/windows/sac305.toml");
    if (!window) throw std::runtime_error(window.error().text());
    std::vector<Definition> single;
    for (const auto& requirement : window->requirements) {
      const auto definition = with_defaults(requirement.measure, window->liquidus_C);
      (describe(definition.measure).board ? board : single).push_back(definition);
    }
    for (const char* more : {"spread when hottest reaches, level=217", "largest spread", "lag, level=217"})
      board.push_back(*parse_definition(more));
    for (auto& channel : channels) requests.push_back({subject_of(channel), single});
  }
};

const Board& board() {
  static const Board kBoard;
  return kBoard;
}

/// One pass of plain summation over the same samples: what reading them costs at the least.
void PlainSummation(benchmark::State& state) {
  const auto& channels = board().channels;
  for (auto _ : state) {
    double sum = 0;
    for (const auto& channel : channels)
      for (const double T : channel.trace->temperature_C()) sum += T;
    benchmark::DoNotOptimize(sum);
  }
}
BENCHMARK(PlainSummation)->Unit(benchmark::kMillisecond)->UseRealTime();

void MeasureValues(benchmark::State& state) {
  const auto& all = board();
  for (auto _ : state)
    benchmark::DoNotOptimize(evaluate_all(all.requests, all.board, std::nullopt, {.uncertainty = false, .threads = 1}));
}
BENCHMARK(MeasureValues)->Unit(benchmark::kMillisecond)->UseRealTime();

void MeasureUncertainties(benchmark::State& state) {
  const auto& all = board();
  for (auto _ : state)
    benchmark::DoNotOptimize(evaluate_all(all.requests, all.board, std::nullopt,
                                          {.uncertainty = true, .threads = static_cast<unsigned>(state.range(0))}));
}
BENCHMARK(MeasureUncertainties)->ArgName("threads")->Arg(1)->Arg(2)->Unit(benchmark::kMillisecond)->UseRealTime();

/// A log of the usual size, 800 samples, with all uncertainties.
void MeasureUsualLog(benchmark::State& state) {
  std::vector<double> time_s, T;
  for (std::size_t i = 0; i < kSamples; i += kSamples / 800) {
    time_s.push_back(board().channels[0].trace->time_s()[i]);
    T.push_back(board().channels[0].trace->temperature_C()[i]);
  }
  run::Channel channel;
  channel.trace = *run::Trace::make(*run::Clock::make(time_s), T);
  const auto subject = subject_of(channel);
  for (auto _ : state) benchmark::DoNotOptimize(evaluate(subject, board().requests[0].definitions, std::nullopt));
}
BENCHMARK(MeasureUsualLog)->Unit(benchmark::kMicrosecond);

}  // namespace
}  // namespace ovenwright::measure
