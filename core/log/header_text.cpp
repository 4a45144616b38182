#include "core/log/header_text.h"

#include <algorithm>
#include <array>
#include <utility>

#include "core/log/text.h"

namespace ovenwright::log {
namespace {

constexpr std::string_view kTypes = "kjtenrsb";

bool letter_or_digit(char c) {
  return (c >= 'a' && c <= 'z') || (c >= '0' && c <= '9') || static_cast<unsigned char>(c) >= 0x80;
}

/// Brackets of any script become round ones, line breaks blanks.
std::string with_plain_brackets(std::string_view text) {
  std::string out{text};
  static constexpr std::array<std::pair<std::string_view, std::string_view>, 12> kForms{{{"（", "("},
                                                                                         {"）", ")"},
                                                                                         {"［", "["},
                                                                                         {"］", "]"},
                                                                                         {"【", "["},
                                                                                         {"】", "]"},
                                                                                         {"〔", "("},
                                                                                         {"〕", ")"},
                                                                                         {"\r\n", " "},
                                                                                         {"\n", " "},
                                                                                         {"\r", " "},
                                                                                         {"\t", " "}}};
  for (const auto& [from, to] : kForms) {
    for (auto at = out.find(from); at != std::string::npos; at = out.find(from, at)) out.replace(at, from.size(), to);
  }
  return out;
}

std::string without(std::string_view text, std::size_t from, std::size_t to) {
  const auto before = trim(text.substr(0, from)), after = trim(text.substr(to));
  std::string out{before};
  if (!before.empty() && !after.empty()) out += ' ';
  out.append(after);
  return out;
}

void strip_end(std::string& name) {
  std::string_view view = trim(name);
  while (!view.empty() && std::string_view{"_/,:;-|"}.find(view.back()) != std::string_view::npos) {
    view.remove_suffix(1);
    view = trim(view);
  }
  name = std::string{view};
}

bool take_unit(HeaderText& header, const UnitText& unit, std::string name) {
  header.unit = unit;
  header.name = std::move(name);
  strip_end(header.name);
  return true;
}

/// A unit among several things in one pair of brackets: "°C, type K", "s, relative".
std::optional<UnitText> unit_among(std::string_view inside) {
  if (const auto whole = parse_unit(inside)) return whole;
  if (inside.find_first_of("0123456789") != std::string_view::npos) return std::nullopt;  // "0.5 s": a quantity
  const bool type = thermocouple_named(inside) != 0;                                      // "type K" is none of kelvin
  std::size_t start = 0;
  std::optional<UnitText> found;
  while (start <= inside.size()) {
    const auto end = inside.find_first_of(",;| ", start);
    const auto unit = parse_unit(inside.substr(start, end - start));
    if (unit && !found && !(unit->weak && type)) found = unit;
    if (end == std::string_view::npos) break;
    start = end + 1;
  }
  return start == 0 ? std::nullopt : found;
}

bool unit_in_brackets(HeaderText& header) {
  const std::string_view text = header.name;
  std::size_t to = text.size();
  while (true) {
    const auto close = text.find_last_of(")]}>", to == 0 ? 0 : to - 1);
    if (close == std::string_view::npos) return false;
    const char opener = text[close] == ')' ? '(' : text[close] == ']' ? '[' : text[close] == '}' ? '{' : '<';
    const auto open = text.rfind(opener, close);
    if (open == std::string_view::npos) return false;
    const auto inside = trim(text.substr(open + 1, close - open - 1));
    if (const auto unit = unit_among(inside)) return take_unit(header, *unit, without(text, open, close + 1));
    if (const std::string small = lower(inside); small == "deg" || small == "degree" || small == "degrees") {
      header.name = without(text, open, close + 1);  // of which scale the numbers tell
      strip_end(header.name);
      return true;
    }
    if (header.bracket.empty()) header.bracket = std::string{inside};
    if (open == 0) return false;
    to = open;
  }
}

/// "Time in s", "T1 in °C".
bool unit_after_in(HeaderText& header) {
  const std::string text = header.name;
  const std::string small = lower(text);
  if (small.size() != text.size()) return false;
  for (const std::string_view word : {" in ", " en "}) {
    const auto at = small.rfind(word);
    if (at == std::string::npos) continue;
    if (const auto unit = parse_unit(std::string_view{text}.substr(at + word.size()))) {
      return take_unit(header, *unit, text.substr(0, at));
    }
  }
  return false;
}

/// "T1 / °C", "Zeit/s", "Temp, °C", "TC1_degC".
bool unit_at_end(HeaderText& header) {
  const std::string text = header.name;
  const auto at = text.find_last_of("/_ ,:;-.");
  if (at == std::string::npos || at == 0) return false;
  const auto unit = parse_unit(std::string_view{text}.substr(at + 1));
  if (!unit || unit->weak) {
    // "deg C", "deg. C", "grad C": the unit itself holds a blank.
    constexpr const char* kSeparators = "/_ ,:;-.";
    const auto word_end = text.find_last_not_of(kSeparators, at);
    const auto before = word_end == std::string::npos ? word_end : text.find_last_of(kSeparators, word_end);
    const auto two = before == std::string::npos ? std::nullopt : parse_unit(std::string_view{text}.substr(before + 1));
    const bool of_two_words = two && !two->weak && two->quantity == Quantity::kTemperature && two->scale == 1;
    if (of_two_words || (!unit && two && !two->weak && two->quantity != Quantity::kOther))
      return take_unit(header, *two, text.substr(0, before));
    if (!unit) return false;
  }
  const bool stated = text[at] == '/';
  if (!unit->weak && (unit->quantity != Quantity::kOther || stated || text[at] == ',')) {
    return take_unit(header, *unit, text.substr(0, at));
  }
  if (stated && unit->weak) return take_unit(header, *unit, text.substr(0, at));
  header.ending = unit;
  header.name_before_ending = text.substr(0, at);
  strip_end(header.name_before_ending);
  return false;
}

/// "TC1°C", "温度℃": a ring cannot belong to a name.
bool unit_attached(HeaderText& header) {
  const std::string small = lower(header.name);
  for (const std::string_view ring : {"°c", "°f", "°k"}) {
    const auto at = small.find(ring);
    if (at == std::string::npos) continue;
    const auto next = at + ring.size();
    if (next < small.size() && letter_or_digit(small[next]) && static_cast<unsigned char>(small[next]) < 0x80) continue;
    // The plain forms can be shorter or longer than the text, so the name is cut there.
    const std::string plain = plain_forms(header.name);
    return take_unit(header, *parse_unit(ring), without(plain, at, next));
  }
  return false;
}

/// "U1 (type T)", "U1 [Typ K]": the type is known by now and no part of the name.
void take_off_type(HeaderText& header) {
  if (header.thermocouple == 0) return;
  const auto open = header.name.find_last_of("(["), close = header.name.find_last_of(")]");
  if (open == std::string::npos || open == 0 || close == std::string::npos || close < open) return;
  const auto inside = std::string_view{header.name}.substr(open + 1, close - open - 1);
  constexpr std::size_t kLongest = 8;
  const bool type = inside.size() > 2 && inside.size() <= kLongest && thermocouple_named(inside) != 0 &&
                    inside.find_first_of("0123456789") == std::string_view::npos;
  if (!type) return;
  header.name = without(header.name, open, close + 1);
  strip_end(header.name);
}

}  // namespace

char thermocouple_named(std::string_view original) {
  const std::string text = lower(original);
  const auto upper = [](char c) { return static_cast<char>(c - 'a' + 'A'); };
  const auto type_at = [&](std::size_t i) -> char {
    while (i < text.size() &&
           (text[i] == ' ' || text[i] == '-' || text[i] == ':' || text[i] == '=' || text[i] == ';' || text[i] == ',' ||
            text[i] == '\t' || text[i] == '_' || text[i] == '"' || text[i] == '(')) {
      ++i;
    }
    if (text.compare(i, 3, "：") == 0) i += 3;
    while (i < text.size() && text[i] == ' ') ++i;
    const bool alone = i < text.size() && kTypes.find(text[i]) != std::string_view::npos &&
                       (i + 1 == text.size() || !letter_or_digit(text[i + 1]));
    return alone ? upper(text[i]) : '\0';
  };
  for (const std::string_view word : {"type", "typ", "tipo", "thermocouple", "thermoelement", "termopar", "类型",
                                      "類型", "タイプ", "热电偶", "熱電偶", "熱電対", "tc"}) {
    for (auto at = text.find(word); at != std::string::npos; at = text.find(word, at + 1)) {
      if (at > 0 && static_cast<unsigned char>(text[at]) < 0x80 && text[at - 1] >= 'a' && text[at - 1] <= 'z' &&
          word.size() < 6) {
        // "thermoelementtyp" ends in "typ" rightly; other words that do ("prototyp") have no lone letter behind them.
        if (word != "typ" && word != "type") continue;
      }
      // "k-type" is no "typ e".
      if (word == "typ" && at + word.size() < text.size() && text[at + word.size()] == 'e') continue;
      if (const char type = type_at(at + word.size())) return type;
    }
  }
  for (const char type : kTypes) {
    for (const std::string_view word :
         {"-type", " type", "-typ", " typ", "型", "-thermo", "-element", " thermocouple", " 热电偶", " 熱電偶"}) {
      const std::string pattern = type + std::string{word};
      const auto at = text.find(pattern);
      if (at != std::string::npos && (at == 0 || !letter_or_digit(text[at - 1]))) return upper(type);
    }
  }
  return '\0';
}

HeaderText read_header_text(std::string_view cell) {
  HeaderText header;
  header.whole = std::string{trim(with_plain_brackets(cell))};
  if (header.whole.size() > 2 && header.whole.front() == '\'' && header.whole.back() == '\'')
    header.whole = std::string{trim(std::string_view{header.whole}.substr(1, header.whole.size() - 2))};
  // One quote without its other half is no part of a name; two may be inches or a word in quotes.
  if (std::count(header.whole.begin(), header.whole.end(), '"') == 1) {
    const bool first = header.whole.front() == '"';
    if (first || (header.whole.back() == '"' && header.whole.find_first_of("0123456789") == std::string::npos))
      header.whole = std::string{trim(std::string_view{header.whole}.substr(first ? 1 : 0, header.whole.size() - 1))};
  }
  header.name = header.whole;
  header.words = words_in(header.whole);
  header.thermocouple = thermocouple_named(header.whole);
  if (const auto unit = parse_unit(header.whole); unit && !unit->weak) {
    take_unit(header, *unit, "");
    return header;
  }
  unit_in_brackets(header) || unit_after_in(header) || unit_attached(header) || unit_at_end(header);
  take_off_type(header);
  return header;
}

}  // namespace ovenwright::log
