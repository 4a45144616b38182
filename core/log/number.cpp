#include "core/log/number.h"

#include <fast_float/fast_float.h>

#include <algorithm>
#include <cstdint>
#include <iterator>
#include <string>

#include "core/log/plain_number.h"
#include "core/log/text.h"

namespace ovenwright::log {
namespace {

bool is_digit(char c) { return c >= '0' && c <= '9'; }

/// The digits of a number as they come.
struct Digits {
  std::uint64_t mantissa = 0;
  int power = 0;
  bool fits = true;  ///< all digits are in the mantissa

  void add(char digit, bool fraction) {
    constexpr std::uint64_t kRoom = 900'000'000'000'000'000;
    if (mantissa < kRoom) {
      mantissa = mantissa * 10 + static_cast<std::uint64_t>(digit - '0');
    } else {
      fits = false;
    }
    power -= fraction ? 1 : 0;
  }
  bool exact() const {
    return fits && mantissa <= kMostExactInteger && power >= -kMostExactPower && power <= kMostExactPower;
  }
};

/// @param text  the number with all its separators: needed where the digits do not fit
double magnitude_of(const Digits& digits, std::string_view text) {
  if (digits.exact()) {
    const double whole = static_cast<double>(digits.mantissa);
    return digits.power < 0 ? whole / kExactPowers[-digits.power] : whole * kExactPowers[digits.power];
  }
  std::string plain;
  std::copy_if(text.begin(), text.end(), std::back_inserter(plain), is_digit);
  plain += "e" + std::to_string(digits.power);
  double value = 0;
  fast_float::from_chars(plain.data(), plain.data() + plain.size(), value);
  return value;
}

/// How many bytes a thousands separator takes here: one that is followed by exactly three digits. 0: none.
std::size_t grouping_at(std::string_view text, std::size_t i, char separator) {
  if (i >= text.size() || text[i] != separator) return 0;
  for (std::size_t k = i + 1; k <= i + 3; ++k) {
    if (k >= text.size() || !is_digit(text[k])) return 0;
  }
  return i + 4 < text.size() && is_digit(text[i + 4]) ? 0 : 1;
}

std::size_t exponent_at(std::string_view text, std::size_t i, int& power) {
  if (i >= text.size() || (text[i] != 'e' && text[i] != 'E')) return 0;
  std::size_t k = i + 1;
  const bool negative = k < text.size() && text[k] == '-';
  if (k < text.size() && (text[k] == '-' || text[k] == '+')) ++k;
  if (k >= text.size() || !is_digit(text[k])) return 0;
  int value = 0;
  for (; k < text.size() && is_digit(text[k]); ++k) value = value < 100000 ? value * 10 + (text[k] - '0') : value;
  power = negative ? -value : value;
  return k - i;
}

}  // namespace

std::optional<NumberText> read_number(std::string_view text, char decimal) {
  NumberText number;
  Digits digits;
  std::size_t i = 0;
  bool negative = false;
  if (i < text.size() && (text[i] == '-' || text[i] == '+')) {
    negative = text[i] == '-';
    ++i;
    while (i < text.size() && text[i] == ' ') ++i;
  }
  const std::size_t first = i;
  const char other = decimal == '.' ? ',' : '.';
  while (i < text.size()) {
    if (is_digit(text[i])) {
      digits.add(text[i], false);
      ++number.digits;
      ++i;
      continue;
    }
    const char separator = text[i];
    const bool separates = separator == other || separator == ' ' || separator == '\'';
    const bool may_group = number.grouping == separator || (number.grouping == 0 && i - first <= 3 && i > first);
    if (!separates || !may_group || grouping_at(text, i, separator) == 0) break;
    number.grouping = separator;
    ++i;
  }
  if (i < text.size() && text[i] == decimal) {
    number.decimals = 0;
    for (++i; i < text.size() && is_digit(text[i]); ++i, ++number.decimals) digits.add(text[i], true);
  }
  if (number.digits == 0 && number.decimals <= 0) return std::nullopt;
  const auto figures = text.substr(first, i - first);
  int power = 0;
  if (const std::size_t length = exponent_at(text, i, power)) {
    if (number.grouping != 0) return std::nullopt;  // nobody groups a mantissa: the sign is a decimal one
    digits.power += power;
    number.exponent = true;
    i += length;
  }
  const double magnitude = magnitude_of(digits, figures);
  number.value = negative ? -magnitude : magnitude;
  if (i < text.size()) number.rest = trim(text.substr(i));
  return number;
}

}  // namespace ovenwright::log
