#include "core/log/cell_text.h"

#include <gtest/gtest.h>

#include <string>
#include <utility>

namespace ovenwright::log {
namespace {

// Source: ECMA-376 part 1, 18.8.31, the meaning of each code.
TEST(NumberKind, IsFoundFromTheFormatCode) {
  for (const char* code : {"General", "0", "0.00E+00", "#,##0.00 \"days\"", "[Red]0.0", "0.0\\s", "_-* #,##0.00_-", "@",
                           "[$-409]0.0", "\"h:mm\"0", "0.00 [$day-1]", "#;d", "", "\"open", "[h"}) {
    EXPECT_EQ(number_kind(code), NumberKind::kNumber) << code;
  }
  for (const char* code :
       {"yyyy-mm-dd", "m/d/yy", "d mmm", "mmm", "mmm-yy", "[$-804]yyyy\"年\"m\"月\"d\"日\"", "DD.MM.YYYY"}) {
    EXPECT_EQ(number_kind(code), NumberKind::kDate) << code;
  }
  for (const char* code : {"yyyy-mm-dd hh:mm:ss.000", "m/d/yy h:mm", "[$-F400]d.m. h:mm AM/PM", "yyyy/m/d\\ ss"}) {
    EXPECT_EQ(number_kind(code), NumberKind::kDateTime) << code;
  }
  for (const char* code : {"h:mm", "[h]:mm:ss", "[mm]:ss.0", "mm:ss", "h\"时\"mm\"分\"", "[ss].00", "hh:mm:ss;@",
                           "[$-409]h:mm:ss AM/PM"}) {
    EXPECT_EQ(number_kind(code), NumberKind::kTime) << code;
  }
}

// Source: ECMA-376 part 1, 18.8.30.
TEST(NumberKind, IsKnownForBuiltInFormats) {
  for (const int id : {0, 1, 2, 9, 11, 13, 37, 49, -1, 164})
    EXPECT_EQ(builtin_number_kind(id), NumberKind::kNumber) << id;
  for (const int id : {14, 15, 16, 17}) EXPECT_EQ(builtin_number_kind(id), NumberKind::kDate) << id;
  for (const int id : {18, 19, 20, 21, 45, 46, 47}) EXPECT_EQ(builtin_number_kind(id), NumberKind::kTime) << id;
  EXPECT_EQ(builtin_number_kind(22), NumberKind::kDateTime);
}

// Source: the calendar. Serial 25569 is 1970-01-01; 1 is 1900-01-01, 61 is 1900-03-01 with the day 60 that never was.
TEST(SerialDays, AreDatesAndTimes) {
  EXPECT_EQ(serial_as_text(25569, NumberKind::kDate, false), "1970-01-01");
  EXPECT_EQ(serial_as_text(25569, NumberKind::kDateTime, false), "1970-01-01T00:00:00");
  EXPECT_EQ(serial_as_text(25569.25, NumberKind::kDate, false), "1970-01-01T06:00:00");
  EXPECT_EQ(serial_as_text(1, NumberKind::kDate, false), "1900-01-01");
  EXPECT_EQ(serial_as_text(61, NumberKind::kDate, false), "1900-03-01");
  EXPECT_EQ(serial_as_text(24107, NumberKind::kDate, true), "1970-01-01");
  EXPECT_EQ(serial_as_text(2958465, NumberKind::kDate, false), "9999-12-31");
  EXPECT_EQ(serial_as_text(0.5, NumberKind::kTime, false), "12:00:00");
  EXPECT_EQ(serial_as_text(0.5, NumberKind::kDateTime, false), "12:00:00");
  EXPECT_EQ(serial_as_text(1.5, NumberKind::kTime, false), "36:00:00");
}

// A serial day number near today has a grain of 7e-12 days, 0.6 µs: steps of a millisecond must come out as such.
TEST(SerialDays, KeepMilliseconds) {
  for (int i = 0; i < 1000; ++i) {
    const auto text =
        serial_as_text(47919 + (9 * 3600 + 14 * 60 + 22 + i / 1000.0) / 86400, NumberKind::kDateTime, false);
    std::string want = "2031-03-12T09:14:22." + std::to_string(1000 + i).substr(1);
    while (want.back() == '0') want.pop_back();
    if (want.back() == '.') want.pop_back();
    EXPECT_EQ(text, want);
  }
}

TEST(SerialDays, OutsideTheCalendarStayNumbers) {
  EXPECT_EQ(serial_as_text(-1.5, NumberKind::kDate, false), "-1.5");
  EXPECT_EQ(serial_as_text(3e6, NumberKind::kDate, false), "3e+06");
}

TEST(Numbers, StandAsTheShortestTextThatReadsBackTheSame) {
  for (const auto& [stored, text] : {std::pair{"25.100000000000001", "25.1"},
                                     {"0.1", "0.1"},
                                     {"1E3", "1000"},
                                     {"1.5E-2", "0.015"},
                                     {"-3.50", "-3.5"},
                                     {"+4", "4"},
                                     {"1e22", "1e+22"},
                                     {"0", "0"},
                                     {"217", "217"},
                                     {"", ""},
                                     {"n/a", "n/a"},
                                     {"1,5", "1,5"},
                                     {"inf", "inf"},
                                     {"1e999", "1e999"}}) {
    EXPECT_EQ(number_as_text(stored), text) << stored;
  }
}

// Source: ISO 8601.
TEST(Durations, StandAsHoursMinutesSeconds) {
  for (const auto& [duration, text] : {std::pair{"PT09H14M22.5S", "9:14:22.5"},
                                       {"PT00H00M00S", "0:00:00"},
                                       {"PT25H", "25:00:00"},
                                       {"P1DT1M", "24:01:00"},
                                       {"PT0.0005S", "0:00:00.0005"},
                                       {"P", "P"},
                                       {"PT", "PT"},
                                       {"P1Y", "P1Y"},
                                       {"PT1", "PT1"},
                                       {"12:00", "12:00"},
                                       {"PT-1S", "PT-1S"},
                                       {"PT1e300H", "PT1e300H"}}) {
    EXPECT_EQ(duration_as_text(duration), text) << duration;
  }
}

TEST(Fractions, LoseTheirZeros) {
  EXPECT_EQ(trim_fraction("2031-03-12T09:14:22.500000000"), "2031-03-12T09:14:22.5");
  EXPECT_EQ(trim_fraction("2031-03-12T09:14:22.000"), "2031-03-12T09:14:22");
  EXPECT_EQ(trim_fraction("2031-03-12"), "2031-03-12");
  EXPECT_EQ(trim_fraction("09:14:22.50Z"), "09:14:22.50Z");
}

}  // namespace
}  // namespace ovenwright::log
