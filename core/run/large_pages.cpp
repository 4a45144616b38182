#include "core/run/large_pages.h"

#include <sys/mman.h>

#include <cstdint>

namespace ovenwright::run {
namespace {

constexpr std::uintptr_t kLarge = std::uintptr_t{2} << 20, kSmall = std::uintptr_t{4} << 10;

constexpr int kCollapse = 25;  // MADV_COLLAPSE of Linux 6.1, which the C library's headers may not know yet

/// Refused, the pages stay small.
void advise(std::uintptr_t from, std::uintptr_t to, int advice) {
  ::madvise(reinterpret_cast<void*>(from), to - from, advice);
}

}  // namespace

void ask_for_large_pages(const std::vector<const std::vector<double>*>& reserved) {
  const auto begin_of = [](const std::vector<double>& array) { return reinterpret_cast<std::uintptr_t>(array.data()); };
  const auto large = [](const std::vector<double>& array) { return array.capacity() * sizeof(double) >= kLarge; };
  // Out to small pages, not in to large ones: arrays lie side by side, and a large page may serve two of them.
  for (const auto* array : reserved) {
    const std::uintptr_t begin = begin_of(*array), end = begin + array->capacity() * sizeof(double);
    if (large(*array)) advise(begin / kSmall * kSmall, (end + kSmall - 1) / kSmall * kSmall, MADV_HUGEPAGE);
  }
  // The allocator has written in front of each array, so that a small page is there already.
  for (const auto* array : reserved) {
    const std::uintptr_t first = begin_of(*array) / kLarge * kLarge;
    if (large(*array)) advise(first, first + kLarge, kCollapse);
  }
}

}  // namespace ovenwright::run
