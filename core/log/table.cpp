#include "core/log/table.h"

#include <algorithm>
#include <deque>

#include "core/log/column_values.h"
#include "core/log/header_text.h"
#include "core/log/text.h"
#include "core/log/words.h"

namespace ovenwright::log {
namespace {

constexpr std::size_t kMostStatements = 300;
constexpr std::size_t kMostHeaders = 12;

Statement statement_of(const Row& row) {
  Statement statement;
  statement.line = row.line;
  constexpr std::size_t kMostText = 1000;
  for (const auto cell : row.cells) statement.cells.emplace_back(cell);
  if (!row.text.empty()) {
    statement.text = std::string{row.text.substr(0, kMostText)};
  } else {
    for (const auto& cell : statement.cells) {
      if (cell.empty()) continue;
      if (!statement.text.empty()) statement.text += ' ';
      statement.text += cell;
    }
  }
  return statement;
}

Row row_of(const Statement& statement) {
  Row row;
  row.line = statement.line;
  for (const auto& cell : statement.cells) row.cells.push_back(cell);
  return row;
}

/// What a row of cells that is no data may be.
struct RowWords {
  std::size_t filled = 0, texts = 0, numbers = 0, last = 0;
};

RowWords words_of(const Statement& statement) {
  RowWords reading;
  for (std::size_t i = 0; i < statement.cells.size(); ++i) {
    if (statement.cells[i].empty()) continue;
    ++reading.filled;
    reading.last = i + 1;
    const Cell cell = read_cell(statement.cells[i], '.');
    const bool other_sign = cell.kind == CellKind::kText && read_cell(statement.cells[i], ',').number();
    if ((cell.number() && !cell.unit) || other_sign) ++reading.numbers;
    if (other_sign) continue;
    if (cell.kind == CellKind::kText || (cell.number() && cell.unit)) ++reading.texts;
  }
  return reading;
}

bool number_with_either_sign(const std::string& cell) {
  return read_cell(cell, '.').number() || read_cell(cell, ',').number();
}

/// Whether a row above the data can be one of its header rows.
bool header_like(const Statement& statement, std::size_t columns) {
  const RowWords reading = words_of(statement);
  if (reading.filled == 0) return false;
  // Readings under a header of fewer names.
  const bool decimals = std::any_of(statement.cells.begin(), statement.cells.end(), [](const std::string& cell) {
    return cell.find_first_of(".,") != std::string::npos && number_with_either_sign(cell);
  });
  if (reading.filled > 1 && reading.texts == 0 && decimals) return false;
  std::string label = statement.cells.front();
  while (label.size() > 1 && (label.front() == '#' || label.front() == ' ')) label.erase(0, 1);
  const bool keyed = !label.empty() && read_cell(label, '.').kind == CellKind::kText;
  const Words words = words_in(label);
  const bool says_how_often = (words_in(statement.text) & (kIntervalWord | kRateWord)) != 0 &&
                              statement.text.find_first_of("0123456789") != std::string::npos;
  if (says_how_often && (reading.filled == 1 || (reading.filled <= 3 && number_with_either_sign(statement.cells[1]))))
    return false;
  // "Upper limit;250;250;250": a label and numbers. "Time;1;2;3" and "Channel;1;2;3" are names.
  const bool names = (words & (kTimeWord | kDateWord | kIndexWord | kChannelWord | kNameWord)) != 0;
  const auto label_unit = read_header_text(label).unit;
  const bool of_time = label_unit && label_unit->quantity == Quantity::kTime;
  const bool named = names || of_time || (words & (kTemperatureWord | kDescriptionWord | kTypeWord | kUnitWord)) != 0;
  if (keyed && !names && (words & kStatisticWord) != 0 && reading.numbers + 1 >= reading.filled) return false;
  if (keyed && !named && reading.numbers >= 2 && reading.numbers + 1 >= reading.filled) return false;
  if (columns <= 2) {
    const bool key_and_value =
        keyed && !names && statement.cells.size() > 1 && number_with_either_sign(statement.cells[1]);
    return !key_and_value && reading.last <= columns + 1;
  }
  // "Unit;°C", "CJ,25 °C" above three columns or more.
  constexpr Words kKeys = kUnitWord | kDescriptionWord | kTypeWord | kColdJunctionWord | kScaleWord;
  const bool key = label.ends_with(':') || (words & kKeys) != 0 || number_with_either_sign(statement.cells.back());
  if (columns >= 3 && statement.cells.size() == 2 && reading.filled == 2 && keyed && key && !names) return false;
  // "Interval,500,ms": a key, its value and unit.
  if (columns > 3 && reading.filled <= 3 && statement.cells.size() > 1 && keyed &&
      number_with_either_sign(statement.cells[1]))
    return false;
  // "Date;2031-05-09"
  if (columns > 2 && reading.filled == 2 && statement.cells.size() > 1 && keyed &&
      read_cell(statement.cells[1], '.').kind == CellKind::kTime)
    return false;
  // A line of metadata has a key and a value; a row above the table speaks of most columns, or of groups of them.
  return reading.filled * 2 >= columns || (reading.filled >= 3 && statement.cells.size() + 1 >= columns);
}

/// "Time (s)" alone, in the row that the data follow: the names of the channels stand in rows above.
bool names_the_time_alone(const Statement& statement, std::size_t columns) {
  constexpr std::size_t kLongest = 24;
  const auto& cells = statement.cells;
  if (columns < 3 || cells.empty() || cells.front().empty() || cells.front().size() > kLongest) return false;
  const bool alone = std::all_of(cells.begin() + 1, cells.end(), [](const std::string& cell) { return cell.empty(); });
  return alone && (words_in(cells.front()) & kTimeWord) != 0 && read_cell(cells.front(), '.').kind == CellKind::kText &&
         cells.front().find(':') == std::string::npos;
}

bool names_the_time(const Statement& statement) {
  return std::any_of(statement.cells.begin(), statement.cells.end(), [](const std::string& cell) {
    return cell.size() < 60 && (words_in(cell) & (kTimeWord | kDateWord | kIndexWord)) != 0;
  });
}

/// A row of words, none of them numbers: where another table starts, or the header is repeated.
bool row_of_words(const Statement& statement, std::size_t columns) {
  const RowWords reading = words_of(statement);
  return columns > 1 && reading.texts >= 2 && reading.numbers == 0 && 2 * reading.texts >= columns;
}

bool row_of_units(const Statement& statement) {
  std::size_t filled = 0, units = 0;
  for (const std::string& cell : statement.cells) {
    std::string_view text = cell;
    if (text.size() > 2 && (text.front() == '(' || text.front() == '[')) text = text.substr(1, text.size() - 2);
    filled += text.empty() ? 0 : 1;
    units += parse_unit(text) ? 1 : 0;
  }
  return units > 1 && 2 * units > filled;
}

/// Finds where the data of the table start and which rows above them are its header.
class Finder {
 public:
  Finder(RowSource& rows, std::size_t columns, char decimal, int header_line, bool header_forced)
      : rows_(rows),
        columns_(columns),
        decimal_(decimal),
        header_line_(static_cast<std::size_t>(std::max(0, header_line))),
        forced_(header_forced) {}

