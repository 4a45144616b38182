#include "core/log/temperature_plan.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <cmath>
#include <limits>
#include <map>

#include "core/emf/emf.h"
#include "core/log/column_values.h"
#include "core/log/text.h"
#include "core/log/words.h"
#include "core/units/phrase.h"

namespace ovenwright::log {
namespace {

constexpr double kNaN = std::numeric_limits<double>::quiet_NaN();
constexpr double kZeroCelsius_K = 273.15;

double fahrenheit_to_celsius(double f) { return (f - 32) / 1.8; }

double celsius(double value, const std::string& unit) {
  if (unit == "degF") return fahrenheit_to_celsius(value);
  if (unit == "K") return value - kZeroCelsius_K;
  return value;
}

/// A run through an oven or a wave: it starts somewhere near the room's temperature and gets hot, but no hotter than
/// boards bear.
bool plausible_run(double start_C, double peak_C) {
  constexpr double kColdest = -15, kHottestStart = 200, kCoolestPeak = 12, kHottest = 420;
  return start_C >= kColdest && start_C <= kHottestStart && peak_C >= kCoolestPeak && peak_C <= kHottest;
}

struct Extent {
  double start = kNaN, peak = kNaN;
  bool any() const { return std::isfinite(peak); }
};

Extent extent_of(const std::vector<const ChannelEvidence*>& channels) {
  std::vector<double> starts, peaks;
  for (const auto* channel : channels) {
    const auto values = without_sentinels(*channel->values);
    const double peak = robust_peak(values), start = robust_start(values);
    if (!std::isfinite(peak)) continue;
    peaks.push_back(peak);
    starts.push_back(start);
  }
  if (peaks.empty()) return {};
  const auto middle = [](std::vector<double>& v) {
    std::nth_element(v.begin(), v.begin() + static_cast<std::ptrdiff_t>(v.size() / 2), v.end());
    return v[v.size() / 2];
  };
  return {middle(starts), middle(peaks)};
}

/// The unit that makes a run of these numbers.
std::string likely_unit(Extent extent, bool whole_numbers) {
  constexpr double kMostMillivolts = 26, kMostStart_mV = 5;
  if (!extent.any()) return "degC";
  if (!whole_numbers && extent.peak < kMostMillivolts && extent.start < kMostStart_mV && extent.peak > 0.5) return "mV";
  if (extent.start > 265 && extent.start < 335 && extent.peak > extent.start + 20 && extent.peak < 700) return "K";
  if (extent.start > 45 && extent.start < 135 && extent.peak > 320) return "degF";
  return "degC";
}

/// Words for where a thermocouple sits or what its readings are, as people put them in brackets behind its name.
bool describes_a_place(std::string_view word) {
  static constexpr std::array<std::string_view, 62> kWords{
      "air",    "arriba", "abajo",  "back",   "ball",     "bas",     "board",    "body",    "borde", "bord",  "bottom",
      "centre", "center", "centro", "coin",   "cold",     "corner",  "derecha",  "droite",  "ecke",  "edge",  "far",
      "front",  "gauche", "haut",   "heel",   "hinten",   "hot",     "inner",    "joint",   "land",  "large", "lead",
      "left",   "links",  "middle", "milieu", "mitte",    "near",    "oben",     "outer",   "pad",   "pin",   "rand",
      "raw",    "rear",   "rechts", "right",  "side",     "small",   "spare",    "surface", "tail",  "toe",   "top",
      "unten",  "used",   "vorne",  "loose",  "filtered", "esquina", "izquierda"};
  return std::find(kWords.begin(), kWords.end(), word) != kWords.end();
}

class Planner {
 public:
  Planner(const std::vector<ChannelEvidence>& channels, const Facts& facts, const Layout& layout,
          bool time_has_bracket_unit, int header_line)
      : channels_(channels),
        facts_(facts),
        layout_(layout),
        time_has_bracket_unit_(time_has_bracket_unit),
        header_line_(header_line) {
    plan_.channels.resize(channels.size());
  }

  Result<TemperaturePlan> run(int cold_junction_column, const std::optional<UnitText>& cold_junction_unit) {
    if (auto error = unknown_unit()) return *error;
    units();
    scales();
    summarise();
    doubt_stated_unit();
    voltages(cold_junction_column, cold_junction_unit);
    return std::move(plan_);
  }

 private:
  Error unit_error(const std::string& found, int line, int column) const {
    return {ErrorCode::kParse,
            fmt::format("found the unit {}, expected °C, °F, K or mV", quoted_for_message(found)),
            {"", line, column},
            found,
            "°C, °F, K or mV"};
  }

