#include "core/check/check.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <string>

#include "core/board/board_file.h"
#include "core/check/measure_log.h"
#include "core/check/passes.h"
#include "core/log/reading.h"
#include "core/oven/oven_file.h"
#include "core/window/window_file.h"

namespace ovenwright::check {
namespace {

const std::string kLogs = std::string{OVENWRIGHT_TEST_DATA} + "/command/";

Request request_with(const std::string& window = "sac305") {
  Request request;
  auto found = window::load(std::string{OVENWRIGHT_PROFILES} + "/windows/" + window + ".toml");
  EXPECT_TRUE(found) << found.error().text();
  request.windows.push_back(*std::move(found));
  return request;
}

TEST(Check, JudgesALog) {
  const auto checked = check(kLogs + "passes.csv", request_with());
  ASSERT_TRUE(checked) << checked.error().text();
  ASSERT_EQ(checked->runs.size(), 1U);
  EXPECT_EQ(checked->runs[0].judgement.verdict, judge::Verdict::kPass);
  EXPECT_FALSE(checked->runs[0].entry);
  EXPECT_EQ(checked->reading.file.sha256.size(), 64U);
}

TEST(Check, PassesOnWhatCannotBeRead) {
  const auto missing = check(kLogs + "no such file", request_with());
  ASSERT_FALSE(missing);
  EXPECT_EQ(missing.error().code, ErrorCode::kIo);
}

TEST(Check, ABoardsChannelThatTheLogLacksIsAnErrorAtItsLine) {
  auto request = request_with();
  request.board = *board::parse("b.toml", "[[placement]]\nchannel = \"U1\"\n[[placement]]\nchannel = \"R22\"\n");
  const auto checked = check(kLogs + "passes.csv", request);
  ASSERT_FALSE(checked);
  EXPECT_EQ(checked.error().code, ErrorCode::kParse);
  EXPECT_EQ(checked.error().where.file, "b.toml");
  EXPECT_EQ(checked.error().where.line, 4);
  EXPECT_NE(checked.error().message.find("did you mean \"R2\"?"), std::string::npos) << checked.error().message;
}

// Source: a placement's channel is the channel's name in the log or its number; each channel stands once.
TEST(Check, AChannelPlacedByItsNameAndByItsNumberIsAnError) {
  auto request = request_with();
  request.board =
      *board::parse("b.toml", "[[placement]]\nchannel = \"U1\"\n[[placement]]\nchannel = 1\nkind = \"body\"\n");
  const auto checked = check(kLogs + "passes.csv", request);
  ASSERT_FALSE(checked);
  EXPECT_EQ(checked.error().where.line, 4);
  EXPECT_EQ(checked.error().message, "found the channel \"U1\" a second time, first in line 2");
}

TEST(Check, ABoardsThermocoupleMustBeKnown) {
  auto request = request_with();
  request.board = *board::parse("b.toml", "[[placement]]\nchannel = 1\nthermocouple = \"K class 7\"\n");
  const auto checked = check(kLogs + "passes.csv", request);
  ASSERT_FALSE(checked);
  EXPECT_EQ(checked.error().where.line, 2);
}

// Source: a placement is one thermocouple; "1" is here the name of the second channel and the number of the first.
TEST(Check, APlacementIsNeverBoundToTwoChannels) {
  auto reading = log::read_bytes("log", "time [s],0 [degC],1 [degC],2 [degC]\n0,25,25,25\n1,26,27,28\n2,27,29,31\n");
  ASSERT_TRUE(reading) << reading.error().text();
  ASSERT_EQ(reading->channels[1].name, "1");
  const auto with = [&](const char* text) {
    const auto board = *board::parse("b.toml", text);
    auto copy = *reading;
    Setting setting;
    setting.board = &board;
    return passes(copy, setting, std::nullopt);
  };
  const auto two = with("[[placement]]\nchannel = \"1\"\n");
  ASSERT_FALSE(two);
  EXPECT_EQ(two.error().where.line, 2);
  EXPECT_EQ(two.error().message,
            "found the channel \"1\", the name of one and the number of another, expected \"0\" placed by its name as "
            "well");
  EXPECT_TRUE(with("[[placement]]\nchannel = \"0\"\n[[placement]]\nchannel = \"1\"\n[[placement]]\nchannel = \"2\"\n"));
}

TEST(Check, ARunThatTheLogDoesNotHoldIsAnError) {
  auto request = request_with();
  request.run = 2;
  const auto checked = check(kLogs + "passes.csv", request);
  ASSERT_FALSE(checked);
  EXPECT_EQ(checked.error().code, ErrorCode::kBadArgument);
  EXPECT_EQ(checked.error().found, "1 run");
}

TEST(Check, AGivenEntryStandsAndARecipeBeyondTheLimitsWarns) {
  auto request = request_with();
  request.oven =
      *oven::parse_oven("o.toml", "[limits]\nspeed_mm_per_min = [1, 2]\n[[zone]]\nname = \"1\"\nlength_mm = 300\n");
  request.recipe = *oven::parse_recipe("r.toml", "speed_mm_per_min = 100\ntop_C = [200]\nbottom_C = [200]\n");
  request.entry_s = 10.5;
  const auto checked = check(kLogs + "passes.csv", request);
  ASSERT_TRUE(checked) << checked.error().text();
  ASSERT_TRUE(checked->runs[0].entry);
  EXPECT_EQ(checked->runs[0].entry->at_s, 10.5);
  EXPECT_EQ(checked->runs[0].entry->found_from, oven::Entry::Source::kGiven);
  ASSERT_EQ(checked->reading.warnings.size(), 1U);
  EXPECT_EQ(checked->reading.warnings[0].where.file, "r.toml");
  request.recipe->top_C.clear();
  EXPECT_FALSE(check(kLogs + "passes.csv", request));
}

// Peaks of about 216 °C: more than 10 °C below the 235 to 250 °C for SAC305, inside the 205 to 225 °C for Sn63Pb37.
TEST(Check, NamesTheShippedWindowThatFitsWhereOneWasAssumed) {
  auto request = request_with();
  request.window_assumed = true;
  const auto assumed = check(kLogs + "tin_lead.csv", request);
  ASSERT_TRUE(assumed) << assumed.error().text();
  EXPECT_EQ(assumed->runs[0].judgement.better_window, "Sn63Pb37, general");
  request.window_assumed = false;
  const auto named = check(kLogs + "tin_lead.csv", request);
  ASSERT_TRUE(named);
  EXPECT_EQ(named->runs[0].judgement.better_window, "");
}

TEST(MeasureLog, GivesEachMeasureOnEachTraceInTheOrderAsked) {
  MeasureRequest request;
  request.definitions = {{measure::Measure::kSpreadOfPeaks, {}}, {measure::Measure::kPeak, {}}};
  const auto measured = measure_log(kLogs + "passes.csv", request);
  ASSERT_TRUE(measured) << measured.error().text();
  ASSERT_EQ(measured->results.size(), 3U);
  EXPECT_FALSE(measured->results[0].channel);
  EXPECT_EQ(measured->results[1].channel, 0U);
  EXPECT_EQ(measured->results[2].channel, 1U);
  // The spread of two peaks is their difference.
  EXPECT_DOUBLE_EQ(*measured->results[0].value.value,
                   *measured->results[2].value.value - *measured->results[1].value.value);
}

TEST(MeasureLog, TheUsualMeasuresNeedNoParameter) {
  const auto usual = usual_measures();
  const auto has = [&](measure::Measure wanted) {
    return std::ranges::find(usual, wanted, &measure::Definition::measure) != usual.end();
  };
  EXPECT_TRUE(has(measure::Measure::kPeak));
  EXPECT_TRUE(has(measure::Measure::kSteepestRise));
  EXPECT_TRUE(has(measure::Measure::kSpreadOfPeaks));
  EXPECT_FALSE(has(measure::Measure::kTimeAbove));
  EXPECT_FALSE(has(measure::Measure::kWaveStep));
  EXPECT_FALSE(has(measure::Measure::kTemperatureAt));
}

}  // namespace
}  // namespace ovenwright::check
