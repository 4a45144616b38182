// A lot of 200 runs of the demo board: its kept reports read, then statistics and charts of every result.
#include <benchmark/benchmark.h>

#include <array>
#include <stdexcept>
#include <string>
#include <vector>

#include "core/board/board_file.h"
#include "core/check/check.h"
#include "core/lot/lot.h"
#include "core/report/json.h"
#include "core/report/kept_run.h"
#include "core/window/window_file.h"

namespace ovenwright::lot {
namespace {

constexpr std::size_t kRuns = 200;
const std::string kDemo = OVENWRIGHT_PROFILES "/demo/";

check::Request demo_request() {
  check::Request request;
  const auto window = window::load(kDemo + "window.toml");
  const auto board = board::load(kDemo + "board.toml");
  if (!window || !board) throw std::runtime_error("the demo cannot be read");
  request.windows = {*window};
  request.board = *board;
  request.log.threads = 1;
  return request;
}

std::string demo_report() {
  const auto request = demo_request();
  const auto checked = check::check(kDemo + "tern_run1.csv", request);
  if (!checked) throw std::runtime_error(checked.error().text());
  return report::check_json(std::array{report::check_run_json(checked->reading, checked->runs[0], request)}, {});
}

std::vector<Run> runs_read(const std::string& report) {
  std::vector<Run> runs;
  for (std::size_t i = 0; i < kRuns; ++i) {
    auto run = report::kept_run(std::to_string(i), report);
    if (!run) throw std::runtime_error(run.error().text());
    // Not all alike: a scatter of a fortieth, without a random number for each.
    for (auto& result : run->results)
      if (result.value) *result.value *= 1 + 0.025 * (static_cast<double>(i * 7919 % 101) / 101 - 0.5);
    runs.push_back(*std::move(run));
  }
  return runs;
}

void JudgeOneLog(benchmark::State& state) {
  const auto request = demo_request();
  for (auto _ : state) benchmark::DoNotOptimize(check::check(kDemo + "tern_run1.csv", request));
}
BENCHMARK(JudgeOneLog)->Unit(benchmark::kMillisecond);

void Read200KeptReports(benchmark::State& state) {
  const auto report = demo_report();
  for (auto _ : state) benchmark::DoNotOptimize(runs_read(report));
}
BENCHMARK(Read200KeptReports)->Unit(benchmark::kMillisecond);

void LotOf200Runs(benchmark::State& state) {
  const auto runs = runs_read(demo_report());
  for (auto _ : state) benchmark::DoNotOptimize(summarise(runs, {.rules = RuleSet::kNelson}));
}
BENCHMARK(LotOf200Runs)->Unit(benchmark::kMillisecond);

}  // namespace
}  // namespace ovenwright::lot
