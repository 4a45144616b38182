#include "core/log/reading.h"

#include <fmt/format.h>
#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <string>
#include <string_view>
#include <tuple>
#include <vector>

#include "core/log/labelled_lines.h"
#include "core/log/row_order.h"

namespace ovenwright::log {
namespace {

// Source: the text itself.
TEST(LogRead, PlainCommaLog) {
  const auto reading =
      read_bytes("a.csv", "Time (s),U1 center (°C),U1 corner (°C)\n0,26.9,27.0\n0.5,27.1,\n1,27.1,26.5\n");
  ASSERT_TRUE(reading) << reading.error().text();
  ASSERT_EQ(reading->channels.size(), 2U);
  EXPECT_EQ(reading->channels[0].name, "U1 center");
  EXPECT_EQ(*reading->channels[0].time_s, (std::vector<double>{0, 0.5, 1}));
  EXPECT_EQ(reading->channels[0].temperature_C, (std::vector<double>{26.9, 27.1, 27.1}));
}

// A note that no unit is stated would be wrong: it is the whole name.
TEST(LogRead, AUnitOfTimeMayBeTheWholeNameOfTheColumn) {
  const auto seconds = read_bytes("a.csv", "s,TC1 (°C)\n0,25\n1,26\n2,27\n3,28\n");
  ASSERT_TRUE(seconds) << seconds.error().text();
  EXPECT_TRUE(seconds->read_as.notes.empty());
  EXPECT_EQ(*seconds->channels[0].time_s, (std::vector<double>{0, 1, 2, 3}));
}

// Source: the text itself. Groups whose parts are called the same are as many channels.
TEST(LogRead, GroupsOfJsonRecordsWhosePartsAreCalledTheSame) {
  std::string list, lines;
  for (int i = 0; i < 40; ++i) {
    const auto record =
        fmt::format(R"({{"t_s": {}, "tc1": {{"value": {}.5}}, "tc2": {{"value": {}.5}}, "tc3": {{"value": {}.5}}}})", i,
                    25 + i, 26 + 2 * i, 27 + 3 * i);
    list += (i == 0 ? "[" : ",\n") + record;
    lines += record + "\n";
  }
  for (const auto& text : {list + "]", lines}) {
    const auto reading = read_bytes("a.json", text);
    ASSERT_TRUE(reading) << reading.error().text();
    ASSERT_EQ(reading->channels.size(), 3U);
    for (int k = 0; k < 3; ++k) {
      const auto& channel = reading->channels[static_cast<std::size_t>(k)];
      EXPECT_EQ(channel.name, fmt::format("tc{} value", k + 1));
      ASSERT_EQ(channel.temperature_C.size(), 40U);
      EXPECT_EQ(channel.temperature_C.front(), 25.5 + k);
      EXPECT_EQ(channel.temperature_C.back(), 25.5 + k + 39 * (k + 1));
    }
  }
}

// Source: the text itself. A blank beside every second reading is no broken wire.
TEST(LogRead, AChannelScannedLessOftenKeepsItsOwnTimes) {
  std::string text = "Time (s),U1 (°C),R118 (°C)\n";
  for (int i = 0; i < 40; ++i)
    text += fmt::format("{},{}.5,{}\n", i, 25 + i, i % 4 == 0 ? fmt::format("{}.5", 30 + i) : "");
  const auto reading = read_bytes("a.csv", text);
  ASSERT_TRUE(reading) << reading.error().text();
  ASSERT_EQ(reading->channels.size(), 2U);
  EXPECT_EQ(reading->channels[0].time_s->size(), 40U);
  const auto& slow = reading->channels[1];
  ASSERT_EQ(slow.time_s->size(), 10U);
  for (std::size_t i = 0; i < 10; ++i) {
    EXPECT_EQ((*slow.time_s)[i], 4.0 * static_cast<double>(i));
    EXPECT_EQ(slow.temperature_C[i], 30.5 + 4.0 * static_cast<double>(i));
  }
}

// Source: the text itself. What an instrument writes for an open channel does not make it a pressure or a count.
TEST(LogRead, AChannelThatReadsOneFixedNumberIsStillAChannel) {
  for (const char* fixed : {"9999", "32767", "-9999", "-999.9", "6553.5", "1.00E+38", "-32768"}) {
    std::string text = "Time (s),U1,R118,C44\n";
    for (int i = 0; i < 60; ++i)
      text += fmt::format("{},{}.5,{},{}\n", i, 25 + i, fixed, i < 20 || i > 40 ? fmt::format("{}.5", 30 + i) : fixed);
    const auto reading = read_bytes("a.csv", text);
    ASSERT_TRUE(reading) << reading.error().text();
    ASSERT_EQ(reading->channels.size(), 3U) << fixed;
    EXPECT_EQ(reading->channels[2].temperature_C[10], 40.5) << fixed;
  }
}

// Source: the text itself.
TEST(LogRead, NamesBeyondTheLastColumnAreTold) {
  std::string text = "Time (s),U1 (°C),R118 (°C),C44 (°C)\n";
  for (int i = 0; i < 20; ++i) text += fmt::format("{},{}.5,{}.5\n", i, 25 + i, 30 + i);
  const auto reading = read_bytes("a.csv", text);
  ASSERT_TRUE(reading) << reading.error().text();
  EXPECT_EQ(reading->channels.size(), 2U);
  EXPECT_EQ(
      reading->read_as.notes,
      std::vector<std::string>{"The header names 4 columns and the rows have 3: the names are taken from the left."});
}

// Source: the text itself. A thermocouple that is plugged in later leaves blanks above its first reading; the rows and
// the header above them stay, also where the log ends before the curve turns.
TEST(Reading, BlanksAboveAReadingThatRisesAreRowsOfTheTable) {
  std::string text = "Time (s),U1 (°C),R2 (°C)\n";
  for (int i = 0; i < 200; ++i) {
    const auto number = [](double value) { return std::to_string(value).substr(0, 5); };
    text += number(100 + 0.5 * i) + "," + (i < 3 ? "" : number(25 + 0.5 * i + 0.002 * i * i)) + "," +
            number(25 + 0.4 * i + (i % 7 == 0 ? -1 : 0)) + "\n";
  }
  const auto reading = read_bytes("a.csv", text);
  ASSERT_TRUE(reading) << reading.error().text();
  ASSERT_EQ(reading->channels.size(), 2U);
  EXPECT_EQ(reading->channels[0].name, "U1");
  EXPECT_EQ(reading->channels[0].temperature_C.size(), 200U);
  EXPECT_TRUE(std::isnan(reading->channels[0].temperature_C[0]));
  EXPECT_DOUBLE_EQ(reading->channels[1].temperature_C[0], 24);
}

// Source: the text itself: words between blanks are no names.
TEST(LogRead, NamesOfSeveralWordsAreNoneTooMany) {
  std::string text = "Time (s)   U1 centre   R118 top\n";
  for (int i = 0; i < 20; ++i) text += fmt::format("{:8}   {:7}.5   {:6}.5\n", i, 25 + i, 30 + i);
  const auto reading = read_bytes("a.txt", text);
  ASSERT_TRUE(reading) << reading.error().text();
  ASSERT_EQ(reading->channels.size(), 2U);
  EXPECT_EQ(reading->channels[0].name, "U1 centre");
  for (const auto& note : reading->read_as.notes) EXPECT_EQ(note.find("names"), std::string::npos) << note;
}

// A row of a million cells took minutes before it was refused.
TEST(LogRead, RowsLongerThanAnyRunAreRefusedAtOnce) {
  std::string row;
  for (int i = 0; i < 300'000; ++i) row += "1,";
  row.back() = '\n';
  const auto reading = read_bytes("a.csv", row + row);
  ASSERT_FALSE(reading);
  EXPECT_EQ(reading.error().found, "300000 cells in a row");
  EXPECT_EQ(reading.error().where.line, 1);
}

// Worked by hand; each text is the shape of an export, its numbers invented.
std::string rows_of(const char* form, int count) {
  std::string text;
  for (int i = 0; i < count; ++i) {
    std::string row = form;
    for (auto at = row.find('@'); at != std::string::npos; at = row.find('@')) row.replace(at, 1, std::to_string(i));
    text += row + "\n";
  }
  return text;
}

TEST(LogHeaders, NamesOverPairsOfColumnsNameTheChannels) {
  const auto rows = rows_of("@.0,2@.5,@.1,3@.5", 9);
  for (const char* heads : {"R118,,J9,\n", "R118,,J9\n", "\"R118\",\"\",\"J9\",\"\"\n"}) {
    const auto reading = read_bytes("a.csv", heads + ("Time [s],Temp [°C],Time [s],Temp [°C]\n" + rows));
    ASSERT_TRUE(reading) << reading.error().text();
    ASSERT_EQ(reading->channels.size(), 2U);
    EXPECT_EQ(reading->channels[0].name, "R118");
    EXPECT_EQ(reading->channels[1].name, "J9");
    EXPECT_EQ(reading->channels[1].temperature_C.front(), 30.5);
  }
  const auto sides = read_bytes("a.csv", "Time (s),R118,,J9,\n,Top,Bottom,Top,Bottom\n" + rows_of("@,2@,2@,3@,4@", 9));
  ASSERT_TRUE(sides) << sides.error().text();
  ASSERT_EQ(sides->channels.size(), 4U);
  EXPECT_EQ(sides->channels[3].name, "J9 Bottom");
}

TEST(LogHeaders, GroupsOverNamesThatDifferAreNoNames) {
  const auto reading = read_bytes("a.csv", ",Left,,Right,\nTime (s),R1,R2,J1,J2\n" + rows_of("@,2@,2@,3@,4@", 9));
  ASSERT_TRUE(reading) << reading.error().text();
  EXPECT_EQ(reading->channels[2].name, "J1");
  // Nor is a line of notes, also where the names below it repeat.
  const auto notes = read_bytes("a.csv", "Board,Tern,,Lot,QM-2\nTime (s),U1,U1,R5,R5\n" + rows_of("@,2@,2@,3@,4@", 9));
  ASSERT_TRUE(notes) << notes.error().text();
  EXPECT_EQ(notes->channels[2].name, "R5");
}

TEST(LogHeaders, ACommentBehindTheHeaderDoesNotHideIt) {
  std::string text = "Distance (mm),R118,D7,J9\n# belt 750 mm/min\n";
  for (int i = 0; i < 20; ++i) {
    const int T = 25 + i * (20 - i);
    text += fmt::format("{},{},{}.5,{}\n", 12 * i, T, T, T - 1);
  }
  const auto reading = read_bytes("a.csv", text);
  ASSERT_FALSE(reading) << "a distance was read as a time";
  EXPECT_NE(reading.error().message.find("no column of times"), std::string::npos) << reading.error().text();
}

TEST(LogDecimals, EmptyColumnsAtTheEndAreNoDecimalCommas) {
  const auto reading = read_bytes("a.csv", "Time (s),R118,J9,,\n" + rows_of("@,2@.5,2@.6,,", 15));
  ASSERT_TRUE(reading) << reading.error().text();
  EXPECT_TRUE(reading->read_as.notes.empty());
  EXPECT_EQ(reading->read_as.decimal, ".");
}

// Source: the text itself. Long logs are read piece by piece, by several threads: a cell in quotes that holds
// delimiters and line ends, wherever it stands, belongs to its row, and the lines behind it count on.
TEST(LogRead, QuotesFarIntoALongLogArePartOfTheirRow) {
  constexpr int kManyRows = 60'000;
  constexpr std::string_view kQuoted = "\"1,2,3\n4,5,6\n7\"";
  for (const int every : {kManyRows, 7001, 20'011}) {
    std::string text = "Time (s),TC1 (°C),note,TC2 (°C)\n";
    for (int i = 0; i < kManyRows; ++i) {
      const bool quoted = i % every == every - 1;
      text += fmt::format("{}.{:03},{}.5,{},{}.25\n", i / 1000, i % 1000, 25 + i % 200,
                          quoted ? kQuoted : std::string_view{"as it was"}, 30 + i % 100);
    }
    for (const unsigned threads : {1U, 3U}) {
      Options options;
      options.threads = threads;
      const auto reading = read_bytes("long.csv", text, options);
      ASSERT_TRUE(reading) << reading.error().text();
      ASSERT_EQ(reading->channels.size(), 2U);
      ASSERT_EQ(reading->channels[0].temperature_C.size(), static_cast<std::size_t>(kManyRows));
      for (std::size_t i = 0; i < kManyRows; ++i) {
        ASSERT_EQ((*reading->channels[0].time_s)[i], static_cast<double>(i) / 1000) << i;
        ASSERT_EQ(reading->channels[0].temperature_C[i], 25.5 + static_cast<double>(i % 200)) << i;
        ASSERT_EQ(reading->channels[1].temperature_C[i], 30.25 + static_cast<double>(i % 100)) << i;
      }
    }
    // A damaged cell behind the quotes is named by its line in the file.
    const auto bad = text.rfind(",as it was");
    ASSERT_EQ(text.substr(bad - 2, 2), ".5");
    text.replace(bad - 2, 2, ".x");
    const auto lines = std::count(text.begin(), text.begin() + static_cast<std::ptrdiff_t>(bad), '\n') + 1;
    const auto refused = read_bytes("long.csv", text);
    ASSERT_FALSE(refused);
    EXPECT_EQ(refused.error().where.line, lines);
  }
}

/// A hill of sixty rows 5 s apart, from a start to a top, with a unit stated.
std::string hill(const char* unit, double start, double top) {
  std::string text = std::string("Time (s),TC1 (") + unit + "),TC2 (" + unit + ")\n";
  for (int i = 0; i < 60; ++i) {
    const double share = i < 12 ? 0 : i < 40 ? (i - 12) / 28.0 : i < 50 ? 1 : (60 - i) / 10.0;
    const double T = start + (top - start) * share;
    text += std::to_string(5 * i) + "," + std::to_string(T) + "," + std::to_string(T - 1) + "\n";
  }
  return text;
}

// Source: °C = (°F - 32) / 1.8: 246 °F is 119 °C, 475 °C read as °F is 246 °C. What is stated is kept.
TEST(StatedUnit, InWhichTheNumbersAreNoRunIsDoubted) {
  for (const auto& [unit, start, top, text] :
       {std::tuple{"°F", 25.0, 246.0,
                   "The file says °F, which makes the top 119 °C: no run. As °C it would be 246 °C."},
        std::tuple{"°C", 77.0, 475.0,
                   "The file says °C, which makes the top 475 °C: no run. As °F it would be 246 °C."}}) {
    const auto reading = read_bytes("a.csv", hill(unit, start, top));
    ASSERT_TRUE(reading) << reading.error().text();
    ASSERT_EQ(reading->read_as.assumed.size(), 1u) << unit;
    EXPECT_EQ(reading->read_as.assumed[0].text, text);
    EXPECT_EQ(reading->read_as.assumed[0].about, "unit");
    EXPECT_EQ(reading->read_as.unit, reading->read_as.assumed[0].chosen);
  }
  for (const auto& [unit, start, top] : {std::tuple{"°F", 77.0, 475.0}, std::tuple{"°C", 25.0, 246.0}}) {
    const auto reading = read_bytes("a.csv", hill(unit, start, top));
    ASSERT_TRUE(reading);
    EXPECT_TRUE(reading->read_as.assumed.empty()) << unit;
  }
}

// Source: K = °C + 273.15; 519.15 K is 246 °C, 246 K is -27.15 °C.
TEST(StatedUnit, OfKelvinIsDoubtedLikewiseAndWarnedOf) {
  for (const auto& [unit, start, top, text] :
       {std::tuple{"°C", 298.0, 519.15,
                   "The file says °C, which makes the top 519 °C: no run. As K it would be 246 °C."},
        std::tuple{"kelvin", 25.0, 246.0,
                   "The file says K, which makes the top -27 °C: no run. As °C it would be 246 °C."}}) {
    const auto reading = read_bytes("a.csv", hill(unit, start, top));
    ASSERT_TRUE(reading) << reading.error().text();
    ASSERT_EQ(reading->read_as.assumed.size(), 1u) << unit;
    EXPECT_EQ(reading->read_as.assumed[0].text, text);
    ASSERT_EQ(reading->warnings.size(), 1u);
    EXPECT_EQ(reading->warnings[0].message, text);
  }
}

std::string log_of(const std::vector<std::string>& channels, int rows, double lowest) {
  std::string text = "Time (s)";
  for (const auto& name : channels) text += "," + name + " (°C)";
  text += "\n";
  for (int i = 0; i < rows; ++i) {
    text += fmt::format("{:.1f}", 2.0 * i);
    for (std::size_t k = 0; k < channels.size(); ++k)
      text += fmt::format(",{:.1f}", lowest + i + 0.5 * static_cast<double>(k));
    text += "\n";
  }
  return text;
}

// Source: the text itself: 12 rows of one log above or below 27 of another.
TEST(SeveralLogs, TheLongestIsReadAndTheOtherNamedAndReadByItsHeaderLine) {
  const std::string early = log_of({"Lid", "Rail"}, 12, 30), late = log_of({"U1", "U2", "R118"}, 27, 50);
  for (const bool first : {true, false}) {
    const std::string text = "Lot QM-2304\n" + (first ? early + late : late + early);
    const auto reading = read_bytes("a.csv", text);
    ASSERT_TRUE(reading) << reading.error().text();
    ASSERT_EQ(reading->channels.size(), 3u);
    EXPECT_EQ(reading->channels[0].name, "U1");
    EXPECT_EQ(reading->channels[0].temperature_C.size(), 27u);
    const int other_line = first ? 2 : 30;
    ASSERT_EQ(reading->warnings.size(), 1u);
    EXPECT_EQ(reading->warnings[0].where.line, other_line);
    ASSERT_EQ(reading->read_as.assumed.size(), 1u);
    EXPECT_EQ(reading->read_as.assumed[0].about, "header");
    EXPECT_EQ(reading->read_as.assumed[0].other, std::to_string(other_line));
    EXPECT_EQ(reading->read_as.assumed[0].text,
              fmt::format("At line {} another table begins, of other channels: Lid Rail, 12 rows. It was not read.",
                          other_line));
    Options options;
    options.layout.emplace().header_line = other_line;
    const auto other = read_bytes("a.csv", text, options);
    ASSERT_TRUE(other) << other.error().text();
    ASSERT_EQ(other->channels.size(), 2u);
    EXPECT_EQ(other->channels[0].name, "Lid");
    EXPECT_EQ(other->channels[0].temperature_C.size(), 12u);
    EXPECT_EQ(other->channels[0].temperature_C.front(), 30);
  }
}

// Levels behind a log and setpoints above it are no logs.
TEST(SeveralLogs, TablesOfLevelsAndZonesAreNone) {
  const auto reading =
      read_bytes("a.csv", "Zone,Setpoint (°C),Air (°C)\n1,150,151\n2,160,161\n3,170,171\n\n" +
                              log_of({"U1", "U2"}, 40, 30) + "\nLevel (°C),Time above (s)\n150,80.0\n183,40.0\n");
  ASSERT_TRUE(reading) << reading.error().text();
  EXPECT_EQ(reading->channels[0].temperature_C.size(), 40u);
  EXPECT_TRUE(reading->warnings.empty());
  EXPECT_TRUE(reading->read_as.assumed.empty());
}

std::string sheet_of(const char* name, int rows) {
  const auto cell = [](const char* type, const std::string& text) {
    return fmt::format("<Cell><Data ss:Type=\"{}\">{}</Data></Cell>", type, text);
  };
  std::string text = fmt::format("<Worksheet ss:Name=\"{}\"><Table><Row>", name);
  for (const char* head : {"Time (s)", "U1 (°C)", "U2 (°C)"}) text += cell("String", head);
  text += "</Row>";
  for (int i = 0; i < rows; ++i) {
    text += "<Row>";
    for (const double value : {2.0 * i, 30.5 + i, 31.5 + i}) text += cell("Number", fmt::format("{}", value));
    text += "</Row>";
  }
  return text + "</Table></Worksheet>";
}

// Source: the text itself. A second run in a sheet of its own must not go unseen; a few rows beside a log are none.
TEST(SeveralLogs, AnotherSheetThatIsAsMuchALogIsWarnedOf) {
  for (const int rows : {40, 5}) {
    const auto reading =
        read_bytes("a.xml",
                   "<?xml version=\"1.0\"?><Workbook xmlns=\"urn:schemas-microsoft-com:office:spreadsheet\" "
                   "xmlns:ss=\"urn:schemas-microsoft-com:office:spreadsheet\">" +
                       sheet_of("Run A", 50) + sheet_of("Run B", rows) + "</Workbook>");
    ASSERT_TRUE(reading) << reading.error().text();
    ASSERT_EQ(reading->read_as.notes.size(), 1u);
    EXPECT_EQ(reading->read_as.notes[0], "Read from sheet Run A; also in the file: Run B.");
    ASSERT_EQ(reading->warnings.size(), rows == 40 ? 1u : 0u);
    if (!reading->warnings.empty()) {
      EXPECT_EQ(reading->warnings[0].message, reading->read_as.notes[0]);
    }
  }
}

// Source: memory of a table is its rows times its widest one: a name of its own in each line would take 15 GB.
TEST(NamedLines, ANameOfItsOwnInEveryLineIsNoTable) {
  std::string text, rotating;
  for (int i = 0; i < 30'000; ++i) {
    text += fmt::format("t=0.5 TC{}=25.0\n", i);
    rotating += fmt::format("t={} TC{}=25.0\n", i, i % 4000);
  }
  EXPECT_FALSE(labelled_lines(text));
  EXPECT_FALSE(labelled_lines(rotating));
  EXPECT_FALSE(read_bytes("a.log", text));
}

// Source: the text itself. Ten channels that take turns, each with its own time, are a log all the same.
TEST(NamedLines, ChannelsThatTakeTurnsAreATable) {
  std::string text;
  for (int i = 0; i < 20'000; ++i) text += fmt::format("t={} TC{}=25.0\n", i, i % 10);
  const auto grid = labelled_lines(text);
  ASSERT_TRUE(grid);
  EXPECT_EQ(grid->rows.size(), 20'001u);
  EXPECT_EQ(grid->rows[0].size(), 11u);
}

// Source: the text itself: the names stand in each line, none of which is a header.
TEST(NamedLines, NoLineIsTheHeader) {
  std::string text = "Lot: 7\nBoard U\n";
  for (int i = 0; i < 10; ++i) text += fmt::format("t={} TC1={}.5 TC2={}.0\n", i, 25 + 4 * i, 26 + 4 * i);
  const auto reading = read_bytes("a.log", text);
  ASSERT_TRUE(reading) << reading.error().text();
  ASSERT_EQ(reading->channels.size(), 2u);
  EXPECT_EQ(reading->read_as.header_line, 0);
  EXPECT_FALSE(reading->layout.header_line);
  Options options;
  options.layout = reading->layout;
  const auto again = read_bytes("a.log", text, options);
  ASSERT_TRUE(again) << again.error().text();
  EXPECT_EQ(again->channels[1].name, "TC2");
  EXPECT_EQ(again->channels[1].temperature_C, reading->channels[1].temperature_C);
  // What cannot be read is told where it stands, not read in another way.
  text.replace(text.find("TC2=34.0"), 8, "TC2=3x.0");
  const auto spoilt = read_bytes("a.log", text);
  ASSERT_FALSE(spoilt);
  EXPECT_EQ(spoilt.error().where.line, 5);
  EXPECT_EQ(spoilt.error().found, "3x.0");
}

// Source: the text itself: marks on readings look like names, the table is one at commas.
TEST(NamedLines, WhatIsNoSuchLogIsReadAsATable) {
  std::string text = "Time (s),TC1 (°C),note\n";
  for (int i = 0; i < 10; ++i) text += fmt::format("{},{}.5,a=1 b=2\n", i, 25 + 4 * i);
  EXPECT_TRUE(labelled_lines(text));
  const auto reading = read_bytes("a.csv", text);
  ASSERT_TRUE(reading) << reading.error().text();
  ASSERT_EQ(reading->channels.size(), 1u);
  EXPECT_EQ(reading->channels[0].name, "TC1");
  EXPECT_EQ(reading->channels[0].temperature_C[9], 61.5);
}

// Source: the text itself. A value is a few words; how a line of many is read does not grow with their square.
TEST(NamedLines, ValuesOfSeveralWordsAreReadWhole) {
  const auto rows_of = [](std::string_view line) {
    std::string text;
    for (int i = 0; i < 5; ++i) text += fmt::format("{}\n", line);
    const auto grid = labelled_lines(text);
    return grid ? grid->rows.back() : std::vector<std::string>{};
  };
  EXPECT_EQ(rows_of("t=0.5 TC1=25.0 ± 0.5 °C TC2=26.0"), (std::vector<std::string>{"0.5", "25.0 ± 0.5 °C", "26.0"}));
  EXPECT_EQ(rows_of("12.5 s; U1 top 25.3 ± 0.5 °C; U2 24.9 °C"),
            (std::vector<std::string>{"12.5 s", "25.3 ± 0.5 °C", "24.9 °C"}));
  std::string groups = "t=0.5 a=1", names = "12.5 s";
  for (int i = 0; i < 3000; ++i) groups += " 000";
  for (int i = 0; i < 4000; ++i) names += i == 0 ? "; a" : " a";
  EXPECT_EQ(rows_of("t=0.5 a=1 000 000 b=2"), (std::vector<std::string>{"0.5", "1 000 000", "2"}));
  EXPECT_TRUE(rows_of(groups + " b=2").empty());
  EXPECT_TRUE(rows_of(names).empty());
}

// Source: the text itself: readings in whole degrees of a place that stays cool rise and fall; what counts never does.
TEST(Counters, AChannelInWholeDegreesIsNone) {
  std::string text = "Time (s),TC1 (°C),TC2 (°C),Board underside,Part seen\n";
  for (int i = 0; i <= 40; ++i) {
    const int hill = i <= 30 ? i : 60 - i;
    text += fmt::format("{},{:.1f},{:.1f},{},{}\n", 5 * i, 25.4 + 7 * hill, 25.2 + 6.8 * hill, 25 + hill / 4, i / 10);
  }
  const auto reading = read_bytes("a.csv", text);
  ASSERT_TRUE(reading) << reading.error().text();
  ASSERT_EQ(reading->channels.size(), 3u);
  EXPECT_EQ(reading->channels[2].name, "Board underside");
  EXPECT_EQ(reading->channels[2].temperature_C[30], 32);
  ASSERT_EQ(reading->others.size(), 1u);
  EXPECT_EQ(reading->others[0].name, "Part seen");
}

// Source: the text itself: what an instrument adds to a line stands behind the names too, with blanks behind it.
TEST(LogHeaders, AChecksumBehindNamesIsNoName) {
  std::string text = "Time (s)\tTC1 (°C)\tTC2 (°C)*4F \n";
  for (int i = 0; i < 10; ++i) text += fmt::format("{}\t{}.5\t{}.0*3{}\n", i, 25 + 4 * i, 26 + 4 * i, i);
  const auto reading = read_bytes("a.txt", text);
  ASSERT_TRUE(reading) << reading.error().text();
  ASSERT_EQ(reading->channels.size(), 2u);
  EXPECT_EQ(reading->channels[1].name, "TC2");
}

// Source: the text itself: rows at 2 i s, each followed by one of another logger from 1.8 s before.
TEST(RowOrder, RowsOfTwoLoggersAmongEachOtherAreSorted) {
  std::string text = "Time (s),TC1 (°C)\n";
  for (int i = 1; i <= 40; ++i)
    text += fmt::format("{:.1f},{}\n{:.1f},{}\n", 2.0 * i, 30 + 2 * i, 2.0 * i - 1.8, 29 + 2 * i);
  const auto reading = read_bytes("a.csv", text);
  ASSERT_TRUE(reading) << reading.error().text();
  const auto& channel = reading->channels[0];
  ASSERT_EQ(channel.temperature_C.size(), 80u);
  for (std::size_t i = 1; i < 80; ++i) EXPECT_LT((*channel.time_s)[i - 1], (*channel.time_s)[i]);
  EXPECT_EQ(channel.temperature_C[0], 31);
  EXPECT_EQ(channel.temperature_C[1], 32);
  EXPECT_EQ(channel.temperature_C[2], 33);
}

// Source: the text itself: ten rows a second with whole seconds, set back by 2 s three times. 60 of 600 rows are
// earlier than one before: far from a third.
TEST(RowOrder, RowsOfOneTimeAreNotLost) {
  std::vector<double> times;
  for (int i = 0; i < 600; ++i) times.push_back(i / 10 - 2 * (i / 150));
  const RowOrder order = row_order(times);
  EXPECT_EQ(order.steps_back, 3u);
  EXPECT_EQ(order.kind, RowOrder::Kind::kForward);
  for (std::size_t i = 5; i < times.size(); i += 2) times[i] = std::nan("");
  EXPECT_EQ(row_order(times).kind, RowOrder::Kind::kForward);
  // Runs of ten rows that start anew: all but the first run lie before its end, or stand at it.
  for (std::size_t i = 0; i < times.size(); ++i) times[i] = static_cast<double>(i % 10);
  EXPECT_EQ(row_order(times).kind, RowOrder::Kind::kRestarts);
}

}  // namespace
}  // namespace ovenwright::log
