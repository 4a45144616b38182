#include "core/log/interpret.h"

#include <fmt/format.h>

#include <algorithm>
#include <utility>

#include "core/log/decimal_sign.h"
#include "core/log/interpreter.h"
#include "core/log/labelled_lines.h"
#include "core/log/no_table.h"
#include "core/log/shown_lines.h"
#include "core/log/text.h"
#include "core/log/words.h"
#include "core/units/phrase.h"

namespace ovenwright::log {
namespace {

/// Turns places within the table's columns into the message's place.
Error placed(Error error, const std::string& name) {
  error.where.file = name;
  return error;
}

bool row_of_numbers(const Statement& statement, char decimal) {
  std::size_t numbers = 0;
  for (const std::string& cell : statement.cells) {
    const Cell read = read_cell(cell, decimal);
    if (read.kind == CellKind::kText) return false;
    numbers += read.number() || read.kind == CellKind::kTime ? 1 : 0;
  }
  return numbers >= 2;
}

}  // namespace

Result<Reading> Interpreter::text(std::string_view text) {
  if (trim(text.substr(0, std::min<std::size_t>(text.size(), 1U << 16))).empty() && trim(text).empty()) {
    return Error{ErrorCode::kParse, "found nothing but blanks, expected a log", {name_, 1, 0}, "", "a log"};
  }
  if (!layout_.delimiter.value_or("").empty()) return split(text);
  const auto named = labelled_lines(text);
  if (!named) return split(text);
  named_in_lines_ = true;
  auto reading = grid(*named);
  if (reading || reading.error().code != ErrorCode::kParse) return reading;
  // It only looked like one: where it is no other log either, the first error says more.
  Interpreter plain(name_, options_);
  auto other = plain.split(text);
  if (!other) return reading;
  dialect_ = plain.dialect_;
  decimal_ = plain.decimal_;
  other_rows_ = plain.other_rows_;
  return other;
}

std::optional<Error> Interpreter::column_lacking(const Found& found) const {
  std::vector<int> named = layout_.time.columns;
  for (const auto& channel : layout_.channels) {
    if (channel.use && layout_.form != Form::kLong) named.insert(named.end(), {channel.column, channel.time_column});
  }
  const auto beyond =
      std::ranges::find_if(named, [&](int column) { return std::cmp_greater(column, found.table.columns); });
  if (beyond == named.end()) return std::nullopt;
  const std::string count = fmt::format("{} columns", found.table.columns);
  const std::string expected = fmt::format("column {} that the layout names", *beyond);
  return Error{ErrorCode::kParse,
               fmt::format("found {}, expected {}", count, expected),
               {name_, static_cast<int>(found.table.first_row.line), 0},
               count,
               expected};
}

Result<Reading> Interpreter::split(std::string_view text) {
  // Commas for both, and no quotes around the numbers: taken apart below.
  const bool joined =
      layout_.delimiter == "," && layout_.decimal == "," && text.find("\",\"") == std::string_view::npos;
  DialectGuess guess = guess_dialect(text, joined ? with_signs(",", ".") : layout_);
  // What is no number with the one decimal sign may be one with the other: in columns of its own.
  constexpr double kAllNumbers = 0.999;
  if (guess.score < kAllNumbers && !alike_decimals_) {
    if (const auto alike = with_alike_decimals(text, guess, layout_)) return with_decimals(*alike);
  }
  // Prose holds numbers too, but they do not line up.
  constexpr double kLeastShare = 0.1, kLeastShareWhole = 0.4;
  const bool one_column = guess.dialect.split == Dialect::Split::kWhole;
  const bool none = guess.columns == 0 || guess.best_piece < (one_column ? kLeastShareWhole : kLeastShare);
  if (none && full_width_signs(text)) {
    const std::string plain = plain_forms(text);
    return full_width_ ? no_table(name_, text) : with_plain_forms(plain);
  }
  if (none) return no_table(name_, text);
  // A channel in each row makes rows long, but no run is as long as that.
  constexpr std::size_t kMostCells = 250'000;
  if (guess.columns > kMostCells) {
    const std::string count = fmt::format("{} cells in a row", guess.columns);
    const std::string expected = fmt::format("at most {}", kMostCells);
    return Error{
        ErrorCode::kParse, fmt::format("found {}, expected {}", count, expected), {name_, 1, 0}, count, expected};
  }
  TextRows rows(text, guess.dialect);
  if (guess.decimal_open && !layout_.decimal) {
    const DecimalChoice choice = settle_decimal(rows, guess);
    guess.decimal = choice.decimal;
    if (choice.assumed) reading_.read_as.assumed.push_back(*choice.assumed);
  }
  reading_.read_as.delimiter = guess.dialect.name();
  reading_.read_as.decimal = std::string(1, guess.decimal);
  dialect_ = guess.dialect;
  decimal_ = guess.decimal;
  Table found = find(rows, guess.columns, guess.decimal);
  if (guess.dialect.split == Dialect::Split::kDelimiter && guess.dialect.delimiter == ',' && guess.decimal == '.') {
    auto apart = torn_apart(text, found);
    if (!apart) return apart.error();
    if (*apart) {
      TextRows again((*apart)->text, {Dialect::Split::kDelimiter, ';', {}});
      const char decimal = (*apart)->decimal;
      reading_.read_as.decimal = std::string(1, decimal);
      reading_.read_as.notes.push_back(say(Phrase::kDecimalCommas));
      const DialectGuess repaired = guess_dialect((*apart)->text, with_signs(";", std::string(1, decimal).c_str()));
      return table(again, &again.dialect(), repaired.columns, find(again, repaired.columns, decimal), decimal, text);
    }
  }
  if (only_decimal_commas_) {
    TextRows whole(text, {Dialect::Split::kWhole, '\n', {}});
    reading_.read_as.delimiter = "";
    reading_.read_as.decimal = ",";
    return table(whole, &whole.dialect(), 1, find(whole, 1, ','), ',', text);
  }
  return table(rows, &rows.dialect(), guess.columns, std::move(found), guess.decimal, text);
}

Result<Reading> Interpreter::grid(const Grid& sheet) {
  const DialectGuess guess = guess_grid(sheet, layout_);
  if (guess.columns == 0) {
    std::string words;
    for (const auto& row : sheet.rows) {
      for (const auto& cell : row) words += words.size() < 60 ? cell + " " : "";
    }
    auto error = no_table(name_, words);
    const auto first = std::ranges::find_if(sheet.rows, [](const auto& row) { return !row.empty(); });
    error.where.line = first == sheet.rows.end()
                           ? 0
                           : static_cast<int>(sheet.first_line + static_cast<std::size_t>(first - sheet.rows.begin()));
    return error;
  }
  GridRows rows(sheet);
  decimal_ = guess.decimal;
  reading_.read_as.delimiter = "";
  reading_.read_as.decimal = std::string(1, guess.decimal);
  return table(rows, nullptr, guess.columns, find(rows, guess.columns, guess.decimal), guess.decimal, {});
}

bool Interpreter::full_width_signs(std::string_view text) {
  const auto head = text.substr(0, 1U << 16);
  std::size_t length = 1;
  for (std::size_t at = head.find_first_of("\xEF\xD9\xDB"); at < head.size();
       at = head.find_first_of("\xEF\xD9\xDB", at + length)) {
    const char32_t c = decode_character(head.substr(at), length);
    const bool figure = (c >= 0xFF10 && c <= 0xFF19) || (c >= 0x660 && c <= 0x669) || (c >= 0x6F0 && c <= 0x6F9);
    if (figure || c == U'，' || c == U'；' || c == U'｜') return true;
  }
  return false;
}

Result<Reading> Interpreter::with_plain_forms(const std::string& plain) {
  full_width_ = true;
  return text(plain);
}

Result<Reading> Interpreter::with_decimals(const AlikeDecimals& alike) {
  alike_decimals_ = true;
  layout_.decimal = std::string(1, alike.decimal);
  reading_.read_as.notes.push_back(
      say(Phrase::kMixedDecimals, {std::to_string(alike.point), std::to_string(alike.comma)}));
  return text(alike.text);
}

Layout Interpreter::with_signs(const char* delimiter, const char* decimal) const {
  Layout fixed = layout_;
  fixed.delimiter = delimiter;
  fixed.decimal = decimal;
  return fixed;
}

Table Interpreter::find(RowSource& rows, std::size_t columns, char decimal) const {
  return find_table(rows, columns, decimal, layout_.header_line.value_or(0), layout_.header_line.has_value());
}

Result<std::optional<Unjoined>> Interpreter::torn_apart(std::string_view text, const Table& table) {
  if (table.columns == 0) return std::optional<Unjoined>{};
  if (looks_like_one_column(table)) {
    only_decimal_commas_ = true;
    return std::optional<Unjoined>{};
  }
  if (table.headers.empty()) {
    if (!looks_torn_apart(table)) return std::optional<Unjoined>{};
    const std::string found = fmt::format("{} fields of whole numbers, every second one a single digit", table.columns);
    return Error{ErrorCode::kParse,
                 fmt::format("found {}, expected numbers: the comma seems to be the delimiter and the decimal sign "
                             "as well, and no header tells how many columns there are",
                             found),
                 {name_, static_cast<int>(table.first_row.line), 0},
                 found,
                 "numbers with a decimal point, or another delimiter"};
  }
  std::size_t names = 0;
  for (const Statement& header : table.headers) {
    std::size_t used = header.cells.size();
    while (used > 0 && header.cells[used - 1].empty()) --used;
    names = std::max(names, used);
  }
  if (names + 1 == table.columns && table.profile.front().holds() == ColumnProfile::Holds::kNumbers &&
      header_lacks_first(table))
    return std::optional<Unjoined>{};
  return take_commas_apart(text, table, names, name_);
}

bool Interpreter::header_lacks_first(const Table& table) {
  const auto& cells = table.headers.back().cells;
  return !cells.empty() && (read_header_text(cells.front()).words & (kTimeWord | kDateWord | kIndexWord)) == 0;
}

Result<Reading> Interpreter::table(RowSource& rows, const Dialect* dialect, std::size_t columns, Table table,
                                   char decimal, std::string_view text) {
  const bool rows_forced = layout_.form == Form::kRows;
  if (rows_forced || (!layout_.form && may_be_turned(table, columns))) {
    if (auto turned = turned_rows(rows, columns, decimal, rows_forced)) return turned_table(*turned, decimal, rows);
  }
  if (table.columns == 0) return no_table(name_, text.empty() ? std::string_view{"cells"} : text);
  Found found;
  found.dialect = dialect;
  found.decimal = decimal;
  found.table = std::move(table);
  return read_found(rows, found, rows);
}

std::optional<Error> Interpreter::decimal_changes(const Found& found, const Row& first) const {
  constexpr std::size_t kFewest = 3;
  if (found.dialect == nullptr || first.cells.empty()) return std::nullopt;
  const char other = found.decimal == '.' ? ',' : '.';
  std::vector<const Statement*> above;
  for (const auto* list : {&found.table.above, &found.table.headers}) {
    for (const Statement& statement : *list) above.push_back(&statement);
  }
  std::sort(above.begin(), above.end(), [](const Statement* a, const Statement* b) { return a->line < b->line; });
  const auto of_other_sign = [&](const Statement& statement) {
    std::size_t fits = 0;
    for (const auto& cell : statement.cells) {
      const Cell read = read_cell(cell, other);
      if (cell.empty() || read.no_reading() || read.kind == CellKind::kTime) continue;
      if (!read.number()) return false;
      fits += read.decimals > 0 && !read_cell(cell, found.decimal).number() ? 1 : 0;
    }
    return fits > 0 && statement.cells.size() == found.table.columns;
  };
  std::size_t rows = 0;
  while (rows < above.size() && of_other_sign(*above[above.size() - 1 - rows])) ++rows;
  if (rows < kFewest) return std::nullopt;
  const std::string cell{first.cells.front()};
  return Error{ErrorCode::kParse,
               fmt::format("found \"{}\", expected a time", cell),
               {name_, static_cast<int>(found.table.first_row.line), 1},
               cell,
               "a time"};
}

bool Interpreter::may_be_turned(const Table& table, std::size_t columns) {
  constexpr double kMostRows = 400;
  if (columns < 4) return false;
  if (table.columns == 0) return true;
  const bool names_first = table.profile.front().holds() == ColumnProfile::Holds::kText || table.headers.size() == 1;
  return table.rows <= kMostRows && static_cast<double>(columns) >= table.rows && (names_first || columns >= 8);
}

Result<Reading> Interpreter::turned_table(const TurnedTable& turned, char decimal, RowSource& original) {
  reading_.layout.form = Form::kRows;
  GridRows rows(turned.grid);
  DialectGuess guess = guess_grid(turned.grid, layout_);
  Found found;
  found.decimal = decimal;
  found.lines_of_columns = turned.lines;
  if (guess.columns > 0) found.table = find(rows, guess.columns, decimal);
  if (found.table.columns == 0) return no_table(name_, "rows");
  found.table.above = turned.others;
  return read_found(rows, found, original);
}

Result<Reading> Interpreter::read_found(RowSource& rows, Found& found, RowSource& original) {
  Row first;
  rows.seek(found.table.first_row);
  rows.next(first);
  if (auto error = decimal_changes(found, first)) return *error;
  // Each channel with a clock of its own, and more: told before columns are held against each other.
  if (found.table.columns > 2 * kMostChannels) return *too_many_channels(found.table.columns - 1, found);
  if (auto error = column_lacking(found)) return *error;
  for (const auto* list : {&found.table.above, &found.table.headers}) {
    for (const Statement& statement : *list) other_rows_ += row_of_numbers(statement, found.decimal) ? 1 : 0;
  }
  static const Dialect kCells;
  found.header = read_header(found.table, found.dialect != nullptr ? *found.dialect : kCells, first.text);
  std::vector<Statement> around = found.table.above;
  around.insert(around.end(), found.table.headers.begin(), found.table.headers.end());
  found.facts = read_facts(found.table.above);
  if (!found.facts.interval) found.facts.interval = read_facts(around).interval;
  for (std::size_t i = 0; i < found.table.columns; ++i) {
    const auto& column = found.header.columns[i];
    const auto of_time = [](const std::optional<UnitText>& unit) { return unit && unit->quantity == Quantity::kTime; };
    if (of_time(column.unit) || of_time(column.ending) || unit_of_time_in(column.texts))
      found.table.profile[i].take_packed_as_numbers();
  }
  found.columns = assign_columns(found.table, found.header, found.facts, layout_,
                                 options_.interval_s.has_value() || layout_.time.interval_s.has_value());
  if (found.columns.no_time && !found.facts.interval)
    found.facts.interval = interval_behind(lines_at_the_end(rows, found));
  reading_.read_as.header_line = found.lines_of_columns.empty() ? line_of_header(found) : 0;
  if (!named_in_lines_) reading_.layout.header_line = found.header.line;
  auto done = found.columns.form == Form::kLong ? long_form(rows, found) : wide(rows, found);
  if (!done) return done.error();
  complete_layout(found);
  reading_.shown = shown_lines(original, found.lines_of_columns.empty() ? found.table : Table{}, last_piece_);
  return std::move(reading_);
}

std::string Interpreter::column_name(const Found& found, std::size_t i) const {
  const auto& column = found.header.columns[i];
  return column.name.empty() ? column.texts : column.name;
}

Result<TimePlan> Interpreter::clock(const Found& found, int time_column) {
  auto planned = plan_time(found.table, found.header, found.columns, found.facts, layout_, options_.interval_s,
                           time_column, found.decimal);
  if (!planned) {
    Error error = placed(planned.error(), name_);
    if (error.where.line == 0) error.where.line = static_cast<int>(found.table.first_row.line);
    return error;
  }
  for (auto& assumption : planned->assumed) assume(std::move(assumption));
  for (auto& note : planned->notes) note_once(std::move(note));
  return planned->plan;
}

void Interpreter::assume(Assumption assumption) {
  auto& list = reading_.read_as.assumed;
  const bool there =
      std::any_of(list.begin(), list.end(), [&](const Assumption& a) { return a.text == assumption.text; });
  if (!there) list.push_back(std::move(assumption));
}

void Interpreter::note_once(std::string note) {
  auto& notes = reading_.read_as.notes;
  if (std::find(notes.begin(), notes.end(), note) == notes.end()) notes.push_back(std::move(note));
}

WidePlan Interpreter::plan_of(const Found& found) const {
  WidePlan plan;
  plan.columns = found.table.columns;
  plan.decimal = found.decimal;
  plan.profile = &found.table.profile;
  plan.ragged_rows_can_be_read = found.dialect == nullptr || found.dialect->split != Dialect::Split::kBlanks;
  plan.lines_of_columns = found.lines_of_columns;
  plan.leave_empty = layout_.leave_empty;
  plan.keep_lines = options_.keep_cells;
  return plan;
}

void Interpreter::take_account(WideResult& result) {
  reading_.read_as.rows = result.rows;
  reading_.read_as.rows_skipped = result.skipped;
  other_rows_ += result.other_rows;
  for (auto& note : result.notes) note_once(std::move(note));
  for (auto& warning : result.warnings) reading_.warnings.push_back(std::move(warning));
}

std::optional<Error> Interpreter::enough_rows(std::size_t rows, const Found& found) const {
  if (rows >= 2) return std::nullopt;
  const std::string count = rows == 1 ? "one sample" : "no sample";
  return Error{ErrorCode::kParse,
               fmt::format("found {}, expected a log of many", count),
               {name_, static_cast<int>(found.table.first_row.line), 0},
               count,
               "a log of many samples"};
}

int Interpreter::only_time(const Found& found) {
  for (std::size_t i = 0; i < found.table.columns; ++i) {
    if (found.columns.roles[i] == Role::kTime) return static_cast<int>(i);
  }
  return -1;
}

Result<TemperaturePlan> Interpreter::finish_plan(Result<TemperaturePlan> planned, int header_line) {
  if (!planned) return placed(planned.error(), name_);
  // What the file says and the numbers do not bear out is more than an assumption.
  for (auto& assumption : planned->assumed) {
    if (planned->stated_unit_doubted && assumption.about == "unit")
      reading_.warnings.push_back({assumption.text, {name_, header_line, 0}});
    assume(std::move(assumption));
  }
  for (auto& note : planned->notes) note_once(std::move(note));
  reading_.read_as.unit = planned->unit;
  return planned;
}

std::optional<UnitText> Interpreter::unit_of_cells(const std::string& text) {
  auto unit = parse_unit(text);
  const bool fits = unit && (unit->quantity == Quantity::kTemperature || unit->quantity == Quantity::kVoltage ||
                             unit->quantity == Quantity::kUnknownTemperature);
  return fits ? unit : std::nullopt;
}

void Interpreter::finish(std::vector<double>& times, const TimePlan& plan, std::optional<run::Steps> steps) {
  std::vector<Assumption> assumed;
  std::vector<std::string> notes;
  finish_times(times, plan, assumed, notes, steps);
  for (auto& assumption : assumed) assume(std::move(assumption));
  for (auto& note : notes) note_once(std::move(note));
}

std::shared_ptr<const std::vector<double>> Interpreter::finished(std::vector<double> times, const TimePlan& plan) {
  finish(times, plan);
  return std::make_shared<const std::vector<double>>(std::move(times));
}

void Interpreter::complete_layout(const Found& found) {
  Layout& layout = reading_.layout;
  layout.name = layout_.name;
  layout.leave_empty = layout_.leave_empty;
  layout.delimiter = reading_.read_as.delimiter;
  layout.decimal = reading_.read_as.decimal;
  if (!layout.form) layout.form = Form::kWide;
  layout.unit = temperatures_.unit;
  layout.scale = temperatures_.scale;
  if (temperatures_.thermocouple != 0) {
    layout.thermocouple_type = std::string(1, temperatures_.thermocouple);
    if (temperatures_.cold_junction_column >= 0) {
      layout.cold_junction_column = temperatures_.cold_junction_column + 1;
    } else {
      layout.cold_junction_C = temperatures_.cold_junction_C;
    }
  }
  const TimePlan& time = clocks_.front();
  layout.time.kind = time.name;
  for (const int column : {time.date, time.column, time.half, time.milliseconds, time.hours, time.minutes}) {
    if (column >= 0) layout.time.columns.push_back(column + 1);
  }
  std::sort(layout.time.columns.begin(), layout.time.columns.end());
  if (time.kind == TimeKind::kIndex) layout.time.interval_s = time.interval_s;
  if (time.kind == TimeKind::kMoment) layout.date_order = date_order_name(time.order);
  if (clocks_.size() > 1) layout.time.columns.clear();
  (void)found;
}

}  // namespace ovenwright::log
