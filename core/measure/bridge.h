#pragma once
#include <array>
#include <optional>
#include <vector>

#include "core/run/run.h"

namespace ovenwright::measure {

/// The lowest and the highest course that a trace may have taken through its bridged gaps: up and down at 1.5 times
/// the steepest slope (windows of 5 s) that it shows elsewhere, at least 3 °C/s, so that both ends are reached. Filled
/// with samples at the log's interval, and one at each turn. Empty where the channel has no trace or no gap.
std::optional<std::array<run::Trace, 2>> extreme_courses(const run::Channel& channel);

}  // namespace ovenwright::measure
