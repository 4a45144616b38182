#include "core/log/fast_rows.h"

#include <array>
#include <bit>
#include <cstring>

#include "core/log/byte_masks.h"
#include "core/log/plain_number.h"

namespace ovenwright::log {
namespace {

constexpr std::uint64_t kZeros = 0x3030303030303030, kHigh = 0x8080808080808080, kAll = ~std::uint64_t{0};

/// For a number of so many digits the bytes of a word in which they stand, the last one in the highest byte.
constexpr std::array<std::uint64_t, 9> kDigitBytes = [] {
  std::array<std::uint64_t, 9> bytes{};
  for (std::size_t digits = 1; digits <= 8; ++digits) bytes[digits] = kAll << (8 * (8 - digits));
  return bytes;
}();

/// Eight digits, the first in the lowest byte, each byte its value.
inline std::uint64_t eight_digits(std::uint64_t digits) {
  digits = (digits * (1 + (std::uint64_t{10} << 8))) >> 8 & 0x00FF00FF00FF00FF;
  digits = (digits * (1 + (std::uint64_t{100} << 16))) >> 16 & 0x0000FFFF0000FFFF;
  return (digits * (1 + (std::uint64_t{10000} << 32))) >> 32;
}

}  // namespace

FastRows::FastRows(const std::vector<double*>& targets, char delimiter, char decimal)
    : delimiter_(delimiter), decimal_(decimal) {
  for (double* target : targets) {
    columns_.push_back({target, 0, 0, 1});
    expect_decimals(columns_.back(), 1);
  }
}

void FastRows::expect_decimals(Column& column, std::ptrdiff_t decimals) {
  constexpr std::ptrdiff_t kMost = 7;
  column.decimals = decimals <= kMost ? decimals : kMost;
  column.behind = column.decimals > 0 ? kAll << (8 * (8 - column.decimals)) : kAll;
  column.power = kExactPowers[column.decimals];
}

/// Any plain number, whatever its length; remembers its decimals.
bool FastRows::read_any(const char* start, const char* end, Column& column, double& value) const {
  const char* p = start;
  if (!read_plain_number(p, decimal_, value) || p != end) return false;
  const void* sign = std::memchr(start, decimal_, static_cast<std::size_t>(end - start));
  expect_decimals(column, sign == nullptr ? 0 : end - static_cast<const char*>(sign) - 1);
  return true;
}

/// A number without a minus, of at most eight characters, with as many decimals as the one above it.
inline bool FastRows::read_word(const char* start, const char* end, const Column& column, char decimal, double& value) {
  if (std::endian::native != std::endian::little) return false;
  const std::ptrdiff_t length = end - start;
  if (length <= column.decimals || length > 8) return false;
  std::uint64_t word = 0;
  std::memcpy(&word, end - 8, 8);  // the last digit stands in the highest byte
  std::ptrdiff_t digits = length;
  if (column.decimals > 0) {
    if (end[-1 - column.decimals] != decimal) return false;
    word = ((word << 8) & ~column.behind) | (word & column.behind);  // the sign drops out
    --digits;
  }
  word = (word ^ kZeros) & kDigitBytes[static_cast<std::size_t>(digits)];
  if (digits == 0 || (((word + 0x7676767676767676) | word) & kHigh) != 0) return false;
  value = static_cast<double>(static_cast<std::int64_t>(eight_digits(word))) / column.power;
  return true;
}

std::size_t FastRows::read(const char*& p, const char* begin, const char* end, std::size_t at, std::size_t most) {
  constexpr std::ptrdiff_t kBlock = 64;
  // Numbers are read up to kPlainNumberReach bytes from where they start, and 8 bytes before their end.
  if (end - p < 2 * kBlock || p - begin < 8) return 0;
  const char* const last_block = end - kBlock - static_cast<std::ptrdiff_t>(kPlainNumberReach);
  const char delimiter = delimiter_, decimal = decimal_;
  Column* const first = columns_.data();
  Column* const last = first + columns_.size() - 1;
  const char* block = p;
  const char* cell = p;
  std::uint64_t mask = mask_of(block, delimiter, '\n');
  for (std::size_t rows = 0; rows < most; ++rows, p = cell) {
    for (Column* column = first;; ++column) {
      while (mask == 0) {
        block += kBlock;
        if (block > last_block) return rows;
        mask = mask_of(block, delimiter, '\n');
      }
      const char* stop = block + std::countr_zero(mask);
      mask &= mask - 1;
      const char* cell_end = stop;
      if (column == last) {
        if (*stop != '\n') return rows;
        if (stop > cell && stop[-1] == '\r') --cell_end;
      } else if (*stop != delimiter) {
        return rows;
      }
      if (column->target != nullptr) {
        double& value = column->target[at + rows];
        if (!read_word(cell, cell_end, *column, decimal, value) && !read_any(cell, cell_end, *column, value))
          return rows;
      }
      cell = stop + 1;
      if (column == last) break;
    }
  }
  return most;
}

}  // namespace ovenwright::log
