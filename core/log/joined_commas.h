#pragma once
#include <cstddef>
#include <optional>
#include <string>
#include <string_view>

#include "core/log/rows.h"
#include "core/log/table.h"
#include "core/units/result.h"

namespace ovenwright::log {

/// A comma-delimited text whose numbers have decimal commas without quotes, taken apart again.
struct Unjoined {
  std::string text;    ///< the same lines, delimited by semicolons
  char decimal = ',';  ///< '.' where only the fraction of a clock's seconds was torn off
};

/// Rows with more fields than there are names: each name's cell is one field, or two that a decimal comma tore apart.
/// Where only one way fits a row it is taken; rows are taken apart one by one.
/// @param first     the first row of data
/// @param names     how many columns the header names
/// Nothing where the rows hold no whole numbers throughout. Errors: kParse at the first row that more than one way, or
/// none, fits.
Result<std::optional<Unjoined>> take_commas_apart(std::string_view text, const Table& table, std::size_t names,
                                                  const std::string& file);

/// Without names: every second column holds nothing but digits that jump about, as decimals do.
bool looks_torn_apart(const Table& table);
/// "25,4" in every line: a column of temperatures, not two of whole numbers.
bool looks_like_one_column(const Table& table);

}  // namespace ovenwright::log
