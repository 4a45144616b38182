#include "core/log/number.h"

#include <fast_float/fast_float.h>

#include <cstdint>
#include <limits>
#include <string>

#include "core/log/plain_number.h"
#include "core/log/text.h"

namespace ovenwright::log {
namespace {

bool is_digit(char c) { return c >= '0' && c <= '9'; }

/// Digits as they come, with what the exact arithmetic on short numbers needs.
class Decimal {
 public:
  void add(char digit, bool fraction) {
    if (mantissa_ < kRoom) {
      mantissa_ = mantissa_ * 10 + static_cast<std::uint64_t>(digit - '0');
    } else {
      short_ = false;
    }
    power_ -= fraction ? 1 : 0;
    text_ += digit;
  }
  void sign(bool negative) { negative_ = negative; }
  void raise(int power) { power_ += power; }

  double value() const {
    if (short_ && mantissa_ <= kMostExactInteger && power_ >= -kMostExactPower && power_ <= kMostExactPower) {
      const double exact = static_cast<double>(mantissa_);
      const double magnitude = power_ < 0 ? exact / kExactPowers[-power_] : exact * kExactPowers[power_];
      return negative_ ? -magnitude : magnitude;
    }
    const std::string text = (negative_ ? "-" : "") + text_ + "e" + std::to_string(power_);
    double value = 0;
    fast_float::from_chars(text.data(), text.data() + text.size(), value);
    return value;
  }

 private:
  static constexpr std::uint64_t kRoom = 900'000'000'000'000'000;
  std::uint64_t mantissa_ = 0;
  int power_ = 0;
  bool short_ = true, negative_ = false;
  std::string text_;
};

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
  Decimal digits;
  std::size_t i = 0;
  if (i < text.size() && (text[i] == '-' || text[i] == '+')) {
    digits.sign(text[i] == '-');
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
    if (number.digits == 0 && number.decimals == 0) return std::nullopt;
  }
  if (number.digits == 0 && number.decimals <= 0) return std::nullopt;
  int power = 0;
  if (const std::size_t length = exponent_at(text, i, power)) {
    if (number.grouping != 0) return std::nullopt;  // nobody groups a mantissa: the sign is a decimal one
    digits.raise(power);
    number.exponent = true;
    i += length;
  }
  number.value = digits.value();
  number.rest = trim(text.substr(i));
  return number;
}

}  // namespace ovenwright::log
