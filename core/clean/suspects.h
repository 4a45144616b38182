#pragma once
#include "core/board/board.h"
#include "core/run/run.h"

namespace ovenwright::clean {

/// Flags a trace that shows the same digits for 20 s or more while another trace moves by 10 °C in that time. A trace
/// of coarse digits may do so honestly: not flagged where it comes to rest and leaves again by no more than one digit a
/// sample and what a bend of 0.5 °C/s² makes of it, nor where it stands within 5 °C of where it began, having been hot.
/// Cost: one look at every few samples where nothing stands still.
void flag_stuck(run::Run& run);

/// Flags a trace that falls as the others rise: over the samples from the others' start to their peak its temperature
/// goes against theirs, or for 10 s or more it lies 10 °C below its start while the others lie 30 °C above theirs.
/// A trace alone is flagged where it only falls, by more than 40 °C and below −15 °C.
/// Cost: O(number of traces) at no more than some thousand moments.
void flag_reversed_polarity(run::Run& run);

/// Flags, on every trace, moments at which all traces (two or more) step alike within two samples: by a median of 1.5
/// °C or more, at least six times the noise, twice what the change of slope there makes and 0.5 °C/s² · h², each the
/// same way by more than three times its noise and within a quarter, or six times its noise, of the median. A spike
/// that comes back is no step. Cost: one pass over one trace.
void flag_cold_junction_steps(run::Run& run);

}  // namespace ovenwright::clean
