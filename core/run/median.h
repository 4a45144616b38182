#pragma once
#include <span>

namespace ovenwright::run {

/// The median; of an even count the mean of the middle two.
/// @param values  no NaN among them; scratch, in no order afterwards and some of them gone
/// @return 0 where there are none
/// Cost: O(n), no allocation; from 20 000 values on two passes and the selection among some eighth of them.
double median(std::span<double> values);

/// The median of the differences between neighbours, as median() gives it.
/// @param values  no NaN among them
/// @return 0 where there are fewer than two
/// Cost: O(n); from 20 000 differences on only those near the middle are kept.
double median_difference(std::span<const double> values);

}  // namespace ovenwright::run
