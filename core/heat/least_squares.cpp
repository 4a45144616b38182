#include "core/heat/least_squares.h"

#include <ceres/tiny_solver.h>

#include <Eigen/Cholesky>
#include <cmath>

namespace ovenwright::heat {
namespace {

/// The shape that ceres::TinySolver asks for.
struct Function {
  using Scalar = double;
  enum { NUM_RESIDUALS = Eigen::Dynamic, NUM_PARAMETERS = Eigen::Dynamic };
  const LeastSquaresProblem& problem;
  int NumResiduals() const { return static_cast<int>(problem.residuals); }
  int NumParameters() const { return static_cast<int>(problem.parameters); }
  bool operator()(const double* x, double* residual, double* jacobian) const {
    problem.evaluate(x, residual, jacobian);
    return true;
  }
};

}  // namespace

LeastSquaresReport minimise(const LeastSquaresProblem& problem, std::vector<double> start,
                            const LeastSquaresOptions& options) {
  using Solver = ceres::TinySolver<Function>;
  const Function function{problem};
  Solver solver;
  solver.options.max_num_iterations = options.most_iterations;
  solver.options.function_tolerance = options.cost_tolerance;
  solver.options.gradient_tolerance = options.gradient_tolerance;
  solver.options.parameter_tolerance = options.step_tolerance;
  solver.options.initial_trust_region_radius = options.first_region;
  Eigen::VectorXd x = Eigen::Map<Eigen::VectorXd>(start.data(), static_cast<Eigen::Index>(start.size()));
  solver.Solve(function, &x);

  LeastSquaresReport report;
  report.x.assign(x.data(), x.data() + x.size());
  Eigen::VectorXd residual(static_cast<Eigen::Index>(problem.residuals));
  Eigen::MatrixXd jacobian(residual.size(), x.size());
  problem.evaluate(x.data(), residual.data(), jacobian.data());
  const Eigen::MatrixXd information = jacobian.transpose() * jacobian;
  report.information.assign(information.data(), information.data() + information.size());
  report.cost = residual.squaredNorm() / 2;
  report.iterations = solver.summary.iterations;
  report.converged = std::isfinite(report.cost) && solver.summary.status != Solver::HIT_MAX_ITERATIONS;
  switch (solver.summary.status) {
    case Solver::GRADIENT_TOO_SMALL:
      report.termination = "converged: the gradient vanishes";
      break;
    case Solver::RELATIVE_STEP_SIZE_TOO_SMALL:
      report.termination = "converged: the step vanishes";
      break;
    case Solver::COST_TOO_SMALL:
      report.termination = "converged: an exact fit";
      break;
    case Solver::COST_CHANGE_TOO_SMALL:
      report.termination = "converged: the fit no longer improves";
      break;
    case Solver::HIT_MAX_ITERATIONS:
      report.termination = "stopped after " + std::to_string(report.iterations) + " iterations";
      break;
  }
  if (!std::isfinite(report.cost)) report.termination = "failed: no finite fit";
  return report;
}

}  // namespace ovenwright::heat
