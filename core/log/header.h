#pragma once
#include <optional>
#include <string>
#include <vector>

#include "core/log/header_text.h"
#include "core/log/rows.h"
#include "core/log/table.h"

namespace ovenwright::log {

/// What the rows above the data say about each column.
struct TableHeader {
  int line = 0;  ///< of the row of names, from 1; 0: none
  struct Column {
    std::string name;     ///< without the unit; may be empty
    std::string bracket;  ///< in brackets behind the name, no unit that is known
    std::optional<UnitText> unit;
    std::string foreign_unit;  ///< stands in a row of units, and is none that is known
    int foreign_unit_line = 0;
    std::optional<UnitText> ending;  ///< a plain letter at the end of the name
    std::string name_before_ending;
    Words words = kNoWord;       ///< of all rows
    Words name_words = kNoWord;  ///< of the name alone
    char thermocouple = 0;
    double factor = 1;  ///< in a row of factors above the data
    std::string texts;  ///< all that stands above the column
  };
  std::vector<Column> columns;
};

/// Lays the header rows of a table over its columns: rows of names, units, descriptions, methods in any order. Rows
/// split at blanks are fitted by their places. Rows that cannot be fitted go to `table.above`.
TableHeader read_header(Table& table, const Dialect& dialect, std::string_view first_line_of_data);

}  // namespace ovenwright::log