  Table run() {
    profile_ = first_profile(rows_, columns_, decimal_);
    named_ = columns_;
    for (const ColumnProfile& column : profile_) {  // "± 0.5" in columns of their own
      const bool signs = column.texts_seen.size() == 1 && is_tolerance_sign(column.texts_seen.front());
      if (signs && named_ > 2) named_ -= 2;
      // Between the edge of the line and its first or last sign.
      if (column.numbers + column.times + column.texts + column.open == 0 && named_ > 2) --named_;
    }
    rows_.seek({});
    if (!next_block()) return {};
    if (!forced_) pass_over_smaller_tables();
    if ((!forced_ || header_line_ > 0) && !before_.empty()) take_row_of_factors();
    table_.columns = columns_;
    table_.first_row = first_;
    Row first;
    rows_.seek(first_);
    framed_ = rows_.next(first) && trim(first.text).starts_with('|');
    take_short_rows();
    const std::size_t rest = take_headers();
    for (std::size_t k = 0; k < rest; ++k) {
      if (!before_[k].text.empty()) table_.above.push_back(std::move(before_[k]));
    }
    fill_profile(rows_, table_, profile_, decimal_);
    return std::move(table_);
  }

 private:
  bool data(const Row& row) const { return fit_row(row, profile_, decimal_).data(); }