  std::optional<Error> unknown_unit() const {
    if (layout_.unit) return std::nullopt;
    for (const ChannelEvidence& channel : channels_) {
      if (channel.unit && channel.unit->quantity == Quantity::kUnknownTemperature)
        return unit_error(channel.unit->name, header_line_, channel.column + 1);
      if (!channel.unit && !channel.foreign_unit.empty())
        return unit_error(channel.foreign_unit, channel.foreign_unit_line, channel.column + 1);
    }
    if (facts_.unit && facts_.unit->quantity == Quantity::kUnknownTemperature)
      return unit_error(facts_.unit->name, 0, 0);
    const bool none_stated =
        std::none_of(channels_.begin(), channels_.end(), [](const ChannelEvidence& c) { return c.unit.has_value(); });
    if (!none_stated) return std::nullopt;
    if (bracket_is_unit()) return unit_error(channels_.front().bracket, header_line_, channels_.front().column + 1);
    if (facts_.unknown_unit && !facts_.unit)
      return unit_error(facts_.unknown_unit_text, static_cast<int>(facts_.unknown_unit->line), stated_in_column());
    return std::nullopt;
  }

  /// The cell of the line of metadata in which the unknown unit stands, from 1; 0: within its text.
  int stated_in_column() const {
    const auto& cells = facts_.unknown_unit->cells;
    const auto cell = std::find(cells.begin(), cells.end(), facts_.unknown_unit_text);
    return cell == cells.end() ? 0 : static_cast<int>(cell - cells.begin()) + 1;
  }

  /// What stands in brackets behind every name is a unit that is not known where it tells the channels from each other
  /// no more than a unit does: one word, the same for all, where the time has its unit. Words that say where a
  /// thermocouple sits or what it is, capitals ("BGA", "PV") and other scripts describe. A channel on its own shares
  /// its word with no other: there only a word in small letters counts, beside a time with its unit.
  bool bracket_is_unit() const {
    const std::string& bracket = channels_.front().bracket;
    const auto same = [&](const ChannelEvidence& c) { return c.bracket == bracket; };
    if (bracket.empty() || bracket.size() > 16 || !std::all_of(channels_.begin(), channels_.end(), same)) return false;
    if (channels_.size() == 1 && !time_has_bracket_unit_) return false;
    const auto small = [](char c) { return c >= 'a' && c <= 'z'; };
    const auto letter = [&](char c) { return small(c) || (c >= 'A' && c <= 'Z') || c == '/'; };
    if (!std::all_of(bracket.begin(), bracket.end(), letter) || !std::any_of(bracket.begin(), bracket.end(), small))
      return false;
    if (channels_.size() == 1 && !std::all_of(bracket.begin(), bracket.end(), small)) return false;
    return words_in(bracket) == kNoWord && !describes_a_place(lower(bracket));
  }

  /// "TC1 (K)" is a thermocouple of type K where its numbers are no kelvins.
  bool is_type_letter(const ChannelEvidence& channel, const UnitText& unit) const {
    if (unit.name != "K" || !unit.weak) return false;
    const double start = robust_start(*channel.values), peak = robust_peak(*channel.values);
    return std::isfinite(peak) && (start < 220 || peak < 280);
  }

  /// "R12 (F)" beside "C4 (B)": a letter that others lack is no unit where it makes no run and °C does.
  bool is_only_a_letter(const ChannelEvidence& channel) const {
    if (!channel.unit->weak || channel.unit->name != "degF") return false;
    const bool others = std::any_of(channels_.begin(), channels_.end(), [](const auto& c) { return !c.unit; });
    const double start = robust_start(*channel.values), peak = robust_peak(*channel.values);
    return others && start > 5 && start < 60 && peak > 140 && peak < 330 && celsius(peak, "degF") < 150 &&
           celsius(start, "degF") < 5;
  }

