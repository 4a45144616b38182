#include "app/desktop/widgets/limit_lanes.h"

#include <QAccessible>
#include <QClipboard>
#include <QGuiApplication>
#include <QHelpEvent>
#include <QKeyEvent>
#include <QMouseEvent>
#include <QPainter>
#include <QScrollBar>
#include <QToolTip>
#include <algorithm>
#include <cmath>

#include "app/desktop/widgets/accessible_grid.h"
#include "app/desktop/widgets/glyphs.h"
#include "app/desktop/widgets/wording.h"

namespace ovenwright::widgets {

LimitLanes::LimitLanes(QWidget* parent) : QAbstractScrollArea(parent), m_theme(Theme::fromPalette(palette(), font())) {
  installAccessibility();
  setFrameShape(QFrame::NoFrame);
  setFocusPolicy(Qt::StrongFocus);
  setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  viewport()->setMouseTracking(true);
  setAccessibleName(tr("Limit lanes"));
  setAccessibleDescription(tr("One row for each requirement, one cell for each thermocouple."));
}

LimitLanes::~LimitLanes() = default;

void LimitLanes::setTable(LaneTable table) {
  const auto outcome = chosenOutcome();
  m_table = std::move(table);
  m_state.chosen = outcome ? m_table.find(*outcome) : std::nullopt;
  m_state.opened.clear();
  updateScrollBar();
  viewport()->update();
  QAccessibleTableModelChangeEvent event(this, QAccessibleTableModelChangeEvent::ModelReset);
  QAccessible::updateAccessibility(&event);
}

void LimitLanes::setDimmed(bool dimmed) {
  m_state.dimmed = dimmed;
  viewport()->update();
}

std::optional<std::size_t> LimitLanes::chosenOutcome() const {
  if (!m_state.chosen) return std::nullopt;
  return m_table.at(*m_state.chosen).outcome;
}

LanesLayout LimitLanes::layoutNow() const {
  const qreal header = LanesLayout(LaneTable{}, m_theme, 0, 0, {}).headerHeight();
  return LanesLayout(m_table, m_theme, viewport()->width(), viewport()->height() - header, m_state.opened);
}

QPointF LimitLanes::toViewport(const QPointF& lanePoint) const {
  return lanePoint + QPointF(0, layoutNow().headerHeight() - m_state.scroll);
}

QPointF LimitLanes::toLanes(const QPointF& viewportPoint) const {
  return viewportPoint - QPointF(0, layoutNow().headerHeight() - m_state.scroll);
}

QSize LimitLanes::minimumSizeHint() const { return {int(m_theme.px(400)), int(m_theme.px(90))}; }

QSize LimitLanes::sizeHint() const {
  const LanesLayout layout(m_table, m_theme, m_theme.px(944), QWIDGETSIZE_MAX, m_state.opened);
  return {int(m_theme.px(944)), int(std::ceil(layout.headerHeight() + layout.contentHeight()))};
}

int LimitLanes::leastHeight() const {
  const LanesLayout layout(m_table, m_theme, std::max(viewport()->width(), 1), 0, m_state.opened);
  return int(std::ceil(layout.headerHeight() + layout.contentHeight()));
}

QString LimitLanes::rowAsText(std::size_t lane) const { return m_table.lanes[lane].rowText; }

QPixmap LimitLanes::asPicture() const {
  const LanesLayout layout(m_table, m_theme, viewport()->width(), QWIDGETSIZE_MAX, m_state.opened);
  const QSizeF size(viewport()->width(), std::ceil(layout.headerHeight() + layout.contentHeight()));
  QPixmap picture((size * devicePixelRatioF()).toSize());
  picture.setDevicePixelRatio(devicePixelRatioF());
  picture.fill(m_theme.panel);
  QPainter painter(&picture);
  LanesState state = m_state;
  state.scroll = 0;
  state.focused = false;
  state.highlighted.reset();
  paintLanes(painter, QRectF(QPointF(0, 0), size), m_table, m_theme, state, layout);
  return picture;
}

void LimitLanes::setChosenOutcome(std::optional<std::size_t> outcome) {
  m_state.chosen = outcome ? m_table.find(*outcome) : std::nullopt;
  if (m_state.chosen) reveal(m_state.chosen->lane);
  viewport()->update();
}

void LimitLanes::setHighlightedChannel(std::optional<std::size_t> channel) {
  if (m_state.highlighted == channel) return;
  m_state.highlighted = channel;
  viewport()->update();
}

void LimitLanes::choose(const LaneTable::Position& position) {
  m_state.chosen = position;
  reveal(position.lane);
  viewport()->update();
  const Lane& lane = m_table.lanes[position.lane];
  announceCell(this, int(position.lane), int(m_table.column(lane, m_table.at(position))), int(m_table.columns()));
  emit chosen(m_table.at(position).outcome);
}

void LimitLanes::updateScrollBar() {
  const LanesLayout layout = layoutNow();
  const int page = int(viewport()->height() - layout.headerHeight());
  verticalScrollBar()->setPageStep(std::max(0, page));
  verticalScrollBar()->setSingleStep(int(m_theme.px(18)));
  verticalScrollBar()->setRange(0, std::max(0, int(std::ceil(layout.contentHeight())) - page));
  m_state.scroll = verticalScrollBar()->value();
}

void LimitLanes::scrollContentsBy(int, int) {
  m_state.scroll = verticalScrollBar()->value();
  viewport()->update();
}

void LimitLanes::reveal(std::size_t lane) {
  const LanesLayout layout = layoutNow();
  const QRectF row = layout.row(lane);
  QScrollBar* bar = verticalScrollBar();
  if (row.top() < bar->value()) bar->setValue(int(row.top()));
  if (row.bottom() > bar->value() + bar->pageStep()) bar->setValue(int(std::ceil(row.bottom())) - bar->pageStep());
}

void LimitLanes::hover(std::optional<std::size_t> channel) {
  if (m_state.highlighted == channel) return;
  setHighlightedChannel(channel);
  emit channelHovered(channel);
}

bool LimitLanes::viewportEvent(QEvent* event) {
  if (event->type() == QEvent::ToolTip) {
    const auto* help = static_cast<QHelpEvent*>(event);
    if (!showTip(help->pos(), help->globalPos())) QToolTip::hideText();
    return true;
  }
  if (event->type() == QEvent::Leave) hover(std::nullopt);
  return QAbstractScrollArea::viewportEvent(event);
}

bool LimitLanes::showTip(const QPoint& at, const QPoint& global) {
  const LanesLayout layout = layoutNow();
  if (at.y() < layout.headerHeight()) return false;
  const QPointF point = toLanes(at);
  const auto index = layout.laneAt(point.y());
  if (!index) return false;
  const Lane& lane = m_table.lanes[*index];
  const LaneColumns& c = layout.columns();
  QString text;
  if (const auto mark = layout.markAt(point); mark && point.x() >= c.body.left && point.x() <= c.body.right)
    text = m_table.at(*mark).tip;
  else if (point.x() < c.titleRight)
    text = lane.note.isEmpty() ? lane.title : tr("%1, %2", "requirement and its note").arg(lane.title, lane.note);
  else if (point.x() < c.body.left)
    text = lane.lowerTip;
  else if (point.x() > c.body.right && point.x() < c.signLeft)
    text = lane.upperTip;
  else if (const auto summed = layout.summaryMark(*index, point.x()))
    text = lane.marks[*summed].tip;
  if (text.isEmpty()) return false;
  QToolTip::showText(global, Wording::asHtml(text), viewport());
  return true;
}

void LimitLanes::paintEvent(QPaintEvent*) {
  QPainter painter(viewport());
  painter.fillRect(viewport()->rect(), m_theme.panel);
  m_state.focused = hasFocus();
  paintLanes(painter, viewport()->rect(), m_table, m_theme, m_state, layoutNow());
  if (hasFocus() && !m_state.chosen) paintFocusFrame(painter, viewport()->rect(), m_theme);
}

void LimitLanes::resizeEvent(QResizeEvent*) { updateScrollBar(); }

void LimitLanes::mousePressEvent(QMouseEvent* event) {
  if (event->button() != Qt::LeftButton) return;
  const LanesLayout layout = layoutNow();
  if (event->position().y() < layout.headerHeight()) return;
  const QPointF point = toLanes(event->position());
  const auto lane = layout.laneAt(point.y());
  if (!lane || m_table.lanes[*lane].marks.empty()) return;
  if (layout.grouped(*lane)) {
    m_state.opened.insert(*lane);
    updateScrollBar();
  }
  const auto mark = layout.markAt(point);
  const auto summed = layout.summaryMark(*lane, point.x());
  choose(mark ? *mark : LaneTable::Position{*lane, summed.value_or(m_table.lanes[*lane].worst.mark)});
}

void LimitLanes::mouseDoubleClickEvent(QMouseEvent* event) {
  if (event->button() == Qt::LeftButton && m_state.chosen) emit activated(m_table.at(*m_state.chosen).outcome);
}

void LimitLanes::mouseMoveEvent(QMouseEvent* event) {
  const LanesLayout layout = layoutNow();
  if (event->position().y() < layout.headerHeight()) return hover(std::nullopt);
  const QPointF point = toLanes(event->position());
  if (point.x() < layout.columns().body.left || point.x() > layout.columns().body.right) return hover(std::nullopt);
  const auto mark = layout.markAt(point);
  hover(mark ? m_table.at(*mark).channel : std::nullopt);
}

std::size_t LimitLanes::markNear(std::size_t lane, const LaneMark& from) const {
  const auto& marks = m_table.lanes[lane].marks;
  // On the same side of a comparison where it has one.
  const auto nearest = std::ranges::min_element(marks, {}, [&](const LaneMark& mark) {
    return std::pair(mark.side != from.side, std::abs(double(mark.track) - double(from.track)));
  });
  return static_cast<std::size_t>(nearest - marks.begin());
}

void LimitLanes::move(int lanes, int marks) {
  if (m_table.lanes.empty()) return;
  if (!m_state.chosen) return choose({0, m_table.lanes[0].worst.mark});
  LaneTable::Position to = *m_state.chosen;
  const LaneMark from = m_table.at(to);
  if (lanes != 0) {
    to.lane = static_cast<std::size_t>(std::clamp(int(to.lane) + lanes, 0, int(m_table.lanes.size()) - 1));
    to.mark = markNear(to.lane, from);
  }
  if (marks != 0)
    to.mark =
        static_cast<std::size_t>(std::clamp(int(to.mark) + marks, 0, int(m_table.lanes[to.lane].marks.size()) - 1));
  choose(to);
}

void LimitLanes::moveToEnd(bool hottest) {
  if (m_table.lanes.empty()) return;
  const std::size_t lane = m_state.chosen ? m_state.chosen->lane : 0;
  choose({lane, hottest ? 0 : m_table.lanes[lane].marks.size() - 1});
}

void LimitLanes::keyPressEvent(QKeyEvent* event) {
  const bool control = event->modifiers() & Qt::ControlModifier;
  const bool shift = event->modifiers() & Qt::ShiftModifier;
  if (control && event->key() == Qt::Key_C) {
    if (shift) {
      QGuiApplication::clipboard()->setPixmap(asPicture());
      emit pictureCopied();
    } else if (m_state.chosen) {
      QGuiApplication::clipboard()->setText(rowAsText(m_state.chosen->lane));
      emit rowCopied();
    }
    return;
  }
  if (control) return QAbstractScrollArea::keyPressEvent(event);
  switch (event->key()) {
    case Qt::Key_Up:
      return move(-1, 0);
    case Qt::Key_Down:
      return move(1, 0);
    case Qt::Key_Left:
      return move(0, -1);
    case Qt::Key_Right:
      return move(0, 1);
    case Qt::Key_Home:
      return moveToEnd(true);
    case Qt::Key_End:
      return moveToEnd(false);
    case Qt::Key_Return:
    case Qt::Key_Enter:
      if (m_state.chosen) emit activated(m_table.at(*m_state.chosen).outcome);
      return;
    case Qt::Key_Escape:
      if (!m_state.chosen) break;
      m_state.chosen.reset();
      viewport()->update();
      emit choiceCleared();
      return;
    default:
      break;
  }
  QAbstractScrollArea::keyPressEvent(event);
}

void LimitLanes::focusInEvent(QFocusEvent* event) {
  QAbstractScrollArea::focusInEvent(event);
  viewport()->update();
}

void LimitLanes::focusOutEvent(QFocusEvent* event) {
  QAbstractScrollArea::focusOutEvent(event);
  viewport()->update();
}

void LimitLanes::changeEvent(QEvent* event) {
  QAbstractScrollArea::changeEvent(event);
  if (event->type() == QEvent::PaletteChange || event->type() == QEvent::FontChange) {
    m_theme = Theme::fromPalette(palette(), font());
    updateScrollBar();
    viewport()->update();
  }
}

}  // namespace ovenwright::widgets
