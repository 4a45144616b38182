#include "core/emf/emf.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <array>
#include <cmath>
#include <fstream>
#include <sstream>
#include <string>
#include <vector>

#include "core/emf/its90_functions.h"

namespace ovenwright::emf {
namespace {

struct Point {
  Type type;
  double temperature_C, voltage_mV;
};

/// tests/data/emf/its90_points.csv: printed tables of NIST SRD 60.
std::vector<Point> printed_points() {
  std::vector<Point> points;
  std::ifstream file{OVENWRIGHT_TEST_DATA "/emf/its90_points.csv"};
  std::string line;
  std::getline(file, line);
  while (std::getline(file, line)) {
    std::stringstream cells{line};
    std::string type, temperature_C, voltage_mV;
    std::getline(cells, type, ',');
    std::getline(cells, temperature_C, ',');
    std::getline(cells, voltage_mV, ',');
    points.push_back({*type_of(type), std::stod(temperature_C), std::stod(voltage_mV)});
  }
  return points;
}

constexpr std::array kTypes = {Type::kK, Type::kJ, Type::kT, Type::kE, Type::kN, Type::kR, Type::kS, Type::kB};

// Tolerance: half a unit of the last printed digit, and 0.0001 mV for the rounding of the printed coefficients.
TEST(Voltage, AgreesWithThePrintedTables) {
  const auto points = printed_points();
  ASSERT_EQ(points.size(), 329u);
  for (const auto& point : points) {
    const auto voltage = voltage_mV(point.type, {point.temperature_C});
    ASSERT_TRUE(voltage) << voltage.error().message;
    EXPECT_NEAR(*voltage, point.voltage_mV, 0.0006) << type_name(point.type) << " at " << point.temperature_C;
  }
}

// Source: printed table of NIST SRD 60, type K, at the liquidus of SAC305 and at usual peaks.
TEST(Voltage, OfTypeKAtReflowTemperatures) {
  EXPECT_NEAR(*voltage_mV(Type::kK, {217}), 8.819, 0.0006);
  EXPECT_NEAR(*voltage_mV(Type::kK, {245}), 9.950, 0.0006);
  EXPECT_NEAR(*voltage_mV(Type::kK, {250}), 10.153, 0.0006);
}

// Tolerance: half a unit of the last printed digit over the local sensitivity (from neighbouring voltages), with a
// fifth in hand.
TEST(Temperature, AgreesWithThePrintedTables) {
  std::size_t compared = 0;
  for (const auto& point : printed_points()) {
    const auto range = range_of(point.type);
    if (point.temperature_C < range.lowest.value || point.temperature_C > range.highest.value) continue;
    const double below_C = std::max(point.temperature_C - 1, range.lowest.value);
    const double above_C = std::min(point.temperature_C + 1, range.highest.value);
    const double per_degree =
        (*voltage_mV(point.type, {above_C}) - *voltage_mV(point.type, {below_C})) / (above_C - below_C);
    const auto found = temperature(point.type, point.voltage_mV);
    ASSERT_TRUE(found) << type_name(point.type) << " at " << point.temperature_C << ": " << found.error().message;
    EXPECT_NEAR(found->value, point.temperature_C, 0.0006 / per_degree) << type_name(point.type);
    ++compared;
  }
  EXPECT_GT(compared, 290u);
}

// Refining would hide a wrong digit of an inverse function, so these are checked as printed.
// Source: NIST SRD 60, largest stated error of any inverse piece 0.06 °C; half its last digit for the print.
TEST(InverseFunctions, StayWithinTheirStatedError) {
  using namespace its90;
  const std::array functions = {kK, kJ, kT, kE, kN, kR, kS, kB};
  for (std::size_t i = 0; i < kTypes.size(); ++i) {
    const auto range = range_of(kTypes[i]);
    for (double true_C = range.lowest.value; true_C <= range.highest.value; true_C += 0.37) {
      const double voltage = *voltage_mV(kTypes[i], {true_C});
      const auto piece =
          std::ranges::find_if(functions[i].inverse, [&](const Piece& p) { return voltage <= p.highest; });
      if (piece == functions[i].inverse.end()) continue;  // the last printed digit of the range's end
      double inverse_C = 0, power = 1;
      for (const double coefficient : piece->coefficients) {
        inverse_C += coefficient * power;
        power *= voltage;
      }
      ASSERT_NEAR(inverse_C, true_C, 0.065) << type_name(kTypes[i]);
    }
  }
}

// The two functions are inverses of each other by definition. Tolerance: rounding of a voltage of 80 mV over the least
// sensitivity of any type (B at 250 °C, 2 µV/°C).
TEST(Temperature, InvertsTheVoltageOverTheWholeRange) {
  constexpr double tol_C = 1e-9;
  for (const auto type : kTypes) {
    const auto range = range_of(type);
    const double span_C = range.highest.value - range.lowest.value;
    for (int i = 0; i <= 20'000; ++i) {
      const double true_C = range.lowest.value + span_C * i / 20'000;
      const auto voltage = voltage_mV(type, {true_C});
      ASSERT_TRUE(voltage);
      const auto back = temperature(type, *voltage);
      ASSERT_TRUE(back) << type_name(type) << " at " << true_C << ": " << back.error().message;
      ASSERT_NEAR(back->value, true_C, tol_C) << type_name(type);
    }
  }
}

// Source: the law of intermediate temperatures: E(T, 0) = E(T, Tc) + E(Tc, 0).
TEST(Temperature, AddsTheVoltageOfTheColdJunction) {
  const double measured_mV = 8.819 - 1.000;  // type K, printed: 217 °C 8.819, 25 °C 1.000
  const auto found = temperature(Type::kK, measured_mV, {25});
  ASSERT_TRUE(found) << found.error().message;
  EXPECT_NEAR(found->value, 217, 0.03);  // two printed values, half a last digit each, 0.0406 mV/°C
}

TEST(Temperature, RefusesVoltagesOutsideTheRange) {
  // Printed ends of the tables: K 1372 °C 54.886 mV, -200 °C -5.891 mV.
  EXPECT_TRUE(temperature(Type::kK, 54.886));
  EXPECT_TRUE(temperature(Type::kK, -5.891));
  for (const double voltage : {54.888, -5.893, 1e300, static_cast<double>(NAN), static_cast<double>(INFINITY)}) {
    const auto found = temperature(Type::kK, voltage);
    ASSERT_FALSE(found) << voltage;
    EXPECT_EQ(found.error().code, ErrorCode::kBadArgument);
  }
  EXPECT_NE(temperature(Type::kK, 60.0).error().message.find("expected -5.892 to 54.887 mV for type K"),
            std::string::npos)
      << temperature(Type::kK, 60.0).error().message;
  EXPECT_FALSE(voltage_mV(Type::kK, {1373}));
  EXPECT_FALSE(voltage_mV(Type::kK, {-271}));
  EXPECT_FALSE(voltage_mV(Type::kB, {NAN}));
  EXPECT_FALSE(temperature(Type::kK, 1.0, {2000}));
}

TEST(Readings, ConvertInPlaceWithOneColdJunction) {
  std::vector<double> readings = {0, 7.819, NAN, 60, -7};
  to_temperatures(Type::kK, readings, {25});
  EXPECT_NEAR(readings[0], 25, 1e-9);
  EXPECT_NEAR(readings[1], temperature(Type::kK, 7.819, {25})->value, 1e-12);
  EXPECT_TRUE(std::isnan(readings[2]));
  EXPECT_EQ(readings[3], INFINITY);
  EXPECT_EQ(readings[4], -INFINITY);
}

TEST(Readings, ConvertInPlaceWithAColdJunctionEach) {
  std::vector<double> readings = {0, 0, 0};
  to_temperatures(Type::kJ, readings, std::vector<double>{20, 30.5, NAN});
  EXPECT_NEAR(readings[0], 20, 1e-9);
  EXPECT_NEAR(readings[1], 30.5, 1e-9);
  EXPECT_TRUE(std::isnan(readings[2]));
}

TEST(Types, AreKnownByTheirLetters) {
  for (const auto type : kTypes) EXPECT_EQ(type_of(type_name(type)), type);
  EXPECT_EQ(type_of("k"), Type::kK);
  EXPECT_EQ(type_of(" type K "), Type::kK);
  EXPECT_EQ(type_of("Type J"), Type::kJ);
  for (const char* name : {"", " ", "X", "KK", "type", "typeset K", "1 K"})
    EXPECT_EQ(type_of(name), std::nullopt) << name;
}

// Source: IEC 60584-1, ends of the reference tables.
TEST(Types, HaveTheRangesOfTheStandard) {
  EXPECT_EQ(range_of(Type::kK).highest.value, 1372);
  EXPECT_EQ(range_of(Type::kJ).highest.value, 1200);
  EXPECT_EQ(range_of(Type::kT).highest.value, 400);
  EXPECT_EQ(range_of(Type::kB).highest.value, 1820);
}

}  // namespace
}  // namespace ovenwright::emf
