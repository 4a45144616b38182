#pragma once
#include <optional>
#include <span>
#include <vector>

#include "core/board/board.h"
#include "core/heat/problem.h"
#include "core/run/run.h"

namespace ovenwright::heat {

/// One measured run as the user has it.
struct RunInput {
  const run::Run* run = nullptr;
  oven::Recipe recipe;
  const board::Board* board = nullptr;  ///< may be null: every trace counts, places unknown
  std::size_t board_index = 0;          ///< runs with the same index are of the same board
  oven::Entry entry;
};

/// A problem with the traces that belong to it: [run][placement of the problem], null where a run has none.
struct Built {
  Problem problem;
  std::vector<std::vector<const run::Trace*>> traces;
};

/// Thins runs to means over 2 s and gathers placements by board and channel; air traces and channels without a trace
/// are left out, stretches that cleaning removed stay empty. `liquidus_C` absent: the highest of 138, 183 and 217 °C
/// that lies 8 °C or more below the median peak (alloys.csv: the families' liquidus).
Built build(const oven::Oven& oven, std::optional<double> liquidus_C, std::span<const RunInput> runs);

}  // namespace ovenwright::heat
