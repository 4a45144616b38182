#pragma once
#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

#include "core/log/cell.h"
#include "core/log/rows.h"

namespace ovenwright::log {

/// A line that is not of the table: metadata before it, statistics behind it.
struct Statement {
  std::size_t line = 0;
  std::string text;  ///< the cells joined by blanks where it is a row of a grid
  std::vector<std::string> cells;
};

/// What the rows of the table hold in one column, by a sample spread over the whole table.
struct ColumnProfile {
  std::size_t numbers = 0, times = 0, texts = 0, open = 0, empty = 0;
  std::vector<double> values;           ///< one for each sampled row; NaN where there is no number
  std::vector<TimeText> time_texts;     ///< of the sampled cells that are times
  std::vector<std::string> texts_seen;  ///< distinct, the first forty
  std::size_t text_changes = 0;  ///< how often a text (or a small whole number) differs from that of the row before
  std::size_t tolerances = 0;    ///< numbers with "± 0.5" behind them
  std::size_t packed = 0;        ///< of the times: dates that are as well numbers, which `values` has
  std::string unit_seen;         ///< of the first number that carries one ("25.3 °C")
  int most_decimals = -1, fewest_decimals = 99;
  bool whole_numbers = true;

  enum class Holds { kNothing, kNumbers, kTimes, kText };
  Holds holds() const;
  /// Figures that are dates in some rows alone, or in a unit of time, are numbers in all.
  void take_packed_as_numbers();
  /// Mostly filled: a row of the table has something here.
  bool always_filled = false;
  /// Always filled and rising, or times: what a row of the table is known by. Other columns may lack some readings.
  bool key = false;
};

/// Where the table stands in the text and what its columns hold.
struct Table {
  std::size_t columns = 0;
  Position first_row;                   ///< of the data
  std::vector<Statement> headers;       ///< rows of names, units and so on directly above the data, from the top
  std::vector<Statement> above, below;  ///< other lines; of very many the first and last ones
  std::vector<ColumnProfile> profile;
  std::size_t sampled = 0;  ///< rows in the profile
  double rows = 0;          ///< in the whole table: counted where it is short, else by its length
};

/// The outcome of looking at one row against the profile.
struct RowFit {
  bool width = false;          ///< as many cells as the table has columns (empty ones more do not count)
  std::size_t good = 0;        ///< cells that are numbers or times where the column has such
  std::size_t mismatched = 0;  ///< cells that cannot belong to their column
  bool key_filled = true;      ///< nothing is missing in the columns that a row is known by
  bool data() const { return width && good > 0 && mismatched == 0 && key_filled; }
};

/// Finds the table in rows of the given width. A forced header line (from 1; 0: none) decides where it starts.
/// No columns in the result where there is none.
Table find_table(RowSource& rows, std::size_t columns, char decimal, int header_line, bool header_forced);

/// Profiles from rows of the right width that hold more numbers than text, wherever they stand in the sample.
std::vector<ColumnProfile> first_profile(RowSource& rows, std::size_t columns, char decimal);
/// The profile of the table itself, spread over its length.
/// @param first  what the first look found, by which rows are told from other lines
void fill_profile(RowSource& rows, Table& table, const std::vector<ColumnProfile>& first, char decimal);

/// @param cells  takes the cells as they were read, where they are wanted and the width fits
RowFit fit_row(const Row& row, const std::vector<ColumnProfile>& profile, char decimal,
               std::vector<Cell>* cells = nullptr);

/// A line of signs that rules off header or table: "-----+-----", "======".
bool is_rule(const Row& row);
/// "0.1,0.1,0.1", perhaps behind a 1 or an empty cell: what each column is to be multiplied by.
bool is_row_of_factors(const Row& row);
/// A line that starts as comments do: '#', '//', '%', "rem ".
bool is_comment(const Row& row);

}  // namespace ovenwright::log
