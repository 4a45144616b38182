#include <qcustomplot.h>

#include <algorithm>

#include "app/desktop/plot/curve_plot.h"

// What the keyboard does in the curve plot.
namespace ovenwright::desktop {

void CurvePlot::keyPressEvent(QKeyEvent* event) {
  const bool control = event->modifiers().testFlag(Qt::ControlModifier);
  const bool shift = event->modifiers().testFlag(Qt::ShiftModifier);
  switch (event->key()) {
    case Qt::Key_Left:
    case Qt::Key_Right: {
      const int by = event->key() == Qt::Key_Left ? -1 : 1;
      if (shift) {
        panBy(0.1 * by);
      } else if (control) {
        stepZone(by);
      } else {
        stepCursor(by);
      }
      return;
    }
    case Qt::Key_Up:
      stepChannel(-1);
      return;
    case Qt::Key_Down:
      stepChannel(1);
      return;
    case Qt::Key_Plus:
    case Qt::Key_Equal:
      zoomBy(1.5, m_cursor_s);
      return;
    case Qt::Key_Minus:
      zoomBy(1 / 1.5, m_cursor_s);
      return;
    case Qt::Key_0:
      showWhole();
      return;
    default:
      break;
  }
  if (event->modifiers().testFlag(Qt::AltModifier) && event->key() >= Qt::Key_1 && event->key() <= Qt::Key_9 &&
      m_scene.view) {
    const auto rank = std::size_t(event->key() - Qt::Key_1);
    const auto& order = m_scene.view->hottestFirst();
    if (rank < order.size()) setHidden(order[rank], !isHidden(order[rank]));
    return;
  }
  QWidget::keyPressEvent(event);
}

void CurvePlot::stepCursor(int samples) {
  if (!m_scene.view || m_scene.view->hottestFirst().empty()) return;
  const std::size_t channel = m_scene.channel.value_or(m_scene.view->hottestFirst().front());
  const auto* trace = m_scene.view->channels()[channel].trace;
  if (!trace) return;
  const auto time_s = trace->time_s();
  const double now = m_cursor_s.value_or((viewFrom_s() + viewTo_s()) / 2);
  auto index = std::ranges::lower_bound(time_s, now) - time_s.begin();
  index = std::clamp<std::ptrdiff_t>(index + samples, 0, std::ptrdiff_t(time_s.size()) - 1);
  m_cursorByKeys = true;
  const double next = time_s[std::size_t(index)];
  if (next < viewFrom_s() || next > viewTo_s()) {
    m_plot->xAxis->moveRange(next - now);
    replot();
  }
  setCursor_s(next);
}

void CurvePlot::stepZone(int zones) {
  if (!m_scene.view || m_scene.zoneBorders_s.empty()) return;
  const auto& borders = m_scene.zoneBorders_s;
  const double now = m_cursor_s.value_or(viewFrom_s());
  constexpr double kBeside_s = 1e-6;
  m_cursorByKeys = true;
  if (zones > 0) {
    const auto next = std::ranges::upper_bound(borders, now + kBeside_s);
    if (next != borders.end()) setCursor_s(*next);
  } else {
    const auto next = std::ranges::lower_bound(borders, now - kBeside_s);
    if (next != borders.begin()) setCursor_s(*(next - 1));
  }
}

void CurvePlot::stepChannel(int by) {
  if (!m_scene.view || m_scene.view->hottestFirst().empty()) return;
  const auto& order = m_scene.view->hottestFirst();
  const auto at = m_scene.channel ? std::ranges::find(order, *m_scene.channel) : order.end();
  std::ptrdiff_t rank = at == order.end() ? (by > 0 ? -1 : std::ptrdiff_t(order.size())) : at - order.begin();
  rank = std::clamp<std::ptrdiff_t>(rank + by, 0, std::ptrdiff_t(order.size()) - 1);
  emit channelClicked(order[std::size_t(rank)]);
}

void CurvePlot::focusInEvent(QFocusEvent* event) {
  QWidget::focusInEvent(event);
  replot();
}

void CurvePlot::focusOutEvent(QFocusEvent* event) {
  QWidget::focusOutEvent(event);
  if (m_cursorByKeys) setCursor_s(std::nullopt);
  replot();
}

}  // namespace ovenwright::desktop
