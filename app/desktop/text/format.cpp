#include "app/desktop/text/format.h"

#include <QCoreApplication>
#include <cmath>

namespace ovenwright::desktop {
namespace {

constexpr double kFahrenheitPerCelsius = 1.8, kFahrenheitAtZero = 32;
constexpr double kMillimetresPerCentimetre = 10;
constexpr double kMillimetresPerInch = 25.4;  // exact: international inch
constexpr int kMostDigits = 9;
constexpr QChar kMinus(0x2212);
constexpr QChar kThinSpace(0x202F);  // no line breaks at it

}  // namespace

Format::Quantity Format::quantity(measure::Measure measure) {
  const auto& description = measure::describe(measure);
  switch (description.unit) {
    case Unit::kSecond:
      return Quantity::kTime;
    case Unit::kCelsiusPerSecond:
      return Quantity::kRate;
    case Unit::kCelsiusSecond:
      return Quantity::kArea;
    case Unit::kCount:
      return Quantity::kCount;
    case Unit::kCelsius:
      break;
  }
  return description.board || measure == measure::Measure::kWaveStep ? Quantity::kDifference : Quantity::kTemperature;
}

double Format::shown(double value, Quantity quantity) const {
  if (m_temperature == TemperatureUnit::kCelsius) return value;
  switch (quantity) {
    case Quantity::kTemperature:
      return value * kFahrenheitPerCelsius + kFahrenheitAtZero;
    case Quantity::kDifference:
    case Quantity::kRate:
    case Quantity::kArea:
      return value * kFahrenheitPerCelsius;
    case Quantity::kTime:
    case Quantity::kCount:
      break;
  }
  return value;
}

double Format::fromShown(double value, Quantity quantity) const {
  const double offset = shown(0, quantity);
  return (value - offset) / (shown(1, quantity) - offset);
}

QString Format::unit(Quantity quantity) const {
  const bool fahrenheit = m_temperature == TemperatureUnit::kFahrenheit;
  switch (quantity) {
    case Quantity::kTemperature:
    case Quantity::kDifference:
      return fahrenheit ? QStringLiteral("°F") : QStringLiteral("°C");
    case Quantity::kRate:
      return fahrenheit ? QStringLiteral("°F/s") : QStringLiteral("°C/s");
    case Quantity::kArea:
      return fahrenheit ? QStringLiteral("°F·s") : QStringLiteral("°C·s");
    case Quantity::kTime:
      return QStringLiteral("s");
    case Quantity::kCount:
      break;
  }
  return {};
}

QString Format::number(double value, int digits) const {
  QLocale locale = m_locale;
  locale.setNumberOptions(QLocale::OmitGroupSeparator);
  QString text = locale.toString(std::abs(value), 'f', digits);
  // What rounds to nothing has no sign.
  const bool nothing = std::abs(value) < 0.5 * std::pow(10, -digits);
  return value < 0 && !nothing ? kMinus + text : text;
}

QString Format::signedNumber(double value, int digits) const {
  const QString text = number(value, digits);
  return text.startsWith(kMinus) ? text : u'+' + text;
}

QString Format::percent(double fraction) const {
  // A margin outside never reads as 0 %, one inside never as more than it is by the rounding of a limit.
  const double percent = 100 * fraction;
  const int digits = fraction != 0 && std::abs(percent) < 0.5 ? 1 : 0;
  return number(percent, digits) + kThinSpace + u'%';
}

QString Format::distance(double value, Quantity quantity, int digits) const {
  const double far = shown(value, quantity);
  while (far != 0 && std::abs(far) < 0.5 * std::pow(10, -digits) && digits < kMostDigits) ++digits;
  return number(far, digits);
}

QString Format::limit(double value, Quantity quantity) const {
  const double in_unit = shown(value, quantity);
  for (int digits = 0; digits < 4; ++digits) {
    const double scale = std::pow(10, digits);
    if (std::abs(in_unit * scale - std::round(in_unit * scale)) < 1e-6 * scale) return number(in_unit, digits);
  }
  return number(in_unit, 4);
}

double Format::shownSpeed(double mm_per_min) const {
  switch (m_speed) {
    case SpeedUnit::kCentimetresPerMinute:
      return mm_per_min / kMillimetresPerCentimetre;
    case SpeedUnit::kInchesPerMinute:
      return mm_per_min / kMillimetresPerInch;
    case SpeedUnit::kMillimetresPerMinute:
      break;
  }
  return mm_per_min;
}

double Format::fromShownSpeed(double speed) const { return speed / shownSpeed(1); }

QString Format::speedUnitText() const {
  switch (m_speed) {
    case SpeedUnit::kCentimetresPerMinute:
      return QStringLiteral("cm/min");
    case SpeedUnit::kInchesPerMinute:
      return QStringLiteral("in/min");
    case SpeedUnit::kMillimetresPerMinute:
      break;
  }
  return QStringLiteral("mm/min");
}

QString Format::speed(double mm_per_min) const {
  const int digits = m_speed == SpeedUnit::kMillimetresPerMinute ? 0 : 1;
  return number(shownSpeed(mm_per_min), digits) + u' ' + speedUnitText();
}

QString Format::valueWithUnit(double value, Quantity quantity) const {
  const int digits = quantity == Quantity::kRate ? 2 : quantity == Quantity::kCount ? 0 : 1;
  const QString text = number(shown(value, quantity), digits), unit = this->unit(quantity);
  return unit.isEmpty() ? text : text + u' ' + unit;
}

QString Format::temperatureWithUnit(double temperature_C) const {
  return limit(temperature_C, Quantity::kTemperature) + u' ' + unit(Quantity::kTemperature);
}

}  // namespace ovenwright::desktop
