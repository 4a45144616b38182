#pragma once
#include <optional>
#include <vector>

#include "core/board/board.h"
#include "core/judge/decide.h"
#include "core/judge/judgement.h"
#include "core/measure/measure.h"
#include "core/run/run.h"

namespace ovenwright::judge {

/// Judges one run against one or several windows together: each window with its own liquidus, uncertainty and decision
/// rule. Never fails: what cannot be judged is undetermined and says why. Zones are found where `place` is given.
/// Cost: that of measure::evaluate for each trace and uncertainty, and for results outside once for each zone on a
/// thinned trace.
Judgement judge(const run::Run& run, std::vector<window::ProcessWindow> windows, bool window_assumed,
                const board::Board* board, const std::optional<measure::Place>& place);

}  // namespace ovenwright::judge
