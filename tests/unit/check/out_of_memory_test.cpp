// Every allocation of a check fails once: the check says so, or comes to the same verdict without it; nothing hangs, no
// thread ends the program.
#include <gtest/gtest.h>

#include <atomic>
#include <cstdlib>
#include <new>
#include <string>

#include "core/check/check.h"
#include "core/window/window_file.h"

namespace {

std::atomic<long> allocations_left = -1;  // until one fails, on whatever thread; negative: none does

void* allocated(std::size_t size) {
  if (allocations_left >= 0 && allocations_left.fetch_sub(1) == 0) throw std::bad_alloc();
  void* const memory = std::malloc(size == 0 ? 1 : size);
  if (memory == nullptr) throw std::bad_alloc();
  return memory;
}

}  // namespace

void* operator new(std::size_t size) { return allocated(size); }
void* operator new[](std::size_t size) { return allocated(size); }
void operator delete(void* memory) noexcept { std::free(memory); }
void operator delete(void* memory, std::size_t) noexcept { std::free(memory); }
void operator delete[](void* memory) noexcept { std::free(memory); }
void operator delete[](void* memory, std::size_t) noexcept { std::free(memory); }

namespace ovenwright::check {
namespace {

check::Request request_with_a_window() {
  check::Request request;
  auto found = window::load(std::string{OVENWRIGHT_PROFILES} + "/windows/sac305.toml");
  EXPECT_TRUE(found) << found.error().text();
  request.windows.push_back(*std::move(found));
  return request;
}

/// Makes one allocation of `work` fail in each call: every one of the first, then ever fewer of the later ones.
/// @param closeness  how many of them, as a share of their number
/// @return how often it was refused for want of memory
template <class Work>
int with_each_allocation_failing(long closeness, const Work& work) {
  int refused = 0;
  for (long n = 0;; n += 1 + n / closeness) {
    allocations_left = n;
    const auto checked = work();
    const bool all_made = allocations_left >= 0;
    allocations_left = -1;
    if (checked) {
      EXPECT_EQ(checked->runs.size(), 1U) << "allocation " << n;
      if (all_made) return refused;
      continue;
    }
    ++refused;
    EXPECT_EQ(checked.error().code, ErrorCode::kIo) << "allocation " << n;
    EXPECT_EQ(checked.error().message, "there is not enough memory for it") << "allocation " << n;
    if (testing::Test::HasFailure()) return refused;
  }
}

TEST(OutOfMemory, ACheckThatRunsOutOfItSaysSo) {
  const auto request = request_with_a_window();
  const std::string log = std::string{OVENWRIGHT_TEST_DATA} + "/command/passes.csv";
  EXPECT_GT(with_each_allocation_failing(100, [&] { return check(log, request); }), 100);
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
  auto request = request_with_a_window();
  request.log.threads = 2;
  const auto read_and_judge = [&]() -> Result<CheckedLog> {
    auto reading = log::read_bytes("a.csv", text, request.log);
    if (!reading) return reading.error();
    return check(*std::move(reading), request);
  };
  EXPECT_GT(with_each_allocation_failing(12, read_and_judge), 20);
}

}  // namespace
}  // namespace ovenwright::check
