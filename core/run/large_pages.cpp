#include "core/run/large_pages.h"

#include <sys/mman.h>

#include <algorithm>
#include <mutex>

namespace ovenwright::run {
namespace {

constexpr std::uintptr_t kLarge = std::uintptr_t{2} << 20, kSmall = std::uintptr_t{4} << 10;

// MADV_COLLAPSE of Linux 6.1 and MADV_POPULATE_WRITE of 5.14, which the C library's headers may not know yet.
constexpr int kCollapse = 25, kPopulate = 23;

/// Refused, the pages stay small.
void advise(std::uintptr_t from, std::uintptr_t to, int advice) {
  ::madvise(reinterpret_cast<void*>(from), to - from, advice);
}

}  // namespace

PagesAhead::PagesAhead(const std::vector<const std::vector<double>*>& reserved) {
  for (const auto* array : reserved) {
    const auto begin = reinterpret_cast<std::uintptr_t>(array->data());
    const std::uintptr_t end = begin + array->capacity() * sizeof(double);
    if (end - begin < kLarge) continue;
    // Out to small pages, not in to large ones: arrays lie side by side, and a large page may serve two of them.
    rooms_.push_back({begin / kSmall * kSmall, (end + kSmall - 1) / kSmall * kSmall});
    advise(rooms_.back().begin, rooms_.back().end, MADV_HUGEPAGE);
  }
}

void PagesAhead::before_row(std::size_t row) noexcept {
  constexpr double kPagesAhead = 2;
  const std::shared_lock lock(mutex_);
  const double pages = static_cast<double>(row * sizeof(double)) / static_cast<double>(kLarge) + kPagesAhead;
  const auto wanted = static_cast<std::size_t>(pages * static_cast<double>(rooms_.size()));
  while (next_.load(std::memory_order_relaxed) < wanted) {
    const std::size_t page = next_.fetch_add(1, std::memory_order_relaxed);
    const Room& room = rooms_[page % rooms_.size()];
    const std::uintptr_t from = (room.begin / kLarge + page / rooms_.size()) * kLarge, to = from + kLarge;
    if (from < room.begin) {
      advise(from, to, kCollapse);  // the allocator has written in front of the array: a small page is there already
    } else if (from < room.end) {
      advise(from, std::min(to, room.end), kPopulate);
    }
  }
}

void PagesAhead::stop() noexcept {
  const std::scoped_lock lock(mutex_);
  rooms_.clear();
}

}  // namespace ovenwright::run
