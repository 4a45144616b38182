#pragma once
#include <cstddef>
#include <span>
#include <vector>

#include "core/run/trace.h"

namespace ovenwright::run {

/// Means of a trace's polyline over `count` steps that follow each other from a time on: exact, so noise of fast
/// samples averages out and slow ones are interpolated.
/// @param from_s   not before the trace's first sample; from_s + count · step_s not after its last
/// @param step_s   > 0
/// Cost: O(samples covered + count).
std::vector<double> means_over(const Trace& trace, double from_s, double step_s, std::size_t count);

/// The same of several traces on one clock, which is then looked at once for all.
std::vector<std::vector<double>> means_over(std::span<const Trace* const> traces, double from_s, double step_s,
                                            std::size_t count);

}  // namespace ovenwright::run
