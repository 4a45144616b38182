#include "app/desktop/plot/polyline.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <random>

namespace ovenwright::desktop {
namespace {

std::vector<double> noise(std::size_t n, unsigned seed) {
  std::mt19937 random(seed);
  std::uniform_real_distribution<double> value(20, 250);
  std::vector<double> values(n);
  for (double& v : values) v = value(random);
  return values;
}

std::vector<double> seconds(std::size_t n, double step_s) {
  std::vector<double> times(n);
  for (std::size_t i = 0; i < n; ++i) times[i] = step_s * double(i);
  return times;
}

TEST(Pyramid, AnyRangeHasTheExtremesOfAPlainLook) {
  const auto values = noise(5000, 7);
  const Pyramid pyramid(values);
  std::mt19937 random(8);
  std::uniform_int_distribution<std::size_t> at(0, values.size());
  for (int i = 0; i < 2000; ++i) {
    const auto [first, last] = std::minmax({at(random), at(random)});
    if (first == last) continue;
    // Source of the expected values: the same by definition, looked through one by one.
    const auto [low, high] =
        std::minmax_element(values.begin() + std::ptrdiff_t(first), values.begin() + std::ptrdiff_t(last));
    const auto extremes = pyramid.extremes(values, first, last);
    ASSERT_EQ(extremes.lowest, *low) << first << ' ' << last;
    ASSERT_EQ(extremes.highest, *high) << first << ' ' << last;
  }
}

struct Drawn {
  std::vector<QPolygonF> lines;
  qsizetype points = 0;
  double top = 1e9, bottom = -1e9;
};

Drawn draw(const std::vector<double>& times, const std::vector<double>& values, const QRectF& clip, double from_s,
           double to_s) {
  Mapping mapping;
  mapping.x_per_s = clip.width() / (to_s - from_s);
  mapping.x0 = clip.left() - from_s * mapping.x_per_s;
  mapping.y_per_C = -1;
  mapping.y0 = 300;
  Drawn drawn{visiblePolylines(times, values, Pyramid(values), mapping, clip)};
  for (const auto& line : drawn.lines) {
    drawn.points += line.size();
    for (const QPointF& point : line) {
      drawn.top = std::min(drawn.top, point.y());
      drawn.bottom = std::max(drawn.bottom, point.y());
    }
  }
  return drawn;
}

TEST(VisiblePolylines, NoExtremeIsLostAmongAMillionSamples) {
  constexpr std::size_t kSamples = 1'000'000;
  auto values = std::vector<double>(kSamples, 100.0);
  for (std::size_t i = 0; i < kSamples; ++i) values[i] += 5 * std::sin(double(i) / 5000);
  values[123'457] = 240;
  values[700'001] = 30;
  const QRectF clip(0, 0, 800, 400);
  const auto drawn = draw(seconds(kSamples, 0.001), values, clip, 0, 1000);
  // y = 300 − T; a quarter of a pixel is what thinning may take off.
  EXPECT_NEAR(drawn.top, 60, 0.25);
  EXPECT_NEAR(drawn.bottom, 270, 0.25);
}

TEST(VisiblePolylines, NeverMorePointsThanPixelsNeed) {
  const auto values = noise(200'000, 3);  // the worst case: every column from top to bottom
  const QRectF clip(0, 0, 800, 400);
  const auto drawn = draw(seconds(values.size(), 0.01), values, clip, 0, 2000);
  EXPECT_LE(drawn.points, 2 * 800 + 2);
  const std::vector<double> straight(200'000, 120.0);
  EXPECT_EQ(draw(seconds(straight.size(), 0.01), straight, clip, 0, 2000).points, 2);
}

TEST(VisiblePolylines, FewSamplesAreDrawnWhereTheyAre) {
  const std::vector<double> times{0, 1, 2, 3}, values{20, 80, 40, 200};
  const auto drawn = draw(times, values, {0, 0, 300, 400}, 0, 3);
  ASSERT_EQ(drawn.lines.size(), 1u);
  const QPolygonF expected{{{0, 280}, {100, 220}, {200, 260}, {300, 100}}};
  ASSERT_EQ(drawn.lines[0].size(), expected.size());
  for (qsizetype i = 0; i < expected.size(); ++i) {
    EXPECT_NEAR(drawn.lines[0][i].x(), expected[i].x(), 1e-9);
    EXPECT_NEAR(drawn.lines[0][i].y(), expected[i].y(), 1e-9);
  }
}

TEST(VisiblePolylines, ACourseThatLeavesTheClipIsCutAtItsEdge) {
  const std::vector<double> times{0, 1, 2}, values{20, 320, 20};  // y 280, −20, 280
  const auto drawn = draw(times, values, {0, 0, 200, 400}, 0, 2);
  ASSERT_EQ(drawn.lines.size(), 2u);
  // On the way up y = 0 is met at 280/300 of the first piece.
  EXPECT_NEAR(drawn.lines[0].last().x(), 100 * 280.0 / 300, 1e-9);
  EXPECT_NEAR(drawn.lines[0].last().y(), 0, 1e-9);
  EXPECT_NEAR(drawn.lines[1].first().x(), 100 + 100 * 20.0 / 300, 1e-9);
}

TEST(VisiblePolylines, NothingWhereNothingIsSeen) {
  EXPECT_TRUE(draw({0, 1, 2}, {20, 30, 40}, {0, 0, 100, 400}, 10, 20).lines.empty());
}

}  // namespace
}  // namespace ovenwright::desktop
