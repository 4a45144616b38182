#include "core/files/toml_slips.h"

#include <algorithm>
#include <array>
#include <string>

#include "core/files/toml_source.h"

namespace ovenwright::files {
namespace {

constexpr const char* kValue = "a number, true, false, or a text in quotes";

struct Slip {
  std::string_view parsed, said;  ///< words of the parser: what it was in, what it says
  const char* expected;
};
/// The first that fits holds.
constexpr std::array<Slip, 23> kSlips{{
    {"array", "encountered end-of-file", "a closing ]"},
    {"array", "expected comma or closing", "a comma or a closing ]"},
    {"table header", "", "a closing ]"},
    {"inline table", "", "a comma or a closing }"},
    {"string", "encountered end-of-file", "a closing quote"},
    {"string", "unescaped control characters", "a closing quote"},
    {"string", "escape", "\\\\ or / in place of \\"},
    {"unicode scalar sequence", "", "\\\\ or / in place of \\"},
    {"literal string", "", "a closing quote"},
    {"key-value pair", "expected '='", "\"=\" behind the key"},
    {"key-value pair", "encountered end-of-file", "\"=\" and a value"},
    {"key-value pair", "expected value", "a value"},
    {"key-value pair", "expected a comment or whitespace", "the end of the line"},
    {"boolean", "", kValue},
    {"floating-point", "", kValue},
    {"integer", "", kValue},
    {"date", "", kValue},
    {"time", "", kValue},
    {"date-time", "", kValue},
    {"value", "", kValue},
    {"key", "", "a key, \"=\" and a value"},
    {"root table", "", "a key, \"=\" and a value"},
    {"", "could not determine value type", kValue},
}};

/// The quoted word of "cannot redefine existing integer 'line'"; empty where there is none.
std::string quoted_in(std::string_view description) {
  const auto from = description.find('\''), to = description.find('\'', from + 1);
  return to == std::string_view::npos ? std::string{} : std::string{description.substr(from + 1, to - from - 1)};
}

/// What stands at an offset: a word in quotes, or what it is where it is none.
std::string standing_at(std::string_view text, std::size_t at) {
  constexpr std::size_t kMost = 40;
  if (at >= text.size()) return "the end of the file";
  const auto ends_word = [](char c) { return static_cast<unsigned char>(c) <= 0x20 || c == 0x7F; };
  if (text[at] == '\n' || text[at] == '\r') return "the end of the line";
  if (text[at] != ' ' && text[at] != '\t' && ends_word(text[at])) return "a control character";
  const auto from = std::min(text.find_first_not_of(" \t", at), text.size());
  std::size_t end = from;
  while (end < text.size() && end - from < kMost && !ends_word(text[end])) ++end;
  while (end < text.size() && (static_cast<unsigned char>(text[end]) & 0xC0U) == 0x80U) ++end;
  if (end == from) return standing_at(text, from);
  return "\"" + std::string{text.substr(from, end - from)} + "\"";
}

}  // namespace

Error in_plain_words(std::string_view description, Place place, std::string_view text) {
  const auto error = [&](std::string message, std::string found, std::string expected) {
    return Error{ErrorCode::kParse, std::move(message), std::move(place), std::move(found), std::move(expected)};
  };
  const auto says = [&](std::string_view words) { return description.find(words) != std::string_view::npos; };
  const std::string quoted = quoted_in(description);
  if (says("cannot redefine existing") && says("as array-of-tables")) {
    const std::string expected = "[[" + quoted + "]] each time";
    return error("found [" + quoted + "] and [[" + quoted + "]], expected " + expected, quoted, expected);
  }
  if (says("cannot redefine existing") && !quoted.empty() && !says("redefine existing table") &&
      !says("redefine existing array-of-tables"))
    return error("found \"" + quoted + "\" a second time, expected each key once", quoted, "each key once");
  if (says("expected a comment or whitespace, saw ','")) {
    const std::string expected = "a decimal point, or the end of the line";
    return error("found a comma behind a value, expected " + expected, "a comma", expected);
  }
  if (says("invalid utf-8")) {
    const std::string found = "bytes that are no UTF-8", expected = "a text in UTF-8";
    return error("found " + found + ", expected " + expected, found, expected);
  }
  const std::string found = standing_at(text, offset_of(text, static_cast<std::size_t>(std::max(place.line, 1)),
                                                        static_cast<std::size_t>(std::max(place.column, 1))));
  for (const auto& slip : kSlips) {
    if (!slip.parsed.empty() && !says("Error while parsing " + std::string{slip.parsed} + ":")) continue;
    if (!says(slip.said)) continue;
    const bool bare = slip.expected == kValue && found.starts_with('"');
    const std::string what = bare ? "a text without quotes" : found;
    return error("found " + what + ", expected " + slip.expected, what, slip.expected);
  }
  return error("no valid TOML: " + std::string{description}, found, "TOML");
}

}  // namespace ovenwright::files
