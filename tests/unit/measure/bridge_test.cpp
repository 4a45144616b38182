#include "core/measure/bridge.h"

#include <algorithm>
#include <cmath>

#include "tests/unit/measure/subject.h"

namespace ovenwright::measure {
namespace {

/// Up at 1 °C/s to 240 °C, down at 2 °C/s, a sample a second, with those inside (from, to) taken out.
Sampled with_gap(double from_s, double to_s) {
  std::vector<double> time_s, T;
  for (int i = 0; i <= 330; ++i) {
    if (i > from_s && i < to_s) continue;
    time_s.push_back(i);
    T.push_back(i <= 220 ? 20 + i : 240 - 2 * (i - 220));
  }
  Sampled sampled(time_s, T);
  sampled.channel().gaps.push_back({from_s, to_s});
  return sampled;
}

// Source: algebra. S = max(1.5 · 2, 3) = 3 °C/s; from 120 °C at 100 s to 130 °C at 110 s the highest course turns at
// (100 + 110)/2 + 10/(2·3) s and the lowest at 105 − 10/6 s, 20 °C over and 20 °C under the nearer end.
TEST(ExtremeCourses, GoUpAndDownAtHalfAgainTheSteepestSlopeElsewhere) {
  const auto sampled = with_gap(100, 110);
  const auto courses = extreme_courses(*sampled.subject().channel);
  ASSERT_TRUE(courses);
  const auto& [lowest, highest] = *courses;
  EXPECT_NEAR(highest.at(105 + 10.0 / 6), 140, 1e-9);
  EXPECT_NEAR(lowest.at(105 - 10.0 / 6), 110, 1e-9);
  for (const double t : {50.0, 100.0, 110.0, 200.0}) {
    EXPECT_NEAR(highest.at(t), 20 + t, 1e-9);
    EXPECT_NEAR(lowest.at(t), 20 + t, 1e-9);
  }
  EXPECT_NEAR(highest.at(103), 129, 1e-9);
  EXPECT_NEAR(highest.median_interval_s(), 1, 1e-12);
}

TEST(ExtremeCourses, TakeTheSteepestSlopeElsewhereNotThatAcrossTheGap) {
  std::vector<double> time_s, T;
  for (int i = 0; i <= 100; ++i) {
    if (i > 40 && i < 50) continue;
    time_s.push_back(i);
    T.push_back(i <= 40 ? 20 + i : 160 + 2.5 * (i - 50));  // 100 °C in the 10 s gap
  }
  Sampled sampled(time_s, T);
  sampled.channel().gaps.push_back({40, 50});
  const auto courses = extreme_courses(*sampled.subject().channel);
  ASSERT_TRUE(courses);
  // 3.75 °C/s cannot bridge 10 °C/s: both courses are the straight line.
  EXPECT_NEAR((*courses)[0].at(45), 110, 1e-9);
  EXPECT_NEAR((*courses)[1].at(45), 110, 1e-9);
}

TEST(ExtremeCourses, FollowTheSamplesThatABridgeMayHave) {
  Sampled sampled({0, 1, 2, 3, 4, 5, 6, 7, 8, 9}, {20, 20, 20, 20, 20, 20, 20, 20, 20, 20});
  sampled.channel().gaps.push_back({2, 8});
  const auto courses = extreme_courses(*sampled.subject().channel);
  ASSERT_TRUE(courses);
  EXPECT_NEAR((*courses)[1].at(5), 29, 1e-9);
  EXPECT_NEAR((*courses)[0].at(3), 17, 1e-9);
  EXPECT_EQ((*courses)[0].size(), 10u);
}

TEST(BridgedGap, LeavesWhatItCannotTouch) {
  const auto sampled = with_gap(100, 110);
  const auto peak = sampled.measure("peak");
  ASSERT_TRUE(peak.value);
  EXPECT_EQ(*peak.value, 240);
  ASSERT_TRUE(peak.range);
  EXPECT_EQ((*peak.range)[0], 240);
  EXPECT_EQ((*peak.range)[1], 240);
}

// Source: algebra: over the peak from 235 °C at 215 s to 220 °C at 230 s the highest course reaches 250 °C, the lowest
// leaves the peak at 235 °C; the straight line has 235 °C. U of the peak is about 2 °C.
TEST(BridgedGap, HidesWhatDiffersByMoreThanItsUncertainty) {
  const auto peak = with_gap(215, 230).measure("peak");
  EXPECT_FALSE(peak.value);
  EXPECT_EQ(peak.no_value, NoValue::kUndetermined);
  ASSERT_TRUE(peak.range);
  EXPECT_NEAR((*peak.range)[0], 235, 1e-9);
  EXPECT_NEAR((*peak.range)[1], 250, 1e-9);
  EXPECT_FALSE(peak.expanded_uncertainty);
  // Values alone asked for: the same answer.
  EXPECT_FALSE(with_gap(215, 230).measure("peak", std::nullopt, {false, 1}).value);
}

// Source: algebra: between 220 °C at 200 s and 224 °C at 204 s the level of 222 °C is met after 2 s by the straight
// line, 2/3 s by the highest course and 10/3 s by the lowest; U is 2·(1/1 + 1/2) s/°C · √(1.5² + 1)/√3 °C = 3.1 s.
TEST(BridgedGap, WithinTheUncertaintyTheStraightLineStands) {
  const auto time = with_gap(200, 204).measure("time above, level=222");
  ASSERT_TRUE(time.value) << time.reason;
  EXPECT_NEAR(*time.value, 27, 1e-9);
  ASSERT_TRUE(time.range);
  EXPECT_NEAR((*time.range)[0], 27 - 4.0 / 3, 1e-9);
  EXPECT_NEAR((*time.range)[1], 27 + 4.0 / 3, 1e-9);
}

TEST(BridgedGap, CountsMustAgree) {
  EXPECT_TRUE(with_gap(100, 110).measure("excursions above, level=217").value);
  EXPECT_EQ(with_gap(205, 235).measure("excursions above, level=200").no_value, NoValue::kUndetermined);
}

TEST(BridgedGap, HidesBoardMeasuresToo) {
  const auto gap = with_gap(215, 230);
  const auto whole = with_gap(-10, -5);
  const_cast<Sampled&>(whole).channel().gaps.clear();
  EXPECT_EQ(on_board({&gap, &whole}, "spread of peaks").no_value, NoValue::kUndetermined);
  EXPECT_TRUE(on_board({&gap, &whole}, "lag, level=150").value);
}

}  // namespace
}  // namespace ovenwright::measure
