#include "core/heat/predict.h"

#include <Eigen/Core>
#include <algorithm>
#include <cmath>

#include "core/heat/model.h"

namespace ovenwright::heat {

std::vector<PredictedTrace> predict(const HeatModel& model, std::size_t r,
                                    const std::vector<const run::Trace*>& measured, const oven::Recipe& recipe,
                                    bool with_band) {
  const Problem& problem = model.problem;
  const ModelRun& run = problem.runs[r];
  const double entry_s = model.theta[problem.map().entry(r)];
  const double stretch = run.recipe.speed_mm_per_min / recipe.speed_mm_per_min;
  const auto first_time = [&](double time_s) { return entry_s + (time_s - entry_s) / stretch; };
  // The log's own clock before the entry, stretched after it, so that the whole oven is covered again.
  const double end_s = entry_s + (run.end_s - entry_s) * stretch;
  const March before = march(
      problem, model.theta, {&run.recipe, run.board, r, run.start_s, run.end_s, run.ambient_C, run.start_C}, with_band);
  const March after =
      march(problem, model.theta, {&recipe, run.board, r, run.start_s, end_s, run.ambient_C, run.start_C}, with_band);

  const std::size_t P = model.theta.size();
  Eigen::MatrixXd spread;
  if (with_band) {
    spread = Eigen::Map<const Eigen::MatrixXd>(model.covariance.data(), static_cast<Eigen::Index>(P),
                                               static_cast<Eigen::Index>(P));
    const Eigen::Map<const Eigen::VectorXd> sd(model.sd.data(), static_cast<Eigen::Index>(P));
    spread = sd.asDiagonal() * spread * sd.asDiagonal();
  }

  std::vector<PredictedTrace> out;
  std::vector<double> g0(P), g1(P);
  for (std::size_t k = 0; k < before.placements.size(); ++k) {
    const std::size_t j = before.placements[k];
    const run::Trace* trace = measured[j];
    if (!trace) continue;
    PredictedTrace predicted;
    predicted.name = problem.placements[j].name;
    const double step = trace->median_interval_s();
    const double from = trace->time_s().front(), to = trace->time_s().back();
    const auto count =
        static_cast<std::size_t>(std::floor((entry_s + (to - entry_s) * stretch - from) / step + 1e-9)) + 1;
    double band_C = 0;
    const auto band_every = static_cast<std::size_t>(std::max(1.0, std::round(1.0 / step)));
    for (std::size_t i = 0; i < count; ++i) {
      const double time_s = from + static_cast<double>(i) * step;
      const double then_s = std::clamp(first_time(time_s), from, to);
      const double was = trace->at(then_s), model_was = before.at(k, then_s), model_is = after.at(k, time_s);
      const double value = model_is + (was - model_was);
      predicted.time_s.push_back(time_s);
      predicted.temperature_C.push_back(value);
      if (!with_band) continue;
      if (i % band_every == 0) {
        before.gradient_at(k, then_s, g0);
        after.gradient_at(k, time_s, g1);
        Eigen::Map<Eigen::VectorXd> difference(g1.data(), static_cast<Eigen::Index>(P));
        difference -= Eigen::Map<const Eigen::VectorXd>(g0.data(), static_cast<Eigen::Index>(P));
        const double variance = difference.dot(spread * difference);
        const double slope = (after.at(k, time_s + 1) - after.at(k, time_s - 1)) / 2;
        const double change = value - was;
        band_C =
            1.96 * std::sqrt(2.25 * variance + 0.22 * 0.22 + std::pow(0.02 * change, 2) + std::pow(0.19 * slope, 2));
      }
      predicted.band_C.push_back(band_C);
    }
    out.push_back(std::move(predicted));
  }
  return out;
}

}  // namespace ovenwright::heat