  /// Goes on to the next row of data; what stands before it is kept in before_.
  bool next_block() {
    Row row;
    while (true) {
      const Position place = rows_.position();
      if (!rows_.next(row)) return false;
      const bool above_header = forced_ && row.line <= header_line_;
      const bool fits = !above_header && data(row);
      if (fits && !(is_comment(row) && row.cells.size() == 1)) {
        first_ = place;
        return true;
      }
      keep(statement_of(row), place);
    }
  }

  void keep(Statement statement, Position place) {
    split_names_at_another_sign(statement);
    before_.push_back(std::move(statement));
    places_.push_back(place);
    // What is too far up for a header says what it says in its first cells.
    constexpr std::size_t kMostCells = 2000;
    if (before_.size() > kMostHeaders) {
      auto& above = before_[before_.size() - 1 - kMostHeaders].cells;
      if (above.size() > kMostCells) std::vector<std::string>(above.begin(), above.begin() + kMostCells).swap(above);
    }
    if (before_.size() <= kMostStatements) return;
    if (table_.above.size() < kMostStatements) table_.above.push_back(std::move(before_.front()));
    before_.pop_front();
    places_.pop_front();
  }

  /// Names with tabs between them above readings with commas: one cell by the dialect, as many as the table has columns
  /// by another sign.
  void split_names_at_another_sign(Statement& statement) const {
    constexpr std::size_t kLongest = 4000, kLongestName = 60;
    const std::string& text = statement.text;
    const bool one = statement.cells.size() == 1 || (statement.cells.size() > 1 && statement.cells[1].empty() &&
                                                     std::all_of(statement.cells.begin() + 1, statement.cells.end(),
                                                                 [](const std::string& cell) { return cell.empty(); }));
    if (columns_ < 2 || !one || text.size() > kLongest || text.find('"') != std::string::npos) return;
    for (const char sign : {'\t', ';', ',', '|'}) {
      if (static_cast<std::size_t>(std::count(text.begin(), text.end(), sign)) != columns_ - 1) continue;
      std::vector<std::string> cells;
      for (std::size_t from = 0; from <= text.size();) {
        const std::size_t to = std::min(text.find(sign, from), text.size());
        cells.emplace_back(trim(std::string_view{text}.substr(from, to - from)));
        from = to + 1;
      }
      const bool names = std::all_of(cells.begin(), cells.end(), [](const std::string& cell) {
        return !cell.empty() && cell.size() <= kLongestName && read_cell(cell, '.').kind == CellKind::kText;
      });
      Statement apart{statement.line, statement.text, std::move(cells)};
      if (!names || !names_the_time(apart)) continue;
      statement = std::move(apart);
      return;
    }
  }

