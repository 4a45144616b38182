#pragma once
#include <vector>

#include "core/log/reading.h"
#include "core/log/time_plan.h"

namespace ovenwright::log {

/// Times of a counter that starts anew, of 15, 16, 24 or 32 bits in its own unit or in milliseconds or microseconds, or
/// of the seconds of a day, an hour or a minute: what was lost is added, and said in `assumed`. Only where every step
/// back is one from the counter's end to its start, as wide as the other steps; a minute or an hour must end three
/// times, or a run of just that length would look the same. Other times stay as they are.
/// @param times  as they came from the rows, in the plan's unit
void unwrap_counter(std::vector<double>& times, const TimePlan& plan, std::vector<Assumption>& assumed);

}  // namespace ovenwright::log
