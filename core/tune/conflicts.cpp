#include "core/tune/conflicts.h"

#include <algorithm>

namespace ovenwright::tune {
namespace {

constexpr double kLeastWeight = 0.05;  // a limit that would have to give 20 times what is missing holds nothing down

/// How far a limit alone would have to give. The multiplier says how much margin a unit of relief buys: from the best
/// margin to none it takes −margin/weight.
double give_of(const Found& found, const Binding& binding) {
  return -found.point.margin * binding.limit.scale / binding.weight;
}

}  // namespace

std::vector<Conflict> conflicts_of(const Found& found, const std::vector<Forecast>& forecasts) {
  std::vector<Conflict> out;
  for (const auto& binding : found.binding) {
    if (binding.weight < kLeastWeight) continue;
    const auto& limit = binding.limit;
    const auto& outcome = forecasts[limit.board].judgement.all(limit.outcome);
    Conflict conflict;
    conflict.board = limit.board;
    conflict.requirement = outcome.requirement_name;
    conflict.trace = outcome.trace;
    conflict.upper = limit.upper;
    conflict.give = give_of(found, binding);
    conflict.unit = outcome.value.unit;
    conflict.limit = limit.upper ? *outcome.upper : *outcome.lower;
    conflict.value = outcome.value.value;
    conflict.peak = outcome.measure.measure == measure::Measure::kPeak && outcome.channel;
    out.push_back(std::move(conflict));
  }
  std::ranges::sort(out, {}, &Conflict::give);
  return out;
}

Found smallest_conflict(const Ground& ground, const Found& best) {
  Found holder = best;
  std::vector<Binding> binding;
  for (const auto& one : best.binding)
    if (one.weight >= kLeastWeight) binding.push_back(one);
  std::ranges::sort(binding, {}, [&](const Binding& one) { return -give_of(best, one); });
  std::vector<Limit> kept;
  for (const auto& one : binding) kept.push_back(one.limit);
  bool stopped = false;
  const auto go_on = [&] { return !(stopped = stopped || (ground.go_on && !ground.go_on())); };
  for (const auto& one : binding) {
    auto others = kept;
    std::erase_if(others, [&](const Limit& limit) { return limit.same(one.limit); });
    if (others.empty()) break;
    const Search search(ground.boards, ground.space, go_on, Search::Limits::kAsStated, others);
    const Goal goal{.any_falls = true};
    Found without = search.run(Aim::kMostMargin, best.point.x, ground.now, goal);
    if (without.point.margin < 0 && !stopped) {
      Found again = search.run(Aim::kMostMargin, ground.start, ground.now, goal);
      if (again.point.margin > without.point.margin) without = std::move(again);
    }
    if (stopped) return holder;
    if (without.point.margin >= 0) continue;
    kept = std::move(others);
    holder = std::move(without);
  }
  return holder;
}

}  // namespace ovenwright::tune
