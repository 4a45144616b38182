#include <qcustomplot.h>

#include <cmath>

#include "app/desktop/plot/curve_plot.h"
#include "app/desktop/plot/labels.h"

// What the mouse does in the curve plot.
namespace ovenwright::desktop {
namespace {

constexpr double kNear_px = 12;  // marks and curves are hit within this

}  // namespace

bool CurvePlot::eventFilter(QObject* object, QEvent* event) {
  if (object != m_plot || !m_scene.view) return QWidget::eventFilter(object, event);
  switch (event->type()) {
    case QEvent::MouseButtonPress:
      setFocus(Qt::MouseFocusReason);
      m_pressed = static_cast<QMouseEvent*>(event)->position();
      break;
    case QEvent::MouseButtonRelease: {
      const auto* mouse = static_cast<QMouseEvent*>(event);
      const bool moved = QLineF(m_pressed, mouse->position()).length() > QApplication::startDragDistance() / 2.0;
      if (mouse->button() == Qt::LeftButton && !moved) click(mouse->position());
      replot();  // with smooth edges again
      break;
    }
    case QEvent::MouseButtonDblClick:
      showWhole();
      return true;
    case QEvent::MouseMove: {
      if (static_cast<QMouseEvent*>(event)->buttons() & Qt::LeftButton) startMoving();
      const QPointF at = static_cast<QMouseEvent*>(event)->position();
      const Canvas now = canvas();
      m_cursorByKeys = false;
      setCursor_s(now.area.contains(at) ? std::optional(now.mapping.time_s(at.x())) : std::nullopt);
      break;
    }
    case QEvent::Leave:
      if (!m_cursorByKeys) setCursor_s(std::nullopt);
      break;
    case QEvent::Wheel: {
      startMoving();
      const bool temperature = static_cast<QWheelEvent*>(event)->modifiers().testFlag(Qt::ControlModifier);
      m_plot->axisRect()->setRangeZoom(temperature ? Qt::Vertical : Qt::Horizontal);
      break;
    }
    case QEvent::ToolTip: {
      const auto* help = static_cast<QHelpEvent*>(event);
      QToolTip::showText(help->globalPos(), toolTipAt(help->pos()), m_plot);
      return true;
    }
    default:
      break;
  }
  return QWidget::eventFilter(object, event);
}

std::optional<std::size_t> CurvePlot::channelNear(const QPointF& at) const {
  const Canvas now = canvas();
  if (!now.area.contains(at)) return std::nullopt;
  std::optional<std::size_t> nearest;
  double distance = m_theme->px(kNear_px);
  for (std::size_t i = 0; i < m_scene.view->channels().size(); ++i) {
    const auto& channel = m_scene.view->channels()[i];
    if (!channel.trace || isHidden(i)) continue;
    const double y = now.mapping.y(channel.trace->at(now.mapping.time_s(at.x())));
    if (std::abs(y - at.y()) < distance) {
      distance = std::abs(y - at.y());
      nearest = i;
    }
  }
  return nearest;
}

void CurvePlot::click(const QPointF& at) {
  const double disc = m_theme->px(kDisc_px);
  for (const auto& placed : m_callOuts) {
    const QRectF hit(placed.disc.x() - disc / 2, placed.disc.y() - disc / 2, disc, disc);
    if (!hit.contains(at) && !placed.text.contains(at)) continue;
    emit outcomeClicked(placed.callOut->outcome);
    return;
  }
  if (const auto channel = channelNear(at)) {
    emit channelClicked(*channel);
  } else {
    emit groundClicked();
  }
}

QString CurvePlot::toolTipAt(const QPointF& at) const {
  const auto channel = channelNear(at);
  if (!channel) return {};
  const auto& shown = m_scene.view->channels()[*channel];
  const double time_s = canvas().mapping.time_s(at.x());
  return tr("%1: %2 %3 at %4 s (%5 s on the log’s clock)")
      .arg(shown.look.name, m_format.temperature(shown.trace->at(time_s)),
           m_format.unit(Format::Quantity::kTemperature), m_format.seconds(time_s - m_scene.origin_s()),
           m_format.seconds(time_s));
}

}  // namespace ovenwright::desktop
