#pragma once
#include <string>
#include <vector>

#include "core/judge/judgement.h"
#include "core/judge/risk.h"

namespace ovenwright::judge {

/// The word by which the templates tell measures apart: "peak", "soak", "mean_rise_to_peak", …
std::string phrase_key(const measure::Definition& definition);

/// On which side of its target a value lies: the limit that it is nearer to by margin; the one there is of a lone
/// limit.
Direction nearer_limit(const Outcome& outcome);

/// What every template about an outcome may name: placement, requirement, reason, the measure's parameters; with a
/// value also value, uncertainty and the distance to the limit on that side.
std::vector<Argument> arguments_of(const Outcome& outcome, Direction direction);

/// The distance of a value from a limit, with the value's decimals or as many more as keep it from reading as 0.
Argument distance(const std::string& name, const Outcome& outcome, Direction direction);
/// The value with enough decimals that a failing one does not read as its limit.
Argument value(const std::string& name, const Outcome& outcome);
/// A number that a window states, with the decimals it has.
Argument stated(const std::string& name, double value, Unit unit, Argument::Role role = Argument::Role::kPlain);

}  // namespace ovenwright::judge
