#pragma once
#include <optional>
#include <span>
#include <string_view>

#include "core/units/quantity.h"
#include "core/units/result.h"

namespace ovenwright::emf {

/// Thermocouple types by their letters (IEC 60584-1).
enum class Type { kK, kJ, kT, kE, kN, kR, kS, kB };

/// "K", "k", "type K"; empty where it names no type.
std::optional<Type> type_of(std::string_view name);
/// "K"
std::string_view type_name(Type type);

/// Where voltage and temperature determine each other: from where the inverse function begins (-200 °C for K) to the
/// end of the type's range (1372 °C for K). Voltages are known further down.
struct Range {
  Celsius lowest, highest;
};
Range range_of(Type type);

/// Voltage of a thermocouple whose junctions are at `temperature` and at 0 °C, mV.
/// Errors: kBadArgument outside the type's range (from -270 °C for K T E N, -210 J, -50 R S, 0 B).
/// Source: ITS-90 reference functions, NIST SRD 60 / Monograph 175. Cost: O(1), no allocation, thread-safe.
Result<double> voltage_mV(Type type, Celsius temperature);

/// Temperature of the measuring junction, the other one at 0 °C. The printed inverse function, off by up to 0.06 °C, is
/// refined by Newton steps on the direct function, so that both agree to 1e-9 °C.
/// Errors: kBadArgument where the voltage lies outside range_of(type).
Result<Celsius> temperature(Type type, double voltage_mV);
/// The same with the other junction at `cold_junction`, whose voltage is added.
Result<Celsius> temperature(Type type, double voltage_mV, Celsius cold_junction);

/// Turns readings in mV into °C where they stand, the other junction at one temperature or at one of its own for each
/// reading (spans of one length). What is above or below the range becomes +infinity or -infinity; NaN stays, and a
/// cold junction outside the range gives NaN. Cost: some 100 ns a reading, no allocation, thread-safe.
void to_temperatures(Type type, std::span<double> readings, Celsius cold_junction);
void to_temperatures(Type type, std::span<double> readings, std::span<const double> cold_junction_C);

}  // namespace ovenwright::emf
