#include "core/files/toml_source.h"

#include <algorithm>

namespace ovenwright::files {
namespace {

std::size_t string_end(std::string_view text, std::size_t begin) {
  const char quote = text[begin];
  const bool escapes = quote == '"';
  const bool multiline = text.substr(begin, 3) == (escapes ? R"(""")" : "'''");
  std::size_t at = begin + (multiline ? 3 : 1);
  while (at < text.size()) {
    if (escapes && text[at] == '\\') {
      at += 2;
    } else if (text[at] != quote) {
      ++at;
    } else if (!multiline) {
      return at + 1;
    } else {
      std::size_t quotes = 0;
      while (at + quotes < text.size() && text[at + quotes] == quote) ++quotes;
      at += quotes;
      if (quotes >= 3) return at;  // up to two quotes may stand before the closing three
    }
  }
  return text.size();
}

}  // namespace

std::size_t offset_of(std::string_view text, std::size_t line, std::size_t column) {
  std::size_t at = 0;
  for (; line > 1; --line) {
    const std::size_t newline = text.find('\n', at);
    if (newline == std::string_view::npos) return text.size();
    at = newline + 1;
  }
  for (; column > 1 && at < text.size(); --column) {
    ++at;
    while (at < text.size() && (static_cast<unsigned char>(text[at]) & 0xC0U) == 0x80U) ++at;
  }
  return at;
}

std::size_t value_end(std::string_view text, std::size_t begin) {
  std::size_t at = begin;
  std::size_t depth = 0;
  while (at < text.size()) {
    const char c = text[at];
    if (c == '"' || c == '\'') {
      at = string_end(text, at);
      if (depth == 0) return at;
    } else if (c == '[' || c == '{') {
      ++depth;
      ++at;
    } else if (depth > 0 && (c == ']' || c == '}')) {
      ++at;
      if (--depth == 0) return at;
    } else if (depth > 0) {
      at = c == '#' ? std::min(text.find('\n', at), text.size()) : at + 1;
    } else {
      return std::min(text.find_first_of(",]}# \t\r\n", at), text.size());
    }
  }
  return text.size();
}

}  // namespace ovenwright::files
