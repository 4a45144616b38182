#include <fmt/format.h>
#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <functional>
#include <string>
#include <vector>

#include "core/log/reading.h"

// Logs as people and their loggers write them. Source of every expected value: the rows that the test wrote itself.

namespace ovenwright::log {
namespace {

constexpr int kRows = 100;

/// Tenths of a degree of a run: up from the room, down again, with the last digit of a reading that trembles.
int tenths(int row, int channel) {
  const int rise = row <= 70 ? 28 * row : 28 * 70 - 50 * (row - 70);
  return 250 + 10 * channel + rise + 7 * (row + channel) % 5;
}

std::string decimal(int value) { return fmt::format("{}.{}", value / 10, value % 10); }
std::string reading_at(int row, int channel) { return decimal(tenths(row, channel)); }
std::string half_seconds(int row) { return decimal(5 * row); }

/// Rows of cells: `cells` gives those of one row.
std::string body(const std::function<std::vector<std::string>(int)>& cells, const std::string& sign = ",") {
  std::string text;
  for (int i = 0; i < kRows; ++i) text += fmt::format("{}\n", fmt::join(cells(i), sign));
  return text;
}

std::string plain_body(int channels, const std::string& sign = ",",
                       const std::function<std::string(int)>& time = half_seconds) {
  return body(
      [&](int i) {
        std::vector<std::string> cells{time(i)};
        for (int c = 0; c < channels; ++c) cells.push_back(reading_at(i, c));
        return cells;
      },
      sign);
}

struct Case {
  const char* name;
  std::string text;
  std::vector<std::string> channels;
  double interval_s = 0.5;
  double factor = 1;  ///< of the readings that were written
};
void PrintTo(const Case& c, std::ostream* os) { *os << c.name; }
class OddLayouts : public testing::TestWithParam<Case> {};

TEST_P(OddLayouts, AreReadAsWritten) {
  const Case& c = GetParam();
  const auto reading = read_bytes("a.csv", c.text);
  ASSERT_TRUE(reading) << reading.error().text();
  std::vector<std::string> names;
  for (const auto& channel : reading->channels) names.push_back(channel.name);
  ASSERT_EQ(names, c.channels);
  for (std::size_t k = 0; k < names.size(); ++k) {
    const auto& channel = reading->channels[k];
    ASSERT_EQ(channel.temperature_C.size(), static_cast<std::size_t>(kRows));
    const double first_s = channel.time_s->front();
    for (int i = 0; i < kRows; ++i) {
      const auto at = static_cast<std::size_t>(i);
      // A millionth: of seconds and degrees that are sums and products of a few decimals.
      EXPECT_NEAR((*channel.time_s)[at] - first_s, c.interval_s * i, 1e-6) << i;
      EXPECT_NEAR(channel.temperature_C[at], c.factor * tenths(i, static_cast<int>(k)) / 10.0, 1e-6) << i;
    }
  }
}

// Source: a layout is what was found, kept so that the log is read again the same (docs/reading_logs.md).
TEST_P(OddLayouts, AreReadAgainTheSameByTheirLayout) {
  const auto reading = read_bytes("a.csv", GetParam().text);
  ASSERT_TRUE(reading) << reading.error().text();
  Options options;
  options.layout = reading->layout;
  const auto again = read_bytes("a.csv", GetParam().text, options);
  ASSERT_TRUE(again) << again.error().text();
  ASSERT_EQ(again->channels.size(), reading->channels.size());
  for (std::size_t k = 0; k < reading->channels.size(); ++k) {
    EXPECT_EQ(again->channels[k].name, reading->channels[k].name);
    EXPECT_EQ(*again->channels[k].time_s, *reading->channels[k].time_s);
    EXPECT_EQ(again->channels[k].temperature_C.size(), reading->channels[k].temperature_C.size());
    EXPECT_EQ(again->channels[k].temperature_C[9], reading->channels[k].temperature_C[9]);
  }
}

std::string index_of(int row) { return std::to_string(row + 1); }

std::string with_statistics(const std::string& head) {
  return head + body([](int i) {
           std::vector<std::string> cells{half_seconds(i)};
           for (int c = 0; c < 2; ++c) {
             for (const int off : {0, -2, 3}) cells.push_back(decimal(tenths(i, c) + off));
           }
           return cells;
         });
}

std::string with_flags() {
  return "Time (s);U1;U1 AL;R118;R118 AL\n" +
         body(
             [](int i) {
               return std::vector<std::string>{half_seconds(i), reading_at(i, 0), tenths(i, 0) > 2000 ? "1" : "0",
                                               reading_at(i, 1), tenths(i, 1) > 2000 ? "1" : "0"};
             },
             ";");
}

std::string with_difference() {
  return "Time (s),U1,R118,dT (°C)\n" + body([](int i) {
           return std::vector<std::string>{half_seconds(i), reading_at(i, 0), reading_at(i, 1), "1.0"};
         });
}

std::string in_tenths(const std::string& head) {
  return head + body([](int i) {
           return std::vector<std::string>{half_seconds(i), std::to_string(tenths(i, 0)), std::to_string(tenths(i, 1))};
         });
}

std::string value_before_time() {
  return "U1 (°C),t (s),R118 (°C),t (s)\n" + body([](int i) {
           return std::vector<std::string>{reading_at(i, 0), decimal(5 * i), reading_at(i, 1), decimal(5 * i + 1)};
         });
}

std::string long_form(bool times_once, bool numbers) {
  std::string text = numbers ? "Time (s),No,Name,Temp °C\n" : "Time (s),Channel,Temp (°C)\n";
  for (int i = 0; i < kRows; ++i) {
    for (int c = 0; c < 2; ++c) {
      text += c == 0 || !times_once ? half_seconds(i) : "";
      if (numbers) text += fmt::format(",{}", c + 1);
      text += fmt::format(",{},{}\n", c == 0 ? "U1" : "R118", reading_at(i, c));
    }
  }
  return text;
}

std::string clock_of(int row) {
  const int half = 2 * 35920 + row, seconds = half / 2;
  return fmt::format("{:02}:{:02}:{:02}.{}", seconds / 3600, seconds / 60 % 60, seconds % 60, half % 2 * 5);
}

std::string packed(int row) {
  const int half = 2 * 35920 + row, seconds = half / 2;
  return fmt::format("20310312{:02}{:02}{:02}{}00", seconds / 3600, seconds / 60 % 60, seconds % 60, half % 2 * 5);
}

std::string date_once(int row) { return std::string{row == 0 ? "12.03.2031" : ""} + "," + clock_of(row); }

std::string tenths_beside_clock(int row) {
  const int half = 2 * 35920 + row, seconds = half / 2;
  return fmt::format("{:02}:{:02}:{:02},{}", seconds / 3600, seconds / 60 % 60, seconds % 60, half % 2 * 5);
}

std::string with_event() {
  std::string text = "Time (s),U1,R118\n" + plain_body(2);
  const auto at = text.find("\n20.0,") + 1;
  return text.insert(at, "EVENT,20.0,door open\n");
}

std::string with_remark() {
  std::string text = "Time (s),U1,R118\n" + plain_body(2);
  const auto line = text.find("\n20.0,") + 1;
  return text.insert(text.find('\n', line), "  # fan up");
}

std::string first_channel_open_like_a_comment() {
  return "U1,R118,Time (s)\n" + body([](int i) {
           return std::vector<std::string>{reading_at(i, 0), reading_at(i, 1), half_seconds(i)};
         });
}

std::string counter_of_microseconds(int row) { return std::to_string(300110000000 + 500000LL * row); }

std::string in_tenths_of_all(const std::string& head) {
  return head + body([](int i) {
           return std::vector<std::string>{std::to_string(50 * i), std::to_string(tenths(i, 0)),
                                           std::to_string(tenths(i, 1))};
         });
}

std::string followed_by(const std::string& last) { return "Time (s),U1,R118\n" + plain_body(2) + "\n" + last + "\n"; }

const std::vector<std::string> kTwo{"U1", "R118"};

INSTANTIATE_TEST_SUITE_P(
    Logs, OddLayouts,
    testing::Values(
        // names against numbers
        Case{"parts_named_like_quantities",
             "Time (s),Battery holder,Belt clip,Power FET,Time base X1,Min chip\n" + plain_body(5),
             {"Battery holder", "Belt clip", "Power FET", "Time base X1", "Min chip"}},
        Case{"least_and_most_of_each_channel", with_statistics("Time (s),U1,U1 min,U1 max,R118,R118 min,R118 max\n"),
             kTwo},
        Case{"least_and_most_in_spanish", with_statistics("Tiempo (s),U1,U1 mín,U1 máx,R118,R118 mín,R118 máx\n"),
             kTwo},
        Case{"least_of_what_is_called_most",
             with_statistics("Time (s),Max chip,Max chip min,Max chip max,R118,R118 min,R118 max\n"),
             {"Max chip", "R118"}},
        Case{"flag_of_each_channel", with_flags(), kTwo}, Case{"difference_in_degrees", with_difference(), kTwo},
        Case{"places_called_like_statistics",
             "Time (s),BGA high,BGA corner,BGA low,TC hi\n" + plain_body(4),
             {"BGA high", "BGA corner", "BGA low", "TC hi"}},
        Case{"a_place_called_peak", "Time (s),Peak U1,U1 rear\n" + plain_body(2), {"Peak U1", "U1 rear"}},
        Case{"a_place_called_delta", "Time (s),BGA Delta,BGA centre\n" + plain_body(2), {"BGA Delta", "BGA centre"}},
        Case{"curves_of_the_oven",
             "Time (s),U1,R118,Zone 3 air,Air max,Setpoint profile,Oven zone curve\n" + plain_body(6), kTwo},
        // headers
        Case{"names_at_other_signs", "Elapsed s\tU1\tR118\n" + plain_body(2), kTwo},
        Case{"blank_line_over_units", "Time,U1,R118\n\ns,°C,°C\n\n" + plain_body(2), kTwo},
        Case{"numbers_of_sensors_above", "Sensor no.,31415,31416\nTime (s),U1,R118\n" + plain_body(2), kTwo},
        Case{"names_in_two_rows",
             "Time,U1,U1,Board\n(s),corner,centre,edge\n" + plain_body(3),
             {"U1 corner", "U1 centre", "Board edge"}},
        Case{"types_behind_names", "CJ,25 °C\nTime (s),U1 (type K) °C,R118 (type T) °C\n" + plain_body(2), kTwo},
        Case{"groups_over_x_and_y",
             "U1,,R118,\nX,Y,X,Y\n" + body([](int i) {
               return std::vector<std::string>{half_seconds(i), reading_at(i, 0), half_seconds(i), reading_at(i, 1)};
             }),
             kTwo},
        Case{"a_comment_is_no_header",
             "# board QM-2231, operator pb\nNo    U1   R118\n" + plain_body(2, "  ", index_of) + "Interval 0.5 s\n",
             kTwo},
        Case{"key_and_date_is_no_header",
             "Date;2031-05-09\nSerial;00757\nTime;U1;U1;R118\n" + plain_body(3, ";"),
             {"U1", "U1 (2)", "R118"}},
        // units and factors
        Case{"apostrophe_for_the_ring", "Time;U1;R118\ns;'C;'C\n" + plain_body(2, ";"), kTwo},
        Case{"row_of_factors", in_tenths("Time (s),U1,R118\n,0.1,0.1\n"), kTwo},
        Case{"row_of_factors_for_the_time_too", in_tenths("Time (s),U1,R118\n1,0.1,0.1\n"), kTwo},
        Case{"row_of_factors_of_which_one_is_the_clocks", in_tenths_of_all("Time,U1,R118\n0.01,0.1,0.1\n"), kTwo},
        Case{"row_of_factors_under_a_letter", in_tenths_of_all("t,U1,R118\n0.01,0.1,0.1\n"), kTwo},
        Case{"sixteenths", in_tenths("Values in 1/16 °C\nTime (s),U1,R118\n"), kTwo, 0.5, 0.625},
        Case{"tenths_of_a_degree", in_tenths("time_s,U1 [d°C],R118 [d°C]\n"), kTwo},
        // times
        Case{"value_before_its_time", value_before_time(), kTwo},
        Case{"packed_with_milliseconds", "Stamp,U1,R118\n" + plain_body(2, ",", packed), kTwo},
        Case{"counter_that_looks_like_dates_now_and_then",
             "Time (us),U1,R118\n" + plain_body(2, ",", counter_of_microseconds), kTwo},
        Case{"counter_without_a_unit_that_looks_like_dates_now_and_then",
             "Microseconds,U1,R118\n" + plain_body(2, ",", counter_of_microseconds), kTwo},
        Case{"date_in_the_first_row", "Date,Time,U1,R118\n" + plain_body(2, ",", date_once), kTwo},
        Case{"tenths_beside_the_clock", "Time,1/10 s,U1,R118\n" + plain_body(2, ",", tenths_beside_clock), kTwo},
        Case{"long_form_with_the_time_once", long_form(true, false), kTwo},
        Case{"long_form_with_numbers_and_names", long_form(false, true), kTwo},
        // intervals
        Case{"rows_a_second_in_words",
             "Acquisition : 2 mesures par seconde\nMesure,U1,R118\n" + plain_body(2, ",", index_of), kTwo},
        Case{"rows_a_minute", "120 readings/min\nReading,U1,R118\n" + plain_body(2, ",", index_of), kTwo},
        Case{"interval_below_its_name", "Interval (s)\n0.5\n\nSample,U1,R118\n" + plain_body(2, ",", index_of), kTwo},
        Case{"interval_in_a_table",
             "Device,Interval s,Type\nLX4,0.5,K\n\nSample,U1,R118\n" + plain_body(2, ",", index_of), kTwo},
        Case{"interval_behind_the_table",
             "Sample,U1,R118\n" + plain_body(2, ",", index_of) + "\nSample interval,0.5 s\n", kTwo},
        Case{"start_and_end",
             "Start,12.03.2031 10:00:00\nEnd,12.03.2031 10:00:50\nSample,U1,R118\n" + plain_body(2, ",", index_of),
             kTwo},
        Case{"a_time_that_a_duration_does_not_fit", "Duration: 10 min\n" + ("Time (s),U1,R118\n" + plain_body(2)),
             kTwo},
        Case{"results_behind_the_table",
             followed_by("Slope calculated over interval 5 s\nWindow unit: °F\nTime unit: min"), kTwo},
        // lines between the rows
        Case{"event", with_event(), kTwo}, Case{"remark_at_the_end_of_a_line", with_remark(), kTwo},
        Case{"time_behind_the_channels", first_channel_open_like_a_comment(), kTwo}),
    [](const auto& c) { return std::string{c.param.name}; });

// Source: the text itself. "#N/A" is no comment where a reading belongs.
TEST(OddRows, AReadingMissingInTheFirstColumnIsNoComment) {
  std::string text = "U1,R118,Time (s)\n";
  for (int i = 0; i < kRows; ++i)
    text += fmt::format("{},{},{}\n", i == 9 ? "#N/A" : reading_at(i, 0), reading_at(i, 1), half_seconds(i));
  const auto reading = read_bytes("a.csv", text);
  ASSERT_TRUE(reading) << reading.error().text();
  ASSERT_EQ(reading->channels.size(), 2U);
  ASSERT_EQ(reading->channels[1].temperature_C.size(), static_cast<std::size_t>(kRows));
  EXPECT_TRUE(std::isnan(reading->channels[0].temperature_C[9]));
  EXPECT_EQ(reading->channels[1].temperature_C[9], tenths(9, 1) / 10.0);
}

// Source: the texts themselves. What is no statement of the interval leaves the rows without times.
TEST(OddRows, WordsThatAreNoStatementOfTheIntervalGiveNone) {
  const std::string table = "No,U1,R118\n" + plain_body(2, ",", index_of);
  for (const std::string above :
       {"Belt 2 rows per section", "Note: 4 points per second line", "Start,08:00:00\nEnd of shift,08:00:50",
        "From: 08:00:00\nTo: 08:00:50", "Duration: 68 s"}) {
    const auto reading = read_bytes("a.csv", above + "\n" + table);
    ASSERT_FALSE(reading) << above;
    EXPECT_NE(reading.error().text().find("no stated interval"), std::string::npos) << reading.error().text();
  }
  for (const std::string below : {"Slope calculated over interval 5 s", "Control: 3 readings per second",
                                  "Start 10:00:00\nEnd 10:00:50", "Cleaning interval: 5 s"}) {
    const auto reading = read_bytes("a.csv", table + "\n" + below + "\n");
    ASSERT_FALSE(reading) << below;
    EXPECT_NE(reading.error().text().find("no stated interval"), std::string::npos) << reading.error().text();
  }
}

// Source: the text itself. A step that a start and an end leave is told as an assumption.
TEST(OddRows, AStepByStartAndEndIsAssumed) {
  const auto reading =
      read_bytes("a.csv", "Start: 10:00:00\nEnd: 10:00:50\nNo,U1,R118\n" + plain_body(2, ",", index_of));
  ASSERT_TRUE(reading) << reading.error().text();
  const auto& assumed = reading->read_as.assumed;
  EXPECT_TRUE(std::any_of(assumed.begin(), assumed.end(), [](const auto& a) { return a.chosen == "0.5 s"; }));
}

// Source: the text itself. A column that moves as the board does is not set aside in silence.
TEST(OddRows, WhatIsSetAsideThoughItMovesLikeABoardIsAWarning) {
  for (const std::string head : {"Time (s),U1,U1 max\n", "Time (s),U1,Zone pad\n"}) {
    const auto reading =
        read_bytes("a.csv", head + body([](int i) {
                              return std::vector<std::string>{half_seconds(i), reading_at(i, 0), reading_at(i, 1)};
                            }));
    ASSERT_TRUE(reading) << reading.error().text();
    ASSERT_EQ(reading->channels.size(), 1U) << head;
    EXPECT_EQ(reading->warnings.size(), 1U) << head;
  }
}

// Source: the text itself.
TEST(OddRows, StatisticsOfEachOfSeveralChannelsAreNoWarning) {
  const auto reading = read_bytes("a.csv", with_statistics("Time (s),U1,U1 min,U1 max,R118,R118 min,R118 max\n"));
  ASSERT_TRUE(reading) << reading.error().text();
  EXPECT_TRUE(reading->warnings.empty());
}

// Source: the page itself. A log to the left of a wider and longer table of numbers is not emptied.
TEST(OddRows, ALogBesideAWiderTableIsRead) {
  std::string page = "<table>";
  for (int i = 0; i < 5 * kRows; ++i) {
    const bool log = i < kRows;
    page += fmt::format("<tr><td>{}</td><td>{}</td><td></td>", log ? half_seconds(i) : "", log ? reading_at(i, 0) : "");
    for (int k = 1; k < 6; ++k) page += fmt::format("<td>{}</td>", i * k % 97);
    page += "</tr>";
  }
  const auto reading = read_bytes("a.html", page + "</table>");
  ASSERT_TRUE(reading) << reading.error().text();
  const auto& first = reading->channels.front();
  ASSERT_EQ(first.temperature_C.size(), static_cast<std::size_t>(kRows));
  for (int i = 0; i < kRows; ++i) EXPECT_EQ(first.temperature_C[static_cast<std::size_t>(i)], tenths(i, 0) / 10.0);
}

// Source: the text itself.
TEST(OddRows, ARemarkThatTheSensorWasOpenLeavesNoReading) {
  std::string text = "Time (s),U1,R118\n";
  for (int i = 0; i < kRows; ++i)
    text += fmt::format("{},{},{}{}\n", half_seconds(i), reading_at(i, 0), reading_at(i, 1),
                        i == 9    ? " ! sensor open"
                        : i == 12 ? " # over range"
                                  : "");
  const auto reading = read_bytes("a.csv", text);
  ASSERT_TRUE(reading) << reading.error().text();
  const auto& readings = reading->channels.at(1).temperature_C;
  EXPECT_TRUE(std::isnan(readings[9]));
  EXPECT_TRUE(std::isnan(readings[12]));
  EXPECT_EQ(readings[10], tenths(10, 1) / 10.0);
  EXPECT_EQ(reading->read_as.notes.size(), 2U);
  // Within a row it is no remark.
  const auto within =
      read_bytes("a.csv", "Time (s),U1,R118\n" + plain_body(2) + "50.0,235.0 ! sensor open,25.0\n51.0,25.0,25.0\n");
  EXPECT_FALSE(within);
}

// Source: the text itself. Blanks above a channel that rises in a straight line: its rows stay.
TEST(OddRows, BlanksAboveAStraightRiseAreRowsOfTheTable) {
  std::string text = "Time (s),U1 (°C),R2 (°C)\n";
  for (int i = 0; i < 200; ++i)
    text += fmt::format("{},{},{}\n", half_seconds(i), i < 4 ? "" : decimal(250 + 10 * i), decimal(240 + 9 * i));
  const auto reading = read_bytes("a.csv", text);
  ASSERT_TRUE(reading) << reading.error().text();
  ASSERT_EQ(reading->channels.size(), 2U);
  EXPECT_EQ(reading->channels[0].temperature_C.size(), 200U);
  EXPECT_TRUE(std::isnan(reading->channels[0].temperature_C[0]));
}

// Source: the text itself; the lines are those of the file.
TEST(OddRows, LinesAboveLabelledOnesKeepTheirNumbers) {
  std::string text = "Lot: none\nUnit: furlong\n";
  for (int i = 0; i < kRows; ++i)
    text += fmt::format("T={} C1={} C2={}\n", half_seconds(i), reading_at(i, 0), reading_at(i, 1));
  const auto reading = read_bytes("a.txt", text);
  ASSERT_FALSE(reading);
  EXPECT_EQ(reading.error().where.line, 2) << reading.error().text();
}

// Source: the text itself.
TEST(OddRows, WordsBeforeTheFirstLabelOfEachLineNameNothing) {
  std::string text;
  for (int i = 0; i < kRows; ++i)
    text += fmt::format("Mar 12 {} rig7 logger[311]: T1={} T2={}\n", clock_of(i), reading_at(i, 0), reading_at(i, 1));
  const auto reading = read_bytes("a.log", text);
  ASSERT_TRUE(reading) << reading.error().text();
  ASSERT_EQ(reading->channels.size(), 2U);
  EXPECT_EQ(reading->channels[0].name, "T1");
  EXPECT_EQ(reading->channels[1].name, "T2");
  EXPECT_NEAR(reading->channels[0].time_s->back(), 0.5 * (kRows - 1), 1e-6);
}

// Source: the layout itself.
TEST(OddRows, AColumnThatTheLayoutNamesAndTheLogLacksIsNamed) {
  Options options;
  options.layout.emplace();
  options.layout->channels.resize(1);
  options.layout->channels.back().column = 7;
  options.layout->channels.back().name = "U12";
  const auto reading = read_bytes("a.csv", "Time (s),U1,R118\n" + plain_body(2), options);
  ASSERT_FALSE(reading);
  EXPECT_EQ(reading.error().found, "3 columns");
  EXPECT_EQ(reading.error().expected, "column 7 that the layout names");
}

}  // namespace
}  // namespace ovenwright::log
