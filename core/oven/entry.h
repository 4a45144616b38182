#pragma once
#include <optional>

#include "core/board/board.h"
#include "core/oven/oven.h"
#include "core/run/run.h"

namespace ovenwright::oven {

/// Finds from the curves when the board's leading edge passed the mouth, with its uncertainty.
///
/// A trace's slope grows most where its placement passes into the first heated zone, whatever the mass: that moment
/// less the way from the mouth, x_mm and half a second for bead and joint. The mean over the placements that agree
/// within 3 s, sharp bends counting more; air placements are left out, and placements without x_mm where others have
/// one. Without any x_mm (no board) the placements count as spread evenly over the board, and the uncertainty grows by
/// the distance between them. Half width 95 %: docs/entry.md. Empty where the log does not show it: no trace begins at
/// rest and rises by 60 °C, no heated zone, no speed. Cost: O(samples up to the first zone).
std::optional<Entry> find_entry(const run::Run& run, const Oven& oven, const Recipe& recipe, const board::Board* board);

}  // namespace ovenwright::oven
