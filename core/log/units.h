#pragma once
#include <optional>
#include <string>
#include <string_view>

namespace ovenwright::log {

enum class Quantity {
  kTemperature,         ///< degC, degF, K
  kVoltage,             ///< of a thermocouple: mV
  kTime,                ///< with the seconds in one unit
  kClock,               ///< a pattern: "hh:mm:ss", "dd.mm.yyyy"
  kOther,               ///< ppm, %, mm/min, °C/s: known, and no temperature
  kUnknownTemperature,  ///< "°R", "rankine": a temperature, in a unit that is not read
};

/// A unit as it stands in a header, a row of units, a cell or a line of metadata.
struct UnitText {
  Quantity quantity = Quantity::kOther;
  std::string name;   ///< "degC", "degF", "K", "mV"; for others as it stood
  double factor = 1;  ///< kTime: seconds in one unit; kVoltage: millivolts in one unit
  double scale = 1;   ///< a stated factor: "0.1 °C", "°C x10"; 1: none. Its direction is settled by the values
  bool weak = false;  ///< one plain letter (C, F, K, s, m): a unit only where the place says so
};

/// The unit that the whole text is; nothing where it is no unit that is known.
/// @param text  trimmed, of any case and script
std::optional<UnitText> parse_unit(std::string_view text);

}  // namespace ovenwright::log
