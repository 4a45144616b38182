#include "app/desktop/text/format.h"

#include <gtest/gtest.h>

namespace ovenwright::desktop {
namespace {

using Quantity = Format::Quantity;
const Format kCelsius(TemperatureUnit::kCelsius, SpeedUnit::kMillimetresPerMinute, QLocale::c());
const Format kFahrenheit(TemperatureUnit::kFahrenheit, SpeedUnit::kInchesPerMinute, QLocale::c());

TEST(Format, TemperaturesAndDifferencesConvertByTheirOwnRule) {
  // Source: definition of the degree Fahrenheit, t/°F = 1.8 t/°C + 32; differences, rates and areas have no offset.
  EXPECT_DOUBLE_EQ(kFahrenheit.shown(100, Quantity::kTemperature), 212);
  EXPECT_DOUBLE_EQ(kFahrenheit.shown(100, Quantity::kDifference), 180);
  EXPECT_DOUBLE_EQ(kFahrenheit.shown(2.5, Quantity::kRate), 4.5);
  EXPECT_DOUBLE_EQ(kFahrenheit.shown(90, Quantity::kTime), 90);
  EXPECT_NEAR(kFahrenheit.fromShown(212, Quantity::kTemperature), 100, 1e-9);  // rounding of a difference of 200
  EXPECT_DOUBLE_EQ(kCelsius.shown(100, Quantity::kTemperature), 100);
}

TEST(Format, SpeedInInchesIsByTheInternationalInch) {
  EXPECT_EQ(kFahrenheit.speed(810), QStringLiteral("31.9 in/min"));  // 810 / 25.4 = 31.889…
  EXPECT_EQ(kCelsius.speed(810), QStringLiteral("810 mm/min"));
  EXPECT_NEAR(kFahrenheit.fromShownSpeed(kFahrenheit.shownSpeed(810)), 810, 1e-9);  // rounding of doubles
}

TEST(Format, WhatIsNotNothingNeverReadsAsNothing) {
  EXPECT_EQ(kCelsius.distance(0.04, Quantity::kDifference, 1), QStringLiteral("0.04"));
  EXPECT_EQ(kCelsius.distance(2.9, Quantity::kDifference, 1), QStringLiteral("2.9"));
  EXPECT_EQ(kFahrenheit.distance(2.5, Quantity::kDifference, 1), QStringLiteral("4.5"));  // 2.5 × 1.8
}

TEST(Format, MinusIsTheMathematicalOneAndNothingHasNoSign) {
  EXPECT_EQ(kCelsius.number(-39, 0), QString(QChar(0x2212)) + QStringLiteral("39"));
  EXPECT_EQ(kCelsius.number(-0.04, 1), QStringLiteral("0.0"));
}

TEST(Format, LimitsAreAsShortAsTheyWereWritten) {
  EXPECT_EQ(kCelsius.limit(2.5, Quantity::kRate), QStringLiteral("2.5"));
  EXPECT_EQ(kCelsius.limit(235, Quantity::kTemperature), QStringLiteral("235"));
  EXPECT_EQ(kFahrenheit.limit(217, Quantity::kTemperature), QStringLiteral("422.6"));
}

TEST(Format, DecimalsFollowTheLocale) {
  const Format german(TemperatureUnit::kCelsius, SpeedUnit::kMillimetresPerMinute, QLocale(QLocale::German));
  EXPECT_EQ(german.temperature(232.1), QStringLiteral("232,1"));
}

}  // namespace
}  // namespace ovenwright::desktop
