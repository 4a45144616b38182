#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <optional>

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

// What the page gives no figures for. Source: U = 2u is meant to hold 95 %, by the error shapes that it names; the true
// value is that of the same curve without errors, sampled finely.
constexpr int kRestRuns = 400;

struct RestCase {
  const char* name;
  const char* measure;
};
void PrintTo(const RestCase& c, std::ostream* os) { *os << c.name; }
class MonteCarloRest : public testing::TestWithParam<RestCase> {
 protected:
  /// @param log  makes a log with errors from a seed; without one, the true curve
  template <class Log>
  static void expect_held(const char* measure, const Log& log) {
    const auto exact = log(std::nullopt).measure(measure);
    ASSERT_TRUE(exact.value) << exact.reason;
    int held = 0;
    std::vector<double> values, U;
    for (unsigned seed = 1; seed <= kRestRuns; ++seed) {
      const auto value = log(seed).measure(measure);
      ASSERT_TRUE(value.value && value.expanded_uncertainty) << value.reason;
      held += std::abs(*value.value - *exact.value) <= *value.expanded_uncertainty;
      values.push_back(*value.value);
      U.push_back(*value.expanded_uncertainty);
    }
    EXPECT_GE(held / double(kRestRuns), 0.95 - scatter(0.95, kRestRuns));
    // A U that is far wider holds all and tells nothing. Tolerance, common practice without a source: the table above
    // has up to 2.5 times the simulated half width; contact with a wave has twice that, as its U holds what lies
    // between two readings, which logs with readings at the same times do not scatter by.
    std::ranges::sort(values);
    std::ranges::sort(U);
    const double half = (values[kRestRuns * 975 / 1000] - values[kRestRuns * 25 / 1000]) / 2;
    EXPECT_LE(U[kRestRuns / 2], 6 * half);
  }
  static Shape shape(unsigned seed) { return seed % 2 == 0 ? Shape::kOffset : Shape::kGain; }
};

class MonteCarloOfTraces : public MonteCarloRest {};
TEST_P(MonteCarloOfTraces, UHoldsTheTrueValue) {
  const auto truth = smooth(0.5);
  expect_held(GetParam().measure, [&](std::optional<unsigned> seed) {
    if (!seed) return Sampled(truth.time_s, truth.temperature_C);
    Random random(*seed);
    return one_run(random, truth, shape(*seed), kNoise_C);
  });
}
INSTANTIATE_TEST_SUITE_P(CheckCurve, MonteCarloOfTraces,
                         testing::Values(RestCase{"mean_rise_between", "mean rise, T1=150, T2=200"},
                                         RestCase{"mean_fall_from_peak", "mean fall, T1=peak, T2=217"},
                                         RestCase{"mean_fall_between", "mean fall, T1=217, T2=187"},
                                         RestCase{"near_a_temperature", "time near peak, reference=245, offset=5"},
                                         RestCase{"rise_in_a_range", "steepest rise, over=5, from=100, to=180"},
                                         RestCase{"fall_in_a_range", "steepest fall, over=2, from=217, to=150"},
                                         RestCase{"soak_to_the_peak", "time between on rise, T1=217, T2=300"},
                                         RestCase{"temperature_at", "temperature at, time=150.25"},
                                         RestCase{"exit_temperature", "exit temperature"}),
                         [](const auto& each) { return std::string(each.param.name); });

/// The check curve on four placements, some later and cooler; each has a thermocouple error of its own.
struct BoardLog {
  std::vector<Sampled> traces;
  Value measure(const std::string& definition) const {
    std::vector<const Sampled*> all;
    for (const auto& trace : traces) all.push_back(&trace);
    return on_board(all, definition);
  }
};
class MonteCarloOfBoards : public MonteCarloRest {};
TEST_P(MonteCarloOfBoards, UHoldsTheTrueValue) {
  expect_held(GetParam().measure, [&](std::optional<unsigned> seed) {
    Random random(seed.value_or(0));
    BoardLog log;
    for (int k = 0; k < 4; ++k) {
      auto truth = smooth(0.5);
      for (auto& t : truth.time_s) t += 3 * k;
      for (auto& T : truth.temperature_C) T = 25 + (T - 25) * (1 - 0.02 * k);
      // One clock: as logged, what came before is ambient.
      std::vector<double> time_s, temperature_C;
      for (double t = 9; t <= 400; t += 0.5) {
        const auto i = static_cast<std::size_t>((t - 3 * k) / 0.5);
        time_s.push_back(t);
        temperature_C.push_back(truth.temperature_C[i]);
      }
      const Samples shifted{time_s, temperature_C};
      log.traces.push_back(seed ? one_run(random, shifted, shape(*seed + static_cast<unsigned>(k)), kNoise_C)
                                : Sampled(time_s, temperature_C));
    }
    return log;
  });
}
INSTANTIATE_TEST_SUITE_P(CheckCurve, MonteCarloOfBoards,
                         testing::Values(RestCase{"spread_of_peaks", "spread of peaks"},
                                         RestCase{"spread_when_hottest", "spread when hottest reaches, level=217"},
                                         RestCase{"largest_spread", "largest spread"},
                                         RestCase{"largest_spread_in_soak", "largest spread, from=150, to=200"},
                                         RestCase{"lag", "lag, level=217"}),
                         [](const auto& each) { return std::string(each.param.name); });

/// A pass over two waves: preheat to 115 °C, solder of 252 °C for 1.2 and 3.4 s, exact answers of one mass. The clock
/// of the logger stands anywhere against the wave.
Samples over_the_wave(double interval_s, double phase_s) {
  struct Piece {
    double until_s, air_C, tau_s;
  };
  constexpr Piece kPieces[] = {{100, 160, 60}, {102.5, 252, 0.5}, {106, 110, 8}, {109.4, 252, 0.5}, {180, 60, 25}};
  const auto at = [&](double t) {
    double T = 25, from_s = 0;
    for (const auto& piece : kPieces) {
      const double length_s = std::min(t, piece.until_s) - from_s;
      T = piece.air_C + (T - piece.air_C) * std::exp(-length_s / piece.tau_s);
      if (t <= piece.until_s) break;
      from_s = piece.until_s;
    }
    return T;
  };
  Samples samples;
  for (double t = phase_s; t <= 180; t += interval_s) {
    samples.time_s.push_back(t);
    samples.temperature_C.push_back(at(t));
  }
  return samples;
}
class MonteCarloOfWaves : public MonteCarloRest {};
TEST_P(MonteCarloOfWaves, UHoldsTheTrueValue) {
  for (const double interval_s : {0.1, 0.25}) {
    SCOPED_TRACE(interval_s);
    expect_held(GetParam().measure, [&](std::optional<unsigned> seed) {
      if (!seed) {
        const auto fine = over_the_wave(0.02, 0);
        return Sampled(fine.time_s, fine.temperature_C);
      }
      Random random(*seed);
      const auto truth = over_the_wave(interval_s, random.between(0, interval_s));
      return one_run(random, truth, shape(*seed), kNoise_C);
    });
  }
}
INSTANTIATE_TEST_SUITE_P(TwoWaves, MonteCarloOfWaves,
                         testing::Values(RestCase{"preheat", "wave: preheat temperature"},
                                         RestCase{"step", "wave: step"},
                                         RestCase{"contact_time", "wave: contact time, level=217"},
                                         RestCase{"longest_contact", "wave: longest contact, level=217"}),
                         [](const auto& each) { return std::string(each.param.name); });

}  // namespace
}  // namespace ovenwright::measure
