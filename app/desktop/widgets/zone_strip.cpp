#include "app/desktop/widgets/zone_strip.h"

#include <QAccessible>
#include <QHelpEvent>
#include <QKeyEvent>
#include <QMouseEvent>
#include <QPainter>
#include <QToolTip>
#include <algorithm>
#include <cmath>

#include "app/desktop/widgets/accessible_grid.h"
#include "app/desktop/widgets/glyphs.h"
#include "app/desktop/widgets/wording.h"

namespace ovenwright::widgets {

ZoneStrip::ZoneStrip(QWidget* parent) : QWidget(parent), m_theme(Theme::fromPalette(palette(), font())) {
  installAccessibility();
  setFocusPolicy(Qt::StrongFocus);
  setMouseTracking(true);
  setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
  setAccessibleName(tr("Zone strip"));
}

ZoneStrip::~ZoneStrip() = default;

void ZoneStrip::setTable(ZoneTable table) {
  const QSize before = sizeHint();
  m_table = std::move(table);
  if (before != sizeHint()) updateGeometry();
  m_state.hovered.reset();
  if (m_state.current && *m_state.current >= m_table.cells.size()) m_state.current.reset();
  update();
  QAccessibleTableModelChangeEvent event(this, QAccessibleTableModelChangeEvent::ModelReset);
  QAccessible::updateAccessibility(&event);
}

ZoneStripLayout ZoneStrip::layoutNow() const { return ZoneStripLayout(m_table, m_axis, m_theme, rect()); }

QRectF ZoneStrip::lineRect() const {
  const QFontMetricsF metrics(m_theme.font(12));
  const qreal height = std::max(metrics.height(), m_theme.px(24));
  return {m_axis.leftInset, (this->height() - height) / 2, metrics.horizontalAdvance(stripLine(m_table)), height};
}

qreal ZoneStrip::leastLeftInset() const { return ZoneStripLayout::leastLeftInset(m_theme, m_table); }
qreal ZoneStrip::leastRightInset() const { return ZoneStripLayout::leastRightInset(m_theme, m_table); }

QSize ZoneStrip::sizeHint() const {
  constexpr qreal kOneLine = 26;  // what is missing, as a link
  const bool zones = m_table.state == ZoneTable::State::kZones;
  return {int(m_theme.px(600)),
          int(std::ceil(zones ? ZoneStripLayout::height(m_theme, m_table) : m_theme.px(kOneLine)))};
}

QSize ZoneStrip::minimumSizeHint() const { return {int(m_theme.px(240)), sizeHint().height()}; }

void ZoneStrip::setAxis(double from_s, double to_s, qreal leftInset, qreal rightInset) {
  m_axis = {from_s, to_s, leftInset, rightInset};
  update();
}

void ZoneStrip::activate(std::size_t cell) {
  m_state.current = cell;
  update();
  emit zoneActivated(m_table.cells[cell].name);
}

void ZoneStrip::activateLine() {
  if (m_table.state == ZoneTable::State::kNoOven) emit ovenWanted();
  if (m_table.state == ZoneTable::State::kNoEntry) emit entryWanted();
}

void ZoneStrip::hover(std::optional<std::size_t> cell) {
  if (m_state.hovered == cell) return;
  m_state.hovered = cell;
  update();
  emit zoneHovered(cell ? m_table.cells[*cell].name : QString());
}

QString ZoneStrip::tip(std::size_t index) const {
  const ZoneCell& cell = m_table.cells[index];
  const desktop::Format& format = m_table.format;
  const auto degrees = [&](const std::optional<double>& setpoint) {
    return setpoint ? format.temperatureWithUnit(*setpoint) : tr("no setpoint");
  };
  const QString setpoints =
      cell.cooling ? degrees(cell.top_C) : tr("top %1, bottom %2").arg(degrees(cell.top_C), degrees(cell.bottom_C));
  const double entry = m_table.entry_s.value_or(0);
  return tr("Zone %1: %2").arg(cell.name, setpoints) + u'\n' + changeTip(cell) +
         tr("%1 from %2 to %3 s from oven entry, %4 to %5 s on the log", "a placement in a zone")
             .arg(m_table.placement, format.number(cell.from_s, 1), format.number(cell.to_s, 1),
                  format.number(cell.from_s + entry, 1), format.number(cell.to_s + entry, 1));
}

QString ZoneStrip::changeTip(const ZoneCell& cell) const {
  if (!cell.changed()) return {};
  const auto degrees = [&](const std::optional<double>& change) {
    const desktop::Format& format = m_table.format;
    const QString text = format.limit(change.value_or(0), desktop::Format::Quantity::kDifference) + u' ' +
                         format.unit(desktop::Format::Quantity::kTemperature);
    return change.value_or(0) > 0 ? u'+' + text : text;
  };
  if (cell.cooling || cell.topChange_C == cell.bottomChange_C)
    return tr("B less A: %1", "the difference of two setpoints").arg(degrees(cell.topChange_C)) + u'\n';
  return tr("B less A: top %1, bottom %2").arg(degrees(cell.topChange_C), degrees(cell.bottomChange_C)) + u'\n';
}

bool ZoneStrip::event(QEvent* event) {
  if (event->type() == QEvent::ToolTip && m_table.state == ZoneTable::State::kZones) {
    const auto* help = static_cast<QHelpEvent*>(event);
    const auto layout = layoutNow();
    if (const auto cell = layout.cellAt(help->pos()))
      QToolTip::showText(help->globalPos(), Wording::asHtml(tip(*cell)), this);
    else if (help->pos().x() > layout.axisRect().right())
      QToolTip::showText(help->globalPos(), Wording::asHtml(stripNote(m_table).join(u' ')), this);
    else
      QToolTip::hideText();
    return true;
  }
  return QWidget::event(event);
}

void ZoneStrip::paintEvent(QPaintEvent*) {
  QPainter painter(this);
  m_state.focused = hasFocus();
  paintZoneStrip(painter, rect(), m_table, m_axis, m_theme, m_state);
  if (!hasFocus()) return;
  if (m_table.state != ZoneTable::State::kZones)
    paintFocusFrame(painter, lineRect().adjusted(-m_theme.px(4), 0, m_theme.px(4), 0), m_theme);
  else if (!m_state.current)
    paintFocusFrame(painter, rect(), m_theme);
}

void ZoneStrip::mousePressEvent(QMouseEvent* event) {
  if (event->button() != Qt::LeftButton) return;
  if (m_table.state != ZoneTable::State::kZones) {
    if (lineRect().contains(event->position())) activateLine();
    return;
  }
  if (const auto cell = layoutNow().cellAt(event->position())) activate(*cell);
}

void ZoneStrip::mouseMoveEvent(QMouseEvent* event) {
  if (m_table.state == ZoneTable::State::kZones) {
    unsetCursor();
    hover(layoutNow().cellAt(event->position()));
  } else {
    setCursor(lineRect().contains(event->position()) ? Qt::PointingHandCursor : Qt::ArrowCursor);
  }
}

void ZoneStrip::leaveEvent(QEvent*) { hover(std::nullopt); }

void ZoneStrip::keyPressEvent(QKeyEvent* event) {
  const bool enter = event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter || event->key() == Qt::Key_Space;
  if (m_table.state != ZoneTable::State::kZones) {
    if (enter) return activateLine();
    return QWidget::keyPressEvent(event);
  }
  const int last = int(m_table.cells.size()) - 1;
  const auto go = [&](int to) {
    m_state.current = static_cast<std::size_t>(std::clamp(to, 0, last));
    update();
    announceCell(this, 0, int(*m_state.current), last + 1);
  };
  if (last < 0) return QWidget::keyPressEvent(event);
  const int current = m_state.current ? int(*m_state.current) : -1;
  switch (event->key()) {
    case Qt::Key_Left:
      return go(current - 1);
    case Qt::Key_Right:
      return go(current + 1);
    case Qt::Key_Home:
      return go(0);
    case Qt::Key_End:
      return go(last);
    default:
      break;
  }
  if (enter && m_state.current) return activate(*m_state.current);
  QWidget::keyPressEvent(event);
}

void ZoneStrip::focusInEvent(QFocusEvent*) { update(); }
void ZoneStrip::focusOutEvent(QFocusEvent*) { update(); }

void ZoneStrip::changeEvent(QEvent* event) {
  QWidget::changeEvent(event);
  if (event->type() == QEvent::PaletteChange || event->type() == QEvent::FontChange) {
    m_theme = Theme::fromPalette(palette(), font());
    updateGeometry();
    update();
  }
}

}  // namespace ovenwright::widgets
