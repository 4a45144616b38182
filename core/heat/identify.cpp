#include "core/heat/identify.h"

#include <Eigen/Cholesky>
#include <algorithm>
#include <cmath>

#include "core/heat/model.h"
#include "core/heat/weigh.h"

namespace ovenwright::heat {
namespace {

constexpr double kCorrelation = 0.95, kMisfit_C = 1.5;
constexpr double kLeastLatent_K = -4;
// Where solder melts a fit can creep on for long. Residuals are in standard deviations: a sum of squares that falls by
// less than kSettled in kMoreIterations says nothing about the parameters.
constexpr double kSettled = 0.5;
constexpr int kMoreIterations = 5;
constexpr double kNotDetermined = 0.9;  // of the prior spread left
constexpr double kOrdinary = 20;        // of ovens as the priors have them, see strangeness()

/// The whitened residuals and the priors as a least-squares problem in units of the priors' standard deviations, in its
/// condensed form: JᵀJ and Jᵀr are gathered placement by placement (a row has few columns that are not zero), and their
/// triangular factor L with L Lᵀ = JᵀJ stands in for the tall Jacobian: J' = Lᵀ, r' = L⁻¹ Jᵀ r, and a last row that
/// keeps the sum of squares.
class Misfit {
 public:
  explicit Misfit(const Problem& problem) : problem_(problem), priors_(priors(problem)) {
    for (const auto& run : problem.runs)
      for (const auto& placement : run.mean_C)
        rows_ += static_cast<std::size_t>(std::ranges::count_if(placement, [](double x) { return std::isfinite(x); }));
  }
  std::size_t parameters() const { return priors_.size(); }
  std::size_t residuals() const { return priors_.size() + 1; }
  const std::vector<Prior>& prior() const { return priors_; }
  std::size_t data_rows() const { return rows_; }

  std::vector<double> theta(const double* z) const {
    std::vector<double> out(priors_.size());
    for (std::size_t i = 0; i < out.size(); ++i) out[i] = priors_[i].mean + priors_[i].sd * std::clamp(z[i], -6.0, 6.0);
    // Far below none the heat of melting would make a heat capacity negative, and the march explode.
    const ParameterMap map = problem_.map();
    for (std::size_t j = 0; j < map.placements; ++j) {
      double& latent_K = out[map.placement(j, ParameterMap::kLatent)];
      latent_K = std::max(latent_K, kLeastLatent_K);
    }
    return out;
  }

  void operator()(const double* z, double* residual, double* jacobian) const {
    const auto P = static_cast<Eigen::Index>(priors_.size());
    const Eigen::Map<const Eigen::VectorXd> own(z, P);
    Eigen::Map<Eigen::VectorXd> out(residual, P + 1);
    const auto parameters = theta(z);
    double squares = own.squaredNorm();
    Eigen::MatrixXd information;
    Eigen::VectorXd gradient;
    if (jacobian) {
      information = Eigen::MatrixXd::Identity(P, P);
      gradient = own;
    }
    for (std::size_t r = 0; r < problem_.runs.size(); ++r) {
      const auto& run = problem_.runs[r];
      const March result =
          march(problem_, parameters, {&run.recipe, run.board, r, run.start_s, run.end_s, run.ambient_C, run.start_C},
                jacobian != nullptr);
      for (std::size_t k = 0; k < result.placements.size(); ++k)
        squares += add(run, result, k, jacobian ? &information : nullptr, gradient);
    }
    out.setZero();
    if (!jacobian) {
      out[0] = std::sqrt(squares);
      return;
    }
    const Eigen::LLT<Eigen::MatrixXd> factor(information);
    Eigen::Map<Eigen::MatrixXd> condensed(jacobian, P + 1, P);
    condensed.topRows(P) = factor.matrixU();
    condensed.row(P).setZero();
    out.head(P) = factor.matrixL().solve(gradient);
    out[P] = std::sqrt(std::max(0.0, squares - out.head(P).squaredNorm()));
  }

 private:
  using Rows = Eigen::Matrix<double, Eigen::Dynamic, Eigen::Dynamic, Eigen::RowMajor>;

