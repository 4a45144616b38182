#include "core/log/large_pages.h"

#include <sys/mman.h>

#include <cstdint>

namespace ovenwright::log {

void ask_for_large_pages(const std::vector<double>& reserved) {
  constexpr std::uintptr_t kLarge = std::uintptr_t{2} << 20;
  const auto begin = reinterpret_cast<std::uintptr_t>(reserved.data());
  const std::uintptr_t first = (begin + kLarge - 1) / kLarge * kLarge;
  const std::uintptr_t end = (begin + reserved.capacity() * sizeof(double)) / kLarge * kLarge;
  if (end <= first) return;
  ::madvise(reinterpret_cast<void*>(first), end - first, MADV_HUGEPAGE);  // refused: the pages stay small
}

}  // namespace ovenwright::log
