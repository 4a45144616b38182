#include "core/check/better_window.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <limits>
#include <optional>
#include <vector>

#include "core/files/profiles.h"
#include "core/window/window_file.h"

namespace ovenwright::check {
namespace {

constexpr double kFar_C = 10;

using Interval = std::array<double, 2>;

std::optional<double> number(const std::optional<window::Limit>& limit) {
  const double* value = limit ? std::get_if<double>(&*limit) : nullptr;
  return value != nullptr ? std::optional{*value} : std::nullopt;
}

/// The limits of a window's first peak requirement that has both as numbers.
std::optional<Interval> peak_limits(const window::ProcessWindow& window) {
  for (const auto& requirement : window.requirements) {
    const auto lower = number(requirement.lower), upper = number(requirement.upper);
    if (requirement.measure.measure == measure::Measure::kPeak && lower && upper) return Interval{*lower, *upper};
  }
  return std::nullopt;
}

std::vector<double> peaks_of(const run::Run& run) {
  std::vector<double> peaks;
  for (const auto& channel : run.channels) {
    if (channel.trace) peaks.push_back(std::ranges::max(channel.trace->temperature_C()));
  }
  return peaks;
}

}  // namespace

std::string better_window(const run::Run& run, const window::ProcessWindow& assumed) {
  const auto limits = peak_limits(assumed);
  const auto peaks = peaks_of(run);
  if (!limits || peaks.empty()) return {};
  const bool far = std::ranges::all_of(
      peaks, [&](double peak) { return peak < (*limits)[0] - kFar_C || peak > (*limits)[1] + kFar_C; });
  if (!far) return {};

  const auto [lowest, highest] = std::ranges::minmax(peaks);
  const auto all = files::list_profiles(files::Kind::kWindow);
  if (!all) return {};
  std::string best;
  double nearest = std::numeric_limits<double>::infinity();
  for (const auto& listed : *all) {
    if (listed.users) continue;
    const auto window = window::load(listed.file);
    if (!window || window->process != window::Process::kReflow) continue;
    const auto other = peak_limits(*window);
    if (!other || lowest < (*other)[0] || highest > (*other)[1]) continue;
    const double distance = std::abs((*other)[0] + (*other)[1] - lowest - highest);
    if (distance < nearest) {
      nearest = distance;
      best = window->identity.name;
    }
  }
  return best;
}

}  // namespace ovenwright::check
