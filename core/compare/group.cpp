#include "core/compare/group.h"

#include <algorithm>
#include <string>

#include "core/lot/statistics.h"

namespace ovenwright::compare {
namespace {

using judge::Judgement;
using judge::Outcome;

const std::string& window_of(const Judgement& judgement, const Outcome& outcome) {
  return judgement.windows[outcome.window].identity.name;
}

std::size_t position(std::vector<std::string>& names, const std::string& name) {
  const auto found = std::ranges::find(names, name);
  if (found != names.end()) return static_cast<std::size_t>(found - names.begin());
  names.push_back(name);
  return names.size() - 1;
}

/// One result over all runs.
struct Gathered {
  std::string window;
  std::vector<const Outcome*> of;  // by run

  const Outcome& known() const {
    return **std::ranges::find_if(of, [](const Outcome* one) { return one != nullptr; });
  }
};

/// The results of one kind (of traces, or of the board) in the first run's order, then what other runs add.
std::vector<Gathered> gathered(std::span<const check::CheckedRun* const> runs, std::vector<Outcome> Judgement::*which) {
  std::vector<Gathered> all;
  for (std::size_t run = 0; run < runs.size(); ++run) {
    const Judgement& judgement = runs[run]->judgement;
    for (const Outcome& outcome : judgement.*which) {
      const std::string& window = window_of(judgement, outcome);
      auto same = std::ranges::find_if(all, [&](const Gathered& one) {
        const Outcome& known = one.known();
        return known.requirement_name == outcome.requirement_name && known.trace == outcome.trace &&
               one.window == window;
      });
      if (same == all.end()) same = all.insert(all.end(), {window, std::vector<const Outcome*>(runs.size(), nullptr)});
      same->of[run] = &outcome;
    }
  }
  return all;
}

/// The same file; of recipes made in memory, the same words and numbers.
bool is_same(const oven::Recipe& x, const oven::Recipe& y) {
  if (!x.identity.sha256.empty() && !y.identity.sha256.empty()) return x.identity.sha256 == y.identity.sha256;
  return x.identity.name == y.identity.name && x.speed_mm_per_min == y.speed_mm_per_min && x.top_C == y.top_C &&
         x.bottom_C == y.bottom_C && x.cooling_C == y.cooling_C;
}
bool is_same(const oven::Oven& x, const oven::Oven& y) {
  return x.identity.sha256 == y.identity.sha256 && x.identity.name == y.identity.name;
}

/// What all runs were judged with of one kind; null where they differ or one has none.
template <class Profile>
const Profile* common(std::span<const JudgedRun> runs, std::optional<Profile> check::Request::*which) {
  const auto& first = runs.front().request->*which;
  const bool one = first && std::ranges::all_of(runs, [&](const JudgedRun& run) {
                     const auto& own = run.request->*which;
                     return own && is_same(*own, *first);
                   });
  return one ? &*first : nullptr;
}

bool any_recipe(std::span<const JudgedRun> runs) {
  return std::ranges::any_of(runs, [](const JudgedRun& run) { return run.request->recipe.has_value(); });
}

std::vector<lot::Run> lot_runs(std::span<const JudgedRun> runs) {
  std::vector<lot::Run> all;
  for (const auto& run : runs) all.push_back(lot::run_of(std::to_string(all.size() + 1), run.run->judgement));
  return all;
}

std::optional<double> mean_of(const std::vector<double>& values) {
  if (values.empty()) return std::nullopt;
  return lot::mean_of(values.size(), [&](std::size_t i) { return values[i]; });
}

/// The first run's result with the mean of all in its place.
Outcome mean_result(const Gathered& result) {
  Outcome mean = result.known();
  measure::Value value;
  value.unit = mean.value.unit;
  std::vector<double> values, margins;
  bool all_margins = true, none_reached = true;
  mean.verdict = judge::Verdict::kPass;
  for (const Outcome* one : result.of) {
    if (one == nullptr) continue;
    if (one->value.value && !one->value.at_least) values.push_back(*one->value.value);
    none_reached &= one->value.no_value == measure::NoValue::kNotReached;
    const bool exact = one->margin && one->margin_bound == judge::MarginBound::kNone;
    if (exact) margins.push_back(*one->margin);
    all_margins &= exact;
    mean.verdict = std::max(mean.verdict, one->verdict);
  }
  value.value = mean_of(values);
  if (!value.value && none_reached) value.no_value = measure::NoValue::kNotReached;
  mean.value = std::move(value);
  mean.margin = all_margins ? mean_of(margins) : std::nullopt;
  mean.margin_bound = judge::MarginBound::kNone;
  mean.conformance_probability.reset();
  mean.cannot_pass = false;
  mean.cause = {};
  mean.not_reached_by.clear();
  mean.zones.clear();
  mean.zone_shares.clear();
  mean.speed_share.reset();
  return mean;
}

}  // namespace

Group group_of(std::span<const check::CheckedRun* const> runs) {
  Group group;
  for (const auto* run : runs)
    for (const auto& channel : run->run.channels) position(group.traces, channel.name);
  Judgement& means = group.means;
  means.windows = runs.front()->judgement.windows;
  means.window_assumed = runs.front()->judgement.window_assumed;
  means.verdict = judge::Verdict::kPass;
  std::vector<double> margins;
  for (const auto* run : runs) {
    means.verdict = std::max(means.verdict, run->judgement.verdict);
    if (run->judgement.margin && run->judgement.margin_bound == judge::MarginBound::kNone)
      margins.push_back(*run->judgement.margin);
  }
  if (margins.size() == runs.size()) means.margin = mean_of(margins);
  for (const auto which : {&Judgement::results, &Judgement::board_results})
    for (auto& result : gathered(runs, which)) {
      Outcome mean = mean_result(result);
      const auto window = std::ranges::find(
          means.windows, result.window, [](const auto& each) -> const auto& { return each.identity.name; });
      if (window == means.windows.end()) continue;
      mean.window = static_cast<std::size_t>(window - means.windows.begin());
      if (mean.channel) mean.channel = position(group.traces, mean.trace);
      (means.*which).push_back(std::move(mean));
      group.runs.push_back(std::move(result.of));
    }
  return group;
}

std::vector<double> smallest_margins(const Group& group, std::span<const std::size_t> results) {
  std::vector<double> margins;
  const std::size_t runs = group.runs.empty() ? 0 : group.runs.front().size();
  for (std::size_t run = 0; run < runs; ++run) {
    std::optional<double> smallest;
    for (const std::size_t result : results) {
      const Outcome* one = group.runs[result][run];
      if (one == nullptr) continue;
      if (!one->margin || one->margin_bound != judge::MarginBound::kNone) return {};
      smallest = std::min(smallest.value_or(*one->margin), *one->margin);
    }
    if (!smallest) return {};
    margins.push_back(*smallest);
  }
  return margins;
}

std::size_t runs_out(const Group& group, std::span<const std::size_t> results) {
  std::size_t out = 0;
  const std::size_t runs = group.runs.empty() ? 0 : group.runs.front().size();
  for (std::size_t run = 0; run < runs; ++run)
    out += std::ranges::any_of(results, [&](std::size_t result) {
      const Outcome* one = group.runs[result][run];
      return one != nullptr && judge::is_out(one->verdict);
    });
  return out;
}

GroupRecipes recipes_of(std::span<const JudgedRun> a, std::span<const JudgedRun> b) {
  GroupRecipes recipes;
  std::vector<JudgedRun> both(a.begin(), a.end());
  both.insert(both.end(), b.begin(), b.end());
  recipes.oven = common(std::span<const JudgedRun>(both), &check::Request::oven);
  recipes.a = common(a, &check::Request::recipe);
  recipes.b = common(b, &check::Request::recipe);
  recipes.several_a = recipes.a == nullptr && any_recipe(a);
  recipes.several_b = recipes.b == nullptr && any_recipe(b);
  return recipes;
}

Comparison compare_groups(std::span<const JudgedRun> a, std::span<const JudgedRun> b) {
  return compare_groups(lot_runs(a), lot_runs(b), recipes_of(a, b));
}

}  // namespace ovenwright::compare
