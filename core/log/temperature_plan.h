#pragma once
#include <optional>
#include <string>
#include <vector>

#include "core/log/columns.h"
#include "core/log/facts.h"
#include "core/log/header.h"
#include "core/log/layout.h"
#include "core/log/reading.h"
#include "core/log/table.h"

namespace ovenwright::log {

/// How the numbers of one channel become °C.
struct ChannelUnit {
  std::string unit = "degC";  ///< degC, degF, K, mV
  double scale = 1;           ///< a cell times this is the value in the unit
  double millivolts = 1;      ///< mV: one unit of the cell
  char thermocouple = 'K';    ///< mV
  bool reversed = false;      ///< mV: the wires are exchanged, the sign is turned
};

struct TemperaturePlan {
  std::vector<ChannelUnit> channels;  ///< in the order of the columns given
  std::string unit;                   ///< of the most
  double scale = 1;                   ///< of the most
  int cold_junction_column = -1;      ///< from 0
  bool cold_junction_fahrenheit = false, cold_junction_kelvin = false;
  double cold_junction_C = 0;
  char thermocouple = 0;  ///< 0 unless there are voltages
  bool stated_unit_doubted =
      false;  ///< its assumption about the unit is that the numbers do not bear out what is stated
  std::vector<Assumption> assumed;
  std::vector<std::string> notes;
};

/// A channel as the planner sees it.
struct ChannelEvidence {
  std::string name;
  int column = -1;                              ///< from 0; -1 in the long form
  const std::vector<double>* values = nullptr;  ///< some of them, in order
  bool whole_numbers = false;
  std::optional<UnitText> unit;  ///< of header, row of units or cells
  std::string bracket;           ///< in brackets behind the name, no unit that is known
  std::string foreign_unit;      ///< in a row of units, and none that is known
  int foreign_unit_line = 0;
  char thermocouple = 0;
  double factor = 1;                       ///< of a row of factors above the data
  std::optional<std::string> forced_unit;  ///< of the layout, where this channel's differs from the others'
  bool reversed = false;                   ///< of the layout
};

/// Decides unit, scale, type and cold junction: by header, cells, lines around the table, and by the values where
/// nothing is stated.
/// Errors: kParse for a unit that is not known.
Result<TemperaturePlan> plan_temperatures(const std::vector<ChannelEvidence>& channels, const Facts& facts,
                                          const Layout& layout, int cold_junction_column,
                                          const std::optional<UnitText>& cold_junction_unit, bool time_has_bracket_unit,
                                          int header_line);

/// The readings of one channel in °C, in place. Cold junction readings are in °C already; empty: the plan's constant.
void to_celsius(std::vector<double>& readings, const ChannelUnit& unit, const TemperaturePlan& plan,
                const std::vector<double>& cold_junction_C);

}  // namespace ovenwright::log
