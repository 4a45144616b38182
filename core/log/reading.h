#pragma once
#include <cstddef>
#include <functional>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/log/layout.h"
#include "core/run/run.h"
#include "core/units/result.h"

namespace ovenwright::log {

/// The file a log came from: kept with every result.
struct LogFile {
  std::string file;
  std::string member;  ///< inside a zip, or the sheet of a workbook; else empty
  std::string sha256;  ///< of the file's bytes as they are on disk
  std::size_t bytes = 0;
};

/// One reading that was chosen and the other that would also have been plausible, for the panel and for `assumed`.
struct Assumption {
  std::string about;          ///< "unit", "date order", "decimal", "time", …: the layout's key
  std::string text;           ///< one English sentence: what was assumed and why
  std::string chosen, other;  ///< values of the layout's key; `other` may be empty
};

/// One of the tables of a file that could each be a log of its own: a file of an archive, a sheet of a workbook, a
/// table of a page, one of several tables under each other.
struct ListedTable {
  std::string member;    ///< the file in the archive; else empty
  std::string sheet;     ///< the sheet, or the number of a page's table; else empty
  int header_line = 0;   ///< where several stand under each other; else 0
  std::size_t rows = 0;  ///< of numbers, about; 0: not counted
  bool read = false;     ///< this one was read
  /// What it is picked by: "run8.csv", "run8.xlsx/Air", "Air", "line 705".
  std::string name() const;
};

/// What was detected and what was assumed; the JSON's `read_as`.
struct ReadAs {
  std::string encoding, delimiter, decimal, time, unit;
  int header_line = 0;
  std::size_t rows = 0, rows_skipped = 0;
  std::vector<Assumption> assumed;
  std::vector<std::string> notes;
  std::vector<ListedTable> tables;  ///< in the order of the file where there are several; else empty
};

/// A column that is kept as such and not judged: oxygen, battery, speed, zone temperatures.
struct OtherColumn {
  std::string name;
  std::vector<double> values;  ///< NaN where there is no number
};

/// A line of the file with its cells, for the panel that shows what stands in the file.
struct ShownLine {
  std::size_t line = 0;  ///< from 1
  std::vector<std::string> cells;
};

/// Where a sample stands in the file.
struct SampleCell {
  std::size_t line = 0;  ///< from 1
  int column = 0;        ///< from 1
};

/// A log, parsed but not cleaned.
struct Reading {
  LogFile file;
  ReadAs read_as;
  Layout layout;  ///< complete: reading with it again gives the same
  std::vector<run::RawChannel> channels;
  std::vector<OtherColumn> others;
  std::vector<std::vector<SampleCell>> cells;  ///< of each channel's samples; empty unless Options::keep_cells
  std::vector<ShownLine> shown;                ///< the first lines up to some rows after the header, and the last
  std::vector<Warning> warnings;
};

struct Options {
  std::optional<Layout> layout;  ///< what the user fixed; the rest is found
  /// Of a file with several tables the one to read: its name, or its number from 1, among ReadAs::tables of a reading
  /// without this. The layout's member, sheet and header line then give way.
  std::optional<std::string> table;
  std::optional<double> interval_s;       ///< for a row index without a stated interval
  std::size_t most_samples = 50'000'000;  ///< numbers in one log; more is refused before memory is spent
  std::size_t most_unpacked_bytes = std::size_t{4} << 30;
  bool digest = true;       ///< false: the file's sha256 is left empty, which saves a pass over its bytes
  bool keep_cells = false;  ///< true: the place of each sample in the file is kept, at the cost of time and memory
  unsigned threads = 0;     ///< 0: all cores
  /// Called now and then with the share done, 0 to 1, and rows so far; false stops with kCancelled. May be empty.
  std::function<bool(double done, std::size_t rows)> progress;
};

/// Reads any log by its content: text in any encoding, .xlsx, .ods, .html, and .zip or .gz around one of these.
/// Errors: kIo (missing, directory, no permission), kParse with line, column, found and expected, kBadArgument where
/// there is no such table, kCancelled.
Result<Reading> read(const std::string& path, const Options& options = {});
/// The same from memory; `name` stands in messages and helps to tell nothing else.
Result<Reading> read_bytes(const std::string& name, std::string_view bytes, const Options& options = {});
/// What ReadAs::tables would say, also where the table that is read by these options is refused. Empty where there is
/// one table or none. Cost: that of reading.
std::vector<ListedTable> tables_of(const std::string& name, std::string_view bytes, const Options& options = {});

}  // namespace ovenwright::log
