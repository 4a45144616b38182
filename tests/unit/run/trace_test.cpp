#include "core/run/trace.h"

#include <gtest/gtest.h>

#include <cmath>
#include <memory>
#include <vector>

namespace ovenwright::run {
namespace {

// Source: measures.md's own rule, "a median of an even count is the mean of the middle two".
TEST(Clock, MedianIntervalOfAnEvenCountIsTheMeanOfTheMiddleTwo) {
  const auto clock = Clock::make({0, 1, 3, 6, 10});  // intervals 1 2 3 4
  ASSERT_TRUE(clock) << clock.error().message;
  EXPECT_DOUBLE_EQ((*clock)->median_interval_s(), 2.5);
  EXPECT_DOUBLE_EQ((*clock)->shortest_interval_s(), 1);
  EXPECT_DOUBLE_EQ((*clock)->longest_interval_s(), 4);
}

// Source: algebra; a clock of rounding noise has more intervals in a second than a number of rows can be.
TEST(Clock, RowsInASpanStayBetweenOneAndAll) {
  const auto coarse = Clock::make({0, 1, 2, 3, 4});
  const auto noise = Clock::make({0, 1e-300, 2e-300, 3e-300});
  ASSERT_TRUE(coarse && noise);
  EXPECT_EQ((*coarse)->rows_in(2.5), 2U);
  EXPECT_EQ((*coarse)->rows_in(0.1), 1U);
  EXPECT_EQ((*coarse)->rows_in(1e30), 5U);
  EXPECT_EQ((*noise)->rows_in(2), 4U);
}

// Source: algebra, at every place of a lane and of what is left behind the last full one.
TEST(Clock, SeesTheShortestAndLongestIntervalWhereverItIs) {
  for (std::size_t at = 1; at < 11; ++at) {
    std::vector<double> times{0};
    for (std::size_t i = 1; i < 12; ++i) times.push_back(times.back() + (i == at ? 0.25 : i == at + 1 ? 5 : 1));
    const auto shared = std::make_shared<const std::vector<double>>(times);
    const auto clock = Clock::make_sharing(shared);
    ASSERT_TRUE(clock) << clock.error().message;
    EXPECT_EQ((*clock)->time_s().data(), shared->data());
    EXPECT_EQ((*clock)->shortest_interval_s(), 0.25) << at;
    EXPECT_EQ((*clock)->longest_interval_s(), 5) << at;
    times[at] = times[at - 1];
    EXPECT_FALSE(Clock::make(times)) << at;
    times[at] = NAN;
    EXPECT_FALSE(Clock::make(times)) << at;
  }
  EXPECT_FALSE(Clock::make({0, 1, INFINITY}));
  EXPECT_FALSE(Clock::make({-INFINITY, 1, 2}));
}

TEST(Clock, RefusesTimesThatStandStillOrRunBack) {
  EXPECT_FALSE(Clock::make({0, 1, 1}));
  EXPECT_FALSE(Clock::make({0, 1, 0.5}));
  EXPECT_FALSE(Clock::make({0, NAN}));
}

// Source: algebra of a straight line; the value is exact in binary.
TEST(Trace, IsLinearBetweenSamplesAndNeverExtrapolated) {
  const auto clock = Clock::make({0, 2, 4});
  ASSERT_TRUE(clock);
  const auto trace = Trace::make(*clock, {10, 20, 0});
  ASSERT_TRUE(trace) << trace.error().message;
  EXPECT_DOUBLE_EQ(trace->at(1), 15);
  EXPECT_DOUBLE_EQ(trace->at(3), 10);
  EXPECT_DOUBLE_EQ(trace->at(4), 0);
  EXPECT_TRUE(std::isnan(trace->at(4.1)));
  EXPECT_TRUE(std::isnan(trace->at(-0.1)));
}

TEST(Trace, NeedsThreeFiniteSamples) {
  const auto clock = Clock::make({0, 1});
  ASSERT_TRUE(clock);
  EXPECT_FALSE(Trace::make(*clock, {1, 2}));
  EXPECT_FALSE(Trace::make(*clock, {1, 2, 3}));
}

}  // namespace
}  // namespace ovenwright::run
