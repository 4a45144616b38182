#pragma once
#include <optional>
#include <string_view>

namespace ovenwright::log {

/// A number at the front of a cell, and how it was written.
struct NumberText {
  double value = 0;
  int digits = 0;     ///< before the decimal sign
  int decimals = -1;  ///< digits after the decimal sign; -1 where there is no sign
  char grouping = 0;  ///< the thousands separator that was used: ',', '.', ' ' or '\''; 0: none
  bool exponent = false;
  std::string_view rest;  ///< what follows, trimmed: empty, or a unit
};

/// Reads a number as people and instruments write it: sign, thousands separators between whole groups of three (blank,
/// apostrophe, or the one of ',' and '.' that is not the decimal sign), decimal sign, exponent. Exactly rounded: the
/// double nearest to the decimal that stands there.
/// @param text     a trimmed cell in plain_forms
/// @param decimal  '.' or ','
/// Nothing where the cell does not start with a number. One ends where its groups do ("1,23" with a decimal point is 1
/// with the rest ",23").
std::optional<NumberText> read_number(std::string_view text, char decimal);

}  // namespace ovenwright::log
