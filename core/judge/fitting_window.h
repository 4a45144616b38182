#pragma once
#include <span>
#include <string>

#include "core/board/board.h"
#include "core/run/run.h"
#include "core/window/window.h"

namespace ovenwright::judge {

/// Whether no peak of a run comes within 10 °C of the window's peak limits: then fitting_window() looks further. It lets
/// a caller read the other windows only where they are needed.
bool far_off(const run::Run& run, const board::Board* board, const window::ProcessWindow& assumed);

/// Another window for a run that was judged against an assumed one: where no peak comes within 10 °C of the assumed
/// window's peak limits, and all peaks come within 10 °C of another's, that other's name; of several the one whose
/// middle is nearest to the mean peak. Empty where the assumed one is plausible, or none fits.
///
/// Peak limits are those of the first requirement on the peak of joints with two numbers; a window without one, or of
/// another process, never fits. Air is left out.
std::string fitting_window(const run::Run& run, const board::Board* board, const window::ProcessWindow& assumed,
                           std::span<const window::ProcessWindow> others);

}  // namespace ovenwright::judge
