#pragma once
#include <cstdlib>

#include "core/log/grid_builder.h"
#include "core/log/interpret.h"

namespace ovenwright {

/// Aborts unless a grid is within the most that a sheet may hold, and what stands in it is read as a log or refused
/// with a message.
inline void check_grid(const log::Grid& grid) {
  if (grid.rows.size() > log::GridBuilder::kMostRows) std::abort();
  for (const auto& row : grid.rows) {
    if (row.size() > log::GridBuilder::kMostColumns) std::abort();
  }
  log::Options options;
  options.threads = 1;
  options.most_samples = 1 << 20;
  const auto reading = log::interpret_grid("fuzz", grid, options);
  if (!reading && reading.error().message.empty()) std::abort();
}

}  // namespace ovenwright
