#pragma once
#include <vector>

#include "core/log/reading.h"
#include "core/log/rows.h"
#include "core/log/table.h"

namespace ovenwright::log {

/// What a person needs to see of a file to recognise it: its first lines, the header with some rows behind it, and the
/// last rows. Long lines and cells are cut.
/// @param table   without columns: only first and last lines
/// @param before  a place in the text from which on the last lines are looked for
std::vector<ShownLine> shown_lines(RowSource& rows, const Table& table, Position before);

}  // namespace ovenwright::log
