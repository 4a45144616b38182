#pragma once
#include <string>
#include <string_view>
#include <vector>

#include "core/log/grid.h"
#include "core/log/unpack_budget.h"

namespace ovenwright::log {

/// Whether the bytes begin as an HTML document or table does, in any encoding that keeps ASCII or is UTF-16.
bool is_html(std::string_view bytes);

struct HtmlTables {
  std::vector<Grid> grids;   ///< tables that hold text, in the order in which they begin
  std::string preformatted;  ///< text of <pre> elements
  bool cut_off = false;      ///< the document ends within a row, which was left out
};

/// The tables of an HTML document, cells not closed and other faults allowed for. A cell's text stands as it is
/// shown, blanks joined; cells spanning columns or rows leave the others of their span empty. A table within a cell is
/// a table of its own; tables behind each other with the same header, or whose header is a table, are one. Errors: kParse (not text, over the budget). Cost: O(n), no tree is built.
Result<HtmlTables> read_html(std::string_view bytes, UnpackBudget& budget);

}  // namespace ovenwright::log
