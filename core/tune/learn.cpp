#include "core/tune/learn.h"
#include "core/tune/belt.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "core/check/passes.h"
#include "core/oven/entry.h"

namespace ovenwright::tune {
namespace {

constexpr double kMostBeltError = 0.08;  // a suggestion for such a belt would be one for another line

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

/// The first board that is longer than a zone; empty where none is.
std::string long_board(const Learned& learned) {
  for (const auto& run : learned.runs) {
    if (!run.source.board || !run.source.board->length_mm) continue;
    for (const auto& zone : learned.model.problem.oven.zones)
      if (*run.source.board->length_mm > zone.length_mm)
        return fmt::format(
            "{} is {:.0f} mm long, so it lies in several zones at once (zone {} has {:.0f} mm): each of its "
            "places is predicted by itself, and the confirming run has to show them all",
            run.source.board->identity.name, *run.source.board->length_mm, zone.name, zone.length_mm);
  }
  return {};
}

/// A given entry that is far from the one the curves show; empty where none is.
std::string wrong_entry(const Learned& learned) {
  constexpr double least_s = 2;  // half width: what an entry found by the curves is taken to be good for at best
  for (const auto& run : learned.runs) {
    if (!run.source.entry_s) continue;
    const auto found = oven::find_entry(run.run, learned.model.problem.oven, run.source.recipe,
                                        run.source.board ? &*run.source.board : nullptr);
    if (!found) continue;
    const double later_s = found->at_s - *run.source.entry_s, u_s = std::max(least_s, found->uncertainty_s);
    if (std::abs(later_s) > 2 * u_s)
      return fmt::format(
          "the curves fit an entry {:.0f} s ± {:.0f} s {} than the one given: check the entry, the speed and the "
          "oven's entrance",
          std::abs(later_s), u_s, later_s > 0 ? "later" : "earlier");
  }
  return {};
}

/// Names what oven, recipes and boards say that the curves do not bear out.
void hold_against_files(Learned& learned) {
  heat::FitReport& report = learned.model.report;
  const std::string entry = wrong_entry(learned);
  if (!entry.empty()) {
    report.contradicted = true;
    std::erase_if(report.warnings, [](const std::string& one) { return one.starts_with("the curves fit an entry"); });
    if (!report.usable) report.message = entry;  // what else does not fit may follow from it
    report.warnings.insert(report.warnings.begin(), entry);
  }
  if (auto board = long_board(learned); !board.empty()) report.warnings.push_back(std::move(board));
  const auto belt = belt_error(learned.model);
  if (!belt || !belt->named()) return;
  report.contradicted = true;
  const double speed = learned.runs.back().source.recipe.speed_mm_per_min;
  const auto text = fmt::format(
      "the curves fit a belt {:.0f} % ± {:.0f} % {} than the recipe's {:g} mm/min, or zones so much {}: check the "
      "speed, "
      "the belt and the zone lengths in the oven's file",
      100 * std::abs(belt->faster), 100 * belt->uncertainty, belt->faster > 0 ? "faster" : "slower", speed,
      belt->faster > 0 ? "shorter" : "longer");
  report.warnings.insert(report.warnings.begin(), text);  // what zones seem to be off by may follow from it
  if (std::abs(belt->faster) < kMostBeltError) return;
  report.message = entry.empty() ? text : entry;  // more telling than what follows from it
  report.usable = false;
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

namespace {

/// What of a run hides the entry, and what to do about it.
std::string no_entry_words(const run::Run& run) {
  constexpr double rises_C = 60, hot_C = 50;  // as oven::find_entry wants it; well above a room
  double most_C = 0, first_C = 1e9;
  for (const auto& channel : run.channels) {
    if (!channel.trace) continue;
    const auto T = channel.trace->temperature_C();
    most_C = std::max(most_C, *std::ranges::max_element(T) - T.front());
    first_C = std::min(first_C, T.front());
  }
  std::string out = "does not show when the board entered the oven: ";
  if (first_C > hot_C)
    return out +
           fmt::format(
               "it begins at {:.0f} °C, when the board is in the oven already. Log from before the entry, or give "
               "the entry with --entry, on the log's clock",
               first_C);
  if (most_C < rises_C)
    return out +
           fmt::format(
               "no thermocouple rises by more than {:.0f} °C. Check that it is the log of a pass through the oven, "
               "and that the thermocouples are attached",
               most_C);
  return out +
         "no thermocouple bends upward where the first heated zone would begin. Check that the log, oven and recipe "
         "belong together, or give the entry with --entry";
}

}  // namespace

Result<MeasuredRun> measured_run(const oven::Oven& oven, RunSource source, run::Run run) {
  MeasuredRun out;
  out.run = std::move(run);
  if (std::ranges::none_of(out.run.channels, [&](const run::Channel& channel) {
        const auto* placement = source.board ? source.board->placement(channel.name, channel.number) : nullptr;
        return channel.trace && (!placement || placement->kind != board::Kind::kAir);
      }))
    return Error{
        ErrorCode::kUndetermined,
        "has no thermocouple on the board with a trace: all are faulty, or placed in the air by the board's file",
        {source.log, 0, 0},
        {},
        {}};
  if (source.entry_s) {
    out.entry = {*source.entry_s, 0.3, oven::Entry::Source::kGiven};
  } else {
    const auto found = oven::find_entry(out.run, oven, source.recipe, source.board ? &*source.board : nullptr);
    if (!found) return Error{ErrorCode::kUndetermined, no_entry_words(out.run), {source.log, 0, 0}, {}, {}};
    out.entry = *found;
  }
  out.source = std::move(source);
  return out;
}

bool sides_apart(const oven::Recipe& recipe) {
  return !std::ranges::equal(recipe.top_C, recipe.bottom_C,
                             [](double top, double bottom) { return std::abs(top - bottom) < kSidesApart_C; });
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
  hold_against_files(out);
  out.traces = std::move(built.traces);
  return out;
}

}  // namespace ovenwright::tune
