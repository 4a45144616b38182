#pragma once
#include <optional>
#include <vector>

#include "core/log/dialect.h"
#include "core/log/grid.h"
#include "core/log/layout.h"
#include "core/log/rows.h"
#include "core/log/table.h"

namespace ovenwright::log {

/// A table whose channels stand in rows, turned round: what were the cells of a row are rows now, so that line i of the
/// grid is cell i of the file's rows.
struct TurnedTable {
  Grid grid;
  std::vector<std::size_t> lines;  ///< for each column of the grid the line in the file
  std::vector<Statement> others;   ///< lines that are not of the table
};

/// Turns a table where its rows are channels: few long rows that start with names, one of them of rising times. With
/// `forced` any rows of numbers are turned. Nothing where the text is laid out otherwise.
std::optional<TurnedTable> turned_rows(RowSource& rows, std::size_t columns, char decimal, bool forced);

}  // namespace ovenwright::log
