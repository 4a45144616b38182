#include "core/tune/learn.h"

#include <algorithm>

#include "core/check/passes.h"
#include "core/oven/entry.h"

namespace ovenwright::tune {
namespace {

/// Reads and cleans the log of a source.
Result<MeasuredRun> read_run(const oven::Oven& oven, RunSource source) {
  auto reading = log::read(source.log, source.options);
  if (!reading) return reading.error();
  const check::Setting setting{source.board ? &*source.board : nullptr, &oven, &source.recipe, source.entry_s};
  auto runs = check::passes(*reading, setting, source.run);
  if (!runs) return runs.error();
  if (runs->size() > 1)
    return Error{ErrorCode::kBadArgument,
                 "holds " + std::to_string(runs->size()) + " passes: say which with --run",
                 {source.log, 0, 0},
                 {},
                 {}};
  auto out = measured_run(oven, std::move(source), std::move(runs->front()));
  if (out) out->reading = *std::move(reading);
  return out;
}

std::string name_of_board(const MeasuredRun& run) {
  return run.source.board ? run.source.board->identity.name : std::string{};
}

}  // namespace

Subject Learned::subject(std::size_t board_index) const {
  Subject out;
  for (std::size_t r = 0; r < runs.size(); ++r) {
    if (runs[r].board_index != board_index) continue;
    out.run = &runs[r].run;
    out.board = runs[r].source.board ? &*runs[r].source.board : nullptr;
    if (!runs[r].source.windows.empty()) out.windows = runs[r].source.windows;
    out.model_run = r;
    out.traces = traces[r];
  }
  return out;
}

std::string Learned::board_name(std::size_t board_index) const {
  const auto* board = subject(board_index).board;
  return board && !board->identity.name.empty() ? board->identity.name : "board " + std::to_string(board_index + 1);
}

Result<MeasuredRun> measured_run(const oven::Oven& oven, RunSource source, run::Run run) {
  MeasuredRun out;
  out.run = std::move(run);
  if (source.entry_s) {
    out.entry = {*source.entry_s, 0.3, oven::Entry::Source::kGiven};
  } else {
    const auto found = oven::find_entry(out.run, oven, source.recipe, source.board ? &*source.board : nullptr);
    if (!found)
      return Error{ErrorCode::kUndetermined,
                   "does not show when the board entered the oven: give it with --entry",
                   {source.log, 0, 0},
                   {},
                   {}};
    out.entry = *found;
  }
  out.source = std::move(source);
  return out;
}

Result<Learned> learn(const oven::Oven& oven, std::vector<RunSource> sources,
                      const std::function<bool(double)>& progress) {
  std::vector<MeasuredRun> runs;
  for (auto& source : sources) {
    auto run = read_run(oven, std::move(source));
    if (!run) return run.error();
    runs.push_back(*std::move(run));
  }
  return learn_from(oven, std::move(runs), progress);
}

Result<Learned> learn_from(const oven::Oven& oven, std::vector<MeasuredRun> runs,
                           const std::function<bool(double)>& progress) {
  Learned out;
  out.runs = std::move(runs);
  std::vector<std::string> names;
  std::optional<double> liquidus_C;
  for (auto& run : out.runs) {
    const auto name = name_of_board(run);
    const auto known = std::ranges::find(names, name);
    run.board_index = static_cast<std::size_t>(known - names.begin());
    if (known == names.end()) names.push_back(name);
    for (const auto& window : run.source.windows)
      if (!liquidus_C) liquidus_C = window.liquidus_C;
  }
  out.boards = names.size();
  std::vector<heat::RunInput> inputs;
  for (const auto& run : out.runs)
    inputs.push_back(
        {&run.run, run.source.recipe, run.source.board ? &*run.source.board : nullptr, run.board_index, run.entry});
  auto built = heat::build(oven, liquidus_C, inputs);
  if (built.problem.placements.empty())
    return Error{ErrorCode::kUndetermined,
                 "no thermocouple has a trace to learn from",
                 {out.runs.empty() ? std::string{} : out.runs.front().source.log, 0, 0},
                 {},
                 {}};
  auto model = heat::identify(std::move(built.problem), progress);
  if (!model) return model.error();
  out.model = *std::move(model);
  out.traces = std::move(built.traces);
  return out;
}

}  // namespace ovenwright::tune
