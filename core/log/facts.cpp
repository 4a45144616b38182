#include "core/log/facts.h"

#include <algorithm>
#include <array>

#include "core/log/header_text.h"
#include "core/log/number.h"
#include "core/log/text.h"
#include "core/log/words.h"

namespace ovenwright::log {
namespace {

constexpr auto kNone = std::string_view::npos;
constexpr double kLongestInterval_s = 600;

bool is_digit(char c) { return c >= '0' && c <= '9'; }

/// A number in running text: its one decimal sign may be '.' or ','; three digits behind a comma are thousands where a
/// whole part stands before it. "1/4" is a fraction.
struct LooseNumber {
  double value = 0;
  std::size_t start = 0, end = 0;
  std::optional<double> as_decimal;  ///< where the comma was taken for one of thousands
};

std::optional<LooseNumber> loose_number(std::string_view text, std::size_t from) {
  std::size_t start = from;
  while (start < text.size() && !is_digit(text[start])) ++start;
  if (start >= text.size()) return std::nullopt;
  std::size_t end = start;
  while (end < text.size() && is_digit(text[end])) ++end;
  std::string figure{text.substr(start, end - start)};
  std::optional<double> as_decimal;
  if (end + 1 < text.size() && (text[end] == '.' || text[end] == ',') && is_digit(text[end + 1])) {
    std::size_t last = end + 1;
    while (last < text.size() && is_digit(text[last])) ++last;
    const bool thousands = text[end] == ',' && last - end == 4 && figure != "0";
    const std::string_view behind = text.substr(end + 1, last - end - 1);
    if (thousands) {
      if (const auto other = read_number(figure + "." + std::string{behind}, '.')) as_decimal = other->value;
    } else {
      figure += '.';
    }
    figure += behind;
    end = last;
  } else if (end + 1 < text.size() && text[end] == '/' && text[end + 1] >= '1' && text[end + 1] <= '9') {
    std::size_t last = end + 1;
    while (last < text.size() && is_digit(text[last])) ++last;
    const auto above = read_number(figure, '.'), below = read_number(text.substr(end + 1, last - end - 1), '.');
    const bool date = last < text.size() && text[last] == '/';
    if (above && below && below->value > 0 && !date)
      return LooseNumber{above->value / below->value, start, last, std::nullopt};
  }
  const bool negative = start > 0 && text[start - 1] == '-' && (start == 1 || !is_digit(text[start - 2]));
  const auto number = read_number(figure, '.');
  if (!number) return std::nullopt;
  return LooseNumber{negative ? -number->value : number->value, start, end, as_decimal};
}

bool separates(char c) { return std::string_view{" \t;,|:=\"'()[]@"}.find(c) != kNone; }

/// The word that stands at `from`, behind signs that separate.
std::string_view word_at(std::string_view text, std::size_t from) {
  while (from < text.size() && separates(text[from])) ++from;
  if (text.substr(from).starts_with("：")) from += 3;
  std::size_t end = from;
  while (end < text.size() && !separates(text[end])) ++end;
  return text.substr(from, end - from);
}

std::string_view rest_after_label(std::string_view text) {
  for (std::size_t i = 0; i < text.size(); ++i) {
    if (std::string_view{":=;\t|,"}.find(text[i]) != kNone) {
      std::string_view rest = trim(text.substr(i + 1));
      while (!rest.empty() && std::string_view{":=;\t|,\" "}.find(rest.front()) != kNone) rest.remove_prefix(1);
      while (!rest.empty() && std::string_view{";\t|,\" "}.find(rest.back()) != kNone) rest.remove_suffix(1);
      return rest;
    }
    if (text.substr(i).starts_with("：")) return trim(text.substr(i + 3));
  }
  return {};
}

bool hertz(std::string_view word) {
  const std::string small = lower(word);
  return small == "hz" || small == "1/s" || small == "/s" || small == "s-1" || small == "sps" || small == "samples/s" ||
         small == "s/s" || small == "hertz" || small == "werte/s" || small == "readings/s" || small == "scans/s" ||
         small == "messungen/s" || small == "mesures/s" || small == "muestras/s" || small == "次/秒" ||
         small == "hz采样";
}

/// Words for any rate or frequency, also that of a fan or of the mains: these count with hertz alone.
bool speaks_of_rate(std::string_view small) {
  static constexpr std::array<std::string_view, 15> kWords{
      "rate",       "Δt",   "frequency", "frequenz", "fréquence", "frecuencia", "frequência", "frequenza",
      "frequentie", "频率", "頻率",      "周波数",   "주파수",    "δt",         "takt"};
  return std::any_of(kWords.begin(), kWords.end(), [small](std::string_view w) { return small.find(w) != kNone; });
}

/// The fan's drive, the mains, a filter against its hum: hertz that are not those of the log.
bool speaks_of_machines(std::string_view small) {
  static constexpr std::array<std::string_view, 26> kWords{
      "fan",  "blower", "motor",   "drive",     "mains",   "line freq", "filter",   "power",        "inverter",
      "netz", "lüfter", "gebläse", "umrichter", "secteur", "ventil",    "réseau",   "moteur",       "ramp",
      "风机", "風機",   "变频",    "變頻",      "电源",    "電源",      "電源周波", "red eléctrica"};
  return std::any_of(kWords.begin(), kWords.end(), [small](std::string_view w) { return small.find(w) != kNone; });
}

/// "2 samples per second", "120 readings/min", "2 mesures par seconde", "每秒2次": how many rows a second or a minute
/// have. The seconds between rows; nothing where no such words stand there.
std::optional<double> rows_in_a_time(std::string_view small) {
  static constexpr std::array<std::string_view, 34> kRows{
      "sample",  "reading", "scan",     "measurement", "point",   "record",   "value",    "row",       "line",
      "mesure",  "relevé",  "valeur",   "échantillon", "messung", "wert",     "messwert", "messpunkt", "abtastung",
      "muestra", "lectura", "medición", "medicion",    "dato",    "misura",   "campion",  "leitura",   "amostra",
      "meting",  "次",      "回",       "点",          "點",      "サンプル", "组"};
  static constexpr std::array<std::string_view, 9> kPer{"per ", "par ",  "pro ", "por ", "al ",
                                                        "a ",   "each ", "je ",  "/"};
  static constexpr std::array<std::string_view, 20> kSeconds{
      "s",        "sec",     "secs",     "second",  "seconds", "sek",     "sekunde", "sekunden", "seg",  "segundo",
      "segundos", "seconde", "secondes", "secondo", "secondi", "segunda", "秒",      "秒钟",     "秒鐘", "초"};
  static constexpr std::array<std::string_view, 11> kMinutes{
      "min", "mins", "minute", "minutes", "minuten", "minuto", "minutos", "minuti", "分", "分钟", "分鐘"};
  const auto number = loose_number(small, 0);
  if (!number || !(number->value > 0)) return std::nullopt;
  // "LX2 samples", "2-3 samples"
  const auto before = small.substr(0, number->start);
  if (!before.empty() && !separates(before.back()) && static_cast<unsigned char>(before.back()) < 0x80)
    return std::nullopt;
  std::string_view rest = trim(small.substr(number->end));
  const auto row = std::find_if(kRows.begin(), kRows.end(), [&](std::string_view w) { return rest.starts_with(w); });
  if (row == kRows.end()) return std::nullopt;
  for (const std::string_view each : {"每秒", "毎秒"}) {
    if (small.substr(0, number->start).find(each) != kNone) return 1 / number->value;
  }
  for (const std::string_view each : {"每分", "毎分"}) {
    if (small.substr(0, number->start).find(each) != kNone) return 60 / number->value;
  }
  while (!rest.empty() && rest.front() != ' ' && rest.front() != '/') rest.remove_prefix(1);
  rest = trim(rest);
  for (const std::string_view per : kPer) {
    if (!rest.starts_with(per)) continue;
    rest = trim(rest.substr(per.size()));
    // The unit, and no word behind it: "per second line" and "per section" are none.
    while (!rest.empty() && std::string_view{" .,;:)]|\"'\t"}.find(rest.back()) != kNone) rest.remove_suffix(1);
    if (std::find(kSeconds.begin(), kSeconds.end(), rest) != kSeconds.end()) return 1 / number->value;
    if (std::find(kMinutes.begin(), kMinutes.end(), rest) != kMinutes.end()) return 60 / number->value;
    return std::nullopt;
  }
  return std::nullopt;
}

void read_unit(const Statement& statement, const std::string& text, Words words, Facts& facts) {
  const auto use = [&facts](const UnitText& unit) {
    if (unit.quantity == Quantity::kTime) {
      facts.time_unit = unit;
    } else if (unit.quantity == Quantity::kTemperature || unit.quantity == Quantity::kVoltage ||
               unit.quantity == Quantity::kUnknownTemperature) {
      if (!facts.unit) facts.unit = unit;
    }
  };
  const std::string_view value = rest_after_label(text);
  const bool one_value =
      statement.cells.size() <= 1 || std::count_if(statement.cells.begin(), statement.cells.end(),
                                                   [](const std::string& c) { return !c.empty(); }) <= 2;
  if ((words & kUnitWord) != 0 && one_value) {
    const std::string_view last =
        value.empty() ? std::string_view{text}.substr(std::min(text.size(), text.find_last_of(' ') + 1)) : value;
    if (const auto unit = parse_unit(last)) return use(*unit);
    const bool of_temperature = (words & (kTimeWord | kOtherWord)) == 0;
    if (of_temperature && !value.empty() && value.size() <= 20 && !facts.unknown_unit) {
      facts.unknown_unit = statement;
      facts.unknown_unit_text = std::string{value};
    }
    return;
  }
  if ((words & (kTemperatureWord | kValueWord)) == 0) return;
  const std::string small = lower(text);
  for (const std::string_view link : {" in ", " en "}) {
    const auto at = small.rfind(link);
    if (at == kNone) continue;
    std::string_view rest = trim(std::string_view{small}.substr(at + link.size()));
    while (!rest.empty() && (rest.back() == '.' || rest.back() == ';' || rest.back() == ',')) rest.remove_suffix(1);
    if (const auto unit = parse_unit(rest)) return use(*unit);
  }
  if (const auto unit = parse_unit(value); unit && !unit->weak) use(*unit);
}

}  // namespace

std::optional<StatedInterval> interval_in(std::string_view original, bool keyword_needed) {
  const std::string text = plain_forms(original);
  const Words words = words_in(text);
  const std::string small = lower(text);
  const bool interval = (words & kIntervalWord) != 0, rate = (words & kRateWord) != 0;
  const bool any_rate = !interval && !rate && speaks_of_rate(small);
  if (const auto seconds = rows_in_a_time(small); seconds && *seconds <= kLongestInterval_s)
    return StatedInterval{*seconds, true, std::string{trim(original)}, 0};
  if (keyword_needed && !interval && !rate && !any_rate) return std::nullopt;
  if (keyword_needed && speaks_of_machines(small)) return std::nullopt;
  // The number is looked for behind the keyword: what stands before it may be a date or a channel's number.
  std::size_t from = 0;
  if (interval || rate) {
    for (std::size_t i = 0; i < text.size(); ++i) {
      if ((words_in(std::string_view{text}.substr(0, i)) & (kIntervalWord | kRateWord)) != 0) {
        from = i;
        break;
      }
    }
  }
  auto number = loose_number(text, from);
  // "500 ms per scan"
  if (!number && from > 0) number = loose_number(text, 0);
  if (!number) return std::nullopt;
  StatedInterval stated;
  stated.text = std::string{trim(original)};
  // A clock: 00:00:00.5
  std::size_t clock_end = number->start;
  while (clock_end < text.size() && (is_digit(text[clock_end]) || text[clock_end] == ':' || text[clock_end] == '.'))
    ++clock_end;
  const auto clock_text = std::string_view{text}.substr(number->start, clock_end - number->start);
  if (clock_text.find(':') != kNone) {
    const auto clock = read_time_text(clock_text);
    if (!clock || !clock->has_clock || clock->has_date) return std::nullopt;
    stated.seconds = clock->clock_s;
    return stated.seconds > 0 && stated.seconds <= kLongestInterval_s ? std::optional{stated} : std::nullopt;
  }
  const auto word = word_at(text, number->end);
  const auto unit = parse_unit(word);
  const auto label = read_header_text(std::string_view{text}.substr(0, number->start));
  if (any_rate && !hertz(word) &&
      !((small.find("δt") != kNone || small.find("Δt") != kNone) && unit && unit->quantity == Quantity::kTime))
    return std::nullopt;
  // "2,000 Hz", "0,500 s", "1,000 ms": thousands or decimals, whichever a thermocouple can be logged at.
  const bool in_hertz = hertz(word) || (rate && (!unit || unit->quantity != Quantity::kTime));
  if (number->as_decimal) {
    constexpr double kFastest_s = 0.002, kSlowest_s = 20;
    const double factor = unit && unit->quantity == Quantity::kTime ? unit->factor : 1;
    const double as_it_is = in_hertz ? 1 / number->value : number->value * factor;
    const double otherwise = in_hertz ? 1 / *number->as_decimal : *number->as_decimal * factor;
    const auto may_be = [](double s) { return s >= kFastest_s && s <= kSlowest_s; };
    if (!may_be(as_it_is) && may_be(otherwise)) number->value = *number->as_decimal;
  }
  if (hertz(word) || (rate && (!unit || unit->quantity != Quantity::kTime))) {
    const bool per_minute = small.find("per minute") != kNone || small.find("/min") != kNone;
    stated.seconds = number->value > 0 ? (per_minute ? 60 : 1) / number->value : 0;
    stated.unit_stated = hertz(word) || small.find("hz") != kNone || per_minute || small.find("per second") != kNone ||
                         small.find("/s") != kNone;
  } else if (unit && unit->quantity == Quantity::kTime) {
    stated.seconds = unit->factor < 1 ? number->value / (1 / unit->factor) : number->value * unit->factor;
  } else if (label.unit && label.unit->quantity == Quantity::kTime) {
    stated.seconds =
        label.unit->factor < 1 ? number->value / (1 / label.unit->factor) : number->value * label.unit->factor;
  } else if (interval && word.empty()) {
    // No thermocouple is logged every 50 seconds on its way through an oven: that many are milliseconds.
    constexpr double kMostSeconds = 20;
    stated.seconds = number->value <= kMostSeconds ? number->value : number->value / 1000;
    stated.unit_stated = false;
  } else {
    return std::nullopt;
  }
  return stated.seconds > 0 && stated.seconds <= kLongestInterval_s ? std::optional{stated} : std::nullopt;
}

std::optional<DateOrder> date_order_in(std::string_view original) {
  const std::string text = lower(original);
  struct Pattern {
    std::string_view text;
    DateOrder order;
  };
  static constexpr std::array kPatterns{
      Pattern{"yyyy", DateOrder::kYearMonthDay},  Pattern{"jjjj-", DateOrder::kYearMonthDay},
      Pattern{"aaaa-", DateOrder::kYearMonthDay}, Pattern{"dd/mm", DateOrder::kDayMonthYear},
      Pattern{"dd.mm", DateOrder::kDayMonthYear}, Pattern{"dd-mm", DateOrder::kDayMonthYear},
      Pattern{"tt.mm", DateOrder::kDayMonthYear}, Pattern{"tt/mm", DateOrder::kDayMonthYear},
      Pattern{"tt-mm", DateOrder::kDayMonthYear}, Pattern{"jj/mm", DateOrder::kDayMonthYear},
      Pattern{"jj.mm", DateOrder::kDayMonthYear}, Pattern{"jj-mm", DateOrder::kDayMonthYear},
      Pattern{"d/m/y", DateOrder::kDayMonthYear}, Pattern{"d.m.y", DateOrder::kDayMonthYear},
      Pattern{"d-m-y", DateOrder::kDayMonthYear}, Pattern{"mm/dd", DateOrder::kMonthDayYear},
      Pattern{"mm-dd", DateOrder::kMonthDayYear}, Pattern{"mm.dd", DateOrder::kMonthDayYear},
      Pattern{"m/d/y", DateOrder::kMonthDayYear}, Pattern{"m-d-y", DateOrder::kMonthDayYear},
      Pattern{"yy/mm", DateOrder::kYearMonthDay}, Pattern{"yy-mm", DateOrder::kYearMonthDay},
      Pattern{"yy.mm", DateOrder::kYearMonthDay}, Pattern{"dmy", DateOrder::kDayMonthYear},
      Pattern{"mdy", DateOrder::kMonthDayYear},   Pattern{"ymd", DateOrder::kYearMonthDay}};
  std::optional<DateOrder> found;
  std::size_t earliest = kNone;
  for (const auto& pattern : kPatterns) {
    const auto at = text.find(pattern.text);
    if (at < earliest) {
      earliest = at;
      found = pattern.order;
    }
  }
  return found;
}

namespace {

/// "Interval (s)" over "0.5": labels in one line and their values in the next, made lines of one label and one value.
std::vector<Statement> with_labels_above(const std::vector<Statement>& statements) {
  std::vector<Statement> all = statements;
  const auto filled = [](const Statement& s) {
    return std::count_if(s.cells.begin(), s.cells.end(), [](const std::string& cell) { return !cell.empty(); });
  };
  for (std::size_t i = 0; i + 1 < statements.size(); ++i) {
    const Statement &labels = statements[i], &values = statements[i + 1];
    if (values.line != labels.line + 1 || labels.text.find_first_of("0123456789") != kNone) continue;
    if (filled(labels) == 0 || filled(labels) != filled(values)) continue;
    for (std::size_t k = 0; k < std::min(labels.cells.size(), values.cells.size()); ++k) {
      if (labels.cells[k].empty() || values.cells[k].empty()) continue;
      constexpr Words kAsked = kIntervalWord | kRateWord | kColdJunctionWord | kTypeWord | kUnitWord | kScaleWord;
      if ((words_in(labels.cells[k]) & kAsked) == 0) continue;
      Statement pair;
      pair.line = values.line;
      pair.text = labels.cells[k] + ": " + values.cells[k];
      pair.cells = {labels.cells[k], values.cells[k]};
      all.push_back(std::move(pair));
    }
  }
  return all;
}

}  // namespace

Facts read_facts(const std::vector<Statement>& lines) {
  Facts facts;
  for (const Statement& statement : with_labels_above(lines)) {
    const std::string text = plain_forms(statement.text);
    const Words words = words_in(text);
    const bool may_say_how_often = !facts.interval && statement.text.find_first_of("0123456789") != kNone;
    if (may_say_how_often &&
        ((words & (kIntervalWord | kRateWord)) != 0 || speaks_of_rate(lower(text)) || rows_in_a_time(lower(text)))) {
      facts.interval = interval_in(statement.text, true);
      if (facts.interval) facts.interval->line = statement.line;
    }
    if (words == kNoWord) continue;
    if ((words & (kUnitWord | kTemperatureWord | kValueWord)) != 0 &&
        (words & (kColdJunctionWord | kIntervalWord | kRateWord)) == 0) {
      read_unit(statement, text, words, facts);
    }
    if (facts.thermocouple == 0 && (words & (kTypeWord | kTemperatureWord)) != 0)
      facts.thermocouple = thermocouple_named(text);
    if (!facts.cold_junction_C && (words & kColdJunctionWord) != 0) {
      if (const auto number = loose_number(text, 0)) {
        const auto unit = parse_unit(word_at(text, number->end));
        const bool fahrenheit = unit && unit->name == "degF", kelvin = unit && unit->name == "K";
        const double celsius = fahrenheit ? (number->value - 32) / 1.8
                               : kelvin   ? number->value - 273.15
                                          : number->value;
        if (celsius > -60 && celsius < 150) facts.cold_junction_C = celsius;
      }
    }
    if (!facts.scale && (words & kScaleWord) != 0) {
      if (const auto number = loose_number(text, 0); number && number->value > 0) facts.scale = number->value;
    }
    if (!facts.date_order && (words & (kDateWord | kTimeWord)) != 0) facts.date_order = date_order_in(text);
  }
  facts.span = span_in(lines);
  return facts;
}

std::optional<StatedInterval> interval_behind(const std::vector<Statement>& lines) {
  static constexpr std::array<std::string_view, 48> kLabels{"interval",
                                                            "sample interval",
                                                            "sampling interval",
                                                            "logging interval",
                                                            "log interval",
                                                            "recording interval",
                                                            "record interval",
                                                            "scan interval",
                                                            "measurement interval",
                                                            "measuring interval",
                                                            "sample period",
                                                            "sampling period",
                                                            "sample time",
                                                            "sampling time",
                                                            "sample rate",
                                                            "sampling rate",
                                                            "logging rate",
                                                            "scan rate",
                                                            "intervall",
                                                            "abtastintervall",
                                                            "messintervall",
                                                            "aufzeichnungsintervall",
                                                            "speicherintervall",
                                                            "abtastrate",
                                                            "messrate",
                                                            "abtastzeit",
                                                            "abtastfrequenz",
                                                            "intervalo",
                                                            "intervalo de muestreo",
                                                            "intervalo de registro",
                                                            "periodo de muestreo",
                                                            "frecuencia de muestreo",
                                                            "intervalle",
                                                            "intervalle de mesure",
                                                            "intervalle d'échantillonnage",
                                                            "période d'échantillonnage",
                                                            "fréquence d'échantillonnage",
                                                            "采样间隔",
                                                            "采样周期",
                                                            "采样频率",
                                                            "记录间隔",
                                                            "採樣間隔",
                                                            "取樣間隔",
                                                            "取樣週期",
                                                            "記錄間隔",
                                                            "サンプリング間隔",
                                                            "サンプリング周期",
                                                            "測定間隔"};
  for (const Statement& statement : lines) {
    const std::string text = lower(plain_forms(statement.text));
    const auto figure = text.find_first_of("0123456789");
    if (figure == kNone) continue;
    constexpr std::string_view kSigns = " \t;,|:=\"'";
    const auto trimmed = [&](std::string_view part) {
      while (!part.empty() && kSigns.find(part.front()) != kNone) part.remove_prefix(1);
      while (!part.empty() && kSigns.find(part.back()) != kNone) part.remove_suffix(1);
      return part;
    };
    auto label = trimmed(std::string_view{text}.substr(0, figure));
    std::string_view unit;  // "Interval (s)"
    if (!label.empty() && (label.back() == ')' || label.back() == ']')) {
      const auto open = label.find_last_of("([");
      if (open == kNone) continue;
      unit = label.substr(open + 1, label.size() - open - 2);
      label = trimmed(label.substr(0, open));
    }
    if (std::find(kLabels.begin(), kLabels.end(), label) == kLabels.end()) continue;
    const auto value = trimmed(std::string_view{text}.substr(figure));
    const auto number = loose_number(value, 0);
    if (!number || number->start != 0) continue;
    const auto behind = trimmed(value.substr(number->end));
    const auto says_when = [](std::string_view word) {
      const auto read = parse_unit(word);
      return hertz(word) || (read && read->quantity == Quantity::kTime);
    };
    const auto clock = value.find_first_not_of("0123456789:.") == kNone && value.find(':') != kNone;
    const bool whole = clock || (unit.empty() ? says_when(behind) : behind.empty() && says_when(unit));
    if (!whole) continue;
    if (auto stated = interval_in(statement.text, true)) {
      stated->line = statement.line;
      return stated;
    }
  }
  return std::nullopt;
}

}  // namespace ovenwright::log
