#include "core/run/means.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <vector>

namespace ovenwright::run {
namespace {

// Source: areas of trapezia under the polyline (0, 0) (2, 4) (3, 4) (7, 0), by hand.
TEST(Means, AreTheAreaUnderThePolylineOverTheStep) {
  const auto clock = Clock::make({0, 2, 3, 7});
  ASSERT_TRUE(clock);
  const auto trace = Trace::make(*clock, {0, 4, 4, 0});
  ASSERT_TRUE(trace);
  EXPECT_THAT(means_over(*trace, 0, 1, 7), testing::ElementsAre(1, 3, 4, 3.5, 2.5, 1.5, 0.5));
  EXPECT_THAT(means_over(*trace, 0.5, 2, 3), testing::ElementsAre(2.875, 3.4375, 1.5));
  // Several on one clock: each as it is alone.
  const auto twice = Trace::make(*clock, {0, 8, 8, 0});
  const std::vector<const Trace*> both{&*trace, &*twice};
  EXPECT_THAT(means_over(both, 0.5, 2, 3),
              testing::ElementsAre(testing::ElementsAre(2.875, 3.4375, 1.5), testing::ElementsAre(5.75, 6.875, 3)));
}

}  // namespace
}  // namespace ovenwright::run
