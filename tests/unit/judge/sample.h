#pragma once
#include <algorithm>
#include <string>
#include <utility>
#include <vector>

#include "core/judge/decide.h"
#include "core/judge/decide_run.h"
#include "core/judge/sentence.h"

// A judgement made by hand, for tests of the sentence: no log, no measuring.
namespace ovenwright::judge {

using measure::Measure;
using window::DecisionRule;

enum Requirement { kRise, kSoak, kAbove, kPeak, kNear, kFall, kTime, kLag, kSpreadAt, kLargest, kSpread };

struct Kind {
  Measure measure;
  Unit unit;
  std::optional<double> lower, upper;
  double fine, U;
};
// A value in the middle of its window, or half of a lone upper limit: margin 100 %.
inline constexpr Kind kKinds[] = {{Measure::kSteepestRise, Unit::kCelsiusPerSecond, {}, 2.5, 1.25, 0.07},
                                  {Measure::kTimeBetweenOnRise, Unit::kSecond, 60, 120, 90, 2.2},
                                  {Measure::kTimeAbove, Unit::kSecond, 45, 90, 67.5, 3.0},
                                  {Measure::kPeak, Unit::kCelsius, 235, 250, 242.5, 2.1},
                                  {Measure::kTimeNearPeak, Unit::kSecond, {}, 30, 15, 1.2},
                                  {Measure::kSteepestFall, Unit::kCelsiusPerSecond, {}, 4, 2, 0.08},
                                  {Measure::kPeakTime, Unit::kSecond, {}, 480, 240, 3},
                                  {Measure::kLag, Unit::kSecond, {}, 50, 25, 2.4},
                                  {Measure::kSpreadWhenHottestReaches, Unit::kCelsius, {}, 35, 17.5, 2.0},
                                  {Measure::kLargestSpread, Unit::kCelsius, {}, 40, 20, 2.0},
                                  {Measure::kSpreadOfPeaks, Unit::kCelsius, {}, 10, 5, 2.0}};
inline const std::vector<std::string> kPlacements{"R118", "D7 lead", "U3 body", "J4 pin 1", "U12 corner", "U12 centre"};

/// 7 requirements on 6 placements and 3 of the board: 45, all fine; one informative of the board.
class Sample {
 public:
  explicit Sample(DecisionRule rule = DecisionRule::kGuarded,
                  std::vector<Requirement> requirements = {kRise, kSoak, kAbove, kPeak, kNear, kFall, kTime})
      : requirements_(std::move(requirements)) {
    all_.windows.resize(1);
    all_.windows[0].identity.name = "SAC305, general";
    all_.windows[0].decision_rule = rule;
    all_.windows[0].requirements.resize(std::size(kKinds));
    for (const auto requirement : requirements_)
      for (std::size_t channel = 0; channel < kPlacements.size(); ++channel)
        all_.results.push_back(make(requirement, channel));
  }

  Sample& with_board() {
    for (const auto requirement : {kLag, kSpreadAt, kLargest, kSpread}) {
      all_.board_results.push_back(make(requirement, {}));
      all_.board_results.back().required = requirement != kSpread;
    }
    return *this;
  }

  Outcome& at(Requirement requirement, std::size_t channel = 0) {
    for (auto& outcome : all_.results)
      if (outcome.requirement == requirement && outcome.channel == channel) return outcome;
    return *std::ranges::find(all_.board_results, static_cast<std::size_t>(requirement), &Outcome::requirement);
  }
  Sample& set(Requirement requirement, std::size_t channel, double value) {
    at(requirement, channel).value.value = value;
    return *this;
  }
  Sample& zones(Requirement requirement, std::size_t channel, std::vector<std::string> zones) {
    for (const auto& zone : zones)
      at(requirement, channel).zone_shares.push_back({zone, {}, 1.0 / static_cast<double>(zones.size())});
    at(requirement, channel).zones = std::move(zones);
    return *this;
  }
  Sample& open(std::size_t channel, double from_s, double to_s) {
    for (auto& outcome : all_.results)
      if (outcome.channel == channel && outcome.requirement != kRise)
        none(outcome, {.kind = Cause::Kind::kFault,
                       .channel = channel,
                       .placement = kPlacements[channel],
                       .from_s = from_s,
                       .to_s = to_s});
    return *this;
  }
  static void none(Outcome& outcome, Cause cause, measure::NoValue why = measure::NoValue::kUndetermined) {
    outcome.value.value.reset();
    outcome.value.expanded_uncertainty.reset();
    outcome.value.no_value = why;
    outcome.cause = std::move(cause);
  }
  Judgement& judgement() { return all_; }
  Judgement& judge() {
    for (auto* outcomes : {&all_.results, &all_.board_results})
      for (auto& outcome : *outcomes) settle(outcome, all_.windows[0].decision_rule);
    decide_run(all_);
    all_.sentence = compose(all_);
    return all_;
  }
  std::string text() { return judge().sentence.text; }

 private:
  Outcome make(Requirement requirement, std::optional<std::size_t> channel) const {
    const Kind& kind = kKinds[requirement];
    Outcome outcome;
    outcome.requirement = requirement;
    outcome.requirement_name = measure::describe(kind.measure).name;
    outcome.measure.measure = kind.measure;
    auto& p = outcome.measure.parameters;
    if (requirement == kAbove || requirement == kLag || requirement == kSpreadAt) p.level = 217;
    if (requirement == kSoak) p.T1 = 150.0, p.T2 = 200.0;
    if (requirement == kNear) p.offset = 5, p.reference = measure::OwnPeak{};
    outcome.channel = channel;
    if (channel) outcome.trace = outcome.placement = kPlacements[*channel];
    outcome.value.unit = kind.unit;
    outcome.value.value = kind.fine;
    outcome.value.expanded_uncertainty = kind.U;
    outcome.lower = kind.lower;
    outcome.upper = kind.upper;
    return outcome;
  }

  std::vector<Requirement> requirements_;
  Judgement all_;
};

inline constexpr std::size_t kR118 = 0, kCorner = 4, kCentre = 5;

}  // namespace ovenwright::judge
