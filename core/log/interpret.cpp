#include "core/log/interpret.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <limits>
#include <memory>
#include <set>

#include "core/log/channel_names.h"
#include "core/log/columns.h"
#include "core/log/decimal_sign.h"
#include "core/log/dialect.h"
#include "core/log/facts.h"
#include "core/log/header.h"
#include "core/log/joined_commas.h"
#include "core/log/long_form.h"
#include "core/log/mixed_decimals.h"
#include "core/log/rows_form.h"
#include "core/log/shown_lines.h"
#include "core/log/table.h"
#include "core/log/temperature_plan.h"
#include "core/log/text.h"
#include "core/log/time_plan.h"
#include "core/log/wide.h"
#include "core/log/words.h"

namespace ovenwright::log {
namespace {

/// A table with everything that was found out about it before its rows are read.
struct Found {
  const Dialect* dialect = nullptr;  ///< text only
  char decimal = '.';
  Table table;
  TableHeader header;
  Facts facts;
  Columns columns;
  std::vector<std::size_t> lines_of_columns;  ///< of a turned table
};

std::string first_words(std::string_view text) {
  text = trim(text);
  return std::string{text.substr(0, text.find_first_of("\r\n"))};
}

/// The line of a header that ends the text, all rows of which are missing; 0: none.
int last_line_is_header(std::string_view text) {
  int line = 0, header = 0;
  for (std::size_t at = 0; at < text.size();) {
    const auto end = std::min(text.find_first_of("\r\n", at), text.size());
    const auto words = trim(text.substr(at, end - at));
    ++line;
    at = end + (text.substr(end).starts_with("\r\n") ? 2 : 1);
    if (words.empty()) continue;
    constexpr std::size_t kLongest = 4096;
    const bool cells = words.find_first_of(",;\t|") != std::string_view::npos && words.size() < kLongest;
    const bool names = cells && (words_in(words) & (kTimeWord | kDateWord | kIndexWord | kTemperatureWord)) != 0;
    const bool units = header > 0 && cells && parse_unit(words.substr(0, words.find_first_of(",;\t|")));
    if (!units) header = names ? line : 0;
  }
  return header;
}

Error no_table(const std::string& name, std::string_view text) {
  const std::string expected = "a table of times and temperatures";
  constexpr std::size_t kMostBytes = 1U << 20;
  const int header = text.size() <= kMostBytes ? last_line_is_header(text) : 0;
  if (header > 0) {
    const std::string found = "a header and no rows behind it";
    return {
        ErrorCode::kParse, fmt::format("found {}, expected {}", found, expected), {name, header, 0}, found, expected};
  }
  const std::string words = first_words(text);
  return {ErrorCode::kParse,
          fmt::format("found {} and no rows of numbers, expected {}", quoted_for_message(words), expected),
          {name, 1, 0},
          words,
          expected};
}

/// Turns places within the table's columns into the message's place.
Error placed(Error error, const std::string& name) {
  error.where.file = name;
  return error;
}

class Interpreter {
 public:
  Interpreter(const std::string& name, const Options& options)
      : name_(name), options_(options), layout_(options.layout.value_or(Layout{})) {}

