#include "core/log/joined_commas.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <cmath>
#include <set>
#include <vector>

#include "core/log/column_values.h"
#include "core/log/text.h"

namespace ovenwright::log {
namespace {

bool is_digit(char c) { return c >= '0' && c <= '9'; }

bool digits_only(std::string_view cell) { return !cell.empty() && std::all_of(cell.begin(), cell.end(), is_digit); }

/// What a decimal comma can stand behind.
enum class Front { kNumbers, kNumbersAndClocks, kClocks };

bool whole_number(std::string_view cell) {
  if (!cell.empty() && (cell.front() == '-' || cell.front() == '+')) cell.remove_prefix(1);
  return digits_only(cell);
}

bool clock_seconds(std::string_view cell) {
  const auto seconds = cell.find_last_of(':');
  return seconds != std::string_view::npos && digits_only(cell.substr(seconds + 1)) && cell.size() - seconds - 1 == 2;
}

bool may_go_on(std::string_view cell, Front front) {
  return (front != Front::kClocks && whole_number(cell)) || (front != Front::kNumbers && clock_seconds(cell));
}

/// Ways to make `names` cells of the fields, at most 2 counted; the one way in `joins` (the field goes on in the next).
int ways(const std::vector<std::string_view>& fields, std::size_t names, Front front, std::vector<bool>& joins) {
  const std::size_t n = fields.size();
  // counts[i][j]: ways to make j cells of the fields from i on.
  std::vector<std::vector<int>> counts(n + 1, std::vector<int>(names + 1, 0));
  counts[n][0] = 1;
  const auto joinable = [&](std::size_t i) {
    return i + 1 < n && may_go_on(fields[i], front) && digits_only(fields[i + 1]);
  };
  for (std::size_t i = n; i-- > 0;) {
    for (std::size_t j = 1; j <= names; ++j) {
      int count = counts[i + 1][j - 1];
      if (joinable(i)) count += counts[i + 2][j - 1];
      counts[i][j] = std::min(count, 2);
    }
  }
  joins.assign(n, false);
  if (counts[0][names] == 1) {
    std::size_t i = 0;
    for (std::size_t j = names; j > 0; --j) {
      if (counts[i + 1][j - 1] == 1) {
        ++i;
      } else {
        joins[i] = true;
        i += 2;
      }
    }
  }
  return counts[0][names];
}

}  // namespace

Result<std::optional<Unjoined>> take_commas_apart(std::string_view text, const Table& table, std::size_t names,
                                                  const std::string& file) {
  using Nothing = std::optional<Unjoined>;
  constexpr std::size_t kMostNames = 512;
  if (names < 2 || names > kMostNames || names >= table.columns) return Nothing{};
  // A number with a decimal point settles that the comma is none, but for the fraction of a clock.
  const bool points = std::any_of(table.profile.begin(), table.profile.end(), [](const ColumnProfile& column) {
    return column.numbers > 0 && column.most_decimals >= 0;
  });
  Unjoined made;
  bool any_joined = false;
  if (points) made.decimal = '.';
  made.text.reserve(text.size() + 16);
  TextRows rows(text, {Dialect::Split::kDelimiter, ',', {}});
  Row row;
  std::vector<bool> joins;
  while (rows.next(row)) {
    const bool data = row.line >= table.first_row.line;
    const bool plain = row.text.find('"') == std::string_view::npos && row.text.find(';') == std::string_view::npos;
    std::vector<std::string_view> fields = row.cells;
    const bool has_numbers = std::count_if(fields.begin(), fields.end(),
                                           [](std::string_view f) { return may_go_on(f, Front::kNumbersAndClocks); }) *
                                 2 >=
                             static_cast<std::ptrdiff_t>(fields.size());
    if (!data || !has_numbers || row.blank()) {
      std::string line{row.text};
      if (plain) std::replace(line.begin(), line.end(), ',', ';');
      made.text += line;
    } else if (fields.size() <= names && !row.ended) {
      made.text += row.text;  // cut off: the row is left out later
    } else {
      constexpr std::size_t kMostFields = 2048;
      int count = 0;
      // A clock has a fraction only where nothing else fits.
      for (const Front front : {Front::kNumbers, Front::kNumbersAndClocks}) {
        const Front allowed = points ? Front::kClocks : front;
        if (count == 0 && fields.size() <= kMostFields) count = ways(fields, names, allowed, joins);
      }
      if (count != 1 && points) return Nothing{};
      if (count != 1 && !row.ended) break;
      if (count != 1) {
        const std::string found = fmt::format("{} fields under {} names", fields.size(), names);
        const char* why = count == 0 ? "no way to join them fits" : "the counts allow more than one way to join them";
        return Error{ErrorCode::kParse,
                     fmt::format("found {}, expected as many fields as names: the comma is the delimiter and seems to "
                                 "be the decimal sign as well, and {}",
                                 found, why),
                     {file, static_cast<int>(row.line), 0},
                     found,
                     "as many fields as names"};
      }
      for (std::size_t i = 0; i < fields.size(); ++i) {
        made.text += fields[i];
        any_joined = any_joined || joins[i];
        if (i + 1 < fields.size()) made.text += joins[i] ? made.decimal : ';';
      }
    }
    if (row.ended) made.text += '\n';
  }
  if (!any_joined) return Nothing{};  // more fields than names for another reason: empty columns at the end
  return Nothing{std::move(made)};
}

bool looks_like_one_column(const Table& table) {
  if (table.columns != 2 || table.sampled < 12 || table.headers.size() > 1) return false;
  const ColumnProfile &whole = table.profile[0], &part = table.profile[1];
  if (!whole.whole_numbers || !part.whole_numbers || whole.numbers < table.sampled || part.numbers < table.sampled)
    return false;
  if (share_rising(whole.values) > 0.95) return false;  // a time
  std::set<double> digits;
  for (const double v : part.values) {
    if (v < 0 || v > 9) return false;
    digits.insert(v);
  }
  return digits.size() >= 5;
}

bool looks_torn_apart(const Table& table) {
  if (table.columns < 4 || table.columns % 2 != 0 || table.sampled < 12) return false;
  for (std::size_t i = 0; i < table.columns; ++i) {
    const ColumnProfile& column = table.profile[i];
    if (column.holds() != ColumnProfile::Holds::kNumbers || !column.whole_numbers) return false;
    if (i % 2 == 0) continue;
    std::set<double> values;
    for (const double v : column.values) {
      if (!std::isfinite(v)) continue;
      if (v < 0 || v > 9) return false;
      values.insert(v);
    }
    if (i > 1 && values.size() < 5) return false;
  }
  // The whole numbers before them do not keep to ten digits.
  for (std::size_t i = 2; i < table.columns; i += 2) {
    const auto& values = table.profile[i].values;
    if (std::all_of(values.begin(), values.end(), [](double v) { return !std::isfinite(v) || (v >= 0 && v <= 9); }))
      return false;
  }
  return true;
}

}  // namespace ovenwright::log
