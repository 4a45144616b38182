#include "core/judge/cause.h"

#include <algorithm>
#include <cmath>

#include "core/units/phrase.h"

namespace ovenwright::judge {
namespace {

using measure::Measure;

/// The longest removed fault that touches a stretch; null where none does.
const run::Fault* removed_in(const run::Channel& channel, double from_s, double to_s) {
  const run::Fault* longest = nullptr;
  for (const auto& fault : channel.faults) {
    if (fault.action != run::FaultAction::kRemoved || fault.to_s < from_s || fault.from_s > to_s) continue;
    if (!longest || fault.to_s - fault.from_s > longest->to_s - longest->from_s) longest = &fault;
  }
  return longest;
}

bool put_in(Cause& cause, const run::Fault* fault) {
  if (!fault) return false;
  cause.kind = Cause::Kind::kFault;
  cause.fault = fault->kind;
  cause.from_s = fault->from_s;
  cause.to_s = fault->to_s;
  cause.detail = fault->detail;
  return true;
}

bool ends_rising(const run::Trace& trace) {
  const auto T = trace.temperature_C();
  return std::ranges::max_element(T) == T.end() - 1;
}

/// The level that the trace must have come down to, or started under; absent where the measure has none.
std::optional<double> level_of(const measure::Definition& definition, const run::Trace& trace) {
  const auto& p = definition.parameters;
  const auto number = [](const std::optional<measure::Level>& level) -> std::optional<double> {
    const auto* value = level ? std::get_if<double>(&*level) : nullptr;
    return value ? std::optional(*value) : std::nullopt;
  };
  switch (definition.measure) {
    case Measure::kTimeNearPeak:
      return number(p.reference).value_or(std::ranges::max(trace.temperature_C())) - p.offset.value_or(0);
    case Measure::kMeanRise:
    case Measure::kTimeBetweenOnRise:
      return number(p.T1);
    case Measure::kMeanFall:
      return number(p.T2);
    case Measure::kSteepestRise:
    case Measure::kSteepestFall:
      if (p.from && p.to) return std::min(*p.from, *p.to);
      return {};
    default:
      return p.level;
  }
}

enum class End { kStart, kEnd, kNeither };

/// Which end of the trace lacks what the measure needs.
End missing_end(const measure::Definition& definition, const run::Trace& trace) {
  const auto T = trace.temperature_C();
  const auto level = level_of(definition, trace);
  const bool starts_hot = level && T.front() > *level, ends_hot = level && T.back() > *level;
  switch (definition.measure) {
    case Measure::kPeak:
      return std::ranges::max_element(T) == T.begin() ? End::kStart : End::kEnd;
    case Measure::kSteepestFall:
    case Measure::kMeanFall:
      return ends_hot || ends_rising(trace) ? End::kEnd : End::kNeither;
    case Measure::kPeakTime:
      return ends_rising(trace) ? End::kEnd : End::kStart;
    case Measure::kSteepestRise:
    case Measure::kMeanRise:
    case Measure::kTimeBetweenOnRise:
      if (starts_hot) return End::kStart;
      return ends_rising(trace) ? End::kEnd : End::kNeither;
    case Measure::kTemperatureAt:
    case Measure::kExitTemperature:
      return End::kNeither;
    default:
      if (ends_hot || ends_rising(trace)) return End::kEnd;
      return starts_hot ? End::kStart : End::kNeither;
  }
}

Cause cause_on_trace(const Outcome& outcome, const run::Channel& channel, Cause cause) {
  const auto other = [&] {
    cause.kind = Cause::Kind::kOther;
    cause.detail = outcome.value.reason.empty() ? say(Phrase::kNotShown) : outcome.value.reason;
    return cause;
  };
  if (!channel.trace) {
    if (put_in(cause, removed_in(channel, -HUGE_VAL, HUGE_VAL))) return cause;
    return other();
  }
  const auto time_s = channel.trace->time_s();
  if (outcome.value.range)
    for (const auto& gap : channel.gaps)
      if (put_in(cause, removed_in(channel, gap.from_s, gap.to_s))) return cause;
  switch (missing_end(outcome.measure, *channel.trace)) {
    case End::kStart:
      if (channel.removed_start_to_s < time_s.front() && put_in(cause, removed_in(channel, -HUGE_VAL, time_s.front())))
        return cause;
      cause.kind = Cause::Kind::kLogStartsHot;
      return cause;
    case End::kEnd:
      if (channel.removed_end_from_s > time_s.back() && put_in(cause, removed_in(channel, time_s.back(), HUGE_VAL)))
        return cause;
      cause.kind = ends_rising(*channel.trace) ? Cause::Kind::kLogEndsRising : Cause::Kind::kLogEndsHot;
      return cause;
    case End::kNeither:
      break;
  }
  return other();
}

}  // namespace

Cause cause_of(const Outcome& outcome, const run::Run& run, std::span<const Seat> seats) {
  if (outcome.cause.kind != Cause::Kind::kNone) return outcome.cause;
  const bool undetermined = outcome.value.no_value == measure::NoValue::kUndetermined;
  if (!undetermined && !outcome.value.at_least) return {};
  Cause cause;
  if (outcome.channel) {
    cause.channel = outcome.channel;
    cause.placement = outcome.placement;
    return cause_on_trace(outcome, run.channels[*outcome.channel], cause);
  }
  for (std::size_t i = 0; i < run.channels.size(); ++i) {
    const auto& channel = run.channels[i];
    if (!channel.trace || seats[i].kind == board::Kind::kAir) continue;
    cause.channel = i;
    cause.placement = seats[i].name;
    if (outcome.value.range)
      for (const auto& gap : channel.gaps)
        if (put_in(cause, removed_in(channel, gap.from_s, gap.to_s))) return cause;
    if (!ends_rising(*channel.trace)) continue;
    const double last_s = channel.trace->time_s().back();
    if (channel.removed_end_from_s > last_s && put_in(cause, removed_in(channel, last_s, HUGE_VAL))) return cause;
    cause.kind = Cause::Kind::kLogEndsRising;
    return cause;
  }
  cause = {};
  cause.kind = Cause::Kind::kOther;
  cause.detail = outcome.value.reason.empty() ? say(Phrase::kNotShown) : outcome.value.reason;
  return cause;
}

std::vector<std::string> not_reached_by(const Outcome& outcome, const run::Run& run, std::span<const Seat> seats) {
  if (outcome.value.no_value != measure::NoValue::kNotReached) return {};
  if (outcome.channel) return {outcome.placement};
  std::vector<std::string> names;
  for (std::size_t i = 0; i < run.channels.size(); ++i) {
    const auto& trace = run.channels[i].trace;
    if (!trace || seats[i].kind == board::Kind::kAir || !outcome.measure.parameters.level) continue;
    if (std::ranges::max(trace->temperature_C()) <= *outcome.measure.parameters.level + 1e-6)
      names.push_back(seats[i].name);
  }
  return names;
}

}  // namespace ovenwright::judge
