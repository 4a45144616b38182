#pragma once
#include <optional>

#include "core/board/board.h"
#include "core/oven/oven.h"
#include "core/run/run.h"

namespace ovenwright::oven {

/// Finds from the curves when the board's leading edge passed the mouth, with its uncertainty.
///
/// A trace's slope grows where its placement passes into a hotter zone, in proportion to the step of the setpoints and
/// whatever the mass: each trace is laid where its bends at all of the first zones fit those steps best, and the first
/// large one of them gives the time, less the way from the mouth, x_mm and half a second for bead and joint. The median
/// over the placements, sharp bends counting more; air placements are left out, and placements without x_mm where
/// others have one. Without any x_mm (no board) the placements count as spread evenly over the board, and the
/// uncertainty grows by the distance between them. Half width 95 %: docs/entry.md. Empty where the log does not show
/// it: no trace begins at rest and rises by 60 °C, no zone 50 °C above ambient, no speed. Cost: O(samples up to a rise
/// of 60 °C, times the zones passed by then).
std::optional<Entry> find_entry(const run::Run& run, const Oven& oven, const Recipe& recipe, const board::Board* board);

}  // namespace ovenwright::oven
