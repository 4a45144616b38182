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
/// @param threads  for measuring; 1 where many logs are judged side by side
/// Cost: that of measure::evaluate_all() for each set of uncertainties that the windows state, and for results outside
/// once more for each zone, values only, on thinned traces.
Judgement judge(const run::Run& run, std::vector<window::ProcessWindow> windows, bool window_assumed,
                const board::Board* board, const std::optional<measure::Place>& place, unsigned threads = 1);

/// What judge() measures, without what only people need: values, margins and the smallest margin by the same code; no
/// uncertainties, zones, risks or sentence, and verdicts by the simple rule. For searches over predicted runs.
Judgement values(const run::Run& run, std::vector<window::ProcessWindow> windows, const board::Board* board,
                 const std::optional<measure::Place>& place);

}  // namespace ovenwright::judge
