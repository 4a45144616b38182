#pragma once
#include <span>
#include <vector>

#include "core/heat/problem.h"

namespace ovenwright::heat {

/// What a row of a gradient holds: the oven's parameters, the run's entry, then the placement's own. Other placements'
/// own parameters, which reach it only through the board's mean (κ/n of what they do), are left out: with twelve
/// placements that makes a row a quarter as long, and moves no fit or band by an amount that shows.
struct GradientColumns {
  ParameterMap map;
  std::size_t run = 0;
  std::size_t shared() const { return ParameterMap::kOvenCount + 2 * map.zones; }
  std::size_t entry() const { return shared(); }
  std::size_t own(ParameterMap::Placement which) const { return shared() + 1 + which; }
  std::size_t width() const { return shared() + 1 + ParameterMap::kPlacementCount; }
  /// The parameter behind a column of a placement's row.
  std::size_t parameter(std::size_t column, std::size_t placement) const;
};

/// What the model says a run's thermocouples read, at every second of the march.
struct March {
  double start_s = 0;
  std::vector<std::size_t> placements;  ///< of the problem, those of the run's board
  std::size_t steps = 0;                ///< readings at start_s + k, k = 0 … steps
  std::vector<double> reading_C;        ///< [k · placements + j]
  GradientColumns columns;
  std::vector<double> gradient;  ///< d reading / d θ, [(k · placements + j) · width + column]; empty: not asked for
  /// Linear between seconds, held beyond the ends.
  double at(std::size_t j, double time_s) const;
  /// The gradient row at a time, written to `out` (columns.width() numbers).
  void gradient_at(std::size_t j, double time_s, std::span<double> out) const;
};

/// How a run is driven: a recipe and entry on a clock.
struct Drive {
  const oven::Recipe* recipe = nullptr;
  std::size_t board = 0;
  std::size_t run = 0;  ///< whose entry parameter holds
  double start_s = 0, end_s = 0;
  double ambient_C = 25;
  std::span<const double> start_C;  ///< by placement of the problem
};

/// Marches one run from its start temperatures through the oven. Two masses and the reading for each placement:
///   c(T) dT/dt = [(1−ρ) g (A − T) + ρ (R − T_K⁴/(4 T_r³)) + κ (T̄ − T)]/τ + a (U − T),  dU/dt = b (T − U)
///   reading = (1−f) [(1−s) T + s U] + f A,  c(T) = 1 + p (T−150)/100 + (L/7.5) exp(−½ ((T − T_m)/3)²)
/// T_m is 2 K above the liquidus while heating and 9 K below it while cooling; T̄ is the mean over the board.
/// Exponential steps of 1 s with the field at the middle of the step. Derivatives are automatic (dual numbers) within a
/// step and carried forward between steps. Cost: O(steps · placements · width) with the gradient.
March march(const Problem& problem, std::span<const double> theta, const Drive& drive, bool with_gradient);

}  // namespace ovenwright::heat
