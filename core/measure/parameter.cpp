#include "core/measure/parameter.h"

#include <algorithm>
#include <charconv>
#include <cmath>

namespace ovenwright::measure {
namespace {

constexpr double kPeakTimeLevel_C = 25;
constexpr double kNearPeakOffset_C = 5;
constexpr double kSlopeWindow_s = 5;

using Number = std::optional<double> Parameters::*;
using Temperature = std::optional<Level> Parameters::*;
struct NumberField {
  std::string_view name;
  Number field;
};
struct TemperatureField {
  std::string_view name;
  Temperature field;
};
constexpr NumberField kNumbers[] = {{"level", &Parameters::level},
                                    {"offset", &Parameters::offset},
                                    {"over", &Parameters::over},
                                    {"from", &Parameters::from},
                                    {"to", &Parameters::to},
                                    {"time", &Parameters::time},
                                    {"position_mm", &Parameters::position_mm}};
constexpr TemperatureField kTemperatures[] = {
    {"T1", &Parameters::T1}, {"T2", &Parameters::T2}, {"reference", &Parameters::reference}};

template <class Fields>
auto field_of(const Fields& fields, std::string_view name) -> decltype(&fields[0]) {
  for (const auto& field : fields)
    if (field.name == name) return &field;
  return nullptr;
}

Error bad(std::string message, std::string found = {}, std::string expected = {}) {
  return Error{ErrorCode::kBadArgument, std::move(message), {}, std::move(found), std::move(expected)};
}

std::string quoted(std::string_view text) { return "\"" + std::string(text) + "\""; }

/// Whether this parameter of this measure may be the trace's own peak, or a Tc.
bool may_be_peak(Measure measure, std::string_view name) {
  return (measure == Measure::kMeanRise && name == "T2") || (measure == Measure::kMeanFall && name == "T1") ||
         (measure == Measure::kTimeNearPeak && name == "reference");
}
bool may_be_Tc(std::string_view name) { return name == "reference"; }

std::string expected_kind(Measure measure, std::string_view name) {
  std::string kind = name == "over" || name == "time" ? "a number of seconds"
                     : name == "position_mm"          ? "a number of millimetres"
                                                      : "a temperature in °C";
  if (may_be_peak(measure, name)) kind += ", \"peak\"";
  if (may_be_Tc(name)) kind += ", \"Tc\"";
  return kind;
}

/// Whether a number can be meant: beyond it is a slip, or what overflowed.
bool possible(std::string_view name, double value) {
  constexpr double kAbsoluteZero_C = -273.15, kHottest_C = 1e4, kMost = 1e6;
  const bool any_size = name == "over" || name == "time" || name == "position_mm" || name == "offset" || name == "zone";
  return any_size ? std::abs(value) <= kMost : value >= kAbsoluteZero_C && value <= kHottest_C;
}

std::string listed(const std::vector<std::string_view>& names) {
  if (names.empty()) return "no parameter";
  std::string text;
  for (std::size_t i = 0; i < names.size(); ++i)
    text += (i == 0 ? "" : i + 1 == names.size() ? " or " : ", ") + std::string(names[i]);
  return text;
}

std::string_view trimmed(std::string_view text) {
  const auto first = text.find_first_not_of(" \t");
  if (first == std::string_view::npos) return {};
  return text.substr(first, text.find_last_not_of(" \t") - first + 1);
}

std::optional<double> number(std::string_view text) {
  double value = 0;
  if (text.starts_with('+')) text.remove_prefix(1);
  const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), value);
  if (error != std::errc{} || end != text.data() + text.size() || !std::isfinite(value)) return std::nullopt;
  return value;
}

/// "peak", "Tc", "Tc-5", "Tc + 3".
std::optional<Level> level_word(std::string_view word) {
  if (word == "peak") return OwnPeak{};
  if (!word.starts_with("Tc")) return std::nullopt;
  word = trimmed(word.substr(2));
  if (word.empty()) return TcReference{};
  const char sign = word.front();
  const auto offset_C = number(trimmed(word.substr(1)));
  if ((sign != '+' && sign != '-') || !offset_C) return std::nullopt;
  return TcReference{sign == '-' ? -*offset_C : *offset_C};
}

std::string shortest(double value) {
  char text[32];
  const auto end = std::to_chars(text, text + sizeof text, value).ptr;
  return {text, end};
}

/// As shortest(), with the minus sign that people read.
std::string for_people(double value) { return (value < 0 ? "\u2212" : "") + shortest(std::abs(value)); }

std::string degrees(double value) { return for_people(value) + " °C"; }

