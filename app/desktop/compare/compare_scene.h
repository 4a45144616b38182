#pragma once
#include "app/desktop/compare/compared.h"
#include "app/desktop/plot/scene.h"
#include "app/desktop/widgets/lane_table.h"
#include "app/desktop/widgets/zone_table.h"
#include "core/compare/sentence.h"

namespace ovenwright::desktop {

/// What is looked at in a comparison.
struct CompareFocus {
  std::optional<std::size_t> result;   ///< an index into Comparison::results
  std::optional<std::size_t> channel;  ///< of the chosen one, an index into Compared::pairs
  std::optional<std::size_t> strong;   ///< the only one at full strength, likewise
};

/// The moment from which a side's times count, on the log of its first run: where all are lined up.
double commonZero_s(const Compared& compared, std::size_t side);

/// A side's curves on the clock that both have in common, side by side with the other's; or both in one. Of a
/// group all runs, thin, with the means of their peaks marked.
Scene compareScene(const Compared& compared, std::size_t side, const CompareFocus& focus, const Format& format);
Scene overlaidScene(const Compared& compared, const CompareFocus& focus, const Format& format);

/// The zones of both, held against each other; of a group those of the recipe that all its runs ran.
struct CompareStrips {
  widgets::ZoneTable a, b;
};
CompareStrips compareStrips(const Compared& compared, const CompareFocus& focus, bool marked, bool overlaid,
                            const Format& format);

widgets::LaneTable compareLanes(const Compared& compared, const Format& format);

/// The outcome of a result on a side, an index into its Judgement::all(); empty where it has none.
std::optional<std::size_t> outcomeOf(const Compared& compared, std::size_t side, std::size_t result);
/// The result and the side that a number of the lanes stands for: A's outcomes, then B's.
compare::Mark markOf(const Compared& compared, std::size_t laneNumber);
/// The other way round; empty where the side has no such result.
std::optional<std::size_t> laneNumber(const Compared& compared, const compare::Mark& mark);

/// Of a side's runs the one that is nearest to a limit in an outcome of its judgement, or out the furthest.
std::size_t nearestRun(const ComparedSide& side, std::size_t outcome);

/// "tern_run1, rev 7", "5 runs, rev 7"
QString sideName(const Compared& compared, std::size_t side);
/// "A: tern_run1, rev 7"
QString sideTitle(const Compared& compared, std::size_t side);

}  // namespace ovenwright::desktop
