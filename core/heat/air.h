#pragma once
#include <span>
#include <vector>

#include "core/oven/oven.h"

namespace ovenwright::heat {

/// What the air along the oven depends on, beside geometry and setpoints.
struct AirParameters {
  double ln_mixing_upstream_mm = 0, ln_mixing_downstream_mm = 0, ln_tunnel_supply = 0;
  double exchange_slope = 0, ln_exchange_cooling = 0, ln_exchange_tunnel = 0;
  std::vector<double> zone_offset_C, zone_ln_exchange;  ///< one for each zone, cooling zones included
};

/// Setpoints of one recipe as the air sees them: one number for each zone, cooling zones included.
struct ZoneSetpoints {
  std::vector<double> mean_C;        ///< of top and bottom
  std::vector<double> difference_C;  ///< top minus bottom
};
/// A cooling zone without a setpoint counts as 50 °C (common practice, no source: forced ambient air warmed by the
/// board).
ZoneSetpoints zone_setpoints(const oven::Oven& oven, const oven::Recipe& recipe);

/// Air, exchange and panels on a grid along the oven, with their derivatives: columns for the parameters.
///
/// Air A solves D A'' − u A' + β (Σ − A) = 0 with D = l_up·l_dn, u = l_dn − l_up: supply air enters zone by zone at the
/// setpoint plus the zone's offset and is carried along and mixed over the two lengths. Linear in setpoints.
/// Exchange g is relative to the oven's middle. Panels R: the surfaces a placement sees, as the temperature whose
/// linearised radiation at 200 °C equals theirs (T⁴/(4·T_r³), T_r = 473.15 K).
class AirField {
 public:
  static constexpr double kStep_mm = 5;
  static constexpr double kMargin_mm = 600;  ///< grid beyond both mouths

  /// The gradients are there only where asked for.
  AirField(const oven::Oven& oven, const ZoneSetpoints& setpoints, double ambient_C, const AirParameters& parameters,
           bool with_gradient);

  struct Sample {
    double air_C, air_slope, difference_C, difference_slope, exchange, exchange_slope, panel_K, panel_slope;
    std::size_t index;  ///< grid point below
    double share;       ///< of the grid point above
  };
  /// Values at a position from the mouth, linear between grid points; slopes per mm. Beyond the grid its end values.
  Sample at(double position_mm) const;

  /// dA/d(ln l_up, ln l_dn, ln β_t, o_0 … o_{n−1}) at a sample, written to `out` (3 + zones numbers).
  void air_gradient(const Sample& sample, std::span<double> out) const;
  /// d(difference)/d(the same), without offsets: 3 numbers.
  void difference_gradient(const Sample& sample, std::span<double> out) const;
  /// dg/d(m, γ_c, γ_t, γ_0 … γ_{n−1}) at a sample (3 + zones numbers).
  void exchange_gradient(const Sample& sample, std::span<double> out) const;

 private:
  double at_(const std::vector<double>& grid, const Sample& sample) const;
  void gradient_(const std::vector<double>& columns, std::size_t width, const Sample& sample,
                 std::span<double> out) const;
  std::size_t n_ = 0, zones_ = 0;
  std::vector<double> air_, difference_, exchange_, panel_;
  std::vector<double> air_columns_, difference_columns_, exchange_columns_;  // row by grid point
};

}  // namespace ovenwright::heat
