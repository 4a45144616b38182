#pragma once
#include <chrono>
#include <compare>

namespace ovenwright {

/// A difference between two temperatures, °C.
struct CelsiusDelta {
  double value = 0;
  friend constexpr auto operator<=>(const CelsiusDelta&, const CelsiusDelta&) = default;
};

/// A temperature, °C. Two temperatures cannot be added; their difference is a CelsiusDelta.
struct Celsius {
  double value = 0;
  friend constexpr auto operator<=>(const Celsius&, const Celsius&) = default;
  friend constexpr CelsiusDelta operator-(Celsius a, Celsius b) { return {a.value - b.value}; }
  friend constexpr Celsius operator+(Celsius a, CelsiusDelta d) { return {a.value + d.value}; }
  friend constexpr Celsius operator-(Celsius a, CelsiusDelta d) { return {a.value - d.value}; }
};

using Seconds = std::chrono::duration<double>;

/// The unit of a measured value, spelt in files as in unit_name().
enum class Unit { kCelsius, kSecond, kCelsiusPerSecond, kCelsiusSecond, kCount };

/// "degC", "s", "degC/s", "degC*s", "count": the spelling in JSON and files.
constexpr const char* unit_name(Unit unit) {
  switch (unit) {
    case Unit::kCelsius: return "degC";
    case Unit::kSecond: return "s";
    case Unit::kCelsiusPerSecond: return "degC/s";
    case Unit::kCelsiusSecond: return "degC*s";
    case Unit::kCount: return "count";
  }
  return "";
}

/// "°C", "s", "°C/s", "°C·s", "": the spelling for people, UTF-8.
constexpr const char* unit_symbol(Unit unit) {
  switch (unit) {
    case Unit::kCelsius: return "°C";
    case Unit::kSecond: return "s";
    case Unit::kCelsiusPerSecond: return "°C/s";
    case Unit::kCelsiusSecond: return "°C·s";
    case Unit::kCount: return "";
  }
  return "";
}

}  // namespace ovenwright
