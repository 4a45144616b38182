#pragma once
#include <cstddef>

namespace ovenwright::lot {

/// What a subgroup of n normal values of standard deviation 1 does, and the factors of control charts from it.
struct ChartConstants {
  double c4 = 0;          ///< mean of the standard deviation with n − 1
  double d2 = 0;          ///< mean of the range
  double d3 = 0;          ///< standard deviation of the range
  double A2 = 0, A3 = 0;  ///< limits of means from the mean range, from the mean standard deviation
  double D3 = 0, D4 = 0;  ///< limits of ranges
  double B3 = 0, B4 = 0;  ///< limits of standard deviations
};

/// Computed from the definitions, right to about 1e-9.
/// @param n  2 to 25
/// Cost: about 2 ms.
/// Source: definitions as in ISO 7870-2; d2 and d3 by integration.
ChartConstants chart_constants(std::size_t n);

}  // namespace ovenwright::lot
