#include <fast_float/fast_float.h>
#include <gtest/gtest.h>

#include <bit>
#include <cmath>
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
/// division rounds exactly. Most columns keep their number of decimals; some numbers have eight characters, some more.
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

/// Reads rows the fast way, four numbers at a time or one by one, and each number the general one; returns how many
/// were compared.
std::size_t compare(const std::string& text, char decimal, bool by_four) {
  std::vector<std::vector<double>> values(kColumns, std::vector<double>(kRows));
  std::vector<double*> targets;
  for (auto& column : values) targets.push_back(column.data());
  FastRows fast(targets, ';', decimal, by_four);
  const char* p = text.data();
  const char* const end = text.data() + text.size();
  std::size_t compared = 0;
  while (p < end) {
    const char* row = p;
    const std::size_t rows = fast.read(p, text.data(), end, end, 0, kRows);
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
  for (std::size_t i = 0; compared < wanted && !testing::Test::HasFailure(); ++i) {
    const char decimal = i % 2 == 0 ? '.' : ',';
    compared += compare(random_rows(engine, decimal), decimal, i / 2 % 2 == 0);
  }
  EXPECT_GE(compared, wanted);
}

/// What rows of these cells, with a last column of plain numbers, are read as: NaN where the first is no plain number.
double first_cell(const std::string& cell, bool by_four) {
  constexpr std::size_t kAlike = 40;  // enough for whole blocks
  std::string text(8, '\n');
  for (std::size_t row = 0; row < kAlike; ++row) text += cell + ";7\n";
  std::vector<double> first(kAlike), second(kAlike);
  FastRows fast({first.data(), second.data()}, ';', '.', by_four);
  const char* p = text.data() + 8;
  const char* const end = text.data() + text.size();
  const std::size_t rows = fast.read(p, text.data(), end, end, 0, kAlike);
  return rows > 0 ? first[0] : std::nan("");
}

// What is no number, or not as it is written in a log, is left to the general reader.
TEST(LogNumbers, OfAnotherKindAreNotReadTheFastWay) {
  for (const bool by_four : {true, false}) {
    for (const char* cell : {"", ".", "-", "1.2.3", "..5", "1..", "12:30", "1e3", " 25.1", "25.1 ", "+5", "1,5", "OPEN",
                             "\"25.1\"", "1-2", "25.1C", "/25.", "2;5", "12345.67890123456789"})
      EXPECT_TRUE(std::isnan(first_cell(cell, by_four))) << cell;
    EXPECT_EQ(first_cell(".5", by_four), 0.5);
    EXPECT_EQ(first_cell("5.", by_four), 5);
    EXPECT_EQ(first_cell("0012.500", by_four), 12.5);
    EXPECT_EQ(first_cell("99999999", by_four), 99999999);
    EXPECT_EQ(first_cell("-12.5", by_four), -12.5);
    EXPECT_EQ(first_cell("1345678.25", by_four), 1345678.25);
  }
}

// Fewer or more columns than are read at a time, and columns that are passed over, quotes in them or not.
TEST(LogNumbers, OfAnyNumberOfColumnsComeOutInTheirColumns) {
  for (std::size_t columns = 1; columns <= 70; ++columns) {
    const std::size_t passed_over = columns / 3;
    std::string text = "headers\n";
    constexpr std::size_t kShort = 131;
    for (std::size_t row = 0; row < kShort; ++row) {
      for (std::size_t column = 0; column < columns; ++column) {
        if (column > 0) text += ',';
        text += column == passed_over && columns > 1 ? "any text" : std::to_string(100 * row + column);
      }
      text += row % 2 == 0 ? "\r\n" : "\n";
    }
    for (const bool by_four : {true, false}) {
      std::vector<std::vector<double>> values(columns, std::vector<double>(kShort));
      std::vector<double*> targets;
      for (auto& column : values) targets.push_back(column.data());
      if (columns > 1) targets[passed_over] = nullptr;
      FastRows fast(targets, ',', '.', by_four);
      const char* p = text.data() + 8;
      const char* const end = text.data() + text.size();
      const std::size_t rows = fast.read(p, text.data(), end, end, 0, kShort);
      EXPECT_GE(rows, kShort / 3) << columns;
      for (std::size_t row = 0; row < rows; ++row) {
        for (std::size_t column = 0; column < columns; ++column) {
          if (targets[column] == nullptr) continue;
          ASSERT_EQ(values[column][row], static_cast<double>(100 * row + column)) << columns << " columns, row " << row;
        }
      }
      const std::size_t quoted = text.find("any text", text.size() / 2);
      if (columns < 2) continue;
      std::string with_quote = text;
      with_quote[quoted] = '"';
      p = with_quote.data() + 8;
      const char* const quote_end = with_quote.data() + with_quote.size();
      EXPECT_LT(fast.read(p, with_quote.data(), quote_end, quote_end, 0, kShort), kShort);
      EXPECT_LE(p, with_quote.data() + quoted);
    }
  }
}

}  // namespace
}  // namespace ovenwright::log
