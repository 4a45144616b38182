#include "core/run/median.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <random>
#include <vector>

namespace ovenwright::run {
namespace {

// Source: definition; the reference sorts. Sizes on both sides of where the quick way begins, odd and even; orders that
// fool a sample taken evenly.
TEST(Median, IsThatOfTheSortedValues) {
  std::mt19937 random(5);
  for (const std::size_t n : {1U, 2U, 5U, 6U, 19999U, 20000U, 20001U, 250000U}) {
    for (int kind = 0; kind < 5; ++kind) {
      std::vector<double> values(n);
      for (std::size_t i = 0; i < n; ++i) {
        const auto x = static_cast<double>(i);
        values[i] = kind == 0   ? std::normal_distribution<double>()(random)
                    : kind == 1 ? x
                    : kind == 2 ? static_cast<double>(random() % 3)
                    : kind == 3 ? (i % (n / 999 + 1) == 0 ? 1e6 : x)
                                : 7;
      }
      auto sorted = values;
      std::ranges::sort(sorted);
      const double want = n % 2 == 1 ? sorted[n / 2] : (sorted[n / 2 - 1] + sorted[n / 2]) / 2;
      // The same values as differences: of whole numbers, so that none is rounded.
      std::vector<double> sums{0};
      for (const double value : values) sums.push_back(sums.back() + value);
      if (kind > 0) {
        EXPECT_EQ(median_difference(sums), want) << n << " of kind " << kind;
      }
      EXPECT_EQ(median(values), want) << n << " of kind " << kind;
    }
  }
}

TEST(Median, OfNothingIsZero) {
  EXPECT_EQ(median({}), 0);
  EXPECT_EQ(median_difference({}), 0);
  EXPECT_EQ(median_difference(std::vector<double>{3}), 0);
}

}  // namespace
}  // namespace ovenwright::run
