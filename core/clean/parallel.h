#pragma once
#include <algorithm>
#include <atomic>
#include <cstddef>
#include <thread>
#include <vector>

namespace ovenwright::clean {

/// How many threads are worth it for so many samples: one up to a few millions, else as many as wanted.
/// @param wanted  0: all cores
inline unsigned threads_for(std::size_t samples, unsigned wanted) {
  constexpr std::size_t kWorthAThread = 3'000'000;
  const unsigned most = wanted > 0 ? wanted : std::max(1U, std::thread::hardware_concurrency());
  return static_cast<unsigned>(std::clamp<std::size_t>(samples / kWorthAThread, 1, most));
}

/// Calls work(i) for all i below `count`, on the caller's thread and others. The calls must not depend on each other.
template <class Work>
void for_each_index(std::size_t count, unsigned threads, const Work& work) {
  std::atomic<std::size_t> next = 0;
  const auto take = [&] {
    for (std::size_t i = next++; i < count; i = next++) work(i);
  };
  std::vector<std::jthread> others;
  for (unsigned i = 1; i < std::min<std::size_t>(threads, count); ++i) others.emplace_back(take);
  take();
}

}  // namespace ovenwright::clean
