#include "app/desktop/panels/close_up.h"

#include <QPainter>
#include <algorithm>
#include <cmath>

#include "app/desktop/plot/paint.h"
#include "app/desktop/widgets/glyphs.h"
#include "app/desktop/widgets/wording.h"

namespace ovenwright::desktop {
namespace {

constexpr double kHeight_px = 94, kLeft_px = 34, kMark_px = 4.5;

struct Range {
  double from, to;
};

/// The stretch of time around a result: wide enough to see how the curve comes and goes.
Range timeAround(const RunView& view, const judge::Outcome& outcome) {
  const double from = *outcome.value.from_s, to = outcome.value.to_s.value_or(from);
  const double run = view.run().to_s - view.run().from_s;
  const double around = std::max({0.35 * (to - from), 0.13 * run, 5 * view.run().sample_interval_s});
  return {std::max(view.run().from_s, from - around), std::min(view.run().to_s, to + around)};
}

/// The temperatures that matter there: the curve itself, and the limits of a temperature.
Range temperatureAround(const RunView& view, const judge::Outcome& outcome, Range time_s) {
  Range range{1e9, -1e9};
  const auto take = [&range](double temperature_C) {
    range.from = std::min(range.from, temperature_C);
    range.to = std::max(range.to, temperature_C);
  };
  const bool peak = outcome.measure.measure == measure::Measure::kPeak;
  for (std::size_t i = 0; i < view.channels().size(); ++i) {
    const auto& channel = view.channels()[i];
    if (!channel.trace || (outcome.channel && *outcome.channel != i)) continue;
    constexpr int kPlaces = 24;
    for (int place = 0; place <= kPlaces; ++place) {
      const double at_s = time_s.from + (time_s.to - time_s.from) * place / kPlaces;
      const double temperature_C = channel.trace->at(at_s);
      if (std::isfinite(temperature_C)) take(temperature_C);
    }
    if (peak) take(*channel.look.peak_C);
  }
  if (Format::quantity(outcome.measure.measure) == Format::Quantity::kTemperature) {
    if (outcome.lower) take(*outcome.lower);
    if (outcome.upper) take(*outcome.upper);
    // A peak stands low in its picture, so that what is short has room above it.
    constexpr double kUnderPeak_C = 14;
    if (peak && outcome.value.value)
      range.from = std::min(*outcome.value.value, outcome.lower.value_or(1e9)) - kUnderPeak_C;
  }
  const double more = std::max(1.0, 0.08 * (range.to - range.from));
  // Under an interval its length stands.
  const bool interval = outcome.value.to_s && *outcome.value.to_s > *outcome.value.from_s;
  constexpr double kUnderInterval = 0.26;
  return {range.from - (interval ? kUnderInterval * (range.to - range.from) : more), range.to + more};
}

}  // namespace

CloseUp::CloseUp(QWidget* parent) : QWidget(parent), m_theme(widgets::Theme::fromPalette(palette(), font())) {}

void CloseUp::show(Scene scene, std::size_t outcome, const widgets::Theme& theme, const Format& format) {
  m_scene = std::move(scene);
  m_outcome = outcome;
  m_scene.strong = m_scene.view->judgement().all(outcome).channel;
  m_theme = theme;
  m_format = format;
  setAccessibleName(tr("Where on the curve"));
  setAccessibleDescription(m_scene.chosen ? m_scene.chosen->label : QString());
  update();
}

QSize CloseUp::sizeHint() const { return {int(m_theme.px(200)), int(m_theme.px(kHeight_px))}; }

void CloseUp::paintEvent(QPaintEvent*) {
  if (!m_scene.view) return;
  const auto& outcome = m_scene.view->judgement().all(m_outcome);
  if (!outcome.value.from_s) return;
  QPainter painter(this);
  painter.setRenderHint(QPainter::Antialiasing);
  const Range time_s = timeAround(*m_scene.view, outcome);
  const Range temperature_C = temperatureAround(*m_scene.view, outcome, time_s);
  Canvas canvas;
  canvas.theme = &m_theme;
  canvas.format = &m_format;
  canvas.area = QRectF(rect()).adjusted(m_theme.px(kLeft_px), 0.5, -0.5, -m_theme.px(6));
  canvas.mapping.x_per_s = canvas.area.width() / (time_s.to - time_s.from);
  canvas.mapping.x0 = canvas.area.left() - time_s.from * canvas.mapping.x_per_s;
  canvas.mapping.y_per_C = -canvas.area.height() / (temperature_C.to - temperature_C.from);
  canvas.mapping.y0 = canvas.area.bottom() - temperature_C.from * canvas.mapping.y_per_C;

  painter.fillRect(canvas.area, m_theme.panel);
  paintBands(painter, canvas, m_scene);
  const bool moment = !outcome.value.to_s || *outcome.value.to_s == *outcome.value.from_s;
  if (!moment) paintHalos(painter, canvas, m_scene);
  paintCurves(painter, canvas, m_scene, {});
  if (!moment) paintBarbs(painter, canvas, m_scene);
  if (!moment) paintChosen(painter, canvas, m_scene);
  painter.setPen(QPen(m_theme.frame, m_theme.line(1)));
  painter.setBrush(Qt::NoBrush);
  painter.drawRect(canvas.area);

  // The temperatures of the bands' edges at the left, as long as they do not touch.
  painter.setFont(m_theme.font(11));
  const QFontMetricsF metrics(painter.font());
  painter.setPen(m_theme.secondary);
  std::vector<double> edges;
  for (const auto& band : m_scene.bands) edges.insert(edges.end(), {band.from_C, band.to_C});
  if (std::ranges::none_of(edges, [&](double edge) { return edge > temperature_C.from && edge < temperature_C.to; })) {
    edges = {std::floor(temperature_C.to / 10) * 10, std::ceil(temperature_C.from / 10) * 10};
  }
  std::ranges::sort(edges, std::ranges::greater{});
  double last_y = -1e9;
  for (const double edge_C : edges) {
    const double y = canvas.mapping.y(edge_C);
    if (y < canvas.area.top() - 1 || y > canvas.area.bottom() + 1 || y - last_y < metrics.height()) continue;
    const double top = std::clamp(y - metrics.height() / 2, 0.0, height() - metrics.height());
    painter.drawText(QRectF(0, top, canvas.area.left() - m_theme.px(5), metrics.height()),
                     Qt::AlignRight | Qt::AlignVCenter, m_format.limit(edge_C, Format::Quantity::kTemperature));
    last_y = y;
  }
  if (!moment || !outcome.channel || !outcome.value.value) return;
  const auto& shown = m_scene.view->channels()[*outcome.channel];
  const QPointF at(canvas.mapping.x(*outcome.value.from_s), canvas.mapping.y(shown.trace->at(*outcome.value.from_s)));
  const double radius = m_theme.px(kMark_px);
  widgets::paintMarker(painter, at, radius, m_theme.thermocouple(shown.look.style), true, m_theme.panel, m_theme);
  const QString words = widgets::Wording(m_format).distance(outcome);
  if (words.isEmpty() || Format::quantity(outcome.measure.measure) != Format::Quantity::kTemperature) return;
  widgets::paintRing(painter, at, radius, m_theme);
  const bool low = outcome.lower && *outcome.value.value < *outcome.lower;
  const double limit_y = canvas.mapping.y(low ? *outcome.lower : *outcome.upper), x = at.x() + m_theme.px(24);
  painter.setPen(QPen(m_theme.signal, m_theme.line(1.3)));
  painter.drawLine(QLineF(at.x() + radius * 2, at.y(), x + m_theme.px(4), at.y()));
  painter.drawLine(QLineF(x, at.y(), x, limit_y));
  painter.setFont(m_theme.font(12, true));
  const QSizeF size(QFontMetricsF(painter.font()).horizontalAdvance(words), QFontMetricsF(painter.font()).height());
  // Where there is room beside the distance, clear of the curves that the result lies on.
  const bool far = std::abs(limit_y - at.y()) > 2 * size.height();
  QPointF corner(x + m_theme.px(8), far ? (at.y() + limit_y - size.height()) / 2 : at.y() - m_theme.px(2));
  if (corner.x() + size.width() > canvas.area.right()) corner.setX(at.x() - m_theme.px(14) - size.width());
  corner.setY(std::min(corner.y(), canvas.area.bottom() - size.height()));
  painter.drawText(QRectF(corner, size), Qt::AlignCenter, words);
}

}  // namespace ovenwright::desktop
