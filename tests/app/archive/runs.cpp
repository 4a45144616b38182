#include "tests/app/archive/runs.h"

#include <gtest/gtest.h>

#include <fstream>
#include <iterator>

#include "core/board/board_file.h"
#include "core/files/digest.h"
#include "core/oven/oven_file.h"
#include "core/window/window_file.h"

namespace ovenwright {
namespace {

archive::NewFile file(const std::string& name, const std::string& bytes) {
  return {name, "2", std::make_shared<const std::string>(bytes), files::sha256_hex(bytes)};
}

}  // namespace

archive::NewRun madeUpRun(int number, const std::string& lot) {
  const std::string sign = std::to_string(number);
  archive::NewRun run;
  run.log = file("run" + sign + ".csv", "time,TC1\n0,25\n1," + sign + "\n");
  run.windows = {file("Tern window", "name = \"Tern window\"\n")};
  run.oven = file("line 2", "name = \"line 2\"\n");
  run.recipe = file("rev " + std::to_string(number % 2), "speed_mm_per_min = 80" + std::to_string(number % 2));
  run.board = file(number % 3 == 0 ? "Dunlin" : "Tern", number % 3 == 0 ? "name = \"Dunlin\"" : "name = \"Tern\"");
  run.layout = file("", "delimiter = \",\"\n");
  run.report = "{\"number\": " + sign + "}\n";
  run.text = "Run " + sign + "\n";
  run.program = "ovenwright 0.1.0";
  run.labels.lot = lot;
  run.labels.serial = "S" + sign;
  run.labels.operatorName = "R. Quill";
  // 2026-03-01T00:00:00Z and a minute for each
  run.labels.runAt = archive::Moment{std::chrono::milliseconds{1'772'323'200'000 + number * 60'000LL}};
  run.verdict = number % 4 == 0 ? judge::Verdict::kFail : judge::Verdict::kPass;
  run.margin = number / 1000.0;
  return run;
}

std::vector<archive::NewRun> madeUpRuns(int from, int count, const std::string& lot) {
  std::vector<archive::NewRun> runs;
  for (int i = 0; i < count; ++i) runs.push_back(madeUpRun(from + i, lot));
  return runs;
}

std::vector<archive::NewRun> demoRuns(const archive::Labels& labels) {
  const std::string demo = OVENWRIGHT_PROFILES "/demo/";
  check::Request request;
  request.windows = {*window::load(demo + "window.toml")};
  request.oven = *oven::load_oven(demo + "oven.toml");
  request.recipe = *oven::load_recipe(demo + "recipe.toml");
  request.board = *board::load(demo + "board.toml");
  const auto checked = check::check(demo + "tern_run1.csv", request);
  EXPECT_TRUE(checked) << checked.error().text();
  auto runs = archive::keep(demo + "tern_run1.csv", request, *checked, labels);
  EXPECT_TRUE(runs) << runs.error().text();
  return *std::move(runs);
}

std::string contents(const std::string& path) {
  std::ifstream file(path, std::ios::binary);
  return {std::istreambuf_iterator<char>{file}, {}};
}

}  // namespace ovenwright
