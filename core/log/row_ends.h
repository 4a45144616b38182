#pragma once
#include <bit>
#include <cstddef>
#include <cstdint>

#include "core/log/byte_masks.h"

namespace ovenwright::log {

/// What find_row_ends() found: rows that are complete and have just the cells that were wanted.
struct RowEnds {
  std::size_t rows = 0;
  bool irregular = false;  ///< a row with more or fewer cells follows them
};

/// Room that `ends` needs for so many bytes: each may end a cell, and eight are written at a time.
constexpr std::size_t room_for_ends(std::size_t bytes) { return bytes + 72; }

/// Finds where cells end in blocks of 64 bytes: at delimiters, and at line feeds behind the last of a row.
/// @param blocks   all bytes of these can be read
/// @param within   only rows whose line feed stands before this offset count
/// @param ends     takes the offset of each end, room_for_ends(64 · blocks) of them; what stands behind those of the
///                 rows that count is of no meaning, but lies in or just behind the blocks
[[gnu::always_inline]] inline RowEnds find_row_ends(const char* base, std::size_t blocks, std::size_t within,
                                                    char delimiter, std::size_t columns, std::uint32_t* ends) {
  constexpr std::size_t kBlock = 64, kAhead = 4096;  // the processor itself does not look ahead over the end of a page
  RowEnds found;
  std::size_t count = 0, row_end = columns - 1;  // which of the ends must be the next line feed
  for (std::size_t block = 0; block < blocks; ++block) {
    const char* const p = base + kBlock * block;
    __builtin_prefetch(p + kAhead);
    const std::uint64_t feeds = mask_of(p, '\n'), both = feeds | mask_of(p, delimiter);
    const auto offset = static_cast<std::uint32_t>(kBlock * block);
    const auto here = static_cast<std::size_t>(std::popcount(both));
    std::uint64_t left = both;
    const auto put = [&](std::uint32_t* to) {
      *to = offset + static_cast<std::uint32_t>(std::countr_zero(left));
      left &= left - 1;
    };
    // Eight at a time, also where there are fewer: how many there are is then seldom mispredicted.
    for (std::uint32_t* to = ends + count; to < ends + count + here; to += 8) {
      put(to), put(to + 1), put(to + 2), put(to + 3);
      put(to + 4), put(to + 5), put(to + 6), put(to + 7);
    }
    for (std::uint64_t feed = feeds; feed != 0; feed &= feed - 1) {
      const std::uint64_t before = (feed & (~feed + 1)) - 1;
      const std::size_t which = count + static_cast<std::size_t>(std::popcount(both & before));
      if (ends[which] >= within) return found;
      if (which != row_end) {
        found.irregular = true;
        return found;
      }
      ++found.rows;
      row_end += columns;
    }
    count += here;
  }
  return found;
}

}  // namespace ovenwright::log
