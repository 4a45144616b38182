#pragma once
#include "core/clean/track.h"

namespace ovenwright::clean {

/// Takes out the rows in which a channel gave no temperature:
/// - open: no number (NaN);
/// - over-range: infinite, colder or hotter than any thermocouple can read, or at the end of a type's range and there
///   with a jump (a curve that gets there in small steps is believed);
/// - dropout: 0 or another fixed value in place of a reading (999.9, −9999, 3276.7, also such a number in °F or K), set
///   off from its neighbours by a jump; or any value that stands digit for digit for three rows or comes back three
///   times, set off by a jump on both sides, where the curve goes on as before.
/// Rows at the ends that lead into a removed stretch by an impossible jump go with it.
/// By the track's overview nothing more is looked at where nothing is wrong.
void find_bad_readings(Track& track);

}  // namespace ovenwright::clean
