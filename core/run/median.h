#pragma once
#include <span>

namespace ovenwright::run {

/// The median; of an even count the mean of the middle two. Reorders `values`.
/// @param values  no NaN among them
/// @return 0 where there are none
/// Cost: O(n) on average, no allocation.
double median(std::span<double> values);

}  // namespace ovenwright::run
