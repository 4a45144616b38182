#include "core/judge/decide.h"

#include <algorithm>
#include <cmath>

#include "core/window/limit.h"

namespace ovenwright::judge {
namespace {

using measure::Measure;

constexpr double kInHand = 1e-6;  // of the unit, for rounding (measures.md, Verdict)

/// Judged at its bound only where what the log does not show can but make it worse, or better.
Verdict decide_at_least(double value, double w, const Outcome& outcome, window::DecisionRule rule) {
  if (outcome.upper && value > *outcome.upper + kInHand) return decide(value, w, outcome.lower, outcome.upper, rule);
  if (outcome.lower && !outcome.upper && value >= *outcome.lower - kInHand)
    return decide(value, w, outcome.lower, outcome.upper, rule);
  return Verdict::kUndetermined;
}

}  // namespace

const char* verdict_name(Verdict verdict) {
  switch (verdict) {
    case Verdict::kPass:
      return "pass";
    case Verdict::kConditionalPass:
      return "conditional pass";
    case Verdict::kUndetermined:
      return "undetermined";
    case Verdict::kConditionalFail:
      return "conditional fail";
    case Verdict::kFail:
      return "fail";
  }
  return "";
}

std::optional<double> effective_target(std::optional<double> lower, std::optional<double> upper,
                                       std::optional<double> target, Measure measure) {
  if (measure == Measure::kExcursionsAbove) return {};
  if (target) return target;
  if (lower && upper) return (*lower + *upper) / 2;
  if (upper && window::counts_from_zero(measure)) return *upper / 2;
  return {};
}

std::optional<double> margin(double value, std::optional<double> lower, std::optional<double> upper,
                             std::optional<double> target) {
  if (!target || (!lower && !upper)) return {};
  if ((lower && !(*lower < *target)) || (upper && !(*target < *upper))) return {};
  if (value < *target) return lower ? (value - *lower) / (*target - *lower) : 1;
  return upper ? (*upper - value) / (*upper - *target) : 1;
}

Verdict decide(double value, double expanded_uncertainty, std::optional<double> lower, std::optional<double> upper,
               window::DecisionRule rule) {
  // True where the limits, moved inwards by `inwards`, hold the value.
  const auto inside = [&](double inwards) {
    return (!lower || value >= *lower + inwards - kInHand) && (!upper || value <= *upper - inwards + kInHand);
  };
  if (rule == window::DecisionRule::kSimple) return inside(0) ? Verdict::kPass : Verdict::kFail;
  const double w = expanded_uncertainty;
  if (inside(w)) return Verdict::kPass;
  if (inside(0)) return Verdict::kConditionalPass;
  return inside(-w) ? Verdict::kConditionalFail : Verdict::kFail;
}

void settle(Outcome& outcome, window::DecisionRule rule) {
  outcome.verdict = Verdict::kUndetermined;
  outcome.margin.reset();
  outcome.margin_bound = MarginBound::kNone;
  outcome.conformance_probability.reset();
  outcome.cannot_pass = false;
  if (outcome.cause.kind == Cause::Kind::kTcUnknown) return;
  if (!outcome.value.value) {
    if (outcome.value.no_value == measure::NoValue::kNotReached) outcome.verdict = Verdict::kFail;
    return;
  }
  const double value = *outcome.value.value;
  const double w = outcome.value.expanded_uncertainty.value_or(0);
  outcome.cannot_pass = rule == window::DecisionRule::kGuarded && outcome.lower && outcome.upper &&
                        *outcome.upper - *outcome.lower < 2 * w - kInHand;
  const auto target = effective_target(outcome.lower, outcome.upper, outcome.target, outcome.measure.measure);
  const auto at_bound = margin(value, outcome.lower, outcome.upper, target);
  if (!outcome.value.at_least) {
    outcome.verdict = decide(value, w, outcome.lower, outcome.upper, rule);
    outcome.margin = at_bound;
    if (outcome.value.expanded_uncertainty && outcome.value.unit != Unit::kCount)
      outcome.conformance_probability = conformance_probability(value, w, outcome.lower, outcome.upper);
    return;
  }
  outcome.verdict = decide_at_least(value, w, outcome, rule);
  if (outcome.lower && !outcome.upper) {
    outcome.margin = at_bound;
    if (at_bound) outcome.margin_bound = MarginBound::kAtLeast;
  } else if (target && value >= *target) {
    outcome.margin = at_bound;
    if (at_bound) outcome.margin_bound = MarginBound::kAtMost;
  }
}

}  // namespace ovenwright::judge
