#pragma once
#include <cstddef>
#include <optional>
#include <span>
#include <string>
#include <vector>

#include "core/check/check.h"
#include "core/lot/lot.h"
#include "core/oven/oven.h"
#include "core/tune/tune.h"

namespace ovenwright::compare {

/// One of the two: a run with what it was judged with, or a group of runs.
enum class Side { kA, kB };

/// The same moment on the two logs' clocks: B's time less `b_s` lies over A's time less `a_s`.
struct Alignment {
  std::optional<double> level_C;  ///< on the rise of the first trace to cross it; absent: the oven entry
  double a_s = 0, b_s = 0;        ///< log's clock
};
/// "oven entry", "150 degC on rise".
std::string alignment_name(const Alignment& alignment);

/// One requirement on one trace in both.
struct Difference {
  std::string window = {}, requirement = {}, trace = {};  ///< trace empty for board measures
  measure::Measure measure = measure::Measure::kPeak;
  Unit unit = Unit::kCelsius;
  std::optional<double> lower = {}, upper = {};                  ///< A's; B's where A has no such result
  std::optional<double> a = {}, b = {};                          ///< of groups the means
  bool a_at_least = false, b_at_least = false;                   ///< a bound only; never of groups
  std::size_t n_a = 1, n_b = 1;                                  ///< runs behind a and b; bounds do not count
  bool required = true;                                          ///< A's; B's where A has no such result
  std::optional<judge::Verdict> verdict_a = {}, verdict_b = {};  ///< absent without such a result, and of groups
  std::optional<double> difference = {};            ///< b − a; absent where one is absent or only a bound
  std::optional<double> expanded_uncertainty = {};  ///< of the difference, 95 %; absent for counts and lone runs
  std::optional<bool> significant = {};             ///< larger than its uncertainty; absent without one
  std::string reason = {};                          ///< English; why there is no difference; may be empty
};

/// The margins of the two.
struct Margins {
  std::optional<double> a = {}, b = {};  ///< fractions; of groups the means of their runs' margins
  judge::MarginBound a_bound = judge::MarginBound::kNone, b_bound = judge::MarginBound::kNone;
  std::optional<double> smallest_a = {}, smallest_b = {};  ///< of groups: the smallest of their runs'
  std::optional<double> expanded_uncertainty = {};         ///< of the difference, 95 %
  std::optional<Side> more = {};                           ///< absent where they do not differ by more than that
};

struct Comparison {
  bool of_groups = false;
  std::size_t runs_a = 1, runs_b = 1;
  judge::Verdict verdict_a = judge::Verdict::kUndetermined, verdict_b = judge::Verdict::kUndetermined;
  bool window_assumed = false;              ///< no window was named; never of groups
  std::optional<Alignment> alignment = {};  ///< absent for groups, and where a log does not show the moment
  bool same_thermocouples = false;          ///< errors that both share cancel in the differences
  std::vector<Difference> results = {};     ///< in A's order, then what only B has
  Margins margins = {};
  std::size_t out_a = 0, out_b = 0;  ///< of groups: runs with a required result outside
  bool recipes_known = false;
  bool several_a = false, several_b = false;      ///< not all runs of a group had the same recipe: none is compared
  std::vector<tune::Change> recipe_changes = {};  ///< from A to B; cooling zones have no side
  std::optional<double> speed_a_mm_per_min = {}, speed_b_mm_per_min = {};
  std::optional<Side> faster = {};  ///< by the conveyor's speed
  std::string sentence = {};        ///< English
};

/// A judged run with what it was judged with.
struct JudgedRun {
  const check::CheckedRun* run = nullptr;
  const check::Request* request = nullptr;
};

struct Options {
  bool different_thermocouples = false;  ///< though channels and board have the same names
  std::optional<double> align_C = {};    ///< a level to line the runs up at in place of the oven entry
};

/// Where two runs are lined up: at the level on the rise of the first trace that crosses it and that both have; without
/// a level at the oven entry where both show it, else at 150 °C. Empty where one does not reach the level.
std::optional<Alignment> align(const check::CheckedRun& a, const check::CheckedRun& b, std::optional<double> level_C);

/// Compares two runs, result by result.
///
/// On the same thermocouples and instrument (channels and board of the same names) a difference has only the noise and
/// sampling terms of both, since the errors of wire and instrument are common to both runs; else all terms. It is
/// significant if larger than its U = 2u. The scatter of the oven from run to run is in no U: docs/compare.md.
Comparison compare_runs(const JudgedRun& a, const JudgedRun& b, const Options& options = {});

/// Recipes of two groups, where each ran one.
struct GroupRecipes {
  const oven::Oven* oven = nullptr;
  const oven::Recipe *a = nullptr, *b = nullptr;
  bool several_a = false, several_b = false;  ///< not all had the same
};

/// Compares two groups of runs: means, and the half width of the 95 % interval of Welch for their difference, which
/// holds the scatter from run to run but no error that all runs of a group share.
Comparison compare_groups(std::span<const lot::Run> a, std::span<const lot::Run> b, const GroupRecipes& recipes = {});

/// "peak on U1 centre", "lag".
std::string subject_of(const Difference& difference);

}  // namespace ovenwright::compare
