#pragma once
#include <cstddef>
#include <optional>
#include <span>
#include <string>
#include <vector>

#include "core/compare/compare.h"

namespace ovenwright::compare {

/// The runs of one side of a comparison of groups, put together. Points into their judgements, which must outlive it.
struct Group {
  std::vector<std::string> traces;  ///< the channels of all runs by name: the first run's, then what others add
  /// Each result with its mean in the place of the value, without an uncertainty; its margin is the mean of the runs'
  /// margins, absent where one has none or only a bound; its verdict and that of the whole are the worst of the runs'.
  /// Outcome::channel is an index into `traces`. Limits are those of the first run that has the result. No sentence.
  judge::Judgement means;
  /// By index of means.all(), then by run; null where the run has no such result.
  std::vector<std::vector<const judge::Outcome*>> runs;
};

/// Results belong together by window, requirement and trace; a mean is of the plain values alone, as everywhere where
/// groups are compared. @param runs  one or more, judged against the same windows
Group group_of(std::span<const check::CheckedRun* const> runs);

/// Of each run the smallest margin among these results (indexes into Group::means); empty where a run has none, or one
/// of them has a bound only.
std::vector<double> smallest_margins(const Group& group, std::span<const std::size_t> results);

/// How many of the runs have a result outside, conditional fails too, among these.
std::size_t runs_out(const Group& group, std::span<const std::size_t> results);

/// The recipe that all runs of a group ran, where they ran one, and the oven that all runs of both went through.
GroupRecipes recipes_of(std::span<const JudgedRun> a, std::span<const JudgedRun> b);

/// compare_groups() of runs that are at hand, judged against the same windows.
Comparison compare_groups(std::span<const JudgedRun> a, std::span<const JudgedRun> b);

/// Where many runs are lined up: the same moment on the clock of each.
struct GroupAlignment {
  std::optional<double> level_C;  ///< as in Alignment
  std::vector<double> a_s, b_s;   ///< by run, log's clock
};
/// As align() of two runs, of all of both groups: the traces that cross the level are those that every run has.
std::optional<GroupAlignment> align(std::span<const check::CheckedRun* const> a,
                                    std::span<const check::CheckedRun* const> b, std::optional<double> level_C);

}  // namespace ovenwright::compare
