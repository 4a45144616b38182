#pragma once
#include <cstdint>
#include <string>
#include <vector>

namespace ovenwright::run {

enum class FaultKind {
  kOpen,
  kOverRange,
  kDropout,
  kSpike,
  kStuck,
  kReversedPolarity,
  kDetached,
  kSwappedPlacement,
  kColdJunctionStep,
  kClockGap,
  kTimeGoingBack
};
enum class FaultAction { kRemoved, kFlagged };

/// "open", "over-range", "dropout", "spike", "stuck", "reversed polarity", "detached", "swapped placement",
/// "cold-junction step", "clock gap", "time going back": the spelling in JSON and for people.
const char* fault_name(FaultKind kind);

/// A reading that was taken out of a trace, as it stood in the log (NaN: it was no number).
struct RemovedSample {
  double time_s = 0;
  double temperature_C = 0;
};

/// What is wrong with a stretch of a channel, or of the whole log, and what was done about it.
struct Fault {
  FaultKind kind = FaultKind::kOpen;
  double from_s = 0, to_s = 0;  ///< first and last sample concerned, log's clock
  FaultAction action = FaultAction::kFlagged;
  std::string detail;                  ///< English, for people: "one sample, 412.0 °C"; may be empty
  std::vector<RemovedSample> removed;  ///< the raw samples, so that nothing is silently changed
};

}  // namespace ovenwright::run
