#pragma once
#include <span>

namespace ovenwright::run {

/// The smallest step between neighbouring samples, °C: what one digit of the log is worth. Steps below 1e-9 °C are the
/// arithmetic of a unit's conversion, not steps. 0 where no sample differs from its neighbour. Cost: O(n).
double resolution_C(std::span<const double> temperature_C);

/// Standard deviation of the noise of one thermocouple's samples, °C, as the uncertainty of every measure and the
/// search for spikes take it: 1.4826 times the median of |T_i − line through both neighbours| / √(1 + b² + (1 − b)²),
/// b = (t_i − t_i−1)/(t_i+1 − t_i−1), so that white noise of any spacing gives its own deviation and a straight or
/// gently bent curve gives 0. At least q/√12, the deviation of rounding, with q the resolution.
/// @param time_s         strictly increasing
/// @param temperature_C  same length, finite
/// @return >= 0; q/√12 alone with fewer than 3 samples, 0 where no sample differs from its neighbour
/// Cost: O(n), one scratch array of n − 2 numbers.
/// Source: 1.4826 = 1/Φ⁻¹(3/4), the median absolute deviation of a normal distribution; √12: JCGM 100:2008, F.2.2.1.
double noise_C(std::span<const double> time_s, std::span<const double> temperature_C);

}  // namespace ovenwright::run
