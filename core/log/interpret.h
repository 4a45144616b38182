#pragma once
#include <string>
#include <string_view>

#include "core/log/grid.h"
#include "core/log/reading.h"

namespace ovenwright::log {

/// Reads a log from decoded text. All but `file` and `read_as.encoding` of the result is filled.
Result<Reading> interpret_text(const std::string& name, std::string_view text, const Options& options);
/// Reads a log from a sheet or an HTML table.
Result<Reading> interpret_grid(const std::string& name, const Grid& grid, const Options& options);

/// How much a sheet looks like a log.
struct Likeness {
  double cells = 0;  ///< of its table, less where its numbers are no good; 0: not at all
  std::size_t rows = 0;
};
Likeness likeness_to_a_log(const Grid& grid);

}  // namespace ovenwright::log
