#include "core/tune/start.h"

#include "app/command/commands.h"
#include "app/command/inputs.h"
#include "app/command/output.h"
#include "core/board/board_file.h"
#include "core/files/text_file.h"
#include "core/oven/oven_file.h"
#include "core/report/tune_json.h"
#include "core/window/window_file.h"

namespace ovenwright::command {
namespace {

/// What a command line names for a first recipe, read.
struct Inputs {
  oven::Oven oven;
  board::Board board;
  std::vector<window::ProcessWindow> windows;
  std::optional<tune::RunList> runs;  ///< earlier ones
};

Result<Inputs> read(const StartOptions& options) {
  Inputs out;
  auto oven = oven::find_oven(options.oven);
  if (!oven) return oven.error();
  out.oven = *std::move(oven);
  auto board = board::find(options.board);
  if (!board) return board.error();
  out.board = *std::move(board);
  for (const auto& name : options.windows) {
    auto window = window::find(name);
    if (!window) return window.error();
    out.windows.push_back(*std::move(window));
  }
  if (!options.runs) return out;
  auto list = tune::load_runs(*options.runs);
  if (!list) return list.error();
  out.runs = *std::move(list);
  return out;
}

/// Whether what is to be written would take the place of what was read.
bool overwrites(const StartOptions& options, const Inputs& inputs) {
  std::vector<std::string> files{inputs.oven.identity.file, inputs.board.identity.file};
  for (const auto& window : inputs.windows) files.push_back(window.identity.file);
  if (options.runs) files.push_back(*options.runs);
  if (inputs.runs)
    for (auto& file : input_files(*inputs.runs)) files.push_back(std::move(file));
  std::vector<std::string> outputs;
  for (const auto& name : {options.common.output, options.write_recipe})
    if (name) outputs.push_back(*name);
  return output_is_an_input(outputs, files);
}

}  // namespace

ExitStatus run(const StartOptions& options) {
  const auto fail = [&options](const Error& error) { return end_with(options.common, "ovenwright.start/1", error); };
  auto inputs = read(options);
  if (!inputs) return fail(inputs.error());
  if (overwrites(options, *inputs)) return ExitStatus::kUsage;
  if (const auto refused = refused_wave(inputs->windows, "start")) {
    report_error(*refused);
    return ExitStatus::kUsage;
  }
  std::optional<tune::Learned> learned;
  if (inputs->runs) {
    auto known = tune::learn(inputs->runs->oven, std::move(inputs->runs->runs));
    if (!known) return fail(known.error());
    learned = *std::move(known);
  }
  const auto start =
      tune::start(inputs->oven, inputs->board, std::move(inputs->windows), learned ? &*learned : nullptr);
  if (!start) return fail(start.error());
  if (options.write_recipe) {
    const auto written = files::write_file(
        *options.write_recipe, oven::changed_recipe_text(start->recipe, {}, {start->caution}), files::Existing::kKeep);
    if (!written) {
      report_error(written.error());
      return ExitStatus::kUnwritable;
    }
  }
  const auto status = exit_status(start->predicted.judgement.verdict);
  if (options.common.format == Format::kJson) return write_output(options.common, report::start_json(*start), status);
  return write_output(options.common, options.common.quiet ? start->sentence + "\n" : report::start_text(*start),
                      status);
}

}  // namespace ovenwright::command
