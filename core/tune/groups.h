#pragma once
#include <cstdint>
#include <functional>
#include <optional>
#include <vector>

namespace ovenwright::tune {

/// A set of boards, a bit each.
using BoardSet = std::uint32_t;

struct Cover {
  std::vector<BoardSet> sets;  ///< disjoint; each can share
  BoardSet alone = 0;          ///< boards that not even by themselves can be held: in none of the sets
  bool fewest = true;          ///< proven; false beyond `exact` boards, or where asking stopped
};

/// The fewest sets of boards that can share, so that every board is in one. What can share is asked lazily and at most
/// once for each set: a part of what can share can, and what holds a set that cannot, cannot. Up to `exact` boards
/// every partition into one, two, … sets is tried, larger sets first; beyond, each board joins the first set that takes
/// it.
/// @param can_share  false where it cannot, nothing where asking was stopped
/// Cost: at most 2^boards questions, a few in practice.
Cover cover(std::size_t boards, std::size_t exact, const std::function<std::optional<bool>(BoardSet)>& can_share);

}  // namespace ovenwright::tune