ParameterValue as_written(const Level& level) {
  if (const auto* temperature = std::get_if<double>(&level)) return *temperature;
  if (std::holds_alternative<OwnPeak>(level)) return std::string("peak");
  const double offset_C = std::get<TcReference>(level).offset_C;
  if (offset_C == 0) return std::string("Tc");
  return (offset_C < 0 ? "Tc-" : "Tc+") + shortest(std::abs(offset_C));
}

std::string level_text(const Level& level) {
  if (const auto* temperature = std::get_if<double>(&level)) return degrees(*temperature);
  if (std::holds_alternative<OwnPeak>(level)) return "the peak";
  const double offset_C = std::get<TcReference>(level).offset_C;
  if (offset_C == 0) return "Tc";
  return std::string("Tc ") + (offset_C < 0 ? "\u2212 " : "+ ") + degrees(std::abs(offset_C));
}

std::string between_text(const std::optional<Level>& T1, const std::optional<Level>& T2) {
  if (!T1 || !T2) return {};
  if (std::holds_alternative<double>(*T1) && std::holds_alternative<double>(*T2))
    return for_people(std::get<double>(*T1)) + " to " + level_text(*T2);
  return level_text(*T1) + " to " + level_text(*T2);
}

std::string range_text(std::optional<double> from, std::optional<double> to) {
  if (from && to) return for_people(*from) + " to " + degrees(*to);
  if (from) return "from " + degrees(*from);
  if (to) return "up to " + degrees(*to);
  return {};
}

std::string joined(const std::string& a, const std::string& b) { return a.empty() ? b : b.empty() ? a : a + ", " + b; }

bool takes_liquidus(Measure measure) {
  switch (measure) {
    case Measure::kTimeAbove:
    case Measure::kExcursionsAbove:
    case Measure::kAreaAbove:
    case Measure::kWaveContactTime:
    case Measure::kWaveLongestContact:
      return true;
    default:
      return false;
  }
}

std::optional<Error> wrong_order(const Definition& definition) {
  const auto& p = definition.parameters;
  const bool fall = definition.measure == Measure::kMeanFall;
  const auto* T1 = p.T1 ? std::get_if<double>(&*p.T1) : nullptr;
  const auto* T2 = p.T2 ? std::get_if<double>(&*p.T2) : nullptr;
  if (!T1 || !T2 || (fall ? *T1 > *T2 : *T1 < *T2)) return std::nullopt;
  return bad(std::string("T1 must be ") + (fall ? "above" : "below") + " T2",
             "T1 = " + shortest(*T1) + ", T2 = " + shortest(*T2), std::string("T1 ") + (fall ? ">" : "<") + " T2");
}

}  // namespace

std::vector<Parameter> parameters_of(const Definition& definition) {
  std::vector<Parameter> set;
  const auto& p = definition.parameters;
  for (const auto name : describe(definition.measure).parameters) {
    if (const auto* field = field_of(kNumbers, name)) {
      if (const auto& value = p.*(field->field)) set.push_back({std::string(name), *value});
    } else if (const auto* temperature = field_of(kTemperatures, name)) {
      if (const auto& value = p.*(temperature->field)) set.push_back({std::string(name), as_written(*value)});
    } else if (p.zone) {
      set.push_back({std::string(name), *p.zone});
    }
  }
  return set;
}

std::optional<Error> set_parameter(Definition& definition, std::string_view name, const ParameterValue& value) {
  const auto& description = describe(definition.measure);
  if (std::ranges::find(description.parameters, name) == description.parameters.end())
    return bad(quoted(description.name) + " has no parameter " + quoted(name), std::string(name),
               listed(description.parameters));
  auto& p = definition.parameters;
  const auto* given = std::get_if<double>(&value);
  const auto* word = std::get_if<std::string>(&value);
  const auto wrong_kind = [&] {
    const std::string found = given ? shortest(*given) : quoted(*word);
    const std::string expected = name == "zone" ? "the name of a zone" : expected_kind(definition.measure, name);
    return bad(std::string(name) + ": found " + found + ", expected " + expected, found, expected);
  };
  if (given && !possible(name, *given)) return wrong_kind();
  if (const auto* field = field_of(kNumbers, name)) {
    if (!given) return wrong_kind();
    p.*(field->field) = *given;
  } else if (const auto* temperature = field_of(kTemperatures, name)) {
    const auto level = given ? std::optional<Level>(*given) : level_word(trimmed(*word));
    if (!level || (std::holds_alternative<OwnPeak>(*level) && !may_be_peak(definition.measure, name)) ||
        (std::holds_alternative<TcReference>(*level) && !may_be_Tc(name)))
      return wrong_kind();
    p.*(temperature->field) = *level;
  } else {
    if (!word || word->empty()) return wrong_kind();
    p.zone = *word;
  }
  return std::nullopt;
}

