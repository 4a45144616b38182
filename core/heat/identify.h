#pragma once
#include <functional>
#include <string>
#include <vector>

#include "core/heat/least_squares.h"
#include "core/heat/problem.h"
#include "core/units/result.h"

namespace ovenwright::heat {

struct PlacementFit {
  std::string name;
  double rmse_C = 0, max_error_C = 0;
};

/// What the fit found, and how far to trust it.
struct FitReport {
  bool usable = false;
  std::string message;      ///< why not usable; else empty
  std::string termination;  ///< "converged", "stopped after N iterations", …
  int iterations = 0;
  double rmse_C = 0;
  double cost = 0;                          ///< half the sum of squares that was minimised, priors included
  std::vector<std::string> not_determined;  ///< parameters whose spread the log narrowed by less than a tenth
  std::vector<std::string> warnings;
  /// The curves contradict the belt's speed or a given entry: the data may be of another line than the files say, so no
  /// chance is stated for what is predicted from them.
  bool contradicted = false;
  std::vector<PlacementFit> placements;
};

/// The identified model: parameters, their covariance, and the problem they belong to.
struct HeatModel {
  Problem problem;
  std::vector<double> theta;       ///< in the parameters' own units
  std::vector<double> sd;          ///< of the priors, the units of the covariance
  std::vector<double> covariance;  ///< of (θ − mean)/sd, row by row
  /// How far this oven is from the ovens that the priors are of: the mean square of the pulls (θ − mean)/sd over as
  /// many parameters as the data could pull, twenty ordinary pulls counted in. 1 where the priors are right; every term
  /// of a band goes with its root, so that it narrows below 1 too (docs/heat_model.md).
  double strangeness = 1;
  FitReport report;
};

/// Learns oven and boards from all runs of the problem: the most probable parameters under the priors, by least squares
/// (Ceres' small solver, Levenberg–Marquardt, automatic derivatives). Residuals are means over 2 s, whitened as a
/// first-order correlated wave (0.95 over 2 s, 1.5 °C): the model's misfit is slow, so slopes count more than levels.
/// @param most_iterations  fewer give a rougher model sooner
/// Errors: kUndetermined where no placement has data; kCancelled.
Result<HeatModel> identify(Problem problem, const std::function<bool(double done)>& progress = {},
                           int most_iterations = LeastSquaresOptions{}.most_iterations);

/// The model as it can be expected to stand once a further run has been learned from: run `like` made again with
/// another recipe, as long and as well logged. Same parameters; the covariance that the information of all runs would
/// leave; the new run is the problem's last. Cost: one march with its gradient for each run.
HeatModel expected_after(const HeatModel& model, std::size_t like, const oven::Recipe& recipe);

}  // namespace ovenwright::heat
