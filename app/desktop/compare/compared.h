#pragma once
#include <memory>
#include <vector>

#include "app/desktop/document/run_view.h"
#include "app/desktop/widgets/pair_lanes.h"
#include "core/compare/compare.h"

namespace ovenwright::desktop {

/// A run as it is compared.
struct ComparedRun {
  std::shared_ptr<const RunView> view;  ///< holds its log alive
  std::shared_ptr<const check::Request> request;

  const check::CheckedRun& checked() const { return view->checked(); }
};

/// Two runs held against each other, with what drawing it needs; never changes.
struct Compared {
  ComparedRun a, b;  ///< B with the styles of A's thermocouples
  compare::Comparison comparison;
  std::vector<widgets::PairChannel> pairs;  ///< thermocouples of both

  const ComparedRun& side(std::size_t which) const { return which == 0 ? a : b; }
};

/// Cost: O(results²) and once the pyramids of B.
Compared compareViews(ComparedRun a, ComparedRun b, const compare::Options& options);

}  // namespace ovenwright::desktop
