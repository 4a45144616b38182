#pragma once
#include <cstddef>
#include <string>
#include <vector>

#include "core/log/wide.h"

namespace ovenwright::log {

/// The readings of one channel of the long form, in the order of the file.
struct LongChannel {
  std::string name;  ///< as it stands in the cells
  std::string unit;  ///< of its first row where units have a column of their own
  std::vector<double> times, values;
  std::vector<std::size_t> lines;  ///< of the readings, where the plan keeps them
};

struct LongResult {
  std::vector<LongChannel> channels;  ///< in the order of their first rows
  WideResult account;                 ///< rows, notes, warnings; no numbers
};

/// Reads rows of time, channel and value. The plan has one clock and one column of numbers.
/// @param name_column, unit_column  from 0; unit_column -1: none
/// Errors: as read_wide; kParse also for more channels than a log can have.
Result<LongResult> read_long(RowSource& rows, Position first, const WidePlan& plan, int name_column, int unit_column,
                             const std::string& file, std::size_t most_numbers, const Progress& progress);

}  // namespace ovenwright::log
