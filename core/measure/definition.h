#pragma once
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

#include "core/units/quantity.h"

namespace ovenwright::measure {

/// The measures of the project, in the order of their table; names in files are measure_name().
enum class Measure {
  kPeak,
  kPeakTime,
  kTimeAbove,
  kExcursionsAbove,
  kAreaAbove,
  kTimeBetweenOnRise,
  kTimeNearPeak,
  kSteepestRise,
  kMeanRise,
  kSteepestFall,
  kMeanFall,
  kTemperatureAt,
  kExitTemperature,
  kSpreadOfPeaks,
  kSpreadWhenHottestReaches,
  kLargestSpread,
  kLag,
  kWavePreheatTemperature,
  kWaveStep,
  kWaveContactTime,
  kWaveLongestContact
};

/// A measure's own peak in place of a temperature (mean rise to the peak, time near the peak).
struct OwnPeak {
  friend bool operator==(const OwnPeak&, const OwnPeak&) = default;
};
/// A package's classification temperature plus an offset, "Tc-5": judge turns it into a number before measuring.
struct TcReference {
  double offset_C = 0;
  friend bool operator==(const TcReference&, const TcReference&) = default;
};
using Level = std::variant<double, OwnPeak, TcReference>;

/// Parameters by their names in measures.md; absent where not given, defaults are filled by with_defaults().
struct Parameters {
  std::optional<double> level;
  std::optional<Level> T1, T2, reference;
  std::optional<double> offset, over, from, to;
  std::optional<double> time, position_mm;
  std::optional<std::string> zone;
  friend bool operator==(const Parameters&, const Parameters&) = default;
};

struct Definition {
  Measure measure = Measure::kPeak;
  Parameters parameters;
  friend bool operator==(const Definition&, const Definition&) = default;
};

/// What a measure is: one row of the table of measures.md.
struct Description {
  Measure measure;
  const char* name;  ///< "time between on rise", "wave: contact time"
  Unit unit;
  bool board;                                ///< takes all traces at once
  bool wave;                                 ///< only meaningful on a wave run
  std::vector<std::string_view> parameters;  ///< names it knows
  std::vector<std::string_view> required;    ///< names without a default; "level" may come from the window's liquidus
  const char* definition;                    ///< one English sentence for people, own words of measures.md
};

std::span<const Description> descriptions();
const Description& describe(Measure measure);
/// Null where there is no measure of that name.
const Description* find(std::string_view name);

}  // namespace ovenwright::measure
