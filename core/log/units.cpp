#include "core/log/units.h"

#include <algorithm>
#include <array>
#include <unordered_map>
#include <unordered_set>
#include <utility>

#include "core/log/number.h"
#include "core/log/text.h"

namespace ovenwright::log {
namespace {

struct Named {
  std::string_view text;
  Quantity quantity;
  std::string_view name;
  double factor = 1;
  bool weak = false;
};

using enum Quantity;

/// Lower case, plain forms, blanks and full stops left out. "癈" is "°C" written as GB18030 and read as such, "ｰc" the
/// same in Shift_JIS; a replacement character stands where a ring was lost.
constexpr std::array kUnits{
    Named{"°c", kTemperature, "degC"},
    Named{"c°", kTemperature, "degC"},
    Named{"degc", kTemperature, "degC"},
    Named{"deg_c", kTemperature, "degC"},
    Named{"deg-c", kTemperature, "degC"},
    Named{"degreec", kTemperature, "degC"},
    Named{"degreesc", kTemperature, "degC"},
    Named{"degcelsius", kTemperature, "degC"},
    Named{"degreecelsius", kTemperature, "degC"},
    Named{"degreescelsius", kTemperature, "degC"},
    Named{"celsius", kTemperature, "degC"},
    Named{"celcius", kTemperature, "degC"},
    Named{"centigrade", kTemperature, "degC"},
    Named{"grad", kTemperature, "degC"},
    Named{"gradc", kTemperature, "degC"},
    Named{"gradcelsius", kTemperature, "degC"},
    Named{"grado", kTemperature, "degC"},
    Named{"grados", kTemperature, "degC"},
    Named{"gradosc", kTemperature, "degC"},
    Named{"gradoscelsius", kTemperature, "degC"},
    Named{"gradoscentígrados", kTemperature, "degC"},
    Named{"degréc", kTemperature, "degC"},
    Named{"degrésc", kTemperature, "degC"},
    Named{"degrécelsius", kTemperature, "degC"},
    Named{"degréscelsius", kTemperature, "degC"},
    Named{"摄氏度", kTemperature, "degC"},
    Named{"攝氏度", kTemperature, "degC"},
    Named{"摄氏", kTemperature, "degC"},
    Named{"攝氏", kTemperature, "degC"},
    Named{"摂氏", kTemperature, "degC"},
    Named{"摂氏度", kTemperature, "degC"},
    Named{"セ氏", kTemperature, "degC"},
    Named{"度", kTemperature, "degC"},
    Named{"度c", kTemperature, "degC"},
    Named{"&deg;c", kTemperature, "degC"},
    Named{"\xEF\xBF\xBD"
          "c",
          kTemperature, "degC"},
    Named{"â°c", kTemperature, "degC"},
    Named{"癈", kTemperature, "degC"},
    Named{"ｰc", kTemperature, "degC"},
    Named{"'c", kTemperature, "degC"},
    Named{"*c", kTemperature, "degC"},
    Named{"´c", kTemperature, "degC"},
    Named{"`c", kTemperature, "degC"},
    Named{"^c", kTemperature, "degC"},
    Named{"?c", kTemperature, "degC", 1, true},
    Named{"oc", kTemperature, "degC", 1, true},
    Named{"c", kTemperature, "degC", 1, true},
    Named{"°f", kTemperature, "degF"},
    Named{"f°", kTemperature, "degF"},
    Named{"degf", kTemperature, "degF"},
    Named{"deg_f", kTemperature, "degF"},
    Named{"deg-f", kTemperature, "degF"},
    Named{"degreef", kTemperature, "degF"},
    Named{"degreesf", kTemperature, "degF"},
    Named{"degfahrenheit", kTemperature, "degF"},
    Named{"degreefahrenheit", kTemperature, "degF"},
    Named{"degreesfahrenheit", kTemperature, "degF"},
    Named{"fahrenheit", kTemperature, "degF"},
    Named{"gradfahrenheit", kTemperature, "degF"},
    Named{"gradosfahrenheit", kTemperature, "degF"},
    Named{"gradosf", kTemperature, "degF"},
    Named{"华氏度", kTemperature, "degF"},
    Named{"華氏度", kTemperature, "degF"},
    Named{"华氏", kTemperature, "degF"},
    Named{"華氏", kTemperature, "degF"},
    Named{"&deg;f", kTemperature, "degF"},
    Named{"\xEF\xBF\xBD"
          "f",
          kTemperature, "degF"},
    Named{"â°f", kTemperature, "degF"},
    Named{"癋", kTemperature, "degF"},
    Named{"'f", kTemperature, "degF"},
    Named{"*f", kTemperature, "degF"},
    Named{"´f", kTemperature, "degF"},
    Named{"?f", kTemperature, "degF", 1, true},
    Named{"of", kTemperature, "degF", 1, true},
    Named{"f", kTemperature, "degF", 1, true},
    Named{"kelvin", kTemperature, "K"},
    Named{"degk", kTemperature, "K"},
    Named{"°k", kTemperature, "K"},
    Named{"开尔文", kTemperature, "K"},
    Named{"開爾文", kTemperature, "K"},
    Named{"开氏度", kTemperature, "K"},
    Named{"ケルビン", kTemperature, "K"},
    Named{"k", kTemperature, "K", 1, true},
    Named{"mv", kVoltage, "mV", 1},
    Named{"millivolt", kVoltage, "mV", 1},
    Named{"millivolts", kVoltage, "mV", 1},
    Named{"мв", kVoltage, "mV", 1},
    Named{"毫伏", kVoltage, "mV", 1},
    Named{"ミリボルト", kVoltage, "mV", 1},
    Named{"µv", kVoltage, "mV", 1e-3},
    Named{"uv", kVoltage, "mV", 1e-3},
    Named{"microvolt", kVoltage, "mV", 1e-3},
    Named{"microvolts", kVoltage, "mV", 1e-3},
    Named{"微伏", kVoltage, "mV", 1e-3},
    Named{"s", kTime, "s", 1, true},
    Named{"sec", kTime, "s", 1},
    Named{"secs", kTime, "s", 1},
    Named{"second", kTime, "s", 1},
    Named{"seconds", kTime, "s", 1},
    Named{"sek", kTime, "s", 1},
    Named{"sekunde", kTime, "s", 1},
    Named{"sekunden", kTime, "s", 1},
    Named{"seg", kTime, "s", 1},
    Named{"segs", kTime, "s", 1},
    Named{"segundo", kTime, "s", 1},
    Named{"segundos", kTime, "s", 1},
    Named{"seconde", kTime, "s", 1},
    Named{"secondes", kTime, "s", 1},
    Named{"秒", kTime, "s", 1},
    Named{"秒钟", kTime, "s", 1},
    Named{"초", kTime, "s", 1},
    Named{"secondi", kTime, "s", 1},
    Named{"seconden", kTime, "s", 1},
    Named{"sekund", kTime, "s", 1},
    Named{"sekundy", kTime, "s", 1},
    Named{"с", kTime, "s", 1, true},
    Named{"сек", kTime, "s", 1},
    Named{"секунд", kTime, "s", 1},
    Named{"밀리초", kTime, "ms", 1e-3},
    Named{"millisecondi", kTime, "ms", 1e-3},
    Named{"мс", kTime, "ms", 1e-3},
    Named{"мин", kTime, "min", 60},
    Named{"minuti", kTime, "min", 60},
    Named{"秒鐘", kTime, "s", 1},
    Named{"ms", kTime, "ms", 1e-3},
    Named{"msec", kTime, "ms", 1e-3},
    Named{"msek", kTime, "ms", 1e-3},
    Named{"mseg", kTime, "ms", 1e-3},
    Named{"millis", kTime, "ms", 1e-3},
    Named{"millisecond", kTime, "ms", 1e-3},
    Named{"milliseconds", kTime, "ms", 1e-3},
    Named{"millisekunde", kTime, "ms", 1e-3},
    Named{"millisekunden", kTime, "ms", 1e-3},
    Named{"milisegundo", kTime, "ms", 1e-3},
    Named{"milisegundos", kTime, "ms", 1e-3},
    Named{"milliseconde", kTime, "ms", 1e-3},
    Named{"millisecondes", kTime, "ms", 1e-3},
    Named{"毫秒", kTime, "ms", 1e-3},
    Named{"ミリ秒", kTime, "ms", 1e-3},
    Named{"1/10s", kTime, "0.1 s", 0.1},
    Named{"zehntelsekunde", kTime, "0.1 s", 0.1},
    Named{"zehntelsekunden", kTime, "0.1 s", 0.1},
    Named{"1/100s", kTime, "0.01 s", 0.01},
    Named{"hundredths", kTime, "0.01 s", 0.01},
    Named{"hundertstel", kTime, "0.01 s", 0.01},
    Named{"centièmes", kTime, "0.01 s", 0.01},
    Named{"1/1000s", kTime, "ms", 1e-3},
    Named{"us", kTime, "us", 1e-6},
    Named{"µs", kTime, "us", 1e-6},
    Named{"usec", kTime, "us", 1e-6},
    Named{"µsec", kTime, "us", 1e-6},
    Named{"microsecond", kTime, "us", 1e-6},
    Named{"microseconds", kTime, "us", 1e-6},
    Named{"mikrosekunden", kTime, "us", 1e-6},
    Named{"微秒", kTime, "us", 1e-6},
    Named{"マイクロ秒", kTime, "us", 1e-6},
    Named{"min", kTime, "min", 60, true},
    Named{"mins", kTime, "min", 60},
    Named{"minute", kTime, "min", 60},
    Named{"minutes", kTime, "min", 60},
    Named{"minuten", kTime, "min", 60},
    Named{"minuto", kTime, "min", 60},
    Named{"minutos", kTime, "min", 60},
    Named{"分", kTime, "min", 60},
    Named{"分钟", kTime, "min", 60},
    Named{"分鐘", kTime, "min", 60},
    Named{"分間", kTime, "min", 60},
    Named{"h", kTime, "h", 3600, true},
    Named{"hr", kTime, "h", 3600},
    Named{"hrs", kTime, "h", 3600},
    Named{"hour", kTime, "h", 3600},
    Named{"hours", kTime, "h", 3600},
    Named{"std", kTime, "h", 3600},
    Named{"stunde", kTime, "h", 3600},
    Named{"stunden", kTime, "h", 3600},
    Named{"heures", kTime, "h", 3600},
    Named{"horas", kTime, "h", 3600},
    Named{"小时", kTime, "h", 3600},
    Named{"小時", kTime, "h", 3600},
    Named{"d", kTime, "d", 86400, true},
    Named{"days", kTime, "d", 86400},
    Named{"tage", kTime, "d", 86400},
};

constexpr std::array<std::string_view, 82> kOtherUnits{
    "в",      "мм/мин", "об/мин", "%",     "%rh",    "%r.h.", "%rf",   "rh%",      "%hr",    "%vol", "vol%",   "%o2",
    "ppm",    "ppmv",   "ppmo2",  "ppb",   "v",      "volt",  "volts", "kv",       "a",      "ma",   "amp",    "amps",
    "w",      "kw",     "watt",   "pa",    "hpa",    "kpa",   "mbar",  "bar",      "psi",    "torr", "mm/min", "mm/s",
    "cm/min", "cm/s",   "m/min",  "m/s",   "in/min", "in/s",  "ipm",   "inch/min", "ft/min", "fpm",  "rpm",    "1/min",
    "u/min",  "hz",     "khz",    "l/min", "nl/min", "l/h",   "m3/h",  "m³/h",     "nm3/h",  "slpm", "scfm",   "°c/s",
    "°c/sec", "°c/min", "c/s",    "c/sec", "k/s",    "k/min", "°f/s",  "°f/min",   "mm",     "cm",   "inch",   "in",
    "g",      "kg",     "db",     "dbm",   "ohm",    "kohm",  "count", "counts",   "mah",    "%lel"};

/// Letters, rings and brackets only matter: blanks and full stops are how people write them.
std::string packed(std::string_view text) {
  std::string out = lower(text);
  std::erase_if(out, [](char c) { return c == ' ' || c == '.' || c == '\t'; });
  return out;
}

const Named* find_named(std::string_view text) {
  static const auto table = [] {
    std::unordered_map<std::string_view, const Named*> made;
    for (const Named& named : kUnits) made.emplace(named.text, &named);
    return made;
  }();
  const auto found = table.find(text);
  return found == table.end() ? nullptr : found->second;
}

bool other_unit(std::string_view text) {
  static const std::unordered_set<std::string_view> kTable(kOtherUnits.begin(), kOtherUnits.end());
  return kTable.contains(text);
}

UnitText from(const Named& named) { return {named.quantity, std::string{named.name}, named.factor, 1, named.weak}; }

bool clock_pattern(std::string_view text) {
  static constexpr std::array<std::string_view, 14> kPatterns{"hh:mm", "h:mm",  "h:m",   "mm:ss", "m:ss",
                                                              "m:s",   "min:s", "dd/mm", "mm/dd", "dd-mm",
                                                              "yyyy",  "tt-mm", "jj/mm", "yy"};
  return std::any_of(kPatterns.begin(), kPatterns.end(),
                     [text](std::string_view p) { return text.find(p) != std::string_view::npos; });
}

/// "m°C", "cdegC", "d°C", "milli°C": parts of a degree.
std::optional<UnitText> part_of_a_degree(std::string_view unit) {
  struct Prefix {
    std::string_view text;
    double scale;
  };
  static constexpr std::array kPrefixes{Prefix{"milli", 1e-3}, Prefix{"centi", 1e-2}, Prefix{"deci", 0.1},
                                        Prefix{"m", 1e-3},     Prefix{"c", 1e-2},     Prefix{"d", 0.1}};
  for (const Prefix& prefix : kPrefixes) {
    if (!unit.starts_with(prefix.text)) continue;
    const Named* named = find_named(unit.substr(prefix.text.size()));
    if (named == nullptr || named->quantity != kTemperature || named->weak) continue;
    UnitText part = from(*named);
    part.scale = prefix.scale;
    return part;
  }
  return std::nullopt;
}

/// A number before or behind a temperature unit: "0.1 °C", "°C x10", "1/10 °C", "°C*0,1", "°C/10", "10x °C".
std::optional<UnitText> scaled(std::string_view original) {
  const bool any_digit = original.find_first_of("0123456789") != std::string_view::npos;
  if (!any_digit && original.size() < 8) return std::nullopt;  // "tenths of a degree"
  std::string text = lower(original);
  std::erase(text, ' ');
  for (const std::string_view tenth : {"zehntel", "tenthsof", "tenthof", "tenths", "1/10"}) {
    if (const auto at = text.find(tenth); at != std::string::npos) text.replace(at, tenth.size(), "0.1");
  }
  if (const auto at = text.find("1/100"); at != std::string::npos) text.replace(at, 5, "0.01");
  for (const auto& [sixteenth, figure] : {std::pair{"1/16", "0.0625"}, std::pair{"1/32", "0.03125"},
                                          std::pair{"1/64", "0.015625"}, std::pair{"1/128", "0.0078125"}}) {
    if (const auto at = text.find(sixteenth); at != std::string::npos)
      text.replace(at, std::string_view{sixteenth}.size(), figure);
  }
  const auto unit_part = [](std::string rest) {
    std::erase_if(rest, [](char c) { return c == '*' || c == '/' || c == '.' || c == ',' || c == '='; });
    if (rest.starts_with("×")) rest.erase(0, 2);
    if (rest.ends_with("×")) rest.resize(rest.size() - 2);
    if (rest.starts_with("·")) rest.erase(0, 2);
    if (rest.ends_with("·")) rest.resize(rest.size() - 2);
    if (rest.size() > 1 && rest.front() == 'x') rest.erase(0, 1);
    if (rest.size() > 1 && rest.back() == 'x') rest.pop_back();
    return rest;
  };
  const auto digit = [](char c) { return c >= '0' && c <= '9'; };
  const auto first = std::find_if(text.begin(), text.end(), digit);
  if (first == text.end()) return std::nullopt;
  auto last = first;
  while (last != text.end() && (digit(*last) || *last == '.' || *last == ',')) ++last;
  std::string figure{first, last};
  std::replace(figure.begin(), figure.end(), ',', '.');
  while (!figure.empty() && figure.back() == '.') figure.pop_back();
  const auto number = read_number(figure, '.');
  const std::string rest = unit_part(std::string{text.begin(), first} + std::string{last, text.end()});
  const Named* named = find_named(rest);
  const bool power =
      number && (number->value == 10 || number->value == 100 || number->value == 1000 || number->value == 0.1 ||
                 number->value == 0.01 || number->value == 0.001 || number->value == 0.0625 ||
                 number->value == 0.03125 || number->value == 0.015625 || number->value == 0.0078125);
  if (!power || !number->rest.empty()) return std::nullopt;
  if (named == nullptr || named->quantity != kTemperature) return std::nullopt;
  // "C10" and "10 C" are names or readings, "0.1 C" is a unit.
  const bool fraction = number->value < 1;
  const bool sign = text.find_first_of("*/x") != std::string::npos || text.find("×") != std::string::npos ||
                    text.find("·") != std::string::npos;
  if (named->weak && !fraction && !sign) return std::nullopt;
  UnitText unit = from(*named);
  unit.scale = number->value;
  unit.weak = false;
  return unit;
}

}  // namespace

std::optional<UnitText> parse_unit(std::string_view original) {
  const std::string_view text = trim(original);
  if (text.empty() || text.size() > 40) return std::nullopt;
  const std::string unit = packed(text);
  if (unit.empty()) return std::nullopt;
  if (const Named* named = find_named(unit)) {
    return from(*named);
  }
  if (other_unit(unit)) {
    return UnitText{kOther, std::string{text}, 1, 1, unit.size() == 1 && unit != "%"};
  }
  if (clock_pattern(unit)) return UnitText{kClock, unit, 1, 1, false};
  if (auto found = scaled(text)) return found;
  if (auto part = part_of_a_degree(unit)) return part;
  constexpr std::string_view kRing = "°";
  const bool ring = unit.starts_with(kRing) && unit.size() > kRing.size() && unit.size() <= kRing.size() + 6;
  static constexpr std::array<std::string_view, 7> kForeign{"rankine", "réaumur", "reaumur", "rømer",
                                                            "roemer",  "degr",    "delisle"};
  if (ring || std::find(kForeign.begin(), kForeign.end(), unit) != kForeign.end()) {
    return UnitText{kUnknownTemperature, std::string{text}, 1, 1, false};
  }
  return std::nullopt;
}

}  // namespace ovenwright::log
