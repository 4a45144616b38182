#include "core/lot/chart.h"

#include <gtest/gtest.h>

#include <cmath>

namespace ovenwright::lot {
namespace {

std::vector<Point> points_of(const std::vector<double>& values) {
  std::vector<Point> points;
  for (std::size_t i = 0; i < values.size(); ++i) points.push_back({i, values[i]});
  return points;
}

// Source: NIST/SEMATECH e-Handbook 6.3.2.2, data and answers as printed there; the upper limit of the moving ranges is
// 3.267 × their mean. Tolerance: half of the last printed digit.
TEST(IndividualsChart, TheHandbooksExample) {
  const auto points = points_of({49.6, 47.6, 49.9, 51.3, 47.8, 51.2, 52.6, 52.4, 53.6, 52.1});
  const auto [control, spread] = individuals_chart(points, RuleSet::kWesternElectric);
  EXPECT_NEAR(control.centre, 50.81, 1e-9);
  EXPECT_NEAR(control.upper, 55.8041, 5.1e-5);
  EXPECT_NEAR(control.lower, 45.8159, 5.1e-5);
  EXPECT_TRUE(control.signals_found.empty());
  EXPECT_NEAR(spread.centre, 1.8778, 5.1e-5);
  EXPECT_NEAR(spread.upper, 6.135, 5.1e-4);
  EXPECT_EQ(spread.lower, 0);
  const std::vector<double> ranges{2.0, 2.3, 1.4, 3.5, 3.4, 1.4, 0.2, 1.2, 1.5};
  ASSERT_EQ(spread.points.size(), ranges.size());
  for (std::size_t i = 0; i < ranges.size(); ++i) {
    EXPECT_NEAR(spread.points[i].value, ranges[i], 1e-9);
    EXPECT_EQ(spread.points[i].run, i + 1);
  }
  EXPECT_TRUE(spread.signals_found.empty());
}

// Source: NIST/SEMATECH e-Handbook 6.3.2.4 (data from memory; all 21 averages agree with the remembered print). The
// page prints the lower limit as 47.4115; exactly it is 47.4116. Tolerance: half of the last printed digit.
TEST(EwmaChart, TheHandbooksExample) {
  const auto points = points_of({52.0, 47.0, 53.0, 49.3, 50.1, 47.0, 51.0, 50.1, 51.2, 50.5,
                                 49.6, 47.6, 49.9, 51.3, 47.8, 51.2, 52.6, 52.4, 53.6, 52.1});
  const std::vector<double> want{50.60, 49.52, 50.56, 50.18, 50.16, 49.21, 49.75, 49.85, 50.26, 50.33,
                                 50.11, 49.36, 49.52, 50.05, 49.38, 49.92, 50.73, 51.23, 51.94, 51.99};
  const auto chart = ewma_chart(points, 50, 2.0539, 0.3, RuleSet::kWesternElectric);
  EXPECT_NEAR(chart.upper, 52.5884, 5.1e-5);
  EXPECT_NEAR(chart.lower, 47.4116, 5.1e-5);
  ASSERT_EQ(chart.points.size(), want.size());
  for (std::size_t i = 0; i < want.size(); ++i) EXPECT_NEAR(chart.points[i].value, want[i], 5.1e-3) << i;
  EXPECT_TRUE(chart.signals_found.empty());
}

TEST(EwmaChart, ALastingShiftPassesTheLimit) {
  // Source: algebra. Target 0, sigma 1, weight 0.3, then 2 for good: EWMA(i) = 2(1 − 0.7^i), limit 3·√(0.3/1.7) =
  // 1.2603; 2(1 − 0.7^2) = 1.02, 2(1 − 0.7^3) = 1.314: the third point.
  const auto chart = ewma_chart(points_of({2, 2, 2, 2}), 0, 1, 0.3, RuleSet::kNelson);
  ASSERT_EQ(chart.signals_found.size(), 2U);
  EXPECT_EQ(chart.signals_found[0].point, 2U);
  EXPECT_EQ(chart.signals_found[0].rule, 1);
}

// Source: the definitions with the printed factors of three values, A2 1.023, D4 2.574, A3 1.954, B4 2.568, on
// subgroups made by hand: means 11, 12, 13, ranges 2, 4, 0, standard deviations 1, 2, 0. Tolerance: the factors' last
// digit.
TEST(XbarChart, ByHand) {
  const auto points = points_of({10, 11, 12, 10, 12, 14, 13, 13, 13, 99});
  const auto [means, ranges] = xbar_chart(points, 3, ChartKind::kXbarR, RuleSet::kWesternElectric);
  EXPECT_EQ(means.points.size(), 3U);  // the tenth value fills no subgroup
  EXPECT_EQ(means.points[1].run, 5U);
  EXPECT_DOUBLE_EQ(means.centre, 12);
  EXPECT_NEAR(means.upper, 12 + 1.023 * 2, 1.1e-3);
  EXPECT_NEAR(means.lower, 12 - 1.023 * 2, 1.1e-3);
  EXPECT_DOUBLE_EQ(ranges.centre, 2);
  EXPECT_NEAR(ranges.upper, 2.5746 * 2, 1.1e-3);
  EXPECT_EQ(ranges.lower, 0);

  const auto [by_s, deviations] = xbar_chart(points, 3, ChartKind::kXbarS, RuleSet::kWesternElectric);
  EXPECT_DOUBLE_EQ(deviations.centre, 1);
  EXPECT_NEAR(by_s.upper, 12 + 1.954, 5.1e-4);
  EXPECT_NEAR(deviations.upper, 2.568, 5.1e-4);
  EXPECT_EQ(deviations.kind, ChartKind::kStandardDeviation);
}

TEST(IndividualsChart, ASignalNamesItsRun) {
  // Source: algebra. Alternating 0 and 1 give a mean range of about 1, so 10 is far beyond 3·1/1.128.
  std::vector<double> values(40);
  for (std::size_t i = 0; i < values.size(); ++i) values[i] = i % 2 == 0 ? 0 : 1;
  values[30] = 10;
  auto points = points_of(values);
  for (auto& point : points) point.run += 100;
  const auto [control, spread] = individuals_chart(points, RuleSet::kWesternElectric);
  ASSERT_FALSE(control.signals_found.empty());
  EXPECT_EQ(control.signals_found[0].rule, 1);
  EXPECT_EQ(control.signals_found[0].point, 30U);
  EXPECT_EQ(control.signals_found[0].run, 130U);
  ASSERT_EQ(spread.signals_found.size(), 2U);
  EXPECT_EQ(spread.signals_found[0].run, 130U);
  EXPECT_EQ(spread.signals_found[1].run, 131U);
}

}  // namespace
}  // namespace ovenwright::lot
