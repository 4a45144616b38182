#include "app/desktop/import/sparkline.h"

#include <QPainter>
#include <algorithm>

#include "app/desktop/plot/polyline.h"

namespace ovenwright::desktop {

void Sparkline::show(std::shared_ptr<const RunView> view, std::size_t channel, bool pale, const widgets::Theme& theme) {
  m_view = std::move(view);
  m_channel = channel;
  m_pale = pale;
  m_theme = theme;
  setAccessibleName(
      QCoreApplication::translate("Sparkline", "Course of %1").arg(m_view->channels()[channel].look.name));
  update();
}

QSize Sparkline::sizeHint() const { return {int(m_theme.px(180)), int(m_theme.px(26))}; }

void Sparkline::paintEvent(QPaintEvent*) {
  if (!m_view) return;
  QPainter painter(this);
  painter.setRenderHint(QPainter::Antialiasing);
  const auto& run = m_view->run();
  const auto& shown = m_view->channels()[m_channel];
  const QRectF area = QRectF(rect()).adjusted(1, m_theme.px(3), -1, -m_theme.px(3));
  Mapping mapping;
  mapping.x_per_s = area.width() / std::max(1e-9, run.to_s - run.from_s);
  mapping.x0 = area.left() - run.from_s * mapping.x_per_s;
  double lowest = 0, highest = 1;
  if (shown.trace) {
    const auto extremes = shown.pyramid.extremes(shown.trace->temperature_C(), 0, shown.trace->size());
    lowest = extremes.lowest;
    highest = std::max(extremes.highest, lowest + 1);
  }
  mapping.y_per_C = -area.height() / (highest - lowest);
  mapping.y0 = area.bottom() - lowest * mapping.y_per_C;
  if (m_view->entry()) {
    painter.setPen(QPen(m_theme.quiet, m_theme.line(1), Qt::DotLine));
    const double x = mapping.x(m_view->entry()->at_s);
    painter.drawLine(QLineF(x, 0, x, height()));
  }
  const auto& channel = run.channels[m_channel];
  if (shown.trace) {
    QPen pen(m_pale ? m_theme.quiet : m_theme.thermocouple(shown.look.style).color, m_theme.line(1.4));
    if (shown.look.air) pen.setStyle(Qt::DashLine);
    double from_s = shown.trace->time_s().front();
    const auto draw = [&](double to_s) {
      QRectF clip = area.adjusted(-1, -1, 1, 1);
      clip.setLeft(std::max(clip.left(), mapping.x(from_s)));
      clip.setRight(std::min(clip.right(), mapping.x(to_s)));
      painter.setPen(pen);
      for (const auto& line :
           visiblePolylines(shown.trace->time_s(), shown.trace->temperature_C(), shown.pyramid, mapping, clip)) {
        painter.drawPolyline(line);
      }
    };
    for (const auto& gap : channel.gaps) {
      draw(gap.from_s);
      from_s = gap.to_s;
    }
    draw(shown.trace->time_s().back());
  }
  for (const auto& fault : channel.faults) {
    if (fault.action != run::FaultAction::kRemoved) continue;
    const double x = mapping.x(fault.from_s), width = mapping.x(fault.to_s) - x;
    if (width < m_theme.px(4)) {
      painter.setPen(QPen(m_theme.signal, m_theme.line(2)));
      painter.drawLine(QLineF(x, area.top(), x, area.top() + m_theme.px(9)));
    } else {
      painter.setPen(QPen(m_theme.signal, m_theme.line(1), Qt::DotLine));
      painter.drawRect(QRectF(x, 0.5, width, height() - 1));
    }
  }
}

}  // namespace ovenwright::desktop
