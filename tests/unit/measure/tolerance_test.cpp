#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <string>

#include "core/measure/measure.h"

namespace ovenwright::measure {
namespace {

double half_width_C(const Tolerance& tolerance, double temperature_C) {
  return std::max(tolerance.floor_C, tolerance.fraction * std::abs(temperature_C));
}

struct Case {
  const char* name;
  const char* thermocouple;
  double at_150_C, at_183_C, at_217_C, at_245_C, at_260_C;
};
void PrintTo(const Case& c, std::ostream* os) { *os << c.name; }

class ToleranceClass : public testing::TestWithParam<Case> {};

// Source: IEC 60584-1 classes 1 and 2, ASTM E230/E230M-12 special and standard, worked out at reflow temperatures by
// hand and rounded to 0.01 °C, hence the tolerance.
TEST_P(ToleranceClass, AgreesWithTheStandardAtReflowTemperatures) {
  const auto& c = GetParam();
  const auto tolerance = tolerance_of(c.thermocouple);
  ASSERT_TRUE(tolerance) << tolerance.error().message;
  constexpr double tol_C = 0.0051;
  EXPECT_NEAR(half_width_C(*tolerance, 150), c.at_150_C, tol_C);
  EXPECT_NEAR(half_width_C(*tolerance, 183), c.at_183_C, tol_C);
  EXPECT_NEAR(half_width_C(*tolerance, 217), c.at_217_C, tol_C);
  EXPECT_NEAR(half_width_C(*tolerance, 245), c.at_245_C, tol_C);
  EXPECT_NEAR(half_width_C(*tolerance, 260), c.at_260_C, tol_C);
}
INSTANTIATE_TEST_SUITE_P(Standards, ToleranceClass,
                         testing::Values(Case{"KClass1", "K class 1", 1.50, 1.50, 1.50, 1.50, 1.50},
                                         Case{"JClass1", "J class 1", 1.50, 1.50, 1.50, 1.50, 1.50},
                                         Case{"NClass1", "N class 1", 1.50, 1.50, 1.50, 1.50, 1.50},
                                         Case{"EClass1", "E class 1", 1.50, 1.50, 1.50, 1.50, 1.50},
                                         Case{"KClass2", "K class 2", 2.50, 2.50, 2.50, 2.50, 2.50},
                                         Case{"TClass1", "T class 1", 0.60, 0.73, 0.87, 0.98, 1.04},
                                         Case{"TClass2", "T class 2", 1.13, 1.37, 1.63, 1.84, 1.95},
                                         Case{"KSpecial", "K special", 1.10, 1.10, 1.10, 1.10, 1.10},
                                         Case{"JStandard", "J standard", 2.20, 2.20, 2.20, 2.20, 2.20},
                                         Case{"TSpecial", "T special", 0.60, 0.73, 0.87, 0.98, 1.04},
                                         Case{"TStandard", "T standard", 1.13, 1.37, 1.63, 1.84, 1.95},
                                         Case{"ESpecial", "E special", 1.00, 1.00, 1.00, 1.00, 1.04},
                                         Case{"EStandard", "E standard", 1.70, 1.70, 1.70, 1.70, 1.70},
                                         Case{"SClass1", "S class 1", 1.00, 1.00, 1.00, 1.00, 1.00},
                                         Case{"RClass2", "R class 2", 1.50, 1.50, 1.50, 1.50, 1.50}),
                         [](const auto& c) { return std::string{c.param.name}; });

// Source: the temperature from which the proportional limit is the larger one is floor / fraction: class 1 K 375 °C,
// class 2 K 333.3 °C, special K 275 °C, standard K 293.3 °C.
TEST(Tolerance, PassesFromTheFloorToTheFraction) {
  const auto crossover = [](const char* name) { return tolerance_of(name)->floor_C / tolerance_of(name)->fraction; };
  EXPECT_NEAR(crossover("K class 1"), 375, 0.1);
  EXPECT_NEAR(crossover("K class 2"), 333.3, 0.1);
  EXPECT_NEAR(crossover("K special"), 275, 0.1);
  EXPECT_NEAR(crossover("K standard"), 293.3, 0.1);
}

TEST(Tolerance, TakesTheNameHoweverItIsSpaced) {
  for (const char* name : {"K class 2", "k CLASS 2", " type K,  class 2 ", "Type K class 2"}) {
    const auto tolerance = tolerance_of(name);
    ASSERT_TRUE(tolerance) << name;
    EXPECT_EQ(tolerance->floor_C, 2.5) << name;
  }
}

TEST(Tolerance, NamesWhatItFoundAndWhatItKnows) {
  for (const char* name : {"", "K", "class 1", "X class 1", "K class 4", "K class 12", "K special class 1"}) {
    const auto tolerance = tolerance_of(name);
    ASSERT_FALSE(tolerance) << name;
    EXPECT_EQ(tolerance.error().code, ErrorCode::kBadArgument);
    EXPECT_EQ(tolerance.error().found, '"' + std::string{name} + '"');
  }
  EXPECT_NE(tolerance_of("K class 3").error().message.find("a class that ends at 40 °C"), std::string::npos);
  EXPECT_NE(tolerance_of("B class 2").error().message.find("begin at 600 °C"), std::string::npos);
}

}  // namespace
}  // namespace ovenwright::measure
