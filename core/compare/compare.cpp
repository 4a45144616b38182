#include "core/compare/compare.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "core/compare/margins.h"
#include "core/compare/sentence.h"
#include "core/compare/welch.h"
#include "core/lot/statistics.h"

namespace ovenwright::compare {
namespace {

/// The outcome of another run that is of the same requirement and trace; null where it has none.
const judge::Outcome* same_in(const judge::Judgement& judgement, const judge::Outcome& outcome,
                              const std::string& window) {
  for (std::size_t i = 0; i < judgement.all_size(); ++i) {
    const auto& other = judgement.all(i);
    if (other.requirement_name == outcome.requirement_name && other.trace == outcome.trace &&
        judgement.windows[other.window].identity.name == window)
      return &other;
  }
  return nullptr;
}

const std::string& window_of(const judge::Judgement& judgement, const judge::Outcome& outcome) {
  return judgement.windows[outcome.window].identity.name;
}

std::string without_value_because(const char* side, const judge::Outcome* outcome) {
  if (outcome == nullptr) return fmt::format("{} has no such result", side);
  if (outcome->value.at_least) return fmt::format("{} is a bound only", side);
  const bool not_reached = outcome->value.no_value == measure::NoValue::kNotReached;
  return fmt::format("{} {}", side, not_reached ? "does not reach it" : "is undetermined");
}

Difference difference_of(const std::string& window, const judge::Outcome* a, const judge::Outcome* b,
                         bool same_thermocouples) {
  const auto& known = a != nullptr ? *a : *b;
  Difference result;
  result.window = window;
  result.requirement = known.requirement_name;
  result.trace = known.trace;
  result.measure = known.measure.measure;
  result.unit = known.value.unit;
  result.lower = known.lower;
  result.upper = known.upper;
  result.required = known.required;
  if (a != nullptr) result.a = a->value.value, result.a_at_least = a->value.at_least, result.verdict_a = a->verdict;
  if (b != nullptr) result.b = b->value.value, result.b_at_least = b->value.at_least, result.verdict_b = b->verdict;
  result.n_a = result.a && !result.a_at_least ? 1 : 0;
  result.n_b = result.b && !result.b_at_least ? 1 : 0;
  if (result.n_a == 0 || result.n_b == 0) {
    if (result.n_a == 0) result.reason = without_value_because("A", a);
    if (result.n_b == 0) result.reason += (result.reason.empty() ? "" : ", ") + without_value_because("B", b);
    return result;
  }
  result.difference = *result.b - *result.a;
  result.expanded_uncertainty = difference_uncertainty(a->value, b->value, same_thermocouples);
  if (result.expanded_uncertainty) result.significant = std::abs(*result.difference) > *result.expanded_uncertainty;
  return result;
}

bool same_channels(const run::Run& a, const run::Run& b) {
  return std::ranges::is_permutation(a.channels, b.channels, {}, &run::Channel::name, &run::Channel::name);
}

/// The same board by name; none on both sides is the same too.
bool same_board(const check::Request& a, const check::Request& b) {
  if (!a.board || !b.board) return !a.board && !b.board;
  return a.board->identity.name == b.board->identity.name;
}

void add_recipes(Comparison& comparison, const oven::Oven* oven, const oven::Recipe* a, const oven::Recipe* b) {
  if (a) comparison.speed_a_mm_per_min = a->speed_mm_per_min;
  if (b) comparison.speed_b_mm_per_min = b->speed_mm_per_min;
  if (!a || !b) return;
  if (a->speed_mm_per_min != b->speed_mm_per_min)
    comparison.faster = a->speed_mm_per_min > b->speed_mm_per_min ? Side::kA : Side::kB;
  const std::size_t zones = oven ? oven->heating_zones() : 0;
  const auto fits = [&](const oven::Recipe& r) { return r.top_C.size() == zones && r.bottom_C.size() == zones; };
  if (!oven || !fits(*a) || !fits(*b)) return;
  comparison.recipes_known = true;
  comparison.recipe_changes = tune::changes(*oven, *a, *b);
}

/// The statistics of one group, by window, requirement and trace, where both measure it alike.
const lot::Series* same_in(const lot::Lot& lot, const lot::Series& series) {
  const auto found = std::ranges::find_if(lot.series, [&](const lot::Series& other) {
    return other.window == series.window && other.requirement == series.requirement && other.trace == series.trace &&
           other.measure == series.measure && other.parameters == series.parameters;
  });
  return found == lot.series.end() ? nullptr : &*found;
}

Sample sample_of(const lot::Series& series) { return {series.n(), *series.mean, series.sd.value_or(0)}; }

std::string without_value_because(const char* side, const lot::Series* series) {
  if (series == nullptr || series->n() == 0) return fmt::format("no run of {} has a value", side);
  return {};
}

Difference difference_of(const lot::Series* a, const lot::Series* b) {
  const auto& known = a != nullptr ? *a : *b;
  Difference result;
  result.window = known.window;
  result.requirement = known.requirement;
  result.trace = known.trace;
  result.measure = known.measure;
  result.unit = known.unit;
  result.lower = known.lower;
  result.upper = known.upper;
  result.required = known.required;
  result.n_a = a != nullptr ? a->n() : 0;
  result.n_b = b != nullptr ? b->n() : 0;
  if (a != nullptr) result.a = a->mean;
  if (b != nullptr) result.b = b->mean;
  if (!result.a || !result.b) {
    result.reason = without_value_because("A", a);
    if (!result.b) result.reason += (result.reason.empty() ? "" : ", ") + without_value_because("B", b);
    return result;
  }
  result.difference = *result.b - *result.a;
  if (const auto interval = welch_interval(sample_of(*a), sample_of(*b))) {
    result.expanded_uncertainty = interval->half_width;
    result.significant = std::abs(*result.difference) > interval->half_width;
  } else {
    result.reason = "an interval needs two runs on each side";
  }
  return result;
}

}  // namespace

Comparison compare_runs(const JudgedRun& a, const JudgedRun& b, const Options& options) {
  Comparison comparison;
  const auto &of_a = a.run->judgement, &of_b = b.run->judgement;
  comparison.verdict_a = of_a.verdict;
  comparison.verdict_b = of_b.verdict;
  comparison.window_assumed = of_a.window_assumed;
  comparison.alignment = align(*a.run, *b.run, options.align_C);
  const bool same =
      !options.different_thermocouples && same_channels(a.run->run, b.run->run) && same_board(*a.request, *b.request);
  comparison.same_thermocouples = same;
  for (std::size_t i = 0; i < of_a.all_size(); ++i) {
    const auto& window = window_of(of_a, of_a.all(i));
    comparison.results.push_back(difference_of(window, &of_a.all(i), same_in(of_b, of_a.all(i), window), same));
  }
  for (std::size_t i = 0; i < of_b.all_size(); ++i) {
    const auto& window = window_of(of_b, of_b.all(i));
    if (same_in(of_a, of_b.all(i), window) == nullptr)
      comparison.results.push_back(difference_of(window, nullptr, &of_b.all(i), same));
  }
  comparison.margins = margins_of(of_a, of_b, same);
  const auto recipe_of = [](const check::Request& r) { return r.recipe ? &*r.recipe : nullptr; };
  add_recipes(comparison, a.request->oven ? &*a.request->oven : nullptr, recipe_of(*a.request), recipe_of(*b.request));
  comparison.sentence = compose(comparison).text;
  return comparison;
}

Comparison compare_groups(std::span<const lot::Run> a, std::span<const lot::Run> b, const GroupRecipes& recipes) {
  Comparison comparison;
  comparison.of_groups = true;
  comparison.runs_a = a.size();
  comparison.runs_b = b.size();
  const auto of_a = *lot::summarise(a), of_b = *lot::summarise(b);
  comparison.verdict_a = of_a.verdict;
  comparison.verdict_b = of_b.verdict;
  for (const auto& series : of_a.series) comparison.results.push_back(difference_of(&series, same_in(of_b, series)));
  for (const auto& series : of_b.series)
    if (same_in(of_a, series) == nullptr) comparison.results.push_back(difference_of(nullptr, &series));
  comparison.margins = margins_of(a, b);
  comparison.out_a = of_a.fail + of_a.conditional_fail;
  comparison.out_b = of_b.fail + of_b.conditional_fail;
  comparison.several_a = recipes.several_a;
  comparison.several_b = recipes.several_b;
  add_recipes(comparison, recipes.oven, recipes.a, recipes.b);
  comparison.sentence = compose(comparison).text;
  return comparison;
}

std::string subject_of(const Difference& difference) {
  return difference.trace.empty() ? difference.requirement : difference.requirement + " on " + difference.trace;
}

}  // namespace ovenwright::compare
