#pragma once
#include <initializer_list>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace ovenwright {

/// What a log's reader and cleaner tell people. Each is one English sentence or part of one, with places {0}, {1} for
/// what was found: english() has them. A program that speaks another language finds both again with said().
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
  kSummerBegins,
  kSummerEnds,
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
  kMoreNames,
  kNewestFirst,
  kPutInOrder,
  kOneRowIn,
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
};
constexpr Phrase kLastPhrase = Phrase::kFallsAsOthersRise;

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
