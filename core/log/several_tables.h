#pragma once
#include <string>
#include <string_view>

#include "core/log/reading.h"
#include "core/log/rows.h"

namespace ovenwright::log {

/// What a file's rows come from: a text and how it splits, or a grid.
struct TableSource {
  std::string_view text;
  const Grid* grid = nullptr;  ///< absent: the text
  Dialect dialect;
  char decimal = '.';
};

/// A file that was read as one table, and that may hold several logs with different channels. Where it does, the one in
/// which the layout's header line stands is read, else the longest, and each other is told as an assumption about the
/// header with its line; blocks of channels with the same times are read side by side as one log. Else, and where the
/// tables have the same channels in another order, `whole` as it is.
Result<Reading> read_one_of_tables(const std::string& name, const TableSource& source, const Options& options,
                                   Result<Reading> whole);

}  // namespace ovenwright::log