  void units() {
    std::vector<const ChannelEvidence*> silent;
    std::vector<std::size_t> places;
    std::map<std::string, std::size_t> stated;
    for (std::size_t i = 0; i < channels_.size(); ++i) {
      const ChannelEvidence& channel = channels_[i];
      ChannelUnit& own = plan_.channels[i];
      own.thermocouple = channel.thermocouple != 0 ? channel.thermocouple : '\0';
      own.reversed = channel.reversed;
      if (layout_.unit) {
        own.unit = channel.forced_unit.value_or(*layout_.unit);
        if (channel.unit && channel.unit->quantity == Quantity::kVoltage && own.unit == "mV")
          own.millivolts = channel.unit->factor;
        continue;
      }
      if (channel.unit && is_type_letter(channel, *channel.unit)) {
        own.thermocouple = 'K';
      } else if (channel.unit && is_only_a_letter(channel)) {
        // a mark in brackets
      } else if (channel.unit) {
        own.unit = channel.unit->name;
        own.millivolts = channel.unit->quantity == Quantity::kVoltage ? channel.unit->factor : 1;
        ++stated[own.unit];
        continue;
      }
      silent.push_back(&channel);
      places.push_back(i);
    }
    if (silent.empty()) return;
    const auto give = [&](const std::string& unit, double millivolts) {
      for (const std::size_t i : places) {
        plan_.channels[i].unit = unit;
        plan_.channels[i].millivolts = millivolts;
      }
    };
    if (facts_.unit && !is_type_letter(*silent.front(), *facts_.unit)) {
      give(facts_.unit->name, facts_.unit->quantity == Quantity::kVoltage ? facts_.unit->factor : 1);
      return;
    }
    if (!stated.empty()) {
      const auto most = std::max_element(stated.begin(), stated.end(),
                                         [](const auto& a, const auto& b) { return a.second < b.second; });
      give(most->first, 1);
      plan_.notes.push_back(silent.size() == 1 ? say(Phrase::kOneWithoutUnit, {silent.front()->name})
                                               : say(Phrase::kSomeWithoutUnit, {std::to_string(silent.size())}));
      return;
    }
    by_values(silent, give);
  }

  template <class Give>
  void by_values(const std::vector<const ChannelEvidence*>& silent, const Give& give) {
    Extent extent = extent_of(silent);
    const bool whole =
        std::all_of(silent.begin(), silent.end(), [](const ChannelEvidence* c) { return c->whole_numbers; });
    const double stated_scale = stated_scale_of(*silent.front()).value_or(1);
    // 2451 stands for 245.1: no thermocouple on a board gets above 1000 in any unit.
    double factor = 1;
    if (stated_scale != 1) factor = stated_scale > 1 ? 1 / stated_scale : stated_scale;
    if (whole && extent.any() && factor == 1 && extent.peak > 1000 && extent.start > 100) factor = 0.1;
    if (extent.any() && extent.peak > 800) {
      extent.start *= factor;
      extent.peak *= factor;
    }
    const std::string unit = likely_unit(extent, whole && factor == 1);
    give(unit, 1);
    if (!extent.any()) {
      plan_.notes.push_back(say(Phrase::kNoReading));
      return;
    }
    const std::string other = unit == "degC" ? "degF" : "degC";
    const auto shown = [](double value) { return fmt::format("{:.0f}", value); };
    std::string text;
    if (unit == "degC") {
      text = say(Phrase::kUnitCelsius, {shown(celsius(extent.peak, "degF"))});
    } else if (unit == "mV") {
      text = say(Phrase::kUnitMillivolts, {fmt::format("{:.1f}", extent.peak)});
    } else {
      text = say(unit == "K" ? Phrase::kUnitKelvin : Phrase::kUnitFahrenheit,
                 {shown(celsius(extent.peak, unit)), shown(extent.peak)});
    }
    plan_.assumed.push_back({"unit", text, unit, other});
  }

  std::optional<double> stated_scale_of(const ChannelEvidence& channel) const {
    if (channel.factor != 1) return channel.factor;
    if (channel.unit && channel.unit->scale != 1) return channel.unit->scale;
    if (facts_.unit && facts_.unit->scale != 1) return facts_.unit->scale;
    if (facts_.scale && *facts_.scale != 1) return facts_.scale;
    return std::nullopt;
  }

