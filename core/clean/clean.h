#pragma once
#include <vector>

#include "core/board/board.h"
#include "core/run/run.h"
#include "core/units/result.h"

namespace ovenwright::clean {

struct Options {
  const board::Board* board = nullptr;  ///< helps with swapped placements; may be null
  std::vector<int> keep;                ///< channels (numbers) whose spikes the user wants kept
  unsigned threads = 0;                 ///< 0: all cores; a log of less than some millions of samples takes one
};

/// Finds the faults of measures.md, removes what is to be removed, and splits a log with several passes into runs.
/// One run where there is one pass. Errors: kParse where no row is left with a usable time.
Result<std::vector<run::Run>> clean(std::vector<run::RawChannel> channels, const Options& options = {});

}  // namespace ovenwright::clean
