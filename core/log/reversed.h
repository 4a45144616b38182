#pragma once
#include <span>
#include <vector>

#include "core/emf/emf.h"
#include "core/log/reading.h"
#include "core/units/quantity.h"

namespace ovenwright::log {

/// How readings in °C of a thermocouple whose wires are exchanged are put right.
enum class TurnRule { kByVoltage, kMirrored };

/// The readings of a reversed thermocouple put right, in place; what is no number stays.
///
/// The instrument meets the voltage with the wrong sign, −(E(T) − E(r)), r its reference junction, adds E(r) and shows
/// the temperature of 2 E(r) − E(T). So by voltage T is the temperature of 2 E(r) − E(shown), which is exact where the
/// instrument goes by the type's function. Mirrored it is 2 r − shown, right for one that takes the voltage for a
/// straight line. In both an error d of r becomes 2 d of T.
/// @param reference  temperature of the reference junction
/// A reading that no voltage of the type belongs to becomes NaN, a turned one above its range +infinity.
/// Source: algebra on the law of intermediate temperatures (IEC 60584-1 functions); a straight line for the mirror.
void turn_readings(std::span<double> readings_C, emf::Type type, Celsius reference, TurnRule rule);

/// Puts the channels in °C right whose column of the layout says that it is reversed (voltages were turned before the
/// reference junction was added), and says so in `read_as`. The reference is the layout's cold junction, else where the
/// trace starts; the type the layout's, else K; of the two rules the one that lies nearer to the other channels, by
/// voltage where there are none.
void turn_reversed(Reading& reading, const Layout& given);

}  // namespace ovenwright::log
