#pragma once
#include <optional>
#include <string>
#include <vector>

#include "app/command/command_line.h"
#include "core/board/board_file.h"
#include "core/check/check.h"
#include "core/log/layout_file.h"
#include "core/oven/oven_file.h"
#include "core/tune/learn.h"
#include "core/window/window_file.h"

namespace ovenwright::command {

/// Reads the files that a command line names for its logs into a check::Request or a check::MeasureRequest.
/// Empty where all is well, else the first error.
template <class Request>
std::optional<Error> read_inputs(const LogOptions& options, Request& request) {
  const auto take = [](const auto& name, auto find, auto& into) -> std::optional<Error> {
    if (!name) return std::nullopt;
    auto found = find(*name);
    if (!found) return found.error();
    into = *std::move(found);
    return std::nullopt;
  };
  request.run = options.run;
  request.entry_s = options.entry_s;
  if (auto error = take(options.board, board::find, request.board)) return error;
  if (auto error = take(options.oven, oven::find_oven, request.oven)) return error;
  if (auto error = take(options.recipe, oven::find_recipe, request.recipe)) return error;
  if (request.oven && request.recipe) {
    if (const auto fits = oven::check_recipe(*request.recipe, *request.oven); !fits) return fits.error();
  }
  if (auto error = take(options.layout, log::find_layout, request.log.layout)) return error;
  request.log.table = options.table;
  if (options.leave_empty) {
    if (!request.log.layout) request.log.layout.emplace();
    request.log.layout->leave_empty = true;
  }
  return std::nullopt;
}

/// The windows named, else sac305, which is then assumed. Empty where all is well, else the first error.
inline std::optional<Error> read_windows(const std::vector<std::string>& names, check::Request& request) {
  request.window_assumed = names.empty();
  for (const auto& name : names.empty() ? std::vector<std::string>{"sac305"} : names) {
    auto window = window::find(name);
    if (!window) return window.error();
    request.windows.push_back(*std::move(window));
  }
  return std::nullopt;
}

/// The profiles that a command line names for its logs, as typed: files or names.
inline std::vector<std::string> profiles_named(std::vector<std::string> windows, const LogOptions& options) {
  for (const auto& name : {options.board, options.oven, options.recipe, options.layout})
    if (name) windows.push_back(*name);
  return windows;
}

/// The files that runs to learn from were read from; names of what is shipped, and empty ones, may be among them.
inline std::vector<std::string> input_files(const tune::RunList& list) {
  std::vector<std::string> files{list.oven.identity.file};
  for (const auto& run : list.runs) {
    files.insert(files.end(), {run.log, run.recipe.identity.file});
    if (run.board) files.push_back(run.board->identity.file);
    for (const auto& window : run.windows) files.push_back(window.identity.file);
  }
  return files;
}

/// Refuses windows of a wave; `command` names who does. Empty where all are of an oven.
inline std::optional<Error> refused_wave(const std::vector<window::ProcessWindow>& windows,
                                         const std::string& command) {
  for (const auto& window : windows)
    if (window.process == window::Process::kWave)
      return Error{ErrorCode::kBadArgument,
                   "is a window of a wave: " + command + " knows ovens, not waves",
                   {window.identity.file, 0, 0},
                   "",
                   ""};
  return std::nullopt;
}

}  // namespace ovenwright::command
