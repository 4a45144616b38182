#include "tests/desktop/lots/varied_runs.h"

#include <nlohmann/json.hpp>

#include "core/files/digest.h"
#include "tests/app/archive/runs.h"

namespace ovenwright {

std::vector<archive::NewRun> variedDemoRuns(int count, const std::string& lot) {
  const auto demo = demoRuns({lot, "T-1", "R. Quill", std::nullopt}).front();
  std::vector<archive::NewRun> runs;
  for (int i = 0; i < count; ++i) {
    auto run = demo;
    // 0, 7, 3, 10, 6, 2, …: the multiples of 7 modulo 11, some above the middle and some below.
    const double moved = 0.1 * ((7 * i) % 11 - 5);
    auto report = nlohmann::ordered_json::parse(run.report);
    for (const char* list : {"results", "board_results"})
      for (auto& result : report["runs"][0][list])
        if (result["value"].is_number()) result["value"] = result["value"].get<double>() + moved;
    run.report = report.dump();
    const std::string bytes = *run.log.bytes + "\n";
    run.log.bytes = std::make_shared<const std::string>(bytes + std::string(std::size_t(i), '\n'));
    run.log.sha256 = files::sha256_hex(*run.log.bytes);
    run.log.name = "run" + std::to_string(i + 1) + ".csv";
    run.labels.serial = "T-" + std::to_string(i + 1);
    // 2026-03-01T08:00:00Z
    run.labels.runAt = archive::Moment{std::chrono::milliseconds{1'772'352'000'000 + i * 3'600'000LL}};
    runs.push_back(std::move(run));
  }
  return runs;
}

}  // namespace ovenwright
