#include "app/desktop/widgets/lot_lane.h"

#include <gtest/gtest.h>

#include <QAccessible>
#include <QApplication>
#include <QImage>
#include <QPainter>
#include <cstdlib>

#include "app/desktop/widgets/run_chart.h"

namespace ovenwright::widgets {
namespace {

constexpr int kWidth = 600;
constexpr qreal kLimits = 50;  // room for a limit's value at each side, at a 13 px font

Theme theme() { return Theme::light(QFont(QStringLiteral("DejaVu Sans"), 10)); }

QImage painted(const LotLaneContent& content) {
  const Theme look = theme();
  QImage image(kWidth, int(lotLaneHeight(look)) + 2, QImage::Format_RGB32);
  image.fill(look.panel);
  QPainter painter(&image);
  paintLotLane(painter, QRectF(0, 0, image.width(), image.height()), content, look);
  return image;
}

/// Whether some pixel of the column, a pixel to either side, is this colour; `blur` of the three channels together, as
/// a thin line is drawn over two pixels.
bool hasInk(const QImage& image, double x, const QColor& color, int blur = 60) {
  const auto away = [&color](const QColor& other) {
    return std::abs(color.red() - other.red()) + std::abs(color.green() - other.green()) +
           std::abs(color.blue() - other.blue());
  };
  for (int column = int(x) - 1; column <= int(x) + 1; ++column)
    for (int y = 20; y < image.height(); ++y)
      if (away(QColor(image.pixel(column, y))) <= blur) return true;
  return false;
}

// Source: design, the lanes' mapping: c the middle of the body, h its width over 3.24, the limits at c ± h, the target
// at c, straight lines between; so 246.25 stands half way from the target 242.5 to the limit 250.
TEST(LotLane, LimitsAndRunsStandWhereTheLanesMappingPutsThem) {
  LotLaneContent content;
  content.lower = 235;
  content.upper = 250;
  content.target = 242.5;
  content.values = {246.25};
  const QImage image = painted(content);
  const double body = kWidth - 2 * kLimits * theme().px(1), center = kWidth / 2.0, half = body / 3.24;
  EXPECT_TRUE(hasInk(image, center - half, theme().text));
  EXPECT_TRUE(hasInk(image, center + half, theme().text));
  EXPECT_TRUE(hasInk(image, center + half / 2, theme().accent, 160));
  EXPECT_FALSE(hasInk(image, center - half / 2, theme().accent));
}

TEST(LotLane, ALoneUpperLimitHasNoLowerLine) {
  LotLaneContent content;
  content.upper = 2.5;
  content.target = 1.25;
  content.values = {2};
  ASSERT_TRUE(content.hasScale());
  const QImage image = painted(content);
  const double body = kWidth - 2 * kLimits * theme().px(1), center = kWidth / 2.0, half = body / 3.24;
  EXPECT_TRUE(hasInk(image, center + half, theme().text));
  EXPECT_FALSE(hasInk(image, center - half, theme().text));
  EXPECT_FALSE(LotLaneContent{}.hasScale());
}

TEST(LotLane, WhatLiesOffTheScaleStaysInThePicture) {
  LotLaneContent content;
  content.lower = 0;
  content.upper = 1;
  content.target = 0.5;
  content.values = {-100, 100};
  content.mean = 50;
  content.sd = 200;
  content.tolerance = {-1000, 1000};
  const QImage image = painted(content);
  // The grounds left and right of the body, where only the limits' values stand, have no accent.
  for (int x = 0; x < int(kLimits * theme().px(1)) - 3; ++x) EXPECT_FALSE(hasInk(image, x + 1, theme().accent)) << x;
}

RunChartContent chart() {
  RunChartContent content;
  ChartPanel panel;
  for (int run = 0; run < 5; ++run)
    panel.points.push_back({double(run), 10.0 + run, std::size_t(run), 0, false, QString()});
  panel.lines = {{ChartLine::Kind::kControl, 16, QStringLiteral("16 upper")},
                 {ChartLine::Kind::kCentre, 12, QStringLiteral("12 centre")},
                 {ChartLine::Kind::kControl, 8, QStringLiteral("8 lower")},
                 {ChartLine::Kind::kLimit, 1000, QStringLiteral("limit 1000")}};
  content.panels = {panel, panel};
  content.ticks = {{0, QStringLiteral("1 Mar")}, {4, QStringLiteral("2 Mar")}};
  return content;
}

TEST(RunChart, PointsAndControlLinesLieInsideTheirPanel) {
  const auto content = chart();
  const RunChartLayout layout(content, theme(), QRectF(0, 0, 700, 300));
  ASSERT_EQ(layout.panels().size(), 2u);
  for (std::size_t panel = 0; panel < 2; ++panel) {
    const QRectF plot = layout.panels()[panel].plot;
    EXPECT_TRUE(QRectF(0, 0, 700, 300).contains(plot));
    for (const auto& point : content.panels[panel].points)
      EXPECT_TRUE(plot.contains(layout.at(panel, point.x, point.value))) << point.value;
    for (const double line : {8.0, 12.0, 16.0}) EXPECT_TRUE(plot.contains(layout.at(panel, 2, line))) << line;
    EXPECT_LT(layout.panels()[panel].high, 1000) << "a limit far away does not squeeze the runs into a line";
  }
  EXPECT_FALSE(layout.panels()[0].plot.intersects(layout.panels()[1].plot));
}

// Source: an axis that grows upwards and to the right, in equal steps for equal steps.
TEST(RunChart, TheMappingIsStraight) {
  const auto content = chart();
  const RunChartLayout layout(content, theme(), QRectF(0, 0, 700, 300));
  const QPointF a = layout.at(0, 0, 10), b = layout.at(0, 1, 11), c = layout.at(0, 2, 12);
  EXPECT_LT(a.x(), b.x());
  EXPECT_GT(a.y(), b.y());
  EXPECT_NEAR(b.x() - a.x(), c.x() - b.x(), 1e-9);
  EXPECT_NEAR(b.y() - a.y(), c.y() - b.y(), 1e-9);
}

TEST(RunChart, ReadsRunsByKeysAndTellsThem) {
  RunChart widget;
  widget.resize(700, 300);
  auto content = chart();
  for (auto& panel : content.panels)
    for (auto& point : panel.points) point.tip = QStringLiteral("run %1").arg(point.run + 1);
  widget.setContent(content);
  widget.setAccessibleName(QStringLiteral("Control chart"));
  auto* heard = QAccessible::queryAccessibleInterface(&widget);
  ASSERT_NE(heard, nullptr);
  EXPECT_EQ(heard->role(), QAccessible::Chart);
  const auto press = [&widget](int key) {
    QKeyEvent event(QEvent::KeyPress, key, Qt::NoModifier);
    QApplication::sendEvent(&widget, &event);
  };
  press(Qt::Key_Left);
  EXPECT_EQ(heard->text(QAccessible::Value), "run 5") << "from the newest";
  press(Qt::Key_Left);
  EXPECT_EQ(heard->text(QAccessible::Value), "run 4");
  press(Qt::Key_Home);
  EXPECT_EQ(heard->text(QAccessible::Value), "run 1");
  press(Qt::Key_Left);
  EXPECT_EQ(heard->text(QAccessible::Value), "run 1");
}

}  // namespace
}  // namespace ovenwright::widgets
