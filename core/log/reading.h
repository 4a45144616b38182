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

/// What was detected and what was assumed; the JSON's `read_as`.
struct ReadAs {
  std::string encoding, delimiter, decimal, time, unit;
  int header_line = 0;
  std::size_t rows = 0, rows_skipped = 0;
  std::vector<Assumption> assumed;
  std::vector<std::string> notes;
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
  std::optional<Layout> layout;           ///< what the user fixed; the rest is found
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
/// Errors: kIo (missing, directory, no permission), kParse with line, column, found and expected, kCancelled.
Result<Reading> read(const std::string& path, const Options& options = {});
/// The same from memory; `name` stands in messages and helps to tell nothing else.
Result<Reading> read_bytes(const std::string& name, std::string_view bytes, const Options& options = {});

}  // namespace ovenwright::log
