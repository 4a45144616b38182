#pragma once
#include <atomic>
#include <cstddef>
#include <cstdint>
#include <shared_mutex>
#include <vector>

namespace ovenwright::run {

/// Has the system back the room that arrays have reserved, and not yet touched, with large pages, and clear them a
/// little before they are filled, all arrays to the same row. A log of a million rows otherwise spends more time on
/// page faults than on its numbers, and the thread that fills the arrays clears pages while others wait. Small arrays
/// stay as they are; where the system has no such pages nothing happens.
class PagesAhead {
 public:
  /// @param reserved  they keep their room as long as this lives, or until stop()
  explicit PagesAhead(const std::vector<const std::vector<double>*>& reserved);
  /// The arrays will soon be filled up to this row: clears up to two large pages of each behind it. From any thread;
  /// each clears other pages.
  void before_row(std::size_t row) noexcept;
  /// Before an array outgrows its room: no page is touched any more once this has returned. From any thread.
  void stop() noexcept;

 private:
  struct Room {
    std::uintptr_t begin = 0, end = 0;
  };
  std::shared_mutex mutex_;            // held for others to read the rooms while their pages are cleared
  std::vector<Room> rooms_;            ///< of the large arrays
  std::atomic<std::size_t> next_ = 0;  ///< page: the first of each array, then the second of each
};

}  // namespace ovenwright::run
