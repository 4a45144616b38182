#pragma once
#include <span>
#include <vector>

#include "core/measure/measure.h"
#include "core/oven/oven.h"
#include "core/run/trace.h"

namespace ovenwright::judge {

/// The air along an oven for a recipe, and how much of it each zone's setpoint makes: coarse, from geometry alone.
class AirProfile {
 public:
  AirProfile(const oven::Oven& oven, const oven::Recipe& recipe);
  /// A place on the profile's grid; without a value outside of it, where the air is ambient and no zone has a share.
  struct Spot {
    std::size_t before = 0;
    double beyond = 0;  ///< share of the way to the next grid point
  };
  std::optional<Spot> spot(double position_mm) const;
  /// Air at a spot, °C; the oven's ambient where there is none.
  double air_C(const std::optional<Spot>& spot) const;
  /// Share of a zone's setpoint in the air there, 0 to 1.
  double share(std::size_t zone, const std::optional<Spot>& spot) const;
  std::size_t zones() const { return shares_.size(); }

 private:
  double ambient_C_, from_mm_;
  std::vector<std::vector<double>> shares_;
  std::vector<double> air_C_;
};

/// A trace as a first-order answer to the air that it met.
struct History {
  run::Trace trace;  ///< thinned to some 600 samples, densest in the oven
  double time_constant_s = 0;
  double misfit_C = 0;                        ///< root mean square over the heated zones
  std::vector<std::vector<double>> response;  ///< [zone][sample]: °C for each °C of the zone's setpoint
};

/// Thins the trace, finds the time constant with which the air reproduces the measured rise best, and each zone's
/// response. Empty where the log shows fewer than 10 samples between the mouth and the end of the heated zones, and
/// where the curve does not follow this air at all (misfit above 30 °C: a thermocouple plugged in the wrong way round,
/// another oven or recipe, a wrong entry); common fits are within 1 to 9 °C. Cost: O(samples) + some 40 marches over
/// the thinned trace.
std::optional<History> history_of(const run::Trace& trace, double x_mm, const measure::Place& place,
                                  const AirProfile& air);

}  // namespace ovenwright::judge
