#pragma once
#include <optional>
#include <string>
#include <vector>

#include "core/log/facts.h"
#include "core/log/header.h"
#include "core/log/layout.h"
#include "core/log/reading.h"
#include "core/log/table.h"

namespace ovenwright::log {

enum class Role {
  kNothing,       ///< empty, or nothing that is kept
  kTime,          ///< numbers, clocks, dates or moments that say when
  kDate,          ///< the date beside a clock
  kHalfOfDay,     ///< AM and PM in a column of their own
  kMilliseconds,  ///< what the clock beside it leaves out
  kHours,         ///< of a clock whose parts have columns of their own; its seconds are kTime
  kMinutes,
  kIndex,
  kTemperature,  ///< a thermocouple, in a unit of temperature or in volts
  kColdJunction,
  kOther,  ///< kept, not judged
  kText,
  kChannelName,  ///< long form
  kUnit          ///< a unit in each row
};

/// What each column is for.
struct Columns {
  std::vector<Role> roles;
  std::vector<int>
      clock_of;  ///< for each column the time column (from 0) that it goes by; -1: the only one, or the index
  std::vector<std::string> reasons;  ///< for kOther: why it is no channel; empty where the name says so
  std::vector<bool> doubted;  ///< set aside by its name, though it moves as the board does: more than a note
  Form form = Form::kWide;
  bool no_time = false;  ///< nothing but rows: an interval is needed
};

/// Decides by the words of the header, the units, and what the columns hold; what the header does not say the values
/// do. `layout` overrides: its time columns, channels and form are taken as they are.
Columns assign_columns(const Table& table, const TableHeader& header, const Facts& facts, const Layout& layout,
                       bool interval_given);

}  // namespace ovenwright::log