  /// A stated factor, in the direction that gives a run: "0.1 °C", "°C x10" and "scale 10" all mean that 2451 is
  /// 245.1 °C. Where the numbers are a run as they stand it is the resolution that was stated.
  void scales() {
    const Extent extent = extent_of(all());
    for (std::size_t i = 0; i < channels_.size(); ++i) {
      const ChannelEvidence& channel = channels_[i];
      ChannelUnit& own = plan_.channels[i];
      if (layout_.scale) {
        own.scale = *layout_.scale;
        continue;
      }
      if (own.unit == "mV") continue;
      const auto values = without_sentinels(*channel.values);
      const double start = robust_start(values), peak = robust_peak(values);
      if (!std::isfinite(peak)) continue;
      const auto stated = stated_scale_of(channel);
      if (!stated) {
        const double all_peak = extent.peak, all_start = extent.start;
        if (channel.whole_numbers && all_peak > 1000 && all_start > 100 &&
            plausible_run(celsius(all_start / 10, own.unit), celsius(all_peak / 10, own.unit))) {
          own.scale = 0.1;
          assume_once({"scale", say(Phrase::kTenths, {fmt::format("{:.0f}", all_peak)}), "0.1", "1"});
        }
        continue;
      }
      const double down = *stated > 1 ? 1 / *stated : *stated;
      const bool as_it_stands = plausible_run(celsius(start, own.unit), celsius(peak, own.unit)) && peak < 450 &&
                                celsius(peak * down, own.unit) < 45;
      if (!as_it_stands) {
        own.scale = down;
      } else {
        assume_once(
            {"scale", say(Phrase::kResolution, {fmt::format("{:g}", *stated)}), "1", fmt::format("{:g}", down)});
      }
    }
  }

  std::vector<const ChannelEvidence*> all() const {
    std::vector<const ChannelEvidence*> list;
    for (const auto& channel : channels_) list.push_back(&channel);
    return list;
  }

  void assume_once(Assumption assumption) {
    const bool there = std::any_of(plan_.assumed.begin(), plan_.assumed.end(), [&](const Assumption& a) {
      return a.about == assumption.about && a.chosen == assumption.chosen;
    });
    if (!there) plan_.assumed.push_back(std::move(assumption));
  }

  void summarise() {
    std::map<std::string, std::size_t> units;
    std::map<double, std::size_t> scales;
    for (const ChannelUnit& channel : plan_.channels) {
      ++units[channel.unit];
      ++scales[channel.scale];
    }
    const auto by_count = [](const auto& a, const auto& b) { return a.second < b.second; };
    plan_.unit = std::max_element(units.begin(), units.end(), by_count)->first;
    plan_.scale = std::max_element(scales.begin(), scales.end(), by_count)->first;
    if (units.size() < 2) return;
    std::string list;
    for (std::size_t i = 0; i < channels_.size(); ++i)
      list += fmt::format("{}{} ({})", i == 0 ? "" : ", ", channels_[i].name, plan_.channels[i].unit);
    plan_.notes.push_back(say(Phrase::kUnitsDiffer, {list}));
  }

  /// A stated unit in which the numbers are no run, while in the other one they are: it is kept and the other offered.
  void doubt_stated_unit() {
    const bool open = std::any_of(plan_.assumed.begin(), plan_.assumed.end(),
                                  [](const Assumption& assumption) { return assumption.about == "unit"; });
    const bool alike = std::all_of(plan_.channels.begin(), plan_.channels.end(),
                                   [&](const ChannelUnit& channel) { return channel.unit == plan_.unit; });
    if (layout_.unit || open || !alike) return;
    const std::size_t before = plan_.assumed.size();
    Extent extent = extent_of(all());
    if (!extent.any()) return;
    extent.start *= plan_.scale;
    extent.peak *= plan_.scale;
    double top = -std::numeric_limits<double>::infinity();
    for (const ChannelEvidence& channel : channels_) {
      for (const double value : without_sentinels(*channel.values))
        if (std::isfinite(value)) top = std::max(top, value * plan_.scale);
    }
    const auto doubt = [](const char* stated, double top_C, const char* other, double other_C) {
      return say(Phrase::kStatedUnit, {stated, fmt::format("{:.0f}", top_C), other, fmt::format("{:.0f}", other_C)});
    };
    const double start_C = celsius(extent.start, "degF"), peak_C = celsius(extent.peak, "degF");  // read as °F
    if (plan_.unit == "degF" && peak_C < 150 && start_C < 5 && extent.start > 5 && extent.start < 60 &&
        extent.peak > 140 && extent.peak < 330)
      plan_.assumed.push_back({"unit", doubt("°F", celsius(top, "degF"), "°C", top), "degF", "degC"});
    const std::string likely = likely_unit(extent, false);
    if (plan_.unit == "degC" && likely == "degF")
      plan_.assumed.push_back({"unit", doubt("°C", top, "°F", celsius(top, "degF")), "degC", "degF"});
    if (plan_.unit == "degC" && likely == "K")
      plan_.assumed.push_back({"unit", doubt("°C", top, "K", celsius(top, "K")), "degC", "K"});
    if (plan_.unit == "K" && extent.start > 5 && extent.start < 60 && extent.peak > 140 && extent.peak < 330)
      plan_.assumed.push_back({"unit", doubt("K", celsius(top, "K"), "°C", top), "K", "degC"});
    plan_.stated_unit_doubted = plan_.assumed.size() > before;
  }

