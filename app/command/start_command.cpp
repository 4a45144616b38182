#include "core/tune/start.h"

#include "app/command/commands.h"
#include "app/command/learn_inputs.h"
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
  std::optional<tune::Learned> learned;
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
  auto learned = tune::learn(list->oven, std::move(list->runs));
  if (!learned) return learned.error();
  out.learned = *std::move(learned);
  return out;
}

}  // namespace

ExitStatus run(const StartOptions& options) {
  const auto fail = [](const Error& error) {
    report_error(error);
    return exit_status(error);
  };
  auto inputs = read(options);
  if (!inputs) return fail(inputs.error());
  const auto start = tune::start(inputs->oven, inputs->board, std::move(inputs->windows),
                                 inputs->learned ? &*inputs->learned : nullptr);
  if (!start) return fail(start.error());
  if (options.write_recipe) {
    const auto written =
        files::write_file(*options.write_recipe, oven::recipe_text(start->recipe), files::Existing::kReplace);
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
