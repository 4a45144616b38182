#include <filesystem>

#include "core/board/board_file.h"
#include "core/files/text_file.h"
#include "core/files/toml.h"
#include "core/oven/oven_file.h"
#include "core/tune/learn.h"
#include "core/window/window_file.h"

namespace ovenwright::tune {
namespace {

/// A path in the list counts from the list's folder; a name that is no file there is a profile's.
std::string beside(const std::string& list, const std::string& name) {
  const auto path = std::filesystem::path(list).parent_path() / name;
  std::error_code failed;
  return std::filesystem::exists(path, failed) ? path.string() : name;
}

/// A name that nothing has is told where the list gives it.
Error at_its_place(Error error, const std::string& name, const Place& place) {
  if (error.where.file == name && error.where.line == 0) error.where = place;
  return error;
}

}  // namespace

Result<RunList> load_runs(const std::string& path) {
  const auto text = files::read_text(path);
  if (!text) return text.error();
  auto file = files::TomlFile::parse(path, *text);
  if (!file) return file.error();
  auto root = file->root();
  const auto oven_name = root.needed_text("oven");
  struct Names {
    std::string log, recipe;
    std::optional<std::string> board, window;
    std::optional<double> entry_s;
    Place recipe_at, board_at, window_at;
  };
  std::vector<Names> names;
  for (auto& table : root.tables("run")) {
    Names run;
    run.log = table.needed_text("log");
    run.recipe = table.needed_text("recipe");
    run.board = table.text("board");
    run.window = table.text("window");
    run.entry_s = table.number("entry_s");
    run.recipe_at = table.place("recipe");
    run.board_at = table.place("board");
    run.window_at = table.place("window");
    names.push_back(std::move(run));
  }
  if (names.empty()) root.missing("run", "one table [[run]] for each run");
  if (const auto error = file->finish()) return *error;

  RunList out;
  auto oven = oven::find_oven(beside(path, oven_name));
  if (!oven) return at_its_place(oven.error(), oven_name, root.place("oven"));
  out.oven = *std::move(oven);
  for (const auto& run : names) {
    RunSource source;
    source.log = beside(path, run.log);
    auto recipe = oven::find_recipe(beside(path, run.recipe));
    if (!recipe) return at_its_place(recipe.error(), run.recipe, run.recipe_at);
    if (const auto fits = oven::check_recipe(*recipe, out.oven); !fits) return fits.error();
    source.recipe = *std::move(recipe);
    if (run.board) {
      auto board = board::find(beside(path, *run.board));
      if (!board) return at_its_place(board.error(), *run.board, run.board_at);
      source.board = *std::move(board);
    }
    if (run.window) {
      auto window = window::find(beside(path, *run.window));
      if (!window) return at_its_place(window.error(), *run.window, run.window_at);
      source.windows.push_back(*std::move(window));
    }
    source.entry_s = run.entry_s;
    out.runs.push_back(std::move(source));
  }
  return out;
}

}  // namespace ovenwright::tune
