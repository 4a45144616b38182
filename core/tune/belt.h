#pragma once
#include <optional>

#include "core/heat/identify.h"

namespace ovenwright::tune {

/// What the curves say about the belt, against the recipes' speeds and the oven's geometry.
struct BeltError {
  double faster = 0;  ///< of the speed: 0.05 where zones are passed as if the belt were 5 % faster
  double uncertainty =
      0;  ///< half width, 95 %, with 1 % (one standard deviation) for belts and zones as they are built
  bool named() const { return faster > 2 * uncertainty || -faster > 2 * uncertainty; }
};

/// Fits the model anew with all speeds a little higher and lower, and looks where the misfit would be least; an entry
/// that was found moves along, so that the first zone stays where the curves show it. A belt that is slower and zones
/// that are longer look the same.
/// Empty where the misfit shows no least value within −30 and +40 %, or where the fit there is not usable either. Cost:
/// four to ten fits, the first four on two threads.
std::optional<BeltError> belt_error(const heat::HeatModel& model);

}  // namespace ovenwright::tune
