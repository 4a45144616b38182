#pragma once
#include <optional>

#include "core/board/board.h"
#include "core/oven/oven.h"
#include "core/run/run.h"

namespace ovenwright::oven {

/// Finds from the curves when the board's leading edge passed the mouth, with its uncertainty.
/// Empty where the log does not show it (starts hot, no rise, no valid trace).
std::optional<Entry> find_entry(const run::Run& run, const Oven& oven, const Recipe& recipe, const board::Board* board);

}  // namespace ovenwright::oven
