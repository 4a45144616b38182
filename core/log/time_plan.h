#pragma once
#include <optional>
#include <string>
#include <vector>

#include "core/log/columns.h"
#include "core/log/facts.h"
#include "core/log/header.h"
#include "core/log/reading.h"
#include "core/log/table.h"
#include "core/run/steps.h"

namespace ovenwright::log {

enum class TimeKind { kNumber, kEpoch, kSerialDays, kClock, kMoment, kIndex };

/// How the time of a row comes out of its cells.
struct TimePlan {
  TimeKind kind = TimeKind::kNumber;
  std::string name;  ///< as in layout.toml
  int column = -1;   ///< from 0; -1: none (an index that counts rows)
  int date = -1, half = -1, milliseconds = -1;
  int hours = -1, minutes = -1;     ///< kClock: in columns of their own, the seconds in `column`
  double parts_of_a_second = 1000;  ///< that the column `milliseconds` counts
  double seconds_per_unit = 1;      ///< kNumber, kEpoch
  bool hours_and_minutes = false;   ///< kClock: two parts are h:m, not m:s
  DateOrder order = DateOrder::kDayMonthYear;
  double interval_s = 0;         ///< kIndex
  int decimals = 0;              ///< most that a plain number of the column has
  std::optional<double> origin;  ///< the time, as it came from the row, that counts as the first; absent: the first one
  double base_days = 0;          ///< kMoment: the first row's day, so that no digits are lost
};

/// What was decided and may have been decided otherwise.
struct TimePlanning {
  TimePlan plan;
  std::vector<Assumption> assumed;
  std::vector<std::string> notes;
};

/// Decides how the times of one clock are read: from the header's units, the patterns of its cells, what lies around
/// the table, and where that is not enough from how long a run takes.
/// @param time_column  from 0; -1: there is none, the rows are counted
/// Errors: kParse where there is no time and no interval, or a unit of time that cannot be.
Result<TimePlanning> plan_time(const Table& table, const TableHeader& header, const Columns& columns,
                               const Facts& facts, const Layout& layout, std::optional<double> interval_s,
                               int time_column, char decimal);

/// Times as they came from the rows to seconds on the log's clock: a plain number keeps its zero, all others count
/// from the first row. Clocks go on past midnight. Times that stand still because they were rounded are spread evenly
/// where that fits every row, and said so. NaN stays NaN.
/// @param steps  of these times, where they were counted already
void finish_times(std::vector<double>& times, const TimePlan& plan, std::vector<Assumption>& assumed,
                  std::vector<std::string>& notes, std::optional<run::Steps> steps = std::nullopt);

/// Whether the rows stand in the order of falling times, the newest first. Times as they came from the rows.
bool newest_first(const std::vector<double>& times);

const char* date_order_name(DateOrder order);

/// "Elapsed seconds", "Zeit Millisekunden": the unit of time among the words of a header.
std::optional<UnitText> unit_of_time_in(std::string_view text);

}  // namespace ovenwright::log
