#pragma once
#include <optional>
#include <string>
#include <vector>

#include "core/oven/oven.h"
#include "core/tune/linear_program.h"

namespace ovenwright::tune {

/// What may be moved.
struct Freedom {
  bool keep_speed = false;
  double min_speed_mm_per_min = 0;
  std::vector<std::string> locked_zones;
  bool split_sides = false;
  /// How far setpoints and, as a fraction, the speed may be from the present recipe; unset: as far as the oven goes.
  std::optional<double> reach_C = {}, reach_speed = {};
};

/// Recipes as vectors: heating zones (top and bottom together, or one after the other where split), then the speed in
/// units of kSpeedUnit so that 1 is a like step in each direction. Cooling setpoints stay as they are.
class RecipeSpace {
 public:
  static constexpr double kSpeedUnit_mm_per_min = 3;

  RecipeSpace(const oven::Oven& oven, const oven::Recipe& now, const Freedom& freedom);
  std::size_t size() const { return lower_.size(); }
  std::size_t speed() const { return size() - 1; }
  std::size_t zones() const { return zones_; }  ///< heating zones: variables of one side
  std::vector<double> vector(const oven::Recipe& recipe) const;
  oven::Recipe recipe(const std::vector<double>& x) const;
  /// The nearest whole °C and mm/min within the bounds, mended where rounding broke a limit between zones.
  std::vector<double> rounded(std::vector<double> x) const;
  const std::vector<double>& lower() const { return lower_; }
  const std::vector<double>& upper() const { return upper_; }
  /// The oven's limits between zones and between sides.
  const std::vector<LinearProgram::Row>& rows() const { return rows_; }
  /// Heating zones that follow each other, as variables: on each side where the sides are split.
  struct Neighbours {
    std::size_t before, after;
    bool last;  ///< `after` is the last heating zone
  };
  const std::vector<Neighbours>& neighbours() const { return neighbours_; }
  /// Whether every bound and row holds, to 1e-6.
  bool allows(const std::vector<double>& x) const;

 private:
  oven::Recipe now_;
  bool split_;
  std::size_t zones_;
  std::vector<double> lower_, upper_;
  std::vector<LinearProgram::Row> rows_;
  std::vector<Neighbours> neighbours_;
};

}  // namespace ovenwright::tune
