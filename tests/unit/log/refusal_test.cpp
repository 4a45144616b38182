#include <gtest/gtest.h>

#include <cmath>
#include <string>
#include <tuple>

#include "core/log/reading.h"

namespace ovenwright::log {
namespace {

/// Rows of a run of two channels: time, then 25 °C and up by 2 °C a row.
std::string rows(const std::string& separator = ",", int count = 40) {
  std::string text;
  for (int i = 0; i < count; ++i) {
    text += std::to_string(i) + ".5";
    for (int k = 0; k < 2; ++k) text += separator + std::to_string(25 + 2 * i + k) + ".0";
    text += "\n";
  }
  return text;
}

struct Case {
  const char* name;
  std::string text;
  int line, column;
  const char* found;
};
void PrintTo(const Case& c, std::ostream* os) { *os << c.name; }
class Refused : public testing::TestWithParam<Case> {};

// Source: the text itself; docs/reading_logs.md asks for file, line, column, found and expected.
TEST_P(Refused, WithPlaceFoundAndExpected) {
  const auto reading = read_bytes("a.csv", GetParam().text);
  ASSERT_FALSE(reading);
  const Error& error = reading.error();
  EXPECT_EQ(error.where.file, "a.csv");
  EXPECT_EQ(error.where.line, GetParam().line) << error.text();
  EXPECT_EQ(error.where.column, GetParam().column) << error.text();
  EXPECT_EQ(error.found, GetParam().found) << error.text();
  EXPECT_FALSE(error.expected.empty());
  EXPECT_FALSE(error.message.empty());
}
INSTANTIATE_TEST_SUITE_P(
    Logs, Refused,
    testing::Values(
        Case{"unit_behind_names", "Time (s),TC1 (furlong),TC2 (furlong)\n" + rows(), 1, 2, "furlong"},
        Case{"unit_behind_names_time_without", "Time,TC1 [furlong],TC2 [furlong]\n" + rows(), 1, 2, "furlong"},
        Case{"unit_of_one_channel", "Time [s];TC1 [furlong]\n0;25\n1;26\n2;27\n3;28\n", 1, 2, "furlong"},
        Case{"row_of_units", "Time,TC1,TC2\ns,furlong,furlong\n" + rows(), 2, 2, "furlong"},
        Case{"row_of_two_units", "Time;TC1\ns;furlong\n0;25\n1;26\n2;27\n3;28\n", 2, 2, "furlong"},
        Case{"one_in_a_row_of_units", "Time,TC1,TC2\ns,°C,furlong\n" + rows(), 2, 3, "furlong"},
        Case{"unit_in_metadata", "Logger\nUnit,furlong\nTime,TC1,TC2\n" + rows(), 2, 2, "furlong"},
        Case{"rankine", "Time (s),TC1 (°R),TC2 (°R)\n" + rows(), 1, 2, "°R"},
        Case{"known_but_no_temperature", "Time (s),TC1 (bar),TC2 (bar)\n" + rows(), 1, 2, "bar"},
        Case{"header_only", "Lot,QM-2304\n\nTime,TC1,TC2\n", 3, 0, "a header and no rows behind it"},
        Case{"header_and_units_only", "Time;TC1\ns;°C\n", 1, 0, "a header and no rows behind it"},
        Case{"one_sample", "Time,TC1,TC2\n0,25,25\n", 2, 0, "one sample"}, Case{"empty", "", 0, 0, "an empty file"},
        Case{"time_stands_still", "Time,TC1\n5,25\n5,26\n5,27\n5,28\n", 2, 0, "the same time in every row"},
        Case{"not_a_number", "Time (s),TC1,TC2\n0,25,25\n1,26,26\n2,12x7,27\n3,28,28\n4,29,29\n", 4, 2, "12x7"}),
    [](const auto& c) { return std::string{c.param.name}; });

/// One JSON object of so many names, or a number within so many arrays.
std::string object_of(int names) {
  std::string text = "{\"a\": 1";
  for (int i = 0; i < names; ++i) text += ", \"n" + std::to_string(i) + "\": 1";
  return text + "}";
}
std::string nested(std::size_t levels) {
  return "{\"a\": " + std::string(levels, '[') + "1" + std::string(levels, ']') + "}";
}

// Source: common practice, no source: no log has thousands of channels, nor levels by the dozen.
TEST(RefusedJson, BeforeMoreNamesOrLevelsAreParsedThanALogHas) {
  const std::string record = "{\"t_s\": 0, \"U1 \\\"[[{{::\": 25}\n";
  for (const auto& [text, line, found] :
       {std::tuple{object_of(300'000), 1, "too many names in the records"},
        std::tuple{record + record + object_of(300'000), 3, "too many names in the records"},
        std::tuple{nested(100), 1, "levels too deep within each other"},
        std::tuple{nested(1'000'000), 1, "levels too deep within each other"},
        std::tuple{record + "\n" + nested(100), 3, "levels too deep within each other"}}) {
    const auto reading = read_bytes("a.json", text);
    ASSERT_FALSE(reading);
    EXPECT_EQ(reading.error().found, found) << reading.error().text();
    EXPECT_EQ(reading.error().where.line, line);
    EXPECT_FALSE(reading.error().expected.empty());
  }
}

// Source: the text itself. What stands in a text is neither a name nor a level.
TEST(RefusedJson, NotForWhatStandsInATextOrInManyRecords) {
  std::string text = "[";
  for (int i = 0; i < 3000; ++i)
    text += std::string(i > 0 ? "," : "") + "{\"t_s\": " + std::to_string(i) +
            ", \"U1\": " + std::to_string(25 + i % 200) + ".5, \"remark\": \"\\\"{[{[::\\\\\"}\n";
  const auto reading = read_bytes("a.json", text + "]");
  ASSERT_TRUE(reading) << reading.error().text();
  EXPECT_EQ(reading->channels.at(0).temperature_C.size(), 3000U);
}

struct Name {
  const char* name;
  std::string header;
  const char* first;
};
void PrintTo(const Name& c, std::ostream* os) { *os << c.name; }
class NameInBrackets : public testing::TestWithParam<Name> {};

TEST_P(NameInBrackets, IsNoUnit) {
  const auto reading = read_bytes("a.csv", GetParam().header + "\n" + rows());
  ASSERT_TRUE(reading) << reading.error().text();
  ASSERT_EQ(reading->channels.size(), 2U);
  EXPECT_EQ(reading->channels[0].name, GetParam().first);
}
INSTANTIATE_TEST_SUITE_P(
    Headers, NameInBrackets,
    testing::Values(Name{"with_digits", "Time (s),TC1 (U12 corner),TC2 (U12 corner)", "TC1 (U12 corner)"},
                    Name{"that_differ", "Time (s),TC1 (hearth),TC2 (lintel)", "TC1 (hearth)"},
                    Name{"of_a_place", "Time (s),TC1 (top),TC2 (top)", "TC1 (top)"},
                    Name{"of_a_part", "Time (s),U1 (BGA),U2 (BGA)", "U1 (BGA)"},
                    Name{"of_two_words", "Time (s),TC1 (near edge),TC2 (near edge)", "TC1 (near edge)"},
                    Name{"beside_a_row_of_units", "Time,TC1 (hearth),TC2 (hearth)\ns,°C,°C", "TC1 (hearth)"}),
    [](const auto& c) { return std::string{c.param.name}; });

TEST(LogSize, IsSaidBeforeMemoryIsSpent) {
  // 64 MiB of UTF-16: twice that would be spent on decoding alone.
  std::string row = "0.5,25.0,26.0,27.0\n", wide;
  for (const char c : row) wide += {c, '\0'};
  std::string text = "\xFF\xFE";
  while (text.size() < (std::size_t{64} << 20)) text += wide;
  Options options;
  options.most_samples = 1'000'000;
  options.digest = false;
  bool parsed = false;
  options.progress = [&parsed](double, std::size_t) { return parsed = true; };
  const auto reading = read_bytes("a.csv", text, options);
  ASSERT_FALSE(reading);
  EXPECT_FALSE(parsed);
  EXPECT_EQ(reading.error().expected, "at most 1000000 numbers in a log");
  // 64 MiB / 38 bytes = 1 766 000 rows.
  EXPECT_TRUE(reading.error().found.starts_with("about 17")) << reading.error().found;
}

TEST(LogSize, ManyColumnsAreReadAndFarTooManyRefused) {
  for (const std::size_t channels : {std::size_t{3000}, std::size_t{100'000}}) {
    std::string text = "Time (s)";
    for (std::size_t k = 1; k <= channels; ++k) text += ",TC" + std::to_string(k);
    for (int row = 0; row < 4; ++row) {
      text += "\n" + std::to_string(row);
      for (std::size_t k = 1; k <= channels; ++k) text += ",25." + std::to_string(row);
    }
    const auto reading = read_bytes("a.csv", text);
    EXPECT_EQ(static_cast<bool>(reading), channels == 3000);
    if (reading) {
      EXPECT_EQ(reading->channels.size(), channels);
      EXPECT_EQ(reading->channels.back().name, "TC3000");
    } else {
      EXPECT_EQ(reading.error().found, "100000 channels");
    }
  }
}

TEST(LogSize, AFileOfZerosIsRefusedByItsHead) {
  Options options;
  const auto reading = read_bytes("a.csv", std::string(std::size_t{64} << 20, '\0'), options);
  ASSERT_FALSE(reading);
  EXPECT_EQ(reading.error().where.line, 1);
}

TEST(LogDecimals, MayDifferBetweenColumns) {
  for (const std::string decimals :
       {"0.5;25,3;26,1|1.0;25,4;26,2|1.5;125,5;26,3|2.0;225,6;26,4|", "0.5;25,3|1.0;25,4|1.5;125,5|2.0;225,6|"}) {
    std::string text = decimals.size() > 45 ? "Time;TC1;TC2\n" : "Time;TC1\n";
    for (const char c : decimals) text += c == '|' ? '\n' : c;
    const auto reading = read_bytes("a.csv", text);
    ASSERT_TRUE(reading) << reading.error().text();
    EXPECT_EQ(*reading->channels[0].time_s, (std::vector<double>{0.5, 1, 1.5, 2}));
    EXPECT_EQ(reading->channels[0].temperature_C, (std::vector<double>{25.3, 25.4, 125.5, 225.6}));
    Options again;
    again.layout = reading->layout;
    const auto second = read_bytes("a.csv", text, again);
    ASSERT_TRUE(second) << second.error().text();
    EXPECT_EQ(second->channels[0].temperature_C, reading->channels[0].temperature_C);
  }
}

// Without a word the run would be judged without that thermocouple.
TEST(LogLayout, AColumnThatTheLogLacksIsAnError) {
  const std::string text = "Time,TC1,TC2\n" + rows();
  Options options;
  options.layout.emplace();
  options.layout->channels.resize(2);
  options.layout->channels[0].column = 2;
  options.layout->channels[1].column = 3;
  EXPECT_TRUE(read_bytes("a.csv", text, options));
  options.layout->channels.emplace_back();
  options.layout->channels.back().column = 4;
  const auto reading = read_bytes("a.csv", text, options);
  ASSERT_FALSE(reading);
  EXPECT_EQ(reading.error().text(), "a.csv:2: found 3 columns, expected column 4 that the layout names");
  options.layout->channels.back().use = false;
  EXPECT_TRUE(read_bytes("a.csv", text, options));
}

// Source: core/log/wide.h, at most 4096 channels, each with a clock of its own.
TEST(LogSize, ATableOfVeryManyColumnsIsRefusedAtOnce) {
  std::string text = "t";
  for (int row = 0; row < 4; ++row) {
    if (row > 0) text += std::to_string(row);
    for (int i = 0; i < 100'000; ++i) text += row == 0 ? ",c" : ",25";
    text += "\n";
  }
  const auto reading = read_bytes("a.csv", text);
  ASSERT_FALSE(reading);
  EXPECT_EQ(reading.error().text(), "a.csv:2: found 100000 channels, expected at most 4096");
}

TEST(LogTimes, RowsOfOneWholeSecondGoForwardHoweverManyTheyAre) {
  // Two to four rows in each second, in no order that one interval would make.
  std::string text = "Clock,TC1\n";
  int row = 0;
  for (int second = 0; second < 60; ++second) {
    const int here = 2 + (second * 7 % 5) / 2;
    for (int i = 0; i < here; ++i, ++row)
      text += "09:14:" + std::string(second < 10 ? "0" : "") + std::to_string(second) + "," + std::to_string(25 + row) +
              ".0\n";
  }
  const auto reading = read_bytes("a.csv", text);
  ASSERT_TRUE(reading) << reading.error().text();
  const auto& times = *reading->channels[0].time_s;
  ASSERT_EQ(times.size(), static_cast<std::size_t>(row));
  for (std::size_t i = 1; i < times.size(); ++i) ASSERT_GT(times[i], times[i - 1]) << i;
  // No time leaves its second.
  EXPECT_LT(times.back(), 60);
  EXPECT_GE(times[times.size() / 2], std::floor(times[times.size() / 2]));
  ASSERT_EQ(reading->read_as.assumed.empty(), false);
}

}  // namespace
}  // namespace ovenwright::log
