#include "core/units/parallel.h"

#include <gtest/gtest.h>

#include <atomic>
#include <condition_variable>
#include <memory>
#include <mutex>
#include <stdexcept>
#include <string>
#include <vector>

#include "core/units/memory.h"

namespace ovenwright {
namespace {

// Source of all of these: the header's own words.

TEST(ForEachIndex, CallsEachOnce) {
  for (const unsigned threads : {0U, 1U, 2U, 3U, 8U}) {
    for (const std::size_t count : {std::size_t{0}, std::size_t{1}, std::size_t{7}, std::size_t{1000}}) {
      std::vector<int> calls(count, 0);
      for_each_index(count, threads, [&](std::size_t i) { ++calls[i]; });
      EXPECT_EQ(calls, std::vector<int>(count, 1)) << threads << " threads";
    }
  }
}

TEST(ForEachIndex, WhatOneThrowsReachesTheCallerAndNoMoreBegin) {
  constexpr std::size_t count = 100'000;
  for (const unsigned threads : {1U, 2U, 4U}) {
    std::atomic<std::size_t> begun = 0;
    const auto work = [&](std::size_t i) {
      ++begun;
      if (i == 3) throw std::runtime_error("the fourth");
    };
    try {
      for_each_index(count, threads, work);
      ADD_FAILURE() << "nothing was thrown";
    } catch (const std::runtime_error& error) {
      EXPECT_EQ(error.what(), std::string{"the fourth"});
    }
    if (threads == 1) {
      EXPECT_EQ(begun, 4U);
    }
  }
}

/// Waits until all of so many have come.
class Meeting {
 public:
  explicit Meeting(unsigned of) : missing_(of) {}
  void come() {
    std::unique_lock lock(mutex_);
    if (--missing_ == 0) all_.notify_all();
    all_.wait(lock, [this] { return missing_ == 0; });
  }

 private:
  std::mutex mutex_;
  std::condition_variable all_;
  unsigned missing_;
};

TEST(OnThreads, TheyRunAtTheSameTime) {
  Meeting meeting(3);  // would wait without end if one began behind another one
  std::vector<int> calls(3, 0);
  on_threads(3, [&](unsigned k) {
    meeting.come();
    ++calls[k];
  });
  EXPECT_EQ(calls, (std::vector<int>{1, 1, 1}));
}

TEST(OnThreads, TheFirstOfSeveralThatThrowIsTold) {
  Meeting meeting(3);
  try {
    on_threads(3, [&](unsigned k) {
      meeting.come();
      if (k > 0) throw std::runtime_error(std::to_string(k));
    });
    ADD_FAILURE() << "nothing was thrown";
  } catch (const std::runtime_error& error) {
    EXPECT_EQ(error.what(), std::string{"1"});
  }
}

TEST(OnThreads, TheOthersHaveEndedWhenItIsThrown) {
  std::atomic<int> ended = 0;
  const auto run = [&](unsigned k) {
    if (k == 0) throw std::runtime_error("the caller's");
    ++ended;
  };
  EXPECT_THROW(on_threads(4, run), std::runtime_error);
  EXPECT_EQ(ended, 3);
}

TEST(WithinMemory, RunningOutIsAnErrorWithTheFile) {
  const auto made = within_memory("a.csv", []() -> Result<int> { throw std::bad_alloc(); });
  ASSERT_FALSE(made);
  EXPECT_EQ(made.error().code, ErrorCode::kIo);
  EXPECT_EQ(made.error().text(), "a.csv: there is not enough memory for it");
  const auto longer = within_memory("a.csv", []() -> Result<std::string> {
    std::string text = "x";
    text.resize(text.max_size() + 1);  // std::length_error
    return text;
  });
  ASSERT_FALSE(longer);
  EXPECT_EQ(longer.error().code, ErrorCode::kIo);
  const auto kept = within_memory("a.csv", []() -> Result<std::unique_ptr<int>> { return std::make_unique<int>(3); });
  ASSERT_TRUE(kept);
  EXPECT_EQ(**kept, 3);
}

}  // namespace
}  // namespace ovenwright
