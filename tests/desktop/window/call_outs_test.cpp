#include <algorithm>

#include "app/desktop/plot/labels.h"
#include "tests/desktop/window/window_fixture.h"

// Call-outs stand clear of one another, of the key and of the chosen time, whatever the size of the plot.
namespace ovenwright::desktop {
namespace {

TEST_F(WindowTest, CallOutsNeverOverlap) {
  openDemo();
  const auto view = m_document->view();
  const Format format;
  Scene scene = makeScene(view, m_document->chosen(), std::nullopt, std::nullopt, format);
  ASSERT_FALSE(scene.callOuts.empty());
  // As many as there can be, all at the peaks, where it is narrowest.
  const auto peak = scene.callOuts.front();
  while (scene.callOuts.size() < 4) {
    auto more = peak;
    more.disc = int(scene.callOuts.size()) + 1;
    more.time_s += 4.0 * double(scene.callOuts.size());
    scene.callOuts.push_back(more);
  }
  for (const int points : {8, 10, 20}) {
    const auto theme = widgets::Theme::light(QFont(QStringLiteral("DejaVu Sans"), points));
    for (const double width : {300.0, 500.0, 850.0, 1400.0}) {
      for (const double height : {90.0, 150.0, 250.0, 500.0}) {
        SCOPED_TRACE(testing::Message() << points << " pt, " << width << 'x' << height);
        Canvas canvas;
        canvas.area = QRectF(58, 8, width, height);
        canvas.theme = &theme;
        canvas.format = &format;
        canvas.mapping.x_per_s = width / view->run().to_s;
        canvas.mapping.x0 = canvas.area.left();
        canvas.mapping.y_per_C = -height / 275;
        canvas.mapping.y0 = canvas.area.bottom();
        const QRectF key = makeKey(canvas, scene, {}, std::nullopt).rect;
        const double disc = theme.px(kDisc_px);
        std::vector<QRectF> taken;
        for (const auto& placed : placeCallOuts(canvas, scene, key)) {
          std::vector<QRectF> own{QRectF(placed.disc.x() - disc / 2, placed.disc.y() - disc / 2, disc, disc)};
          if (!placed.text.isEmpty()) own.push_back(placed.text);
          for (const QRectF& rect : own) {
            EXPECT_TRUE(canvas.area.contains(rect));
            EXPECT_FALSE(rect.intersects(key));
            EXPECT_TRUE(std::ranges::none_of(taken, [&](const QRectF& other) { return other.intersects(rect); }));
          }
          taken.insert(taken.end(), own.begin(), own.end());
        }
      }
    }
  }
}

}  // namespace
}  // namespace ovenwright::desktop
