#pragma once
#include <initializer_list>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace ovenwright {

/// What core tells people of logs, results, boards and recipes. Each is one English sentence or part of one, with
/// places {0}, {1} for what was found: english() has them. A program that speaks another language finds both again with
/// said().
enum class Phrase {
  // Assumptions
  kUnitCelsius,
  kUnitMillivolts,
  kUnitFahrenheit,
  kUnitKelvin,
  kTenths,
  kResolution,
  kTypeK,
  kJunctionRoom,
  kJunctionZero,
  kIntervalUnit,
  kFractionsOfADay,
  kMilliseconds,
  kMinutes,
  kFirstColumn,
  kHoursMinutes,
  kMinutesSeconds,
  kDateOrder,
  kSpreadEvenly,
  kSpreadWithin,
  kDecimal,
  kEncoding,
  kTurnedByVoltage,
  kMirrored,
  kStatedUnit,
  kSummerBegins,
  kSummerEnds,
  kCounterStartsAnew,
  kOtherTable,
  // Notes
  kSeconds,
  kDateGoesOn,
  kOneWithoutUnit,
  kSomeWithoutUnit,
  kNoReading,
  kUnitsDiffer,
  kRowsApart,
  kMidnight,
  kTwelve,
  kVoltageTurned,
  kOneSheet,
  kOneTable,
  kOneOfTables,
  kArchive,
  kManyMembers,
  kBehindGzip,
  kFormulas,
  kCutRow,
  kShortRows,
  kOneShortRow,
  kOneLeftEmpty,
  kLeftEmpty,
  kOneRowLeftOut,
  kRowsLeftOut,
  kOneHeaderLine,
  kHeaderLines,
  kOneLabelledLine,
  kLabelledLines,
  kOneCommentLine,
  kCommentLines,
  kRowsBehind,
  kMixedDecimals,
  kDecimalCommas,
  kAsideZone,
  kAsideUnit,
  kAsideValues,
  kAsideConstant,
  kAsideCool,
  kAsideBeside,
  kAsideCounts,
  kAsideTolerance,
  kMoreNames,
  kNewestFirst,
  kPutInOrder,
  kOneRowIn,
  kJoinedTable,
  kTolerances,
  kOwnWord,
  kZonesByModel,
  kZonesByCurves,
  // Details of faults
  kStandsAt,
  kFollowsAir,
  kSwappedWith,
  kStep,
  kTooFewSamples,
  kNoUsableTime,
  kOneRowNoTime,
  kRowsNoTime,
  kFallsAsOthersRise,
  kFallsThroughout,
  // Why a measure has no value, or only a bound
  kEndsOnRise,
  kStartsAtPeak,
  kATraceEndsOnRise,
  kATraceStartsAtPeak,
  kStartsAbove,
  kEndsAbove,
  kStartsAt,
  kStartsAtOrAbove,
  kEndsAtOrAbove,
  kPeakNotAbove,
  kPeakNotReaching,
  kNoTimeBetween,
  kNoWindowOnRise,
  kNoWindowOnFall,
  kNoWindowOnRiseInRange,
  kNoWindowOnFallInRange,
  kCountsToPeak,
  kIsBeforeTrace,
  kIsBehindTrace,
  kTimeAskedFor,
  kEndOfZone,
  kEndOfLastZone,
  kNeedsOven,
  kEntryNotShown,
  kNoSuchZone,
  kNoZones,
  kNoWave,
  kWaveStartNotShown,
  kNoPeakInWave,
  kStillInSolder,
  kNoCommonTime,
  kATraceStartsAbove,
  kNoTraceRisesAbove,
  kNoTraceShownAbove,
  kNotAllHaveData,
  kNoteStartsAbove,
  kColdestNotReaching,
  kColdestNotInRange,
  kNotEveryRisesAbove,
  kNotEveryShownAbove,
  kNoTraces,
  kOneTraceOnly,
  kGapHidesIt,
  kFewSamples,
  kFewGoodSamples,
  kTcNotKnown,
  kTcOfBodies,
  kNotShown,
  kNotShownThem,
  // What to enter, and what the judge warns of
  kEnterPartOf,
  kEnterPart,
  kEnterThicknessAndVolume,
  kEnterThickness,
  kEnterVolume,
  kEnterClassification,
  kBindsNothing,
  kSideNotKnown,
  kNeedsTc,
  kLimitsCrossAtTc,
  kTargetOutsideAtTc,
  kNoChannel,
  kRequirementNoChannel,
  kNarrow,
  kClassOneTaken,
  kKnowsNoWaves,
  // What does not fit between recipe and oven
  kSetpointOutside,
  kSetpointStep,
  kOtherOven,
  kSpeedOutside,
  kSidesDiffer,
};
constexpr Phrase kLastPhrase = Phrase::kSidesDiffer;

/// "Rows are {0} s apart by \"{1}\"."
std::string_view english(Phrase phrase);

/// The English with its places filled.
std::string say(Phrase phrase, std::initializer_list<std::string> arguments = {});

/// A text for people as its English pattern and what stands in the pattern's places.
struct Said {
  std::string_view pattern;
  std::vector<std::string> arguments;
};

/// Finds what say() was given, or one of the usual words of errors; of several that fit the one with the most words of
/// its own. Empty where the text is none of these. Cost: O(length × patterns).
std::optional<Said> said(std::string_view text);

/// Every pattern that said() knows, for translators.
std::vector<std::string_view> patterns();

}  // namespace ovenwright
