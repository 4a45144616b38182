#include "core/judge/phrases.h"

#include <fmt/format.h>

#include <array>
#include <charconv>

#include "core/judge/decide.h"

namespace ovenwright::judge {
namespace {

/// A zone's name as letters and a number: "10" is ("", 10), "C2" is ("C", 2).
struct Numbered {
  std::string letters;
  int number = -1;  ///< -1: no number at its end
};

Numbered numbered(const std::string& name) {
  const std::size_t digits = name.find_last_not_of("0123456789") + 1;
  Numbered parts{name.substr(0, digits), -1};
  if (digits < name.size()) std::from_chars(name.data() + digits, name.data() + name.size(), parts.number);
  return parts;
}

bool follows(const std::string& before, const std::string& after) {
  const auto a = numbered(before), b = numbered(after);
  return a.number >= 0 && b.number == a.number + 1 && a.letters == b.letters;
}

}  // namespace

std::string Phrases::number(const Argument& argument) const {
  if (const auto* text = std::get_if<std::string>(&argument.value)) return *text;
  if (const auto* whole = std::get_if<int>(&argument.value)) return std::to_string(*whole);
  if (const auto* names = std::get_if<std::vector<std::string>>(&argument.value)) return zones(*names);
  return number_text(std::get<double>(argument.value), argument.digits);
}

std::string Phrases::quantity(const Argument& argument) const {
  const std::string symbol = argument.unit ? unit_symbol(*argument.unit) : "";
  return symbol.empty() ? number(argument) : number(argument) + " " + symbol;
}

std::string Phrases::with_uncertainty(const Argument& value, const Argument& uncertainty) const {
  const std::string symbol = value.unit ? unit_symbol(*value.unit) : "";
  return number(value) + " ± " + number(uncertainty) + (symbol.empty() ? "" : " " + symbol);
}

std::string Phrases::moment(const Argument& argument) const { return number(argument); }

std::string Phrases::count_word(int count) const {
  constexpr std::array words = {"no",    "one",   "two",  "three", "four",   "five",  "six",
                                "seven", "eight", "nine", "ten",   "eleven", "twelve"};
  return count >= 0 && count < static_cast<int>(words.size()) ? words[static_cast<std::size_t>(count)]
                                                              : std::to_string(count);
}

std::string Phrases::times(const Argument& argument) const {
  const std::string often = Phrases::number(argument);
  return often == "1" ? "once" : often == "2" ? "twice" : often + " times";
}

std::vector<std::string> Phrases::zone_ranges(const std::vector<std::string>& names) {
  std::vector<std::string> out;
  for (std::size_t i = 0; i < names.size();) {
    std::size_t last = i;
    while (last + 1 < names.size() && follows(names[last], names[last + 1])) ++last;
    if (last >= i + 2) {
      out.push_back(names[i] + "\u2013" + names[last]);
    } else {
      for (std::size_t k = i; k <= last; ++k) out.push_back(names[k]);
    }
    i = last + 1;
  }
  return out;
}

std::string Phrases::zones(const std::vector<std::string>& names) const {
  const auto parts = zone_ranges(names);
  if (parts.empty()) return {};
  std::string text = (names.size() == 1 ? "zone " : "zones ") + parts[0];
  for (std::size_t i = 1; i < parts.size(); ++i) text += (i + 1 == parts.size() ? " and " : ", ") + parts[i];
  return text;
}

}  // namespace ovenwright::judge
