#include "core/exposure/exposure.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "core/exposure/findings.h"
#include "core/judge/bind.h"
#include "core/measure/measure.h"

namespace ovenwright::exposure {
namespace {

/// The sum of one measure over the passes; empty where none has a value.
std::optional<Total> total_of(const Placement& placement, measure::Value Heat::*which) {
  Total total;
  measure::Terms terms;
  bool any = false;
  for (std::size_t p = placement.first; p < placement.passes.size(); ++p) {
    const auto& heat = placement.passes[p];
    if (!heat || !((*heat).*which).value) {
      total.at_least = true;
      continue;
    }
    const measure::Value& value = (*heat).*which;
    any = true;
    total.value += *value.value;
    total.at_least = total.at_least || value.at_least;
    terms.thermocouple += value.terms.thermocouple;
    terms.instrument += value.terms.instrument;
    terms.noise = std::hypot(terms.noise, value.terms.noise);
    terms.sampling = std::hypot(terms.sampling, value.terms.sampling);
  }
  if (!any) return std::nullopt;
  total.expanded_uncertainty =
      2 * std::hypot(std::hypot(terms.thermocouple, terms.instrument), std::hypot(terms.noise, terms.sampling));
  return total;
}

class Adder {
 public:
  explicit Adder(std::span<const Pass> passes) : passes_(passes) {}

  Exposure take() && {
    for (std::size_t p = 0; p < passes_.size(); ++p)
      for (const auto& channel : passes_[p].run->channels) add(p, channel);
    for (auto& placement : exposure_.placements) {
      placement.heats = passes_.size() - placement.first;
      placement.time_above_s = total_of(placement, &Heat::time_above);
      placement.area_above_Cs = total_of(placement, &Heat::area_above);
    }
    exposure_.findings = findings_of(passes_, exposure_.placements);
    for (const auto& finding : exposure_.findings) exposure_.verdict = std::max(exposure_.verdict, finding.verdict);
    exposure_.sentence = sentence_of(exposure_);
    return std::move(exposure_);
  }

 private:
  void add(std::size_t p, const run::Channel& channel) {
    const Pass& pass = passes_[p];
    const auto seat = judge::seat_of(channel, pass.board);
    if (seat.kind == board::Kind::kAir || !channel.trace) return;
    auto& placement = placement_of(p, channel, seat);
    if (seat.placement && seat.placement->part) {
      placement.part = seat.placement->part;
      if (const auto* part = pass.board->part(*placement.part)) placement.allowed = part->max_passes;
    }
    auto seated = judge::subject_of(channel, seat, pass.window->uncertainty);
    if (!seated.warning.empty()) exposure_.warnings.push_back(std::move(seated.warning));
    using measure::Measure;
    measure::Parameters level;
    level.level = placement.liquidus_C;
    const std::vector<measure::Definition> definitions{
        {Measure::kPeak, {}}, {Measure::kTimeAbove, level}, {Measure::kAreaAbove, level}};
    auto values = measure::evaluate(seated.subject, definitions, std::nullopt);
    placement.passes[p] = Heat{std::move(values[0]), std::move(values[1]), std::move(values[2])};
  }

  Placement& placement_of(std::size_t p, const run::Channel& channel, const judge::Seat& seat) {
    const auto known = std::ranges::find(exposure_.placements, channel.name, &Placement::trace);
    if (known != exposure_.placements.end()) return *known;
    const auto& window = *passes_[p].window;
    Placement placement{.trace = channel.name, .name = seat.name, .kind = seat.kind, .first = p};
    placement.passes.resize(passes_.size());
    placement.liquidus_C = *window.liquidus_C;
    placement.solidus_C = window.solidus_C.value_or(*window.liquidus_C);
    return exposure_.placements.emplace_back(std::move(placement));
  }

  std::span<const Pass> passes_;
  Exposure exposure_;
};

}  // namespace

Result<Exposure> add_up(std::span<const Pass> passes) {
  if (passes.empty()) return Error{ErrorCode::kBadArgument, "there is no pass to add up", {}, "", "a pass"};
  for (const auto& pass : passes)
    if (!pass.window->liquidus_C)
      return Error{ErrorCode::kBadArgument,
                   fmt::format("the window of {} gives no liquidus", pass.name),
                   {},
                   pass.window->identity.name,
                   "a window with liquidus_C"};
  return Adder(passes).take();
}

}  // namespace ovenwright::exposure
