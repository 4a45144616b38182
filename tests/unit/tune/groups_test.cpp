#include "core/tune/groups.h"

#include <gtest/gtest.h>

#include <bit>
#include <random>
#include <set>

namespace ovenwright::tune {
namespace {

/// Boards as intervals of what they accept: a set can share where the intervals have a point in common.
struct Interval {
  double from, to;
};

bool share(const std::vector<Interval>& boards, BoardSet set) {
  double from = -1e9, to = 1e9;
  for (std::size_t b = 0; b < boards.size(); ++b)
    if (set >> b & 1) from = std::max(from, boards[b].from), to = std::min(to, boards[b].to);
  return from <= to;
}

// Source: covering intervals by points is solved exactly by the greedy rule (sort by right end; take it; drop what it
// holds), Cormen et al., Introduction to Algorithms, activity selection: an independent way to the same number.
std::size_t fewest_points(std::vector<Interval> boards) {
  std::sort(boards.begin(), boards.end(), [](const Interval& a, const Interval& b) { return a.to < b.to; });
  std::size_t count = 0;
  double last = -1e9;
  for (const auto& board : boards)
    if (board.from > last) last = board.to, ++count;
  return count;
}

TEST(Cover, FindsTheFewestSets) {
  std::mt19937_64 engine(3);
  std::uniform_real_distribution<double> at(0, 10), wide(0.2, 4);
  for (int round = 0; round < 200; ++round) {
    std::vector<Interval> boards(1 + engine() % 6);
    for (auto& board : boards) board.from = at(engine), board.to = board.from + wide(engine);
    std::multiset<BoardSet> asked;
    const auto found = cover(boards.size(), 6, [&](BoardSet set) -> std::optional<bool> {
      asked.insert(set);
      return share(boards, set);
    });
    EXPECT_TRUE(found.fewest);
    EXPECT_EQ(found.alone, 0u);
    EXPECT_EQ(found.sets.size(), fewest_points(boards));
    BoardSet together = 0;
    for (const BoardSet set : found.sets) {
      EXPECT_TRUE(share(boards, set));
      EXPECT_EQ(together & set, 0u);
      together |= set;
    }
    EXPECT_EQ(together, (BoardSet{1} << boards.size()) - 1);
    for (const BoardSet set : asked) EXPECT_EQ(asked.count(set), 1u);
  }
}

TEST(Cover, ABoardThatNothingHoldsStandsAlone) {
  const auto found = cover(3, 6, [](BoardSet set) -> std::optional<bool> { return (set & 2) == 0; });
  EXPECT_EQ(found.alone, 2u);
  ASSERT_EQ(found.sets.size(), 1u);
  EXPECT_EQ(found.sets[0], 5u);
}

TEST(Cover, BeyondTheExactNumberItSaysSo) {
  const auto found = cover(8, 6, [](BoardSet set) -> std::optional<bool> { return std::popcount(set) <= 2; });
  EXPECT_FALSE(found.fewest);
  EXPECT_EQ(found.sets.size(), 4u);
}

TEST(Cover, StoppedIsNotProven) {
  int asked = 0;
  const auto found = cover(3, 6, [&](BoardSet) -> std::optional<bool> {
    if (++asked > 3) return std::nullopt;
    return true;
  });
  EXPECT_FALSE(found.fewest);
}

}  // namespace
}  // namespace ovenwright::tune
