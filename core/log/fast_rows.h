#pragma once
#include <cstddef>
#include <cstdint>
#include <vector>

namespace ovenwright::log {

/// Rows of plain numbers between single delimiters, read without looking at what else a cell may be. First the ends of
/// all cells of some kilobytes are found, 64 bytes at once, so that no number waits for the one before it; then each
/// row's numbers are read, four at a time where the processor can (four_numbers.h), else and what is left one by one.
class FastRows {
 public:
  /// @param targets  for each column where its numbers go; nullptr: the cell is passed over
  FastRows(const std::vector<double*>& targets, char delimiter, char decimal);
  /// The same with four numbers at a time or without, as told: for tests.
  FastRows(const std::vector<double*>& targets, char delimiter, char decimal, bool four_at_a_time);
  /// Whether there is anything to read this way.
  bool usable() const { return columns_ > 0; }
  /// Reads rows that begin before `end` to the places from `at` on, at most `most` of them, until one is of another
  /// kind, holds a quote, or is within the last bytes of the text. Moves `p` behind the last row read.
  /// @param begin, text_end  the whole text: 8 bytes before a cell's end are looked at, and whole blocks
  std::size_t read(const char*& p, const char* begin, const char* end, const char* text_end, std::size_t at,
                   std::size_t most);

 private:
  /// Rows whose ends were found: how many of them are numbers throughout.
  std::size_t read_one_by_one(const char* base, std::size_t rows, std::size_t first) const;
  std::size_t read_by_four(const char* base, std::size_t rows) const;
  bool read_one(const char* base, std::size_t row, std::size_t column) const;

  std::vector<double*> targets_;
  std::vector<double*> places_;      ///< where the cells of the next four rows go
  std::vector<double> passed_over_;  ///< for cells that are not wanted
  std::vector<std::uint32_t> ends_;  ///< offsets behind the cells found; the first is just in front of them
  std::size_t columns_ = 0, most_bytes_ = 0;
  char delimiter_, decimal_;
  bool by_four_, passes_over_ = false;
};

}  // namespace ovenwright::log
