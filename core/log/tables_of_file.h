#pragma once
#include <cstddef>
#include <string>
#include <vector>

#include "core/log/rows.h"

namespace ovenwright::log {

/// One of several logs of a file: rows of times and numbers under a header of its own.
struct FileTable {
  std::size_t header_line = 0;  ///< of the row that names the time
  std::size_t last_header_line = 0;
  std::size_t from_line = 0, to_line = 0;  ///< of the table and all up to the next one's header; to_line is behind it
  std::size_t rows = 0;
  std::size_t time_column = 0;     ///< from 0
  std::vector<std::string> names;  ///< the header's cells
  std::vector<std::string> times;  ///< the cells of its time, up to a hundred thousand
};

/// The logs of a file, where there are several with different channels: each begins with a row of words that names the
/// time and has five rows or more in which that time runs forward. A header that is repeated goes on its table, and what
/// is shorter (levels, zones, statistics) is none of them. Empty where there are less than two.
/// Cost: a pass over all rows.
std::vector<FileTable> tables_of_file(RowSource& rows, char decimal);

/// Whether all of them have the same times: blocks of channels of one run.
bool same_times(const std::vector<FileTable>& tables);

}  // namespace ovenwright::log
