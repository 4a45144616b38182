#include "core/heat/predict.h"

#include <Eigen/Core>
#include <algorithm>
#include <cmath>

namespace ovenwright::heat {
namespace {

// Band: 1.96 √(S ((kCovariance σ_θ)² + kFloor_C² + (kChange |Δ|)² + (kClock_s |dT/dt|)² + (kMelting_K Δ∂T/∂L)² +
// (kBelt ln(v/v₁) ∂T/∂ln g)² + Σ_z (kContrast δ_z ∂T/∂o_z)²)), S the model's strangeness, Δ the change against the
// measured run, v₁ its speed. Melting: solder melts as a bump of fixed width here and otherwise in truth, as if its
// heat L were off; what counts is by how much more or less that shows in the new run. The belt's term: exchange may
// follow the belt as v^±kBelt, which runs at one speed cannot tell. The last: δ_z is by how much a zone was moved
// against the mean of its neighbours; zones heat and do not cool, and leak into each other, so the air of a zone may
// keep a share of that (o_z: its offset).
constexpr double kCovariance = 0.85, kFloor_C = 0.25, kChange = 0.012, kClock_s = 0.11, kMelting_K = 2.8, kBelt = 0.08,
                 kContrast = 0.045, kCoverage = 1.96;
constexpr double kBandStep_s = 2;
// Sides that are parted: a placement's share of the top is one number here, and in a board of some thickness differs
// from zone to zone.
constexpr double kSides = 0.06;
// Of a run that is only imagined, from priors and other boards' runs: 1.96 √(σ_θ² + kModelAlone_C² + (kClock_s
// |dT/dt|)²), σ_θ of the curve itself. The priors are as wide as they are; the misfit is that of the fit's residuals.
constexpr double kModelAlone_C = 1.5;

/// How far each zone is set above the mean of its neighbours, °C; 0 for cooling zones.
std::vector<double> contrasts(const oven::Oven& oven, const oven::Recipe& recipe) {
  std::vector<std::size_t> heating;
  for (std::size_t z = 0; z < oven.zones.size(); ++z)
    if (oven.zones[z].kind == oven::ZoneKind::kHeat) heating.push_back(z);
  const auto setpoint = [&](std::size_t h) { return (recipe.top_C[h] + recipe.bottom_C[h]) / 2; };
  std::vector<double> out(oven.zones.size(), 0.0);
  for (std::size_t h = 0; h < heating.size() && heating.size() > 1; ++h) {
    const double before = setpoint(h > 0 ? h - 1 : h + 1), after = setpoint(h + 1 < heating.size() ? h + 1 : h - 1);
    out[heating[h]] = setpoint(h) - (before + after) / 2;
  }
  return out;
}

/// By how much a recipe's sides are parted otherwise than in each run of that board: [run][zone], 0 for cooling zones.
std::vector<std::vector<double>> partings_C(const Problem& problem, std::size_t board, const oven::Recipe& recipe) {
  std::vector<std::vector<double>> out;
  for (const auto& run : problem.runs) {
    if (run.board != board || run.imagined) continue;
    auto& by_zone = out.emplace_back(problem.oven.zones.size(), 0.0);
    for (std::size_t z = 0, h = 0; z < by_zone.size(); ++z) {
      if (problem.oven.zones[z].kind != oven::ZoneKind::kHeat) continue;
      by_zone[z] = recipe.top_C[h] - recipe.bottom_C[h] - (run.recipe.top_C[h] - run.recipe.bottom_C[h]);
      ++h;
    }
  }
  return out;
}

/// What a parting does to a reading if all of it counts, by the run that comes nearest.
double parted_C(const std::vector<std::vector<double>>& partings, const std::vector<double>& row,
                const ParameterMap& map) {
  double least = INFINITY;
  for (const auto& by_zone : partings) {
    double sum = 0;
    for (std::size_t z = 0; z < by_zone.size(); ++z) sum += by_zone[z] * row[map.offset(z)];
    least = std::min(least, std::abs(sum));
  }
  return std::isfinite(least) ? least : 0;
}

Drive drive_of(const ModelRun& run, std::size_t index, const oven::Recipe& recipe, double end_s) {
  return {&recipe, run.board, index, run.start_s, end_s, run.ambient_C, run.start_C};
}

}  // namespace

Predictor::Predictor(const HeatModel& model, std::size_t run, std::vector<const run::Trace*> measured)
    : model_(model), run_(run), measured_(std::move(measured)), entry_s_(model.theta[model.problem.map().entry(run)]) {
  const ModelRun& first = model.problem.runs[run];
  before_ = march(model.problem, model.theta, drive_of(first, run, first.recipe, first.end_s), true);
  const auto P = static_cast<Eigen::Index>(model.theta.size());
  const auto W = static_cast<Eigen::Index>(before_.columns.width());
  const Eigen::Map<const Eigen::MatrixXd> covariance(model.covariance.data(), P, P);
  for (const std::size_t j : before_.placements) {
    std::vector<Eigen::Index> parameter;
    for (std::size_t c = 0; c < before_.columns.width(); ++c)
      parameter.push_back(static_cast<Eigen::Index>(before_.columns.parameter(c, j)));
    Eigen::MatrixXd own(W, W);
    for (Eigen::Index a = 0; a < W; ++a)
      for (Eigen::Index b = 0; b < W; ++b) {
        const auto p = parameter[static_cast<std::size_t>(a)], q = parameter[static_cast<std::size_t>(b)];
        own(a, b) = covariance(p, q) * model.sd[static_cast<std::size_t>(p)] * model.sd[static_cast<std::size_t>(q)];
      }
    covariance_.emplace_back(own.data(), own.data() + own.size());
  }
}

std::vector<double> Predictor::spread(std::size_t k, const March& after, const std::vector<double>& time_s,
                                      const std::vector<double>& then_s) const {
  const auto W = static_cast<Eigen::Index>(before_.columns.width());
  const Eigen::Map<const Eigen::MatrixXd> covariance(covariance_[k].data(), W, W);
  Eigen::VectorXd was(W), is(W);
  std::vector<double> out(time_s.size());
  for (std::size_t i = 0; i < time_s.size(); ++i) {
    before_.gradient_at(k, then_s[i], {was.data(), before_.columns.width()});
    after.gradient_at(k, time_s[i], {is.data(), before_.columns.width()});
    if (!model_.problem.runs[run_].imagined) is -= was;
    was.noalias() = covariance * is;
    out[i] = std::max(0.0, is.dot(was));
  }
  return out;
}

std::vector<PredictedTrace> Predictor::predict(const oven::Recipe& recipe, bool with_band) const {
  const Problem& problem = model_.problem;
  const ModelRun& run = problem.runs[run_];
  const double stretch = run.recipe.speed_mm_per_min / recipe.speed_mm_per_min;
  const March after =
      march(problem, model_.theta, drive_of(run, run_, recipe, entry_s_ + (run.end_s - entry_s_) * stretch), with_band);

  // What does not hang on placement or time.
  const double belt = kBelt * std::log(stretch);
  const auto was_apart_C = contrasts(problem.oven, run.recipe), is_apart_C = contrasts(problem.oven, recipe);
  const auto partings = with_band ? partings_C(problem, run.board, recipe) : std::vector<std::vector<double>>{};

  std::vector<PredictedTrace> out;
  for (std::size_t k = 0; k < before_.placements.size(); ++k) {
    const run::Trace* trace = measured_[before_.placements[k]];
    if (!trace) continue;
    PredictedTrace predicted;
    predicted.placement = before_.placements[k];
    const double step_s = trace->median_interval_s(), from_s = trace->time_s().front(), to_s = trace->time_s().back();
    const double steps = std::floor((entry_s_ + (to_s - entry_s_) * stretch - from_s) / step_s + 1e-9);
    if (!(steps >= 1 && entry_s_ < to_s)) continue;  // the log ends before the board enters
    const auto count = static_cast<std::size_t>(steps) + 1;
    predicted.time_s.resize(count);
    predicted.temperature_C.resize(count);
    const auto then = [&](double time_s) { return std::clamp(entry_s_ + (time_s - entry_s_) / stretch, from_s, to_s); };
    const auto measured_s = trace->time_s(), measured_C = trace->temperature_C();
    std::vector<double> change_C(count);
    std::size_t below = 0;
    for (std::size_t i = 0; i < count; ++i) {
      const double time_s = from_s + static_cast<double>(i) * step_s, then_s = then(time_s);
      while (below + 2 < measured_s.size() && measured_s[below + 1] <= then_s) ++below;
      const double was_C = std::lerp(measured_C[below], measured_C[below + 1],
                                     (then_s - measured_s[below]) / (measured_s[below + 1] - measured_s[below]));
      predicted.time_s[i] = time_s;
      change_C[i] = after.at(k, time_s) - before_.at(k, then_s);
      predicted.temperature_C[i] = run.imagined ? after.at(k, time_s) : was_C + change_C[i];
    }
    if (with_band) {
      // The parameters' part changes slowly: every kBandStep_s, linear between.
      std::vector<double> time_s, then_s;
      for (double t = from_s; t < predicted.time_s.back() + kBandStep_s; t += kBandStep_s) {
        time_s.push_back(t);
        then_s.push_back(then(t));
      }
      auto variance = spread(k, after, time_s, then_s);
      std::vector<double> row(after.columns.width()), was(after.columns.width());
      const std::size_t latent = after.columns.own(ParameterMap::kLatent);
      for (std::size_t i = 0; i < time_s.size() && !run.imagined; ++i) {
        after.gradient_at(k, time_s[i], row);
        const double by_belt = belt * row[after.columns.own(ParameterMap::kTimeConstant)];
        before_.gradient_at(k, then_s[i], was);
        const double by_melting_C = kMelting_K * (row[latent] - was[latent]);
        variance[i] = kCovariance * kCovariance * variance[i] + by_belt * by_belt + by_melting_C * by_melting_C;
        const double by_sides_C = kSides * parted_C(partings, row, after.columns.map);
        variance[i] += by_sides_C * by_sides_C;
        for (std::size_t z = 0; z < problem.oven.zones.size(); ++z) {
          const double kept_C = kContrast * (is_apart_C[z] - was_apart_C[z]) * row[after.columns.map.offset(z)];
          variance[i] += kept_C * kept_C;
        }
      }
      predicted.band_C.resize(count);
      for (std::size_t i = 0; i < count; ++i) {
        const double at = (predicted.time_s[i] - from_s) / kBandStep_s;
        const std::size_t left = std::min(static_cast<std::size_t>(at), variance.size() - 2);
        const double theta = std::lerp(variance[left], variance[left + 1], at - static_cast<double>(left));
        const double slope = (after.at(k, predicted.time_s[i] + 1) - after.at(k, predicted.time_s[i] - 1)) / 2;
        const double strangeness = run.imagined ? 1 : model_.strangeness;
        const double lacking = run.imagined ? kModelAlone_C * kModelAlone_C
                                            : kFloor_C * kFloor_C + kChange * kChange * change_C[i] * change_C[i];
        predicted.band_C[i] =
            kCoverage * std::sqrt(strangeness * (theta + lacking + kClock_s * kClock_s * slope * slope));
      }
    }
    out.push_back(std::move(predicted));
  }
  return out;
}

}  // namespace ovenwright::heat
