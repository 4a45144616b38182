#include "core/log/header.h"

#include <algorithm>
#include <cstdlib>
#include <set>

#include "core/log/column_values.h"
#include "core/log/text.h"
#include "core/log/words.h"

namespace ovenwright::log {
namespace {

using Cells = std::vector<std::string>;
using Holds = ColumnProfile::Holds;

struct Piece {
  std::string text;
  std::size_t from = 0, to = 0;  ///< characters in the line
};

/// Words of a line with their places, joined where fewer than `gap` blanks stand between, or within quotes.
std::vector<Piece> pieces(std::string_view line, std::size_t gap) {
  std::vector<Piece> found;
  std::size_t column = 0, blanks = gap;
  const bool quotes = std::count(line.begin(), line.end(), '"') % 2 == 0;
  bool quoted = false;
  while (!line.empty()) {
    std::size_t length = 1;
    const char32_t c = decode_character(line, length);
    if (c == '\t') blanks = gap;
    if (quotes && c == '"') {
      quoted = !quoted;
    } else if (quoted && c == ' ' && !found.empty() && blanks == 0) {
      found.back().text += ' ';
    } else if (c == ' ' || c == '\t' || c == '\r' || c == 0x3000) {
      ++blanks;
    } else {
      if (found.empty() || blanks >= gap) {
        found.push_back({"", column, column});
      } else {
        found.back().text.append(blanks, ' ');
      }
      found.back().text.append(line.substr(0, length));
      found.back().to = column + 1;
      blanks = 0;
    }
    column += c >= 0x2E80 && c < 0xFFE0 ? 2 : 1;
    line.remove_prefix(length);
  }
  return found;
}

/// "(s)" and "[°C]" belong to the word before them.
std::vector<Piece> with_brackets_joined(std::vector<Piece> words) {
  std::vector<Piece> joined;
  for (Piece& word : words) {
    const bool bracket = !joined.empty() && (word.text.front() == '(' || word.text.front() == '[' || word.text == "/");
    const bool open =
        !joined.empty() && joined.back().text.find_last_of("([") != std::string::npos &&
        joined.back().text.find_first_of(")]", joined.back().text.find_last_of("([")) == std::string::npos;
    if (bracket || open) {
      joined.back().text += " " + word.text;
      joined.back().to = word.to;
    } else {
      joined.push_back(std::move(word));
    }
  }
  return joined;
}

std::string_view without_comment_sign(std::string_view text) {
  text = trim(text);
  for (const std::string_view sign : {"##", "#", "//", "%", "!"}) {
    if (text.starts_with(sign)) return trim(text.substr(sign.size()));
  }
  return text;
}

/// By place: every word goes to the column it overlaps most, else to the nearest.
Cells by_place(const std::vector<Piece>& words, const std::vector<Piece>& columns) {
  Cells cells(columns.size());
  for (const Piece& word : words) {
    std::size_t best = 0;
    long best_overlap = 0, best_distance = -1;
    for (std::size_t i = 0; i < columns.size(); ++i) {
      const long from = static_cast<long>(std::max(word.from, columns[i].from));
      const long to = static_cast<long>(std::min(word.to, columns[i].to));
      const long overlap = to - from;
      const long distance = std::labs(static_cast<long>(word.to) - static_cast<long>(columns[i].to)) +
                            std::labs(static_cast<long>(word.from) - static_cast<long>(columns[i].from));
      if (overlap > best_overlap || (best_overlap <= 0 && (best_distance < 0 || distance < best_distance))) {
        best = i;
        best_overlap = std::max(best_overlap, overlap);
        best_distance = distance;
      }
    }
    if (!cells[best].empty()) cells[best] += ' ';
    cells[best] += word.text;
  }
  return cells;
}

/// Columns that a header names: the time behind a date, the half of the day and a unit that stands in each row are not.
std::vector<std::size_t> named_columns(const std::vector<ColumnProfile>& profile) {
  std::vector<std::size_t> named;
  bool date_before = false, sign_before = false;
  for (std::size_t i = 0; i < profile.size(); ++i) {
    const ColumnProfile& column = profile[i];
    const bool times = column.holds() == Holds::kTimes && !column.time_texts.empty();
    const bool clock = times && !column.time_texts.front().has_date;
    const auto all_texts = [&column](auto test) {
      return column.holds() == Holds::kText && !column.texts_seen.empty() &&
             std::all_of(column.texts_seen.begin(), column.texts_seen.end(), test);
    };
    const bool half = all_texts([](const std::string& t) { return half_of_day(t) > 0; });
    const bool unit = all_texts([](const std::string& t) { return parse_unit(t).has_value(); });
    const bool sign = all_texts([](const std::string& t) { return is_tolerance_sign(t); });
    if (!(clock && date_before) && !half && !unit && !sign && !sign_before) named.push_back(i);
    sign_before = sign;
    date_before = times && column.time_texts.front().has_date && !column.time_texts.front().has_clock;
  }
  return named;
}

/// Cells of a header row spread over the columns; empty where the row does not fit them.
Cells laid_over(const Statement& row, const Dialect& dialect, const std::vector<ColumnProfile>& profile,
                std::string_view data_line) {
  const std::size_t columns = profile.size();
  const bool at_blanks = dialect.split == Dialect::Split::kBlanks || dialect.split == Dialect::Split::kColumns;
  const auto named = named_columns(profile);
  const auto spread = [&](const Cells& cells) {
    Cells out(columns);
    for (std::size_t i = 0; i < named.size() && i < cells.size(); ++i) out[named[i]] = cells[i];
    return out;
  };
  if (at_blanks) {
    const std::string_view text = without_comment_sign(row.text);
    const auto texts = [](const std::vector<Piece>& list) {
      Cells cells;
      for (const auto& piece : list) cells.push_back(piece.text);
      return cells;
    };
    const auto words = pieces(text, 1);
    for (const auto& list : {pieces(text, 2), words, with_brackets_joined(words)}) {
      if (list.size() == columns) return texts(list);
      if (list.size() == named.size()) return spread(texts(list));
    }
    std::vector<Piece> places = pieces(data_line, 1);
    if (dialect.split == Dialect::Split::kColumns) {
      places.clear();
      for (std::size_t i = 0; i < dialect.starts.size(); ++i) {
        const std::size_t end = i + 1 < dialect.starts.size() ? dialect.starts[i + 1] - 1
                                                              : std::max(dialect.starts[i] + 8, data_line.size());
        places.push_back({"", dialect.starts[i], end});
      }
    }
    if (places.size() != columns || words.size() + 1 < columns) return {};
    return by_place(pieces(row.text, 1), places);
  }
  Cells cells = row.cells;
  if (!cells.empty() && cells[0].size() > 1) cells[0] = std::string{without_comment_sign(cells[0])};
  while (cells.size() > columns && cells.back().empty()) cells.pop_back();
  if (cells.size() >= columns) {
    cells.resize(columns);
    return cells;
  }
  if (cells.size() == named.size()) return spread(cells);
  // One name too few: the first column, of row numbers or times, has none where the first name is no word for time.
  const bool first_is_named =
      !cells.empty() && (read_header_text(cells[0]).words & (kTimeWord | kDateWord | kIndexWord | kUnitWord)) != 0;
  if (cells.size() + 1 == columns && !first_is_named) cells.insert(cells.begin(), "");
  cells.resize(columns);
  return cells;
}

struct HeaderRow {
  int line = 0;
  std::vector<HeaderText> cells;
  std::size_t filled = 0, units = 0, distinct = 0, types = 0;
  Words label = kNoWord;         ///< words of its first cell
  bool time_unit_first = false;  ///< its first cell is a unit of time and nothing else
  bool foreign_units = false;    ///< "s;foo;foo;foo": units that are not known
  bool comment = false;          ///< its line starts as comments do
  bool numbers = false;          ///< nothing but numbers behind its first cell: serial numbers, or names after all
  bool letters = false;          ///< "A", "B", "C", "D": names, though some are signs of units
  bool unit_row() const { return foreign_units || (filled > 0 && 2 * units > filled && !letters); }
  bool type_row() const { return filled > 0 && 2 * types > filled; }
};

std::string_view without_brackets(std::string_view text) {
  const bool bracketed = text.size() > 2 && (text.front() == '(' || text.front() == '[');
  return bracketed ? text.substr(1, text.size() - 2) : text;
}

HeaderRow analysed(int line, const Cells& cells) {
  HeaderRow row;
  row.line = line;
  std::set<std::string> seen;
  for (std::size_t i = 0; i < cells.size(); ++i) {
    row.cells.push_back(read_header_text(cells[i]));
    const HeaderText& text = row.cells.back();
    if (text.whole.empty()) continue;
    ++row.filled;
    const auto whole = parse_unit(text.whole);
    if (whole || parse_unit(without_brackets(text.whole))) ++row.units;
    if (!whole && text.thermocouple != 0 && text.whole.size() <= 16) ++row.types;
    if (i > 0) seen.insert(text.whole);
  }
  row.distinct = seen.size();
  row.numbers = seen.size() > 1 && std::all_of(seen.begin(), seen.end(), [](const std::string& text) {
                  return text.find_first_not_of("0123456789") == std::string::npos;
                });
  const auto one_capital = [](const std::string& text) { return text.size() == 1 && text[0] >= 'A' && text[0] <= 'Z'; };
  row.letters = seen.size() > 2 && seen.size() + 1 >= row.filled &&
                std::all_of(seen.begin(), seen.end(), one_capital) &&
                static_cast<std::size_t>((*seen.rbegin())[0] - (*seen.begin())[0]) + 1 == seen.size();
  for (std::size_t i = 1; row.letters && i < row.cells.size(); ++i) {
    HeaderText name;
    name.whole = name.name = row.cells[i].whole;
    row.cells[i] = std::move(name);
  }
  const auto first_unit = row.cells.empty() ? std::nullopt : parse_unit(without_brackets(row.cells.front().whole));
  row.time_unit_first =
      first_unit && (first_unit->quantity == Quantity::kTime || first_unit->quantity == Quantity::kClock);
  row.foreign_units = row.time_unit_first && row.filled > 2 && row.distinct == 1;
  if (!row.cells.empty()) row.label = row.cells[0].words;
  return row;
}

/// In a row of units: neither a word that is known, a type of thermocouple, nor a sign for nothing.
bool may_be_foreign_unit(const HeaderText& text) {
  return text.words == kNoWord && text.thermocouple == 0 && !means_open(lower(text.whole)) &&
         text.whole.find_first_of("0123456789") == std::string::npos;
}

/// Which row holds the names: one labelled so, else the first whose cells differ and that is no row of units, types,
/// methods or descriptions.
std::size_t names_row(const std::vector<HeaderRow>& rows) {
  std::size_t best = rows.size();
  double best_score = -1;
  for (std::size_t i = 0; i < rows.size(); ++i) {
    const HeaderRow& row = rows[i];
    if (row.filled == 0) continue;
    double score = static_cast<double>(row.distinct) / static_cast<double>(row.cells.size());
    if ((row.label & kNameWord) != 0) score += 2;
    if (!row.comment && (row.label & (kTimeWord | kDateWord | kIndexWord)) != 0) score += 0.6;
    if (row.unit_row()) score -= 2;
    if (row.numbers) score -= 0.5;
    if (row.comment) score -= 0.6;
    if ((row.label & kUnitWord) != 0) score -= 2;
    if (row.type_row()) score -= 1;
    if ((row.label & (kDescriptionWord | kTypeWord)) != 0) score -= 1.5;
    if (score > best_score + 0.25) {
      best_score = score;
      best = i;
    }
  }
  return best;
}

bool tells_time(const HeaderText& text) {
  return (text.words & (kTimeWord | kDateWord | kIndexWord)) != 0 ||
         (text.unit && text.unit->quantity == Quantity::kTime) || text.name == "X" || text.name == "x";
}

/// "Time,U1,U1,Board" over "(s),corner,centre,edge": names in two rows, where those of the first come again and both
/// together do not.
bool names_go_on(const HeaderRow& names, const HeaderRow& below) {
  if (below.unit_row() || below.type_row() || below.numbers || below.distinct < 2) return false;
  if ((below.label & (kUnitWord | kDescriptionWord | kTypeWord | kNameWord)) != 0) return false;
  if (!below.time_unit_first && !below.cells.front().whole.empty()) return false;
  std::set<std::string> alone, together;
  std::size_t columns = 0;
  for (std::size_t i = 1; i < names.cells.size(); ++i) {
    if (names.cells[i].whole.empty() || below.cells[i].whole.empty() || below.cells[i].unit) return false;
    alone.insert(names.cells[i].whole);
    together.insert(names.cells[i].whole + " " + below.cells[i].whole);
    ++columns;
  }
  return columns > 1 && alone.size() < columns && together.size() == columns;
}

struct Group {
  std::size_t from = 0, to = 0, columns = 0;
};

/// The columns under each name of a row of groups, where there are several and all have the same columns below them: a
/// line of notes ("Lot", "QM-2") that happens to stand there does not.
template <class Measured>
std::vector<Group> groups_over(const std::vector<HeaderText>& groups, const std::vector<HeaderText>& own,
                               const Measured& measured) {
  std::vector<Group> list;
  for (std::size_t from = 0, to = 0; from < groups.size(); from = to) {
    to = from + 1;
    if (groups[from].whole.empty() || (from == 0 && tells_time(groups[0]))) continue;
    while (to < groups.size() && groups[to].whole.empty()) ++to;
    std::size_t columns = 0;
    for (std::size_t i = from; i < to; ++i) columns += measured(i) ? 1 : 0;
    if (columns > 0) list.push_back({from, to, columns});
  }
  const auto at = [&own](std::size_t i) { return own.begin() + static_cast<std::ptrdiff_t>(i); };
  const bool alike = std::all_of(list.begin(), list.end(), [&](const Group& group) {
    return std::equal(at(group.from), at(group.to), at(list.front().from), at(list.front().to),
                      [](const HeaderText& a, const HeaderText& b) { return a.name == b.name; });
  });
  return list.size() > 1 && alike ? list : std::vector<Group>{};
}

/// Names that stand once over several columns ("R118" over "Time" and "Temp", or over "Top" and "Bottom") and those
/// below them, which repeat, make one name: "R118", or "R118 Top" where a group has several columns that tell no time.
void name_by_groups(TableHeader& header, const std::vector<HeaderRow>& rows, std::size_t names) {
  if (names >= rows.size()) return;
  const auto may_name = [](const HeaderRow& row) { return !row.unit_row() && !row.type_row() && row.filled > 1; };
  const auto leaves_open = [](const HeaderRow& above, const HeaderRow& below) {
    for (std::size_t i = 1; i < below.cells.size(); ++i) {
      if (above.cells[i].whole.empty() && !below.cells[i].whole.empty()) return true;
    }
    return false;
  };
  // The chosen row is the lower one, or where it holds the groups' names the upper one.
  std::size_t upper = rows.size();
  if (names > 0 && may_name(rows[names - 1]) && leaves_open(rows[names - 1], rows[names])) upper = names - 1;
  if (names + 1 < rows.size() && may_name(rows[names + 1]) && leaves_open(rows[names], rows[names + 1])) upper = names;
  if (upper == rows.size()) return;
  const std::vector<HeaderText>& own = rows[upper + 1].cells;
  std::vector<HeaderText> groups = rows[upper].cells;
  const bool times_first = tells_time(groups[0]);
  const auto measured = [&](std::size_t i) {
    return !own[i].whole.empty() && !tells_time(own[i]) && !(i == 0 && times_first);
  };
  std::set<std::string> seen;
  bool repeated = false;
  for (std::size_t i = 0; i < own.size(); ++i) repeated = (measured(i) && !seen.insert(own[i].name).second) || repeated;
  if (!repeated) return;
  auto list = groups_over(groups, own, measured);
  if (list.empty() && groups[0].whole.empty()) {  // a row without its last comma was taken for one without its first
    std::rotate(groups.begin(), groups.begin() + 1, groups.end());
    list = groups_over(groups, own, measured);
  }
  for (const auto& [from, to, columns] : list) {
    for (std::size_t i = from; i < to; ++i) {
      if (!measured(i)) continue;
      const bool alone = columns == 1 || own[i].name.empty();
      header.columns[i].name = alone ? groups[from].whole : groups[from].whole + " " + own[i].name;
    }
  }
}

/// "*5A" at the end of a line.
bool ends_in_checksum(std::string_view line) {
  line = trim(line);
  return line.size() > 3 && line[line.size() - 3] == '*' &&
         line.substr(line.size() - 2).find_first_not_of("0123456789ABCDEFabcdef") == std::string_view::npos;
}

/// "0.1,0.1,0.1" between the names and the data; that of a column of times is one of its clock.
void take_factors(TableHeader& header, const Table& table) {
  for (const Statement& statement : table.above) {
    Row row;
    for (const auto& cell : statement.cells) row.cells.push_back(cell);
    if (static_cast<int>(statement.line) <= header.line || !is_row_of_factors(row)) continue;
    if (header.line == 0 && statement.cells.size() != table.columns) continue;
    // One cell fewer than columns: the time has none.
    const std::size_t shift = statement.cells.size() + 1 == table.columns ? 1 : 0;
    for (std::size_t i = 0; i < statement.cells.size() && i + shift < table.columns; ++i) {
      Cell cell = read_cell(statement.cells[i], '.');
      if (!cell.number()) cell = read_cell(statement.cells[i], ',');
      if (cell.number() && cell.value < 1) header.columns[i + shift].factor = cell.value;
    }
  }
}

}  // namespace

TableHeader read_header(Table& table, const Dialect& dialect, std::string_view data_line) {
  TableHeader header;
  header.columns.resize(table.columns);
  std::vector<HeaderRow> rows;
  std::vector<Statement> kept;
  for (std::size_t i = table.headers.size(); i-- > 0;) {
    Cells cells = laid_over(table.headers[i], dialect, table.profile, data_line);
    if (ends_in_checksum(data_line) && !cells.empty() && ends_in_checksum(cells.back())) {
      const auto checked = trim(cells.back());
      cells.back() = std::string{checked.substr(0, checked.size() - 3)};
    }
    if (cells.empty()) {
      for (std::size_t k = 0; k <= i; ++k) table.above.push_back(table.headers[k]);
      break;
    }
    rows.insert(rows.begin(), analysed(static_cast<int>(table.headers[i].line), cells));
    rows.front().comment =
        table.headers[i].text.starts_with('#') && table.headers[i].text.size() > 1 && table.headers[i].text[1] == ' ';
    kept.insert(kept.begin(), table.headers[i]);
  }
  table.headers = std::move(kept);
  const std::size_t names = names_row(rows);
  if (names < rows.size()) header.line = rows[names].line;
  for (std::size_t r = 0; r < rows.size(); ++r) {
    if (rows[r].comment && r != names) continue;  // above the names, and none itself
    const bool goes_on = r == names + 1 && names < rows.size() && names_go_on(rows[names], rows[r]);
    const bool unit_row =
        !goes_on && (rows[r].unit_row() || (r != names && names < rows.size() && rows[r].filled > 1 &&
                                            (rows[r].time_unit_first || (rows[r].label & kUnitWord) != 0)));
    std::optional<UnitText> spanning;  // "Temperature (°C)" over several columns
    for (std::size_t i = 0; i < table.columns; ++i) {
      const HeaderText& text = rows[r].cells[i];
      TableHeader::Column& column = header.columns[i];
      if (text.whole.empty()) {
        const bool other = names < rows.size() && (rows[names].cells[i].words & (kOtherWord | kTextWord)) != 0;
        if (spanning && !column.unit && !other && r != names && rows[r].filled * 2 < table.columns)
          column.unit = spanning;
        continue;
      }
      if (!column.texts.empty()) column.texts += ' ';
      column.texts += text.whole;
      column.words |= text.words;
      if (column.thermocouple == 0) column.thermocouple = text.thermocouple;
      auto unit = text.unit;
      if (unit_row && !unit) unit = parse_unit(without_brackets(text.whole));
      if (unit) {
        spanning = unit->quantity == Quantity::kTemperature ? unit : std::nullopt;
        const bool better = !column.unit || (column.unit->weak && !unit->weak) ||
                            (column.unit->quantity == Quantity::kClock && unit->quantity != Quantity::kClock);
        if (better) column.unit = unit;
      } else {
        spanning.reset();
      }
      if (r == names) {
        column.name = unit_row && unit ? std::string{} : text.name;
        column.name_words = text.words;
        column.bracket = text.bracket;
        column.ending = text.ending;
        column.name_before_ending = text.name_before_ending;
      } else if (goes_on && !unit && i > 0) {
        column.name += (column.name.empty() ? "" : " ") + text.name;
        column.name_words |= text.words;
      } else if (unit_row && !unit && may_be_foreign_unit(text)) {
        column.foreign_unit = without_brackets(text.whole);
        column.foreign_unit_line = rows[r].line;
      }
    }
  }
  name_by_groups(header, rows, names);
  take_factors(header, table);
  return header;
}

}  // namespace ovenwright::log
