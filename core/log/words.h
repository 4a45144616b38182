#pragma once
#include <cstdint>
#include <string_view>

namespace ovenwright::log {

/// What the words of a header cell or of a line of metadata speak of, in English, German, Spanish, French, Chinese
/// (both scripts) and Japanese. A set of flags: "Sample time" is index and time.
enum Word : std::uint32_t {
  kNoWord = 0,
  kTimeWord = 1U << 0,
  kDateWord = 1U << 1,
  kIndexWord = 1U << 2,
  kTemperatureWord = 1U << 3,
  kColdJunctionWord = 1U << 4,
  kOtherWord = 1U << 5,  ///< oxygen, battery, humidity, speed, pressure, fan, status: never a thermocouple
  kZoneWord = 1U << 6,
  kSetpointWord = 1U << 7,
  kStatisticWord = 1U << 8,  ///< minimum, maximum, mean, spread
  kChannelWord = 1U << 9,    ///< a column of channel names in the long form
  kValueWord = 1U << 10,
  kUnitWord = 1U << 11,
  kNameWord = 1U << 12,         ///< label of a row of names
  kDescriptionWord = 1U << 13,  ///< label of a row of descriptions, methods, ranges, types
  kIntervalWord = 1U << 14,
  kRateWord = 1U << 15,
  kAmbientWord = 1U << 16,  ///< of the room or the instrument itself
  kScaleWord = 1U << 17,
  kTypeWord = 1U << 18,     ///< the type of thermocouple
  kElapsedWord = 1U << 19,  ///< time since the start
  kMillisecondWord = 1U << 20,
  kEpochWord = 1U << 21,
  kTextWord = 1U << 22,  ///< event, comment, status: no numbers
};
using Words = std::uint32_t;

/// The words found in a text, whatever its case.
Words words_in(std::string_view text);

/// A cell that says there was no reading: "----", "open", "n/a", "offen", "断线", "#N/A".
bool means_open(std::string_view lower_text);
/// A cell that says the reading was above (below) what can be measured: "OVER", "OL", "+++++"; "UNDER", "-OL".
bool means_over(std::string_view lower_text);
bool means_under(std::string_view lower_text);

}  // namespace ovenwright::log
