#include "app/desktop/plot/curve_plot.h"

#include <qcustomplot.h>

#include <algorithm>
#include <cmath>

#include "app/desktop/plot/accessible_chart.h"
#include "app/desktop/plot/backdrop.h"
#include "app/desktop/plot/labels.h"
#include "app/desktop/plot/paint_item.h"
#include "app/desktop/plot/time_ticker.h"
#include "app/desktop/widgets/glyphs.h"

namespace ovenwright::desktop {
namespace {

constexpr double kLeft_px = 58, kRight_px = 122, kNoNames_px = 24, kMostRight_px = 190, kTop_px = 8, kBottom_px = 26;
constexpr double kYStep_C = 25, kYStep_F = 50;
constexpr int kRest_ms = 120;
constexpr double kMostRightShare = 0.28, kNarrow_px = 560, kTickGap_px = 14;
constexpr double kNarrowest_s = 0.5;

}  // namespace

CurvePlot::CurvePlot(QWidget* parent)
    : QWidget(parent),
      m_plot(new QCustomPlot(this)),
      m_rest(new QTimer(this)),
      m_theme(std::make_unique<widgets::Theme>(widgets::Theme::fromPalette(palette(), font()))),
      m_backdrop(std::make_unique<Backdrop>()) {
  installChartAccessibility();
  setFocusPolicy(Qt::StrongFocus);
  m_plot->setFocusPolicy(Qt::NoFocus);
  m_plot->setMouseTracking(true);
  m_plot->installEventFilter(this);
  m_plot->setNoAntialiasingOnDrag(true);
  m_plot->setInteractions(QCP::iRangeDrag | QCP::iRangeZoom);
  m_plot->axisRect()->setRangeDrag(Qt::Horizontal | Qt::Vertical);
  m_plot->axisRect()->setRangeZoom(Qt::Horizontal);
  m_plot->axisRect()->setAutoMargins(QCP::msNone);
  m_plot->plotLayout()->setMargins({});
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins({});
  layout->addWidget(m_plot);
  auto time_ticker = QSharedPointer<TimeTicker>::create();
  time_ticker->setTickCount(7);
  m_plot->xAxis->setTicker(time_ticker);
  m_plot->yAxis->ticker()->setTickCount(6);
  m_rest->setSingleShot(true);
  m_rest->setInterval(kRest_ms);
  connect(m_rest, &QTimer::timeout, this, &CurvePlot::replot);
  buildLayers();
  styleAxes();
  const auto range_changed = [this](const QCPRange& now, const QCPRange& before) {
    if (!m_scene.view) return;
    const double origin = m_scene.origin_s();
    double first = std::min(m_scene.view->run().from_s - origin, 0.0);
    double last = m_scene.view->run().to_s - origin;
    for (const auto& behind : m_scene.behind) last = std::max(last, behind.view->run().to_s + behind.later_s - origin);
    if (m_scene.clock) {
      first = std::min(first, m_scene.clock->seen_s[0]);
      last = std::max(last, m_scene.clock->seen_s[1]);
    }
    m_whole = false;
    const double size = std::clamp(now.size(), kNarrowest_s, std::max(kNarrowest_s, 1.2 * (last - first)));
    // The log's ends can be brought to the middle and no further, so that the curves are never lost.
    const double middle = now.size() == size ? now.center() : before.center();
    const double center = std::clamp(middle, first, std::max(first, last));
    const QCPRange allowed(center - size / 2, center + size / 2);
    if (std::abs(allowed.lower - now.lower) > 1e-9 || std::abs(allowed.upper - now.upper) > 1e-9) {
      m_plot->xAxis->setRange(allowed);
      return;
    }
    emit viewChanged();
  };
  connect(m_plot->xAxis, qOverload<const QCPRange&, const QCPRange&>(&QCPAxis::rangeChanged), this, range_changed);
}

CurvePlot::~CurvePlot() = default;

void CurvePlot::buildLayers() {
  struct Layer {
    const char* name;
    void (*paint)(QPainter&, const Canvas&, const Scene&);
  };
  m_plot->addLayer(QStringLiteral("bands"), m_plot->layer(QStringLiteral("grid")), QCustomPlot::limBelow);
  m_plot->axisRect()->setLayer(QStringLiteral("background"));
  const auto add = [this](const QString& layer, auto paint) {
    if (!m_plot->layer(layer)) m_plot->addLayer(layer, m_plot->layer(QStringLiteral("legend")), QCustomPlot::limBelow);
    new PaintItem(m_plot, layer, [this, paint](QPainter& painter) {
      if (m_scene.view) paint(painter, canvas());
    });
  };
  using P = QPainter&;
  using C = const Canvas&;
  add(QStringLiteral("bands"), [this](P p, C c) { paintBands(p, c, m_scene); });
  add(QStringLiteral("zones"), [this](P p, C c) { paintZoneBorders(p, c, m_scene); });
  add(QStringLiteral("behind"), [this](P p, C c) {
    paintErrorBands(p, c, m_scene, m_hidden);
    m_backdrop->paint(p, m_plot->size(), c, m_scene, m_hidden);
  });
  add(QStringLiteral("halos"), [this](P p, C c) { paintHalos(p, c, m_scene); });
  add(QStringLiteral("curves"), [this](P p, C c) {
    if (m_rawShown) paintRawSamples(p, c, m_scene, m_hidden);
    paintCurves(p, c, m_scene, m_hidden);
  });
  add(QStringLiteral("barbs"), [this](P p, C c) { paintBarbs(p, c, m_scene); });
  add(QStringLiteral("peaks"), [this](P p, C c) { paintPeaks(p, c, m_scene, m_hidden); });
  add(QStringLiteral("names"), [this](P p, C c) {
    if (m_scene.bandNames) paintBandNames(p, c, m_scene);
    paintTitle(p, c, m_scene);
    p.setFont(c.theme->font(12));
    p.setPen(c.theme->secondary);
    const double height = QFontMetricsF(p.font()).height();
    p.drawText(QRectF(0, unitTop(height), c.area.left() - c.theme->px(8), height), Qt::AlignRight | Qt::AlignTop,
               m_format.unit(Format::Quantity::kTemperature));
    const double left = std::max(c.area.right() + c.theme->px(8), lastTickEnd() + c.theme->px(kTickGap_px));
    const QString axis = QFontMetricsF(p.font()).elidedText(timeAxisName(), Qt::ElideRight, m_plot->width() - left + 1);
    p.drawText(QRectF(left, c.area.bottom() + c.theme->px(5), m_plot->width() - left, height),
               Qt::AlignLeft | Qt::AlignTop, axis);
  });
  add(QStringLiteral("call-outs"), [this](P p, C c) {
    paintChosen(p, c, m_scene);
    m_callOuts = placeCallOuts(c, m_scene, makeKey(c, m_scene, m_hidden, {}).rect);
    paintCallOuts(p, c, m_callOuts);
  });
  add(QStringLiteral("cursor"), [this](P p, C c) {
    const Key key = makeKey(c, m_scene, m_hidden, m_cursor_s);
    if (m_cursor_s) paintCursor(p, c, m_scene, m_hidden, *m_cursor_s);
    paintKey(p, c, m_scene, key);  // over the cursor, which would run through its figures
    if (!m_cursor_s) return;
    if (key.rect.isEmpty() || !key.values) paintKey(p, c, m_scene, makeCursorKey(c, m_scene, m_hidden, *m_cursor_s));
  });
  add(QStringLiteral("cursor"), [this](P p, C c) {
    if (!hasFocus()) return;
    // The toolkit shifts its painter by half a pixel, and its clip upwards by one: the lowest row is out of reach.
    p.save();
    p.resetTransform();
    widgets::paintFocusFrame(p, m_plot->rect().adjusted(0, 0, 0, -1), *c.theme);
    p.restore();
  });
  m_plot->layer(QStringLiteral("cursor"))->setMode(QCPLayer::lmBuffered);  // the cursor moves without the curves
}

void CurvePlot::styleAxes() {
  const auto& theme = *m_theme;
  m_plot->setBackground(theme.panel);
  // The right inset takes the bands' names; the left one, and both at least, what the zone strip needs.
  const QFontMetricsF metrics(theme.font(12));
  double right = std::max(theme.px(kRight_px), m_leastRight);
  if (!m_scene.bandNames) right = std::max(theme.px(kNoNames_px), m_leastRight);
  // Large text in a narrow plot: the curves keep most of it, and long names are cut.
  const double most = std::max(right, std::min(theme.px(kMostRight_px), kMostRightShare * width()));
  for (const auto& band : m_scene.bands) {
    if (!m_scene.bandNames) break;
    right = std::max(right, std::min(most, metrics.horizontalAdvance(band.label) + theme.px(14)));
  }
  // The name of the time axis stands clear of a last tick whose text reaches out of the axes.
  if (m_scene.view && m_scene.bandNames) {
    const double reach = metrics.horizontalAdvance(QStringLiteral("000")) / 2 + theme.px(kTickGap_px);
    right = std::max(right, std::min(most, reach + metrics.horizontalAdvance(timeAxisName()) + theme.px(4)));
  }
  m_plot->axisRect()->setMargins(QMargins(int(std::max(theme.px(kLeft_px), m_leastLeft)), int(theme.px(kTop_px)),
                                          int(right), int(theme.px(kBottom_px))));
  for (QCPAxis* axis : {m_plot->xAxis, m_plot->yAxis}) {
    axis->setBasePen(QPen(theme.frame, theme.line(1)));
    axis->setTickPen(Qt::NoPen);
    axis->setSubTickPen(Qt::NoPen);
    axis->setTickLabelFont(theme.font(12));
    axis->setTickLabelColor(theme.secondary);
    axis->setTickLabelPadding(int(theme.px(6)));
    axis->grid()->setPen(QPen(theme.hairline, theme.line(1)));
    axis->grid()->setZeroLinePen(QPen(theme.hairline, theme.line(1)));
  }
  // The zone strip stands under the axis: vertical lines are the zones' borders, where they are known.
  m_plot->xAxis->grid()->setVisible(!m_scene.view || m_scene.zoneBorders_s.empty());
}

QString CurvePlot::timeAxisName() const {
  if (!m_scene.view) return {};
  const QString seconds = tr("s", "seconds, at the time axis");
  if (m_scene.clock) return m_scene.bandNames ? m_scene.clock->name : seconds;
  if (width() < m_theme->px(kNarrow_px)) return seconds;
  return m_scene.view->entry() ? tr("s from oven entry") : tr("s on the log’s clock");
}

double CurvePlot::unitTop(double height) const {
  const QCPAxis& axis = *m_plot->yAxis;
  QVector<double> ticks;
  axis.ticker()->generate(axis.range(), m_plot->locale(), u'f', 0, ticks, nullptr, nullptr);
  const double bottom = axis.axisRect()->bottom(), half = QFontMetricsF(axis.tickLabelFont()).height() / 2;
  double first = bottom, second = bottom;  // from the top
  for (const double tick : ticks) {
    if (!axis.range().contains(tick)) continue;
    const double at = axis.coordToPixel(tick);
    second = at < first ? first : std::min(second, at);
    first = std::min(first, at);
  }
  if (first - half >= 0.75 * height) return 0;
  if (second - first >= 2 * half + height) return first + half;
  return bottom + m_theme->px(5);
}

double CurvePlot::lastTickEnd() const {
  const QCPAxis& axis = *m_plot->xAxis;
  QVector<double> ticks;
  QVector<QString> labels;
  axis.ticker()->generate(axis.range(), m_plot->locale(), u'f', 0, ticks, nullptr, &labels);
  double end = 0;
  const QFontMetricsF metrics(axis.tickLabelFont());
  for (qsizetype i = 0; i < ticks.size(); ++i) {
    if (!axis.range().contains(ticks[i])) continue;
    end = std::max(end, axis.coordToPixel(ticks[i]) + metrics.horizontalAdvance(labels[i]) / 2);
  }
  return end;
}

void CurvePlot::setTheme(const widgets::Theme& theme) {
  *m_theme = theme;
  m_backdrop->forget();
  styleAxes();
  replot();
}

void CurvePlot::setFormat(const Format& format) {
  m_format = format;
  m_plot->setLocale(format.locale());
}

void CurvePlot::setScene(Scene scene) {
  const auto subject = [](const Scene& of) { return of.subject ? of.subject.get() : of.view.get(); };
  const bool same_run = m_scene.view && scene.view && &subject(m_scene)->run() == &subject(scene)->run();
  const bool same_clock = m_scene.clock == scene.clock;
  m_scene = std::move(scene);
  styleAxes();
  if (!same_run) {
    m_cursor_s.reset();
    m_hidden.assign(m_scene.view ? m_scene.view->channels().size() : 0, false);
  }
  if (!same_run || !same_clock || (m_whole && m_scene.subject)) showWhole();
  replot();
}

void CurvePlot::setLeastInsets(double left, double right) {
  if (m_leastLeft == left && m_leastRight == right) return;
  m_leastLeft = left;
  m_leastRight = right;
  styleAxes();
  replot();
}

void CurvePlot::setRawSamplesShown(bool shown) {
  m_rawShown = shown;
  replot();
}

void CurvePlot::setHidden(std::size_t channel, bool hidden) {
  if (channel >= m_hidden.size()) return;
  m_hidden[channel] = hidden;
  replot();
}

void CurvePlot::setCursor_s(std::optional<double> time_s) {
  if (m_cursor_s == time_s) return;
  m_cursor_s = time_s;
  m_plot->layer(QStringLiteral("cursor"))->replot();
  emit cursorMoved(time_s);
  if (!QAccessible::isActive()) return;
  QAccessibleValueChangeEvent event(this, cursorText());
  QAccessible::updateAccessibility(&event);
}

void CurvePlot::startMoving() { m_rest->start(); }

void CurvePlot::zoomBy(double factor, std::optional<double> around_s) {
  if (!m_scene.view) return;
  startMoving();
  const double center = around_s ? *around_s - m_scene.origin_s() : m_plot->xAxis->range().center();
  m_plot->xAxis->scaleRange(1 / factor, center);
  replot();
}

void CurvePlot::panBy(double fraction) {
  startMoving();
  m_plot->xAxis->moveRange(fraction * m_plot->xAxis->range().size());
  replot();
}

void CurvePlot::showWhole() {
  if (!m_scene.view) return;
  const double origin = m_scene.origin_s();
  double highest_C = 0, end_s = 0;
  const auto include = [&](const RunView& view) {
    for (const auto& channel : view.channels()) highest_C = std::max(highest_C, channel.look.peak_C.value_or(0));
    end_s = std::max(end_s, view.run().to_s);
  };
  include(*m_scene.view);
  for (const auto& behind : m_scene.behind) include(*behind.view);
  for (const auto& band : m_scene.bands) highest_C = std::max(highest_C, band.to_C);
  if (m_scene.clock) highest_C = std::max(highest_C, m_scene.clock->highest_C);
  const bool fahrenheit = m_format.temperatureUnit() == TemperatureUnit::kFahrenheit;
  const double step = fahrenheit ? kYStep_F : kYStep_C;
  const double highest = m_format.shown(highest_C, Format::Quantity::kTemperature);
  m_plot->yAxis->setRange(0, std::max(step, (std::floor(highest / step) + 1) * step));
  if (m_scene.clock) {
    const auto& [first, last] = m_scene.clock->seen_s;
    m_plot->xAxis->setRange(first, std::max(first + kNarrowest_s, last));
  } else {
    const double from = m_scene.view->entry() ? 0 : m_scene.view->run().from_s;
    m_plot->xAxis->setRange(from, std::max(from + kNarrowest_s, (end_s - origin) * 1.01));
  }
  m_whole = true;
  replot();
  emit viewChanged();
}

void CurvePlot::showStretch(double from_s, double to_s) {
  if (!m_scene.view) return;
  const double origin = m_scene.origin_s();
  const double around = std::max(to_s - from_s, 20 * m_scene.view->run().sample_interval_s);
  m_plot->xAxis->setRange(from_s - origin - around, to_s - origin + around);
  replot();
}

void CurvePlot::showSeconds(double from, double to) {
  if (!m_scene.view) return;
  const QCPRange now = m_plot->xAxis->range();
  if (std::abs(now.lower - from) < 1e-9 && std::abs(now.upper - to) < 1e-9) return;
  startMoving();
  m_plot->xAxis->setRange(from, to);
  replot();
}

void CurvePlot::replotNow() { m_plot->replot(QCustomPlot::rpImmediateRefresh); }

double CurvePlot::viewFrom_s() const { return m_plot->xAxis->range().lower + (m_scene.view ? m_scene.origin_s() : 0); }

double CurvePlot::viewTo_s() const { return m_plot->xAxis->range().upper + (m_scene.view ? m_scene.origin_s() : 0); }

QRectF CurvePlot::axes() const { return m_plot->axisRect()->rect().translated(m_plot->pos()); }

QSize CurvePlot::sizeHint() const { return {int(m_theme->px(700)), int(m_theme->px(300))}; }
QSize CurvePlot::minimumSizeHint() const { return {int(m_theme->px(320)), int(m_theme->px(150))}; }

void CurvePlot::replot() { m_plot->replot(QCustomPlot::rpQueuedReplot); }

Canvas CurvePlot::canvas() const {
  Canvas canvas;
  canvas.area = m_plot->axisRect()->rect();
  canvas.theme = m_theme.get();
  canvas.format = &m_format;
  canvas.moving = m_rest->isActive();
  canvas.room_right = m_plot->width() - canvas.area.right();
  const auto& x = *m_plot->xAxis;
  const auto& y = *m_plot->yAxis;
  canvas.mapping.x_per_s = canvas.area.width() / x.range().size();
  canvas.mapping.x0 = canvas.area.left() - (x.range().lower + m_scene.origin_s()) * canvas.mapping.x_per_s;
  const double per_unit = -canvas.area.height() / y.range().size();
  const double at_zero_C = m_format.shown(0, Format::Quantity::kTemperature);
  canvas.mapping.y_per_C = per_unit * (m_format.shown(1, Format::Quantity::kTemperature) - at_zero_C);
  canvas.mapping.y0 = canvas.area.bottom() + (at_zero_C - y.range().lower) * per_unit;
  return canvas;
}

void CurvePlot::resizeEvent(QResizeEvent* event) {
  QWidget::resizeEvent(event);
  styleAxes();                                                                     // the insets depend on the width
  QMetaObject::invokeMethod(this, &CurvePlot::viewChanged, Qt::QueuedConnection);  // once the plot is laid out
}

QString CurvePlot::cursorText() const {
  if (!m_scene.view || !m_cursor_s) return {};
  QStringList readings;
  for (const std::size_t channel : m_scene.view->hottestFirst()) {
    const auto& shown = m_scene.view->channels()[channel];
    if (!shown.trace || isHidden(channel) || (m_scene.channel && *m_scene.channel != channel)) continue;
    const double reading_C = shown.trace->at(*m_cursor_s);
    if (!std::isfinite(reading_C)) continue;
    readings << shown.look.name + u' ' + m_format.temperature(reading_C) + u' ' +
                    m_format.unit(Format::Quantity::kTemperature);
  }
  return cursorHeading(m_scene, m_format, *m_cursor_s) + QStringLiteral(": ") + readings.join(QStringLiteral(", "));
}

}  // namespace ovenwright::desktop
