#pragma once
#include <cstddef>
#include <functional>
#include <string>
#include <vector>

#include "core/log/rows.h"
#include "core/log/table.h"
#include "core/log/time_plan.h"
#include "core/units/result.h"

namespace ovenwright::log {

/// More channels than that are no log of thermocouples.
inline constexpr std::size_t kMostChannels = 4096;

/// A column of numbers that is kept.
struct NumberColumn {
  int column = 0;         ///< from 0
  int clock = 0;          ///< which of the clocks it goes by
  bool judged = true;     ///< a temperature: what is no number there must be a word for no reading
  std::string unit = {};  ///< degC, degF or K: a cell that states another one is turned into it; empty: as it stands
};

/// How the rows of a table become numbers.
struct WidePlan {
  std::size_t columns = 0;
  char decimal = '.';
  std::vector<TimePlan> clocks;
  std::vector<NumberColumn> numbers;
  const std::vector<ColumnProfile>* profile = nullptr;
  std::vector<std::string> names;       ///< of all columns as they stand in the row of names; empty where there is none
  bool leave_empty = false;             ///< what cannot be read counts as no reading: Layout::leave_empty
  bool keep_lines = false;              ///< an array of line numbers goes behind those of the columns of numbers
  bool ragged_rows_can_be_read = true;  ///< false where a missing cell moves the others (split at blanks)
  std::vector<std::size_t>
      lines_of_columns;  ///< where rows of this table are columns of the file: the line of each column
};

/// Called now and then with the share done and the rows so far; false stops.
using Progress = std::function<bool(double done, std::size_t rows)>;

/// The numbers of a table as they stand, NaN for no reading, ± infinity for over and under range.
struct WideResult {
  std::vector<std::vector<double>> times;   ///< for each clock, not yet in seconds
  std::vector<std::vector<double>> values;  ///< for each column of numbers, and the rows' lines where they are kept
  std::size_t rows = 0, skipped = 0;
  std::size_t other_rows = 0;    ///< of those skipped: under the header of a narrower table
  std::size_t last_line = 0;     ///< of the last row
  Position last_piece;           ///< some way before the end of the text: a place whose line is known
  std::vector<Statement> below;  ///< lines behind the last row, the first of them
  std::vector<std::string> notes;
  std::vector<Warning> warnings;
};

/// Reads all rows of a table. Rows of plain numbers go the fast way, all others the general one; both give the same.
/// Text without quotes is shared between threads, piece by piece.
/// Errors: kParse at the first cell that is neither number nor a word for no reading, at a time that is none between
/// rows that have one, at a row with too few or too many cells among others, and for more numbers than allowed, which
/// is told from the length of the text before any is kept; kCancelled.
Result<WideResult> read_wide(RowSource& rows, const Dialect* dialect, const Table& table, const WidePlan& plan,
                             const std::string& file, unsigned threads, std::size_t most_numbers,
                             const Progress& progress);

/// LF and CR in a text: a bound on its lines. Cost: at the speed of memory.
std::size_t count_line_ends(std::string_view text);

}  // namespace ovenwright::log
