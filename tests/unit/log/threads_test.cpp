// Long logs are read by several threads: what comes out must not depend on how many, nor on which of them is slow.
#include <fmt/format.h>
#include <gtest/gtest.h>

#include <algorithm>
#include <bit>
#include <cstdint>
#include <functional>
#include <random>
#include <string>
#include <vector>

#include "core/log/reading.h"

namespace ovenwright::log {
namespace {

constexpr int kRows = 500'000;

/// Some 16 MB. Stretches of rows with open channels, blank lines and comments take far longer to read than the others,
/// so that pieces are not done in their order.
std::string long_log() {
  std::mt19937 engine(11);
  std::string text = "Time (s),TC1 (°C),TC2 (°C),TC3 (°C)\n";
  for (int i = 0; i < kRows; ++i) {
    const bool slow = i / 30'000 % 3 == 1;
    text += fmt::format("{}.{:03},{}.{},{},{}.25\n", i / 1000, i % 1000, 25 + i % 200, engine() % 10,
                        slow && engine() % 4 == 0 ? std::string{"open"} : fmt::format("{}.5", 30 + i % 100), i % 77);
    if (slow && engine() % 1000 == 0) text += engine() % 2 == 0 ? "\n" : "# remark\n";
  }
  return text;
}

const std::string& text() {
  static const std::string made = long_log();
  return made;
}

std::vector<std::uint64_t> bits(const std::vector<double>& values) {
  std::vector<std::uint64_t> all;
  all.reserve(values.size());
  for (const double value : values) all.push_back(std::bit_cast<std::uint64_t>(value));
  return all;
}

Result<Reading> read_by(unsigned threads, const std::string& log,
                        std::function<bool(double, std::size_t)> progress = {}, std::size_t most = 0) {
  Options options;
  options.threads = threads;
  options.progress = std::move(progress);
  if (most > 0) options.most_samples = most;
  return read_bytes("long.csv", log, options);
}

TEST(LogThreads, ReadWhatOneReads) {
  const auto one = read_by(1, text());
  ASSERT_TRUE(one) << one.error().text();
  ASSERT_EQ(one->channels.size(), 3U);
  ASSERT_EQ(one->channels[0].temperature_C.size(), static_cast<std::size_t>(kRows));
  for (const unsigned threads : {2U, 3U, 7U}) {
    for (int again = 0; again < 3; ++again) {
      const auto many = read_by(threads, text());
      ASSERT_TRUE(many) << many.error().text();
      EXPECT_EQ(many->read_as.notes, one->read_as.notes);
      EXPECT_EQ(many->read_as.rows, one->read_as.rows);
      ASSERT_EQ(many->channels.size(), one->channels.size());
      EXPECT_TRUE(bits(*many->channels[0].time_s) == bits(*one->channels[0].time_s)) << threads;
      for (std::size_t k = 0; k < one->channels.size(); ++k)
        EXPECT_TRUE(bits(many->channels[k].temperature_C) == bits(one->channels[k].temperature_C)) << threads;
    }
  }
}

TEST(LogThreads, NameTheLineOfADamagedCell) {
  std::string damaged = text();
  const auto at = damaged.find(".25\n", damaged.size() / 4 * 3);
  damaged[at + 1] = 'x';
  const auto line = std::count(damaged.begin(), damaged.begin() + static_cast<std::ptrdiff_t>(at), '\n') + 1;
  for (const unsigned threads : {1U, 2U, 7U}) {
    const auto refused = read_by(threads, damaged);
    ASSERT_FALSE(refused) << threads;
    EXPECT_EQ(refused.error().where.line, line) << threads;
    EXPECT_EQ(refused.error().where.column, 4) << threads;
  }
}

TEST(LogThreads, StopWhenTheyAreToldTo) {
  for (const unsigned threads : {1U, 2U, 7U}) {
    for (const int calls : {1, 2, 9}) {
      int asked = 0;
      const auto reading = read_by(threads, text(), [&](double, std::size_t) { return ++asked < calls; });
      EXPECT_LE(asked, calls) << threads;  // asked no more after the answer
      // Others may have read all before the one that asks came so far; but it asks once at the least.
      if (threads == 1 || calls == 1) {
        EXPECT_EQ(asked, calls) << threads;
      }
      EXPECT_EQ(static_cast<bool>(reading), asked < calls) << threads << ", " << calls;
      if (reading) {
        EXPECT_EQ(reading->read_as.rows, static_cast<std::size_t>(kRows)) << threads;
      } else {
        EXPECT_EQ(reading.error().code, ErrorCode::kCancelled) << threads;
      }
    }
  }
}

// Rows get shorter, so that there are many more than the head of the log lets expect.
TEST(LogThreads, ReadMoreRowsThanTheHeadPromises) {
  constexpr int kLong = 40'000;
  std::string log = "Time (s),TC1 (°C),TC2 (°C)\n";
  for (int i = 0; i < kRows; ++i)
    log += fmt::format("{},{}.5{},{}\n", i, 25 + i % 200, std::string(i < kLong ? 200 : 0, '0'), 30 + i % 100);
  for (const unsigned threads : {1U, 7U}) {
    const auto reading = read_by(threads, log);
    ASSERT_TRUE(reading) << reading.error().text();
    ASSERT_EQ(reading->channels.size(), 2U);
    const auto& times = *reading->channels[0].time_s;
    ASSERT_EQ(times.size(), static_cast<std::size_t>(kRows));
    for (int i = 0; i < kRows; i += 997) {
      const auto row = static_cast<std::size_t>(i);
      ASSERT_EQ(times[row], i);
      ASSERT_EQ(reading->channels[0].temperature_C[row], 25 + i % 200 + 0.5);
      ASSERT_EQ(reading->channels[1].temperature_C[row], 30 + i % 100);
    }
  }
}

// The estimate of the rows is about right, so that the log is refused before it is read, and read where the cap is
// just above.
TEST(LogThreads, KeepToTheCap) {
  for (const unsigned threads : {1U, 2U, 7U}) {
    EXPECT_FALSE(read_by(threads, text(), {}, 3U * kRows - 1)) << threads;
    EXPECT_TRUE(read_by(threads, text(), {}, 3U * kRows)) << threads;
  }
}

}  // namespace
}  // namespace ovenwright::log
