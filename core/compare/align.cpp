#include <fmt/format.h>

#include <algorithm>

#include "core/compare/compare.h"
#include "core/measure/level.h"

namespace ovenwright::compare {
namespace {

constexpr double kUsualLevel_C = 150;  // where the entry is not known: above the idle oven's air, below every liquidus

/// The first moment at which a trace that both runs have crosses the level on its rise.
std::optional<double> first_crossing_s(const run::Run& run, const run::Run& other, double level_C) {
  std::optional<double> first;
  for (const auto& channel : run.channels) {
    const auto same = std::ranges::find(other.channels, channel.name, &run::Channel::name);
    if (!channel.trace || same == other.channels.end() || !same->trace) continue;
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
  if (!level_C && a.entry && b.entry) return Alignment{std::nullopt, a.entry->at_s, b.entry->at_s};
  const double level = level_C.value_or(kUsualLevel_C);
  const auto a_s = first_crossing_s(a.run, b.run, level), b_s = first_crossing_s(b.run, a.run, level);
  if (!a_s || !b_s) return std::nullopt;
  return Alignment{level, *a_s, *b_s};
}

}  // namespace ovenwright::compare
