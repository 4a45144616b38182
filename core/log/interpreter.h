#pragma once
#include <cstddef>
#include <memory>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/log/columns.h"
#include "core/log/dialect.h"
#include "core/log/facts.h"
#include "core/log/header.h"
#include "core/log/joined_commas.h"
#include "core/log/long_form.h"
#include "core/log/mixed_decimals.h"
#include "core/log/reading.h"
#include "core/log/rows_form.h"
#include "core/log/table.h"
#include "core/log/temperature_plan.h"
#include "core/log/time_plan.h"
#include "core/log/wide.h"
#include "core/run/steps.h"

namespace ovenwright::log {

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

/// Turns a text or a grid into a reading: finds the table, what its columns are, its units and times, then reads it.
/// For one call of text() or grid().
class Interpreter {
 public:
  Interpreter(const std::string& name, const Options& options)
      : name_(name), options_(options), layout_(options.layout.value_or(Layout{})) {}
  Result<Reading> text(std::string_view text);
  Result<Reading> grid(const Grid& sheet);
  /// How the text was split; once it was read.
  const Dialect& dialect() const { return dialect_; }
  char decimal() const { return decimal_; }
  /// Rows of numbers that are none of the table, or something in the way of it: another table may stand there.
  bool may_hold_others(const Result<Reading>& reading) const;

 private:
  /// A text that is split at signs, or whose lines name their values where that is no log.
  Result<Reading> split(std::string_view text);
  /// Commas, semicolons, bars and figures of the width of Chinese characters, or Arabic figures.
  static bool full_width_signs(std::string_view text);
  Result<Reading> with_plain_forms(const std::string& plain);
  Result<Reading> with_decimals(const AlikeDecimals& alike);
  Layout with_signs(const char* delimiter, const char* decimal) const;
  Table find(RowSource& rows, std::size_t columns, char decimal) const;
  Result<std::optional<Unjoined>> torn_apart(std::string_view text, const Table& table);
  /// The first column, of times or row numbers, has no name: no reason to join fields.
  static bool header_lacks_first(const Table& table);
  Result<Reading> table(RowSource& rows, const Dialect* dialect, std::size_t columns, Table table, char decimal,
                        std::string_view text);
  /// Rows of numbers with the other decimal sign directly above the table: the sign changes within the log.
  std::optional<Error> decimal_changes(const Found& found, const Row& first) const;
  static bool may_be_turned(const Table& table, std::size_t columns);
  Result<Reading> turned_table(const TurnedTable& turned, char decimal, RowSource& original);
  Result<Reading> read_found(RowSource& rows, Found& found, RowSource& original);
  std::string column_name(const Found& found, std::size_t i) const;
  /// Of the last 4 KiB of a text those lines that are no rows of the table.
  static std::vector<Statement> lines_at_the_end(RowSource& rows, const Found& found);
  Result<TimePlan> clock(const Found& found, int time_column);
  void assume(Assumption assumption);
  void note_once(std::string note);
  WidePlan plan_of(const Found& found) const;
  void take_account(WideResult& result);
  std::optional<Error> enough_rows(std::size_t rows, const Found& found) const;
  /// Where the header stands in the file; 0 where nothing is one line's.
  int line_of_header(const Found& found) const { return named_in_lines_ ? 0 : found.header.line; }
  /// A column that the layout names and the table does not have: a channel would be missing without a word.
  std::optional<Error> column_lacking(const Found& found) const;
  /// A table of so many columns is no log, whatever its numbers are.
  std::optional<Error> too_many_channels(std::size_t channels, const Found& found) const;
  // ---- one row holds all channels ----
  Result<bool> wide(RowSource& rows, Found& found);
  /// "TC1 (bar)": columns named like channels, in a unit that is known and none of temperature.
  std::optional<Error> unit_of_no_temperature(const Found& found) const;
  /// Rows in any order are put in that of their times.
  std::optional<Error> put_rows_in_order(RowSource& rows, const Found& found, WidePlan plan, WideResult& result);
  /// One time in all rows leaves nothing to measure.
  std::optional<Error> standing_still(const std::vector<std::vector<double>>& clocks, const Found& found) const;
  static int only_time(const Found& found);
  /// The cells of the row of names; none where they do not stand one to a column.
  std::vector<std::string> names_in_header(const Found& found);
  Result<TemperaturePlan> plan_channels(const Found& found, const std::vector<std::size_t>& channels,
                                        int cold_junction);
  Result<TemperaturePlan> finish_plan(Result<TemperaturePlan> planned, int header_line);
  static std::optional<UnitText> unit_of_cells(const std::string& text);
  /// A column of units behind the numbers.
  static std::optional<UnitText> unit_beside(const Found& found, std::size_t i);
  void keep_others(const Found& found, const WidePlan&, const std::vector<std::size_t>& others, WideResult& result,
                   std::size_t channels);
  std::vector<double> cold_junction_of(const TemperaturePlan& temperatures, const WidePlan& plan,
                                       const WideResult& result) const;
  void channels_of(const Found& found, const WidePlan& plan, const std::vector<std::size_t>& columns,
                   const TemperaturePlan& temperatures, const std::vector<double>& cold, WideResult& result);
  static std::vector<SampleCell> cells_of(const Found& found, std::size_t column, const std::vector<double>& lines);
  /// "U1 centre;;U1 corner;" over "s;°C;s;°C": a name over two columns stands above the first, the channel's own clock.
  static std::string name_above_clock(const Found& found, std::size_t column);
  const Layout::ChannelColumn* fixed_channel(std::size_t column) const;
  /// Times as they came from the rows to seconds; what is said of them is kept.
  /// @param steps  of these times, where they are known
  void finish(std::vector<double>& times, const TimePlan& plan, std::optional<run::Steps> steps = std::nullopt);
  std::shared_ptr<const std::vector<double>> finished(std::vector<double> times, const TimePlan& plan);
  // ---- time, channel, value ----
  Result<bool> long_form(RowSource& rows, Found& found);
  Result<bool> long_channels(const Found& found, const WidePlan& plan, LongResult& result, std::size_t value);
  /// All channels count from the first row of the file, not each from its own.
  TimePlan from_first_row(TimePlan plan, const LongResult& result) const;
  // ---- the layout ----
  void complete_layout(const Found& found);
  const std::string& name_;
  const Options& options_;
  Layout layout_;
  Reading reading_;
  bool endings_are_units_ = false;
  bool named_in_lines_ = false;       ///< the names stand in each line: no line is the header
  bool alike_decimals_ = false;       ///< columns with another decimal sign were made like the others
  bool full_width_ = false;           ///< the text was turned into plain forms
  bool only_decimal_commas_ = false;  ///< "25,4" in every line: one column, not two
  Dialect dialect_;
  char decimal_ = '.';
  std::size_t other_rows_ = 0;  ///< rows of numbers above the table or under the header of a narrower one
  std::vector<TimePlan> clocks_;
  TemperaturePlan temperatures_;
  std::vector<double> raw_times_;
  Position last_piece_;
  mutable std::unique_ptr<double> first_time_;
};

}  // namespace ovenwright::log
