#pragma once
#include <QLocale>
#include <QString>
#include <optional>

#include "app/desktop/text/units.h"
#include "core/judge/judgement.h"

namespace ovenwright::desktop {

/// Numbers as people read them: in the locale and in the units that were chosen once. Views only; files and the
/// clipboard's tables stay in °C and the C locale.
class Format {
 public:
  Format() = default;
  Format(TemperatureUnit temperature, SpeedUnit speed, const QLocale& locale)
      : m_temperature(temperature), m_speed(speed), m_locale(locale) {}

  /// In °C and mm/min.
  static Format inDefaultLocale() {
    return Format(TemperatureUnit::kCelsius, SpeedUnit::kMillimetresPerMinute, QLocale());
  }

  /// What a measure's number is: temperatures and their differences convert differently.
  enum class Quantity { kTemperature, kDifference, kRate, kTime, kArea, kCount };
  static Quantity quantity(measure::Measure measure);
  /// Of the distance between two values of a quantity: temperatures differ without their scale's zero.
  static Quantity difference(Quantity quantity) {
    return quantity == Quantity::kTemperature ? Quantity::kDifference : quantity;
  }

  TemperatureUnit temperatureUnit() const { return m_temperature; }
  bool operator==(const Format& other) const = default;
  /// A number in the shown unit, from one in the unit of measures.md.
  double shown(double value, Quantity quantity) const;
  double fromShown(double value, Quantity quantity) const;
  QString unit(Quantity quantity) const;  ///< "°C", "°F/s", "s", ""

  QString number(double value, int digits) const;  ///< as it is, minus U+2212
  QString signedNumber(double value, int digits) const;
  QString percent(double fraction) const;  ///< "−39 %"
  /// How far a value is from a limit, or a half width U: `digits` decimals, more where it would read as 0.
  /// @param quantity  of differences, see difference()
  QString distance(double value, Quantity quantity, int digits) const;
  /// A limit as short as it can be written: "2.5", "235", "217".
  QString limit(double value, Quantity quantity) const;
  QString temperature(double temperature_C, int digits = 1) const {
    return number(shown(temperature_C, Quantity::kTemperature), digits);
  }
  /// With the decimals that are usual for it: 1, rates 2, counts 0. Results are worded by widgets::Wording.
  QString valueWithUnit(double value, Quantity quantity) const;
  QString temperatureWithUnit(double temperature_C) const;  ///< as short as a limit: "217 °C"
  QString seconds(double time_s) const { return number(time_s, 1); }
  SpeedUnit speedUnit() const { return m_speed; }
  double shownSpeed(double mm_per_min) const;
  double fromShownSpeed(double speed) const;
  QString speedUnitText() const;           ///< "mm/min"
  QString speed(double mm_per_min) const;  ///< with its unit
  QString count(qulonglong n) const { return m_locale.toString(n); }
  const QLocale& locale() const { return m_locale; }

 private:
  TemperatureUnit m_temperature = TemperatureUnit::kCelsius;
  SpeedUnit m_speed = SpeedUnit::kMillimetresPerMinute;
  QLocale m_locale = QLocale::c();
};

}  // namespace ovenwright::desktop
