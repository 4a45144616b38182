#pragma once
#include <string>
#include <string_view>

namespace ovenwright::report {

/// A text as a spreadsheet may be given it: an apostrophe stands before whatever one would calculate, at the start and
/// behind each separator (comma, semicolon, tab, line end), as a table is not always cut where its writer meant. Blanks
/// and quotation marks before the formula change nothing. Cost: O(n).
/// Source of what begins a formula: common practice, no source.
std::string no_formula(std::string_view text);

/// Whether a text is a number with a sign at most, "−39 %": nothing that is calculated.
bool reads_as_number(std::string_view text);

/// no_formula() as a cell of a table separated by commas, in quotation marks where it needs them.
std::string csv_cell(std::string_view text);

}  // namespace ovenwright::report
