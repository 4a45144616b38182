#pragma once
#include <cstddef>
#include <limits>
#include <optional>
#include <vector>

#include "core/measure/level.h"

namespace ovenwright::measure {

/// The least-squares line through the samples of one window.
struct Slope {
  double per_s = 0;        ///< °C/s, its sign as fitted
  std::size_t centre = 0;  ///< the sample that the window is centred on
  std::size_t first = 0, last = 0;
  double squares_s2 = 0;  ///< Σ(t_j − t̄)², for its uncertainty
};

/// The line through samples first to last of a curve, fitted directly.
Slope fitted(const Curve& curve, std::size_t centre, std::size_t first, std::size_t last);

/// Which windows count for a steepest slope.
struct SlopeWindows {
  double over_s = 5;
  Stretch stretch;  ///< centre ± over/2 must lie within, to a tenth of the sample interval
  double lowest_C = -std::numeric_limits<double>::infinity();  ///< of the centre's temperature
  double highest_C = std::numeric_limits<double>::infinity();
  bool fall = false;  ///< look for the steepest downward slope
};

/// The steepest window of at least 3 samples; of equal ones (to 1e-9 °C/s, what the running sums may be off) the first.
/// Empty where there is none. Cost: O(n) for the samples of the stretch that are in range, whatever the window; on an
/// even clock only blocks that may hold the steepest are looked at.
std::optional<Slope> steepest(const Curve& curve, const SlopeWindows& windows);

/// The slope at every sample with windows of 1 s, or of three samples where those hold fewer; NaN where a window does
/// not lie within the log.
std::vector<double> wave_slopes(const Curve& curve);

}  // namespace ovenwright::measure
