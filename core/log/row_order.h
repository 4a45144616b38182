#pragma once
#include <cstddef>
#include <vector>

namespace ovenwright::log {

/// What the times of the rows say about their order.
struct RowOrder {
  enum class Kind {
    kForward,   ///< but for a few steps back, or runs one after the other: the cleaner's task
    kAny,       ///< shuffled: put in order they are evenly apart, or none was far from its place
    kRestarts,  ///< starts anew again and again, after too few rows for runs: more than a third is earlier than one
                ///< before
  };
  Kind kind = Kind::kForward;
  std::size_t steps_back = 0;
  std::size_t first_back = 0;      ///< the row of the first one
  std::vector<std::size_t> order;  ///< kAny: rows by rising time
};

/// Cost: O(n) where time runs forward.
/// @param time_s  in seconds, clocks unwrapped
RowOrder row_order(const std::vector<double>& time_s);

}  // namespace ovenwright::log
