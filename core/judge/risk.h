#pragma once
#include "core/judge/judgement.h"

namespace ovenwright::judge {

/// On which side of its limits a value is.
enum class Direction { kLow, kHigh };

/// What being outside risks, in a sentence or two, and where that is known from.
struct Risk {
  const char* text;
  const char* source;  ///< a publication, or "common practice, no source"
};

/// The risk of a measure's value below its lower or above its upper limit. A body's peak above Tc is not a joint's.
Risk risk_of(measure::Measure measure, Direction direction, bool against_tc);

}  // namespace ovenwright::judge
