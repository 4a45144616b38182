#include <cmath>

#include "tests/unit/measure/subject.h"

namespace ovenwright::measure {
namespace {

double S(double x) { return 1 / (1 + std::exp(-x)); }

/// A reflow curve in closed form, °C at t s.
double smooth_C(double t) {
  return 25 + 125 * S((t - 70) / 16) + 45 * S((t - 150) / 22) + 73 * S((t - 213) / 10) - 225 * S((t - 274) / 13);
}

Sampled sampled(bool rounded) {
  std::vector<double> time_s, temperature_C;
  for (int i = 0; i <= 800; ++i) {
    time_s.push_back(0.5 * i);
    const double T = smooth_C(0.5 * i);
    temperature_C.push_back(rounded ? std::round(T * 100) / 100 : T);
  }
  return {time_s, temperature_C};
}

// Source: the check values that stand with the definitions of the measures, worked out by another program: the curve
// above sampled at 0.5 s, class 1 K, instrument ± 1.0 °C, plain and rounded to 0.01 °C, and U of the rounded one.
// Tolerance: half of the last printed digit.
struct Case {
  const char* name;
  const char* measure;
  double smooth, smooth_half_digit, rounded, rounded_half_digit, U, U_half_digit;
};
void PrintTo(const Case& c, std::ostream* os) { *os << c.name; }
class CheckValues : public testing::TestWithParam<Case> {};

TEST_P(CheckValues, AreReproduced) {
  const auto& c = GetParam();
  const auto smooth = sampled(false).measure(c.measure);
  ASSERT_TRUE(smooth.value) << smooth.reason;
  EXPECT_NEAR(*smooth.value, c.smooth, c.smooth_half_digit);
  const auto rounded = sampled(true).measure(c.measure);
  ASSERT_TRUE(rounded.value) << rounded.reason;
  EXPECT_NEAR(*rounded.value, c.rounded, c.rounded_half_digit);
  ASSERT_TRUE(rounded.expanded_uncertainty);
  EXPECT_NEAR(*rounded.expanded_uncertainty, c.U, c.U_half_digit);
  EXPECT_FALSE(rounded.at_least);
}

INSTANTIATE_TEST_SUITE_P(
    Table, CheckValues,
    testing::Values(Case{"peak", "peak", 249.1486, 5e-5, 249.15, 5e-3, 2.08171, 5e-6},
                    Case{"time_above", "time above, level=217", 50.31512, 5e-6, 50.3156, 5e-5, 1.93448, 5e-6},
                    Case{"soak", "time between on rise, T1=150, T2=200", 81.09484, 5e-6, 81.09677, 5e-6, 1.03368, 5e-6},
                    Case{"steepest_rise", "steepest rise, over=5", 2.002174, 5e-7, 2.002182, 5e-7, 0.009875, 5e-7},
                    Case{"steepest_fall", "steepest fall, over=5", 4.293763, 5e-7, 4.293091, 5e-7, 0.020129, 5e-7},
                    Case{"area_above", "area above, level=217", 1054.568, 5e-4, 1054.570, 5e-4, 105.490, 5e-4},
                    Case{"near_peak", "time near peak", 19.16976, 5e-6, 19.17074, 5e-6, 0.06451, 5e-6},
                    Case{"peak_time", "peak time", 216.6212, 5e-5, 216.6429, 5e-5, 0.64151, 5e-6},
                    Case{"mean_rise", "mean rise, T1=217, T2=peak", 1.205982, 5e-7, 1.206063, 5e-7, 0.037637, 5e-7}),
    [](const auto& each) { return std::string(each.param.name); });

}  // namespace
}  // namespace ovenwright::measure
