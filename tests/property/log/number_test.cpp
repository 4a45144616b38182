#include <fast_float/fast_float.h>
#include <gtest/gtest.h>

#include <bit>
#include <cstdint>
#include <cstdlib>
#include <random>
#include <string>
#include <vector>

#include "core/log/fast_rows.h"
#include "core/log/number.h"

namespace ovenwright::log {
namespace {

constexpr std::size_t kColumns = 10, kRows = 10'000;

/// Rows of decimal numbers: short ones as logs have them, and some with up to 19 digits, at the edges of what one
/// division rounds exactly. Most columns keep their number of decimals, so that both ways of the reader are taken.
std::string random_rows(std::mt19937_64& engine, char decimal) {
  std::string text;
  text.reserve(kRows * kColumns * 9);
  const std::uint64_t kinds = engine();
  for (std::size_t row = 0; row < kRows; ++row) {
    for (std::size_t column = 0; column < kColumns; ++column) {
      std::uint64_t bits = engine();
      const auto take = [&bits](std::uint64_t below) {
        const std::uint64_t value = bits % below;
        bits /= below;
        return value;
      };
      const bool odd = take(64) == 0;  // a number unlike the others of its column
      const std::uint64_t kind = odd ? take(16) : kinds >> (4 * column) & 15;
      const std::size_t whole = kind == 15 ? take(12) + 1 : take(4) + 1;
      const std::size_t decimals = kind == 15 ? take(8) : kind % 5;
      if (take(16) == 0) text += '-';
      std::uint64_t digits = engine();
      for (std::size_t i = 0; i < whole + decimals; ++i, digits /= 10) {
        if (i == whole) text += decimal;
        text += static_cast<char>('0' + digits % 10);
      }
      text += column + 1 < kColumns ? ';' : '\n';
    }
  }
  return text;
}

double by_general_parser(std::string_view text, char decimal) {
  double value = 0;
  const fast_float::parse_options options{fast_float::chars_format::general, decimal};
  const auto read = fast_float::from_chars_advanced(text.data(), text.data() + text.size(), value, options);
  EXPECT_EQ(read.ptr, text.data() + text.size()) << text;
  return value;
}

bool same(double a, double b) { return std::bit_cast<std::uint64_t>(a) == std::bit_cast<std::uint64_t>(b); }

/// Reads rows the fast way and each number the general one; returns how many were compared.
std::size_t compare(const std::string& text, char decimal) {
  std::vector<std::vector<double>> values(kColumns, std::vector<double>(kRows));
  std::vector<double*> targets;
  for (auto& column : values) targets.push_back(column.data());
  FastRows fast(targets, ';', decimal);
  const char* p = text.data();
  const char* const end = text.data() + text.size();
  std::size_t compared = 0;
  while (p < end) {
    const char* row = p;
    const std::size_t rows = fast.read(p, text.data(), end, 0, kRows);
    for (std::size_t i = 0; i < rows; ++i) {
      for (std::size_t column = 0; column < kColumns; ++column, ++compared) {
        const char* stop = row;
        while (*stop != ';' && *stop != '\n') ++stop;
        const std::string_view cell{row, static_cast<std::size_t>(stop - row)};
        const double expected = by_general_parser(cell, decimal);
        if (!same(values[column][i], expected)) {
          ADD_FAILURE() << cell << " gave " << values[column][i] << ", expected " << expected;
          return compared;
        }
        row = stop + 1;
      }
    }
    // A row that is not for the fast way: through the one for all others.
    if (p >= end) break;
    for (std::size_t column = 0; column < kColumns; ++column, ++compared) {
      const char* stop = p;
      while (stop < end && *stop != ';' && *stop != '\n') ++stop;
      const std::string_view cell{p, static_cast<std::size_t>(stop - p)};
      const auto read = read_number(cell, decimal);
      if (!read || !same(read->value, by_general_parser(cell, decimal))) {
        ADD_FAILURE() << cell;
        return compared;
      }
      p = stop + 1;
    }
  }
  return compared;
}

// Source: fast_float's correctly rounded conversion (D. Lemire, Number parsing at a gigabyte per second, 2021). Both
// must give the same double, bit by bit.
TEST(LogNumbers, AreRoundedAsAGeneralParserDoes) {
  const std::size_t wanted = std::getenv("OVENWRIGHT_LONG_CHECKS") != nullptr ? 100'000'000 : 1'000'000;
  std::mt19937_64 engine(20310312);
  std::size_t compared = 0;
  for (bool comma = false; compared < wanted && !testing::Test::HasFailure(); comma = !comma)
    compared += compare(random_rows(engine, comma ? ',' : '.'), comma ? ',' : '.');
  EXPECT_GE(compared, wanted);
}

}  // namespace
}  // namespace ovenwright::log
