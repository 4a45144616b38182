#include "app/desktop/widgets/theme.h"

#include <gtest/gtest.h>

#include <QFont>
#include <QImage>
#include <QPainter>
#include <array>
#include <set>

#include "app/desktop/widgets/glyphs.h"

namespace ovenwright::widgets {
namespace {

Theme light() { return Theme::light(QFont(QStringLiteral("DejaVu Sans"), 10)); }
Theme dark() { return Theme::dark(QFont(QStringLiteral("DejaVu Sans"), 10)); }

// Source: WCAG 2.1, "contrast ratio": black on white is 21:1, a colour on itself 1:1; #777777 on white is
// 4.48:1, just under the 4.5:1 of success criterion 1.4.3.
TEST(Contrast, IsThatOfTheSpecification) {
  EXPECT_NEAR(contrastRatio(Qt::black, Qt::white), 21, 1e-9);
  EXPECT_NEAR(contrastRatio(Qt::white, Qt::black), 21, 1e-9);
  EXPECT_NEAR(contrastRatio(QColor(0x3492D0), QColor(0x3492D0)), 1, 1e-12);
  EXPECT_NEAR(contrastRatio(QColor(0x777777), Qt::white), 4.48, 0.005);
}

// Ratios as the palette was designed with, to the digit they were written with: on the panel and on the window.
constexpr double kWritten = 0.051;

TEST(Palette, TextsHaveTheContrastTheyWereDesignedWith) {
  const auto check = [](const QColor& ink, const Theme& theme, double onPanel, double onWindow) {
    EXPECT_NEAR(contrastRatio(ink, theme.panel), onPanel, kWritten) << ink.name().toStdString();
    EXPECT_NEAR(contrastRatio(ink, theme.window), onWindow, kWritten) << ink.name().toStdString();
  };
  const Theme l = light(), d = dark();
  check(l.text, l, 16.3, 14.8);
  check(l.secondary, l, 8.1, 7.4);
  check(l.quiet, l, 6.1, 5.5);
  check(l.accent, l, 7.4, 6.7);
  check(l.signal, l, 6.4, 5.8);
  check(d.text, d, 12.4, 13.8);
  check(d.secondary, d, 8.3, 9.1);
  check(d.quiet, d, 5.5, 6.0);
  check(d.accent, d, 7.6, 8.4);
  check(d.signal, d, 7.0, 7.8);
  EXPECT_NEAR(contrastRatio(l.text, l.accentSoft), 13.9, kWritten);
  EXPECT_NEAR(contrastRatio(d.text, d.accentSoft), 10.3, kWritten);
}

TEST(Palette, ThermocouplesStandOutFromThePanel) {
  const std::array<double, 6> onLight = {8.0, 4.1, 4.6, 3.6, 3.4, 14.8};
  const std::array<double, 6> onDark = {4.6, 5.5, 5.9, 7.2, 9.9, 13.5};
  const Theme l = light(), d = dark();
  for (std::size_t i = 0; i < 6; ++i) {
    EXPECT_NEAR(contrastRatio(l.thermocouples[i], l.panel), onLight[i], kWritten) << i;
    EXPECT_NEAR(contrastRatio(d.thermocouples[i], d.panel), onDark[i], kWritten) << i;
    // Source: WCAG 2.1, success criterion 1.4.11: 3:1 for graphical objects.
    EXPECT_GE(contrastRatio(l.thermocouples[i], l.panel), 3) << i;
    EXPECT_GE(contrastRatio(d.thermocouples[i], d.panel), 3) << i;
  }
}

// Source: WCAG 2.1, success criterion 1.4.3: 4.5:1 for text.
TEST(Palette, InkOnFilledPartsCanBeRead) {
  for (const Theme& theme : {light(), dark()}) {
    EXPECT_GE(contrastRatio(theme.onSignal, theme.signal), 4.5);
    EXPECT_GE(contrastRatio(theme.onAccent, theme.accent), 4.5);
  }
}

TEST(Thermocouple, ColourAndShapeTogetherAreUniqueTo36) {
  const Theme theme = light();
  std::set<std::pair<QRgb, int>> seen;
  for (std::size_t k = 0; k < 36; ++k) {
    const ThermocoupleStyle style = theme.thermocouple(k);
    EXPECT_EQ(style.color, theme.thermocouples[k % 6]);
    seen.insert({style.color.rgb(), int(style.marker)});
  }
  EXPECT_EQ(seen.size(), 36u);
  EXPECT_EQ(theme.thermocouple(0).marker, Marker::kCircle);
  EXPECT_EQ(theme.thermocouple(6).marker, Marker::kSquare);
}

TEST(ThemeKind, FollowsThePalette) {
  const QFont font(QStringLiteral("DejaVu Sans"), 10);
  EXPECT_EQ(Theme::fromPalette(light().toPalette(), font).kind, Theme::Kind::kLight);
  EXPECT_EQ(Theme::fromPalette(dark().toPalette(), font).kind, Theme::Kind::kDark);
}

TEST(ThemeKind, HighContrastTakesEveryRoleFromThePalette) {
  QPalette palette;
  for (const auto role : {QPalette::Window, QPalette::Base}) palette.setColor(role, Qt::black);
  for (const auto role : {QPalette::WindowText, QPalette::Text}) palette.setColor(role, Qt::white);
  palette.setColor(QPalette::Highlight, Qt::yellow);
  palette.setColor(QPalette::HighlightedText, Qt::black);
  const Theme theme = Theme::fromPalette(palette, QFont(QStringLiteral("DejaVu Sans"), 10));
  EXPECT_EQ(theme.kind, Theme::Kind::kHighContrast);
  EXPECT_EQ(theme.panel, QColor(Qt::black));
  EXPECT_EQ(theme.signal, QColor(Qt::white));
  EXPECT_EQ(theme.accent, QColor(Qt::yellow));
  for (const QColor& color : theme.thermocouples) EXPECT_EQ(color, QColor(Qt::white));
}

// Design, section 3: every role takes the palette's text, base and highlight; so a guard band has no grey.
TEST(ThemeKind, HighContrastKnowsNoShades) {
  QPalette palette;
  palette.setColor(QPalette::Base, Qt::black);
  palette.setColor(QPalette::Window, Qt::black);
  palette.setColor(QPalette::Text, Qt::white);
  const Theme theme = Theme::fromPalette(palette, QFont(QStringLiteral("DejaVu Sans"), 10));
  ASSERT_EQ(theme.kind, Theme::Kind::kHighContrast);
  EXPECT_EQ(theme.tinted(theme.text, 0.5), theme.panel);
  QImage image(40, 40, QImage::Format_RGB32);
  image.fill(theme.panel);
  QPainter painter(&image);
  paintDotGrid(painter, image.rect(), theme);
  painter.end();
  int dots = 0;
  for (int x = 0; x < image.width(); ++x)
    for (int y = 0; y < image.height(); ++y) {
      const QColor found = image.pixelColor(x, y);
      ASSERT_TRUE(found == theme.panel || found == theme.text) << x << ' ' << y;
      dots += found == theme.text;
    }
  EXPECT_GT(dots, 0);
}

TEST(Sizes, FollowTheFont) {
  const Theme ten = light();
  EXPECT_DOUBLE_EQ(ten.px(13), 13);  // 10 pt at 96 dpi are 13 px
  EXPECT_EQ(ten.font(17).pixelSize(), 17);
  const Theme twenty = Theme::light(QFont(QStringLiteral("DejaVu Sans"), 20));
  EXPECT_NEAR(twenty.px(13), 26.67, 0.67);  // 20 pt are 26.67 px, which fonts round to a whole pixel
}

}  // namespace
}  // namespace ovenwright::widgets