  Result<Reading> text(std::string_view text) {
    if (trim(text.substr(0, std::min<std::size_t>(text.size(), 1U << 16))).empty() && trim(text).empty()) {
      return Error{ErrorCode::kParse, "found nothing but blanks, expected a log", {name_, 1, 0}, "", "a log"};
    }
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
    TextRows rows(text, guess.dialect);
    if (guess.decimal_open && !layout_.decimal) {
      const DecimalChoice choice = settle_decimal(rows, guess);
      guess.decimal = choice.decimal;
      if (choice.assumed) reading_.read_as.assumed.push_back(*choice.assumed);
    }
    reading_.read_as.delimiter = guess.dialect.name();
    reading_.read_as.decimal = std::string(1, guess.decimal);
    Table found = find(rows, guess.columns, guess.decimal);
    if (guess.dialect.split == Dialect::Split::kDelimiter && guess.dialect.delimiter == ',' && guess.decimal == '.') {
      auto apart = torn_apart(text, found);
      if (!apart) return apart.error();
      if (*apart) {
        TextRows again((*apart)->text, {Dialect::Split::kDelimiter, ';', {}});
        const char decimal = (*apart)->decimal;
        reading_.read_as.decimal = std::string(1, decimal);
        reading_.read_as.notes.push_back(
            "Decimal commas stand without quotes between the commas of the delimiter; the counts of fields allow one "
            "reading.");
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

  Result<Reading> grid(const Grid& sheet) {
    const DialectGuess guess = guess_grid(sheet, layout_);
    if (guess.columns == 0) {
      std::string words;
      for (const auto& row : sheet.rows) {
        for (const auto& cell : row) words += words.size() < 60 ? cell + " " : "";
      }
      return no_table(name_, words);
    }
    GridRows rows(sheet);
    reading_.read_as.delimiter = "";
    reading_.read_as.decimal = std::string(1, guess.decimal);
    return table(rows, nullptr, guess.columns, find(rows, guess.columns, guess.decimal), guess.decimal, {});
  }

 private:
  /// Commas, semicolons and bars of the width of Chinese characters.
  static bool full_width_signs(std::string_view text) {
    const auto head = text.substr(0, 1U << 16);
    return head.find("，") != std::string_view::npos || head.find("；") != std::string_view::npos ||
           head.find("｜") != std::string_view::npos;
  }

  Result<Reading> with_plain_forms(const std::string& plain) {
    full_width_ = true;
    return text(plain);
  }

  Result<Reading> with_decimals(const AlikeDecimals& alike) {
    alike_decimals_ = true;
    layout_.decimal = std::string(1, alike.decimal);
    reading_.read_as.notes.push_back(
        fmt::format("Decimals are written with a point in {} column{} and with a comma in {}: each is read by its own.",
                    alike.point, alike.point == 1 ? "" : "s", alike.comma));
    return text(alike.text);
  }

  Layout with_signs(const char* delimiter, const char* decimal) const {
    Layout fixed = layout_;
    fixed.delimiter = delimiter;
    fixed.decimal = decimal;
    return fixed;
  }

  Table find(RowSource& rows, std::size_t columns, char decimal) const {
    return find_table(rows, columns, decimal, layout_.header_line.value_or(0), layout_.header_line.has_value());
  }

  Result<std::optional<Unjoined>> torn_apart(std::string_view text, const Table& table) {
    if (table.columns == 0) return std::optional<Unjoined>{};
    if (looks_like_one_column(table)) {
      only_decimal_commas_ = true;
      return std::optional<Unjoined>{};
    }
    if (table.headers.empty()) {
      if (!looks_torn_apart(table)) return std::optional<Unjoined>{};
      const std::string found =
          fmt::format("{} fields of whole numbers, every second one a single digit", table.columns);
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

  /// The first column, of times or row numbers, has no name: no reason to join fields.
  static bool header_lacks_first(const Table& table) {
    const auto& cells = table.headers.back().cells;
    return !cells.empty() && (read_header_text(cells.front()).words & (kTimeWord | kDateWord | kIndexWord)) == 0;
  }

  Result<Reading> table(RowSource& rows, const Dialect* dialect, std::size_t columns, Table table, char decimal,
                        std::string_view text) {
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

  static bool may_be_turned(const Table& table, std::size_t columns) {
    constexpr double kMostRows = 400;
    if (columns < 4) return false;
    if (table.columns == 0) return true;
    const bool names_first = table.profile.front().holds() == ColumnProfile::Holds::kText || table.headers.size() == 1;
    return table.rows <= kMostRows && static_cast<double>(columns) >= table.rows && (names_first || columns >= 8);
  }

  Result<Reading> turned_table(const TurnedTable& turned, char decimal, RowSource& original) {
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

  Result<Reading> read_found(RowSource& rows, Found& found, RowSource& original) {
    Row first;
    rows.seek(found.table.first_row);
    rows.next(first);
    static const Dialect kCells;
    found.header = read_header(found.table, found.dialect != nullptr ? *found.dialect : kCells, first.text);
    std::vector<Statement> around = found.table.above;
    around.insert(around.end(), found.table.headers.begin(), found.table.headers.end());
    found.facts = read_facts(found.table.above);
    if (!found.facts.interval) found.facts.interval = read_facts(around).interval;
    found.columns = assign_columns(found.table, found.header, found.facts, layout_,
                                   options_.interval_s.has_value() || layout_.time.interval_s.has_value());
    reading_.read_as.header_line = found.lines_of_columns.empty() ? found.header.line : 0;
    reading_.layout.header_line = found.header.line;
    auto done = found.columns.form == Form::kLong ? long_form(rows, found) : wide(rows, found);
    if (!done) return done.error();
    complete_layout(found);
    reading_.shown = shown_lines(original, found.lines_of_columns.empty() ? found.table : Table{}, last_piece_);
    return std::move(reading_);
  }

  std::string column_name(const Found& found, std::size_t i) const {
    const auto& column = found.header.columns[i];
    return column.name.empty() ? column.texts : column.name;
  }

  Result<TimePlan> clock(const Found& found, int time_column) {
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

  void assume(Assumption assumption) {
    auto& list = reading_.read_as.assumed;
    const bool there =
        std::any_of(list.begin(), list.end(), [&](const Assumption& a) { return a.text == assumption.text; });
    if (!there) list.push_back(std::move(assumption));
  }

  void note_once(std::string note) {
    auto& notes = reading_.read_as.notes;
    if (std::find(notes.begin(), notes.end(), note) == notes.end()) notes.push_back(std::move(note));
  }

  WidePlan plan_of(const Found& found) const {
    WidePlan plan;
    plan.columns = found.table.columns;
    plan.decimal = found.decimal;
    plan.profile = &found.table.profile;
    plan.ragged_rows_can_be_read = found.dialect == nullptr || found.dialect->split != Dialect::Split::kBlanks;
    plan.lines_of_columns = found.lines_of_columns;
    return plan;
  }

  void take_account(WideResult& result) {
    reading_.read_as.rows = result.rows;
    reading_.read_as.rows_skipped = result.skipped;
    for (auto& note : result.notes) note_once(std::move(note));
    for (auto& warning : result.warnings) reading_.warnings.push_back(std::move(warning));
  }

  std::optional<Error> enough_rows(std::size_t rows, const Found& found) const {
    if (rows >= 2) return std::nullopt;
    const std::string count = rows == 1 ? "one sample" : "no sample";
    return Error{ErrorCode::kParse,
                 fmt::format("found {}, expected a log of many", count),
                 {name_, static_cast<int>(found.table.first_row.line), 0},
                 count,
                 "a log of many samples"};
  }

  /// A table of so many columns is no log, whatever its numbers are.
  std::optional<Error> too_many_channels(std::size_t channels, const Found& found) const {
    if (channels <= kMostChannels) return std::nullopt;
    const std::string count = fmt::format("{} channels", channels), expected = fmt::format("at most {}", kMostChannels);
    return Error{ErrorCode::kParse,
                 fmt::format("found {}, expected {}", count, expected),
                 {name_, static_cast<int>(found.table.first_row.line), 0},
                 count,
                 expected};
  }

  // ---- one row holds all channels ----

  Result<bool> wide(RowSource& rows, Found& found) {
    WidePlan plan = plan_of(found);
    std::vector<int> time_columns;
    const int shared_time = only_time(found);
    const auto clock_index = [&](std::size_t column) {
      int time = found.columns.clock_of[column];
      if (time < 0) time = shared_time;
      const auto at = std::find(time_columns.begin(), time_columns.end(), time);
      if (at != time_columns.end()) return static_cast<int>(at - time_columns.begin());
      time_columns.push_back(time);
      return static_cast<int>(time_columns.size()) - 1;
    };
    std::vector<std::size_t> channels, others;
    int cold_junction = -1;
    for (std::size_t i = 0; i < found.table.columns; ++i) {
      const Role role = found.columns.roles[i];
      if (role == Role::kTemperature) channels.push_back(i);
      if (role == Role::kOther && found.table.profile[i].holds() == ColumnProfile::Holds::kNumbers) others.push_back(i);
      if (role == Role::kColdJunction) {
        others.push_back(i);
        if (cold_junction < 0) cold_junction = static_cast<int>(i);
      }
    }
    if (layout_.cold_junction_column) cold_junction = *layout_.cold_junction_column - 1;
    if (channels.empty()) {
      if (auto error = unit_of_no_temperature(found)) return *error;
      return Error{ErrorCode::kParse,
                   "found no column of temperatures, expected one at least",
                   {name_, static_cast<int>(found.table.first_row.line), 0},
                   "",
                   "a column of temperatures"};
    }
    if (auto error = too_many_channels(channels.size(), found)) return *error;
    for (const std::size_t i : channels) plan.numbers.push_back({static_cast<int>(i), clock_index(i), true});
    for (const std::size_t i : others)
      plan.numbers.push_back({static_cast<int>(i), found.columns.clock_of[i] < 0 ? 0 : clock_index(i), false});
    for (const int time : time_columns) {
      auto planned = clock(found, time);
      if (!planned) return planned.error();
      plan.clocks.push_back(*planned);
    }
    reading_.read_as.time = plan.clocks.front().name;
    auto temperatures = plan_channels(found, channels, cold_junction);
    if (!temperatures) return temperatures.error();

    auto result = read_wide(rows, found.dialect, found.table, plan, name_, options_.threads, options_.most_samples,
                            options_.progress);
    if (!result) return result.error();
    if (auto error = enough_rows(result->rows, found)) return *error;
    take_account(*result);
    last_piece_ = result->last_piece;
    for (std::size_t c = 0; c < plan.clocks.size(); ++c) {
      if (plan.clocks[c].column < 0) {
        for (std::size_t i = 0; i < result->rows; ++i) result->times[c][i] = static_cast<double>(i);
      }
    }
    keep_others(found, plan, others, *result, channels.size());
    if (auto error = standing_still(result->times, found)) return *error;
    const auto cold = cold_junction_of(*temperatures, plan, *result);
    channels_of(found, plan, channels, *temperatures, cold, *result);
    clocks_ = plan.clocks;
    return true;
  }

  /// "TC1 (bar)": columns named like channels, in a unit that is known and none of temperature.
  std::optional<Error> unit_of_no_temperature(const Found& found) const {
    for (std::size_t i = 0; i < found.table.columns; ++i) {
      const auto& column = found.header.columns[i];
      if (!column.unit || column.unit->quantity != Quantity::kOther ||
          (column.name_words & (kTemperatureWord | kChannelWord)) == 0)
        continue;
      return Error{ErrorCode::kParse,
                   fmt::format("found the unit {} and no column of temperatures, expected °C, °F, K or mV",
                               quoted_for_message(column.unit->name)),
                   {name_, found.header.line, static_cast<int>(i) + 1},
                   column.unit->name,
                   "°C, °F, K or mV"};
    }
    return std::nullopt;
  }

  /// One time in all rows leaves nothing to measure.
  std::optional<Error> standing_still(const std::vector<std::vector<double>>& clocks, const Found& found) const {
    for (const auto& times : clocks) {
      const bool moves =
          std::any_of(times.begin(), times.end(), [&times](double t) { return t != times.front() && !std::isnan(t); });
      if (!moves) {
        return Error{ErrorCode::kParse,
                     "found the same time in every row, expected times that go on",
                     {name_, static_cast<int>(found.table.first_row.line), 0},
                     "the same time in every row",
                     "times that go on"};
      }
    }
    return std::nullopt;
  }

  static int only_time(const Found& found) {
    for (std::size_t i = 0; i < found.table.columns; ++i) {
      if (found.columns.roles[i] == Role::kTime) return static_cast<int>(i);
    }
    return -1;
  }

  Result<TemperaturePlan> plan_channels(const Found& found, const std::vector<std::size_t>& channels,
                                        int cold_junction) {
    std::vector<ChannelEvidence> evidence;
    std::optional<UnitText> shared_ending = found.header.columns[channels.front()].ending;
    for (const std::size_t i : channels) {
      const auto& ending = found.header.columns[i].ending;
      if (!ending || !shared_ending || ending->name != shared_ending->name ||
          ending->quantity != Quantity::kTemperature)
        shared_ending.reset();
    }
    // "TC1 C": a letter that could be part of the name is a unit where every channel has it, or it is spelt out.
    endings_are_units_ = shared_ending.has_value() && (channels.size() > 1 || !shared_ending->weak);
    for (const std::size_t i : channels) {
      const auto& column = found.header.columns[i];
      const auto& profile = found.table.profile[i];
      ChannelEvidence one;
      one.name = column_name(found, i);
      one.column = static_cast<int>(i);
      one.values = &profile.values;
      one.whole_numbers = profile.whole_numbers && profile.numbers > 0;
      one.unit = column.unit;
      if (one.unit && one.unit->quantity != Quantity::kTemperature && one.unit->quantity != Quantity::kVoltage &&
          one.unit->quantity != Quantity::kUnknownTemperature)
        one.unit.reset();
      if (!one.unit && !profile.unit_seen.empty()) one.unit = unit_of_cells(profile.unit_seen);
      if (!one.unit) one.unit = unit_beside(found, i);
      if (!one.unit && endings_are_units_) one.unit = column.ending;
      one.bracket = column.bracket;
      one.foreign_unit = column.foreign_unit;
      one.foreign_unit_line = column.foreign_unit_line;
      one.thermocouple = column.thermocouple;
      if (const auto* fixed = fixed_channel(i)) one.forced_unit = fixed->unit;
      evidence.push_back(std::move(one));
    }
    const int time = only_time(found);
    const bool time_bracket = time >= 0 && found.header.columns[static_cast<std::size_t>(time)].unit.has_value();
    std::optional<UnitText> cold_unit;
    if (cold_junction >= 0 && static_cast<std::size_t>(cold_junction) < found.table.columns)
      cold_unit = found.header.columns[static_cast<std::size_t>(cold_junction)].unit;
    return finish_plan(
        plan_temperatures(evidence, found.facts, layout_, cold_junction, cold_unit, time_bracket, found.header.line));
  }

  Result<TemperaturePlan> finish_plan(Result<TemperaturePlan> planned) {
    if (!planned) return placed(planned.error(), name_);
    for (auto& assumption : planned->assumed) assume(std::move(assumption));
    for (auto& note : planned->notes) note_once(std::move(note));
    reading_.read_as.unit = planned->unit;
    return planned;
  }

  static std::optional<UnitText> unit_of_cells(const std::string& text) {
    auto unit = parse_unit(text);
    const bool fits = unit && (unit->quantity == Quantity::kTemperature || unit->quantity == Quantity::kVoltage ||
                               unit->quantity == Quantity::kUnknownTemperature);
    return fits ? unit : std::nullopt;
  }

  /// A column of units behind the numbers.
  static std::optional<UnitText> unit_beside(const Found& found, std::size_t i) {
    if (i + 1 >= found.table.columns || found.columns.roles[i + 1] != Role::kUnit ||
        found.table.profile[i + 1].texts_seen.empty())
      return std::nullopt;
    return unit_of_cells(found.table.profile[i + 1].texts_seen.front());
  }

  void keep_others(const Found& found, const WidePlan&, const std::vector<std::size_t>& others, WideResult& result,
                   std::size_t channels) {
    std::string reasons;
    for (std::size_t k = 0; k < others.size(); ++k) {
      const std::size_t i = others[k];
      std::string name = column_name(found, i);
      if (name.empty()) name = fmt::format("column {}", i + 1);
      if (!found.columns.reasons[i].empty())
        note_once(fmt::format("{} is kept but not judged: {}.", name, found.columns.reasons[i]));
      // The cold junction's readings are still needed.
      const bool needed = found.columns.roles[i] == Role::kColdJunction;
      auto& values = result.values[channels + k];
      reading_.others.push_back({std::move(name), needed ? values : std::move(values)});
    }
  }

  std::vector<double> cold_junction_of(const TemperaturePlan& temperatures, const WidePlan& plan,
                                       const WideResult& result) const {
    if (temperatures.cold_junction_column < 0) return {};
    for (std::size_t k = 0; k < plan.numbers.size(); ++k) {
      if (plan.numbers[k].column != temperatures.cold_junction_column) continue;
      std::vector<double> cold = result.values[k];
      for (double& value : cold) {
        if (temperatures.cold_junction_fahrenheit) value = (value - 32) / 1.8;
        if (temperatures.cold_junction_kelvin) value -= 273.15;
      }
      return cold;
    }
    return {};
  }

  void channels_of(const Found& found, const WidePlan& plan, const std::vector<std::size_t>& columns,
                   const TemperaturePlan& temperatures, const std::vector<double>& cold, WideResult& result) {
    std::vector<std::string> names;
    for (std::size_t k = 0; k < columns.size(); ++k) {
      const auto& column = found.header.columns[columns[k]];
      std::string name = endings_are_units_ && column.ending ? column.name_before_ending : column.name;
      if (name.empty()) name = name_above_clock(found, columns[k]);
      const Layout::ChannelColumn* fixed = fixed_channel(columns[k]);
      if (fixed != nullptr && !fixed->name.empty()) name = fixed->name;
      names.push_back(std::move(name));
    }
    names = unique_names(std::move(names));
    std::vector<std::shared_ptr<const std::vector<double>>> shared(plan.clocks.size());
    const bool own_clocks = plan.clocks.size() > 1;
    if (!own_clocks) shared.front() = finished(std::move(result.times.front()), plan.clocks.front());
    for (std::size_t k = 0; k < columns.size(); ++k) {
      const Layout::ChannelColumn* fixed = fixed_channel(columns[k]);
      const int clock = plan.numbers[k].clock;
      auto& values = result.values[k];
      to_celsius(values, temperatures.channels[k], temperatures, cold);
      Layout::ChannelColumn described{static_cast<int>(columns[k]) + 1,
                                      names[k],
                                      own_clocks ? plan.clocks[static_cast<std::size_t>(clock)].column + 1 : 0,
                                      fixed == nullptr || fixed->use,
                                      {}};
      if (temperatures.channels[k].unit != temperatures.unit) described.unit = temperatures.channels[k].unit;
      reading_.layout.channels.push_back(described);
      if (own_clocks) {
        // Rows in which this clock stands still because its log was over.
        auto times = result.times[static_cast<std::size_t>(clock)];
        std::size_t kept = 0;
        for (std::size_t i = 0; i < times.size(); ++i) {
          if (std::isnan(times[i])) continue;
          times[kept] = times[i];
          values[kept++] = values[i];
        }
        times.resize(kept);
        values.resize(kept);
        auto& one = shared[static_cast<std::size_t>(clock)];
        if (!one) one = finished(std::move(times), plan.clocks[static_cast<std::size_t>(clock)]);
      }
      if (described.use) {
        reading_.channels.push_back(
            {names[k], static_cast<int>(k) + 1, shared[static_cast<std::size_t>(clock)], std::move(values)});
      } else {
        reading_.others.push_back({names[k], std::move(values)});
      }
    }
    temperatures_ = temperatures;
  }

  /// "U1 centre;;U1 corner;" over "s;°C;s;°C": a name over two columns stands above the first, the channel's own clock.
  static std::string name_above_clock(const Found& found, std::size_t column) {
    if (column == 0 || found.columns.clock_of[column] != static_cast<int>(column) - 1) return {};
    const auto& clock = found.header.columns[column - 1];
    return (clock.name_words & (kTimeWord | kDateWord | kIndexWord)) == 0 ? clock.name : std::string{};
  }

  const Layout::ChannelColumn* fixed_channel(std::size_t column) const {
    const auto found = std::find_if(layout_.channels.begin(), layout_.channels.end(),
                                    [column](const auto& c) { return c.column == static_cast<int>(column) + 1; });
    return found == layout_.channels.end() ? nullptr : &*found;
  }

  std::shared_ptr<const std::vector<double>> finished(std::vector<double> times, const TimePlan& plan) {
    std::vector<Assumption> assumed;
    std::vector<std::string> notes;
    finish_times(times, plan, assumed, notes);
    for (auto& assumption : assumed) assume(std::move(assumption));
    for (auto& note : notes) note_once(std::move(note));
    return std::make_shared<const std::vector<double>>(std::move(times));
  }

  // ---- time, channel, value ----

  Result<bool> long_form(RowSource& rows, Found& found) {
    reading_.layout.form = Form::kLong;
    WidePlan plan = plan_of(found);
    int names = -1, value = -1, unit = -1;
    for (std::size_t i = 0; i < found.table.columns; ++i) {
      const int column = static_cast<int>(i);
      if (found.columns.roles[i] == Role::kChannelName) names = column;
      if (found.columns.roles[i] == Role::kTemperature) value = column;
      if (found.columns.roles[i] == Role::kUnit) unit = column;
    }
    if (names < 0 || value < 0) {
      return Error{ErrorCode::kParse,
                   "found no columns of channel names and values, expected time, channel and value",
                   {name_, static_cast<int>(found.table.first_row.line), 0},
                   "",
                   "time, channel and value"};
    }
    auto planned = clock(found, only_time(found));
    if (!planned) return planned.error();
    plan.clocks.push_back(*planned);
    plan.numbers.push_back({value, 0, true});
    reading_.read_as.time = planned->name;
    auto result =
        read_long(rows, found.table.first_row, plan, names, unit, name_, options_.most_samples, options_.progress);
    if (!result) return result.error();
    if (auto error = enough_rows(result->account.rows, found)) return *error;
    take_account(result->account);
    return long_channels(found, plan, *result, static_cast<std::size_t>(value));
  }

  Result<bool> long_channels(const Found& found, const WidePlan& plan, LongResult& result, std::size_t value) {
    std::vector<HeaderText> heads;
    std::vector<std::size_t> judged;
    const auto& value_column = found.header.columns[value];
    for (std::size_t i = 0; i < result.channels.size(); ++i) {
      heads.push_back(read_header_text(result.channels[i].name));
      HeaderText& head = heads.back();
      if (auto unit = parse_unit(result.channels[i].unit)) head.unit = unit;
      if (head.name.empty()) head.name = head.whole;
      const bool temperature =
          head.unit && (head.unit->quantity == Quantity::kTemperature || head.unit->quantity == Quantity::kVoltage ||
                        head.unit->quantity == Quantity::kUnknownTemperature);
      const bool other_unit = head.unit && !temperature;
      const bool other_word =
          (head.words & (kOtherWord | kZoneWord | kSetpointWord | kColdJunctionWord)) != 0 && !temperature;
      if (!other_unit && !other_word) judged.push_back(i);
    }
    if (judged.empty()) {
      for (std::size_t i = 0; i < result.channels.size(); ++i) judged.push_back(i);
    }
    std::vector<ChannelEvidence> evidence;
    std::vector<std::vector<double>> samples;
    samples.reserve(judged.size());
    for (const std::size_t i : judged) {
      const auto& values = result.channels[i].values;
      const std::size_t step = std::max<std::size_t>(1, values.size() / 400);
      samples.emplace_back();
      for (std::size_t k = 0; k < values.size(); k += step) samples.back().push_back(values[k]);
      ChannelEvidence one;
      one.name = heads[i].name;
      one.column = static_cast<int>(value);
      one.values = &samples.back();
      one.whole_numbers = found.table.profile[value].whole_numbers;
      one.unit = heads[i].unit ? heads[i].unit : value_column.unit;
      if (!one.unit) one.unit = unit_of_cells(found.table.profile[value].unit_seen);
      one.bracket = value_column.bracket;
      one.thermocouple = heads[i].thermocouple != 0 ? heads[i].thermocouple : value_column.thermocouple;
      evidence.push_back(std::move(one));
    }
    auto temperatures = finish_plan(plan_temperatures(evidence, found.facts, layout_, -1, {}, true, found.header.line));
    if (!temperatures) return temperatures.error();
    std::vector<std::string> names;
    for (const std::size_t i : judged) names.push_back(heads[i].name);
    names = unique_names(std::move(names));
    std::shared_ptr<const std::vector<double>> before;
    for (std::size_t k = 0; k < judged.size(); ++k) {
      LongChannel& channel = result.channels[judged[k]];
      if (plan.clocks.front().column < 0) {
        for (std::size_t i = 0; i < channel.times.size(); ++i) channel.times[i] = static_cast<double>(i);
      }
      to_celsius(channel.values, temperatures->channels[k], *temperatures, {});
      if (!before || raw_times_ != channel.times) {
        raw_times_ = channel.times;
        before = finished(std::move(channel.times), from_first_row(plan.clocks.front(), result));
      }
      const auto fixed = std::find_if(layout_.channels.begin(), layout_.channels.end(),
                                      [&](const auto& c) { return c.name == names[k]; });
      const bool use = fixed == layout_.channels.end() || fixed->use;
      reading_.layout.channels.push_back({0, names[k], 0, use, {}});
      if (use) {
        reading_.channels.push_back({names[k], static_cast<int>(k) + 1, before, std::move(channel.values)});
      } else {
        reading_.others.push_back({names[k], std::move(channel.values)});
      }
    }
    for (std::size_t i = 0; i < result.channels.size(); ++i) {
      if (std::find(judged.begin(), judged.end(), i) == judged.end())
        reading_.others.push_back({heads[i].name, std::move(result.channels[i].values)});
    }
    clocks_ = plan.clocks;
    temperatures_ = *temperatures;
    return true;
  }

  /// All channels count from the first row of the file, not each from its own.
  TimePlan from_first_row(TimePlan plan, const LongResult& result) const {
    if (first_time_ == nullptr) {
      double first = std::numeric_limits<double>::infinity();
      for (const LongChannel& channel : result.channels) {
        if (!channel.times.empty()) first = std::min(first, channel.times.front());
      }
      first_time_ = std::make_unique<double>(first);
    }
    plan.origin = *first_time_;
    return plan;
  }

  // ---- the layout ----

  void complete_layout(const Found& found) {
    Layout& layout = reading_.layout;
    layout.name = layout_.name;
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

  const std::string& name_;
  const Options& options_;
  Layout layout_;
  Reading reading_;
  bool endings_are_units_ = false;
  bool alike_decimals_ = false;       ///< columns with another decimal sign were made like the others
  bool full_width_ = false;           ///< the text was turned into plain forms
  bool only_decimal_commas_ = false;  ///< "25,4" in every line: one column, not two
  std::vector<TimePlan> clocks_;
  TemperaturePlan temperatures_;
  std::vector<double> raw_times_;
  Position last_piece_;
  mutable std::unique_ptr<double> first_time_;
};

}  // namespace

Result<Reading> interpret_text(const std::string& name, std::string_view text, const Options& options) {
  return Interpreter(name, options).text(text);
}

Result<Reading> interpret_grid(const std::string& name, const Grid& grid, const Options& options) {
  return Interpreter(name, options).grid(grid);
}

double likeness_to_a_log(const Grid& grid) {
  const DialectGuess guess = guess_grid(grid, {});
  if (guess.columns < 1) return 0;
  GridRows rows(grid);
  const Table table = find_table(rows, guess.columns, guess.decimal, 0, false);
  return table.rows * static_cast<double>(table.columns) * guess.score;
}

}  // namespace ovenwright::log