  /// One placement's whitened residuals: adds to JᵀJ and Jᵀr where they are wanted, returns the sum of squares.
  double add(const ModelRun& run, const March& result, std::size_t k, Eigen::MatrixXd* information,
             Eigen::VectorXd& gradient) const {
    const std::size_t j = result.placements[k];
    const auto& data = run.mean_C[j];
    const auto W = static_cast<Eigen::Index>(result.columns.width());
    const double white = 1 / (kMisfit_C * std::sqrt(1 - kCorrelation * kCorrelation));
    Rows rows(information ? static_cast<Eigen::Index>(data.size()) : 0, W);
    Eigen::VectorXd residuals(static_cast<Eigen::Index>(data.size()));
    Eigen::RowVectorXd before(W), here(W);
    Eigen::Index row = 0;
    bool follows = false;
    double last = 0;
    for (std::size_t i = 0; i < data.size(); ++i) {
      if (!std::isfinite(data[i])) {
        follows = false;
        continue;
      }
      const double time_s = run.start_s + kBin_s * (static_cast<double>(i) + 0.5);
      const double error = data[i] - result.at(k, time_s);
      residuals[row] = follows ? (error - kCorrelation * last) * white : error / kMisfit_C;
      if (information) {
        result.gradient_at(k, time_s, {here.data(), static_cast<std::size_t>(W)});
        if (follows)
          rows.row(row) = (here - kCorrelation * before) * white;
        else
          rows.row(row) = here / kMisfit_C;
        before.swap(here);
      }
      last = error;
      follows = true;
      ++row;
    }
    residuals.conservativeResize(row);
    if (!information) return residuals.squaredNorm();
    Eigen::MatrixXd square = Eigen::MatrixXd::Zero(W, W);
    square.selfadjointView<Eigen::Lower>().rankUpdate(rows.topRows(row).transpose());
    const Eigen::VectorXd slope = rows.topRows(row).transpose() * residuals;
    for (Eigen::Index a = 0; a < W; ++a) {
      const std::size_t p = result.columns.parameter(static_cast<std::size_t>(a), j);
      const auto at = static_cast<Eigen::Index>(p);
      gradient[at] -= priors_[p].sd * slope[a];
      for (Eigen::Index b = 0; b <= a; ++b) {
        const std::size_t q = result.columns.parameter(static_cast<std::size_t>(b), j);
        const double value = priors_[p].sd * priors_[q].sd * square(a, b);
        (*information)(at, static_cast<Eigen::Index>(q)) += value;
        if (a != b) (*information)(static_cast<Eigen::Index>(q), at) += value;
      }
    }
    return residuals.squaredNorm();
  }

