#include <cmath>

#include "tests/unit/measure/subject.h"

namespace ovenwright::measure {
namespace {

/// A trace of straight pieces between corners, sampled evenly.
Sampled pieces(const std::vector<std::pair<double, double>>& corners, double interval_s) {
  std::vector<double> time_s, T;
  std::size_t k = 0;
  for (int i = 0;; ++i) {
    const double t = corners.front().first + interval_s * i;
    if (t > corners.back().first + 1e-9) break;
    while (k + 2 < corners.size() && corners[k + 1].first < t) ++k;
    const auto [t0, T0] = corners[k];
    const auto [t1, T1] = corners[k + 1];
    time_s.push_back(t);
    T.push_back(T0 + (T1 - T0) * (t - t0) / (t1 - t0));
  }
  return {time_s, T};
}

/// Preheat at 1 °C/s to 110 °C at 90 s; in at 200 °C/s to 250 °C; 2.3 s in the solder; out at 8 °C/s.
std::vector<std::pair<double, double>> one_wave() {
  return {{0, 20}, {90, 110}, {90.7, 250}, {93, 250}, {113, 90}, {130, 60}};
}

// Source: closed form of the pieces. In: 217 °C at 90 + 0.7·107/140 s. Out: 245 °C, the peak less 5 °C, at 93 + 5/8 s.
TEST(WaveContact, RunsFromTheLevelToFiveDegreesUnderThePeak) {
  const auto trace = pieces(one_wave(), 0.1);
  const auto contact = trace.measure("wave: contact time, level=217");
  ASSERT_TRUE(contact.value) << contact.reason;
  EXPECT_NEAR(*contact.from_s, 90 + 0.7 * 107 / 140, 1e-9);
  EXPECT_NEAR(*contact.to_s, 93.625, 1e-9);
  EXPECT_NEAR(*contact.value, *contact.to_s - *contact.from_s, 1e-12);
  EXPECT_FALSE(contact.at_least);
  // Time above liquidus goes on while the joint cools in air: 33 °C at 8 °C/s, more than 4 s longer than the solder.
  EXPECT_NEAR(*trace.measure("time above, level=217").value, 93 + 33.0 / 8 - (90 + 0.7 * 107 / 140), 1e-9);
}

// Source: closed form. Slopes are of 1 s windows; the last at most 40 °C/s (a fifth of the steepest, at most 200) is
// the start, within a window's half of the corner at 90 s.
TEST(WaveStep, IsThePeakLessThePreheat) {
  const auto trace = pieces(one_wave(), 0.1);
  const auto preheat = trace.measure("wave: preheat temperature"), step = trace.measure("wave: step");
  ASSERT_TRUE(preheat.value) << preheat.reason;
  EXPECT_GE(*preheat.from_s, 89.5);
  EXPECT_LE(*preheat.from_s, 90);
  EXPECT_NEAR(*preheat.value, 20 + *preheat.from_s, 1e-9);
  EXPECT_NEAR(*step.value, 250 - *preheat.value, 1e-9);
  // Noise enters twice, gain dominates the thermocouple: an offset leaves a difference alone.
  EXPECT_NEAR(step.terms.thermocouple, 0.004 / std::sqrt(3.0) * *step.value, 1e-9);
  EXPECT_NEAR(step.terms.instrument, 0, 1e-9);
  EXPECT_NEAR(step.terms.noise, std::sqrt(2.0) * preheat.terms.noise, 1e-12);
}

// Source: closed form: between the waves the solder on the joint stays at 225 °C, above the level, and the second
// contact starts 5 °C above that valley.
TEST(WaveContact, TwoWavesAreTwoContactsEvenWhereTheSolderBetweenStaysMolten) {
  const auto trace =
      pieces({{0, 20}, {90, 110}, {90.7, 250}, {92, 250}, {95, 225}, {96, 255}, {98, 255}, {120, 79}, {130, 60}}, 0.1);
  const double first = 92 + 3.0 * 5 / 25 - (90 + 0.7 * 107 / 140);
  const double second = 98 + 5.0 / 8 - (95 + 5.0 / 30);
  const auto all = trace.measure("wave: contact time, level=217");
  ASSERT_TRUE(all.value) << all.reason;
  EXPECT_NEAR(*all.value, first + second, 1e-9);
  const auto longest = trace.measure("wave: longest contact, level=217");
  EXPECT_NEAR(*longest.value, second, 1e-9);
  EXPECT_NEAR(*longest.from_s, 95 + 5.0 / 30, 1e-9);
  // h·√(n/6), n contacts.
  EXPECT_NEAR(all.terms.sampling, 0.1 * std::sqrt(2.0 / 6), 1e-9);
  EXPECT_NEAR(longest.terms.sampling, 0.1 * std::sqrt(1.0 / 6), 1e-9);
}

TEST(WaveContact, ADipOfLessThanTenDegreesIsOneContact) {
  const auto trace =
      pieces({{0, 20}, {90, 110}, {90.7, 250}, {92, 250}, {93, 241}, {94, 252}, {96, 252}, {116, 92}, {130, 60}}, 0.1);
  const auto contact = trace.measure("wave: contact time, level=217");
  EXPECT_NEAR(*contact.value, 96 + 5.0 / 8 - (90 + 0.7 * 107 / 140), 1e-9);
}

TEST(WaveContact, IsZeroWhereNothingGotAboveTheLevel) {
  const auto trace = pieces({{0, 20}, {90, 110}, {92, 180}, {94, 180}, {114, 90}}, 0.1);
  const auto contact = trace.measure("wave: contact time, level=217");
  EXPECT_EQ(*contact.value, 0);
  EXPECT_EQ(contact.terms.sampling, 0);
  EXPECT_EQ(*trace.measure("wave: longest contact, level=217").value, 0);
}

TEST(WaveContact, IsABoundWhereTheLogEndsInTheSolder) {
  auto corners = one_wave();
  corners.resize(4);
  EXPECT_TRUE(pieces(corners, 0.1).measure("wave: contact time, level=217").at_least);
}

TEST(Wave, NoneIsSeenWithoutASlopeOfFiveDegreesASecond) {
  const auto gentle = pieces({{0, 20}, {50, 260}, {100, 60}}, 0.5);
  for (const char* measure : {"wave: preheat temperature", "wave: step", "wave: contact time, level=217"}) {
    const auto value = gentle.measure(measure);
    EXPECT_EQ(value.no_value, NoValue::kUndetermined);
    EXPECT_NE(value.reason.find("no wave"), std::string::npos);
  }
}

TEST(Wave, ALogThatStartsInTheSteepRiseDoesNotShowTheStart) {
  const auto trace = pieces({{0, 110}, {1.4, 250}, {4, 250}, {20, 100}}, 0.1);
  EXPECT_EQ(trace.measure("wave: step").no_value, NoValue::kUndetermined);
}

// Source: the definition: three samples where a 1 s window holds fewer.
TEST(Wave, IsSeenOnALogOfOneSampleASecondToo) {
  const Sampled trace({0, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10}, {100, 101, 102, 103, 240, 250, 250, 240, 230, 220, 205});
  const auto preheat = trace.measure("wave: preheat temperature");
  ASSERT_TRUE(preheat.value) << preheat.reason;
  EXPECT_EQ(*preheat.from_s, 2);  // slopes 1, 1, 69, 73.5, …: sample 2 is the last with 14.7 or less
  EXPECT_EQ(*preheat.value, 102);
}

}  // namespace
}  // namespace ovenwright::measure