  /// A row of factors under the names, "1,0.1,0.1": it looks like data, and the rows below hold whole numbers.
  void take_row_of_factors() {
    Row row;
    rows_.seek(first_);
    if (!rows_.next(row) || !is_row_of_factors(row)) return;
    Statement factors = statement_of(row);
    const Position behind = rows_.position();
    constexpr int kLooked = 3;
    for (int i = 0; i < kLooked; ++i) {
      Row below;
      if (!rows_.next(below) || below.cells.size() < factors.cells.size()) return;
      for (std::size_t k = 0; k < factors.cells.size(); ++k) {
        const Cell factor = read_cell(factors.cells[k], decimal_), cell = read_cell(below.cells[k], decimal_);
        if (factor.number() && factor.value < 1 && cell.number() && cell.decimals > 0) return;
      }
    }
    keep(std::move(factors), first_);
    rows_.seek(behind);
    next_block();
  }

  /// A few rows of numbers under a header of their own, such as the zones of the oven, come before the longer table of
  /// the same width.
  void pass_over_smaller_tables() {
    constexpr std::size_t kMostRows = 60, kMostLookedAt = 400;
    Row row;
    const Position start = first_;
    rows_.seek(start);
    std::size_t here = 0, looked = 0;
    while (looked++ < kMostLookedAt) {
      const Position place = rows_.position();
      if (!rows_.next(row)) return;
      if (row.blank()) continue;
      if (data(row)) {
        if (++here > kMostRows) return;
        continue;
      }
      Statement statement = statement_of(row);
      if (!row_of_words(statement, columns_) || repeats_header(statement)) continue;
      const Position behind = rows_.position();
      const std::size_t longer = rows_in_block(2 * here + 1);
      if (longer <= 2 * here) return;
      // The smaller table and its header are metadata.
      rows_.seek(start);
      while (rows_.position().offset < place.offset && rows_.next(row)) keep(statement_of(row), start);
      keep(std::move(statement), place);
      rows_.seek(behind);
      if (next_block()) pass_over_smaller_tables();
      return;
    }
  }

  bool repeats_header(const Statement& statement) const {
    return std::any_of(before_.begin(), before_.end(),
                       [&statement](const Statement& s) { return s.cells == statement.cells; });
  }

  /// Rows of data from here on up to the next row of words, at most so many.
  std::size_t rows_in_block(std::size_t most) {
    Row row;
    std::size_t count = 0;
    while (count < most && rows_.next(row)) {
      if (data(row)) {
        ++count;
      } else if (!row.blank() && count > 0 && row_of_words(statement_of(row), columns_)) {
        break;
      }
    }
    return count;
  }

  /// Rows above the first full one that lack their last cells: channels that were plugged in later.
  void take_short_rows() {
    if (forced_ && header_line_ > 0 && before_.empty()) return;
    std::size_t taken = 0;
    while (taken < before_.size()) {
      const Statement& statement = before_[before_.size() - 1 - taken];
      if (statement.cells.size() < 2 || statement.cells.size() >= columns_ ||
          (forced_ && statement.line <= header_line_))
        break;
      bool fits = true;
      for (std::size_t i = 0; i < statement.cells.size() && fits; ++i) {
        const auto holds = profile_[i].holds();
        const Cell cell = read_cell(statement.cells[i], decimal_);
        fits = holds == ColumnProfile::Holds::kTimes
                   ? cell.kind == CellKind::kTime
                   : holds != ColumnProfile::Holds::kNumbers || cell.number() || cell.no_reading();
        if (i == 0 && !cell.number() && cell.kind != CellKind::kTime) fits = false;
      }
      if (!fits) break;
      ++taken;
    }
    constexpr std::size_t kFewest = 2;
    if (taken < kFewest) return;
    table_.first_row = places_[places_.size() - taken];
    before_.resize(before_.size() - taken);
    places_.resize(before_.size());
  }

