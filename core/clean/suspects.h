#pragma once
#include "core/board/board.h"
#include "core/clean/pass_means.h"
#include "core/run/run.h"

namespace ovenwright::clean {

/// Flags a trace that shows the same digits for 20 s or more while another trace moves by 10 °C in that time. A trace
/// of coarse digits may do so honestly: not flagged where it comes to rest and leaves again by no more than one digit a
/// sample and what a bend of 0.5 °C/s² makes of it, nor where it stands within 5 °C of where it began, having been hot.
/// Cost: one look at every few samples where nothing stands still.
void flag_stuck(run::Run& run);

/// Flags a trace that falls as the others rise: over the samples from the others' start to their peak its temperature
/// goes against theirs, or for 10 s or more it lies 10 °C below its start while the others lie 30 °C above theirs.
/// A trace alone, or every trace of a log, is flagged where it only falls, by more than 40 °C and below −15 °C.
/// Cost: O(number of traces) at no more than some thousand moments.
void flag_reversed_polarity(run::Run& run);

/// Flags, on every trace, moments at which all traces (two or more) step alike within two samples: by a median of 1.5
/// °C or more, at least six times the noise, twice what the change of slope there makes and 0.5 °C/s² · h², each the
/// same way by more than three times its noise and within a quarter, or six times its noise, of the median. A spike
/// that comes back is no step. Cost: one pass over one trace.
void flag_cold_junction_steps(run::Run& run, unsigned threads = 1);

/// Flags a trace as detached, suspected: its slope changes twice as roughly over 3 s as is usual among the others, and
/// after its sharpest growth on the way up takes back 45 % or more of it within 20 s, as air does and no body. Small
/// parts that lead honestly do neither. Left out: air placements (by the board; without one by a name such as 'Air'),
/// and traces that meet a wave.
void flag_detached(run::Run& run, const PassMeans& means, const board::Board* board);

/// Flags two traces as swapped, suspected, where the board states the masses of their parts: one part is ten times as
/// heavy as the other, but its trace rises and falls faster, by a factor of 0.7 or more, and peaks higher.
void flag_swapped(run::Run& run, const PassMeans& means, const board::Board& board);

}  // namespace ovenwright::clean
