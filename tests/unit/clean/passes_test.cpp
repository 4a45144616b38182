#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "core/clean/clean.h"
#include "tests/unit/clean/made_log.h"

namespace ovenwright::clean {
namespace {

using testing::IsEmpty;

/// The log with another behind it, `pause_s` later, after a fall over 200 s to where the other begins.
void append(MadeLog& log, const MadeLog& next, double pause_s) {
  const double interval_s = log.time_s[1] - log.time_s[0], end_s = log.time_s.back();
  for (double t = interval_s; t <= 200; t += interval_s) {
    log.time_s.push_back(end_s + t);
    for (std::size_t k = 0; k < log.temperature_C.size(); ++k) {
      const double last = log.temperature_C[k].back(), rest = next.temperature_C[k].front();
      log.temperature_C[k].push_back(last + (rest - last) * (1 - std::exp(-interval_s / 35)));
    }
  }
  const double start_s = log.time_s.back() + pause_s;
  for (const double t : next.time_s) log.time_s.push_back(start_s + t);
  for (std::size_t k = 0; k < log.temperature_C.size(); ++k)
    log.temperature_C[k].insert(log.temperature_C[k].end(), next.temperature_C[k].begin(), next.temperature_C[k].end());
}

TEST(CleanPasses, BackToAmbientBetweenThemMakesTwoRuns) {
  MadeLog log;
  append(log, MadeLog(0.5, 400, 2), 0.5);
  const auto runs = clean(log.channels());
  ASSERT_TRUE(runs);
  ASSERT_EQ(runs->size(), 2U);
  for (int part = 0; part < 2; ++part) {
    const auto& run = (*runs)[static_cast<std::size_t>(part)];
    EXPECT_EQ(run.part, part + 1);
    EXPECT_EQ(run.parts, 2);
    EXPECT_THAT(faults_of(run), IsEmpty());
    ASSERT_TRUE(run.channels[0].trace);
    EXPECT_GT(std::ranges::max(run.channels[0].trace->temperature_C()), 230);
    EXPECT_EQ(run.channels[0].trace->clock(), run.channels[3].trace->clock());
  }
  EXPECT_EQ((*runs)[0].channels[0].samples + (*runs)[1].channels[0].samples, log.time_s.size());
  EXPECT_LT((*runs)[0].to_s, (*runs)[1].from_s);
}

TEST(CleanPasses, APauseOfTheLoggerBetweenThemIsTheCutAndNoGap) {
  MadeLog log;
  append(log, MadeLog(0.5, 400, 2), 900);
  const auto runs = clean(log.channels());
  ASSERT_TRUE(runs);
  ASSERT_EQ(runs->size(), 2U);
  EXPECT_DOUBLE_EQ((*runs)[0].to_s, 600);
  EXPECT_DOUBLE_EQ((*runs)[1].from_s, 1500);
  EXPECT_THAT(faults_of((*runs)[0]), IsEmpty());
  EXPECT_THAT(faults_of((*runs)[1]), IsEmpty());
}

TEST(CleanPasses, AJumpOfAllTracesIsTheCutWhereTheClockGoesOn) {
  for (const double stop_s : {400.0, 350.0}) {  // the first run ends at 65 °C to 100 °C, the second begins at 25 °C
    MadeLog log(0.5, stop_s);
    const MadeLog next(0.5, 400, 2);
    const double start_s = log.time_s.back() + 0.5;
    for (const double t : next.time_s) log.time_s.push_back(start_s + t);
    for (std::size_t k = 0; k < 4; ++k)
      log.temperature_C[k].insert(log.temperature_C[k].end(), next.temperature_C[k].begin(),
                                  next.temperature_C[k].end());
    const auto runs = clean(log.channels());
    ASSERT_TRUE(runs);
    ASSERT_EQ(runs->size(), 2U) << stop_s;
    EXPECT_DOUBLE_EQ((*runs)[0].to_s, stop_s);
    EXPECT_DOUBLE_EQ((*runs)[1].from_s, start_s);
    EXPECT_THAT(faults_of((*runs)[0]), IsEmpty());
    EXPECT_THAT(faults_of((*runs)[1]), IsEmpty());
  }
}

TEST(CleanPasses, AClockThatStartsAgainMakesTwoRuns) {
  MadeLog log;
  const MadeLog next(0.5, 400, 2);
  log.time_s.insert(log.time_s.end(), next.time_s.begin(), next.time_s.end());
  for (std::size_t k = 0; k < 4; ++k)
    log.temperature_C[k].insert(log.temperature_C[k].end(), next.temperature_C[k].begin(), next.temperature_C[k].end());
  const auto runs = clean(log.channels());
  ASSERT_TRUE(runs);
  ASSERT_EQ(runs->size(), 2U);
  EXPECT_DOUBLE_EQ((*runs)[1].from_s, 0);
  EXPECT_EQ((*runs)[1].channels[0].trace->size(), next.time_s.size());
  EXPECT_THAT(faults_of((*runs)[1]), IsEmpty());
}

TEST(CleanPasses, AClockSetBackInTheMiddleOfAPassIsAFaultAndOneRun) {
  MadeLog log;
  for (std::size_t i = log.row(200); i < log.time_s.size(); ++i) log.time_s[i] -= 10;
  const auto runs = clean(log.channels());
  ASSERT_TRUE(runs);
  ASSERT_EQ(runs->size(), 1U);
  const auto faults = faults_of((*runs)[0]);
  ASSERT_EQ(faults.size(), 1U);
  EXPECT_THAT(faults[0], testing::StartsWith("log time going back"));
}

TEST(CleanPasses, AnOpenOrDroppedOutStretchDoesNotSplitAPass) {
  MadeLog log;
  for (auto& T : log.temperature_C)
    for (std::size_t i = log.row(180); i <= log.row(210); ++i) T[i] = 0;
  const auto runs = clean(log.channels());
  ASSERT_TRUE(runs);
  EXPECT_EQ(runs->size(), 1U);
}

TEST(CleanPasses, FaultsGoWithTheirRun) {
  MadeLog log;
  log.temperature_C[0][log.row(75)] = 412;
  append(log, MadeLog(0.5, 400, 2), 900);
  log.temperature_C[1][log.row(1600)] = kOpenCell;
  const auto runs = clean(log.channels());
  ASSERT_TRUE(runs);
  EXPECT_THAT(faults_of((*runs)[0]), testing::ElementsAre("TC1 spike 75.0 75.0 removed"));
  EXPECT_THAT(faults_of((*runs)[1]), testing::ElementsAre("TC2 open 1600.0 1600.0 removed"));
}

}  // namespace
}  // namespace ovenwright::clean
