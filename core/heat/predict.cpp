#include "core/heat/predict.h"

#include <Eigen/Core>
#include <algorithm>
#include <cmath>

namespace ovenwright::heat {
namespace {

// Band: 1.96 √((kCovariance σ_θ)² + kFloor_C² + (kChange |Δ|)² + (kClock_s |dT/dt|)²), Δ the change against the
// measured run.
constexpr double kCovariance = 1.5, kFloor_C = 0.22, kChange = 0.02, kClock_s = 0.19, kCoverage = 1.96;

Drive drive_of(const ModelRun& run, std::size_t index, const oven::Recipe& recipe, double end_s) {
  return {&recipe, run.board, index, run.start_s, end_s, run.ambient_C, run.start_C};
}

}  // namespace

Predictor::Predictor(const HeatModel& model, std::size_t run, std::vector<const run::Trace*> measured)
    : model_(model), run_(run), measured_(std::move(measured)), entry_s_(model.theta[model.problem.map().entry(run)]) {
  const ModelRun& first = model.problem.runs[run];
  before_ = march(model.problem, model.theta, drive_of(first, run, first.recipe, first.end_s), true);
}

std::vector<PredictedTrace> Predictor::predict(const oven::Recipe& recipe, bool with_band) const {
  const Problem& problem = model_.problem;
  const ModelRun& run = problem.runs[run_];
  const double stretch = run.recipe.speed_mm_per_min / recipe.speed_mm_per_min;
  const March after =
      march(problem, model_.theta, drive_of(run, run_, recipe, entry_s_ + (run.end_s - entry_s_) * stretch), with_band);

  const auto P = static_cast<Eigen::Index>(model_.theta.size());
  const Eigen::Map<const Eigen::VectorXd> sd(model_.sd.data(), P);
  const Eigen::Map<const Eigen::MatrixXd> covariance(model_.covariance.data(), P, P);
  std::vector<double> gradient_before(model_.theta.size()), gradient_after(model_.theta.size());
  Eigen::VectorXd change(P);

  std::vector<PredictedTrace> out;
  for (std::size_t k = 0; k < before_.placements.size(); ++k) {
    const run::Trace* trace = measured_[before_.placements[k]];
    if (!trace) continue;
    PredictedTrace predicted;
    predicted.placement = before_.placements[k];
    const double step_s = trace->median_interval_s(), from_s = trace->time_s().front(), to_s = trace->time_s().back();
    const auto count =
        static_cast<std::size_t>(std::floor((entry_s_ + (to_s - entry_s_) * stretch - from_s) / step_s + 1e-9)) + 1;
    const auto band_every = static_cast<std::size_t>(std::max(1.0, std::round(1.0 / step_s)));
    double band_C = 0;
    for (std::size_t i = 0; i < count; ++i) {
      const double time_s = from_s + static_cast<double>(i) * step_s;
      const double then_s = std::clamp(entry_s_ + (time_s - entry_s_) / stretch, from_s, to_s);
      const double was_C = trace->at(then_s), is_C = after.at(k, time_s) + (was_C - before_.at(k, then_s));
      predicted.time_s.push_back(time_s);
      predicted.temperature_C.push_back(is_C);
      if (!with_band) continue;
      if (i % band_every == 0) {
        before_.gradient_at(k, then_s, gradient_before);
        after.gradient_at(k, time_s, gradient_after);
        change = (Eigen::Map<const Eigen::VectorXd>(gradient_after.data(), P) -
                  Eigen::Map<const Eigen::VectorXd>(gradient_before.data(), P))
                     .cwiseProduct(sd);
        const double variance = change.dot(covariance * change);
        const double slope = (after.at(k, time_s + 1) - after.at(k, time_s - 1)) / 2;
        band_C = kCoverage * std::sqrt(kCovariance * kCovariance * variance + kFloor_C * kFloor_C +
                                       std::pow(kChange * (is_C - was_C), 2) + std::pow(kClock_s * slope, 2));
      }
      predicted.band_C.push_back(band_C);
    }
    out.push_back(std::move(predicted));
  }
  return out;
}

}  // namespace ovenwright::heat
