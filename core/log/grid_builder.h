#pragma once
#include <cstddef>
#include <optional>
#include <string>

#include "core/log/grid.h"
#include "core/log/unpack_budget.h"

namespace ovenwright::log {

/// Puts cells of a sheet where they stand, and keeps files that place or repeat cells far apart from filling memory:
/// cells that the file does not hold itself (gaps, repeats) may number four million and eight times those that it does.
class GridBuilder {
 public:
  /// The most that any spreadsheet program has.
  static constexpr std::size_t kMostRows = 1'048'576, kMostColumns = 16'384;

  GridBuilder(std::string name, UnpackBudget& budget) : budget_(&budget) { grid_.name = std::move(name); }

  /// Row and column count from 0; empty text places nothing. Errors: kParse where the place or the amount is out of
  /// range.
  std::optional<Error> place(std::size_t row, std::size_t column, std::string text);
  /// Copies a row as it is now into the `times` rows below it.
  std::optional<Error> repeat_row(std::size_t row, std::size_t times);
  bool has_row(std::size_t row) const { return row < grid_.rows.size() && !grid_.rows[row].empty(); }
  Grid take() { return std::move(grid_); }

 private:
  std::optional<Error> fill(std::size_t cells);
  std::optional<Error> out_of_range() const;
  Grid grid_;
  UnpackBudget* budget_;
  std::size_t held_ = 0;    ///< cells that the file holds
  std::size_t filled_ = 0;  ///< cells made beside them
};

}  // namespace ovenwright::log
