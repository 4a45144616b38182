#include "app/desktop/widgets/run_chart.h"

#include <QAccessible>
#include <QKeyEvent>
#include <QMouseEvent>
#include <QPainter>
#include <cmath>

#include "app/desktop/widgets/accessible_grid.h"
#include "app/desktop/widgets/glyphs.h"

namespace ovenwright::widgets {
namespace {

constexpr double kReach_px = 16;

}  // namespace

RunChart::RunChart(QWidget* parent) : QWidget(parent), m_theme(Theme::fromPalette(palette(), font())) {
  installAccessibility();
  setFocusPolicy(Qt::StrongFocus);
  setMouseTracking(true);
}

void RunChart::setContent(RunChartContent content) {
  m_content = std::move(content);
  m_chosen.reset();
  update();
}

QString RunChart::chosenText() const {
  return m_chosen ? m_content.panels[m_chosen->first].points[m_chosen->second].tip : QString();
}

QSize RunChart::sizeHint() const { return {int(m_theme.px(700)), int(m_theme.px(230))}; }
QSize RunChart::minimumSizeHint() const {
  return {int(m_theme.px(280)), int(m_theme.px(m_content.panels.size() > 1 ? 150 : 110))};
}

ChosenPoint RunChart::nearest(const QPointF& at) const {
  const RunChartLayout layout(m_content, m_theme, rect());
  ChosenPoint best;
  double closest = m_theme.px(kReach_px);
  for (std::size_t p = 0; p < m_content.panels.size(); ++p)
    for (std::size_t i = 0; i < m_content.panels[p].points.size(); ++i) {
      const auto& point = m_content.panels[p].points[i];
      const QPointF away = layout.at(p, point.x, point.value) - at;
      const double distance = std::hypot(away.x(), away.y());
      if (distance < closest) {
        closest = distance;
        best = {p, i};
      }
    }
  return best;
}

void RunChart::choose(const ChosenPoint& point, bool byKey) {
  if (point == m_chosen) return;
  m_chosen = point;
  update();
  if (!byKey || !point) return;
  QAccessibleValueChangeEvent event(this, chosenText());
  QAccessible::updateAccessibility(&event);
}

void RunChart::paintEvent(QPaintEvent*) {
  QPainter painter(this);
  paintRunChart(painter, rect(), m_content, m_theme, m_chosen);
  if (hasFocus()) paintFocusFrame(painter, rect(), m_theme);
}

void RunChart::keyPressEvent(QKeyEvent* event) {
  const std::size_t panel = m_chosen ? m_chosen->first : 0;
  if (panel >= m_content.panels.size() || m_content.panels[panel].points.empty()) {
    QWidget::keyPressEvent(event);
    return;
  }
  const auto& points = m_content.panels[panel].points;
  const std::size_t last = points.size() - 1, now = m_chosen ? m_chosen->second : last + 1;
  switch (event->key()) {
    case Qt::Key_Left:
      choose(ChosenPoint{{panel, now > 0 ? now - 1 : 0}}, true);
      return;
    case Qt::Key_Right:
      choose(ChosenPoint{{panel, m_chosen ? std::min(now + 1, last) : 0}}, true);
      return;
    case Qt::Key_Home:
      choose(ChosenPoint{{panel, 0}}, true);
      return;
    case Qt::Key_End:
      choose(ChosenPoint{{panel, last}}, true);
      return;
    case Qt::Key_Up:
    case Qt::Key_Down: {
      const std::size_t other = event->key() == Qt::Key_Up ? 0 : m_content.panels.size() - 1;
      const auto& its = m_content.panels[other].points;
      if (!its.empty()) choose(ChosenPoint{{other, std::min(m_chosen ? now : last, its.size() - 1)}}, true);
      return;
    }
    case Qt::Key_Return:
    case Qt::Key_Enter:
      if (m_chosen) emit runWanted(points[m_chosen->second].run);
      return;
    default:
      QWidget::keyPressEvent(event);
  }
}

void RunChart::mouseMoveEvent(QMouseEvent* event) { choose(nearest(event->position()), false); }

void RunChart::mousePressEvent(QMouseEvent* event) {
  if (const auto point = nearest(event->position()))
    emit runChosen(m_content.panels[point->first].points[point->second].run);
}

void RunChart::mouseDoubleClickEvent(QMouseEvent* event) {
  if (const auto point = nearest(event->position()))
    emit runWanted(m_content.panels[point->first].points[point->second].run);
}

void RunChart::leaveEvent(QEvent*) {
  if (!hasFocus()) choose(std::nullopt, false);
}

void RunChart::focusInEvent(QFocusEvent* event) {
  QWidget::focusInEvent(event);
  update();
}

void RunChart::focusOutEvent(QFocusEvent* event) {
  QWidget::focusOutEvent(event);
  choose(std::nullopt, false);
  update();
}

void RunChart::changeEvent(QEvent* event) {
  if (event->type() == QEvent::PaletteChange || event->type() == QEvent::FontChange) {
    m_theme = Theme::fromPalette(palette(), font());
    updateGeometry();
    update();
  }
  QWidget::changeEvent(event);
}

}  // namespace ovenwright::widgets
