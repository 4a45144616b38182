#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <filesystem>
#include <limits>
#include <utility>

#include "app/command/commands.h"
#include "app/command/inputs.h"
#include "app/command/learn_inputs.h"
#include "app/command/output.h"
#include "core/files/text_file.h"
#include "core/judge/judge.h"
#include "core/oven/oven_file.h"
#include "core/report/change_note.h"
#include "core/report/tune_json.h"
#include "core/tune/words.h"
#include "core/window/window_file.h"

namespace ovenwright::command {
namespace {

/// The measured verdict of the boards' last runs: the worst of them; of like verdicts the one with the least margin,
/// or none.
report::Present judged_now(const tune::Learned& learned, const oven::Oven& oven) {
  std::optional<report::Present> worst;
  for (std::size_t b = 0; b < learned.boards; ++b) {
    const auto subject = learned.subject(b);
    const auto& run = learned.runs[subject.model_run];
    auto judgement = judge::judge(*subject.run, subject.windows, false, subject.board,
                                  measure::Place{&oven, &run.source.recipe, run.entry});
    const auto key = [](const judge::Judgement& one) {
      return std::pair{one.verdict, -one.margin.value_or(-std::numeric_limits<double>::infinity())};
    };
    if (!worst || key(judgement) > key(worst->judgement)) worst = report::Present{std::move(judgement), b};
  }
  return *std::move(worst);
}

/// The file of a recipe, by what it is suggested for.
std::string recipe_path(const std::string& folder, std::string stem) {
  std::ranges::replace(stem, ' ', '_');
  return (std::filesystem::path(folder) / (stem + ".toml")).string();
}

std::string group_stem(std::size_t index) { return "group " + std::to_string(index + 1); }

constexpr const char* kNextRunStem = "next run";

/// The files that recipes may be written into; empty where none were asked for.
std::vector<std::string> recipe_files(const TuneOptions& options, std::size_t runs) {
  if (!options.write_recipes) return {};
  using enum tune::Aim;
  std::vector<std::string> files;
  for (const auto aim : {kLeastChange, kMostMargin, kFastest, kCoolest})
    files.push_back(recipe_path(*options.write_recipes, tune::aim_name(aim)));
  for (std::size_t i = 0; i < runs; ++i) files.push_back(recipe_path(*options.write_recipes, group_stem(i)));
  files.push_back(recipe_path(*options.write_recipes, kNextRunStem));
  return files;
}

/// Whether what may be written would take the place of what was read.
bool overwrites(const TuneOptions& options, const tune::RunList& list) {
  auto inputs = input_files(list);
  for (const auto& name : {options.learn.runs, options.learn.layout})
    if (name) inputs.push_back(*name);
  std::vector<std::string> outputs;
  for (const auto& name : {options.common.output, options.note})
    if (name) outputs.push_back(*name);
  if (options.write_recipes) outputs.push_back(*options.write_recipes);
  const auto recipes = recipe_files(options, list.runs.size());
  outputs.insert(outputs.end(), recipes.begin(), recipes.end());
  return output_is_an_input(outputs, inputs);
}

/// Whether a recipe of that name is in the folder already, after saying so: recipes are edited by people and never
/// overwritten.
bool recipe_is_there(const TuneOptions& options, const tune::RunList& list) {
  const auto files = recipe_files(options, list.runs.size());
  const auto there = std::ranges::find_if(files, [](const std::string& file) {
    std::error_code failed;
    return std::filesystem::exists(file, failed);
  });
  if (there == files.end()) return false;
  report_error(
      {ErrorCode::kIo, "is there already: a recipe is never overwritten", {*there, 0, 0}, "", "another folder"});
  return true;
}

/// @param from  the recipe that ran: comments in its file stay
std::optional<Error> write_recipes(const std::string& folder, const files::Identity& from, const tune::Report& report) {
  std::error_code failed;
  std::filesystem::create_directories(folder, failed);
  const auto write = [&](const std::string& stem, const oven::Recipe& recipe) -> std::optional<Error> {
    const auto written = files::write_file(
        recipe_path(folder, stem), oven::changed_recipe_text(recipe, from, {tune::kCaution}), files::Existing::kKeep);
    return written ? std::nullopt : std::optional(written.error());
  };
  for (const auto& suggestion : report.suggestions)
    if (auto error = write(tune::aim_name(suggestion.aim), suggestion.recipe)) return error;
  for (std::size_t i = 0; i < report.groups.size(); ++i)
    if (auto error = write(group_stem(i), report.groups[i].recipe)) return error;
  if (report.next_run)
    if (auto error = write(kNextRunStem, report.next_run->recipe)) return error;
  return std::nullopt;
}

/// The change note of the first suggestion, or of the aim asked for; where there is none it says so, and the status is
/// that of the suggestions all the same. The status the command ends with.
ExitStatus write_note(const TuneOptions& options, const tune::Learned& learned, const judge::Judgement& now,
                      const tune::Report& report, ExitStatus status) {
  const auto suggestion = std::ranges::find_if(report.suggestions, [&](const tune::Suggestion& one) {
    const auto asked = [&](tune::Aim aim) { return *options.note_for == tune::aim_name(aim); };
    return !options.note_for || asked(one.aim) || std::ranges::any_of(one.also, asked);
  });
  if (suggestion == report.suggestions.end()) {
    const std::string which = options.note_for ? " for \"" + *options.note_for + "\"" : "";
    report_error({ErrorCode::kUndetermined,
                  "no note written: there is no suggestion of its own" + which,
                  {*options.note, 0, 0},
                  {},
                  {}});
    return status;
  }
  report::ChangeNote note;
  note.oven = &learned.model.problem.oven;
  note.from = &learned.runs.back().source.recipe;
  note.to = &suggestion->recipe;
  note.reason = suggestion->sentence;
  note.predicted = suggestion->predicted;
  for (std::size_t b = 0; b < learned.boards; ++b) {
    const auto* board = learned.subject(b).board;
    note.boards.push_back(board ? board->identity.name : std::string{});
  }
  note.measured = &now;
  note.learned_from = report::note_runs(learned);
  note.fit = &learned.model.report;
  const auto written = files::write_file(*options.note, report::change_note_text(note), files::Existing::kReplace);
  if (written) return status;
  report_error(written.error());
  return ExitStatus::kUnwritable;
}

/// Why what may be moved cannot be searched: speeds that the oven does not have, sides that no run tells apart.
std::optional<std::string> refused_freedom(const TuneOptions& options, const tune::RunList& list) {
  const auto& limits = list.oven.limits.speed_mm_per_min;
  const double now = list.runs.back().recipe.speed_mm_per_min;
  if (options.min_speed_mm_per_min) {
    const double least = *options.min_speed_mm_per_min;
    if (limits && least > (*limits)[1])
      return fmt::format("--min-speed {:g}: the oven's fastest is {:g} mm/min", least, (*limits)[1]);
    if (options.keep_speed && least > now)
      return fmt::format("--min-speed {:g} and --keep-speed: the run's speed is {:g} mm/min", least, now);
  }
  if (options.at_margin && !(*options.at_margin >= 0 && *options.at_margin <= 1))
    return fmt::format("--at-margin {:g}: a margin is a fraction from 0 to 1", *options.at_margin);
  if (options.split_sides &&
      std::ranges::none_of(list.runs, [&](const tune::RunSource& run) { return tune::sides_apart(run.recipe); }))
    return fmt::format(
        "--split-sides: no run has top and bottom {:g} °C apart in any zone, so the logs cannot tell the sides apart",
        tune::kSidesApart_C);
  return std::nullopt;
}

}  // namespace

ExitStatus run(const TuneOptions& options) {
  const auto fail = [&options](const Error& error) { return end_with(options.common, "ovenwright.tune/1", error); };
  auto list = read_runs(options.learn);
  if (!list) return fail(list.error());
  if (std::ranges::any_of(list->runs, [](const tune::RunSource& run) { return run.windows.empty(); })) {
    report_error(
        {ErrorCode::kBadArgument, "tune needs a window: --window, or one for each run in the list", {}, {}, {}});
    return ExitStatus::kUsage;
  }
  if (overwrites(options, *list)) return ExitStatus::kUsage;
  if (recipe_is_there(options, *list)) return ExitStatus::kUnwritable;
  for (const auto& run : list->runs)
    if (const auto refused = refused_wave(run.windows, "tune")) {
      report_error(*refused);
      return ExitStatus::kUsage;
    }
  for (const auto& name : options.locked_zones)
    if (std::ranges::find(list->oven.zones, name, &oven::Zone::name) == list->oven.zones.end()) {
      report_error({ErrorCode::kBadArgument, "--lock: the oven has no zone \"" + name + "\"", {}, {}, {}});
      return ExitStatus::kUsage;
    }
  const auto oven = list->oven;
  if (const auto refused = refused_freedom(options, *list)) {
    report_error({ErrorCode::kBadArgument, *refused, {}, {}, {}});
    return ExitStatus::kUsage;
  }
  const auto learned = tune::learn(oven, std::move(list->runs));
  if (!learned) return fail(learned.error());
  const auto now = judged_now(*learned, oven);

  tune::Report report;
  if (learned->model.report.usable) {
    tune::Request request;
    request.freedom = {options.keep_speed, options.min_speed_mm_per_min.value_or(0), options.locked_zones,
                       options.split_sides};
    request.at_margin = options.at_margin;
    std::vector<tune::Subject> boards;
    for (std::size_t b = 0; b < learned->boards; ++b) boards.push_back(learned->subject(b));
    report = tune::tune(learned->model, std::move(boards), learned->runs.back().source.recipe,
                        now.judgement.verdict == judge::Verdict::kPass, request);
  } else {
    report_error({ErrorCode::kUndetermined, learned->model.report.message, {}, {}, {}});
  }
  auto status = ExitStatus::kOut;
  const auto passes = [](const tune::Suggestion& suggestion) {
    return std::ranges::all_of(suggestion.predicted, [](const tune::Forecast& f) {
      return f.judgement.verdict <= judge::Verdict::kConditionalPass;
    });
  };
  const auto undetermined = [](const tune::Suggestion& suggestion) {
    return std::ranges::any_of(suggestion.predicted, [](const tune::Forecast& f) {
      return f.judgement.verdict == judge::Verdict::kUndetermined;
    });
  };
  if (!learned->model.report.usable || report.cut_short || report.nothing_judged)
    status = ExitStatus::kUndetermined;
  else if (std::ranges::any_of(report.suggestions, passes) ||
           (!report.infeasible && report.suggestions.empty() && !judge::is_out(now.judgement.verdict) &&
            now.judgement.verdict != judge::Verdict::kUndetermined))
    status = ExitStatus::kDone;  // a suggestion passes, or the present recipe does and none is better
  else if (report.infeasible ? !report.infeasible->ruled_out : std::ranges::any_of(report.suggestions, undetermined))
    status = ExitStatus::kUndetermined;

  if (options.write_recipes)
    if (const auto error = write_recipes(*options.write_recipes, learned->runs.back().source.recipe.identity, report)) {
      report_error(*error);
      return ExitStatus::kUnwritable;
    }
  if (options.note) {
    const auto noted = write_note(options, *learned, now.judgement, report, status);
    if (noted == ExitStatus::kUnwritable) return noted;
    status = noted;
  }
  if (options.common.quiet && options.common.format == Format::kText) {
    std::string text = report.infeasible ? report.infeasible->sentence + "\n" : "";
    for (const auto& suggestion : report.suggestions) text += suggestion.sentence + "\n";
    if (!report.groups_sentence.empty()) text += report.groups_sentence + "\n";
    if (report.next_run) text += report.next_run->sentence + "\n";
    for (const auto& note : report.notes) text += note + "\n";
    return write_output(options.common, text, status);
  }
  return write_output(options.common,
                      options.common.format == Format::kJson ? report::tune_json(*learned, now, report)
                                                             : report::tune_text(*learned, now, report),
                      status);
}

}  // namespace ovenwright::command
