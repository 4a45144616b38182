#include <gtest/gtest.h>

#include <string>

#include "core/log/number.h"
#include "core/log/time_text.h"
#include "core/log/units.h"
#include "core/log/words.h"

namespace ovenwright::log {
namespace {

struct NumberCase {
  const char* name;
  const char* text;
  char decimal;
  double value;
  int decimals;
  const char* rest;
};
void PrintTo(const NumberCase& c, std::ostream* os) { *os << c.name; }
class NumberTexts : public testing::TestWithParam<NumberCase> {};

// Source: the texts themselves.
TEST_P(NumberTexts, AreRead) {
  const auto number = read_number(GetParam().text, GetParam().decimal);
  ASSERT_TRUE(number);
  EXPECT_EQ(number->value, GetParam().value);
  EXPECT_EQ(number->decimals, GetParam().decimals);
  EXPECT_EQ(number->rest, GetParam().rest);
}
INSTANTIATE_TEST_SUITE_P(
    Texts, NumberTexts,
    testing::Values(
        NumberCase{"plain", "25.3", '.', 25.3, 1, ""}, NumberCase{"comma", "25,3", ',', 25.3, 1, ""},
        NumberCase{"whole", "1200", '.', 1200, -1, ""}, NumberCase{"plus", "+25.30", '.', 25.3, 2, ""},
        NumberCase{"minus_apart", "- 4.5", '.', -4.5, 1, ""}, NumberCase{"thousands", "1,234.5", '.', 1234.5, 1, ""},
        NumberCase{"thousands_german", "1.234.567,5", ',', 1234567.5, 1, ""},
        NumberCase{"thousands_swiss", "1'234.5", '.', 1234.5, 1, ""},
        NumberCase{"no_thousands", "1,23", '.', 1, -1, ",23"}, NumberCase{"leading_point", ".5", '.', 0.5, 1, ""},
        NumberCase{"trailing_point", "5.", '.', 5, 0, ""}, NumberCase{"exponent", "2.5E+02", '.', 250, 1, ""},
        NumberCase{"unit", "25.3 °C", '.', 25.3, 1, "°C"},
        // 2^53 + 1 lies between two doubles: to even.
        NumberCase{"past_2_to_53", "9007199254740993", '.', 9007199254740992.0, -1, ""},
        NumberCase{"many_digits", "0.1000000000000000055511151231257827", '.', 0.1, 34, ""}),
    [](const auto& c) { return std::string{c.param.name}; });

TEST(NumberTexts, WhatIsNone) {
  for (const char* text : {"", "-", ".", "abc", "+x", "e5"}) EXPECT_FALSE(read_number(text, '.')) << text;
}

struct UnitCase {
  const char* name;
  const char* text;
  Quantity quantity;
  const char* unit;
  double factor;
  double scale;
};
void PrintTo(const UnitCase& c, std::ostream* os) { *os << c.name; }
class UnitTexts : public testing::TestWithParam<UnitCase> {};

TEST_P(UnitTexts, AreKnown) {
  const auto unit = parse_unit(GetParam().text);
  ASSERT_TRUE(unit);
  EXPECT_EQ(unit->quantity, GetParam().quantity);
  if (unit->quantity == Quantity::kTemperature || unit->quantity == Quantity::kVoltage) {
    EXPECT_EQ(unit->name, GetParam().unit);
  }
  EXPECT_EQ(unit->factor, GetParam().factor);
  EXPECT_EQ(unit->scale, GetParam().scale);
}
using enum Quantity;
INSTANTIATE_TEST_SUITE_P(
    Texts, UnitTexts,
    testing::Values(
        UnitCase{"ring", "°C", kTemperature, "degC", 1, 1}, UnitCase{"one_sign", "℃", kTemperature, "degC", 1, 1},
        UnitCase{"words", "deg. C", kTemperature, "degC", 1, 1},
        UnitCase{"capitals", "DEGF", kTemperature, "degF", 1, 1},
        UnitCase{"chinese", "摄氏度", kTemperature, "degC", 1, 1},
        UnitCase{"kelvin", "Kelvin", kTemperature, "K", 1, 1},
        UnitCase{"tenths", "0.1 °C", kTemperature, "degC", 1, 0.1},
        UnitCase{"tenths_fraction", "1/10 °C", kTemperature, "degC", 1, 0.1},
        UnitCase{"times_ten", "°C x10", kTemperature, "degC", 1, 10},
        UnitCase{"millivolts", "mV", kVoltage, "mV", 1, 1}, UnitCase{"microvolts", "µV", kVoltage, "mV", 1e-3, 1},
        UnitCase{"seconds", "sec.", kTime, "", 1, 1}, UnitCase{"milliseconds", "ms", kTime, "", 1e-3, 1},
        UnitCase{"minutes_chinese", "分钟", kTime, "", 60, 1}, UnitCase{"hours", "Std", kTime, "", 3600, 1},
        UnitCase{"pattern", "hh:mm:ss", kClock, "", 1, 1}, UnitCase{"speed", "mm/min", kOther, "", 1, 1},
        UnitCase{"oxygen", "ppm", kOther, "", 1, 1}, UnitCase{"rankine", "°R", kUnknownTemperature, "", 1, 1}),
    [](const auto& c) { return std::string{c.param.name}; });

TEST(UnitTexts, WhatIsNone) {
  for (const char* text : {"", "furlong", "U12 corner", "TC1", "C10", "25.3"}) EXPECT_FALSE(parse_unit(text)) << text;
}

struct TimeCase {
  const char* name;
  const char* text;
  bool date, clock;
  double clock_s;
};
void PrintTo(const TimeCase& c, std::ostream* os) { *os << c.name; }
class TimeTexts : public testing::TestWithParam<TimeCase> {};

TEST_P(TimeTexts, AreRead) {
  const auto time = read_time_text(GetParam().text);
  ASSERT_TRUE(time);
  EXPECT_EQ(time->has_date, GetParam().date);
  EXPECT_EQ(time->has_clock, GetParam().clock);
  if (time->has_clock) {
    EXPECT_NEAR(time->clock_s, GetParam().clock_s, 1e-9);
  }
}
constexpr double kMorning = 9 * 3600 + 14 * 60 + 22;
INSTANTIATE_TEST_SUITE_P(Texts, TimeTexts,
                         testing::Values(TimeCase{"clock", "09:14:22", false, true, kMorning},
                                         TimeCase{"fraction", "9:14:22,5", false, true, kMorning + 0.5},
                                         TimeCase{"milliseconds", "09:14:22:250", false, true, kMorning + 0.25},
                                         TimeCase{"iso", "2031-03-12T09:14:22.5Z", true, true, kMorning + 0.5},
                                         TimeCase{"german", "12.03.2031 09:14:22", true, true, kMorning},
                                         TimeCase{"month_name", "12-Mar-2031 09:14:22", true, true, kMorning},
                                         TimeCase{"month_name_french", "12 févr. 2031", true, false, 0},
                                         TimeCase{"afternoon", "09:14:22 PM", false, true, kMorning + 12 * 3600},
                                         TimeCase{"afternoon_chinese", "下午 09:14:22", false, true,
                                                  kMorning + 12 * 3600},
                                         TimeCase{"compact", "20310312T091422", true, true, kMorning},
                                         TimeCase{"letters", "9h14m22s", false, true, kMorning},
                                         TimeCase{"whole_days", "1 day, 9:14:22", false, true, 86400 + kMorning},
                                         TimeCase{"no_days", "0 days 09:14:22", false, true, kMorning},
                                         TimeCase{"days_and_point", "1.09:14:22", false, true, 86400 + kMorning},
                                         TimeCase{"date_alone", "2031/3/12", true, false, 0}),
                         [](const auto& c) { return std::string{c.param.name}; });

TEST(TimeTexts, WhatIsNone) {
  for (const char* text : {"", "25.3", "TC1", "99:99:99", "2031-13-45", "9:14:22:x", "12x7"})
    EXPECT_FALSE(read_time_text(text)) << text;
}

TEST(WordTexts, SayWhatAColumnIs) {
  EXPECT_TRUE(words_in("Elapsed time") & kTimeWord);
  EXPECT_TRUE(words_in("Uhrzeit") & kTimeWord);
  EXPECT_TRUE(words_in("采样时间") & kTimeWord);
  EXPECT_TRUE(words_in("Cold junction") & kColdJunctionWord);
  EXPECT_TRUE(words_in("O2 (ppm)") & kOtherWord);
  EXPECT_EQ(words_in("furlong"), kNoWord);
  EXPECT_TRUE(means_open("----"));
  EXPECT_TRUE(means_open("断线"));
  EXPECT_TRUE(means_over("ol"));
  EXPECT_FALSE(means_open("25.3"));
}

}  // namespace
}  // namespace ovenwright::log
