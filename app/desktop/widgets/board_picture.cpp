#include "app/desktop/widgets/board_picture.h"

#include <QAccessible>
#include <QHelpEvent>
#include <QKeyEvent>
#include <QMouseEvent>
#include <QPainter>
#include <QToolTip>
#include <algorithm>

#include "app/desktop/widgets/accessible_grid.h"
#include "app/desktop/widgets/glyphs.h"
#include "app/desktop/widgets/wording.h"

namespace ovenwright::widgets {

BoardPicture::BoardPicture(QWidget* parent) : QWidget(parent), m_theme(Theme::fromPalette(palette(), font())) {
  installAccessibility();
  setFocusPolicy(Qt::StrongFocus);
  setMouseTracking(true);
  setAccessibleName(tr("Board"));
}

BoardPicture::~BoardPicture() = default;

void BoardPicture::setTable(std::optional<BoardTable> table) {
  m_hasBoard = table.has_value();
  m_table = table ? std::move(*table) : BoardTable{};
  m_state = {};
  setAccessibleDescription(m_table.title);
  update();
  QAccessibleTableModelChangeEvent event(this, QAccessibleTableModelChangeEvent::ModelReset);
  QAccessible::updateAccessibility(&event);
}

QSize BoardPicture::sizeHint() const { return {int(m_theme.px(944)), int(m_theme.px(372))}; }
QSize BoardPicture::minimumSizeHint() const { return {int(m_theme.px(560)), int(m_theme.px(200))}; }

void BoardPicture::setChosenOutcome(std::optional<std::size_t> outcome) {
  m_state.chosen.reset();
  for (std::size_t i = 0; outcome && i < m_table.marks.size(); ++i)
    if (m_table.marks[i].mark && m_table.marks[i].mark->outcome == *outcome) m_state.chosen = i;
  update();
}

void BoardPicture::setHighlightedChannel(std::optional<std::size_t> channel) {
  m_state.hovered.reset();
  for (std::size_t i = 0; channel && i < m_table.marks.size(); ++i)
    if (m_table.marks[i].channel == *channel) m_state.hovered = i;
  update();
}

void BoardPicture::choose(std::size_t mark) {
  m_state.chosen = mark;
  update();
  announceCell(this, int(mark), 0, 1);
  if (m_table.marks[mark].mark) emit chosen(m_table.marks[mark].mark->outcome);
}

void BoardPicture::hover(std::optional<std::size_t> mark) {
  if (m_state.hovered == mark) return;
  m_state.hovered = mark;
  update();
  emit channelHovered(mark ? std::optional(m_table.marks[*mark].channel) : std::nullopt);
}

QString BoardPicture::line() const {
  return m_hasBoard ? QString() : tr("Choose a board to see where each thermocouple sits");
}

QRectF BoardPicture::lineRect() const {
  const QFontMetricsF metrics(m_theme.font(12));
  return {m_theme.px(16), m_theme.px(12), metrics.horizontalAdvance(line()),
          std::max(m_theme.px(24), metrics.height())};
}

bool BoardPicture::event(QEvent* event) {
  if (event->type() == QEvent::ToolTip) {
    const auto* help = static_cast<QHelpEvent*>(event);
    const auto mark = m_hasBoard ? layoutNow().markAt(help->pos()) : std::nullopt;
    if (mark && m_table.marks[*mark].mark)
      QToolTip::showText(help->globalPos(), Wording::asHtml(m_table.marks[*mark].mark->tip), this);
    else
      QToolTip::hideText();
    return true;
  }
  return QWidget::event(event);
}

void BoardPicture::paintEvent(QPaintEvent*) {
  QPainter painter(this);
  painter.fillRect(rect(), m_theme.panel);
  m_state.focused = hasFocus();
  if (m_hasBoard) {
    paintBoard(painter, rect(), m_table, m_theme, m_state);
  } else {
    QFont font = m_theme.font(12);
    font.setUnderline(true);
    painter.setFont(font);
    painter.setPen(m_theme.accent);
    painter.drawText(lineRect(), int(Qt::AlignLeft | Qt::AlignVCenter), line());
  }
  if (hasFocus() && !m_state.chosen) paintFocusFrame(painter, m_hasBoard ? QRectF(rect()) : lineRect(), m_theme);
}

void BoardPicture::mousePressEvent(QMouseEvent* event) {
  if (event->button() != Qt::LeftButton) return;
  if (!m_hasBoard) {
    if (lineRect().contains(event->position())) emit boardWanted();
    return;
  }
  if (const auto mark = layoutNow().markAt(event->position())) choose(*mark);
}

void BoardPicture::mouseDoubleClickEvent(QMouseEvent* event) {
  const auto mark = m_hasBoard ? layoutNow().markAt(event->position()) : std::nullopt;
  if (mark && m_table.marks[*mark].mark) emit activated(m_table.marks[*mark].mark->outcome);
}

void BoardPicture::mouseMoveEvent(QMouseEvent* event) {
  if (m_hasBoard)
    hover(layoutNow().markAt(event->position()));
  else
    setCursor(lineRect().contains(event->position()) ? Qt::PointingHandCursor : Qt::ArrowCursor);
}

void BoardPicture::leaveEvent(QEvent*) { hover(std::nullopt); }

/// Through the call-outs from top to bottom, first those at the left.
void BoardPicture::step(int by) {
  auto callouts = layoutNow().callouts();
  if (callouts.empty()) return;
  std::ranges::stable_sort(callouts, std::ranges::greater{}, &BoardLayout::Callout::left);
  const auto at = std::ranges::find_if(callouts, [this](const auto& c) { return m_state.chosen == c.mark; });
  const int last = int(callouts.size()) - 1;
  const int to = at == callouts.end() ? (by > 0 ? 0 : last) : std::clamp(int(at - callouts.begin()) + by, 0, last);
  choose(callouts[std::size_t(to)].mark);
}

void BoardPicture::keyPressEvent(QKeyEvent* event) {
  switch (event->key()) {
    case Qt::Key_Up:
    case Qt::Key_Left:
      return step(-1);
    case Qt::Key_Down:
    case Qt::Key_Right:
      return step(1);
    case Qt::Key_Home:
      return step(-int(m_table.marks.size()));
    case Qt::Key_End:
      return step(int(m_table.marks.size()));
    case Qt::Key_Return:
    case Qt::Key_Enter:
      if (!m_hasBoard) emit boardWanted();
      if (m_state.chosen && m_table.marks[*m_state.chosen].mark)
        emit activated(m_table.marks[*m_state.chosen].mark->outcome);
      return;
    default:
      QWidget::keyPressEvent(event);
  }
}

void BoardPicture::focusInEvent(QFocusEvent*) { update(); }
void BoardPicture::focusOutEvent(QFocusEvent*) { update(); }

void BoardPicture::changeEvent(QEvent* event) {
  QWidget::changeEvent(event);
  if (event->type() == QEvent::PaletteChange || event->type() == QEvent::FontChange) {
    m_theme = Theme::fromPalette(palette(), font());
    updateGeometry();
    update();
  }
}

}  // namespace ovenwright::widgets
