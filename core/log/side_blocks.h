#pragma once
#include <optional>

#include "core/log/grid.h"

namespace ovenwright::log {

/// A sheet with short blocks of cells to the left of its table: what a board, a lot or a recipe is, with an empty
/// column before the log. Its rows would be taken for those of the log.
struct WithoutSideBlocks {
  Grid grid;                   ///< those cells empty, all others where they were
  std::size_t rows = 0;        ///< of the longest of the blocks
  std::size_t first_line = 0;  ///< of it
  std::string words;           ///< the first cells of its first row
};

/// Nothing where there is no such block, or one of them is a log by its looks (numbers that go up beside others): each
/// has a wholly empty column behind it, and no more than a quarter of the rows of the widest one, which has twenty or
/// more. Cost: a pass over the cells.
std::optional<WithoutSideBlocks> without_side_blocks(const Grid& grid);

}  // namespace ovenwright::log
