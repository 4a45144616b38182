#include "app/command/learn_inputs.h"

#include "core/board/board_file.h"
#include "core/log/layout_file.h"
#include "core/oven/oven_file.h"
#include "core/window/window_file.h"

namespace ovenwright::command {
namespace {

Result<tune::RunList> from_pairs(const LearnOptions& options) {
  tune::RunList list;
  auto oven = oven::find_oven(*options.oven);
  if (!oven) return oven.error();
  list.oven = *std::move(oven);
  std::optional<board::Board> board;
  if (options.board) {
    auto found = board::find(*options.board);
    if (!found) return found.error();
    board = *std::move(found);
  }
  for (std::size_t i = 0; i < options.logs.size(); ++i) {
    auto recipe = oven::find_recipe(options.recipes[i]);
    if (!recipe) return recipe.error();
    if (const auto fits = oven::check_recipe(*recipe, list.oven); !fits) return fits.error();
    tune::RunSource source;
    source.log = options.logs[i];
    source.recipe = *std::move(recipe);
    source.board = board;
    list.runs.push_back(std::move(source));
  }
  return list;
}

}  // namespace

Result<tune::RunList> read_runs(const LearnOptions& options) {
  auto list = options.runs ? tune::load_runs(*options.runs) : from_pairs(options);
  if (!list) return list.error();
  std::vector<window::ProcessWindow> windows;
  for (const auto& name : options.windows) {
    auto window = window::find(name);
    if (!window) return window.error();
    windows.push_back(*std::move(window));
  }
  std::optional<log::Layout> layout;
  if (options.layout) {
    auto found = log::find_layout(*options.layout);
    if (!found) return found.error();
    layout = *std::move(found);
  }
  if (options.leave_empty) {
    if (!layout) layout.emplace();
    layout->leave_empty = true;
  }
  for (auto& run : list->runs) {
    if (!windows.empty()) run.windows = windows;
    if (options.entry_s) run.entry_s = options.entry_s;
    run.run = options.run;
    run.options.layout = layout;
    run.options.table = options.table;
  }
  return list;
}

}  // namespace ovenwright::command
