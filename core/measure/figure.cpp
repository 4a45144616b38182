#include "core/measure/figure.h"

#include <fmt/format.h>

#include "core/measure/kinds.h"

namespace ovenwright::measure {
namespace {

std::string with_digits(double value, int digits) {
  std::string text = fmt::format("{:.{}f}", std::abs(value), digits);
  const bool zero = text.find_first_not_of("0.") == std::string::npos;
  return (value < 0 && !zero ? "\u2212" : "") + text;
}

}  // namespace

std::string temperature_text(double temperature_C, double other_C) {
  constexpr int kFewest = 1, kMost = 6;
  for (int digits = kFewest;; ++digits)
    if (digits == kMost || with_digits(temperature_C, digits) != with_digits(other_C, digits))
      return with_digits(temperature_C, digits) + " °C";
}

std::string temperature_text(double temperature_C) {
  return fmt::format("{}{} °C", temperature_C < 0 ? "\u2212" : "", std::abs(temperature_C));
}

std::string seconds_text(double time_s) { return with_digits(time_s, 1) + " s"; }

Figure valued(double value, std::optional<double> from_s, std::optional<double> to_s) {
  Figure figure;
  figure.value = value;
  figure.from_s = from_s;
  figure.to_s = to_s;
  return figure;
}

Figure not_reached(Phrase reason, std::initializer_list<std::string> arguments) {
  Figure figure;
  figure.no_value = NoValue::kNotReached;
  figure.reason = say(reason, arguments);
  return figure;
}

Figure undetermined(Phrase reason, std::initializer_list<std::string> arguments) {
  Figure figure;
  figure.no_value = NoValue::kUndetermined;
  figure.reason = say(reason, arguments);
  return figure;
}

Figure measured(const Curve& curve, const Definition& definition, const Setting& setting) {
  const auto& p = definition.parameters;
  switch (definition.measure) {
    case Measure::kPeak:
      return peak_figure(curve);
    case Measure::kPeakTime:
      return peak_time_figure(curve, p, setting.moves);
    case Measure::kTimeAbove:
      return time_above_figure(curve, p, setting.moves);
    case Measure::kExcursionsAbove:
      return excursions_figure(curve, p);
    case Measure::kAreaAbove:
      return area_figure(curve, p);
    case Measure::kTimeBetweenOnRise:
      return time_between_figure(curve, p, setting.moves);
    case Measure::kTimeNearPeak:
      return time_near_peak_figure(curve, p, setting.moves);
    case Measure::kSteepestRise:
      return steepest_figure(curve, p, false);
    case Measure::kMeanRise:
      return mean_rise_figure(curve, p, setting.moves);
    case Measure::kSteepestFall:
      return steepest_figure(curve, p, true);
    case Measure::kMeanFall:
      return mean_fall_figure(curve, p, setting.moves);
    case Measure::kTemperatureAt:
      return temperature_at_figure(curve, p, setting);
    case Measure::kExitTemperature:
      return exit_temperature_figure(curve, setting);
    case Measure::kWavePreheatTemperature:
    case Measure::kWaveStep:
    case Measure::kWaveContactTime:
    case Measure::kWaveLongestContact:
      return wave_figure(curve, definition);
    case Measure::kSpreadOfPeaks:
    case Measure::kSpreadWhenHottestReaches:
    case Measure::kLargestSpread:
    case Measure::kLag:
      return measured_on_board({&curve, 1}, definition);
  }
  return undetermined(Phrase::kNotShown);
}

}  // namespace ovenwright::measure
