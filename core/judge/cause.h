#pragma once
#include "core/judge/bind.h"
#include "core/judge/judgement.h"
#include "core/run/run.h"

namespace ovenwright::judge {

/// Why a measured outcome has no value, or only a bound: the fault or the end of the log that took the rest away.
/// A faulty stretch that shortened the trace stands before the end of the log. kNone for a whole value and for one not
/// reached; for what measuring alone knows, kOther with the value's reason.
Cause cause_of(const Outcome& outcome, const run::Run& run, std::span<const Seat> seats);

/// The placements that stayed below what the outcome needed, for a value not reached: the outcome's own, or for a
/// board measure those of its traces that never rose above its level.
std::vector<std::string> not_reached_by(const Outcome& outcome, const run::Run& run, std::span<const Seat> seats);

}  // namespace ovenwright::judge
