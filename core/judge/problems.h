#pragma once
#include <string>
#include <vector>

#include "core/judge/judgement.h"
#include "core/judge/risk.h"

namespace ovenwright::judge {

/// What is out, joined as the sentence names it: one requirement on one or several placements.
struct Problem {
  enum class Kind {
    kOut,           ///< values beyond a limit, all on one side
    kNeverReached,  ///< time above is 0 and short: joined with the peaks of the same placements that are too low
    kNotReached     ///< no value because a level was not reached
  } kind = Kind::kOut;
  std::vector<std::size_t>
      outcomes;                    ///< indexes into Judgement::all(), smallest margin first; kNeverReached: the times
  std::vector<std::size_t> peaks;  ///< kNeverReached: the peak of each of `outcomes`, or empty
  Direction direction = Direction::kLow;
  bool at_least = false;
  bool within = false;  ///< all within their uncertainty (conditional fail)
  /// Three or more, and every placement that was judged at all, or every joint, or every body.
  enum class All { kNo, kPlacements, kJoints, kBodies } all = All::kNo;

  std::size_t count() const { return outcomes.size() + peaks.size(); }  ///< results it names
};

/// The required results outside, joined, in order of their smallest margin; those without a margin last, and of these
/// those without a value last.
std::vector<Problem> problems_of(const Judgement& judgement);

/// The zones of several outcomes: those with a tenth or more of the mean of their shares, in the oven's order.
std::vector<std::string> common_zones(const Judgement& judgement, const std::vector<std::size_t>& outcomes);

}  // namespace ovenwright::judge
