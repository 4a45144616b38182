#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <string>

#include "core/log/layout_file.h"
#include "core/log/reading.h"

// A log that is refused for cells that cannot be read can be read without them, and says so.
namespace ovenwright::log {
namespace {

/// A hill of forty rows for two channels; a row can be put in place of one's own.
std::string log_with(int row, const std::string& instead) {
  std::string text = "Time (s),TC1 (°C),TC2 (°C)\n";
  for (int second = 0; second < 40; ++second) {
    const double T = 30 + 5 * (second < 20 ? second : 40 - second);
    text += second == row ? instead + "\n"
                          : std::to_string(second) + "," + std::to_string(T) + "," + std::to_string(T - 2) + "\n";
  }
  return text;
}

Options lenient() {
  Options options;
  options.layout.emplace().leave_empty = true;
  return options;
}

TEST(LeftEmpty, ACellThatIsNoNumberIsRefusedElseMissing) {
  const auto text = log_with(12, "12,9x.1,88.0");
  const auto refused = read_bytes("a.csv", text);
  ASSERT_FALSE(refused);
  EXPECT_EQ(refused.error().where.line, 14);
  EXPECT_EQ(refused.error().where.column, 2);
  const auto reading = read_bytes("a.csv", text, lenient());
  ASSERT_TRUE(reading) << reading.error().text();
  EXPECT_TRUE(std::isnan(reading->channels[0].temperature_C[12]));
  EXPECT_EQ(reading->channels[1].temperature_C[12], 88);
  EXPECT_EQ(std::ranges::count(reading->read_as.notes, "1 cell that is no number is left empty: \"9x.1\" in line 14."),
            1);
  // What it was read with reads it again, also by way of a file.
  EXPECT_TRUE(reading->layout.leave_empty);
  const auto layout = parse_layout("l.toml", layout_text(reading->layout));
  ASSERT_TRUE(layout) << layout.error().text();
  Options again;
  again.layout = *layout;
  EXPECT_TRUE(read_bytes("a.csv", text, again));
}

TEST(LeftEmpty, RowsWithoutATimeAndShortRowsToo) {
  for (const auto& [row, note] :
       {std::pair{"1?,90.0,88.0", "1 row without a time is left out: line 14."},
        std::pair{"12,90.0", "1 row ends before the last column: what is missing there counts as no reading."}}) {
    const auto text = log_with(12, row);
    EXPECT_FALSE(read_bytes("a.csv", text)) << row;
    const auto reading = read_bytes("a.csv", text, lenient());
    ASSERT_TRUE(reading) << reading.error().text();
    EXPECT_EQ(std::ranges::count(reading->read_as.notes, note), 1) << note;
  }
}

TEST(LeftEmpty, WhatWouldBeMisreadIsRefusedAllTheSame) {
  EXPECT_FALSE(read_bytes("a.csv", log_with(12, "12,90.0,88.0,77.0"), lenient()));           // which cell is too much?
  EXPECT_FALSE(read_bytes("a.csv", log_with(30, "Time (s),TC2 (°C),TC1 (°C)"), lenient()));  // other channels from here
}

TEST(LeftEmpty, ALogInWhichNothingIsLeftEmptyIsReadAsEver) {
  const auto text = log_with(-1, "");
  const auto a = read_bytes("a.csv", text), b = read_bytes("a.csv", text, lenient());
  ASSERT_TRUE(a && b);
  EXPECT_EQ(a->read_as.notes, b->read_as.notes);
  EXPECT_EQ(a->channels[0].temperature_C, b->channels[0].temperature_C);
}

}  // namespace
}  // namespace ovenwright::log