  const Problem& problem_;
  std::vector<Prior> priors_;
  std::size_t rows_ = 0;
};

std::vector<double> inverse(const std::vector<double>& information, std::size_t size) {
  const auto P = static_cast<Eigen::Index>(size);
  const Eigen::Map<const Eigen::MatrixXd> matrix(information.data(), P, P);
  const Eigen::MatrixXd out = matrix.llt().solve(Eigen::MatrixXd::Identity(P, P));
  return {out.data(), out.data() + out.size()};
}

/// The pulls' mean square by the evidence framework: Σz² over γ = Σ(1 − posterior variance), the number of parameters
/// that the data determine (MacKay, Bayesian interpolation, Neural Computation 4 (1992), from memory), with kOrdinary
/// pulls of mean square 1 counted in, so that little data says little.
double strangeness(const std::vector<double>& z, const std::vector<double>& covariance) {
  double pulls = kOrdinary, determined = kOrdinary;
  for (std::size_t p = 0; p < z.size(); ++p) {
    pulls += z[p] * z[p];
    determined += 1 - covariance[p * z.size() + p];
  }
  return pulls / determined;
}

}  // namespace

Result<HeatModel> identify(Problem problem, const std::function<bool(double)>& progress, int most_iterations) {
  HeatModel out;
  out.problem = std::move(problem);
  const Misfit misfit(out.problem);
  if (misfit.data_rows() < 30)
    return Error{ErrorCode::kUndetermined, "no thermocouple has enough readings to learn from", {}, {}, {}};
  if (progress && !progress(0)) return Error{ErrorCode::kCancelled, "stopped", {}, {}, {}};

  const std::size_t P = misfit.parameters();
  const LeastSquaresProblem least_squares{
      misfit.residuals(), P,
      [&misfit](const double* z, double* residual, double* jacobian) { misfit(z, residual, jacobian); }};
  LeastSquaresReport fit = minimise(least_squares, std::vector<double>(P, 0.0), {.most_iterations = most_iterations});
  if (!fit.converged && std::isfinite(fit.cost) && most_iterations == LeastSquaresOptions{}.most_iterations) {
    auto further = minimise(least_squares, fit.x, {.most_iterations = kMoreIterations});
    further.iterations += fit.iterations;
    if (2 * (fit.cost - further.cost) < kSettled)
      further.termination = "converged: the fit no longer improves by what counts";
    else if (!further.converged)
      further.termination = "stopped after " + std::to_string(further.iterations) + " iterations";
    fit = std::move(further);
  }
  out.theta = misfit.theta(fit.x.data());
  out.covariance = inverse(fit.information, P);
  out.strangeness = strangeness(fit.x, out.covariance);
  for (std::size_t p = 0; p < P; ++p) {
    const Prior& prior = misfit.prior()[p];
    out.sd.push_back(prior.sd);
    if (prior.sd > 0 && std::sqrt(out.covariance[p * P + p]) > kNotDetermined)
      out.report.not_determined.push_back(prior.name);
  }

  double sum = 0;
  std::size_t count = 0;
  std::vector<double> square(out.problem.placements.size()), most(square.size());
  std::vector<std::size_t> n(square.size());
  for (std::size_t r = 0; r < out.problem.runs.size(); ++r) {
    const auto& run = out.problem.runs[r];
    const March result = march(out.problem, out.theta,
                               {&run.recipe, run.board, r, run.start_s, run.end_s, run.ambient_C, run.start_C}, false);
    for (std::size_t k = 0; k < result.placements.size(); ++k) {
      const std::size_t j = result.placements[k];
      for (std::size_t i = 0; i < run.mean_C[j].size(); ++i) {
        const double error = run.mean_C[j][i] - result.at(k, run.start_s + kBin_s * (static_cast<double>(i) + 0.5));
        if (!std::isfinite(error)) continue;
        square[j] += error * error;
        most[j] = std::max(most[j], std::abs(error));
        ++n[j];
      }
    }
  }
  for (std::size_t j = 0; j < square.size(); ++j) {
    out.report.placements.push_back(
        {out.problem.placements[j].name, n[j] ? std::sqrt(square[j] / static_cast<double>(n[j])) : 0, most[j]});
    sum += square[j];
    count += n[j];
  }
  out.report.rmse_C = std::sqrt(sum / static_cast<double>(count));
  std::vector<double> at_best(misfit.residuals());
  misfit(fit.x.data(), at_best.data(), nullptr);
  out.report.cost = at_best.front() * at_best.front() / 2;
  out.report.iterations = fit.iterations;
  out.report.termination = fit.termination;
  weigh(out);
  return out;
}

HeatModel expected_after(const HeatModel& model, std::size_t like, const oven::Recipe& recipe) {
  HeatModel out = model;
  const ParameterMap map = model.problem.map();
  const double entry_s = model.theta[map.entry(like)];
  ModelRun run = model.problem.runs[like];
  run.end_s = entry_s + (run.end_s - entry_s) * run.recipe.speed_mm_per_min / recipe.speed_mm_per_min;
  run.recipe = recipe;
  run.entry.at_s = entry_s;
  const auto bins = static_cast<std::size_t>(std::max(0.0, (run.end_s - run.start_s) / kBin_s));
  for (auto& data : run.mean_C)
    if (!data.empty()) data.assign(bins, 0.0);
  out.problem.runs.push_back(std::move(run));
  out.theta.insert(out.theta.begin() + static_cast<std::ptrdiff_t>(map.entry(map.runs)), entry_s);
  // Its readings are what the model says they will be: they tell what melts.
  auto& added = out.problem.runs.back();
  const March expected = march(out.problem, out.theta,
                               {&added.recipe, added.board, out.problem.runs.size() - 1, added.start_s, added.end_s,
                                added.ambient_C, added.start_C},
                               false);
  for (std::size_t k = 0; k < expected.placements.size(); ++k) {
    auto& data = added.mean_C[expected.placements[k]];
    for (std::size_t i = 0; i < data.size(); ++i)
      data[i] = expected.at(k, added.start_s + kBin_s * (static_cast<double>(i) + 0.5));
  }

  const Misfit misfit(out.problem);
  const std::size_t P = misfit.parameters();
  std::vector<double> z(P), residual(P + 1), jacobian(P * (P + 1));
  out.sd.clear();
  for (std::size_t p = 0; p < P; ++p) {
    const Prior& prior = misfit.prior()[p];
    out.sd.push_back(prior.sd);
    z[p] = prior.sd > 0 ? (out.theta[p] - prior.mean) / prior.sd : 0;
  }
  misfit(z.data(), residual.data(), jacobian.data());
  const Eigen::Map<const Eigen::MatrixXd> condensed(jacobian.data(), static_cast<Eigen::Index>(P + 1),
                                                    static_cast<Eigen::Index>(P));
  const Eigen::MatrixXd information = condensed.transpose() * condensed;
  out.covariance = inverse({information.data(), information.data() + information.size()}, P);
  return out;
}

}  // namespace ovenwright::heat
