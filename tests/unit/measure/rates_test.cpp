#include <cmath>
#include <random>

#include "core/measure/slope.h"
#include "tests/unit/measure/subject.h"

namespace ovenwright::measure {
namespace {

template <class Function>
Sampled sampled(int first, int last, double interval_s, Function&& f) {
  std::vector<double> time_s, T;
  for (int i = first; i <= last; ++i) {
    time_s.push_back(interval_s * i);
    T.push_back(f(interval_s * i));
  }
  return {time_s, T};
}

// Source: exactness of a least-squares line over an odd number of even samples (Savitzky and Golay, Anal. Chem. 36
// (1964) 1627): a line gives its slope, t² gives 2t, and t³ at t = 2 over 5 points gives 15.4 where the derivative
// is 12.
TEST(SteepestRise, IsTheSlopeOfTheLeastSquaresLine) {
  EXPECT_NEAR(*sampled(0, 20, 1, [](double t) { return 25 + 2 * t; }).measure("steepest rise").value, 2, 1e-12);
  const auto square = sampled(0, 10, 1, [](double t) { return t * t; });
  EXPECT_NEAR(*square.measure("steepest rise, over=4, from=9, to=9").value, 6, 1e-12);
  const auto cube = sampled(0, 10, 1, [](double t) { return t * t * t; });
  EXPECT_NEAR(*cube.measure("steepest rise, over=4, from=8, to=8").value, 15.4, 1e-12);
}

TEST(SteepestFall, IsPositiveAndTakenAfterThePeak) {
  const Sampled trace({0, 1, 2, 3, 4, 5, 6, 7, 8}, {0, 50, 100, 150, 200, 190, 180, 170, 160});
  EXPECT_NEAR(*trace.measure("steepest fall, over=2").value, 10, 1e-12);
  EXPECT_NEAR(*trace.measure("steepest rise, over=2").value, 50, 1e-12);
}

// Source: the definition: a window counts if centre ± over/2 lies within the rise to within h/10.
TEST(SteepestRise, TakesOnlyWindowsThatLieOnTheRise) {
  // The last 2 s before the peak are steep; a 4 s window centred 2 s before the peak is the last that fits.
  const Sampled trace({0, 1, 2, 3, 4, 5, 6, 7, 8}, {0, 1, 2, 3, 4, 5, 16, 27, 5});
  // Samples 3 4 5 16 27 at −2 … 2 s: Σ t·T/Σ t² = (−6 − 4 + 16 + 54)/10.
  EXPECT_NEAR(*trace.measure("steepest rise, over=4").value, 6, 1e-12);
}

// Source: the definition: |t_j − t_i| <= over/2 + h/10, at least 3 samples; a 5 s window serves up to about 2.5 s a
// sample.
TEST(SteepestRise, NeedsThreeSamplesInAWindowAndNamesTheIntervalOtherwise) {
  const auto at = [](double interval_s) {
    return sampled(0, 12, interval_s, [](double t) { return 25 + 2 * t; }).measure("steepest rise, over=5");
  };
  EXPECT_NEAR(*at(2.5).value, 2, 1e-12);
  EXPECT_NEAR(*at(2.7).value, 2, 1e-12);  // 2.7 <= 2.5 + 0.27
  const auto coarse = at(3);
  EXPECT_EQ(coarse.no_value, NoValue::kUndetermined);
  EXPECT_NE(coarse.reason.find("3 s"), std::string::npos) << coarse.reason;
}

TEST(SteepestRise, OfEqualWindowsIsTheFirst) {
  const auto ramp = sampled(0, 40, 0.1, [](double t) { return 20 + 1.7 * t; });
  const auto rise = ramp.measure("steepest rise, over=1");
  EXPECT_NEAR(*rise.from_s, 0, 1e-12);
  EXPECT_NEAR(*rise.to_s, 1, 1e-12);
}

TEST(SteepestRise, IsABoundWhereTheLogIsCutOff) {
  const std::vector<double> rise_and_fall{20, 60, 100, 140, 180, 220, 180, 140, 100};
  const std::vector<double> clock{0, 5, 10, 15, 20, 25, 30, 35, 40};
  const Sampled whole(clock, rise_and_fall);
  EXPECT_FALSE(whole.measure("steepest rise, over=10").at_least);
  EXPECT_FALSE(whole.measure("steepest rise, over=10, from=20, to=200").at_least);
  EXPECT_TRUE(whole.measure("steepest rise, over=10, from=10, to=200").value.has_value());
  EXPECT_TRUE(whole.measure("steepest rise, over=10, from=200, to=19").at_least);  // either order
  EXPECT_FALSE(whole.measure("steepest rise, over=10, to=200").at_least);          // no lower end
  EXPECT_TRUE(whole.measure("steepest fall, over=10, from=50, to=200").at_least);  // ends at 100 °C
  EXPECT_FALSE(whole.measure("steepest fall, over=10, from=100, to=200").at_least);
  const Sampled rising({0, 5, 10, 15}, {20, 60, 100, 140});
  EXPECT_TRUE(rising.measure("steepest rise, over=10").at_least);
  EXPECT_EQ(rising.measure("steepest fall, over=10").no_value, NoValue::kUndetermined);
}

// Source: the direct fit of each window. Tolerance: 1e-9 °C/s, within which windows count as equal, and the rounding of
// temperatures of 1e6 °C over their noise, 1e6 · 2^-52 / 5 s.
TEST(SteepestRise, RunningSumsAgreeWithDirectFitsOnLongNoisyTracesWithLargeOffsets) {
  for (const double offset : {0.0, 1e4, 1e6}) {
    std::mt19937_64 engine(7);
    std::normal_distribution<double> noise(0, 0.3);
    std::uniform_real_distribution<double> jitter(0, 0.3);
    for (const bool even : {true, false}) {
      std::vector<double> time_s, T;
      for (int i = 0; i < 200000; ++i) {
        time_s.push_back(1e6 + 0.002 * (i + (even ? 0 : jitter(engine))));
        const double t = time_s.back() - 1e6;
        T.push_back(offset + 100 * std::sin(t / 130) + noise(engine));
      }
      const Sampled sampled(time_s, T);
      const auto& trace = *sampled.subject().channel->trace;
      const Blocks blocks(trace.temperature_C());
      const Curve curve(trace, blocks);
      SlopeWindows windows;
      windows.over_s = 1;
      windows.stretch = rise(curve);
      const auto found = steepest(curve, windows);
      ASSERT_TRUE(found);
      double best = 0;
      const double reach_s = 0.5 + trace.median_interval_s() / 10;
      std::size_t first = 0, last = 0;
      for (std::size_t i = 0; i <= curve.peak(); i += 1) {
        const double t = curve.time_s(i);
        if (t - 0.5 < time_s[0] - trace.median_interval_s() / 10) continue;
        if (t + 0.5 > curve.time_s(curve.peak()) + trace.median_interval_s() / 10) break;
        while (t - time_s[first] > reach_s) ++first;
        while (last + 1 < time_s.size() && time_s[last + 1] - t <= reach_s) ++last;
        if (i % 97 == 0 || i == found->centre) best = std::max(best, fitted(curve, i, first, last).per_s);
      }
      EXPECT_GE(found->per_s, best - 1e-9 - offset * 1e-15);
      const auto direct = fitted(curve, found->centre, found->first, found->last);
      EXPECT_EQ(found->per_s, direct.per_s);
    }
  }
}

// Source: J-STD-020 (D.1, E), Table 5-2, ramp-up from TL to the peak and ramp-down from the peak to TL, on a trace of
// straight pieces.
TEST(MeanRates, AreDifferencesOverTotalTimes) {
  const Sampled trace({0, 100, 120, 140, 200}, {25, 217, 247, 217, 25});
  EXPECT_NEAR(*trace.measure("mean rise, T1=217, T2=peak").value, 1.5, 1e-12);
  EXPECT_NEAR(*trace.measure("mean fall, T1=peak, T2=217").value, 1.5, 1e-12);
  EXPECT_NEAR(*trace.measure("mean rise, T1=100, T2=200").value, 1.92, 1e-12);
  EXPECT_NEAR(*trace.measure("mean fall, T1=200, T2=100").value, 3.2, 1e-12);
}

TEST(MeanRise, WithoutAValueSaysWhetherItIsCertain) {
  const char* to_level = "mean rise, T1=150, T2=217";
  const char* to_peak = "mean rise, T1=150, T2=peak";
  const Sampled low({0, 10, 20, 30}, {25, 160, 200, 100});
  EXPECT_EQ(low.measure(to_level).no_value, NoValue::kNotReached);
  EXPECT_EQ(Sampled({0, 10, 20}, {25, 140, 100}).measure(to_peak).no_value, NoValue::kNotReached);
  const Sampled hot_start({0, 10, 20, 30}, {160, 220, 240, 100});
  EXPECT_EQ(hot_start.measure(to_level).no_value, NoValue::kUndetermined);
  EXPECT_EQ(hot_start.measure(to_peak).no_value, NoValue::kUndetermined);
  const Sampled rising({0, 10, 20, 30}, {25, 100, 160, 200});
  EXPECT_EQ(rising.measure(to_level).no_value, NoValue::kUndetermined);
  EXPECT_TRUE(rising.measure(to_peak).at_least);
  EXPECT_NEAR(*rising.measure(to_peak).value, 50 / (20 - 50.0 / 6), 1e-9);
  // On the level counts as reached.
  EXPECT_TRUE(Sampled({0, 10, 20, 30}, {25, 160, 217, 100}).measure(to_level).value);
}

TEST(MeanFall, WithoutAValueSaysWhetherItIsCertain) {
  const char* levels = "mean fall, T1=217, T2=150";
  EXPECT_EQ(Sampled({0, 10, 20, 30}, {25, 160, 200, 100}).measure(levels).no_value, NoValue::kNotReached);
  EXPECT_EQ(Sampled({0, 10, 20, 30}, {25, 160, 240, 151}).measure(levels).no_value, NoValue::kUndetermined);
  EXPECT_TRUE(Sampled({0, 10, 20, 30}, {25, 160, 240, 150}).measure(levels).value);
  EXPECT_EQ(Sampled({0, 10, 20, 30}, {25, 160, 200, 240}).measure(levels).no_value, NoValue::kUndetermined);
}

TEST(NotReached, SaysByHowMuchWithoutReadingAsTheLevel) {
  const auto rise = Sampled({0, 10, 20, 30}, {25, 160, 216.996, 100}).measure("mean rise, T1=150, T2=217");
  EXPECT_EQ(rise.reason, "the peak is 216.996 °C, it does not reach 217.000 °C");
}

}  // namespace
}  // namespace ovenwright::measure
