#pragma once
#include <algorithm>
#include <atomic>
#include <cstddef>
#include <exception>
#include <new>
#include <system_error>
#include <thread>
#include <vector>

namespace ovenwright {

/// How many threads the machine runs at the same time, at least one.
inline unsigned all_cores() { return std::max(1U, std::thread::hardware_concurrency()); }

/// Calls run(0) on the caller's thread and run(1) … run(threads − 1) on others at the same time, and returns when all
/// of them have ended. Where the system has no more threads to give, fewer are called, run(0) always: so none may wait
/// for another one to begin. What one throws reaches the caller once all have ended, the first of it by their numbers;
/// one for which others wait tells them before.
template <class Run>
void on_threads(unsigned threads, const Run& run) {
  std::vector<std::exception_ptr> thrown(std::max(1U, threads));
  const auto guarded = [&](unsigned k) noexcept {
    try {
      run(k);
    } catch (...) {
      thrown[k] = std::current_exception();
    }
  };
  {
    std::vector<std::jthread> others;
    try {
      for (unsigned k = 1; k < threads; ++k) others.emplace_back(guarded, k);
    } catch (const std::system_error&) {  // no more threads: those that there are do it
    } catch (const std::bad_alloc&) {     // likewise no memory for another one
    }
    guarded(0);
  }
  for (const auto& each : thrown)
    if (each) std::rethrow_exception(each);
}

/// Calls work(i) for all i below `count`, on the caller's thread and as many others as make `threads`. The calls must
/// not depend on each other. Behind one that throws no more begin, and what it threw reaches the caller.
template <class Work>
void for_each_index(std::size_t count, unsigned threads, const Work& work) {
  std::atomic<std::size_t> next = 0;
  on_threads(static_cast<unsigned>(std::min<std::size_t>(threads, count)), [&](unsigned) {
    try {
      for (std::size_t i = next++; i < count; i = next++) work(i);
    } catch (...) {
      next = count;
      throw;
    }
  });
}

}  // namespace ovenwright
