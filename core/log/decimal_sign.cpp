#include "core/log/decimal_sign.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "core/log/column_values.h"
#include "core/log/header.h"
#include "core/log/number.h"
#include "core/log/table.h"
#include "core/log/text.h"
#include "core/units/phrase.h"

namespace ovenwright::log {
namespace {

/// '.' or ',' where the cell is a number with that decimal sign alone; 0 where it is one with both, or none.
char settles(std::string_view cell) {
  if (cell.find_first_of(".,") == std::string_view::npos) return 0;
  const std::string plain = plain_forms(cell);
  const auto number = [&plain](char decimal) {
    const auto read = read_number(plain, decimal);
    return read && (read->rest.empty() || parse_unit(read->rest).has_value());
  };
  const bool point = number('.'), comma = number(',');
  if (point == comma) {
    // Groups do not start with a zero: "0,512" has a decimal comma.
    if (!point) return 0;
    const auto digits = plain.find_first_of("0123456789");
    if (digits != std::string::npos && plain[digits] == '0' && digits + 1 < plain.size() &&
        (plain[digits + 1] == '.' || plain[digits + 1] == ','))
      return plain[digits + 1];
    return 0;
  }
  return point ? '.' : ',';
}

/// How much the table, read with that sign, is a run: times that go forward, temperatures of an oven.
int plausibility(RowSource& rows, const DialectGuess& guess, char decimal) {
  Table table = find_table(rows, guess.columns, decimal, 0, false);
  if (table.columns == 0) return -1;
  int points = 0;
  const TableHeader header = read_header(table, guess.dialect, {});
  std::size_t warm = 0, numeric = 0;
  bool rising = false, clock = false;
  for (std::size_t i = 0; i < table.columns; ++i) {
    const ColumnProfile& column = table.profile[i];
    if (column.holds() == ColumnProfile::Holds::kTimes) clock = true;
    if (column.holds() != ColumnProfile::Holds::kNumbers) continue;
    if (!rising && !clock && share_rising(column.values) >= 0.999) {
      rising = true;
      const auto& unit = header.columns[i].unit;
      if (!unit || unit->quantity != Quantity::kTime) continue;
      const double duration_s = (robust_peak(column.values) - robust_start(column.values)) * unit->factor;
      if (duration_s > 15 && duration_s < 20000) points += 2;
      continue;
    }
    ++numeric;
    const double peak = robust_peak(column.values), start = robust_start(column.values);
    if (peak > 3 && peak < 700 && start > -20 && start < 340) ++warm;
  }
  points += rising || clock ? 2 : 0;
  points += numeric > 0 && 2 * warm >= numeric ? 2 : 0;
  return points;
}

}  // namespace

DecimalChoice settle_decimal(RowSource& rows, const DialectGuess& guess) {
  DecimalChoice choice{guess.decimal, std::nullopt};
  Row row;
  char seen = 0;
  std::string example;
  rows.seek({});
  while (rows.next(row)) {
    if (row.cells.size() != guess.columns) continue;
    // A line of metadata of the same width starts with a word.
    if (read_cell(row.cells.front(), '.').kind == CellKind::kText &&
        read_cell(row.cells.front(), ',').kind == CellKind::kText)
      continue;
    for (const auto cell : row.cells) {
      if (const char sign = settles(cell)) {
        choice.decimal = sign;
        return choice;
      }
      const auto at = seen == 0 ? cell.find_first_of(".,") : std::string_view::npos;
      if (at != std::string_view::npos && read_number(cell, '.').has_value() &&
          cell.find_first_not_of("0123456789.,-+ ") == std::string_view::npos) {
        seen = cell[at];
        example = std::string{cell};
      }
    }
  }
  if (seen == 0) return choice;
  const int point = plausibility(rows, guess, '.'), comma = plausibility(rows, guess, ',');
  choice.decimal = point == comma ? seen : point > comma ? '.' : ',';
  if (std::abs(point - comma) >= 2) return choice;
  const char other = choice.decimal == '.' ? ',' : '.';
  choice.assumed = Assumption{"decimal", say(Phrase::kDecimal, {example, std::string(1, choice.decimal)}),
                              std::string(1, choice.decimal), std::string(1, other)};
  return choice;
}

}  // namespace ovenwright::log
