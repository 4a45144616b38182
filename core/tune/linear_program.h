#pragma once
#include <limits>
#include <vector>

namespace ovenwright::tune {

inline constexpr double kFree = std::numeric_limits<double>::infinity();

/// minimise cost · x with lower ≤ x ≤ upper and row.lower ≤ row.weights · x ≤ row.upper.
struct LinearProgram {
  struct Row {
    std::vector<double> weights;  ///< one for each variable
    double lower = -kFree, upper = kFree;
  };
  std::vector<double> cost, lower, upper;
  std::vector<Row> rows;
};

struct LinearSolution {
  bool optimal = false;
  double cost = 0;
  std::vector<double> x;
  std::vector<double> dual;  ///< of the rows: d cost / d bound; 0 where a row does not bind
};

/// Simplex of GLPK: exact bounds and duals. Cost: small dense problems of some 20 variables and 100 rows take under 1
/// ms. Not thread-safe across threads of one call; different threads may call it (GLPK's environment is per thread).
LinearSolution solve(const LinearProgram& program);

}  // namespace ovenwright::tune
