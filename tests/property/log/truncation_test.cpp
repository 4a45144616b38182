#include <gtest/gtest.h>

#include <cstdlib>
#include <fstream>
#include <iterator>
#include <string>

#include "core/clean/clean.h"
#include "core/log/reading.h"

namespace ovenwright::log {
namespace {

class DemoLog : public testing::TestWithParam<const char*> {
 protected:
  static std::string bytes() {
    std::ifstream file(std::string{OVENWRIGHT_PROFILES "/demo/"} + GetParam(), std::ios::binary);
    return {std::istreambuf_iterator<char>(file), {}};
  }
  static Result<Reading> reading_of(std::string_view bytes) {
    Options options;
    options.threads = 1;
    options.digest = false;
    return read_bytes(GetParam(), bytes, options);
  }
};

/// What was read of a log's start is the start of what was read of the whole.
void expect_prefix(const Reading& part, const Reading& whole, std::size_t size) {
  ASSERT_EQ(part.channels.size(), whole.channels.size()) << size;
  for (std::size_t k = 0; k < part.channels.size(); ++k) {
    const auto &a = part.channels[k], &b = whole.channels[k];
    ASSERT_EQ(a.name, b.name) << size;
    ASSERT_LE(a.temperature_C.size(), b.temperature_C.size()) << size;
    for (std::size_t i = 0; i < a.temperature_C.size(); ++i) {
      const double x = a.temperature_C[i], y = b.temperature_C[i];
      ASSERT_TRUE(x == y || (x != x && y != y)) << size << " bytes, row " << i << ": " << x << ", " << y;
      ASSERT_NEAR((*a.time_s)[i], (*b.time_s)[i], 1e-6) << size << " bytes, row " << i;
    }
  }
}

TEST_P(DemoLog, ReadsOrFailsWithAMessageWhereverItIsCut) {
  const std::string whole = bytes();
  const auto full = reading_of(whole);
  ASSERT_TRUE(full) << full.error().text();
  const bool all = std::getenv("OVENWRIGHT_LONG_CHECKS") != nullptr;
  // Every byte of the header and the first rows, then every 97th (a prime, so that all places of a row have their
  // turn).
  constexpr std::size_t kHead = 700, kStride = 97;
  // A hundred rows are enough for whatever the reader decides by the whole.
  const std::size_t settled = whole.size() / 8;
  for (std::size_t size = 0; size < whole.size(); size += all || size < kHead ? 1 : kStride) {
    const auto part = reading_of(std::string_view{whole}.substr(0, size));
    if (!part) {
      ASSERT_FALSE(part.error().message.empty()) << size;
      ASSERT_LT(size, settled) << part.error().text();
      continue;
    }
    for (const auto& channel : part->channels) ASSERT_EQ(channel.time_s->size(), channel.temperature_C.size()) << size;
    if (size >= settled) expect_prefix(*part, *full, size);
    if (HasFatalFailure()) return;
    const auto runs = clean::clean(part->channels);
    ASSERT_TRUE(runs || !runs.error().message.empty()) << size;
  }
}

INSTANTIATE_TEST_SUITE_P(Demo, DemoLog,
                         testing::Values("tern_run1.csv", "tern_run2.csv", "tern_second_side.txt", "tern_wave.tsv",
                                         "tern_faults.txt"),
                         [](const auto& c) {
                           const std::string name = c.param;
                           return name.substr(0, name.find('.'));
                         });

}  // namespace
}  // namespace ovenwright::log
