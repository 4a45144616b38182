#include "app/desktop/widgets/lane_scale.h"

#include <gtest/gtest.h>

namespace ovenwright::widgets {
namespace {

// Source of all values: algebra of the lane's rule, s = (v − t)/(upper − t) from the target up, (v − t)/(t − lower)
// below it, x = c + h·s, h = width/3.24. Numbers are chosen to be exact in binary.
struct Case {
  const char* name;
  std::optional<double> lower, upper, target;
  double value, s;
};
void PrintTo(const Case& c, std::ostream* os) { *os << c.name; }
class LanePosition : public testing::TestWithParam<Case> {};

TEST_P(LanePosition, IsTheSameDistanceForTheSameMargin) {
  const Case& c = GetParam();
  const auto scale = LaneScale::make(c.lower, c.upper, c.target);
  ASSERT_TRUE(scale);
  EXPECT_DOUBLE_EQ(scale->position(c.value), c.s);
}

INSTANTIATE_TEST_SUITE_P(
    Exact, LanePosition,
    testing::Values(Case{"lower_limit", 60, 120, {}, 60, -1}, Case{"upper_limit", 60, 120, {}, 120, 1},
                    Case{"middle", 60, 120, {}, 90, 0}, Case{"above_the_middle", 60, 120, {}, 105, 0.5},
                    Case{"outside_below", 60, 120, {}, 45, -1.5}, Case{"outside_above", 60, 120, {}, 150, 2},
                    Case{"target_below_the_middle", 60, 120, 80, 70, -0.5},
                    Case{"target_below_the_middle_other_side", 60, 120, 80, 100, 0.5},
                    Case{"target_is_zero", 60, 120, 80, 80, 0},
                    Case{"upper_alone_target_is_half", {}, 2.5, {}, 1.25, 0},
                    Case{"upper_alone_at_its_limit", {}, 2.5, {}, 2.5, 1},
                    Case{"upper_alone_open_side_takes_the_other_scale", {}, 2.5, {}, 0, -1},
                    Case{"upper_alone_given_target", {}, 245, 240, 242.5, 0.5},
                    Case{"lower_alone_given_target", 60, {}, 80, 70, -0.5},
                    Case{"lower_alone_open_side_takes_the_other_scale", 60, {}, 80, 100, 1},
                    Case{"negative_limits", -40, -20, {}, -25, 0.5}, Case{"count_of_at_most_none", {}, 0, {}, 2, 2}),
    [](const auto& c) { return std::string{c.param.name}; });

TEST(LaneScale, NeedsALimitAndATarget) {
  EXPECT_FALSE(LaneScale::make({}, {}, {}));
  EXPECT_FALSE(LaneScale::make({}, {}, 5));
  EXPECT_FALSE(LaneScale::make(60, {}, {}));
}

TEST(LaneBody, PutsTheLimitsAtTheSamePlacesWhateverTheWidth) {
  for (const qreal width : {240.0, 419.0, 1000.0}) {
    const LaneBody body{100, 100 + width};
    EXPECT_DOUBLE_EQ(body.x(0), 100 + width / 2);
    EXPECT_NEAR(body.x(1) - body.x(0), width / 3.24, 1e-9);
    EXPECT_NEAR(body.x(kLaneReach), body.right, 1e-9);
    EXPECT_NEAR(body.x(-kLaneReach), body.left, 1e-9);
    EXPECT_DOUBLE_EQ(body.clampedX(5), body.right);
  }
}

}  // namespace
}  // namespace ovenwright::widgets
