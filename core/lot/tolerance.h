#pragma once
#include <cstddef>

namespace ovenwright::lot {

/// The factor k by which mean ± k·s holds at least the share `coverage` of a normal population with the confidence,
/// mean and s being those of n values.
///
/// Exact: the integral over the sample mean of the χ² probability that s is large enough, solved for k; not the
/// approximation of the e-Handbook. Relative error below 1e-9.
/// @param n  >= 2
/// @param coverage, confidence  above 0 and below 1
/// Cost: about 0.2 ms. Thread-safe.
/// Source: the definition of ISO 16269-6, two-sided, both parameters unknown.
double tolerance_factor(std::size_t n, double coverage, double confidence);

}  // namespace ovenwright::lot
