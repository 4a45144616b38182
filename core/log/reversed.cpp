#include "core/log/reversed.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <limits>
#include <optional>

#include "core/run/median.h"
#include "core/units/phrase.h"

namespace ovenwright::log {
namespace {

constexpr double kNaN = std::numeric_limits<double>::quiet_NaN();
constexpr std::size_t kStartSamples = 5, kMoments = 2000;
constexpr double kWarm_C = 30;  // above the reference the two rules differ by more than thermocouples do

std::optional<double> start_of(const std::vector<double>& readings) {
  std::vector<double> first;
  for (const double reading : readings) {
    if (std::isfinite(reading)) first.push_back(reading);
    if (first.size() == kStartSamples) break;
  }
  if (first.empty()) return std::nullopt;
  return run::median(first);
}

/// The middle of the channels of the same clock that are not reversed, at one row; NaN where there are none.
double middle_of(const std::vector<const run::RawChannel*>& others, std::size_t row) {
  std::vector<double> now;
  for (const auto* other : others)
    if (std::isfinite(other->temperature_C[row])) now.push_back(other->temperature_C[row]);
  return now.empty() ? kNaN : run::median(now);
}

/// Mean distance from the others while they are warm; a reading that the rule has no value for lies 100 °C off.
double distance(const std::vector<double>& turned, const std::vector<double>& rows_of_others, std::size_t step,
                double reference_C) {
  constexpr double kNoValue_C = 100;
  double sum = 0, count = 0;
  for (std::size_t i = 0; i < rows_of_others.size(); ++i) {
    const double other = rows_of_others[i], own = turned[i * step];
    if (std::isnan(other) || other < reference_C + kWarm_C) continue;
    sum += std::isfinite(own) ? std::abs(own - other) : kNoValue_C;
    ++count;
  }
  return count > 0 ? sum / count : 0;
}

}  // namespace

void turn_readings(std::span<double> readings_C, emf::Type type, Celsius reference, TurnRule rule) {
  if (rule == TurnRule::kMirrored) {
    for (double& reading : readings_C) reading = 2 * reference.value - reading;
    return;
  }
  const auto at_reference = emf::voltage_mV(type, reference);
  for (double& reading : readings_C) {
    if (!std::isfinite(reading)) continue;
    const auto shown = emf::voltage_mV(type, Celsius{reading});
    reading = at_reference && shown ? 2 * *at_reference - *shown : kNaN;
  }
  emf::to_temperatures(type, readings_C, Celsius{0});
}

void turn_reversed(Reading& reading, const Layout& given) {
  std::vector<const Layout::ChannelColumn*> columns;
  for (const auto& column : reading.layout.channels)
    if (column.use) columns.push_back(&column);
  const auto type = emf::type_of(given.thermocouple_type.value_or("K")).value_or(emf::Type::kK);
  for (std::size_t k = 0; k < std::min(columns.size(), reading.channels.size()); ++k) {
    if (!columns[k]->reversed) continue;
    auto& channel = reading.channels[k];
    if (columns[k]->unit.value_or(reading.layout.unit.value_or("degC")) == "mV") {
      reading.read_as.notes.push_back(say(Phrase::kVoltageTurned, {channel.name}));
      continue;
    }
    const auto reference_C = given.cold_junction_C ? given.cold_junction_C : start_of(channel.temperature_C);
    if (!reference_C) continue;
    auto by_voltage = channel.temperature_C, mirrored = channel.temperature_C;
    turn_readings(by_voltage, type, Celsius{*reference_C}, TurnRule::kByVoltage);
    turn_readings(mirrored, type, Celsius{*reference_C}, TurnRule::kMirrored);
    std::vector<const run::RawChannel*> others;
    for (std::size_t other = 0; other < std::min(columns.size(), reading.channels.size()); ++other)
      if (!columns[other]->reversed && reading.channels[other].time_s == channel.time_s)
        others.push_back(&reading.channels[other]);
    const std::size_t step = std::max<std::size_t>(1, channel.temperature_C.size() / kMoments);
    std::vector<double> middles;
    for (std::size_t row = 0; row < channel.temperature_C.size(); row += step)
      middles.push_back(middle_of(others, row));
    const bool mirror =
        distance(mirrored, middles, step, *reference_C) < distance(by_voltage, middles, step, *reference_C);
    channel.temperature_C = std::move(mirror ? mirrored : by_voltage);
    if (given.cold_junction_C) reading.layout.cold_junction_C = given.cold_junction_C;
    if (given.thermocouple_type) reading.layout.thermocouple_type = given.thermocouple_type;
    const std::string about_C = fmt::format("{:.1f}", *reference_C);
    reading.read_as.assumed.push_back(
        mirror ? Assumption{"reversed", say(Phrase::kMirrored, {channel.name, about_C}), "mirrored", "by voltage"}
               : Assumption{"reversed",
                            say(Phrase::kTurnedByVoltage, {channel.name, std::string{emf::type_name(type)}, about_C}),
                            "by voltage", "mirrored"});
  }
}

}  // namespace ovenwright::log
