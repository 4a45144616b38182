#pragma once
#include <optional>
#include <string>
#include <vector>

#include "core/heat/parameters.h"
#include "core/oven/oven.h"
#include "core/run/run.h"

namespace ovenwright::heat {

/// One thermocouple as the model knows it.
struct ModelPlacement {
  std::string name;            ///< the channel's
  std::optional<double> x_mm;  ///< behind the leading edge; unknown: found with the rest
  std::size_t board = 0;       ///< placements of one board are coupled
};

/// One measured run, thinned to what the fit needs.
struct ModelRun {
  oven::Recipe recipe;
  std::size_t board = 0;
  double start_s = 0, end_s = 0;  ///< of the log
  double ambient_C = 25;
  oven::Entry entry;
  bool entry_given = false;
  bool imagined = false;        ///< has not run: a prediction stands on the model alone
  std::vector<double> start_C;  ///< by placement of the problem; NaN for placements of other boards
  std::vector<std::vector<double>>
      mean_C;  ///< by placement: means over bins of kBin_s from start_s; NaN where there is none
};

inline constexpr double kBin_s = 2;

struct Problem {
  oven::Oven oven;
  double liquidus_C = 217;
  std::vector<ModelPlacement> placements;
  std::vector<ModelRun> runs;
  ParameterMap map() const { return {oven.zones.size(), runs.size(), placements.size()}; }
};

/// Whether a placement got hot enough in some run to show how it melts.
bool has_melted(const Problem& problem, std::size_t placement);

/// The priors of the structure, in the order of the map: textbook ranges and the spread of many simulated ovens
/// (docs/heat_model.md).
std::vector<Prior> priors(const Problem& problem);

}  // namespace ovenwright::heat
