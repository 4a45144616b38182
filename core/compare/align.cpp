#include <fmt/format.h>

#include <algorithm>

#include "core/compare/compare.h"
#include "core/compare/group.h"
#include "core/measure/level.h"

namespace ovenwright::compare {
namespace {

constexpr double kUsualLevel_C = 150;  // where the entry is not known: above the idle oven's air, below every liquidus

/// The first moment at which a trace that all runs have crosses the level on its rise.
std::optional<double> first_crossing_s(const run::Run& run, std::span<const run::Run* const> all, double level_C) {
  std::optional<double> first;
  const auto has = [](const run::Run* other, const std::string& name) {
    const auto same = std::ranges::find(other->channels, name, &run::Channel::name);
    return same != other->channels.end() && same->trace;
  };
  for (const auto& channel : run.channels) {
    if (!std::ranges::all_of(all, [&](const run::Run* other) { return has(other, channel.name); })) continue;
    const measure::Blocks blocks(channel.trace->temperature_C());
    const measure::Curve curve(*channel.trace, blocks);
    const auto at_s = measure::first_upward_crossing_s(curve, measure::rise(curve), level_C);
    if (at_s && (!first || *at_s < *first)) first = at_s;
  }
  return first;
}

}  // namespace

std::string alignment_name(const Alignment& alignment) {
  return alignment.level_C ? fmt::format("{} degC on rise", *alignment.level_C) : "oven entry";
}

std::optional<Alignment> align(const check::CheckedRun& a, const check::CheckedRun& b, std::optional<double> level_C) {
  const check::CheckedRun *of_a[] = {&a}, *of_b[] = {&b};
  const auto at = align(of_a, of_b, level_C);
  if (!at) return std::nullopt;
  return Alignment{at->level_C, at->a_s.front(), at->b_s.front()};
}

std::optional<GroupAlignment> align(std::span<const check::CheckedRun* const> a,
                                    std::span<const check::CheckedRun* const> b, std::optional<double> level_C) {
  std::vector<const run::Run*> runs;
  bool entries = true;
  for (const auto side : {a, b})
    for (const auto* one : side) {
      runs.push_back(&one->run);
      entries &= one->entry.has_value();
    }
  GroupAlignment alignment;
  if (level_C || !entries) alignment.level_C = level_C.value_or(kUsualLevel_C);
  const auto place = [&](std::span<const check::CheckedRun* const> side, std::vector<double>& at) {
    for (const auto* one : side) {
      const auto moment_s =
          alignment.level_C ? first_crossing_s(one->run, runs, *alignment.level_C) : std::optional(one->entry->at_s);
      if (!moment_s) return false;
      at.push_back(*moment_s);
    }
    return true;
  };
  if (!place(a, alignment.a_s) || !place(b, alignment.b_s)) return std::nullopt;
  return alignment;
}

}  // namespace ovenwright::compare
