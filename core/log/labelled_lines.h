#pragma once
#include <optional>
#include <string_view>

#include "core/log/grid.h"

namespace ovenwright::log {

/// The table in lines that name each of their values: "t=0.5 TC1=25.0 TC2=24.8", "[10:22:01] U1: 25.3 °C; U2: 24.9 °C",
/// "12.5 s; U1 25.3 °C; U2 24.9 °C", attributes of an XML element in each line, also with one channel a line. The names
/// become a row above the first such line, a time without a name a column of its own; lines that follow each other with
/// the same time and other names are one row. Other lines are rows of one cell. From the first line with names on rows
/// stand at their lines in the text; the row of names is at no line of its own, and rows above it stand a line too low.
/// Nothing where lines are no such thing, for more than 256 MiB, for more than 4096 names and a time, or where rows
/// would be so empty that the table has 2^20 cells and four more for each byte of the text (2^25 at most). Cost: a look
/// at the sample of dialect.h for other texts, else proportional to the text and the cells.
std::optional<Grid> labelled_lines(std::string_view text);

}  // namespace ovenwright::log
