#pragma once
#include <optional>
#include <vector>

#include "core/heat/identify.h"

namespace ovenwright::heat {

/// A predicted trace on the log's clock.
struct PredictedTrace {
  std::string name;
  std::vector<double> time_s, temperature_C;
  std::vector<double> band_C;  ///< half width, 95 %; empty where not asked for
};

/// The measured run plus the model's change: M(new) + (measured − M(first)) at the same place of the board in the oven.
/// `measured`: by placement of the problem, null where the run has none. Entry is the fitted one of the run.
std::vector<PredictedTrace> predict(const HeatModel& model, std::size_t run,
                                    const std::vector<const run::Trace*>& measured, const oven::Recipe& recipe,
                                    bool with_band);

}  // namespace ovenwright::heat
