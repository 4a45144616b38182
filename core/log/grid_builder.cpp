#include "core/log/grid_builder.h"

#include <fmt/format.h>

namespace ovenwright::log {

std::optional<Error> GridBuilder::out_of_range() const {
  const auto expected = fmt::format("at most {} rows of {} cells", kMostRows, kMostColumns);
  return Error{ErrorCode::kParse,
               fmt::format("sheet \"{}\" places a cell out of range, expected {}", grid_.name, expected),
               {},
               "a cell out of range",
               expected};
}

std::optional<Error> GridBuilder::fill(std::size_t cells) {
  filled_ += cells;
  if (filled_ <= 4'000'000 + 8 * held_) return std::nullopt;
  return Error{ErrorCode::kParse,
               fmt::format("sheet \"{}\" spreads {} cells over millions of empty or repeated ones, expected a table",
                           grid_.name, held_),
               {},
               "cells too far apart",
               "a table"};
}

std::optional<Error> GridBuilder::place(std::size_t row, std::size_t column, std::string text) {
  if (text.empty()) return std::nullopt;
  if (row >= kMostRows || column >= kMostColumns) return out_of_range();
  if (!budget_->take(text.size())) return budget_->exceeded(fmt::format("sheet \"{}\"", grid_.name));
  ++held_;
  if (row >= grid_.rows.size()) grid_.rows.resize(row + 1);
  auto& cells = grid_.rows[row];
  if (column >= cells.size()) {
    if (auto error = fill(column - cells.size())) return error;
    cells.resize(column + 1);
  }
  cells[column] = std::move(text);
  return std::nullopt;
}

std::optional<Error> GridBuilder::repeat_row(std::size_t row, std::size_t times) {
  if (!has_row(row)) return std::nullopt;
  if (times >= kMostRows - row) return out_of_range();
  std::size_t bytes = 0;
  for (const auto& cell : grid_.rows[row]) bytes += cell.size();
  if (auto error = fill(times * grid_.rows[row].size())) return error;
  if (bytes > 0 && (times > budget_->left() / bytes || !budget_->take(times * bytes))) {
    return budget_->exceeded(fmt::format("sheet \"{}\"", grid_.name));
  }
  if (grid_.rows.size() < row + 1 + times) grid_.rows.resize(row + 1 + times);
  for (std::size_t i = 1; i <= times; ++i) grid_.rows[row + i] = grid_.rows[row];
  return std::nullopt;
}

}  // namespace ovenwright::log
