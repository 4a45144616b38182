#pragma once
#include <cstddef>
#include <optional>
#include <string>
#include <utility>
#include <vector>

#include "core/log/wide.h"

namespace ovenwright::log {

/// A cell that stands in the way.
struct Problem {
  std::size_t line = 0;
  int column = 0;  ///< from 1; 0: the row
  std::string found, expected;
};

/// Reads single rows by a plan and keeps account of those that are none. One for each part of a text.
class RowReader {
 public:
  RowReader(const WidePlan& plan, std::vector<std::vector<double>>& times, std::vector<std::vector<double>>& values)
      : plan_(plan), times_(times), values_(values) {}

  /// Takes one row; it goes to place `at` of the arrays. True where it was a row of data.
  bool take(const Row& row, std::size_t at);

  struct Account {
    std::size_t skipped = 0;
    std::size_t first_data_line = 0, last_data_line = 0;
    std::vector<Problem> unreadable;  ///< cells in rows of data; the first few
    std::vector<Problem> timeless;    ///< rows of numbers without a time; the first few, and the last
    std::vector<Problem> short_rows;
    std::vector<Problem> odd_rows;  ///< too many cells, a header or a decimal sign of their own; the first few
    std::size_t short_count = 0;
    std::size_t unreadable_count = 0;
    std::size_t timeless_count = 0, timeless_behind = 0;      ///< all, and those since the last row of data
    std::vector<std::pair<std::string, std::size_t>> doubts;  ///< remarks behind numbers that are no readings by them
    bool unreadable_alike = true;                             ///< the same text in all of them
    std::vector<std::size_t> breaks;  ///< places of rows of data that a blank or other line stands before; the last few
    std::size_t repeated_headers = 0, statistics = 0, comments = 0;
    std::size_t other_rows = 0;           ///< under the header of a narrower table
    std::vector<Statement> last_skipped;  ///< since the last row of data; the first few
    bool last_row_cut = false;            ///< the file ends within the last row of data
    /// Lines that were counted from the start of a piece are counted from that of the file.
    void shift(std::size_t lines);
  };
  Account account;

  /// Notes that rows of data were read another way.
  void note_rows(std::size_t first_line, std::size_t last_line, std::size_t at);

  /// Time of a row by one clock. kEmpty where nothing stands there.
  enum class TimeState { kRead, kEmpty, kUnreadable };
  TimeState read_time(const Row& row, const TimePlan& clock, double& time) const;

 private:
  void skip(const Row& row);
  /// A header in the middle that names the same time and other channels, or the same in another order.
  bool other_header(const Row& row, Problem& problem) const;
  /// "REFLOW LOG PAGE 2": the title of a page, most of its cells words.
  bool line_of_words(const Row& row, std::size_t numbers, std::size_t texts) const;
  /// A row of numbers with the other decimal sign.
  bool other_decimal(const Row& row) const;
  bool cut_off(const Row& row) const;

  bool break_pending_ = false;
  std::size_t other_table_ = 0;  ///< cells in the header of a narrower table that begins here; 0: none
  const WidePlan& plan_;
  std::vector<std::vector<double>>& times_;
  std::vector<std::vector<double>>& values_;
};

/// What the accounts of all parts, in the order of the file, come to: notes and warnings in `result`, or the first
/// thing in the way. `drop_last` takes whether the last row that was taken was cut short.
/// @param rows  that were taken
std::optional<Error> settle(std::vector<RowReader::Account>& accounts, std::size_t rows, const WidePlan& plan,
                            const std::string& file, WideResult& result, bool& drop_last);

}  // namespace ovenwright::log
