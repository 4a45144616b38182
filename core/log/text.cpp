#include "core/log/text.h"

namespace ovenwright::log {
namespace {

constexpr char32_t kReplacement = 0xFFFD;

bool is_space(char32_t c) {
  return c == ' ' || (c >= '\t' && c <= '\r') || c == 0xA0 || c == 0x1680 || (c >= 0x2000 && c <= 0x200F) ||
         (c >= 0x2028 && c <= 0x202F) || c == 0x205F || c == 0x2060 || (c >= 0x2066 && c <= 0x2069) || c == 0x3000 ||
         c == 0xFEFF || c == 0x61C;
}

/// Figures of the Arabic and Persian scripts as ASCII, their decimal and thousands signs too; 0 for all else.
char figure_of(char32_t c) {
  if (c >= 0x660 && c <= 0x669) return static_cast<char>('0' + (c - 0x660));
  if (c >= 0x6F0 && c <= 0x6F9) return static_cast<char>('0' + (c - 0x6F0));
  return c == 0x66B ? '.' : c == 0x66C ? '\'' : '\0';
}

bool is_minus(char32_t c) { return (c >= 0x2010 && c <= 0x2015) || c == 0x2212 || c == 0xFE63; }

}  // namespace

char32_t decode_character(std::string_view text, std::size_t& length) {
  const auto byte = [&](std::size_t i) { return static_cast<unsigned char>(text[i]); };
  length = 1;
  if (text.empty()) return kReplacement;
  const unsigned first = byte(0);
  if (first < 0x80) return first;
  const std::size_t wanted = first >= 0xF0 ? 4 : first >= 0xE0 ? 3 : first >= 0xC2 ? 2 : 0;
  if (wanted == 0 || wanted > text.size() || first > 0xF4) return kReplacement;
  char32_t value = first & (0x7FU >> wanted);
  for (std::size_t i = 1; i < wanted; ++i) {
    if ((byte(i) & 0xC0U) != 0x80) return kReplacement;
    value = (value << 6) | (byte(i) & 0x3FU);
  }
  length = wanted;
  return value;
}

void append_character(std::string& out, char32_t c) {
  const auto put = [&](char32_t byte) { out += static_cast<char>(static_cast<unsigned char>(byte)); };
  if (c < 0x80) return put(c);
  if (c < 0x800) {
    put(0xC0 | (c >> 6));
  } else if (c < 0x10000) {
    put(0xE0 | (c >> 12));
    put(0x80 | ((c >> 6) & 0x3F));
  } else {
    put(0xF0 | (c >> 18));
    put(0x80 | ((c >> 12) & 0x3F));
    put(0x80 | ((c >> 6) & 0x3F));
  }
  put(0x80 | (c & 0x3F));
}

std::string_view trim(std::string_view text) {
  while (!text.empty()) {
    std::size_t length = 1;
    if (!is_space(decode_character(text, length))) break;
    text.remove_prefix(length);
  }
  while (!text.empty()) {
    std::size_t start = text.size() - 1;
    while (start > 0 && text.size() - start < 4 && (static_cast<unsigned char>(text[start]) & 0xC0U) == 0x80) --start;
    std::size_t length = 1;
    const char32_t last = decode_character(text.substr(start), length);
    if (length != text.size() - start || !is_space(last)) break;
    text.remove_suffix(length);
  }
  return text;
}

std::string plain_forms(std::string_view text) {
  std::string out;
  out.reserve(text.size());
  while (!text.empty()) {
    std::size_t length = 1;
    const char32_t c = decode_character(text, length);
    if (c < 0x80) {
      out += static_cast<char>(c);
    } else if (c >= 0xFF01 && c <= 0xFF5E) {
      out += static_cast<char>(c - 0xFF01 + '!');
    } else if (is_minus(c)) {
      out += '-';
    } else if (const char figure = figure_of(c)) {
      out += figure;
    } else if (is_space(c)) {
      out += ' ';
    } else if (c == 0xBA || c == 0x2DA || c == 0x2218 || c == 0xB0) {
      out += "°";
    } else if (c == 0x2103) {
      out += "°C";
    } else if (c == 0x2109) {
      out += "°F";
    } else if (c == 0x2019 || c == 0x2018 || c == 0x2032) {
      out += '\'';
    } else if (c == 0x3BC) {
      out += "µ";
    } else {
      out.append(text.substr(0, length));
    }
    text.remove_prefix(length);
  }
  return out;
}

namespace {

/// Latin letters with marks (U+0100 to U+017E) stand in pairs, capital first; Cyrillic capitals 0x20 before the small.
void small_letter_of_two_bytes(std::string& text, std::size_t at) {
  const auto first = static_cast<unsigned char>(text[at]);
  if ((first != 0xC4 && first != 0xC5 && first != 0xD0) || at + 1 >= text.size()) return;
  const auto second = static_cast<unsigned char>(text[at + 1]);
  const unsigned c = ((first & 0x1FU) << 6) | (second & 0x3FU);
  unsigned small = c;
  if (first == 0xD0) {
    small = c >= 0x410 && c <= 0x42F ? c + 0x20 : c == 0x401 ? 0x451U : c;
  } else if (c != 0x130 && c != 0x131) {  // İ and ı are no pair
    const bool odd_is_capital = (c >= 0x139 && c <= 0x148) || (c >= 0x179 && c <= 0x17E);
    if (c != 0x138 && c != 0x178 && c <= 0x17E && (c % 2 == 1) == odd_is_capital) small = c + 1;
  }
  text[at] = static_cast<char>(0xC0 | (small >> 6));
  text[at + 1] = static_cast<char>(0x80 | (small & 0x3F));
}

}  // namespace

std::string lower(std::string_view text) {
  std::string out = plain_forms(text);
  for (std::size_t i = 0; i < out.size(); ++i) {
    if (out[i] >= 'A' && out[i] <= 'Z') out[i] = static_cast<char>(out[i] - 'A' + 'a');
    // À to Þ in UTF-8 are C3 80 to C3 9E, their small letters 0x20 further on; C3 97 is the multiplication sign.
    const auto next = i + 1 < out.size() ? static_cast<unsigned char>(out[i + 1]) : 0U;
    if (static_cast<unsigned char>(out[i]) == 0xC3 && next >= 0x80 && next <= 0x9E && next != 0x97) {
      out[i + 1] = static_cast<char>(next + 0x20);
    }
    small_letter_of_two_bytes(out, i);
  }
  return out;
}

std::string quoted_for_message(std::string_view text, std::size_t most) {
  std::string out = "\"";
  std::size_t used = 0;
  while (used < text.size()) {
    std::size_t length = 1;
    const char32_t c = decode_character(text.substr(used), length);
    if (used + length > most) return out + "…\"";
    if (c < 0x20 || c == 0x7F) {
      out += ' ';
    } else if (c == kReplacement) {
      append_character(out, c);
    } else {
      out.append(text.substr(used, length));
    }
    used += length;
  }
  return out + "\"";
}

}  // namespace ovenwright::log
