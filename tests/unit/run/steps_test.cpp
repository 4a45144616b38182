#include "core/run/steps.h"

#include <gtest/gtest.h>

#include <cmath>
#include <random>
#include <vector>

namespace ovenwright::run {
namespace {

// Expected values: counted by hand.
TEST(Steps, CountsUpLevelAndDown) {
  const std::vector<double> values{0, 1, 1, 0.5, 2, 3, 3, 3, 4};
  const Steps steps = steps_of(values);
  EXPECT_EQ(steps.up, 4U);
  EXPECT_EQ(steps.level, 3U);
  EXPECT_EQ(steps.down, 1U);
}

TEST(Steps, NoneWithoutNeighboursOrBesideNaN) {
  for (const std::vector<double>& values : {std::vector<double>{}, {7}, {NAN, 1, NAN, 2, NAN, 3, NAN}}) {
    const Steps steps = steps_of(values);
    EXPECT_EQ(steps.up + steps.level + steps.down, 0U) << values.size();
  }
}

// Source: the definition, taken one by one; lengths around the lanes and what is looked ahead.
TEST(Steps, AreThoseOfALoopOneByOne) {
  std::mt19937 engine(3);
  std::uniform_int_distribution<int> few(0, 3);
  for (const std::size_t n : {1U, 2U, 4U, 5U, 6U, 511U, 512U, 513U, 2000U}) {
    std::vector<double> values;
    for (std::size_t i = 0; i < n; ++i) {
      const double value = few(engine);
      values.push_back(value == 3 ? std::nan("") : value);
    }
    Steps expected;
    for (std::size_t i = 1; i < n; ++i) {
      expected.up += values[i] > values[i - 1] ? 1U : 0U;
      expected.level += values[i] == values[i - 1] ? 1U : 0U;
      expected.down += values[i] < values[i - 1] ? 1U : 0U;
    }
    const Steps steps = steps_of(values);
    EXPECT_EQ(steps.up, expected.up) << n;
    EXPECT_EQ(steps.level, expected.level) << n;
    EXPECT_EQ(steps.down, expected.down) << n;
  }
}

}  // namespace
}  // namespace ovenwright::run
