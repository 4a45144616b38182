#pragma once
#include <string_view>

#include "core/log/grid.h"
#include "core/log/unpack_budget.h"

namespace ovenwright::log {

/// Whether the bytes begin like a JSON document of objects or arrays, or like lines of them. "[Section]" does not.
bool is_json(std::string_view bytes);

/// The table in a JSON document: records in an array or one to a line, rows of arrays beside the names of their
/// columns, an array for each column, or a list of channels each with its array of values. What nests within a record
/// becomes columns of its own; single values outside of the table become lines of a key and a value above it. Lines
/// count from the document's first line for one record a line, else they are rows of the table.
///
/// Errors: kParse for what is no JSON (with its line), holds no such table, or is larger than can be held at once.
/// Never throws. Cost: the document is held in memory, at about ten times its size.
Result<Grid> read_json(std::string_view bytes, UnpackBudget& budget);

}  // namespace ovenwright::log
