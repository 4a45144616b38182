#pragma once
#include <span>
#include <vector>

#include "core/judge/history.h"
#include "core/judge/judgement.h"
#include "core/measure/measure.h"

namespace ovenwright::judge {

/// Which zones results hang on, by the thermal history of their placements.
///
/// First estimate, from the run alone. The placement is one mass that follows the air with a time constant τ,
/// dT/dt = (A − T)/τ; the air A is the recipe's setpoints along the oven (mean of top and bottom, half of each
/// neighbour in a gap, mixed over some 35 mm; ambient outside), and τ is the one that reproduces the measured curve
/// best. Then a zone set 1 °C hotter warms the placement by g(t), its share of A seen through the same τ: nothing
/// before the placement meets the zone, and less and less after it has left. The trace is moved by a little of that and
/// measured again, so each measure weighs its own history: a slope its window and the memory before it, a time above
/// the zones that set both crossings, a spread the zones that tell the traces apart. Shares are the absolute changes,
/// sum 1. Where no change shows (a count; a level that is never reached) the zones that warm the trace at its peak
/// stand in.
///
/// Sides cannot be told apart, so `side` is absent. Empty where the trace was never in the oven while it was logged.
class ZoneEstimate {
 public:
  /// @param place  kept by reference; its oven and recipe are there
  explicit ZoneEstimate(const measure::Place& place) : place_(place), air_(*place.oven, *place.recipe) {}

  /// @param definitions  sound, no board measures
  /// Cost: one measure::evaluate of values alone on at most some 600 samples for each zone. Thread-safe.
  std::vector<std::vector<ZoneShare>> of_trace(const measure::Subject& subject,
                                               std::span<const measure::Definition> definitions) const;

  /// The same for board measures, all traces moved together, each by its own history.
  std::vector<std::vector<ZoneShare>> of_board(std::span<const measure::Subject> subjects,
                                               std::span<const measure::Definition> definitions) const;

 private:
  const measure::Place& place_;
  AirProfile air_;
};

}  // namespace ovenwright::judge
