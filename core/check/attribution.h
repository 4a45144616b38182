#pragma once
#include <string>

#include "core/check/passes.h"
#include "core/judge/judgement.h"

namespace ovenwright::check {

/// Which zones and sides, and how much the speed, the results outside hang on, by the oven model.
///
/// The model is identified from this run alone (heat::identify). Then each zone's setpoint is moved by 3 °C and the
/// speed by 9 mm/min, the run is predicted anew and measured again by the code that measures runs, and the changes of a
/// value, without their sign, give its shares: those of the zones sum to 1, in thousandths; the speed's is its own
/// change over the sum of all, with 3 mm/min counted like 1 °C. They take the place of the judgement's first estimate,
/// in zones, zone_shares and sentence. `side` is given only where the run itself tells the sides of every placement
/// concerned apart: where it narrowed the share of the top side to half its prior spread. Where no change shows (a
/// count, a level never reached) the changes at the trace's peak stand in.
///
/// Where the model does not fit, or a trace is not part of it (kind `air`), the first estimate stands.
/// @param place  oven and recipe are there
/// @return one sentence on what the zones are by; empty where no result is outside
/// Cost: one identification, then one prediction and measuring for each zone and the speed, on traces thinned to 0.5 s.
std::string attribute(const run::Run& run, const Setting& setting, const measure::Place& place,
                      judge::Judgement& judgement);

}  // namespace ovenwright::check
