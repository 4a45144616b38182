#pragma once
#include <cstddef>
#include <span>
#include <vector>

#include "core/clean/track.h"
#include "core/run/run.h"

namespace ovenwright::clean {

/// Where a log with several passes through the oven is cut, on the log's clock. A pass takes the mean of the tracks
/// above half of its range; between two of them it falls to the lowest 15 % (at least 10 °C above the lowest) and stays
/// there for 10 s or more: back to ambient. The cut is in the longest interval without rows in that time, if it is
/// a clock gap, else between the rows where all traces jump at once, else in the middle. Empty where there is one pass.
/// A mean that spans less than 40 °C shows no passes.
/// @param tracks  bad readings taken out
/// Cost: one look at a row every 2 s.
std::vector<double> cuts_between_passes(std::span<const Track> tracks);

/// The rows at which a log on one clock is cut because its clock starts again there (rows.h: restarts) with the traces
/// back to ambient and a pass on either side; without a pass on both sides it is a clock that was set back, no new run.
/// The first row of each part, so {0} where there is one.
std::vector<std::size_t> parts_by_clock(std::span<const run::RawChannel> channels);

}  // namespace ovenwright::clean
