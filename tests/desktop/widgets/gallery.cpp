// Renders the painted widgets with made-up judgements into PNG files: widget_gallery FOLDER.
#include <QApplication>
#include <QDir>
#include <QPainter>
#include <QStyleFactory>
#include <cstdio>
#include <functional>

#include "app/desktop/widgets/board_painter.h"
#include "app/desktop/widgets/lanes_painter.h"
#include "app/desktop/widgets/sentence_layout.h"
#include "app/desktop/widgets/zone_strip_painter.h"
#include "tests/desktop/widgets/samples.h"

namespace ovenwright::widgets {
namespace {

using Paint = std::function<void(QPainter&, const QRectF&, const Theme&)>;

class Gallery {
 public:
  explicit Gallery(const QString& folder) : m_folder(folder) {}

  /// Once light, once dark.
  void picture(const QString& name, const QSizeF& size, const Paint& paint, int pointSize = 10, qreal scale = 1) {
    const QFont font(QApplication::font().family(), pointSize);
    for (const bool dark : {false, true}) {
      const Theme theme = dark ? Theme::dark(font) : Theme::light(font);
      QImage image((size * scale).toSize(), QImage::Format_RGB32);
      image.setDevicePixelRatio(scale);
      image.fill(theme.panel);
      QPainter painter(&image);
      paint(painter, QRectF(QPointF(0, 0), size), theme);
      painter.end();
      const QString file =
          m_folder.filePath(name + (dark ? QStringLiteral("_dark.png") : QStringLiteral("_light.png")));
      if (!image.save(file)) m_failed = true;
    }
  }

  bool failed() const { return m_failed; }

 private:
  QDir m_folder;
  bool m_failed = false;
};

Paint lanes(const LaneTable& table, const LanesState& state = {}) {
  return [=](QPainter& painter, const QRectF& area, const Theme& theme) {
    paintLanes(painter, area, table, theme, state);
  };
}

/// Sentence, strip and lanes under one another, as on the Check screen.
void paintCheck(QPainter& painter, const QRectF& area, const Theme& theme) {
  const judge::Judgement judgement = samples::tern();
  const SentenceLayout sentence(sentenceOf(judgement), theme, area.width());
  sentence.paint(painter, area.topLeft());
  qreal y = area.top() + sentence.height();
  const oven::Oven oven = samples::tenZoneOven();
  const oven::Recipe recipe = samples::ternRecipe();
  const ZoneTable zones =
      zoneTable(&oven, &recipe, samples::ternEntry(), {124, QStringLiteral("U12 centre")}, &judgement);
  const StripAxis axis{0, 430, std::max(theme.px(58), ZoneStripLayout::leastLeftInset(theme)),
                       std::max(theme.px(122), ZoneStripLayout::leastRightInset(theme, zones))};
  const qreal stripHeight = ZoneStripLayout::height(theme);
  paintZoneStrip(painter, QRectF(area.left(), y, area.width(), stripHeight), zones, axis, theme);
  y += stripHeight + theme.px(8);
  const LaneTable table = laneTable(judgement, samples::ternChannels());
  LanesState state;
  state.chosen = table.find(samples::kTernPeak);
  paintLanes(painter, QRectF(area.left(), y, area.width(), area.bottom() - y), table, theme, state);
}

/// The board with the peaks.
Paint board(const QImage& photo) {
  return [=](QPainter& painter, const QRectF& area, const Theme& theme) {
    const judge::Judgement judgement = samples::tern();
    const Channels channels = samples::ternChannels();
    const LaneTable table = laneTable(judgement, channels);
    paintBoard(painter, area, boardTable(samples::ternBoard(), photo, channels, judgement, &table.lanes[3]), theme);
  };
}

void paintAll(Gallery& gallery) {
  gallery.picture(QStringLiteral("check"), QSizeF(984, 480), paintCheck);
  gallery.picture(QStringLiteral("check_small"), QSizeF(920, 390), paintCheck);
  gallery.picture(QStringLiteral("check_wide"), QSizeF(1336, 480), paintCheck);
  gallery.picture(QStringLiteral("check_8pt"), QSizeF(984, 420), paintCheck, 8);
  gallery.picture(QStringLiteral("check_20pt"), QSizeF(1700, 900), paintCheck, 20);
  gallery.picture(QStringLiteral("check_2x"), QSizeF(984, 480), paintCheck, 10, 2);
  gallery.picture(QStringLiteral("states"), QSizeF(900, 360),
                  lanes(laneTable(samples::everyState(), samples::channels(1))));
  gallery.picture(QStringLiteral("board"), QSizeF(984, 390), board({}));
  gallery.picture(QStringLiteral("board_low"), QSizeF(700, 230), board({}));
  for (const std::size_t count : {1, 2, 6, 9, 12, 32})
    gallery.picture(QStringLiteral("channels_%1").arg(count), QSizeF(900, 130),
                    lanes(laneTable(samples::manyChannels(count), samples::channels(count))));
}

}  // namespace
}  // namespace ovenwright::widgets

int main(int argc, char** argv) {
  if (qEnvironmentVariableIsEmpty("QT_QPA_PLATFORM")) qputenv("QT_QPA_PLATFORM", "offscreen");
  const QApplication application(argc, argv);
  QApplication::setStyle(QStyleFactory::create(QStringLiteral("Fusion")));
  QLocale::setDefault(QLocale::c());
  if (argc != 2 || !QDir().mkpath(QString::fromLocal8Bit(argv[1]))) {
    std::fputs("usage: widget_gallery FOLDER\n", stderr);
    return 2;
  }
  ovenwright::widgets::Gallery gallery(QString::fromLocal8Bit(argv[1]));
  ovenwright::widgets::paintAll(gallery);
  return gallery.failed() ? 4 : 0;
}