  /// Header rows, upwards from the data: blank lines and rules between do not end them unless some were found already.
  /// Rows of limits or the like may stand between them and the data. Returns how many rows are left above them.
  std::size_t take_headers() {
    constexpr std::size_t kMostBetween = 4;
    std::size_t i = before_.size(), between = 0;
    if (forced_ && header_line_ == 0) return i;
    std::vector<Statement> not_headers;
    std::size_t left = i;
    while (i > 0 && table_.headers.size() < kMostHeaders) {
      const Statement& above = before_[i - 1];
      if (forced_ && above.line < header_line_) break;
      const Row as_row = row_of(above);
      if (as_row.blank() || is_rule(as_row)) {
        // Units may stand apart from the names above them.
        const bool units_alone = std::all_of(table_.headers.begin(), table_.headers.end(),
                                             [](const Statement& s) { return row_of_units(s); });
        if (as_row.blank() && !table_.headers.empty() && !forced_ && !units_alone) break;
        --i;
        continue;
      }
      if (framed_ && !trim(above.text).starts_with('|')) {  // no row of the frame
        if (++between > kMostBetween) break;
        not_headers.push_back(above);
        --i;
        continue;
      }
      const bool time_alone = table_.headers.empty() && not_headers.empty() && names_the_time_alone(above, columns_);
      if ((forced_ && !is_row_of_factors(as_row)) || time_alone || header_like(above, named_)) {
        const bool behind_comments =
            table_.headers.empty() && row_of_words(above, columns_) &&
            std::all_of(not_headers.begin(), not_headers.end(),
                        [](const Statement& statement) { return is_comment(row_of(statement)); });
        if (between > 0 && !forced_ && !names_the_time(above) && !behind_comments) break;
        table_.headers.insert(table_.headers.begin(), above);
        for (auto& statement : not_headers) table_.above.push_back(std::move(statement));
        not_headers.clear();
        between = 0;
        left = i - 1;
      } else {
        between += is_row_of_factors(as_row) ? 0 : 1;
        if (between > kMostBetween) break;
        not_headers.push_back(above);
      }
      --i;
    }
    return left;
  }

  RowSource& rows_;
  const std::size_t columns_;
  std::size_t named_ = 0;  ///< that a header has names for
  const char decimal_;
  const std::size_t header_line_;
  const bool forced_;
  bool framed_ = false;  ///< "| 0.0 | 25.1 |"
  std::vector<ColumnProfile> profile_;
  std::deque<Statement> before_;  ///< rows before the data, the newest at the end
  std::deque<Position> places_;
  Position first_;
  Table table_;
};

}  // namespace

bool is_rule(const Row& row) {
  bool any = false;
  for (const auto cell : row.cells) {
    if (cell.find_first_not_of("-=_+|* :~") != std::string_view::npos) return false;
    any = any || cell.size() > 1;
  }
  return any && !row.cells.empty() && !row.cells.front().empty();
}

bool is_row_of_factors(const Row& row) {
  std::size_t factors = 0;
  for (std::size_t i = 0; i < row.cells.size(); ++i) {
    if (row.cells[i].empty()) continue;
    Cell cell = read_cell(row.cells[i], '.');
    if (!cell.number()) cell = read_cell(row.cells[i], ',');
    const bool factor = cell.number() && !cell.unit &&
                        (cell.value == 0.1 || cell.value == 0.01 || cell.value == 0.001 || cell.value == 0.0625);
    if (!factor && !(i == 0 && cell.number() && cell.value == 1)) return false;
    factors += factor ? 1 : 0;
  }
  return factors > 0 && factors + 1 >= row.cells.size();
}

bool is_comment(const Row& row) {
  const std::string_view start =
      row.text.empty() ? (row.cells.empty() ? std::string_view{} : row.cells.front()) : trim(row.text);
  return start.starts_with('#') || start.starts_with("//") || start.starts_with('%') || start.starts_with('!') ||
         start.starts_with("REM ") || start.starts_with("rem ") || start.starts_with("*");
}

Table find_table(RowSource& rows, std::size_t columns, char decimal, int header_line, bool header_forced) {
  return Finder(rows, columns, decimal, header_line, header_forced).run();
}

}  // namespace ovenwright::log
