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

  /// What a measure's number is: temperatures and their differences convert differently.
  enum class Quantity { kTemperature, kDifference, kRate, kTime, kArea, kCount };
  static Quantity quantity(measure::Measure measure);

  TemperatureUnit temperatureUnit() const { return m_temperature; }
  /// A number in the shown unit, from one in the unit of measures.md.
  double shown(double value, Quantity quantity) const;
  double fromShown(double value, Quantity quantity) const;
  QString unit(Quantity quantity) const;  ///< "°C", "°F/s", "s", ""
  /// Decimals that people expect of a quantity: 1, rates 2, counts 0.
  static int digits(Quantity quantity);

  QString number(double value, int digits) const;  ///< as it is, minus U+2212
  QString signedNumber(double value, int digits) const;
  QString percent(double fraction) const;  ///< "−39 %"
  /// A value of a quantity, converted, with as many decimals as keep a failing one from reading as its limit.
  QString value(double value, Quantity quantity, std::optional<double> lower = {},
                std::optional<double> upper = {}) const;
  QString valueWithUnit(double value, Quantity quantity, std::optional<double> lower = {},
                        std::optional<double> upper = {}) const;
  /// A half width U of a quantity: two significant digits at most, never shown as nothing.
  QString uncertainty(double value, Quantity quantity) const;
  /// A limit as short as it can be written: "2.5", "235", "217".
  QString limit(double value, Quantity quantity) const;
  QString temperature(double temperature_C, int digits = 1) const {
    return number(shown(temperature_C, Quantity::kTemperature), digits);
  }
  QString seconds(double time_s) const { return number(time_s, 1); }
  QString speed(double mm_per_min) const;  ///< with its unit
  QString count(qulonglong n) const { return m_locale.toString(n); }
  const QLocale& locale() const { return m_locale; }

 private:
  TemperatureUnit m_temperature = TemperatureUnit::kCelsius;
  SpeedUnit m_speed = SpeedUnit::kMillimetresPerMinute;
  QLocale m_locale = QLocale::c();
};

}  // namespace ovenwright::desktop
