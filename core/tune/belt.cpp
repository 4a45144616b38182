#include "core/tune/belt.h"

#include <algorithm>
#include <cmath>
#include <map>

#include "core/units/parallel.h"

namespace ovenwright::tune {
namespace {

constexpr double kStep = 0.05;
constexpr int kSlowest = -6, kFastest = 8;    // steps
constexpr int kFirstLook[] = {-3, -1, 1, 3};  // steps
constexpr int kIterations = 15;
constexpr double kAsBuilt = 0.01, kCoverage = 1.96;

struct Fit {
  double cost = INFINITY;  ///< infinite where there is no fit
  bool usable = false;
};

/// The fit with all belts `faster` by a share.
Fit fit_at(const heat::HeatModel& model, double faster) {
  heat::Problem problem = model.problem;
  for (auto& run : problem.runs) {
    const double speed_mm_per_s = run.recipe.speed_mm_per_min / 60;
    run.recipe.speed_mm_per_min *= 1 + faster;
    if (!run.entry_given) run.entry.at_s += problem.oven.entrance_mm / speed_mm_per_s * (1 - 1 / (1 + faster));
  }
  const auto fit = heat::identify(std::move(problem), {}, kIterations);
  if (!fit || !std::isfinite(fit->report.cost)) return {};
  return {fit->report.cost, fit->report.usable};
}

}  // namespace

std::optional<BeltError> belt_error(const heat::HeatModel& model) {
  // A wrong speed can leave a fit in a valley of its own, so the first look is a wide one.
  std::map<int, Fit> fits;
  if (std::isfinite(model.report.cost)) fits[0] = {model.report.cost, model.report.usable};
  for (const int step : kFirstLook) fits[step];
  const auto look = [&](int way) {
    for (auto& [step, fit] : fits)
      if (step * way > 0) fit = fit_at(model, step * kStep);
  };
  for_each_index(2, std::min(2U, all_cores()), [&](std::size_t k) { look(k == 0 ? 1 : -1); });
  const auto at = [&](int step) {
    if (!fits.contains(step)) fits[step] = fit_at(model, step * kStep);
    return fits[step].cost;
  };
  int best = 0;
  for (const int step : kFirstLook)
    if (at(step) < at(best)) best = step;
  for (bool moved = true; moved && best > kSlowest && best < kFastest;) {
    const int from = best;
    for (const int next : {from - 1, from + 1})
      if (at(next) < at(best)) best = next;
    moved = best != from;
  }
  if (best <= kSlowest || best >= kFastest || !fits[best].usable) return std::nullopt;
  const double below = at(best - 1), middle = at(best), above = at(best + 1);
  const double curvature = (below - 2 * middle + above) / (kStep * kStep);
  if (!(curvature > 0) || !std::isfinite(curvature)) return std::nullopt;
  BeltError out;
  out.faster = best * kStep + std::clamp((below - above) / (2 * kStep * curvature), -kStep, kStep);
  out.uncertainty = kCoverage * std::sqrt(1 / curvature + kAsBuilt * kAsBuilt);
  return out;
}

}  // namespace ovenwright::tune
