#pragma once
#include <array>
#include <cstddef>
#include <optional>
#include <span>
#include <string>
#include <vector>

#include "core/judge/judgement.h"
#include "core/lot/capability.h"
#include "core/lot/chart.h"
#include "core/measure/definition.h"
#include "core/units/result.h"

namespace ovenwright::lot {

/// One result of one run, as it was judged or as a record keeps it: no file, no trace.
struct RunResult {
  std::string window = {};  ///< its name: of windows judged together two may use one name for a requirement
  std::string requirement = {};
  std::string trace = {};  ///< empty for board measures
  measure::Measure measure = measure::Measure::kPeak;
  Unit unit = Unit::kCelsius;
  std::optional<double> value = {};
  bool at_least = false;  ///< the log shows only part; value is a bound
  std::optional<double> lower = {}, upper = {};
  bool required = true;
  judge::Verdict verdict = judge::Verdict::kUndetermined;
  std::optional<double> margin = {};    ///< a fraction
  std::optional<double> target = {};    ///< where the window gives one
  measure::Parameters parameters = {};  ///< that the measure was taken with
};

/// One run of a lot.
struct Run {
  std::string id;  ///< what a record or a person calls it
  judge::Verdict verdict = judge::Verdict::kUndetermined;
  std::optional<double> margin = {};  ///< a fraction
  judge::MarginBound margin_bound = judge::MarginBound::kNone;
  std::vector<RunResult> results = {};
};

/// What the statistics take of a run that was judged.
Run run_of(std::string id, const judge::Judgement& judgement);

/// The result that decides the run's margin: the first required one without a value where there is such a one, else
/// the required one with the smallest margin, among equals the first. An index into results; absent where none has a
/// margin.
std::optional<std::size_t> deciding_result(const Run& run);

/// One requirement on one trace, over the runs of the lot.
struct Series {
  std::string window = {}, requirement = {}, trace = {};  ///< as in RunResult
  measure::Measure measure = measure::Measure::kPeak;
  Unit unit = Unit::kCelsius;
  bool required = true;
  std::optional<double> lower = {}, upper = {};  ///< absent too where the runs do not agree on them
  std::optional<double> target = {};  ///< where the window gives one and the runs agree on it and on the limits
  std::vector<Point> points = {};     ///< the values there are, bounds left out, in order of time
  std::size_t without_value = 0;      ///< runs without this result, or where it has no value
  std::size_t measured_otherwise =
      0;                   ///< runs where the requirement has another measure or other parameters: another series
  std::size_t bounds = 0;  ///< runs where it is only "at least"
  std::optional<double> mean = {};  ///< of the points, as the figures below; absent without any
  std::optional<double> sd = {};    ///< with n − 1; absent with one point
  std::optional<double> minimum = {}, maximum = {};
  std::optional<double> sd_short_term = {};  ///< mean moving range / 1.128; absent with one point
  Capability capability = {};
  std::optional<std::array<double, 2>> tolerance_interval = {};  ///< 95 % of runs with 95 % confidence
  std::optional<Chart> control = {}, spread = {};  ///< absent with too few points; an EWMA has no chart of spread
  std::string note = {};                ///< English; what is null and why, or that the runs are few; may be empty
  measure::Parameters parameters = {};  ///< of the measure: one series holds values of one definition only

  std::size_t n() const { return points.size(); }
};

/// Fewer runs than this give no indices and no tolerance interval.
inline constexpr std::size_t kFewest = 5;
/// Fewer runs than this are said to be few: they do not show whether the values are normal, and their limits are wide.
inline constexpr std::size_t kFew = 30;

struct Options {
  ChartKind chart = ChartKind::kIndividuals;  ///< the kind of `control`
  std::size_t subgroup = 5;  ///< runs in a subgroup of an X-bar chart: each next so many in order of time
  RuleSet rules = RuleSet::kWesternElectric;
  double ewma_weight = 0.3;  ///< of the newest value, above 0 and at most 1
};

struct Lot {
  std::vector<std::string> ids = {};  ///< of the runs, in order of time; Point and Signal point into it
  judge::Verdict verdict = judge::Verdict::kUndetermined;  ///< the worst of its runs; undetermined without any
  std::optional<double> margin = {};                       ///< the smallest of the runs; absent where a run has none
  judge::MarginBound margin_bound = judge::MarginBound::kNone;
  std::size_t pass = 0, conditional_pass = 0, undetermined = 0, conditional_fail = 0, fail = 0;
  std::vector<Series> series = {};          ///< in the order of the first run that has each
  std::optional<std::size_t> weakest = {};  ///< the required series with the smallest Ppk
  std::string sentence = {};                ///< English: the verdict, the weakest series, signals, what is not known
};

/// The statistics of a lot over its judged runs, in order of time. Results belong together by window, requirement,
/// trace, measure and parameters: where a revision of the window measures a requirement otherwise, it has a series for
/// each. What the figures mean: docs/lots.md. Errors: kBadArgument where the subgroup is not from 2 to 25 or the weight
/// is not above 0 and at most 1. Cost: O(runs × results), and for each number of points met the tolerance factor once
/// (about 0.2 ms). Thread-safe.
Result<Lot> summarise(std::span<const Run> runs, const Options& options = {});

}  // namespace ovenwright::lot
