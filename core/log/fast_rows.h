#pragma once
#include <cstddef>
#include <cstdint>
#include <vector>

namespace ovenwright::log {

/// Rows of plain numbers between single delimiters, read without looking at what else a cell may be. The ends of cells
/// are found for 64 bytes at once, so that one number need not wait for the one before it; a number of up to eight
/// digits is one word of 8 bytes whose decimal sign is looked for where it stood in the row before.
class FastRows {
 public:
  /// @param targets  for each column where its numbers go; nullptr: the cell is passed over
  FastRows(const std::vector<double*>& targets, char delimiter, char decimal);
  /// Whether there is anything to read this way.
  bool usable() const { return !columns_.empty(); }
  /// Reads rows from `p` on to the places from `at` on, at most `most` of them, until one is of another kind or within
  /// the last bytes before `end`. Moves `p` behind the last row read.
  /// @param begin  of the text: 8 bytes before a cell's end are looked at
  std::size_t read(const char*& p, const char* begin, const char* end, std::size_t at, std::size_t most);

 private:
  struct Column {
    double* target = nullptr;
    std::ptrdiff_t decimals = 0;  ///< digits behind the decimal sign in the row before
    std::uint64_t behind = 0;     ///< the bytes of a word in which they stand
    double power = 1;             ///< what a whole number of all digits is divided by
  };
  static bool read_word(const char* start, const char* end, const Column& column, char decimal, double& value);
  bool read_any(const char* start, const char* end, Column& column, double& value) const;
  static void expect_decimals(Column& column, std::ptrdiff_t decimals);

  std::vector<Column> columns_;
  char delimiter_, decimal_;
};

}  // namespace ovenwright::log
