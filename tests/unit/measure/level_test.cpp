#include <cmath>
#include <numbers>

#include "tests/unit/measure/subject.h"

namespace ovenwright::measure {
namespace {

std::vector<double> seconds(std::size_t count, double interval_s = 1) {
  std::vector<double> time_s;
  for (std::size_t i = 0; i < count; ++i) time_s.push_back(interval_s * static_cast<double>(i));
  return time_s;
}

// Source: exact algebra of a polyline with corners at (0,200) (10,230) (20,240) (30,210) over 217 °C: the crossings are
// at 10·17/30 = 5.6667 s and 20 + 10·23/30 = 27.6667 s.
TEST(LevelMeasures, AreExactOnThePolyline) {
  const Sampled trace({0, 10, 20, 30}, {200, 230, 240, 210});
  const auto time = trace.measure("time above, level=217");
  EXPECT_NEAR(*time.value, 22.0, 1e-9);
  EXPECT_NEAR(*time.from_s, 17.0 / 3, 1e-9);
  EXPECT_NEAR(*time.to_s, 83.0 / 3, 1e-9);
  EXPECT_NEAR(*trace.measure("area above, level=217").value, 296.0 + 1.0 / 3, 1e-9);
}

// Source: heating factor of a triangle, ½·28·60 = 840 °C·s, and of a half sine, 28·60·2/π = 1069.5 °C·s, of 245 °C over
// 217 °C and 60 s. The polyline of 0.1 s lies under the sine by at most h²·28·(π/60)²/8, that is 0.006 °C·s in all.
TEST(LevelMeasures, AreaOfATriangleAndOfAHalfSine) {
  EXPECT_NEAR(*Sampled({0, 10, 40, 70, 80}, {200, 217, 245, 217, 200}).measure("area above, level=217").value, 840,
              1e-9);
  std::vector<double> time_s{-10}, T{200};
  for (int i = 0; i <= 600; ++i) {
    time_s.push_back(0.1 * i);
    T.push_back(217 + 28 * std::sin(std::numbers::pi * i / 600));
  }
  time_s.push_back(70);
  T.push_back(200);
  EXPECT_NEAR(*Sampled(time_s, T).measure("area above, level=217").value, 28 * 60 * 2 / std::numbers::pi, 0.01);
}

// Source: the definition: above means T > level, and a sample within 1e-6 °C of a level is on it.
TEST(LevelMeasures, ASampleOnTheLevelIsNotAboveIt) {
  for (const double off : {0.0, 9e-7, -9e-7}) {
    const Sampled flat(seconds(6), {200, 217 + off, 217 + off, 217 - off, 217 + off, 200});
    EXPECT_EQ(*flat.measure("time above, level=217").value, 0) << off;
    EXPECT_EQ(*flat.measure("area above, level=217").value, 0) << off;
    EXPECT_NEAR(*flat.measure("time near peak, reference=222").value, 3, 1e-6) << off;
  }
  const Sampled above(seconds(6), {200, 217.00001, 217.00001, 217.00001, 217.00001, 200});
  EXPECT_NEAR(*above.measure("time above, level=217").value, 3, 1e-5);
}

TEST(LevelMeasures, NeverAboveIsZeroAndCertain) {
  const auto time = Sampled(seconds(4), {20, 120, 200, 100}).measure("time above, level=217");
  EXPECT_EQ(*time.value, 0);
  EXPECT_FALSE(time.at_least);
  EXPECT_FALSE(time.from_s);
}

// Source: the definition of "at least": the log starts above the level, ends above it, or ends while still rising.
TEST(LevelMeasures, ShowOnlyPartOfALogThatIsCutOff) {
  for (const char* measure : {"time above, level=217", "area above, level=217"}) {
    EXPECT_TRUE(Sampled(seconds(4), {220, 230, 210, 100}).measure(measure).at_least);
    EXPECT_TRUE(Sampled(seconds(4), {20, 230, 240, 218}).measure(measure).at_least);
    EXPECT_TRUE(Sampled(seconds(4), {20, 100, 150, 200}).measure(measure).at_least);
    EXPECT_FALSE(Sampled(seconds(4), {20, 230, 240, 217}).measure(measure).at_least);
  }
}

// Source: the definition: stretches above the level, joined unless T falls to level − 2 °C or lower between them;
// those with more than 1 s above it count.
TEST(Excursions, AreJoinedOverShallowDipsAndMustLast) {
  const auto count = [](std::vector<double> T) {
    return *Sampled(seconds(T.size()), T).measure("excursions above, level=217").value;
  };
  EXPECT_EQ(count({200, 230, 230, 230, 200}), 1);
  EXPECT_EQ(count({200, 230, 230, 216, 230, 230, 200}), 1);  // down to 1 °C under: one
  EXPECT_EQ(count({200, 230, 230, 215.01, 230, 230, 200}), 1);
  EXPECT_EQ(count({200, 230, 230, 215, 230, 230, 200}), 2);         // 2 °C under: parted
  EXPECT_EQ(count({200, 230, 230, 215 + 9e-7, 230, 230, 200}), 2);  // on 2 °C under
  EXPECT_EQ(count({216, 218, 216, 200, 200}), 0);                   // exactly 1 s above: not more than 1 s
  EXPECT_EQ(count({216, 218.1, 216, 200, 200}), 1);
  EXPECT_EQ(count({216, 217.5, 216, 217.5, 216, 217.5, 216}), 1);  // joined: 3 times 0.667 s
  EXPECT_EQ(count({100, 150, 200, 150, 100}), 0);
  EXPECT_EQ(count({230, 230, 230, 100, 100}), 1);  // from the first sample on
}

// Source: the definition, with from and to the first and last instant of what counted; crossings of a straight line.
TEST(Excursions, SpanThoseThatCount) {
  const Sampled log(seconds(12), {200, 217.5, 200, 237, 237, 237, 197, 237, 237, 197, 217.4, 200});
  const auto two = log.measure("excursions above, level=217");
  EXPECT_EQ(*two.value, 2);
  EXPECT_NEAR(*two.from_s, 2 + 17.0 / 37, 1e-12);
  EXPECT_NEAR(*two.to_s, 8.5, 1e-12);
  const auto none = Sampled(seconds(4), {200, 217.5, 200, 100}).measure("excursions above, level=217");
  EXPECT_EQ(*none.value, 0);
  EXPECT_FALSE(none.from_s);
  EXPECT_FALSE(none.to_s);
}

// Source: the definition of "at least", as for the time above: who sees one of a log that is cut may have missed
// another.
TEST(Excursions, AreABoundWhereTheLogIsCut) {
  const auto at_least = [](std::vector<double> T) {
    return Sampled(seconds(T.size()), T).measure("excursions above, level=217").at_least;
  };
  EXPECT_TRUE(at_least({230, 230, 230, 100, 100}));
  EXPECT_TRUE(at_least({200, 230, 230, 230, 218}));
  EXPECT_TRUE(at_least({20, 100, 150, 200}));
  EXPECT_FALSE(at_least({200, 230, 230, 230, 217}));
  EXPECT_FALSE(at_least({100, 150, 200, 150, 100}));
}

// Source: |t_j - t_i| <= over/2 + h/10: on a clock of milliseconds with h = 0.1 s a sample 2.51 s from the centre of a
// window of 5 s lies on its edge and counts, though its distance is a little more than that in doubles.
TEST(Slopes, CountWhatTheDigitsOfTheClockPutOnTheEdge) {
  constexpr int kCentre = 61, kEdge = kCentre + 25;
  std::vector<double> t, T;
  for (int i = 0; i <= 500; ++i) {
    t.push_back((190000 + 100 * i + (i == kEdge ? 10 : 0)) / 1000.);
    T.push_back(i == kEdge ? 50 : 0);  // the peak: it is in no other window of the rise
  }
  ASSERT_GT(t[kEdge] - t[kCentre], 2.51);
  const auto rise = Sampled(t, T).measure("steepest rise, over=5");
  ASSERT_TRUE(rise.to_s);
  EXPECT_EQ(*rise.to_s, t[kEdge]);
  EXPECT_GT(*rise.value, 0);
}

TEST(Excursions, HaveNoUncertainty) {
  const auto count = Sampled(seconds(5), {200, 230, 230, 230, 200}).measure("excursions above, level=217");
  EXPECT_EQ(count.unit, Unit::kCount);
  EXPECT_FALSE(count.expanded_uncertainty);
}

TEST(Peak, IsTheFirstOfEqualSamplesAndABoundAtTheEndsOfTheLog) {
  const auto peak = Sampled(seconds(5), {20, 240, 230, 240, 100}).measure("peak");
  EXPECT_EQ(*peak.value, 240);
  EXPECT_EQ(*peak.from_s, 1);
  EXPECT_FALSE(peak.at_least);
  EXPECT_TRUE(Sampled(seconds(4), {20, 100, 200, 240}).measure("peak").at_least);
  EXPECT_TRUE(Sampled(seconds(4), {240, 200, 100, 50}).measure("peak").at_least);
}

// Source: the definition: from the last upward crossing, on the rise, of max(level, lowest on the rise + 3 °C).
TEST(PeakTime, LeavesOutIdleTimeBeforeTheOven) {
  // Idle at 24 °C with a wobble over 25 °C, then from 24 °C at 20 °C/s: crosses 27 °C at 4.15 s.
  const Sampled idle(seconds(8), {24, 26, 24, 24, 24, 44, 64, 50});
  EXPECT_NEAR(*idle.measure("peak time").value, 6 - 4.15, 1e-12);
  // A cool start: 10 °C at 0 s, level 25 °C crossed at 0.75 s.
  EXPECT_NEAR(*Sampled(seconds(4), {10, 30, 50, 40}).measure("peak time").value, 1.25, 1e-12);
  // A warm start at 40 °C: 43 °C is crossed at 0.15 s; not yet a bound at 15 °C over the level.
  const auto warm = Sampled(seconds(4), {40, 60, 80, 40}).measure("peak time");
  EXPECT_NEAR(*warm.value, 1.85, 1e-12);
  EXPECT_FALSE(warm.at_least);
  EXPECT_TRUE(Sampled(seconds(4), {40.1, 60, 80, 40}).measure("peak time").at_least);
  EXPECT_TRUE(Sampled(seconds(4), {20, 60, 80, 90}).measure("peak time").at_least);
}

TEST(PeakTime, WithoutARiseHasNoValue) {
  EXPECT_EQ(Sampled(seconds(4), {20, 21, 22, 21}).measure("peak time").no_value, NoValue::kNotReached);
  EXPECT_EQ(Sampled(seconds(4), {20, 21, 22, 22.5}).measure("peak time").no_value, NoValue::kUndetermined);
  EXPECT_EQ(Sampled(seconds(4), {200, 150, 100, 50}).measure("peak time").no_value, NoValue::kUndetermined);
}

// Source: the definition: total time on the rise with T1 < T <= T2; time spent beyond T2 or after the peak is left out.
TEST(TimeBetween, CountsOnlyTheRiseAndOnlyBetween) {
  // 100 → 200 → 140 → 240 → 100 in steps of 10 s: between 150 and 200 °C 5 + 8.3333 + 5 s on the rise.
  const Sampled trace({0, 10, 20, 30, 40}, {100, 200, 140, 240, 100});
  const auto soak = trace.measure("time between on rise, T1=150, T2=200");
  EXPECT_NEAR(*soak.value, 5 + 50.0 / 6 + 5, 1e-9);
  EXPECT_NEAR(*soak.from_s, 5, 1e-9);
  EXPECT_NEAR(*soak.to_s, 26, 1e-9);
  EXPECT_TRUE(soak.note.empty());
}

TEST(TimeBetween, ATraceThatNeverReachesT2CountsToItsPeakWithANote) {
  const auto soak = Sampled({0, 10, 20, 30}, {100, 160, 180, 100}).measure("time between on rise, T1=150, T2=200");
  EXPECT_NEAR(*soak.value, 20 - 50.0 / 6, 1e-9);
  EXPECT_EQ(soak.note, "never reaches 200 °C, counts to the peak");
  EXPECT_FALSE(soak.at_least);
}

TEST(TimeBetween, IsABoundWhereTheLogIsCutOff) {
  const char* soak = "time between on rise, T1=150, T2=200";
  EXPECT_TRUE(Sampled(seconds(4), {151, 180, 240, 100}).measure(soak).at_least);
  EXPECT_FALSE(Sampled(seconds(4), {150, 180, 240, 100}).measure(soak).at_least);
  EXPECT_TRUE(Sampled(seconds(4), {20, 100, 160, 190}).measure(soak).at_least);
  EXPECT_FALSE(Sampled(seconds(4), {20, 160, 190, 200}).measure(soak).at_least);  // rises on, but T2 is reached
  EXPECT_EQ(*Sampled(seconds(4), {20, 40, 60, 20}).measure(soak).value, 0);
}

// Source: J-STD-020 (D.1, E), Table 5-2: tp counts from Tc − 5 °C; with Tc 260 °C it is time at 255 °C or above.
TEST(TimeNearPeak, CountsFromTheClassificationTemperature) {
  const Sampled trace({0, 10, 20, 30, 40}, {200, 250, 258, 250, 200});
  EXPECT_NEAR(*trace.measure("time near peak, offset=5, reference=260").value, 2 * 10 * 3.0 / 8, 1e-9);
  // Edition C of 2004: within 5 °C of the trace's own peak.
  EXPECT_NEAR(*trace.measure("time near peak").value, 2 * 10 * 5.0 / 8, 1e-9);
  // A level on the flat top counts: at or above.
  EXPECT_NEAR(*Sampled({0, 10, 20, 30}, {200, 255, 255, 200}).measure("time near peak, reference=260").value, 10, 1e-9);
}

TEST(TimeNearPeak, IsABoundWhereTheLogIsCutOff) {
  EXPECT_TRUE(Sampled(seconds(4), {20, 100, 200, 240}).measure("time near peak").at_least);
  EXPECT_TRUE(Sampled(seconds(4), {20, 100, 240, 236}).measure("time near peak").at_least);
  EXPECT_TRUE(Sampled(seconds(4), {236, 238, 240, 100}).measure("time near peak").at_least);
  EXPECT_FALSE(Sampled(seconds(4), {20, 100, 240, 234}).measure("time near peak").at_least);
}

TEST(TimeNearPeak, WithoutTheTemperatureThatTcStandsForIsUndetermined) {
  const auto near_Tc = Sampled(seconds(4), {20, 100, 240, 100}).measure("time near peak, reference=Tc");
  EXPECT_EQ(near_Tc.no_value, NoValue::kUndetermined);
  EXPECT_FALSE(near_Tc.reason.empty());
}

}  // namespace
}  // namespace ovenwright::measure
