#include <filesystem>

#include "core/board/board_file.h"
#include "core/files/profiles.h"
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
  return !name.empty() && std::filesystem::exists(path, failed) ? path.string() : name;
}

/// Seconds on a log's own clock.
constexpr files::Range kEntry{-1e7, 1e7, false, "a number of seconds"};

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
    Place log_at, recipe_at, board_at, window_at;
  };
  std::vector<Names> names;
  for (auto& table : root.tables("run")) {
    Names run;
    run.log = table.needed_text("log");
    run.recipe = table.needed_text("recipe");
    run.board = table.text("board");
    run.window = table.text("window");
    run.entry_s = table.number("entry_s", kEntry);
    run.log_at = table.place("log");
    run.recipe_at = table.place("recipe");
    run.board_at = table.place("board");
    run.window_at = table.place("window");
    names.push_back(std::move(run));
  }
  if (!root.has("run")) root.missing("run", "one table [[run]] for each run");
  if (const auto error = file->finish()) return *error;

  RunList out;
  auto oven = oven::find_oven(beside(path, oven_name));
  if (!oven) return files::told_at(oven.error(), root.place("oven"));
  out.oven = *std::move(oven);
  for (const auto& run : names) {
    RunSource source;
    source.log = beside(path, run.log);
    std::error_code failed;
    if (!std::filesystem::exists(source.log, failed)) {
      return Error{ErrorCode::kIo, "found no log \"" + run.log + "\", expected a file", run.log_at, run.log, "a file"};
    }
    auto recipe = oven::find_recipe(beside(path, run.recipe));
    if (!recipe) return files::told_at(recipe.error(), run.recipe_at);
    if (const auto fits = oven::check_recipe(*recipe, out.oven); !fits) return fits.error();
    source.recipe = *std::move(recipe);
    if (run.board) {
      auto board = board::find(beside(path, *run.board));
      if (!board) return files::told_at(board.error(), run.board_at);
      source.board = *std::move(board);
    }
    if (run.window) {
      auto window = window::find(beside(path, *run.window));
      if (!window) return files::told_at(window.error(), run.window_at);
      source.windows.push_back(*std::move(window));
    }
    source.entry_s = run.entry_s;
    out.runs.push_back(std::move(source));
  }
  return out;
}

}  // namespace ovenwright::tune
