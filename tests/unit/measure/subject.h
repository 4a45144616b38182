#pragma once
#include <gtest/gtest.h>

#include <memory>
#include <string>
#include <utility>
#include <vector>

#include "core/measure/measure.h"
#include "core/measure/parameter.h"

namespace ovenwright::measure {

/// A channel made of samples, with a subject that points at it.
class Sampled {
 public:
  Sampled(std::vector<double> time_s, std::vector<double> temperature_C, std::string name = "TC1") {
    const auto clock = run::Clock::make(std::move(time_s));
    if (!clock) ADD_FAILURE() << clock.error().message;
    start(*clock, std::move(temperature_C), std::move(name));
  }
  /// On a clock that other channels share.
  static Sampled on(std::shared_ptr<const run::Clock> clock, std::vector<double> temperature_C) {
    Sampled sampled;
    sampled.start(std::move(clock), std::move(temperature_C), "TC1");
    return sampled;
  }
  const Subject& subject() const { return subject_; }
  Subject& subject() { return subject_; }
  run::Channel& channel() { return *channel_; }

  Value measure(const std::string& definition, const std::optional<Place>& place = {}, Effort effort = {}) const {
    const auto parsed = parse_definition(definition);
    if (!parsed) {
      ADD_FAILURE() << parsed.error().message;
      return {};
    }
    return evaluate(subject_, {&*parsed, 1}, place, effort).front();
  }

 private:
  Sampled() = default;
  void start(std::shared_ptr<const run::Clock> clock, std::vector<double> temperature_C, std::string name) {
    channel_->name = std::move(name);
    channel_->number = 1;
    channel_->samples = temperature_C.size();
    auto trace = run::Trace::make(std::move(clock), std::move(temperature_C));
    if (!trace) ADD_FAILURE() << trace.error().message;
    channel_->trace = *std::move(trace);
    subject_.channel = channel_.get();
  }
  std::unique_ptr<run::Channel> channel_ = std::make_unique<run::Channel>();
  Subject subject_;
};

inline Value on_board(const std::vector<const Sampled*>& traces, const std::string& definition, Effort effort = {}) {
  const auto parsed = parse_definition(definition);
  if (!parsed) {
    ADD_FAILURE() << parsed.error().message;
    return {};
  }
  std::vector<Subject> subjects;
  for (const auto* trace : traces) subjects.push_back(trace->subject());
  return evaluate_board(subjects, {&*parsed, 1}, std::nullopt, effort).front();
}

}  // namespace ovenwright::measure
