#pragma once
#include <string>

#include "core/tune/tune.h"

namespace ovenwright::tune {

/// Stands beside every suggestion, wherever it is shown.
inline constexpr const char* kCaution =
    "This is a prediction. A qualified person confirms it with an instrumented run before production, inside the "
    "ratings of the "
    "paste, the parts, the board and the oven; site safety rules, local codes and the makers' data sheets stand above "
    "it. The "
    "errors of one board's traces are mostly one error: if one reads high, all may.";

/// "Zones 8 and 9 up 7 °C, speed down 38 mm/min: U1 corner peaks at 236.1 °C, 1.1 °C in hand; R118 …": what and why.
std::string suggestion_sentence(const oven::Oven& oven, const Suggestion& suggestion);
std::string infeasible_sentence(const Infeasible& infeasible);

}  // namespace ovenwright::tune
