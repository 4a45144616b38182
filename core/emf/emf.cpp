#include "core/emf/emf.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <cassert>
#include <cmath>
#include <limits>

#include "core/emf/its90_functions.h"

namespace ovenwright::emf {
namespace {

constexpr std::array kFunctions = {its90::kK, its90::kJ, its90::kT, its90::kE,
                                   its90::kN, its90::kR, its90::kS, its90::kB};
constexpr std::string_view kNames = "KJTENRSB";

const ReferenceFunctions& functions(Type type) { return kFunctions[static_cast<std::size_t>(type)]; }

std::span<const double> piece_at(std::span<const Piece> pieces, double variable) {
  const auto holds = std::ranges::find_if(pieces, [&](const Piece& piece) { return variable <= piece.highest; });
  return (holds == pieces.end() ? pieces.back() : *holds).coefficients;
}

/// A value and its derivative.
struct Tangent {
  double value = 0, slope = 0;
};

Tangent horner(std::span<const double> coefficients, double variable) {
  Tangent result;
  for (auto c = coefficients.rbegin(); c != coefficients.rend(); ++c) {
    result.slope = result.slope * variable + result.value;
    result.value = result.value * variable + *c;
  }
  return result;
}

/// The direct function, carried on by its last piece outside the range.
Tangent direct(Type type, double temperature_C) {
  auto result = horner(piece_at(functions(type).direct, temperature_C), temperature_C);
  if (type == Type::kK && temperature_C > 0) {
    const double distance = temperature_C - its90::kKa2;
    const double gaussian = its90::kKa0 * std::exp(its90::kKa1 * distance * distance);
    result.value += gaussian;
    result.slope += 2 * its90::kKa1 * distance * gaussian;
  }
  return result;
}

bool knows_voltage(Type type, double temperature_C) {
  const auto& known = functions(type);
  return temperature_C >= known.lowest_direct_C && temperature_C <= known.direct.back().highest;
}

/// The voltages at the ends of range_of(type), a rounded last digit of the printed tables beyond.
struct VoltageRange {
  double lowest_mV, highest_mV;
};
VoltageRange voltage_range(Type type) {
  constexpr double kPrintRounding = 0.0005;
  const auto range = range_of(type);
  return {direct(type, range.lowest.value).value - kPrintRounding,
          direct(type, range.highest.value).value + kPrintRounding};
}

/// For a voltage within voltage_range().
double inverse(Type type, double voltage_mV) {
  double temperature_C = horner(piece_at(functions(type).inverse, voltage_mV), voltage_mV).value;
  // From 0.06 °C off the first step leaves some 1e-6 °C, the second rounding alone; the third serves the kink of type N
  // at 0 °C.
  for (int step = 0; step < 3; ++step) {
    const auto at = direct(type, temperature_C);
    temperature_C -= (at.value - voltage_mV) / at.slope;
  }
  return temperature_C;
}

double reading_to_temperature(Type type, double voltage_mV, const VoltageRange& range) {
  if (voltage_mV > range.highest_mV) return std::numeric_limits<double>::infinity();
  if (voltage_mV < range.lowest_mV) return -std::numeric_limits<double>::infinity();
  return inverse(type, voltage_mV);  // NaN stays NaN
}

Error out_of_range(Type type, double found, const char* unit, double lowest, double highest) {
  const auto expected = fmt::format("{} to {} {} for type {}", lowest, highest, unit, type_name(type));
  auto what = fmt::format("{} {}", found, unit);
  return {ErrorCode::kBadArgument, fmt::format("found {}, expected {}", what, expected), {}, std::move(what), expected};
}

}  // namespace

std::optional<Type> type_of(std::string_view name) {
  const auto letter_at = name.find_last_not_of(' ');
  if (letter_at == std::string_view::npos) return std::nullopt;
  const char letter = name[letter_at] >= 'a' ? static_cast<char>(name[letter_at] - 32) : name[letter_at];
  auto before = name.substr(0, letter_at);
  while (before.starts_with(' ')) before.remove_prefix(1);
  const bool alone = before.empty();
  const bool after_type = before.size() >= 4 && (before[0] == 't' || before[0] == 'T') &&
                          before.substr(1, 3) == "ype" && before.find_first_not_of(' ', 4) == std::string_view::npos;
  const auto index = kNames.find(letter);
  if (index == std::string_view::npos || !(alone || after_type)) return std::nullopt;
  return static_cast<Type>(index);
}

std::string_view type_name(Type type) { return kNames.substr(static_cast<std::size_t>(type), 1); }

Range range_of(Type type) {
  const auto& known = functions(type);
  return {{known.lowest_C}, {known.direct.back().highest}};
}

Result<double> voltage_mV(Type type, Celsius temperature) {
  const auto& known = functions(type);
  if (!knows_voltage(type, temperature.value)) {
    return out_of_range(type, temperature.value, "°C", known.lowest_direct_C, known.direct.back().highest);
  }
  return direct(type, temperature.value).value;
}

Result<Celsius> temperature(Type type, double voltage_mV) {
  const auto range = voltage_range(type);
  if (!(voltage_mV >= range.lowest_mV && voltage_mV <= range.highest_mV)) {
    const auto printed = [](double value) { return std::round(value * 1000) / 1000; };
    return out_of_range(type, voltage_mV, "mV", printed(range.lowest_mV), printed(range.highest_mV));
  }
  return Celsius{inverse(type, voltage_mV)};
}

Result<Celsius> temperature(Type type, double voltage_mV, Celsius cold_junction) {
  const auto cold_mV = emf::voltage_mV(type, cold_junction);
  if (!cold_mV) return cold_mV.error();
  return temperature(type, voltage_mV + *cold_mV);
}

void to_temperatures(Type type, std::span<double> readings, Celsius cold_junction) {
  const auto range = voltage_range(type);
  const double cold_mV = knows_voltage(type, cold_junction.value) ? direct(type, cold_junction.value).value
                                                                  : std::numeric_limits<double>::quiet_NaN();
  for (auto& reading : readings) reading = reading_to_temperature(type, reading + cold_mV, range);
}

void to_temperatures(Type type, std::span<double> readings, std::span<const double> cold_junction_C) {
  assert(readings.size() == cold_junction_C.size());
  const auto range = voltage_range(type);
  for (std::size_t i = 0; i < readings.size(); ++i) {
    const double cold_mV = knows_voltage(type, cold_junction_C[i]) ? direct(type, cold_junction_C[i]).value
                                                                   : std::numeric_limits<double>::quiet_NaN();
    readings[i] = reading_to_temperature(type, readings[i] + cold_mV, range);
  }
}

}  // namespace ovenwright::emf
