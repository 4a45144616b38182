// Whether the uncertainty of a difference between two runs holds it, by Monte Carlo with fixed seeds.
#include <gtest/gtest.h>

#include <cmath>

#include "core/compare/margins.h"
#include "tests/property/measure/random_log.h"
#include "tests/unit/measure/subject.h"

namespace ovenwright::compare {
namespace {

using measure::Random;
using measure::Sampled;

double S(double x) { return 1 / (1 + std::exp(-x)); }

/// A reflow curve with a thermocouple off by the same error in every run, and noise of its own.
Sampled one_run(Random& random, double offset_C, double noise_C) {
  std::vector<double> time_s, temperature_C;
  for (int i = 0; i <= 800; ++i) {
    const double t = 0.5 * i;
    time_s.push_back(t);
    temperature_C.push_back(25 + 125 * S((t - 70) / 16) + 45 * S((t - 150) / 22) + 73 * S((t - 213) / 10) -
                            225 * S((t - 274) / 13) + offset_C + noise_C * random.normal());
  }
  return {std::move(time_s), std::move(temperature_C)};
}

struct Case {
  const char* name;
  const char* measure;
};
void PrintTo(const Case& c, std::ostream* os) { *os << c.name; }
class DifferenceUncertainty : public testing::TestWithParam<Case> {};

// Source: two runs of one curve on one thermocouple differ by nothing; U = 2u is to hold 95 % of what noise makes of
// it, with an error of the wire anywhere within its class. Noise 0.1 °C at 2 Hz. The uncertainty of durations and of
// the steepest slope is on the safe side by its definition, so 95 % is the least. Tolerance: four standard deviations
// of a binomial share.
TEST_P(DifferenceUncertainty, HoldsTheDifferenceOnOneThermocouple) {
  constexpr int trials = 1000;
  Random random(42);
  int held = 0;
  for (int i = 0; i < trials; ++i) {
    const double offset_C = random.between(-1.5, 1.5);
    const auto a = one_run(random, offset_C, 0.1).measure(GetParam().measure);
    const auto b = one_run(random, offset_C, 0.1).measure(GetParam().measure);
    const auto U = difference_uncertainty(a, b, true);
    ASSERT_TRUE(U);
    EXPECT_LT(*U, *difference_uncertainty(a, b, false));
    held += std::abs(*b.value - *a.value) <= *U ? 1 : 0;
  }
  EXPECT_GE(held / double{trials}, 0.95 - 4 * std::sqrt(0.95 * 0.05 / trials));
}
INSTANTIATE_TEST_SUITE_P(Measures, DifferenceUncertainty,
                         testing::Values(Case{"peak", "peak"}, Case{"time_above", "time above, level=217"},
                                         Case{"soak", "time between on rise, T1=150, T2=200"},
                                         Case{"rise", "steepest rise, over=5"}, Case{"area", "area above, level=217"}),
                         [](const auto& c) { return std::string{c.param.name}; });

}  // namespace
}  // namespace ovenwright::compare
