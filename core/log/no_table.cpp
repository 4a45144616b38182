#include "core/log/no_table.h"

#include <fmt/format.h>

#include <algorithm>

#include "core/log/text.h"
#include "core/log/units.h"
#include "core/log/words.h"

namespace ovenwright::log {
namespace {

std::string first_words(std::string_view text) {
  text = trim(text);
  constexpr std::size_t kMost = 200;
  const std::string quoted = quoted_for_message(text.substr(0, text.find_first_of("\r\n")), kMost);
  return quoted.substr(1, quoted.size() - 2);
}

/// The line of a header that ends the text, all rows of which are missing; 0: none.
int last_line_is_header(std::string_view text) {
  int line = 0, header = 0;
  for (std::size_t at = 0; at < text.size();) {
    const auto end = std::min(text.find_first_of("\r\n", at), text.size());
    const auto words = trim(text.substr(at, end - at));
    ++line;
    at = end + (text.substr(end).starts_with("\r\n") ? 2 : 1);
    if (words.empty()) continue;
    constexpr std::size_t kLongest = 4096;
    const bool cells = words.find_first_of(",;\t|") != std::string_view::npos && words.size() < kLongest;
    const bool names = cells && (words_in(words) & (kTimeWord | kDateWord | kIndexWord | kTemperatureWord)) != 0;
    const bool units = header > 0 && cells && parse_unit(words.substr(0, words.find_first_of(",;\t|")));
    if (!units) header = names ? line : 0;
  }
  return header;
}

}  // namespace

Error no_table(const std::string& name, std::string_view text) {
  const std::string expected = "a table of times and temperatures";
  constexpr std::size_t kMostBytes = 1U << 20;
  const int header = text.size() <= kMostBytes ? last_line_is_header(text) : 0;
  if (header > 0) {
    const std::string found = "a header and no rows behind it";
    return {
        ErrorCode::kParse, fmt::format("found {}, expected {}", found, expected), {name, header, 0}, found, expected};
  }
  const std::string words = first_words(text);
  return {ErrorCode::kParse,
          fmt::format("found {} and no rows of numbers, expected {}", quoted_for_message(words), expected),
          {name, 1, 0},
          words,
          expected};
}

}  // namespace ovenwright::log
