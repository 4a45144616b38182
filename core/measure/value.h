#pragma once
#include <array>
#include <optional>
#include <string>

#include "core/measure/definition.h"

namespace ovenwright::measure {

enum class NoValue { kNotReached, kUndetermined };

/// Standard uncertainties by cause, in the measure's unit.
struct Terms {
  double thermocouple = 0, instrument = 0, noise = 0, sampling = 0;
};

/// One measured value with everything needed to show how it came about.
struct Value {
  std::optional<double> value;
  Unit unit = Unit::kCelsius;
  bool at_least = false;                       ///< the log shows only part; value is a bound
  std::optional<NoValue> no_value;             ///< set exactly where value is absent
  std::string reason;                          ///< English; why no value, or why only a bound; may be empty
  std::string note;                            ///< "counts to its peak: never reaches 200 °C"; may be empty
  std::optional<double> expanded_uncertainty;  ///< U = 2u; absent for counts and without value
  Terms terms;
  std::optional<double> from_s, to_s;          ///< first and last instant that counted, log's clock
  std::optional<std::array<double, 2>> range;  ///< with a bridged gap: lowest and highest of the three courses
};

}  // namespace ovenwright::measure
