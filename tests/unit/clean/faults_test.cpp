#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "core/clean/clean.h"
#include "tests/unit/clean/made_log.h"

namespace ovenwright::clean {
namespace {

using testing::ElementsAre;
using testing::IsEmpty;

std::vector<run::Run> cleaned(const MadeLog& log, const Options& options = {}) {
  auto runs = clean(log.channels(), options);
  EXPECT_TRUE(runs) << runs.error().message;
  return runs ? *std::move(runs) : std::vector<run::Run>{};
}

// Expected values below: the rules of 'faults found before measuring' applied by hand to what each test spoils.

TEST(CleanFaults, AGoodLogHasNoneAndKeepsEverySample) {
  for (const double interval_s : {0.1, 0.25, 0.5, 1.0, 2.0, 5.0}) {
    const MadeLog log(interval_s);
    const auto runs = cleaned(log);
    ASSERT_EQ(runs.size(), 1U);
    EXPECT_THAT(faults_of(runs[0]), IsEmpty()) << "at " << interval_s << " s";
    for (std::size_t k = 0; k < runs[0].channels.size(); ++k) {
      ASSERT_TRUE(runs[0].channels[k].trace);
      EXPECT_TRUE(std::ranges::equal(runs[0].channels[k].trace->temperature_C(), log.temperature_C[k]));
      EXPECT_THAT(runs[0].channels[k].gaps, IsEmpty());
    }
  }
}

TEST(CleanFaults, TracesWithoutRemovedSamplesShareOneClock) {
  MadeLog log;
  log.temperature_C[2][100] = kOpenCell;
  const auto runs = cleaned(log);
  const auto& channels = runs[0].channels;
  EXPECT_EQ(channels[0].trace->clock(), channels[1].trace->clock());
  EXPECT_EQ(channels[0].trace->clock(), channels[3].trace->clock());
  EXPECT_NE(channels[0].trace->clock(), channels[2].trace->clock());
  EXPECT_EQ(channels[2].trace->size(), channels[0].trace->size() - 1);
}

TEST(CleanFaults, OpenStretchIsRemovedAndBridged) {
  MadeLog log;
  for (std::size_t i = log.row(100); i <= log.row(120); ++i) log.temperature_C[1][i] = kOpenCell;
  const auto runs = cleaned(log);
  EXPECT_THAT(faults_of(runs[0]), ElementsAre("TC2 open 100.0 120.0 removed"));
  const auto& channel = runs[0].channels[1];
  ASSERT_EQ(channel.gaps.size(), 1U);
  EXPECT_DOUBLE_EQ(channel.gaps[0].from_s, 99.5);
  EXPECT_DOUBLE_EQ(channel.gaps[0].to_s, 120.5);
  EXPECT_EQ(channel.faults[0].removed.size(), 41U);
  EXPECT_EQ(channel.samples, log.time_s.size());
  // a straight line between the good samples on both sides
  const double before = log.temperature_C[1][log.row(99.5)], after = log.temperature_C[1][log.row(120.5)];
  EXPECT_NEAR(channel.trace->at(110), (before + after) / 2, 1e-12);
}

TEST(CleanFaults, ShortBridgesAreNoGaps) {
  MadeLog log(2);
  log.temperature_C[1][log.row(100)] = log.temperature_C[1][log.row(102)] = kOpenCell;  // two samples, 6 s
  EXPECT_THAT(cleaned(log)[0].channels[1].gaps, IsEmpty());
  MadeLog fine(0.5);
  for (std::size_t i = 200; i < 205; ++i) fine.temperature_C[1][i] = kOpenCell;  // five samples, 3 s
  EXPECT_THAT(cleaned(fine)[0].channels[1].gaps, IsEmpty());
  fine.temperature_C[1][205] = kOpenCell;  // six samples, 3.5 s
  EXPECT_EQ(cleaned(fine)[0].channels[1].gaps.size(), 1U);
}

TEST(CleanFaults, StretchesAtTheEndsShortenTheTrace) {
  MadeLog log;
  for (std::size_t i = 0; i < log.row(20); ++i) log.temperature_C[0][i] = kOpenCell;
  for (std::size_t i = log.row(380); i < log.time_s.size(); ++i)
    log.temperature_C[3][i] = std::numeric_limits<double>::infinity();
  const auto runs = cleaned(log);
  EXPECT_THAT(faults_of(runs[0]), ElementsAre("TC1 open 0.0 19.5 removed", "TC4 over-range 380.0 400.0 removed"));
  const auto& first = runs[0].channels[0];
  EXPECT_DOUBLE_EQ(first.trace->time_s().front(), 20);
  EXPECT_DOUBLE_EQ(first.removed_start_to_s, 0);
  EXPECT_DOUBLE_EQ(first.removed_end_from_s, 400);
  EXPECT_THAT(first.gaps, IsEmpty());
  EXPECT_DOUBLE_EQ(runs[0].channels[3].trace->time_s().back(), 379.5);
}

TEST(CleanFaults, AChannelOpenThroughoutHasNoTrace) {
  MadeLog log;
  std::ranges::fill(log.temperature_C[2], kOpenCell);
  const auto runs = cleaned(log);
  EXPECT_THAT(faults_of(runs[0]), ElementsAre("TC3 open 0.0 400.0 removed"));
  EXPECT_FALSE(runs[0].channels[2].trace);
  EXPECT_TRUE(runs[0].channels[0].trace);
}

struct Value {
  const char* name;
  double value_C;
  const char* kind;
};
void PrintTo(const Value& value, std::ostream* os) { *os << value.name; }
class CleanValue : public testing::TestWithParam<Value> {};

// A value in place of a reading, in the middle of the trace, then from 300 s to its end, then throughout.
// Source: ends of the ranges of types K and T, ITS-90; fixed numbers: the ends of 16-bit counts and runs of nines.
TEST_P(CleanValue, IsRemovedWhereverItStands) {
  const auto [name, value_C, kind] = GetParam();
  MadeLog log;
  for (std::size_t i = log.row(100); i <= log.row(110); ++i) log.temperature_C[1][i] = value_C;
  EXPECT_THAT(faults_of(cleaned(log)[0]), ElementsAre(std::string("TC2 ") + kind + " 100.0 110.0 removed"));
  MadeLog ends;
  for (std::size_t i = ends.row(300); i < ends.time_s.size(); ++i) ends.temperature_C[1][i] = value_C;
  EXPECT_THAT(faults_of(cleaned(ends)[0]), ElementsAre(std::string("TC2 ") + kind + " 300.0 400.0 removed"));
  MadeLog one;
  one.temperature_C[1][one.row(200)] = value_C;
  EXPECT_THAT(faults_of(cleaned(one)[0]), ElementsAre(std::string("TC2 ") + kind + " 200.0 200.0 removed"));
  MadeLog all;
  std::ranges::fill(all.temperature_C[1], value_C);
  EXPECT_THAT(faults_of(cleaned(all)[0]), ElementsAre(std::string("TC2 ") + kind + " 0.0 400.0 removed"));
  MadeLog flickering;  // every third sample
  for (std::size_t i = 1; i < flickering.time_s.size(); i += 3) flickering.temperature_C[1][i] = value_C;
  EXPECT_EQ(cleaned(flickering)[0].channels[1].trace->size(), flickering.time_s.size() * 2 / 3 + 1 - 1);
}
INSTANTIATE_TEST_SUITE_P(
    Values, CleanValue,
    testing::Values(Value{"end_of_type_K", 1372, "over-range"}, Value{"end_of_type_T", 400, "over-range"},
                    Value{"beyond_any_type", 2500, "over-range"}, Value{"below_any_type", -300, "over-range"},
                    Value{"zero", 0, "dropout"}, Value{"zero_degF", -160.0 / 9, "dropout"},
                    Value{"nines", 9999, "dropout"}, Value{"minus_nines", -999.9, "dropout"},
                    Value{"sixteen_bits_in_tenths", 3276.7, "dropout"}, Value{"minus_sixteen_bits", -32768, "dropout"}),
    [](const auto& c) { return std::string{c.param.name}; });

// Source: no oven and no wave for soldering gets to 500 °C; common practice, no source.
TEST(CleanFaults, AChannelThatStandsHotterThanAnyOvenIsOverRange) {
  MadeLog log;
  std::ranges::fill(log.temperature_C[2], 850);
  const auto runs = cleaned(log);
  EXPECT_THAT(faults_of(runs[0]), ElementsAre("TC3 over-range 0.0 400.0 removed"));
  EXPECT_FALSE(runs[0].channels[2].trace);
}

TEST(CleanFaults, ARepeatedValueOfAnyKindIsADropoutWhereTheCurveGoesOn) {
  MadeLog log;
  for (std::size_t i = log.row(150); i <= log.row(155); ++i) log.temperature_C[0][i] = 20;
  EXPECT_THAT(faults_of(cleaned(log)[0]), ElementsAre("TC1 dropout 150.0 155.0 removed"));
}

// Source: a sentinel is a number that stands for no reading, far off the curve; here the solder of a second wave holds
// a joint at one number of a logger with whole degrees.
TEST(CleanFaults, EqualReadingsAtTheTopOfACoarseCurveAreNoDropout) {
  MadeLog log(0.5, 200);
  for (std::size_t k = 0; k < log.temperature_C.size(); ++k)
    for (std::size_t i = 0; i < log.time_s.size(); ++i) {
      const double t = log.time_s[i] - 3.0 * static_cast<double>(k);  // joint after joint
      log.temperature_C[k][i] = std::round(t < 100   ? 25 + 0.9 * t
                                           : t < 103 ? 216
                                           : t < 107 ? 225
                                                     : std::max(225 - 12 * (t - 106.5), 165 - t / 2));
    }
  EXPECT_THAT(faults_of(cleaned(log)[0]), IsEmpty());
}

// A bare thermocouple dips into the solder of two waves and is dry again at once; whole degrees, 0.5 s.
TEST(CleanFaults, EqualReadingsInTheSolderOfAWaveAreNoDropout) {
  MadeLog log(0.5, 200);
  for (std::size_t i = 0; i < log.time_s.size(); ++i) {
    const double t = log.time_s[i];
    const bool dips = (t >= 100 && t < 102) || (t >= 108 && t < 112);
    log.temperature_C[0][i] = dips ? 253 : std::round(25 + 0.9 * std::min(t, 100.0) - 0.3 * std::max(t - 112, 0.0));
  }
  EXPECT_THAT(faults_of(cleaned(log)[0]), IsEmpty());
}

// Source: a spike stands alone; two waves taken at 4 s leave one sample between them on two joints.
TEST(CleanFaults, ADipBetweenTwoWavesOnSeveralTracesIsNoSpike) {
  MadeLog log(4, 200);
  for (const std::size_t k : {0U, 1U})
    for (std::size_t i = 0; i < log.time_s.size(); ++i) {
      const double t = log.time_s[i], more = 3.0 * static_cast<double>(k);
      log.temperature_C[k][i] = t < 104 ? 25 + 0.7 * t : t == 108 ? 179 + more : t <= 112 ? 235 + more : 220 - t + more;
    }
  EXPECT_THAT(faults_of(cleaned(log)[0]), IsEmpty());
}

TEST(CleanFaults, SpikesOfOneAndTwoSamplesAreRemoved) {
  MadeLog log;
  log.temperature_C[0][log.row(75)] = 412;
  log.temperature_C[0][log.row(160)] -= 30;
  log.temperature_C[0][log.row(160.5)] -= 42;
  log.temperature_C[2][log.row(250)] += 7;
  const auto runs = cleaned(log);
  EXPECT_THAT(faults_of(runs[0]), ElementsAre("TC1 spike 75.0 75.0 removed", "TC1 spike 160.0 160.5 removed",
                                              "TC3 spike 250.0 250.0 removed"));
  EXPECT_EQ(runs[0].channels[0].faults[0].detail, "one sample, 412.0 °C");
  EXPECT_DOUBLE_EQ(runs[0].channels[0].faults[0].removed[0].temperature_C, 412);
}

TEST(CleanFaults, AGoodSampleBetweenTwoSpikesStays) {
  MadeLog log;
  log.temperature_C[0][log.row(100)] += 40;
  log.temperature_C[0][log.row(101)] += 40.3;
  const auto runs = cleaned(log);
  EXPECT_THAT(faults_of(runs[0]), ElementsAre("TC1 spike 100.0 100.0 removed", "TC1 spike 101.0 101.0 removed"));
}

TEST(CleanFaults, WhatMovesSeveralTracesAtOnceIsNoSpike) {
  MadeLog log;
  log.temperature_C[0][log.row(100)] += 40;
  log.temperature_C[1][log.row(100)] += 35;
  EXPECT_THAT(faults_of(cleaned(log)[0]), IsEmpty());
}

TEST(CleanFaults, BelowTheLimitIsNoSpike) {
  MadeLog log;  // 5 °C at 0.5 s and little noise; 12 °C at 2 s
  log.temperature_C[0][log.row(20)] += 4.7;
  EXPECT_THAT(faults_of(cleaned(log)[0]), IsEmpty());
  MadeLog slow(2);
  slow.temperature_C[0][slow.row(20)] += 11.5;
  EXPECT_THAT(faults_of(cleaned(slow)[0]), IsEmpty());
  slow.temperature_C[0][slow.row(20)] += 1.5;
  EXPECT_THAT(faults_of(cleaned(slow)[0]), ElementsAre("TC1 spike 20.0 20.0 removed"));
}

// Source: the definition of a spike: off the line between its neighbours by more than max(5 °C, 6 °C/s times the median
// interval), so that a sharp peak that is sampled coarsely is none.
TEST(CleanFaults, TheLimitOfASpikeGrowsWithTheInterval) {
  struct Case {
    double interval_s, limit_C;
  };
  for (const auto& [interval_s, limit_C] : {Case{0.25, 5}, Case{0.5, 5}, Case{1, 6}, Case{1.5, 9}, Case{2, 12}}) {
    for (const double beside_C : {-0.2, 0.2}) {
      MadeLog log(interval_s);
      auto& T = log.temperature_C[1];
      const auto i = log.row(150);
      T[i] = (T[i - 1] + T[i + 1]) / 2 + limit_C + beside_C;
      EXPECT_EQ(faults_of(cleaned(log)[0]).size(), beside_C > 0 ? 1U : 0U)
          << limit_C + beside_C << " °C at " << interval_s << " s";
    }
  }
}

TEST(CleanFaults, ASpikeThatIsWantedIsFlaggedAndStays) {
  MadeLog log;
  log.temperature_C[1][log.row(75)] = 412;
  const auto runs = cleaned(log, {nullptr, {2}});
  EXPECT_THAT(faults_of(runs[0]), ElementsAre("TC2 spike 75.0 75.0 flagged"));
  EXPECT_DOUBLE_EQ(runs[0].channels[1].trace->at(75), 412);
}

// A solder wave: contact of 3 s taken at 2 s and at 0.2 s, joint after joint.
TEST(CleanFaults, ContactsWithAWaveAreNoSpikes) {
  for (const double interval_s : {0.2, 0.5, 1.0, 2.0, 3.0}) {
    MadeLog log(interval_s, 200);
    for (std::size_t k = 0; k < 4; ++k) {
      double T = 110;
      for (std::size_t i = 0; i < log.time_s.size(); ++i) {
        const double t = log.time_s[i], from = 100 + 2.0 * static_cast<double>(k);
        if (t < from)
          T = 25 + 85 * (1 - std::exp(-t / 40));
        else if (t < from + 3)
          T += (255 - T) * (1 - std::exp(-interval_s / 0.7));
        else
          T += (110 - T) * (1 - std::exp(-interval_s / 13));
        log.temperature_C[k][i] = std::round(T * 10) / 10;
      }
    }
    EXPECT_THAT(faults_of(cleaned(log)[0]), IsEmpty()) << "at " << interval_s << " s";
  }
}

// Joints in a row across the belt touch two waves, 3 s apart, all at once.
TEST(CleanFaults, JointsThatTouchAWaveTogetherAreNoStepOfTheColdJunction) {
  for (const double interval_s : {0.1, 0.2, 0.25, 0.5, 1.0, 2.0}) {
    MadeLog log(interval_s, 200);
    for (std::size_t k = 0; k < 4; ++k) {
      double T = 110;
      for (std::size_t i = 0; i < log.time_s.size(); ++i) {
        const double t = log.time_s[i];
        if (t < 100)
          T = 25 + 85 * (1 - std::exp(-t / 40));
        else if (t < 101 || (t > 104 && t < 107))
          T += (255 - static_cast<double>(k) - T) * (1 - std::exp(-interval_s / 0.6));
        else
          T += (110 - T) * (1 - std::exp(-interval_s / 13));
        log.temperature_C[k][i] = std::round(T * 10) / 10;
      }
    }
    EXPECT_THAT(faults_of(cleaned(log)[0]), IsEmpty()) << "at " << interval_s << " s";
  }
}

TEST(CleanFaults, StuckDigitsAreFlaggedAndLeftIn) {
  MadeLog log;
  const double stands = log.temperature_C[2][log.row(60)];
  for (std::size_t i = log.row(60); i <= log.row(90); ++i) log.temperature_C[2][i] = stands;
  const auto runs = cleaned(log);
  EXPECT_THAT(faults_of(runs[0]), ElementsAre("TC3 stuck 60.0 90.0 flagged"));
  EXPECT_EQ(runs[0].channels[2].trace->size(), log.time_s.size());
}

TEST(CleanFaults, StuckNeedsTwentySecondsAndAnotherTraceThatMoves) {
  MadeLog log;
  for (std::size_t i = log.row(60); i <= log.row(79); ++i) log.temperature_C[2][i] = log.temperature_C[2][log.row(60)];
  EXPECT_THAT(faults_of(cleaned(log)[0]), IsEmpty());
  MadeLog idle;  // all at rest before the oven
  for (auto& T : idle.temperature_C)
    for (std::size_t i = 0; i <= idle.row(25); ++i) T[i] = T[idle.row(25)];
  EXPECT_THAT(faults_of(cleaned(idle)[0]), IsEmpty());
}

TEST(CleanFaults, CoarseDigitsAreNotStuck) {
  MadeLog log(1);
  for (auto& T : log.temperature_C)
    for (double& value : T) value = std::round(value / 2) * 2;
  EXPECT_THAT(faults_of(cleaned(log)[0]), IsEmpty());
}

TEST(CleanFaults, ReversedPolarityIsFlagged) {
  MadeLog log;
  for (double& value : log.temperature_C[3]) value = 50 - value;
  EXPECT_THAT(faults_of(cleaned(log)[0]), ElementsAre("TC4 reversed polarity 0.0 400.0 flagged"));
}

TEST(CleanFaults, ReversedPolarityOfAllTracesIsFlaggedOnEach) {
  MadeLog log;
  for (auto& T : log.temperature_C)
    for (double& value : T) value = 50 - value;
  const auto faults = faults_of(cleaned(log)[0]);
  ASSERT_EQ(faults.size(), 4U);
  for (const auto& fault : faults) EXPECT_THAT(fault, testing::HasSubstr("reversed polarity 0.0 "));
  // The one that rises is none.
  MadeLog three;
  for (const std::size_t k : {0U, 1U, 2U})
    for (double& value : three.temperature_C[k]) value = 50 - value;
  const auto of_three = faults_of(cleaned(three)[0]);
  ASSERT_EQ(of_three.size(), 3U);
  for (std::size_t k = 0; k < 3; ++k)
    EXPECT_THAT(of_three[k], testing::StartsWith("TC" + std::to_string(k + 1) + " reversed polarity 0.0 "));
}

TEST(CleanFaults, AStepOfTheColdJunctionIsFlaggedOnEveryTrace) {
  MadeLog log;
  for (auto& T : log.temperature_C)
    for (std::size_t i = log.row(110); i < T.size(); ++i) T[i] += 3;
  const auto faults = faults_of(cleaned(log)[0]);
  ASSERT_EQ(faults.size(), 4U);
  MadeLog far;  // a reference that fails by the room's temperature
  for (auto& T : far.temperature_C)
    for (std::size_t i = far.row(110); i < T.size(); ++i) T[i] -= 25;
  EXPECT_EQ(faults_of(cleaned(far)[0]).size(), 4U);
  for (std::size_t k = 0; k < 4; ++k) EXPECT_THAT(faults[k], testing::HasSubstr("cold-junction step 109"));
  MadeLog one;
  for (std::size_t i = one.row(110); i < one.time_s.size(); ++i) one.temperature_C[0][i] += 3;
  EXPECT_THAT(faults_of(cleaned(one)[0]), IsEmpty());
}

/// A pass of 200 s with a sample every 2 s, seven degrees a second on the way down.
MadeLog fast_pass(unsigned seed) {
  MadeLog log(4, 400, seed);
  for (double& t : log.time_s) t /= 2;
  return log;
}

TEST(CleanFaults, ASteepRampSampledCoarselyIsNoStepOfTheColdJunction) {
  for (unsigned seed = 1; seed <= 10; ++seed) {
    for (const auto& fault : faults_of(cleaned(fast_pass(seed))[0]))
      EXPECT_THAT(fault, testing::Not(testing::HasSubstr("cold-junction"))) << seed;
    auto log = fast_pass(seed);
    for (auto& T : log.temperature_C)
      for (std::size_t i = log.row(84); i < T.size(); ++i) T[i] += 6;
    EXPECT_THAT(faults_of(cleaned(log)[0]), testing::Contains(testing::HasSubstr("cold-junction step"))) << seed;
  }
}

TEST(CleanFaults, TheLogsClockAndTheOrderOfChannelsDoNotMatter) {
  MadeLog log;
  log.temperature_C[0][log.row(75)] = 412;
  for (double& value : log.temperature_C[1]) value = 50 - value;
  for (std::size_t i = log.row(60); i <= log.row(90); ++i) log.temperature_C[2][i] = log.temperature_C[2][log.row(60)];
  for (std::size_t i = log.row(200); i <= log.row(210); ++i) log.temperature_C[3][i] = 0;
  const auto here = faults_of(cleaned(log)[0]);
  EXPECT_THAT(here, ElementsAre("TC1 spike 75.0 75.0 removed", "TC2 reversed polarity 0.0 400.0 flagged",
                                "TC3 stuck 60.0 90.0 flagged", "TC4 dropout 200.0 210.0 removed"));
  auto backwards = log.channels();
  std::ranges::reverse(backwards);
  const auto reversed = clean(std::move(backwards));
  ASSERT_TRUE(reversed);
  auto there = faults_of((*reversed)[0]);
  std::ranges::reverse(there);
  EXPECT_EQ(there, here);
  MadeLog later = log;
  for (double& time : later.time_s) time += 512;  // exact in binary
  const auto shifted = cleaned(later);
  for (std::size_t k = 0; k < 4; ++k) {
    ASSERT_EQ(shifted[0].channels[k].faults.size(), 1U);
    EXPECT_EQ(shifted[0].channels[k].faults[0].from_s, cleaned(log)[0].channels[k].faults[0].from_s + 512);
    EXPECT_EQ(shifted[0].channels[k].faults[0].kind, cleaned(log)[0].channels[k].faults[0].kind);
  }
}

}  // namespace
}  // namespace ovenwright::clean
