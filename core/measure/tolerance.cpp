#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <optional>
#include <string>

#include "core/emf/emf.h"
#include "core/measure/measure.h"

namespace ovenwright::measure {
namespace {

using emf::Type;

struct Class {
  std::string_view types;  ///< letters
  std::string_view name;
  Tolerance tolerance;
};

// Source: IEC 60584-1:2013 (classes; numbers of IEC 60584-2:1982 with amendment 1:1989) and ASTM E230/E230M-12
// (special, standard). Each holds over the whole of a reflow or wave profile, from -40 °C (IEC; R and S from 0 °C) or 0
// °C (ASTM, and below it within 110 °C, where its own limits for the cold are no larger than the floor) up to 350 °C
// and more.
constexpr auto kClasses = std::to_array<Class>({
    {"KJNE", "class 1", {1.5, 0.004}},
    {"KJNE", "class 2", {2.5, 0.0075}},
    {"T", "class 1", {0.5, 0.004}},
    {"T", "class 2", {1.0, 0.0075}},
    {"RS", "class 1", {1.0, 0}},  // grows above 1100 °C only
    {"RS", "class 2", {1.5, 0.0025}},
    {"KJN", "special", {1.1, 0.004}},
    {"KJN", "standard", {2.2, 0.0075}},
    {"T", "special", {0.5, 0.004}},
    {"T", "standard", {1.0, 0.0075}},
    {"E", "special", {1.0, 0.004}},
    {"E", "standard", {1.7, 0.005}},
    {"RS", "special", {0.6, 0.001}},
    {"RS", "standard", {1.5, 0.0025}},
});

/// Lower case, "type" in front and commas left out, single blanks between words.
std::string plain_words(std::string_view text) {
  std::string words;
  for (const char c : text) {
    const char lower = c >= 'A' && c <= 'Z' ? static_cast<char>(c + 32) : c;
    if (lower != ' ' && lower != '\t' && lower != ',') {
      words += lower;
    } else if (!words.empty() && words.back() != ' ') {
      words += ' ';
    }
  }
  if (words.ends_with(' ')) words.pop_back();
  if (words.starts_with("type ")) words.erase(0, 5);
  return words;
}

Error unknown(std::string_view found, std::string_view why) {
  const std::string expected =
      "a type (K, J, T, E, N, R or S) with \"class 1\" or \"class 2\" (IEC 60584-1) or \"special\" or \"standard\" "
      "(ASTM E230), "
      "such as \"K class 1\"";
  return {ErrorCode::kBadArgument,
          fmt::format("found thermocouple \"{}\"{}, expected {}", found, why, expected),
          {},
          fmt::format("\"{}\"", found),
          expected};
}

}  // namespace

Result<Tolerance> tolerance_of(std::string_view thermocouple) {
  const auto words = plain_words(thermocouple);
  const auto blank = words.find(' ');
  const auto type = emf::type_of(std::string_view{words}.substr(0, blank));
  if (!type || blank == std::string::npos) return unknown(thermocouple, "");
  const auto name = std::string_view{words}.substr(blank + 1);
  const auto found = std::ranges::find_if(kClasses, [&](const Class& c) {
    return c.name == name && c.types.find(emf::type_name(*type)) != std::string_view::npos;
  });
  if (found != kClasses.end()) return found->tolerance;
  if (*type == Type::kB) return unknown(thermocouple, ", whose tolerances begin at 600 °C");
  if (name == "class 3") return unknown(thermocouple, ", a class that ends at 40 °C");
  return unknown(thermocouple, "");
}

}  // namespace ovenwright::measure
