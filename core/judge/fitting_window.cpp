#include "core/judge/fitting_window.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <optional>
#include <vector>

#include "core/judge/bind.h"

namespace ovenwright::judge {
namespace {

constexpr double kFar_C = 10;  // common practice, no source: half of a usual peak window

std::optional<std::array<double, 2>> peak_limits(const window::ProcessWindow& window) {
  for (const auto& requirement : window.requirements) {
    const auto kind = requirement.applies_to.kind;
    if (requirement.measure.measure != measure::Measure::kPeak || !requirement.lower || !requirement.upper ||
        (kind != window::AppliesTo::Kind::kAll && kind != window::AppliesTo::Kind::kJoint))
      continue;
    const auto* lower = std::get_if<double>(&*requirement.lower);
    const auto* upper = std::get_if<double>(&*requirement.upper);
    if (lower && upper) return std::array{*lower, *upper};
  }
  return {};
}

bool near(double peak_C, const std::array<double, 2>& limits) {
  return peak_C >= limits[0] - kFar_C && peak_C <= limits[1] + kFar_C;
}

std::vector<double> peaks_of(const run::Run& run, const board::Board* board) {
  std::vector<double> peaks_C;
  for (const auto& channel : run.channels)
    if (channel.trace && seat_of(channel, board).kind != board::Kind::kAir)
      peaks_C.push_back(std::ranges::max(channel.trace->temperature_C()));
  return peaks_C;
}

}  // namespace

bool far_off(const run::Run& run, const board::Board* board, const window::ProcessWindow& assumed) {
  const auto peaks_C = peaks_of(run, board);
  const auto own = peak_limits(assumed);
  return own && !peaks_C.empty() && std::ranges::none_of(peaks_C, [&](double peak_C) { return near(peak_C, *own); });
}

std::string fitting_window(const run::Run& run, const board::Board* board, const window::ProcessWindow& assumed,
                           std::span<const window::ProcessWindow> others) {
  if (!far_off(run, board, assumed)) return {};
  const auto peaks_C = peaks_of(run, board);
  double mean_C = 0;
  for (const double peak_C : peaks_C) mean_C += peak_C / static_cast<double>(peaks_C.size());
  std::string best;
  double nearest_C = HUGE_VAL;
  for (const auto& other : others) {
    const auto limits = peak_limits(other);
    if (!limits || other.process != assumed.process) continue;
    const double away_C = std::abs(((*limits)[0] + (*limits)[1]) / 2 - mean_C);
    if (away_C >= nearest_C || !std::ranges::all_of(peaks_C, [&](double peak_C) { return near(peak_C, *limits); }))
      continue;
    best = other.identity.name;
    nearest_C = away_C;
  }
  return best;
}

}  // namespace ovenwright::judge
