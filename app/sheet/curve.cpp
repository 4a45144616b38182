#include "app/sheet/curve.h"

#include <QCoreApplication>
#include <QPainter>
#include <algorithm>
#include <array>
#include <cmath>

#include "app/desktop/plot/labels.h"
#include "app/desktop/plot/paint.h"
#include "app/desktop/widgets/zone_strip_painter.h"
#include "app/sheet/paragraph.h"

namespace ovenwright::sheet {
namespace {

using desktop::Format;

struct Words {
  Q_DECLARE_TR_FUNCTIONS(Sheet)
};

constexpr double kGridStep_C = 50, kTopStep_C = 25;
constexpr qreal kTop = 6, kAxis = 20;
constexpr int kMostTimeTicks = 9;

double timeStep(double span_s) {
  for (const double step_s : {1.0, 2.0, 5.0, 10.0, 15.0, 30.0, 60.0, 120.0, 300.0, 600.0, 1800.0})
    if (span_s / step_s <= kMostTimeTicks) return step_s;
  return std::pow(10.0, std::ceil(std::log10(span_s / kMostTimeTicks)));
}

}  // namespace

CurvePicture::CurvePicture(std::shared_ptr<const desktop::RunView> view, const Format& format,
                           const widgets::Theme& theme)
    : m_scene(desktop::makeScene(view, {}, {}, {}, format)), m_format(format), m_theme(theme) {
  const auto place = widgets::stripPlace(view->board() ? &*view->board() : nullptr, nullptr, {});
  m_zones = widgets::zoneTable(view->oven() ? &*view->oven() : nullptr, view->recipe() ? &*view->recipe() : nullptr,
                               view->entry(), place, &view->judgement());
  measure();
}

CurvePicture::CurvePicture(desktop::Scene scene, const Format& format, const widgets::Theme& theme)
    : m_scene(std::move(scene)), m_format(format), m_theme(theme) {
  measure();
}

void CurvePicture::measure() {
  const auto& view = *m_scene.view;
  if (m_scene.clock) {
    m_from_s = m_scene.clock->seen_s[0];
    m_to_s = std::max(m_from_s + 1, m_scene.clock->seen_s[1]);
  } else {
    m_from_s = view.entry() ? 0 : view.run().from_s;
    m_to_s = std::max(m_from_s + 1, view.run().to_s - m_scene.origin_s());
  }
  double highest_C = m_scene.clock ? m_scene.clock->highest_C : 0;
  for (const auto& channel : view.channels()) highest_C = std::max(highest_C, channel.look.peak_C.value_or(0));
  for (const auto& band : m_scene.bands) highest_C = std::max(highest_C, band.to_C);
  m_highest = (std::floor(highest_C / kTopStep_C) + 1) * kTopStep_C;
  const QFont font = m_theme.font(12);
  const bool zones = m_zones.state == widgets::ZoneTable::State::kZones;
  m_left = m_theme.px(44);
  m_right = m_scene.bandNames ? m_theme.px(96) : m_theme.px(20);
  if (zones || !m_scene.clock) {
    m_left = std::max(m_left, widgets::ZoneStripLayout::leastLeftInset(m_theme, m_zones));
    m_right = std::max(m_right, widgets::ZoneStripLayout::leastRightInset(m_theme, m_zones));
  }
  for (const auto& band : m_scene.bands) {
    if (!m_scene.bandNames) break;
    m_right = std::max(m_right, std::min(m_theme.px(170), lineWidth(band.label, font) + m_theme.px(14)));
  }
}

qreal CurvePicture::stripHeight() const {
  return m_zones.state == widgets::ZoneTable::State::kZones ? widgets::ZoneStripLayout::height(m_theme, m_zones) : 0;
}

void CurvePicture::paintAxes(QPainter& painter, const QRectF& axes) const {
  const QFont font = m_theme.font(12);
  const qreal line = lineHeight(font);
  for (double at = 0; at <= m_highest; at += kGridStep_C) {
    const qreal y = axes.bottom() - axes.height() * at / m_highest;
    painter.setPen(QPen(m_theme.hairline, m_theme.line(1)));
    painter.drawLine(QLineF(axes.left(), y, axes.right(), y));
    const double shown = m_format.shown(at, Format::Quantity::kTemperature);
    paintLine(painter, QRectF(axes.left() - m_left, y - line / 2, m_left - m_theme.px(8), line),
              m_format.number(shown, 0), font, m_theme.secondary, Qt::AlignRight);
  }
  const double span_s = m_to_s - m_from_s;
  const double step_s = timeStep(span_s);
  for (double at_s = std::ceil(m_from_s / step_s) * step_s; at_s <= m_to_s; at_s += step_s) {
    const qreal x = axes.left() + axes.width() * (at_s - m_from_s) / span_s;
    painter.setPen(QPen(m_theme.hairline, m_theme.line(1)));
    if (m_scene.zoneBorders_s.empty()) painter.drawLine(QLineF(x, axes.top(), x, axes.bottom()));
    painter.setPen(QPen(m_theme.frame, m_theme.line(1)));
    painter.drawLine(QLineF(x, axes.bottom(), x, axes.bottom() + m_theme.px(4)));
    paintLine(painter, QRectF(x - 40, axes.bottom() + m_theme.px(4), 80, line), m_format.number(at_s, 0), font,
              m_theme.secondary, Qt::AlignHCenter);
  }
  painter.setPen(QPen(m_theme.frame, m_theme.line(1)));
  painter.drawLine(axes.bottomLeft(), axes.bottomRight());
  painter.drawLine(axes.topLeft(), axes.bottomLeft());
  QString clock = m_scene.view->entry() ? Words::tr("s from oven entry") : Words::tr("s on the log's clock");
  if (m_scene.clock) clock = m_scene.bandNames ? m_scene.clock->name : QStringLiteral("s");
  paintLine(painter, QRectF(axes.right() + m_theme.px(8), axes.bottom() + m_theme.px(4), m_right - m_theme.px(8), line),
            clock, font, m_theme.secondary);
}

void CurvePicture::paint(QPainter& painter, const QRectF& rect) const {
  const QRectF axes = rect.adjusted(m_left, kTop, -m_right, -kAxis - stripHeight());
  desktop::Canvas canvas;
  canvas.area = axes;
  canvas.theme = &m_theme;
  canvas.format = &m_format;
  canvas.room_right = m_right;
  canvas.mapping.x_per_s = axes.width() / (m_to_s - m_from_s);
  canvas.mapping.x0 = axes.left() - (m_from_s + m_scene.origin_s()) * canvas.mapping.x_per_s;
  canvas.mapping.y_per_C = -axes.height() / m_highest;
  canvas.mapping.y0 = axes.bottom();
  painter.setRenderHint(QPainter::Antialiasing);
  desktop::paintBands(painter, canvas, m_scene);
  paintAxes(painter, axes);
  desktop::paintZoneBorders(painter, canvas, m_scene);
  desktop::paintBehind(painter, canvas, m_scene, {});
  desktop::paintHalos(painter, canvas, m_scene);
  desktop::paintCurves(painter, canvas, m_scene, {});
  desktop::paintBarbs(painter, canvas, m_scene);
  desktop::paintPeaks(painter, canvas, m_scene, {});
  if (m_scene.bandNames) desktop::paintBandNames(painter, canvas, m_scene);
  desktop::paintTitle(painter, canvas, m_scene);
  if (m_scene.key == desktop::Scene::Key::kNames)
    desktop::paintKey(painter, canvas, m_scene, desktop::makeKey(canvas, m_scene, {}, {}));
  const auto unit = m_format.unit(Format::Quantity::kTemperature);
  const QFont font = m_theme.font(12);
  // Over the temperatures; where the highest of them stands there, under it.
  const qreal line = lineHeight(font), over = rect.top() - kTop;
  const double highest = std::floor(m_highest / kGridStep_C) * kGridStep_C;
  const qreal text = axes.bottom() - axes.height() * highest / m_highest - line / 2;
  paintLine(painter, QRectF(rect.left(), text < over + 0.75 * line ? text + line : over, m_left - m_theme.px(8), line),
            unit, font, m_theme.secondary, Qt::AlignRight);
  desktop::paintCallOuts(painter, canvas, desktop::placeCallOuts(canvas, m_scene, QRectF()));
  if (stripHeight() > 0) {
    const QRectF strip(rect.left(), rect.bottom() - stripHeight(), rect.width(), stripHeight());
    widgets::paintZoneStrip(painter, strip, m_zones, {m_from_s, m_to_s, m_left, m_right}, m_theme);
  }
}

}  // namespace ovenwright::sheet
