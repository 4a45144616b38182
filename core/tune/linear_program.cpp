#include "core/tune/linear_program.h"

#include <glpk.h>

#include <cmath>
#include <memory>

namespace ovenwright::tune {
namespace {

int bound_kind(double lower, double upper) {
  if (lower == upper) return GLP_FX;
  if (std::isfinite(lower)) return std::isfinite(upper) ? GLP_DB : GLP_LO;
  return std::isfinite(upper) ? GLP_UP : GLP_FR;
}

/// GLPK keeps an environment for each thread, and gives it back only when told to.
struct Environment {
  ~Environment() { glp_free_env(); }
};

}  // namespace

LinearSolution solve(const LinearProgram& program) {
  [[maybe_unused]] thread_local const Environment environment{};
  const auto free_problem = [](glp_prob* p) { glp_delete_prob(p); };
  const std::unique_ptr<glp_prob, decltype(free_problem)> problem(glp_create_prob(), free_problem);
  glp_prob* lp = problem.get();
  const int columns = static_cast<int>(program.cost.size()), rows = static_cast<int>(program.rows.size());
  glp_set_obj_dir(lp, GLP_MIN);
  glp_add_cols(lp, columns);
  for (int j = 1; j <= columns; ++j) {
    const auto i = static_cast<std::size_t>(j - 1);
    glp_set_col_bnds(lp, j, bound_kind(program.lower[i], program.upper[i]), program.lower[i], program.upper[i]);
    glp_set_obj_coef(lp, j, program.cost[i]);
  }
  if (rows > 0) glp_add_rows(lp, rows);
  std::vector<int> index(program.cost.size() + 1);
  std::vector<double> weight(program.cost.size() + 1);
  for (int r = 1; r <= rows; ++r) {
    const auto& row = program.rows[static_cast<std::size_t>(r - 1)];
    glp_set_row_bnds(lp, r, bound_kind(row.lower, row.upper), row.lower, row.upper);
    int n = 0;
    for (std::size_t i = 0; i < row.weights.size(); ++i)
      if (row.weights[i] != 0) {
        ++n;
        index[static_cast<std::size_t>(n)] = static_cast<int>(i + 1);
        weight[static_cast<std::size_t>(n)] = row.weights[i];
      }
    glp_set_mat_row(lp, r, n, index.data(), weight.data());
  }
  glp_smcp options;
  glp_init_smcp(&options);
  options.msg_lev = GLP_MSG_OFF;
  options.it_lim = 2000;
  LinearSolution out;
  if (glp_simplex(lp, &options) != 0 || glp_get_status(lp) != GLP_OPT) return out;
  out.optimal = true;
  out.cost = glp_get_obj_val(lp);
  for (int j = 1; j <= columns; ++j) out.x.push_back(glp_get_col_prim(lp, j));
  for (int r = 1; r <= rows; ++r) out.dual.push_back(glp_get_row_dual(lp, r));
  return out;
}

}  // namespace ovenwright::tune
