#include "core/log/rows_form.h"

#include <algorithm>
#include <cmath>

#include "core/log/cell.h"
#include "core/log/column_values.h"
#include "core/log/words.h"

namespace ovenwright::log {
namespace {

constexpr std::size_t kMostRows = 400, kFewestCells = 4;

struct Candidate {
  std::size_t line = 0;
  std::vector<std::string> cells;
  std::size_t labels = 0;  ///< cells before the numbers
  std::vector<double> values;
  std::size_t times = 0;
  std::vector<double> clocks;
};

/// A row of numbers or times behind at most three cells of text.
std::optional<Candidate> candidate(const Row& row, char decimal) {
  constexpr std::size_t kMostLabels = 3;
  Candidate made;
  made.line = row.line;
  std::size_t good = 0, bad = 0;
  bool in_labels = true;
  for (const auto text : row.cells) {
    const Cell cell = read_cell(text, decimal);
    const bool number = cell.number(), time = cell.kind == CellKind::kTime;
    made.cells.emplace_back(text);
    if (in_labels && !number && !time && made.labels < kMostLabels) {
      ++made.labels;
      continue;
    }
    in_labels = false;
    if (number || time || cell.no_reading()) {
      good += number || time ? 1 : 0;
      made.times += time ? 1 : 0;
      made.values.push_back(number ? cell.value : NAN);
      if (time)
        made.clocks.push_back(cell.time.clock_s + (cell.time.has_date
                                                       ? 86400.0 * days_since_1970(cell.time, DateOrder::kDayMonthYear)
                                                       : 0));
    } else {
      ++bad;
    }
  }
  if (good < 3 || bad * 5 > good) return std::nullopt;
  return made;
}

}  // namespace

std::optional<TurnedTable> turned_rows(RowSource& rows, std::size_t columns, char decimal, bool forced) {
  if (columns < kFewestCells) return std::nullopt;
  std::vector<Candidate> found;
  TurnedTable turned;
  Row row;
  rows.seek({});
  while (rows.next(row)) {
    const bool width =
        row.cells.size() == columns || row.cells.size() + 1 == columns || row.cells.size() == columns + 1;
    auto made = width ? candidate(row, decimal) : std::nullopt;
    if (made) {
      found.push_back(std::move(*made));
      if (found.size() > kMostRows) return std::nullopt;
    } else if (!row.blank() && turned.others.size() < 200) {
      Statement statement;
      statement.line = row.line;
      statement.text = row.text.empty() ? std::string{} : std::string{row.text.substr(0, 1000)};
      for (std::size_t i = 0; i < std::min<std::size_t>(row.cells.size(), 50); ++i) {
        statement.cells.emplace_back(row.cells[i]);
        if (row.text.empty()) statement.text += std::string{row.cells[i]} + " ";
      }
      turned.others.push_back(std::move(statement));
    }
  }
  if (found.size() < 2) return std::nullopt;
  const auto rises = [](const Candidate& c) {
    const auto& values = c.times * 2 > c.values.size() ? c.clocks : c.values;
    return values.size() >= 3 && share_rising(values) >= 0.999;
  };
  const auto labelled = static_cast<std::size_t>(
      std::count_if(found.begin(), found.end(), [](const Candidate& c) { return c.labels > 0; }));
  const auto rising = static_cast<std::size_t>(std::count_if(found.begin(), found.end(), rises));
  // Without names only the first row may be the time, and there are more samples than channels.
  const bool says_time = std::any_of(found.begin(), found.end(), [&rises](const Candidate& c) {
    return rises(c) && c.labels > 0 && (words_in(c.cells.front()) & (kTimeWord | kDateWord)) != 0;
  });
  constexpr std::size_t kManyCells = 30;
  const bool named = labelled * 10 >= found.size() * 9 && rising >= 1 &&
                     (says_time || (rising < found.size() && columns >= kManyCells));
  const bool nameless = labelled == 0 && rises(found.front()) && rising * 2 <= found.size() &&
                        columns >= 3 * found.size() && columns >= 8;
  const bool only_channels = labelled == found.size() && columns >= 3 * found.size() && columns >= kManyCells;
  if (!forced && !named && !nameless && !only_channels) return std::nullopt;
  std::size_t labels = 0;
  for (const Candidate& c : found) labels = std::max(labels, c.labels);
  turned.grid.rows.assign(columns, std::vector<std::string>(found.size()));
  for (std::size_t c = 0; c < found.size(); ++c) {
    turned.lines.push_back(found[c].line);
    // The title of a row of units or names may be missing in some rows: what is no label starts where the labels end.
    for (std::size_t i = 0; i < found[c].cells.size() && i < columns; ++i) turned.grid.rows[i][c] = found[c].cells[i];
  }
  return turned;
}

}  // namespace ovenwright::log
