#pragma once
#include <string>

#include "core/run/run.h"
#include "core/window/window.h"

namespace ovenwright::check {

/// The name of a shipped reflow window that fits a run better than the one that was assumed for it: every trace peaks
/// more than 10 °C outside the assumed window's peak limits, and every trace peaks inside the other's. Of several that
/// fit, the one whose limits' middle is nearest to the peaks' middle, then the first by stem. Empty where the assumed
/// one may be right, or none fits. The other windows are read only where the peaks lie that far off.
std::string better_window(const run::Run& run, const window::ProcessWindow& assumed);

}  // namespace ovenwright::check
