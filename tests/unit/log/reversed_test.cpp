#include "core/log/reversed.h"

#include <fmt/format.h>
#include <gtest/gtest.h>

#include <cmath>
#include <vector>

// A thermocouple whose wires are exchanged, put right.
namespace ovenwright::log {
namespace {

TEST(Reversed, ByVoltageUndoesWhatACompensatedInstrumentShows) {
  // Source: type K reference table (ITS-90, from memory), mV: 25 °C 1.000, 100 °C 4.096. The instrument meets
  // −(4.096 − 1.000), adds 1.000 and shows what belongs to −2.096 mV: −55.8 °C (table: −55 °C −2.067, −56 °C −2.103).
  // Tolerance: 0.1 °C of the shown reading's last digit at 36 µV/°C is 4 µV, 0.1 °C at 100 °C; twice that.
  std::vector<double> readings{-55.8, 25.0};
  turn_readings(readings, emf::Type::kK, Celsius{25}, TurnRule::kByVoltage);
  EXPECT_NEAR(readings[0], 100, 0.2);
  EXPECT_NEAR(readings[1], 25, 1e-6);  // at the reference the sign does not matter
}

TEST(Reversed, ByVoltageIsItsOwnInverse) {
  // Source: algebra, 2 E(r) − (2 E(r) − E(T)) = E(T), where both readings lie in the type's range.
  for (const auto type : {emf::Type::kK, emf::Type::kT, emf::Type::kN}) {
    std::vector<double> readings{0, 25, 60, 100, 140};
    const auto before = readings;
    for (int turn = 0; turn < 2; ++turn) turn_readings(readings, type, Celsius{24}, TurnRule::kByVoltage);
    for (std::size_t i = 0; i < readings.size(); ++i) EXPECT_NEAR(readings[i], before[i], 1e-5) << i;
  }
}

TEST(Reversed, MirroredIsExact) {
  std::vector<double> readings{25, -160, std::nan("")};
  turn_readings(readings, emf::Type::kK, Celsius{25}, TurnRule::kMirrored);
  EXPECT_EQ(readings[0], 25);
  EXPECT_EQ(readings[1], 210);
  EXPECT_TRUE(std::isnan(readings[2]));
}

TEST(Reversed, WhatNoVoltageBelongsToHasNoValue) {
  std::vector<double> readings{-290, 25};
  turn_readings(readings, emf::Type::kK, Celsius{25}, TurnRule::kByVoltage);
  EXPECT_FALSE(std::isfinite(readings[0]));
}

/// 25 °C for 10 s, then a hump to `top_C` at 60 s and back.
double course(int second, double top_C) {
  const double x = second < 10 ? 0 : (second - 10) / 100.0;
  return 25 + (top_C - 25) * 4 * x * (1 - x);
}

Layout reversed_column(int column) {
  Layout layout;
  for (int c = 2; c <= 4; ++c) {
    Layout::ChannelColumn channel;
    channel.column = c;
    channel.reversed = c == column;
    layout.channels.push_back(channel);
  }
  return layout;
}

TEST(Reversed, AMirroredChannelComesBackAsTheOthersAre) {
  std::string text = "Time (s),TC1 (°C),TC2 (°C),TC3 (°C)\n";
  for (int s = 0; s <= 110; ++s)
    text += fmt::format("{},{:.3f},{:.3f},{:.3f}\n", s, course(s, 240), course(s, 230), 50 - course(s, 235));
  Options options;
  options.layout = reversed_column(4);
  const auto reading = read_bytes("run.csv", text, options);
  ASSERT_TRUE(reading) << reading.error().text();
  ASSERT_EQ(reading->channels.size(), 3u);
  // Source: 2·25 − (50 − T) = T; the log has three decimals.
  EXPECT_NEAR(reading->channels[2].temperature_C[60], 235, 2e-3);
  EXPECT_NEAR(reading->channels[0].temperature_C[60], 240, 1e-3);
  ASSERT_FALSE(reading->read_as.assumed.empty());
  EXPECT_EQ(reading->read_as.assumed.back().about, "reversed");
  EXPECT_EQ(reading->read_as.assumed.back().chosen, "mirrored");
  // What was read is read again the same by its own layout.
  Options again;
  again.layout = reading->layout;
  const auto twice = read_bytes("run.csv", text, again);
  ASSERT_TRUE(twice) << twice.error().text();
  EXPECT_EQ(twice->channels[2].temperature_C, reading->channels[2].temperature_C);
}

TEST(Reversed, AChannelOfAnInstrumentThatKnowsTheTypeIsTurnedByVoltage) {
  const auto shown = [](double T_C) {  // the instrument of the first test, by the functions that emf_test.cpp checks
    const auto mV = 2 * *emf::voltage_mV(emf::Type::kK, Celsius{25}) - *emf::voltage_mV(emf::Type::kK, Celsius{T_C});
    return emf::temperature(emf::Type::kK, mV)->value;
  };
  std::string text = "Time (s),TC1 (°C),TC2 (°C),TC3 (°C)\n";
  for (int s = 0; s <= 110; ++s)
    text += fmt::format("{},{:.3f},{:.3f},{:.3f}\n", s, course(s, 180), course(s, 170), shown(course(s, 175)));
  Options options;
  options.layout = reversed_column(4);
  const auto reading = read_bytes("run.csv", text, options);
  ASSERT_TRUE(reading) << reading.error().text();
  EXPECT_EQ(reading->read_as.assumed.back().chosen, "by voltage");
  EXPECT_NEAR(reading->channels[2].temperature_C[60], 175,
              0.02);  // three decimals at −140 °C, 28 of 40 µV/°C, and of 25
  // Source: algebra, E(T) = 2 E(r) − E(shown): 1 °C less at the reference, 40.5 µV/°C, is 2 · 40.5 / 40.2 °C less at
  // 175.
  Options colder = options;
  colder.layout->cold_junction_C = 24;
  const auto off = read_bytes("run.csv", text, colder);
  ASSERT_TRUE(off) << off.error().text();
  EXPECT_NEAR(off->channels[2].temperature_C[60], 175 - 2.0, 0.1);
}

TEST(Reversed, VoltagesAreTurnedExactly) {
  std::string good = "Time (s),TC1 (mV),TC2 (mV),TC3 (mV)\nCold junction,25 °C\n", turned = good;
  for (int s = 0; s <= 60; ++s) {
    const double mV = 0.15 * s;
    good += fmt::format("{},{:.3f},{:.3f},{:.3f}\n", s, mV, mV + 0.1, mV);
    turned += fmt::format("{},{:.3f},{:.3f},{:.3f}\n", s, mV, mV + 0.1, s == 0 ? 0 : -mV);
  }
  Options options;
  options.layout = reversed_column(4);
  options.layout->unit = "mV";
  options.layout->cold_junction_C = 25;
  options.layout->thermocouple_type = "K";
  const auto reading = read_bytes("run.csv", turned, options);
  ASSERT_TRUE(reading) << reading.error().text();
  options.layout = reversed_column(0);
  options.layout->unit = "mV";
  options.layout->cold_junction_C = 25;
  options.layout->thermocouple_type = "K";
  const auto right = read_bytes("run.csv", good, options);
  ASSERT_TRUE(right) << right.error().text();
  EXPECT_EQ(reading->channels[2].temperature_C, right->channels[2].temperature_C);  // the same voltages
}

}  // namespace
}  // namespace ovenwright::log
