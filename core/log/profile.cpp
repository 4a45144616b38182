#include <algorithm>
#include <cmath>
#include <limits>

#include "core/log/column_values.h"
#include "core/log/dialect.h"
#include "core/log/table.h"
#include "core/log/text.h"

namespace ovenwright::log {
namespace {

constexpr std::size_t kSampledRows = 200;
constexpr std::size_t kFirstRows = 100;        // all of these, so that a change from row to row shows
constexpr std::size_t kMostWalked = 1U << 20;  // a table up to this many bytes is walked row by row
constexpr double kNaN = std::numeric_limits<double>::quiet_NaN();

void add_cell(ColumnProfile& column, std::string_view text, const Cell& cell) {
  double value = kNaN;
  switch (cell.kind) {
    case CellKind::kEmpty:
      ++column.empty;
      break;
    case CellKind::kOpen:
    case CellKind::kOver:
    case CellKind::kUnder:
      ++column.open;
      break;
    case CellKind::kNumber:
      ++column.numbers;
      value = cell.value;
      column.tolerances += cell.tolerance ? 1 : 0;
      column.most_decimals = std::max(column.most_decimals, cell.decimals);
      column.fewest_decimals = std::min(column.fewest_decimals, std::max(0, cell.decimals));
      column.whole_numbers = column.whole_numbers && cell.decimals < 0 && value == std::floor(value);
      if (cell.unit && column.unit_seen.empty() && cell.tolerance) {
        column.unit_seen = cell.unit->name;
      } else if (cell.unit && column.unit_seen.empty())
        column.unit_seen = std::string{trim(text.substr(text.find_last_of("0123456789.,") + 1))};
      break;
    case CellKind::kTime:
      ++column.times;
      column.time_texts.push_back(cell.time);
      column.packed += cell.time.packed ? 1 : 0;
      if (cell.time.packed) value = cell.value;
      break;
    case CellKind::kText:
      ++column.texts;
      break;
  }
  column.values.push_back(value);
  const bool category = cell.kind == CellKind::kText || (cell.number() && cell.decimals < 0 && std::abs(value) < 1000);
  if (!category) return;
  if (column.values.size() <= kFirstRows && !column.texts_seen.empty() && column.texts_seen.back() != text)
    ++column.text_changes;
  const auto seen = std::find(column.texts_seen.begin(), column.texts_seen.end(), text);
  if (seen != column.texts_seen.end()) {
    // The last one seen stands at the end, so that a change shows.
    std::rotate(seen, seen + 1, column.texts_seen.end());
  } else if (column.texts_seen.size() < 40) {
    column.texts_seen.emplace_back(text);
  }
}

std::size_t used_cells(const Row& row) {
  std::size_t used = row.cells.size();
  while (used > 0 && row.cells[used - 1].empty()) --used;
  return used;
}

bool has_width(const Row& row, std::size_t columns) {
  return row.cells.size() == columns || (row.cells.size() > columns && used_cells(row) <= columns);
}

/// Where the rows of a table start, from its first one on. In text without quotes every line that is not empty counts:
/// that some are none shows when they are looked at.
std::vector<Position> places_of_rows(RowSource& rows, const Table& table) {
  std::vector<Position> places;
  const std::string_view text = rows.text();
  const std::size_t from = std::min(table.first_row.offset, text.size());
  const auto none = std::string_view::npos;
  if (text.empty() || text.find('"', from) != none || text.find('\n', from) == none) {
    Row row;
    rows.seek(table.first_row);
    while (true) {
      const Position place = rows.position();
      if (!rows.next(row)) break;
      if (has_width(row, table.columns)) places.push_back(place);
    }
    return places;
  }
  for (std::size_t at = from; at < text.size();) {
    const std::size_t end = std::min(text.find('\n', at), text.size());
    if (end > at && text[at] != '\r') places.push_back({at, 0});
    at = end + 1;
  }
  return places;
}

}  // namespace

namespace {

/// Whether a column goes along with another in a straight line, as a count of rows and a clock do; a temperature that
/// rises as long as the log goes does not.
bool goes_along(const ColumnProfile& column, const ColumnProfile& with) {
  constexpr double kOff = 0.02;  // of the range: a clock is rounded, and an interval is now and then longer
  std::size_t first = 0, last = 0;
  bool any = false;
  const auto both = [&](std::size_t i) { return !std::isnan(column.values[i]) && !std::isnan(with.values[i]); };
  for (std::size_t i = 0; i < std::min(column.values.size(), with.values.size()); ++i) {
    if (!both(i)) continue;
    if (!any) first = i;
    any = true;
    last = i;
  }
  const double range = column.values.empty() ? 0 : column.values[last] - column.values[first];
  const double with_range = with.values.empty() ? 0 : with.values[last] - with.values[first];
  if (!any || with_range == 0) return false;
  for (std::size_t i = first; i <= last; ++i) {
    if (!both(i)) continue;
    const double line = column.values[first] + range * ((with.values[i] - with.values[first]) / with_range);
    if (std::abs(column.values[i] - line) > kOff * std::abs(range)) return false;
  }
  return true;
}

/// Times; without them the first rising column and those that go along with it. Where there are none either, every
/// column that is always filled counts.
void find_keys(std::vector<ColumnProfile>& profile) {
  bool any = false;
  for (ColumnProfile& column : profile) {
    column.key = column.always_filled && column.holds() == ColumnProfile::Holds::kTimes;
    any = any || column.key;
  }
  const ColumnProfile* first = nullptr;
  // One that lacks a few cells may be a channel that rises in a straight line; a time lacks none.
  const bool whole = std::any_of(profile.begin(), profile.end(), [](const ColumnProfile& column) {
    return column.always_filled && column.empty == 0 && rising(column);
  });
  for (ColumnProfile& column : profile) {
    if (any || !column.always_filled || !rising(column) || (whole && column.empty > 0)) continue;
    if (first == nullptr) first = &column;
    column.key = goes_along(column, *first);
  }
  any = any || first != nullptr;
  if (any) return;
  for (ColumnProfile& column : profile) column.key = column.always_filled;
}

}  // namespace

std::vector<ColumnProfile> first_profile(RowSource& rows, std::size_t columns, char decimal) {
  std::vector<ColumnProfile> profile(columns);
  std::size_t taken = 0;
  Row row;
  std::vector<Cell> cells;
  const auto add_row = [&] {
    if (!has_width(row, columns)) return;
    std::size_t good = 0, bad = 0;
    cells.clear();
    for (const auto text : row.cells) {
      const Cell& cell = cells.emplace_back(read_cell(text, decimal));
      if (cell.number() || cell.kind == CellKind::kTime) ++good;
      if (cell.kind == CellKind::kText && !parse_unit(text)) ++bad;
      if (good + bad > 50) break;
    }
    if (good == 0 || good < bad) return;
    for (std::size_t i = 0; i < columns; ++i)
      add_cell(profile[i], row.cells[i], i < cells.size() ? cells[i] : read_cell(row.cells[i], decimal));
    ++taken;
  };
  const std::string_view text = rows.text();
  if (text.empty()) {
    rows.seek({});
    std::size_t count = 0;
    while (count < 20000 && rows.next(row)) ++count;
    const std::size_t step = std::max<std::size_t>(1, count / kSampledRows);
    for (std::size_t i = 0; i < count; i += step) {
      rows.seek({i, 0});
      if (rows.next(row)) add_row();
    }
  } else {
    for (const auto piece : sample_of(text)) {
      const auto from = static_cast<std::size_t>(piece.data() - text.data());
      rows.seek({from, 0});
      while (taken < 4 * kSampledRows && rows.position().offset < from + piece.size() && rows.next(row)) add_row();
    }
  }
  for (ColumnProfile& column : profile) {
    if (column.numbers > 0) column.take_packed_as_numbers();
    column.always_filled =
        column.numbers + column.times > 0 && (column.empty + column.open + column.texts) * 20 <= taken;
  }
  find_keys(profile);
  return profile;
}

void fill_profile(RowSource& rows, Table& table, const std::vector<ColumnProfile>& first, char decimal) {
  table.profile.assign(table.columns, {});
  Row row;
  std::vector<Cell> cells;
  const auto take_usable = [&] {
    // A row that the file's end may have cut says nothing about how the others are written.
    if ((!row.ended && table.sampled >= 3) || !fit_row(row, first, decimal, &cells).data()) return;
    for (std::size_t i = 0; i < table.columns; ++i) add_cell(table.profile[i], row.cells[i], cells[i]);
    ++table.sampled;
  };
  const std::string_view text = rows.text();
  const std::size_t length = text.empty() ? 0 : text.size() - table.first_row.offset;
  if (text.empty() || length <= kMostWalked) {
    // Walked twice: to know how many rows there are, then for some of them.
    const auto places = places_of_rows(rows, table);
    table.rows = static_cast<double>(places.size());
    const std::size_t step = std::max<std::size_t>(1, places.size() / kSampledRows);
    std::size_t next = 0;
    for (std::size_t i = 0; i < places.size(); ++i) {
      const bool wanted = i < kFirstRows || i + 1 == places.size() || i >= next;
      if (!wanted) continue;
      next = i + step;
      rows.seek(places[i]);
      if (rows.next(row)) take_usable();
    }
  } else {
    constexpr std::size_t kPieces = 100, kRowsPerPiece = 3;
    std::size_t bytes = 0, counted = 0;
    for (std::size_t i = 0; i <= kPieces; ++i) {
      rows.seek({i == 0 ? table.first_row.offset : table.first_row.offset + length / (kPieces + 1) * i, 0});
      if (i > 0 && !rows.next(row)) break;  // the rest of a line
      const std::size_t start = rows.position().offset;
      for (std::size_t k = 0; k < (i == 0 ? kFirstRows : kRowsPerPiece) && rows.next(row); ++k, ++counted) {
        take_usable();
      }
      bytes += rows.position().offset - start;
    }
    // The last rows, where a date may have changed.
    constexpr std::size_t kTail = 4096;
    rows.seek({text.size() - std::min(kTail, length), 0});
    if (rows.next(row)) {
      while (rows.next(row)) {
        take_usable();
      }
    }
    table.rows =
        bytes == 0 ? 0 : static_cast<double>(length) * static_cast<double>(counted) / static_cast<double>(bytes);
  }
  for (ColumnProfile& column : table.profile) {
    if (column.numbers > 0) column.take_packed_as_numbers();
    column.always_filled =
        column.numbers + column.times > 0 && (column.empty + column.open + column.texts) * 20 <= table.sampled;
  }
  find_keys(table.profile);
}

void ColumnProfile::take_packed_as_numbers() {
  if (packed == 0) return;
  std::erase_if(time_texts, [](const TimeText& time) { return time.packed; });
  times -= packed;
  numbers += packed;
  packed = 0;
  fewest_decimals = 0;
}

ColumnProfile::Holds ColumnProfile::holds() const {
  if (numbers + times + texts == 0) return Holds::kNothing;
  if (texts > numbers + times) return Holds::kText;
  return times > numbers ? Holds::kTimes : Holds::kNumbers;
}

RowFit fit_row(const Row& row, const std::vector<ColumnProfile>& profile, char decimal, std::vector<Cell>* cells) {
  using Holds = ColumnProfile::Holds;
  RowFit fit;
  if (cells != nullptr) cells->clear();
  fit.width = has_width(row, profile.size());
  if (!fit.width) return fit;
  for (std::size_t i = 0; i < profile.size(); ++i) {
    const Holds holds = profile[i].holds();
    if (holds == Holds::kText && cells == nullptr) continue;
    const Cell cell = read_cell(row.cells[i], decimal);
    if (cells != nullptr) cells->push_back(cell);
    if (holds == Holds::kText) continue;
    const bool fits =
        (cell.figures() && holds == Holds::kNumbers) || (cell.kind == CellKind::kTime && holds == Holds::kTimes);
    if (fits) {
      ++fit.good;
    } else if (holds != Holds::kNothing && !cell.no_reading()) {
      ++fit.mismatched;
    } else if (profile[i].key && cell.kind == CellKind::kEmpty) {
      fit.key_filled = false;
    }
  }
  return fit;
}

}  // namespace ovenwright::log