Definition with_defaults(Definition definition, std::optional<double> liquidus_C) {
  auto& p = definition.parameters;
  switch (definition.measure) {
    case Measure::kPeakTime:
      if (!p.level) p.level = kPeakTimeLevel_C;
      break;
    case Measure::kTimeNearPeak:
      if (!p.offset) p.offset = kNearPeakOffset_C;
      if (!p.reference) p.reference = OwnPeak{};
      break;
    case Measure::kSteepestRise:
    case Measure::kSteepestFall:
      if (!p.over) p.over = kSlopeWindow_s;
      break;
    default:
      if (takes_liquidus(definition.measure) && !p.level) p.level = liquidus_C;
  }
  return definition;
}

std::optional<Error> problem(const Definition& definition) {
  const auto& description = describe(definition.measure);
  const auto& p = definition.parameters;
  const auto set = parameters_of(definition);
  for (const auto name : description.required)
    if (std::ranges::find(set, name, &Parameter::name) == set.end())
      return bad(quoted(description.name) + " needs " + std::string(name), "no " + std::string(name),
                 std::string(name) + ", " + expected_kind(definition.measure, name));
  Definition checked{definition.measure, {}};
  for (const auto& parameter : set)
    if (const auto error = set_parameter(checked, parameter.name, parameter.value)) return error;
  if (!(checked == definition)) return bad(quoted(description.name) + " was given a parameter that it does not know");
  if (p.over && !(*p.over > 0)) return bad("over must be more than 0 s", shortest(*p.over), "more than 0");
  if (p.offset && !(*p.offset >= 0)) return bad("offset must not be negative", shortest(*p.offset), "0 or more");
  if (definition.measure == Measure::kTemperatureAt && set.size() != 1)
    return bad("\"temperature at\" needs one of time, position_mm or zone", std::to_string(set.size()) + " of them",
               "one");
  return wrong_order(definition);
}

Result<Definition> parse_definition(std::string_view text) {
  const auto comma = text.find(',');
  const auto name = trimmed(text.substr(0, comma));
  const auto* description = find(name);
  if (!description) {
    std::string known;
    for (const auto& each : descriptions()) known += (known.empty() ? "" : ", ") + std::string(each.name);
    return bad("there is no measure " + quoted(name), std::string(name), known);
  }
  Definition definition{description->measure, {}};
  for (auto rest = comma == std::string_view::npos ? std::string_view{} : text.substr(comma + 1); !rest.empty();) {
    const auto end = rest.find(',');
    const auto part = trimmed(rest.substr(0, end));
    rest = end == std::string_view::npos ? std::string_view{} : rest.substr(end + 1);
    const auto equals = part.find('=');
    if (equals == std::string_view::npos)
      return bad("expected key=value, found " + quoted(part), std::string(part), "key=value");
    const auto key = trimmed(part.substr(0, equals));
    const auto value = trimmed(part.substr(equals + 1));
    const auto as_number = key == "zone" ? std::nullopt : number(value);
    const auto before = parameters_of(definition);
    if (std::ranges::find(before, key, &Parameter::name) != before.end())
      return bad(std::string(key) + " is given twice", std::string(key), "each key once");
    if (const auto error =
            set_parameter(definition, key, as_number ? ParameterValue(*as_number) : ParameterValue(std::string(value))))
      return *error;
  }
  definition = with_defaults(std::move(definition), std::nullopt);
  if (const auto error = problem(definition)) return *error;
  return definition;
}

std::string parameters_text(const Definition& definition) {
  const auto& p = definition.parameters;
  switch (definition.measure) {
    case Measure::kPeakTime:
      return p.level ? "from " + degrees(*p.level) : "";
    case Measure::kTimeNearPeak: {
      if (!p.offset) return {};
      const bool own_peak = !p.reference || std::holds_alternative<OwnPeak>(*p.reference);
      return "within " + degrees(*p.offset) + (own_peak ? "" : " of " + level_text(*p.reference));
    }
    case Measure::kSteepestRise:
    case Measure::kSteepestFall:
      return joined(p.over ? "over " + for_people(*p.over) + " s" : "", range_text(p.from, p.to));
    case Measure::kTemperatureAt:
      if (p.time) return for_people(*p.time) + " s";
      if (p.position_mm) return for_people(*p.position_mm) + " mm";
      return p.zone ? "the end of zone " + *p.zone : "";
    case Measure::kTimeBetweenOnRise:
    case Measure::kMeanRise:
    case Measure::kMeanFall:
      return between_text(p.T1, p.T2);
    case Measure::kLargestSpread:
      return range_text(p.from, p.to);
    default:
      return p.level ? degrees(*p.level) : "";
  }
}

}  // namespace ovenwright::measure
