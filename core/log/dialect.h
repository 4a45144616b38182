#pragma once
#include <cstddef>
#include <optional>
#include <string_view>
#include <vector>

#include "core/log/layout.h"
#include "core/log/rows.h"

namespace ovenwright::log {

/// Head, some of the middle and the tail of a text: enough to see how it is laid out.
std::vector<std::string_view> sample_of(std::string_view text);

/// How the lines fall into cells, and what the cells say about the decimal sign.
struct DialectGuess {
  Dialect dialect;
  char decimal = '.';
  std::size_t columns = 0;    ///< cells in a row of the table; 0: no table was seen
  double score = 0;           ///< share of the lines with digits that are rows of one table, weighted by purity
  double best_piece = 0;      ///< the score in the piece of the sample where it is highest
  bool decimal_open = false;  ///< the cells seen would be numbers with either sign
  bool other_decimal_possible = false;
};

/// Tries delimiters, blanks, fixed columns and both decimal signs and takes what makes most lines rows of one width
/// whose cells are numbers and times. What `fixed` states is not tried otherwise.
/// Cost: a few passes over the sample.
DialectGuess guess_dialect(std::string_view text, const Layout& fixed);

/// The same for a grid, whose cells are known: only the decimal sign and the width are open.
DialectGuess guess_grid(const Grid& grid, const Layout& fixed);

}  // namespace ovenwright::log
