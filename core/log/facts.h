#pragma once
#include <cstddef>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/log/facts_span.h"
#include "core/log/table.h"
#include "core/log/time_text.h"
#include "core/log/units.h"

namespace ovenwright::log {

/// A stated sampling interval.
struct StatedInterval {
  double seconds = 0;
  bool unit_stated = true;
  std::string text;  ///< the line that says so
  std::size_t line = 0;
};

/// What the lines around the table say about how to read it.
struct Facts {
  std::optional<StatedInterval> interval;
  std::optional<UnitText> unit;  ///< of the temperatures
  std::optional<UnitText> time_unit;
  std::optional<Statement> unknown_unit;  ///< "Unit: xyz": the line
  std::string unknown_unit_text;
  char thermocouple = 0;
  std::optional<double> cold_junction_C;
  std::optional<double> scale;
  std::optional<DateOrder> date_order;
  std::optional<StatedSpan> span;  ///< of the whole log
};

Facts read_facts(const std::vector<Statement>& statements);
/// Behind the table stand results of any kind: of them a line counts that is the name of a sampling interval or rate
/// and its value with a unit, and nothing else.
std::optional<StatedInterval> interval_behind(const std::vector<Statement>& lines);

/// "0.5 s", "500 ms", "2 Hz", "00:00:01" somewhere in the text. With a keyword before it a plain number counts too.
std::optional<StatedInterval> interval_in(std::string_view text, bool keyword_needed);

/// "dd/mm/yyyy", "tt.mm.jjjj", "MM-DD-YY" in a text.
std::optional<DateOrder> date_order_in(std::string_view text);

}  // namespace ovenwright::log
