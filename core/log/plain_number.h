#pragma once
#include <bit>
#include <cstdint>
#include <cstring>

namespace ovenwright::log {

/// 10^0 to 10^22: the powers of ten that a double holds exactly.
inline constexpr double kExactPowers[] = {1e0,  1e1,  1e2,  1e3,  1e4,  1e5,  1e6,  1e7,  1e8,  1e9,  1e10, 1e11,
                                          1e12, 1e13, 1e14, 1e15, 1e16, 1e17, 1e18, 1e19, 1e20, 1e21, 1e22};
inline constexpr int kMostExactPower = 22;
inline constexpr std::uint64_t kMostExactInteger = std::uint64_t{1} << 53;
/// Bytes that must be readable from the first character of a plain number on.
inline constexpr std::size_t kPlainNumberReach = 32;

/// Digit by digit, up to 19 of them. `p` stands behind the sign.
inline bool read_plain_digits(const char*& p, char decimal, double& magnitude) noexcept {
  const char* q = p;
  std::uint64_t mantissa = 0;
  int digits = 0, decimals = 0;
  for (; *q >= '0' && *q <= '9'; ++q, ++digits) {
    if (digits == 19) return false;
    mantissa = mantissa * 10 + static_cast<std::uint64_t>(*q - '0');
  }
  if (*q == decimal) {
    for (++q; *q >= '0' && *q <= '9'; ++q, ++digits, ++decimals) {
      if (digits == 19) return false;
      mantissa = mantissa * 10 + static_cast<std::uint64_t>(*q - '0');
    }
  }
  if (digits == 0 || mantissa > kMostExactInteger) return false;
  magnitude = static_cast<double>(mantissa) / kExactPowers[decimals];
  p = q;
  return true;
}

/// The fast way for the numbers of a regular log: an optional '-', digits, perhaps a decimal sign with digits. Numbers
/// of at most 7 characters go through one word of 8 bytes, longer ones digit by digit. Exactly rounded: a whole number
/// up to 2^53 divided by a power of ten up to 10^22 is one correctly rounded operation on two exact doubles
/// (W. D. Clinger, How to read floating point numbers accurately, PLDI 1990).
/// @param p  kPlainNumberReach bytes can be read from here on; moved behind the number where it succeeds
/// False where the text is of another kind, or needs more than that arithmetic; `p` is then where it was.
inline bool read_plain_number(const char*& p, char decimal, double& value) noexcept {
  constexpr std::uint64_t kZeros = 0x3030303030303030, kHigh = 0x8080808080808080;
  const bool negative = *p == '-';
  const char* q = p + (negative ? 1 : 0);
  double magnitude = 0;
  std::uint64_t word = 0;
  std::memcpy(&word, q, 8);
  const std::uint64_t digit = word ^ kZeros;  // a digit's byte is now its value, 0 to 9
  std::uint64_t other = (((digit & ~kHigh) + 0x7676767676767676) | digit) & kHigh;
  const int whole = std::countr_zero(other) / 8;
  int length = whole, decimals = 0;
  std::uint64_t digits = digit;
  if (whole < 8 && q[whole] == decimal) {
    other &= other - 1;
    length = std::countr_zero(other) / 8;
    decimals = length - whole - 1;
    const std::uint64_t before = (std::uint64_t{1} << (8 * whole)) - 1;
    digits = (digit & before) | ((digit >> 8) & ~before);  // the decimal sign drops out
  }
  const int count = length - (length > whole ? 1 : 0);
  if (std::endian::native == std::endian::little && length < 8 && count > 0) {
    digits <<= 8 * (8 - count);  // the first digit in the lowest byte that is left, zeros before it
    digits = (digits * (1 + (std::uint64_t{10} << 8))) >> 8 & 0x00FF00FF00FF00FF;
    digits = (digits * (1 + (std::uint64_t{100} << 16))) >> 16 & 0x0000FFFF0000FFFF;
    digits = (digits * (1 + (std::uint64_t{10000} << 32))) >> 32;
    magnitude = static_cast<double>(digits) / kExactPowers[decimals];
    q += length;
  } else if (!read_plain_digits(q, decimal, magnitude)) {
    return false;
  }
  value = negative ? -magnitude : magnitude;
  p = q;
  return true;
}

}  // namespace ovenwright::log
