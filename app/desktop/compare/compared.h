#pragma once
#include <memory>
#include <vector>

#include "app/desktop/document/run_view.h"
#include "app/desktop/widgets/pair_lanes.h"
#include "core/compare/compare.h"
#include "core/compare/group.h"

namespace ovenwright::desktop {

/// A run as it is compared.
struct ComparedRun {
  std::shared_ptr<const RunView> view;  ///< holds its log alive
  std::shared_ptr<const check::Request> request;

  const check::CheckedRun& checked() const { return view->checked(); }
};

/// One of the two: a run, or a group of runs.
struct ComparedSide {
  std::vector<ComparedRun> runs;                ///< one or more, with the styles of A's thermocouples
  std::vector<double> zero_s;                   ///< by run: the moment that lies over that of all others, log's clock
  std::shared_ptr<const compare::Group> group;  ///< what the runs come to; null where one run is held against one
  const oven::Recipe* recipe = nullptr;         ///< the one that all runs ran; null where there is none
  bool severalRecipes = false;                  ///< not all ran one
  widgets::Channels looks;                      ///< of the thermocouples of all runs, peaks of a group as means

  const ComparedRun& first() const { return runs.front(); }
  bool isGroup() const { return runs.size() > 1; }
  /// The run's own, or that of the group's means.
  const judge::Judgement& judgement() const { return group ? group->means : first().checked().judgement; }
  widgets::PairSide lanes() const { return {judgement(), looks, group.get()}; }
};

/// Two runs, or two groups, held against each other, with what drawing it needs; never changes.
struct Compared {
  ComparedSide a, b;
  compare::Comparison comparison;
  bool linedUp = false;                     ///< all show the moment that zero_s is; else that is each log's own zero
  std::optional<double> level_C;            ///< where they are lined up; absent: the oven entry
  std::vector<widgets::PairChannel> pairs;  ///< thermocouples of both

  const ComparedSide& side(std::size_t which) const { return which == 0 ? a : b; }
  std::size_t runs() const { return a.runs.size() + b.runs.size(); }
};

/// One run against one has the uncertainty of two measured values, everything else is a comparison of groups: means,
/// with the interval of the two samples. Cost: O(results²), and once the pyramids of runs whose styles change.
/// @param a, b  one or more each, judged against the same windows
Compared compareViews(std::vector<ComparedRun> a, std::vector<ComparedRun> b, const compare::Options& options);

}  // namespace ovenwright::desktop
