#include "core/tune/groups.h"

#include <algorithm>
#include <bit>

namespace ovenwright::tune {
namespace {

/// Asks at most once, and not at all where what is known answers.
class Known {
 public:
  explicit Known(const std::function<std::optional<bool>(BoardSet)>& ask) : ask_(ask) {}
  bool can_share(BoardSet set) {
    for (const BoardSet yes : can_)
      if ((set & yes) == set) return true;
    for (const BoardSet no : cannot_)
      if ((set & no) == no) return false;
    if (stopped_) return false;
    const auto answer = ask_(set);
    if (!answer) {
      stopped_ = true;
      return false;
    }
    (*answer ? can_ : cannot_).push_back(set);
    return *answer;
  }
  bool stopped() const { return stopped_; }

 private:
  const std::function<std::optional<bool>(BoardSet)>& ask_;
  std::vector<BoardSet> can_, cannot_;
  bool stopped_ = false;
};

/// Splits `left` into at most `most` sets that can share; the first board of `left` is in the first of them.
bool split(BoardSet left, std::size_t most, Known& known, std::vector<BoardSet>& sets) {
  if (left == 0) return true;
  if (most == 0) return false;
  const BoardSet first = left & (~left + 1), others = left ^ first;
  std::vector<BoardSet> choices;
  for (BoardSet part = others;; part = (part - 1) & others) {
    // With one set left it must take all.
    if (most > 1 || part == others) choices.push_back(first | part);
    if (part == 0) break;
  }
  std::ranges::stable_sort(choices, std::greater{}, [](BoardSet set) { return std::popcount(set); });
  for (const BoardSet set : choices) {
    if (!known.can_share(set)) continue;
    sets.push_back(set);
    if (split(left ^ set, most - 1, known, sets)) return true;
    sets.pop_back();
  }
  return false;
}

}  // namespace

Cover cover(std::size_t boards, std::size_t exact, const std::function<std::optional<bool>(BoardSet)>& can_share) {
  Cover out;
  Known known(can_share);
  BoardSet each = 0;
  for (std::size_t b = 0; b < boards; ++b) (known.can_share(BoardSet{1} << b) ? each : out.alone) |= BoardSet{1} << b;
  if (boards <= exact) {
    for (std::size_t most = 1; most <= boards; ++most) {
      out.sets.clear();
      if (split(each, most, known, out.sets)) break;
    }
  } else {
    out.fewest = false;
    for (std::size_t b = 0; b < boards; ++b) {
      const BoardSet own = BoardSet{1} << b;
      if (!(each & own)) continue;
      const auto takes = std::ranges::find_if(out.sets, [&](BoardSet set) { return known.can_share(set | own); });
      if (takes == out.sets.end())
        out.sets.push_back(own);
      else
        *takes |= own;
    }
  }
  out.fewest = out.fewest && !known.stopped();
  return out;
}

}  // namespace ovenwright::tune
