#pragma once
#include <optional>
#include <vector>

#include "core/judge/judgement.h"

namespace ovenwright::judge {

/// The run's verdict, the worst of its required results, and its margin, their smallest (measures.md, Margin, Verdict).
///
/// The margin is absent where a required result has no value, or no limit yet (Tc unknown). Where a required result is
/// only a bound whose margin can be smaller than it reads, the run's margin is an upper bound ("at most"); where the
/// smallest can only be larger, a lower one ("at least"). Results without a margin (counts) do not take part.
/// A run of which nothing is required passes, unless bodies or sides were left out: then it is undetermined.
void decide_run(Judgement& judgement);

/// What stands in the second line of the verdict, as data.
struct Summary {
  struct Smallest {
    std::size_t outcome = 0;  ///< index into Judgement::all()
    double margin = 0;
    MarginBound bound = MarginBound::kNone;
  };
  /// The smallest margin of the required results first; after it the other one where the sentence joins two
  /// requirements that one placement misses by never reaching the level. Empty where none has a margin.
  std::vector<Smallest> smallest;
  /// Where a required result has no value: how many have one ("smallest margin of the other 39").
  std::optional<int> of_the_other;
  int required = 0;
  int pass = 0, conditional_pass = 0, undetermined = 0, conditional_fail = 0, fail = 0;  ///< of the required results
  std::vector<std::size_t> informative_out;  ///< informative results over their limit
};
Summary summarise(const Judgement& judgement);

}  // namespace ovenwright::judge
