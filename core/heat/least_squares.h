#pragma once
#include <functional>
#include <string>
#include <vector>

namespace ovenwright::heat {

/// A least-squares problem: residuals, and their Jacobian where asked for (column by column: [parameter · residuals +
/// residual]).
struct LeastSquaresProblem {
  std::size_t residuals = 0, parameters = 0;
  std::function<void(const double* x, double* residual, double* jacobian)> evaluate;  ///< jacobian may be null
};

struct LeastSquaresOptions {
  int most_iterations = 40;
  double cost_tolerance = 1e-3;       ///< stops where the sum of squares changes by less
  double gradient_tolerance = 1e-10;  ///< largest component
  double step_tolerance = 1e-8;       ///< relative
  double first_region = 10;           ///< trust region of the first step, in units of the scaled parameters
};

struct LeastSquaresReport {
  std::vector<double> x;
  std::vector<double> information;  ///< JᵀJ at x, row by row
  double cost = 0;                  ///< half the sum of squares
  int iterations = 0;
  bool converged = false;
  std::string termination;
};

/// Levenberg–Marquardt by Ceres' small dense solver. Never throws; a run that stops early is reported, not an error.
/// Cost: O(residuals · parameters²) an iteration.
LeastSquaresReport minimise(const LeastSquaresProblem& problem, std::vector<double> start,
                            const LeastSquaresOptions& options = {});

}  // namespace ovenwright::heat
