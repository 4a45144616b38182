// Every allocation of a reading fails once: it says so, or reads the same without it; nothing hangs, no thread ends the
// program. What follows a reading is not tried: the library's std::variant of GCC 12 is not safe to copy without
// memory.
#include <gtest/gtest.h>

#include <atomic>
#include <cstdlib>
#include <new>
#include <string>

#include "core/log/reading.h"

namespace {

std::atomic<long> allocations_left = -1;  // until one fails, on whatever thread; negative: none does

void* allocated(std::size_t size) {
  if (allocations_left >= 0 && allocations_left.fetch_sub(1) == 0) throw std::bad_alloc();
  void* const memory = std::malloc(size == 0 ? 1 : size);
  if (memory == nullptr) throw std::bad_alloc();
  return memory;
}

void* allocated_or_null(std::size_t size) noexcept {
  try {
    return allocated(size);
  } catch (const std::bad_alloc&) {
    return nullptr;
  }
}

}  // namespace

// Those that throw nothing too: the address sanitizer's would come from another heap than what is freed here.
void* operator new(std::size_t size) { return allocated(size); }
void* operator new[](std::size_t size) { return allocated(size); }
void* operator new(std::size_t size, const std::nothrow_t&) noexcept { return allocated_or_null(size); }
void* operator new[](std::size_t size, const std::nothrow_t&) noexcept { return allocated_or_null(size); }
void operator delete(void* memory) noexcept { std::free(memory); }
void operator delete(void* memory, std::size_t) noexcept { std::free(memory); }
void operator delete[](void* memory) noexcept { std::free(memory); }
void operator delete[](void* memory, std::size_t) noexcept { std::free(memory); }

namespace ovenwright::log {
namespace {

/// Makes one allocation of `work` fail in each call: every one of the first, then ever fewer of the later ones.
/// @param closeness  how many of them, as a share of their number
/// @return how often it was refused for want of memory
template <class Work>
int with_each_allocation_failing(long closeness, std::size_t channels, const Work& work) {
  int refused = 0;
  for (long n = 0;; n += 1 + n / closeness) {
    allocations_left = n;
    const auto reading = work();
    const bool all_made = allocations_left >= 0;
    allocations_left = -1;
    if (reading) {
      EXPECT_EQ(reading->channels.size(), channels) << "allocation " << n;
      if (all_made) return refused;
      continue;
    }
    ++refused;
    EXPECT_EQ(reading.error().code, ErrorCode::kIo) << "allocation " << n;
    EXPECT_EQ(reading.error().message, "there is not enough memory for it") << "allocation " << n;
    if (testing::Test::HasFailure()) return refused;
  }
}

TEST(OutOfMemory, AReadingThatRunsOutOfItSaysSo) {
  const std::string log = std::string{OVENWRIGHT_TEST_DATA} + "/command/passes.csv";
  EXPECT_GT(with_each_allocation_failing(100, 2, [&] { return read(log, {}); }), 100);
}

// Large enough for threads to share it: the one whose allocation fails leaves none waiting for its part.
TEST(OutOfMemory, SoDoesOneThatReadsOnSeveralThreads) {
  std::string text = "Time (s),U1 (°C),U2 (°C),U3 (°C)\n";
  for (int i = 0; text.size() < (std::size_t{7} << 20); ++i) {
    const double at = i * 1e-3;  // s: up to the peak and down again
    const double reading = 25 + (at < 120 ? at * 1.8 : at < 240 ? (240 - at) * 1.8 : 0);
    text += std::to_string(at) + "," + std::to_string(reading) + "," + std::to_string(reading + 1) + "," +
            std::to_string(reading + 2) + "\n";
  }
  Options options;
  options.threads = 2;
  EXPECT_GT(with_each_allocation_failing(12, 3, [&] { return read_bytes("a.csv", text, options); }), 20);
}

}  // namespace
}  // namespace ovenwright::log
