#include "core/compare/margins.h"

#include <algorithm>
#include <cmath>

#include "core/compare/welch.h"
#include "core/judge/decide.h"
#include "core/judge/decide_run.h"
#include "core/lot/statistics.h"

namespace ovenwright::compare {
namespace {

using judge::MarginBound;

double square(double x) { return x * x; }

/// Sets `more` where the difference is larger than its uncertainty, or where bounds alone decide.
void decide(Margins& margins) {
  if (!margins.a || !margins.b) return;
  const double gain = *margins.b - *margins.a, U = margins.expanded_uncertainty.value_or(0);
  // "At most" can only be smaller, "at least" only larger than it reads.
  const bool b_holds = margins.b_bound != MarginBound::kAtMost && margins.a_bound != MarginBound::kAtLeast;
  const bool a_holds = margins.a_bound != MarginBound::kAtMost && margins.b_bound != MarginBound::kAtLeast;
  if (gain > U && b_holds) margins.more = Side::kB;
  if (-gain > U && a_holds) margins.more = Side::kA;
}

/// The required outcome with the smallest margin.
const judge::Outcome* tightest(const judge::Judgement& judgement) {
  const auto summary = judge::summarise(judgement);
  return summary.smallest.empty() ? nullptr : &judgement.all(summary.smallest.front().outcome);
}

/// By how much the margin changes with the value: 1/(distance of the target from the limit on its side).
double steepness(const judge::Outcome& outcome) {
  const auto target = judge::effective_target(outcome.lower, outcome.upper, outcome.target, outcome.measure.measure);
  if (!target) return 0;
  const double value = *outcome.value.value;
  if (value > *target) return outcome.upper ? 1 / (*outcome.upper - *target) : 0;
  return outcome.lower ? 1 / (*target - *outcome.lower) : 0;
}

/// Of the difference of two results' margins.
std::optional<double> uncertainty(const judge::Outcome* of_a, const judge::Outcome* of_b, bool same_thermocouples) {
  if (!of_a || !of_b || !of_a->value.expanded_uncertainty || !of_b->value.expanded_uncertainty) return std::nullopt;
  const bool one = of_a->window == of_b->window && of_a->requirement == of_b->requirement && of_a->trace == of_b->trace;
  const auto u = [&](const judge::Outcome& outcome) {
    const auto& terms = outcome.value.terms;
    const double own = square(terms.noise) + square(terms.sampling);
    const double shared = square(terms.thermocouple) + square(terms.instrument);
    return steepness(outcome) * std::sqrt(own + (one && same_thermocouples ? 0 : shared));
  };
  return 2 * std::hypot(u(*of_a), u(*of_b));
}

/// The margins of a group's runs; empty where a run has none or a bound.
std::vector<double> exact_margins(std::span<const lot::Run> runs) {
  std::vector<double> margins;
  for (const auto& run : runs) {
    if (!run.margin || run.margin_bound != MarginBound::kNone) return {};
    margins.push_back(*run.margin);
  }
  return margins;
}

Sample sample_of(std::span<const double> margins) {
  const auto margin = [&](std::size_t i) { return margins[i]; };
  Sample sample{margins.size(), lot::mean_of(margins.size(), margin), 0};
  if (margins.size() >= 2) sample.sd = lot::sd_of(margins.size(), margin);
  return sample;
}

}  // namespace

std::optional<double> difference_uncertainty(const measure::Value& a, const measure::Value& b, bool shared_errors) {
  if (!a.expanded_uncertainty || !b.expanded_uncertainty) return std::nullopt;
  if (!shared_errors) return std::hypot(*a.expanded_uncertainty, *b.expanded_uncertainty);
  return 2 *
         std::sqrt(square(a.terms.noise) + square(a.terms.sampling) + square(b.terms.noise) + square(b.terms.sampling));
}

Margins margins_of(const judge::Judgement& a, const judge::Judgement& b, bool same_thermocouples) {
  Margins margins;
  margins.a = a.margin;
  margins.b = b.margin;
  margins.a_bound = a.margin_bound;
  margins.b_bound = b.margin_bound;
  if (margins.a && margins.b) margins.expanded_uncertainty = uncertainty(tightest(a), tightest(b), same_thermocouples);
  decide(margins);
  return margins;
}

std::optional<Side> more_margin(const judge::Outcome& a, const judge::Outcome& b, bool same_thermocouples) {
  Margins margins;
  margins.a = a.margin;
  margins.b = b.margin;
  margins.a_bound = a.margin_bound;
  margins.b_bound = b.margin_bound;
  if (a.value.value && b.value.value) margins.expanded_uncertainty = uncertainty(&a, &b, same_thermocouples);
  decide(margins);
  return margins.more;
}

Margins margins_of(std::span<const lot::Run> a, std::span<const lot::Run> b) {
  return margins_of(exact_margins(a), exact_margins(b));
}

Margins margins_of(std::span<const double> a, std::span<const double> b) {
  Margins margins;
  if (!a.empty()) margins.a = sample_of(a).mean, margins.smallest_a = std::ranges::min(a);
  if (!b.empty()) margins.b = sample_of(b).mean, margins.smallest_b = std::ranges::min(b);
  if (a.empty() || b.empty()) return margins;
  const auto interval = welch_interval(sample_of(a), sample_of(b));
  if (!interval) return margins;
  margins.expanded_uncertainty = interval->half_width;
  decide(margins);
  return margins;
}

}  // namespace ovenwright::compare
