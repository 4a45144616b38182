#include "core/judge/cause.h"

#include <gtest/gtest.h>

namespace ovenwright::judge {
namespace {

using measure::Measure;

run::Channel channel_of(std::vector<double> temperature_C) {
  std::vector<double> time_s(temperature_C.size());
  for (std::size_t i = 0; i < time_s.size(); ++i) time_s[i] = 10.0 * static_cast<double>(i);
  run::Channel channel;
  channel.name = "TC1";
  channel.number = 1;
  channel.trace = *run::Trace::make(*run::Clock::make(time_s), std::move(temperature_C));
  channel.removed_start_to_s = 0;
  channel.removed_end_from_s = time_s.back();
  return channel;
}

Outcome above(double level, bool at_least) {
  Outcome outcome;
  outcome.measure.measure = Measure::kTimeAbove;
  outcome.measure.parameters.level = level;
  outcome.channel = 0;
  outcome.trace = outcome.placement = "TC1";
  outcome.value.value = 10;
  outcome.value.at_least = at_least;
  return outcome;
}

Cause cause(const Outcome& outcome, run::Channel channel) {
  run::Run run;
  run.channels.push_back(std::move(channel));
  const std::vector seats{seat_of(run.channels[0], nullptr)};
  return cause_of(outcome, run, seats);
}

TEST(CauseOf, AWholeValueHasNone) {
  EXPECT_EQ(cause(above(217, false), channel_of({25, 240, 25})).kind, Cause::Kind::kNone);
}

TEST(CauseOf, TheEndOfTheLogThatIsMissing) {
  EXPECT_EQ(cause(above(217, true), channel_of({25, 240, 230})).kind, Cause::Kind::kLogEndsHot);
  EXPECT_EQ(cause(above(217, true), channel_of({25, 230, 240})).kind, Cause::Kind::kLogEndsRising);
  EXPECT_EQ(cause(above(217, true), channel_of({230, 240, 25})).kind, Cause::Kind::kLogStartsHot);
}

TEST(CauseOf, AFaultThatShortenedTheTraceStandsBeforeTheEndOfTheLog) {
  auto channel = channel_of({25, 240, 230});
  channel.removed_end_from_s = 40;
  channel.faults.push_back({run::FaultKind::kOpen, 30, 40, run::FaultAction::kRemoved, "", {}});
  const auto found = cause(above(217, true), channel);
  EXPECT_EQ(found.kind, Cause::Kind::kFault);
  EXPECT_EQ(found.from_s, 30);
  EXPECT_EQ(found.to_s, 40);
}

TEST(CauseOf, AChannelThatIsOpenThroughout) {
  run::Channel channel;
  channel.name = "TC1";
  channel.faults.push_back({run::FaultKind::kOpen, 0, 400, run::FaultAction::kRemoved, "", {}});
  auto outcome = above(217, false);
  outcome.value.value.reset();
  outcome.value.no_value = measure::NoValue::kUndetermined;
  EXPECT_EQ(cause(outcome, channel).kind, Cause::Kind::kFault);
}

TEST(CauseOf, WhatMeasuringAloneKnowsIsItsReason) {
  auto outcome = above(217, false);
  outcome.measure.measure = Measure::kWaveStep;
  outcome.value.value.reset();
  outcome.value.no_value = measure::NoValue::kUndetermined;
  outcome.value.reason = "no wave seen";
  const auto found = cause(outcome, channel_of({25, 240, 25}));
  EXPECT_EQ(found.kind, Cause::Kind::kOther);
  EXPECT_EQ(found.detail, "no wave seen");
}

TEST(NotReachedBy, NamesTheTracesThatStayedBelow) {
  run::Run run;
  run.channels = {channel_of({25, 240, 25}), channel_of({25, 210, 25}), channel_of({25, 217, 25})};
  run.channels[1].name = "TC2";
  run.channels[2].name = "TC3";
  std::vector<Seat> seats;
  for (const auto& channel : run.channels) seats.push_back(seat_of(channel, nullptr));
  Outcome lag;
  lag.measure.measure = Measure::kLag;
  lag.measure.parameters.level = 217;
  lag.value.no_value = measure::NoValue::kNotReached;
  EXPECT_EQ(not_reached_by(lag, run, seats), (std::vector<std::string>{"TC2", "TC3"}));
}

}  // namespace
}  // namespace ovenwright::judge
