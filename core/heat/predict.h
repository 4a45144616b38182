#pragma once
#include <memory>
#include <vector>

#include "core/heat/identify.h"
#include "core/heat/model.h"

namespace ovenwright::heat {

/// A predicted trace on the log's clock.
struct PredictedTrace {
  std::size_t placement = 0;  ///< of the problem
  std::vector<double> time_s, temperature_C;
  std::vector<double> band_C;  ///< half width, 95 %; empty where not asked for
};

/// Predicts new recipes for one measured run: the measured run plus the model's change, M(new) + (measured − M(first))
/// at the same place of the board in the oven, so what the model does not know about this board and oven is carried
/// along. Before the entry and after the log's end the first run's clock is kept, stretched by the ratio of speeds.
///
/// A run that is only imagined (ModelRun::imagined) has nothing to carry along: the prediction is M(new), its traces
/// give the clock alone.
///
/// The band combines the parameters' covariance (of the change, not of the curve) with what the model lacks; its
/// constants come from simulated ovens of several kinds (docs/heat_model.md).
class Predictor {
 public:
  /// `measured`: by placement of the problem, null where the run has none; must outlive the predictor.
  Predictor(const HeatModel& model, std::size_t run, std::vector<const run::Trace*> measured);
  /// Thread-safe. Cost: one march; with the band one march with its gradient and a quadratic form every two seconds.
  std::vector<PredictedTrace> predict(const oven::Recipe& recipe, bool with_band) const;

 private:
  /// Variance of the change between the two marches of a placement, by the parameters' covariance.
  std::vector<double> spread(std::size_t k, const March& after, const std::vector<double>& time_s,
                             const std::vector<double>& then_s) const;
  const HeatModel& model_;
  std::size_t run_;
  std::vector<const run::Trace*> measured_;
  double entry_s_ = 0;
  March before_;
  std::vector<std::vector<double>> covariance_;  ///< by placement of `before_`: of its columns, in their own units
};

}  // namespace ovenwright::heat
