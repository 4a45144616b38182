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
    one(name + QStringLiteral("_light"), size, paint, Theme::light(font), scale);
    one(name + QStringLiteral("_dark"), size, paint, Theme::dark(font), scale);
  }

  void one(const QString& name, const QSizeF& size, const Paint& paint, const Theme& theme, qreal scale = 1) {
    QImage image((size * scale).toSize(), QImage::Format_RGB32);
    image.setDevicePixelRatio(scale);
    image.fill(theme.panel);
    QPainter painter(&image);
    paint(painter, QRectF(QPointF(0, 0), size), theme);
    painter.end();
    if (!image.save(m_folder.filePath(name + QStringLiteral(".png")))) m_failed = true;
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
  const StripAxis axis{0, 430, std::max(theme.px(58), ZoneStripLayout::leastLeftInset(theme, zones)),
                       std::max(theme.px(122), ZoneStripLayout::leastRightInset(theme, zones))};
  const qreal stripHeight = ZoneStripLayout::height(theme, zones);
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

/// Every kind of sentence under one another.
void paintSentences(QPainter& painter, const QRectF& area, const Theme& theme) {
  std::vector<SentenceContent> contents;
  for (const auto& judgement : {samples::tern(), samples::passing(), samples::everyState(), samples::manyChannels(6)})
    contents.push_back(sentenceOf(judgement));
  judge::Judgement assumed = samples::passing();
  assumed.window_assumed = assumed.bodies_not_judged = true;
  contents.push_back(sentenceOf(assumed));
  SentenceRun plain, name, bar, stop;
  plain.text = QStringLiteral("Reading ");
  name.text = QStringLiteral("qm2304_3.csv");
  name.strong = true;
  bar.progress = 0.62;
  stop.text = QStringLiteral("Stop");
  SentenceContent reading;
  reading.signKind = SentenceContent::Sign::kPale;
  reading.first = {plain, name};
  reading.second = {bar};
  reading.addLink(reading.second, stop, {});
  contents.push_back(reading);
  qreal y = area.top();
  for (const SentenceContent& content : contents) {
    const SentenceLayout layout(content, theme, area.width());
    layout.paint(painter, QPointF(area.left(), y), y == area.top() ? 1 : -1);
    y += layout.height();
    painter.fillRect(QRectF(area.left(), y, area.width(), theme.px(6)), theme.window);
    y += theme.px(6);
  }
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
  LanesState pointed;
  pointed.highlighted = 3;
  pointed.chosen = LaneTable::Position{2, 3};
  pointed.focused = true;
  gallery.picture(QStringLiteral("pointed"), QSizeF(984, 330),
                  lanes(laneTable(samples::tern(), samples::ternChannels()), pointed));
  LanesState opened;
  opened.opened = {0};
  gallery.picture(QStringLiteral("channels_32_opened"), QSizeF(900, 240),
                  lanes(laneTable(samples::manyChannels(32), samples::channels(32)), opened));
  gallery.picture(QStringLiteral("sentences"), QSizeF(984, 640), paintSentences);
  const QFont font(QApplication::font().family(), 10);
  gallery.one(QStringLiteral("check_print"), QSizeF(984, 480), paintCheck, Theme::print(font));
  QPalette highContrast;
  for (const auto role : {QPalette::Window, QPalette::Base}) highContrast.setColor(role, Qt::black);
  for (const auto role : {QPalette::WindowText, QPalette::Text}) highContrast.setColor(role, Qt::white);
  highContrast.setColor(QPalette::Highlight, Qt::yellow);
  highContrast.setColor(QPalette::HighlightedText, Qt::black);
  gallery.one(QStringLiteral("check_high_contrast"), QSizeF(984, 480), paintCheck,
              Theme::fromPalette(highContrast, font));
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
