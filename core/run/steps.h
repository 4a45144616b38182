#pragma once
#include <cstddef>
#include <span>

namespace ovenwright::run {

/// How values stand to those before them, counted. The first counts to none of the three; neither does one beside a
/// NaN.
struct Steps {
  std::size_t up = 0, level = 0, down = 0;
};

/// Cost: O(n), one pass at the speed of memory.
Steps steps_of(std::span<const double> values) noexcept;

}  // namespace ovenwright::run
