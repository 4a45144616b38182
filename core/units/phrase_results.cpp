#include "core/units/phrase_tables.h"

namespace ovenwright {

std::string_view english_of_result(Phrase phrase) {
  switch (phrase) {
    case Phrase::kEndsOnRise:
      return "the log ends while the temperature still rises";
    case Phrase::kStartsAtPeak:
      return "the log starts at its highest temperature";
    case Phrase::kATraceEndsOnRise:
      return "for a trace the log ends while the temperature still rises";
    case Phrase::kATraceStartsAtPeak:
      return "for a trace the log starts at its highest temperature";
    case Phrase::kStartsAbove:
      return "the log starts above {0}";
    case Phrase::kEndsAbove:
      return "the log ends above {0}";
    case Phrase::kStartsAt:
      return "the log starts at {0}";
    case Phrase::kStartsAtOrAbove:
      return "the log starts at {0} or above";
    case Phrase::kEndsAtOrAbove:
      return "the log ends at {0} or above";
    case Phrase::kPeakNotAbove:
      return "the peak is {0}, not above {1}";
    case Phrase::kPeakNotReaching:
      return "the peak is {0}, it does not reach {1}";
    case Phrase::kNoTimeBetween:
      return "no time was spent between the two temperatures";
    case Phrase::kNoWindowOnRise:
      return "no window of {0} with at least 3 samples lies on the rise; the sample interval is {1}";
    case Phrase::kNoWindowOnFall:
      return "no window of {0} with at least 3 samples lies on the fall; the sample interval is {1}";
    case Phrase::kNoWindowOnRiseInRange:
      return "no window of {0} with at least 3 samples lies on the rise within the range of temperatures; the sample "
             "interval is {1}";
    case Phrase::kNoWindowOnFallInRange:
      return "no window of {0} with at least 3 samples lies on the fall within the range of temperatures; the sample "
             "interval is {1}";
    case Phrase::kCountsToPeak:
      return "never reaches {0}, counts to the peak";
    case Phrase::kIsBeforeTrace:
      return "{0} is at {1}, the trace starts at {2}";
    case Phrase::kIsBehindTrace:
      return "{0} is at {1}, the trace ends at {2}";
    case Phrase::kTimeAskedFor:
      return "the time asked for";
    case Phrase::kEndOfZone:
      return "the end of zone {0}";
    case Phrase::kEndOfLastZone:
      return "the end of the last zone";
    case Phrase::kNeedsOven:
      return "needs the oven and its recipe";
    case Phrase::kEntryNotShown:
      return "the log does not show when the board entered the oven";
    case Phrase::kNoSuchZone:
      return "the oven has no zone {0}";
    case Phrase::kNoZones:
      return "the oven has no zones";
    case Phrase::kNoWave:
      return "no wave seen: no slope of 5 °C/s over 1 s";
    case Phrase::kWaveStartNotShown:
      return "the log does not show the start of the wave";
    case Phrase::kNoPeakInWave:
      return "no peak of 10 °C or more follows the start of the wave";
    case Phrase::kStillInSolder:
      return "the log ends before the joint has left the solder";
    case Phrase::kNoCommonTime:
      return "there is no time that all traces cover";
    case Phrase::kATraceStartsAbove:
      return "the log starts with a trace above {0}";
    case Phrase::kNoTraceRisesAbove:
      return "no trace rises above {0}";
    case Phrase::kNoTraceShownAbove:
      return "the log does not show a trace that rises above {0}";
    case Phrase::kNotAllHaveData:
      return "not all traces have data at {0}, when the first one reaches {1}";
    case Phrase::kNoteStartsAbove:
      return "a trace starts above {0}";
    case Phrase::kColdestNotReaching:
      return "the coldest trace does not reach {0}";
    case Phrase::kColdestNotInRange:
      return "no sample has the coldest trace in the range of temperatures";
    case Phrase::kNotEveryRisesAbove:
      return "not every trace rises above {0}";
    case Phrase::kNotEveryShownAbove:
      return "the log does not show every trace rise above {0}";
    case Phrase::kNoTraces:
      return "no trace to compare";
    case Phrase::kOneTraceOnly:
      return "one trace only";
    case Phrase::kGapHidesIt:
      return "a gap in the trace hides it";
    case Phrase::kFewSamples:
      return "fewer than 3 samples";
    case Phrase::kFewGoodSamples:
      return "fewer than 3 good samples: {0}";
    case Phrase::kTcNotKnown:
      return "Tc is not known: enter the part's thickness and volume";
    case Phrase::kTcOfBodies:
      return "Tc is a limit of bodies";
    case Phrase::kNotShown:
      return "the log does not show it";
    case Phrase::kNotShownThem:
      return "the log does not show them";
    case Phrase::kEnterPartOf:
      return "enter which part {0} is on in the board file";
    case Phrase::kEnterPart:
      return "enter the part {0} in the board file";
    case Phrase::kEnterThicknessAndVolume:
      return "enter the package thickness and volume of {0} in the board file";
    case Phrase::kEnterThickness:
      return "enter the package thickness of {0} in the board file";
    case Phrase::kEnterVolume:
      return "enter the package volume of {0} in the board file";
    case Phrase::kEnterClassification:
      return "enter the classification, Pb-free or SnPb, in the window {0}";
    case Phrase::kBindsNothing:
      return "the board has no placement that these bind: {0}";
    case Phrase::kSideNotKnown:
      return "{0} is not judged for {1}: enter its side in the board file";
    case Phrase::kNeedsTc:
      return "{0}: {1}, {2}, needs Tc (J-STD-020)";
    case Phrase::kLimitsCrossAtTc:
      return "{0}, {1}: its lower limit is not below its upper limit, which is Tc: nothing can pass";
    case Phrase::kTargetOutsideAtTc:
      return "{0}, {1}: its target does not lie inside its limits once Tc is put in, and is not used";
    case Phrase::kNoChannel:
      return "the log has no channel {0}";
    case Phrase::kRequirementNoChannel:
      return "{0}: the log has no channel {1}";
    case Phrase::kNarrow:
      return "{0}: its limits are narrower than 2 U, so nothing can pass under the guarded rule";
    case Phrase::kClassOneTaken:
      return "{0}: K class 1 is taken for {1}";
    case Phrase::kKnowsNoWaves:
      return "it knows ovens, not waves";
    case Phrase::kSetpointOutside:
      return "{0} of zone {1} is {2} °C, outside the oven's {3} to {4} °C";
    case Phrase::kSetpointStep:
      return "{0} steps by {1} °C from zone {2} to {3}, more than the oven's {4} °C";
    case Phrase::kOtherOven:
      return "the recipe is for the oven \"{0}\", not for \"{1}\"";
    case Phrase::kSpeedOutside:
      return "the speed is {0} mm/min, outside the oven's {1} to {2} mm/min";
    case Phrase::kSidesDiffer:
      return "top and bottom of zone {0} differ by {1} °C, more than the oven's {2} °C";
    default:
      return {};
  }
}

}  // namespace ovenwright