  void voltages(int cold_junction_column, const std::optional<UnitText>& cold_junction_unit) {
    std::vector<const ChannelEvidence*> in_millivolts;
    for (std::size_t i = 0; i < channels_.size(); ++i) {
      if (plan_.channels[i].unit == "mV") in_millivolts.push_back(&channels_[i]);
    }
    if (in_millivolts.empty()) return;
    bool type_assumed = false;
    for (ChannelUnit& channel : plan_.channels) {
      if (layout_.thermocouple_type && !layout_.thermocouple_type->empty())
        channel.thermocouple = layout_.thermocouple_type->front();
      if (channel.thermocouple == 0) channel.thermocouple = facts_.thermocouple;
      if (channel.thermocouple == 0 && channel.unit == "mV") {
        channel.thermocouple = 'K';
        type_assumed = true;
      }
      if (channel.unit == "mV" && plan_.thermocouple == 0) plan_.thermocouple = channel.thermocouple;
    }
    if (type_assumed) plan_.assumed.push_back({"thermocouple type", say(Phrase::kTypeK), "K", "J"});
    if (layout_.cold_junction_C) {
      plan_.cold_junction_C = *layout_.cold_junction_C;
    } else if (cold_junction_column >= 0) {
      plan_.cold_junction_column = cold_junction_column;
      plan_.cold_junction_fahrenheit = cold_junction_unit && cold_junction_unit->name == "degF";
      plan_.cold_junction_kelvin = cold_junction_unit && cold_junction_unit->name == "K" && !cold_junction_unit->weak;
    } else if (facts_.cold_junction_C) {
      plan_.cold_junction_C = *facts_.cold_junction_C;
    } else {
      const double start_mV = extent_of(in_millivolts).start * plan_.channels.front().millivolts;
      // A board at the temperature of the room gives no voltage against a junction that is there too.
      const auto room_mV = emf::voltage_mV(*emf::type_of(std::string_view{&plan_.thermocouple, 1}), Celsius{25});
      const bool uncompensated = std::isfinite(start_mV) && room_mV && std::abs(start_mV) < 0.4 * *room_mV;
      plan_.cold_junction_C = uncompensated ? 25 : 0;
      plan_.assumed.push_back({"cold junction", say(uncompensated ? Phrase::kJunctionRoom : Phrase::kJunctionZero),
                               uncompensated ? "25" : "0", uncompensated ? "0" : "25"});
    }
  }

  const std::vector<ChannelEvidence>& channels_;
  const Facts& facts_;
  const Layout& layout_;
  const bool time_has_bracket_unit_;
  const int header_line_;
  TemperaturePlan plan_;
};

}  // namespace

Result<TemperaturePlan> plan_temperatures(const std::vector<ChannelEvidence>& channels, const Facts& facts,
                                          const Layout& layout, int cold_junction_column,
                                          const std::optional<UnitText>& cold_junction_unit, bool time_has_bracket_unit,
                                          int header_line) {
  return Planner(channels, facts, layout, time_has_bracket_unit, header_line)
      .run(cold_junction_column, cold_junction_unit);
}

void to_celsius(std::vector<double>& readings, const ChannelUnit& unit, const TemperaturePlan& plan,
                const std::vector<double>& cold_junction_C) {
  const bool tenfold = unit.scale < 1 && std::abs(std::round(1 / unit.scale) * unit.scale - 1) < 1e-12;
  const double parts = tenfold ? std::round(1 / unit.scale) : 1;
  if (unit.scale != 1) {
    for (double& value : readings) value = tenfold ? value / parts : value * unit.scale;
  }
  if (unit.unit == "degF") {
    for (double& value : readings) value = fahrenheit_to_celsius(value);
  } else if (unit.unit == "K") {
    for (double& value : readings) value -= kZeroCelsius_K;
  } else if (unit.unit == "mV") {
    const double factor = unit.reversed ? -unit.millivolts : unit.millivolts;
    if (factor != 1) {
      for (double& value : readings) value *= factor;
    }
    const auto type = emf::type_of(std::string_view{&unit.thermocouple, 1}).value_or(emf::Type::kK);
    if (cold_junction_C.empty()) {
      emf::to_temperatures(type, readings, Celsius{plan.cold_junction_C});
    } else {
      emf::to_temperatures(type, readings, cold_junction_C);
    }
  }
}

}  // namespace ovenwright::log
