#include "core/judge/arguments.h"

#include <cmath>

#include "core/judge/decide.h"

namespace ovenwright::judge {
namespace {

using measure::Level;
using measure::Measure;
using Role = Argument::Role;

/// A spread or a step is a difference of temperatures, whatever its unit's zero.
Role role_of(Measure measure) {
  switch (measure) {
    case Measure::kSpreadOfPeaks:
    case Measure::kSpreadWhenHottestReaches:
    case Measure::kLargestSpread:
    case Measure::kWaveStep:
      return Role::kDifference;
    default:
      return Role::kPlain;
  }
}

int digits_of(const Outcome& outcome) {
  return digits_needed(*outcome.value.value, usual_digits(outcome.measure.measure), outcome.lower, outcome.upper);
}

/// At least `digits`, and as many more as keep a number other than 0 from reading as 0.
int digits_to_see(double number, int digits) {
  constexpr int most = 9;
  while (digits < most && number != 0 && std::abs(number) < 0.5 * std::pow(10.0, -digits)) ++digits;
  return digits;
}

void add_level(std::vector<Argument>& arguments, const char* name, const std::optional<Level>& level) {
  if (const auto* number = level ? std::get_if<double>(&*level) : nullptr)
    arguments.push_back(stated(name, *number, Unit::kCelsius));
}

void add_parameters(std::vector<Argument>& arguments, const measure::Definition& definition) {
  const auto& p = definition.parameters;
  if (p.level) arguments.push_back(stated("level", *p.level, Unit::kCelsius));
  add_level(arguments, "T1", p.T1);
  add_level(arguments, "T2", p.T2);
  if (p.offset) arguments.push_back(stated("offset", *p.offset, Unit::kCelsius, Role::kDifference));
  if (const auto* reference = p.reference ? std::get_if<double>(&*p.reference) : nullptr)
    arguments.push_back(stated("level", *reference - p.offset.value_or(0), Unit::kCelsius));
  if (p.time) arguments.push_back({.name = "time", .value = *p.time, .digits = 1, .role = Role::kMoment});
  if (p.position_mm) arguments.push_back({.name = "position", .value = *p.position_mm});
  if (p.zone) arguments.push_back({.name = "zone", .value = *p.zone});
}

}  // namespace

std::string phrase_key(const measure::Definition& definition) {
  const auto& p = definition.parameters;
  const auto at_peak = [](const std::optional<Level>& level) {
    return level && std::holds_alternative<measure::OwnPeak>(*level);
  };
  switch (definition.measure) {
    case Measure::kPeak:
      return "peak";
    case Measure::kPeakTime:
      return "peak_time";
    case Measure::kTimeAbove:
      return "time_above";
    case Measure::kExcursionsAbove:
      return "excursions";
    case Measure::kAreaAbove:
      return "area";
    case Measure::kTimeBetweenOnRise:
      return "soak";
    case Measure::kTimeNearPeak:
      return p.reference && !at_peak(p.reference) ? "near_reference" : "near_peak";
    case Measure::kSteepestRise:
      return "steepest_rise";
    case Measure::kMeanRise:
      return at_peak(p.T2) ? "mean_rise_to_peak" : "mean_rise";
    case Measure::kSteepestFall:
      return "steepest_fall";
    case Measure::kMeanFall:
      return at_peak(p.T1) ? "mean_fall_from_peak" : "mean_fall";
    case Measure::kTemperatureAt:
      return p.time ? "temperature_at_time" : p.zone ? "temperature_at_zone" : "temperature_at_position";
    case Measure::kExitTemperature:
      return "exit_temperature";
    case Measure::kSpreadOfPeaks:
      return "spread_of_peaks";
    case Measure::kSpreadWhenHottestReaches:
      return "spread_when_hottest";
    case Measure::kLargestSpread:
      return "largest_spread";
    case Measure::kLag:
      return "lag";
    case Measure::kWavePreheatTemperature:
      return "wave_preheat";
    case Measure::kWaveStep:
      return "wave_step";
    case Measure::kWaveContactTime:
      return "wave_contact";
    case Measure::kWaveLongestContact:
      return "wave_longest_contact";
  }
  return {};
}

Direction nearer_limit(const Outcome& outcome) {
  if (!outcome.upper) return Direction::kLow;
  if (!outcome.lower || !outcome.value.value) return Direction::kHigh;
  const auto target = effective_target(outcome.lower, outcome.upper, outcome.target, outcome.measure.measure);
  const double middle = target.value_or((*outcome.lower + *outcome.upper) / 2);
  return *outcome.value.value < middle ? Direction::kLow : Direction::kHigh;
}

Argument stated(const std::string& name, double value, Unit unit, Role role) {
  int digits = 0;
  while (digits < 6 && std::abs(value - std::round(value * std::pow(10.0, digits)) / std::pow(10.0, digits)) > 1e-9)
    ++digits;
  return {.name = name, .value = value, .unit = unit, .digits = digits, .role = role};
}

Argument value(const std::string& name, const Outcome& outcome) {
  return {.name = name,
          .value = *outcome.value.value,
          .unit = outcome.value.unit,
          .digits = digits_of(outcome),
          .role = role_of(outcome.measure.measure)};
}

Argument distance(const std::string& name, const Outcome& outcome, Direction direction) {
  const auto& limit = direction == Direction::kLow ? outcome.lower : outcome.upper;
  const double far = std::abs(*outcome.value.value - *limit);
  return {.name = name,
          .value = far,
          .unit = outcome.value.unit,
          .digits = digits_to_see(far, digits_of(outcome)),
          .role = Role::kDifference};
}

std::vector<Argument> arguments_of(const Outcome& outcome, Direction direction) {
  std::vector<Argument> arguments{{.name = "placement", .value = outcome.placement},
                                  {.name = "requirement", .value = outcome.requirement_name},
                                  {.name = "reason", .value = outcome.value.reason}};
  add_parameters(arguments, outcome.measure);
  if (!outcome.value.value) return arguments;
  arguments.push_back(value("value", outcome));
  if (const auto U = outcome.value.expanded_uncertainty)
    arguments.push_back({.name = "uncertainty",
                         .value = *U,
                         .unit = outcome.value.unit,
                         .digits = digits_to_see(*U, digits_of(outcome)),
                         .role = Role::kDifference});
  if (direction == Direction::kLow ? outcome.lower : outcome.upper)
    arguments.push_back(distance("distance", outcome, direction));
  return arguments;
}

}  // namespace ovenwright::judge
