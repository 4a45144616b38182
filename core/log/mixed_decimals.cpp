#include "core/log/mixed_decimals.h"

#include <algorithm>
#include <map>
#include <vector>

#include "core/log/number.h"
#include "core/log/text.h"

namespace ovenwright::log {
namespace {

constexpr auto kNone = std::string_view::npos;

/// '.' or ',' where the cell is a plain number with that decimal sign and none with the other; else 0. The text is
/// changed byte by byte, so only plain ASCII counts.
char decimal_of(std::string_view cell) {
  if (cell.empty() || cell.size() > 24 || cell.find_first_not_of("0123456789.,-+eE ") != kNone) return 0;
  const auto read = [cell](char decimal) {
    auto number = read_number(cell, decimal);
    if (number && !number->rest.empty()) number.reset();
    return number;
  };
  const auto point = read('.'), comma = read(',');
  if (point.has_value() == comma.has_value()) return 0;  // "1.500" is a number with either
  if (point) return point->decimals > 0 ? '.' : '\0';
  return comma->decimals > 0 ? ',' : '\0';
}

struct Signs {
  std::size_t point = 0, comma = 0;
};

/// The decimal sign of each column: 0 where it shows none. Nothing where a column shows both, or none differ.
std::optional<std::vector<char>> signs_of_columns(std::string_view text, const Dialect& dialect) {
  constexpr std::size_t kFewest = 2;
  std::map<std::size_t, std::vector<Signs>> by_width;
  std::map<std::size_t, std::size_t> rows_of_width;
  Row row;
  for (const auto piece : sample_of(text)) {
    TextRows rows(piece, dialect);
    while (rows.next(row)) {
      if (row.cells.size() < 2 || row.cells.size() > 4000) continue;
      auto& columns = by_width[row.cells.size()];
      columns.resize(row.cells.size());
      bool any = false;
      for (std::size_t i = 0; i < row.cells.size(); ++i) {
        const char sign = decimal_of(row.cells[i]);
        columns[i].point += sign == '.' ? 1 : 0;
        columns[i].comma += sign == ',' ? 1 : 0;
        any = any || sign != 0;
      }
      if (any) ++rows_of_width[row.cells.size()];
    }
  }
  const auto most = std::max_element(rows_of_width.begin(), rows_of_width.end(),
                                     [](const auto& a, const auto& b) { return a.second < b.second; });
  if (most == rows_of_width.end()) return std::nullopt;
  std::vector<char> signs;
  bool point = false, comma = false;
  for (const Signs& column : by_width[most->first]) {
    if (column.point > 0 && column.comma > 0) return std::nullopt;
    signs.push_back(column.point >= kFewest ? '.' : column.comma >= kFewest ? ',' : '\0');
    point = point || signs.back() == '.';
    comma = comma || signs.back() == ',';
  }
  return point && comma ? std::optional{std::move(signs)} : std::nullopt;
}

AlikeDecimals exchanged(std::string_view text, const Dialect& dialect, const std::vector<char>& signs, char decimal) {
  AlikeDecimals alike{std::string{text}, decimal, 0, 0};
  alike.point = static_cast<std::size_t>(std::count(signs.begin(), signs.end(), '.'));
  alike.comma = static_cast<std::size_t>(std::count(signs.begin(), signs.end(), ','));
  TextRows rows(text, dialect);
  Row row;
  const char other = decimal == '.' ? ',' : '.';
  while (rows.next(row)) {
    for (std::size_t i = 0; i < std::min(signs.size(), row.cells.size()); ++i) {
      const auto cell = row.cells[i];
      if (signs[i] != other || decimal_of(cell) != other) continue;
      const bool within = cell.data() >= text.data() && cell.data() + cell.size() <= text.data() + text.size();
      if (!within) continue;
      for (std::size_t at = static_cast<std::size_t>(cell.data() - text.data()), k = 0; k < cell.size(); ++k, ++at) {
        if (cell[k] == '.' || cell[k] == ',') alike.text[at] = cell[k] == '.' ? ',' : '.';
      }
    }
  }
  return alike;
}

}  // namespace

std::optional<AlikeDecimals> with_alike_decimals(std::string_view text, const DialectGuess& guess,
                                                 const Layout& fixed) {
  std::vector<Dialect> tried;
  const bool comma = guess.dialect.split == Dialect::Split::kDelimiter && guess.dialect.delimiter == ',';
  if (guess.columns > 1 && !comma && guess.dialect.split != Dialect::Split::kWhole) tried.push_back(guess.dialect);
  if (guess.columns < 2) {
    const auto head = text.substr(0, 1U << 14);
    const std::string stated = fixed.delimiter.value_or(";\t| ");
    for (const char delimiter : {';', '\t', '|', ' '}) {
      if (stated.find(delimiter) == kNone || head.find(delimiter) == kNone) continue;
      tried.push_back({delimiter == ' ' ? Dialect::Split::kBlanks : Dialect::Split::kDelimiter, delimiter, {}});
    }
  }
  for (const Dialect& dialect : tried) {
    const auto signs = signs_of_columns(text, dialect);
    if (!signs) continue;
    const auto points = std::count(signs->begin(), signs->end(), '.');
    const auto commas = std::count(signs->begin(), signs->end(), ',');
    const char decimal = fixed.decimal && !fixed.decimal->empty() ? fixed.decimal->front()
                         : commas > points                        ? ','
                                                                  : '.';
    return exchanged(text, dialect, *signs, decimal);
  }
  return std::nullopt;
}

}  // namespace ovenwright::log
