#include "app/desktop/text/format.h"

#include <QCoreApplication>
#include <cmath>

#include "core/judge/judge.h"

namespace ovenwright::desktop {
namespace {

constexpr double kFahrenheitPerCelsius = 1.8, kFahrenheitAtZero = 32;
constexpr double kMillimetresPerInch = 25.4;  // exact: international inch
constexpr QChar kMinus(0x2212);
constexpr QChar kThinSpace(0x2009);

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

int Format::digits(Quantity quantity) {
  switch (quantity) {
    case Quantity::kRate:
      return 2;
    case Quantity::kCount:
      return 0;
    default:
      return 1;
  }
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

QString Format::value(double value, Quantity quantity, std::optional<double> lower, std::optional<double> upper) const {
  if (lower) lower = shown(*lower, quantity);
  if (upper) upper = shown(*upper, quantity);
  QString text = QString::fromStdString(judge::number_text(shown(value, quantity), digits(quantity), lower, upper));
  return text.replace(u'.', m_locale.decimalPoint());
}

QString Format::valueWithUnit(double value, Quantity quantity, std::optional<double> lower,
                              std::optional<double> upper) const {
  const QString unit = this->unit(quantity);
  const QString text = this->value(value, quantity, lower, upper);
  return unit.isEmpty() ? text : text + u' ' + unit;
}

QString Format::uncertainty(double value, Quantity quantity) const {
  const double half_width = std::abs(shown(value, quantity) - shown(0, quantity));
  int digits = Format::digits(quantity);
  while (half_width > 0 && half_width < 0.95 * std::pow(10, -digits) && digits < 4) ++digits;
  return number(half_width, digits);
}

QString Format::limit(double value, Quantity quantity) const {
  const double in_unit = shown(value, quantity);
  for (int digits = 0; digits < 4; ++digits) {
    const double scale = std::pow(10, digits);
    if (std::abs(in_unit * scale - std::round(in_unit * scale)) < 1e-6 * scale) return number(in_unit, digits);
  }
  return number(in_unit, 4);
}

QString Format::speed(double mm_per_min) const {
  switch (m_speed) {
    case SpeedUnit::kCentimetresPerMinute:
      return number(mm_per_min / 10, 1) + QStringLiteral(" cm/min");
    case SpeedUnit::kInchesPerMinute:
      return number(mm_per_min / kMillimetresPerInch, 1) + QStringLiteral(" in/min");
    case SpeedUnit::kMillimetresPerMinute:
      break;
  }
  return number(mm_per_min, 0) + QStringLiteral(" mm/min");
}

}  // namespace ovenwright::desktop
