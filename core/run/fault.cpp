#include "core/run/fault.h"

namespace ovenwright::run {

const char* fault_name(FaultKind kind) {
  switch (kind) {
    case FaultKind::kOpen:
      return "open";
    case FaultKind::kOverRange:
      return "over-range";
    case FaultKind::kDropout:
      return "dropout";
    case FaultKind::kSpike:
      return "spike";
    case FaultKind::kStuck:
      return "stuck";
    case FaultKind::kReversedPolarity:
      return "reversed polarity";
    case FaultKind::kDetached:
      return "detached";
    case FaultKind::kSwappedPlacement:
      return "swapped placement";
    case FaultKind::kColdJunctionStep:
      return "cold-junction step";
    case FaultKind::kClockGap:
      return "clock gap";
    case FaultKind::kTimeGoingBack:
      return "time going back";
  }
  return "";
}

}  // namespace ovenwright::run
