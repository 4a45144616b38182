#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

#include "tests/property/measure/random_log.h"
#include "tests/unit/measure/subject.h"

namespace ovenwright::measure {
namespace {

constexpr int kRuns = 1000;
constexpr double kNoise_C = 0.1, kThermocouple_C = 1.5, kThermocoupleGain = 0.004, kInstrument_C = 1.0;

double S(double x) { return 1 / (1 + std::exp(-x)); }

Samples smooth(double interval_s) {
  Samples samples;
  for (int i = 0; interval_s * i <= 400; ++i) {
    const double t = interval_s * i;
    samples.time_s.push_back(t);
    samples.temperature_C.push_back(25 + 125 * S((t - 70) / 16) + 45 * S((t - 150) / 22) + 73 * S((t - 213) / 10) -
                                    225 * S((t - 274) / 13));
  }
  return samples;
}

enum class Shape { kOffset, kGain };

/// One run: the curve with a thermocouple error anywhere within class 1, an instrument error and noise.
Sampled one_run(Random& random, const Samples& truth, Shape shape, double noise_C) {
  auto samples = truth;
  const double part = random.between(-1, 1), instrument_C = random.between(-kInstrument_C, kInstrument_C);
  for (auto& T : samples.temperature_C)
    T += part * (shape == Shape::kOffset ? kThermocouple_C : kThermocoupleGain * T) + instrument_C +
         noise_C * random.normal();
  return {samples.time_s, samples.temperature_C};
}

/// By how much a share found in `runs` trials may be off: four standard deviations of a binomial share.
double scatter(double share, double runs) { return 4 * std::sqrt(share * (1 - share) / runs); }

// Source: the check values that stand with the definitions: U of one noisy copy, simulated half widths of the central
// 95 % for an offset and for a gain of the thermocouple, and how often that U held the true value, in %.
struct Case {
  const char* name;
  const char* measure;
  double U, offset_half, gain_half, half_digit, held;
};
void PrintTo(const Case& c, std::ostream* os) { *os << c.name; }
class MonteCarlo : public testing::TestWithParam<Case> {};

TEST_P(MonteCarlo, ErrorsSpreadAsTheCheckValuesSayAndUHoldsThem) {
  const auto& c = GetParam();
  const auto truth = smooth(0.5);
  const double true_value = *Sampled(truth.time_s, truth.temperature_C).measure(c.measure).value;
  int held = 0, held_by_table = 0;
  for (const auto shape : {Shape::kOffset, Shape::kGain}) {
    Random random(shape == Shape::kOffset ? 11 : 12);
    std::vector<double> simulated;
    for (int run = 0; run < kRuns; ++run) {
      const auto value = one_run(random, truth, shape, kNoise_C).measure(c.measure);
      ASSERT_TRUE(value.value && value.expanded_uncertainty) << value.reason;
      simulated.push_back(*value.value);
      held += std::abs(*value.value - true_value) <= *value.expanded_uncertainty;
      held_by_table += std::abs(*value.value - true_value) <= c.U;
    }
    std::ranges::sort(simulated);
    const double half = (simulated[kRuns * 975 / 1000] - simulated[kRuns * 25 / 1000]) / 2;
    const double want = shape == Shape::kOffset ? c.offset_half : c.gain_half;
    // Tolerance: both sides are simulated, theirs with 250 to 2000 runs: 12 % is four times the scatter of a 97.5 %
    // quantile of a normal distribution with 1000 runs; and half of their last digit.
    EXPECT_NEAR(half, want, 0.12 * want + c.half_digit) << (shape == Shape::kOffset ? "offset" : "gain");
  }
  // Tolerance: the scatter of the table's 250 runs or more and of ours, and half of its last digit.
  const double share = c.held / 100;
  EXPECT_NEAR(held_by_table / (2.0 * kRuns), share, scatter(share, 250) + scatter(share, 2 * kRuns) + 0.0005);
  // U = 2u is meant to hold 95 %.
  EXPECT_GE(held / (2.0 * kRuns), 0.95 - scatter(0.95, 2 * kRuns));
}

// Source: the same page: at σ 0.3 °C, and at 2 s and 0.1 s a sample, U held 92 to 100 %.
TEST_P(MonteCarlo, UHoldsAtOtherNoiseAndSamplingToo) {
  constexpr int kFewRuns = 150;
  struct Log {
    double interval_s, noise_C;
  };
  for (const auto& [interval_s, noise_C] : {Log{0.5, 0.3}, Log{2, 0.1}, Log{0.1, 0.1}}) {
    const auto truth = smooth(interval_s);
    // 0.5 s stands for the curve itself: at 2 s the sampling is a part of the error.
    const auto fine = smooth(0.5);
    const double true_value = *Sampled(fine.time_s, fine.temperature_C).measure(GetParam().measure).value;
    int held = 0;
    for (int run = 0; run < kFewRuns; ++run) {
      Random random(100 + static_cast<unsigned>(run));
      const auto value =
          one_run(random, truth, run % 2 == 0 ? Shape::kOffset : Shape::kGain, noise_C).measure(GetParam().measure);
      ASSERT_TRUE(value.value && value.expanded_uncertainty) << value.reason;
      held += std::abs(*value.value - true_value) <= *value.expanded_uncertainty;
    }
    EXPECT_GE(held / double(kFewRuns), 0.92 - scatter(0.92, kFewRuns)) << interval_s << " s, " << noise_C << " °C";
  }
}

INSTANTIATE_TEST_SUITE_P(
    CheckCurve, MonteCarlo,
    testing::Values(Case{"peak", "peak", 2.09, 1.96, 1.56, 0.005, 97},
                    Case{"time_above", "time above, level=217", 1.87, 1.82, 1.36, 0.005, 96},
                    Case{"soak", "time between on rise, T1=150, T2=200", 1.42, 0.96, 0.56, 0.005, 99.8},
                    Case{"steepest_rise", "steepest rise, over=5", 0.058, 0.024, 0.026, 0.0005, 99.5},
                    Case{"steepest_fall", "steepest fall, over=5", 0.061, 0.029, 0.034, 0.0005, 99.4},
                    Case{"area_above", "area above, level=217", 105, 98.5, 76.7, 0.05, 97.5},
                    Case{"near_peak", "time near peak", 0.69, 0.35, 0.35, 0.005, 99.4},
                    Case{"peak_time", "peak time", 2.9, 1.57, 1.57, 0.005, 99.9},
                    Case{"mean_rise", "mean rise, T1=217, T2=peak", 0.106, 0.067, 0.067, 0.0005, 99.9}),
    [](const auto& each) { return std::string(each.param.name); });

}  // namespace
}  // namespace ovenwright::measure
