#pragma once
#include <optional>

#include "app/command/command_line.h"
#include "core/board/board_file.h"
#include "core/log/layout_file.h"
#include "core/oven/oven_file.h"

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
  return take(options.layout, log::find_layout, request.log.layout);
}

}  // namespace ovenwright::command
