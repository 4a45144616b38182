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

/// What else than measure and direction a risk depends on.
struct RiskSetting {
  bool against_tc = false;   ///< a body's peak above Tc is not a joint's
  bool wave = false;         ///< the window is for a wave: there is no paste
  bool stays_solid = false;  ///< the limit keeps joints that were made before from melting
};

/// The risk of a measure's value below its lower or above its upper limit.
Risk risk_of(measure::Measure measure, Direction direction, const RiskSetting& setting);
/// The risk where the temperature that a measure counts from was never reached.
/// @param melts  whether that temperature is one at which the solder is liquid
Risk risk_of_not_reaching(bool melts);

}  // namespace ovenwright::judge
