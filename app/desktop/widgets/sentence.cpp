#include "app/desktop/widgets/sentence.h"

#include <QAccessible>
#include <QFocusEvent>
#include <QKeyEvent>
#include <QMouseEvent>
#include <QPainter>
#include <algorithm>
#include <cmath>

#include "app/desktop/widgets/accessible_grid.h"
#include "app/desktop/widgets/glyphs.h"

namespace ovenwright::widgets {
namespace {

constexpr int kBetweenAnnouncements_ms = 2000;

}  // namespace

Sentence::Sentence(QWidget* parent) : QWidget(parent), m_theme(Theme::fromPalette(palette(), font())) {
  installAccessibility();
  setMouseTracking(true);
  setFocusPolicy(Qt::StrongFocus);
  QSizePolicy policy(QSizePolicy::Expanding, QSizePolicy::Preferred);
  policy.setHeightForWidth(true);
  setSizePolicy(policy);
  m_announceLater.setSingleShot(true);
  connect(&m_announceLater, &QTimer::timeout, this, &Sentence::announce);
}

Sentence::~Sentence() = default;

void Sentence::setContent(SentenceContent content) {
  using enum SentenceContent::Sign;
  const bool verdictChanged = (content.signKind == kVerdict || content.signKind == kBarred) &&
                              (m_content.signKind != content.signKind || m_content.verdict != content.verdict);
  const int focused = m_focusedLink;
  const QString words = focused < 0 ? QString() : m_content.linkText(focused);
  m_content = std::move(content);
  const bool stays = focused >= 0 && focused < m_content.links.size() && m_content.linkText(focused) == words;
  m_focusedLink = stays ? focused : -1;
  m_pressedLink = -1;
  setAccessibleName(m_content.spoken);
  relayout();
  if (hasFocus() && !stays) focusLink(stepped(-1, true));
  if (!verdictChanged) return;
  const qint64 since = m_announced.isValid() ? m_announced.elapsed() : kBetweenAnnouncements_ms;
  m_announceLater.start(int(std::max<qint64>(0, kBetweenAnnouncements_ms - since)));
}

void Sentence::setMostHeight(qreal height) {
  if (m_mostHeight == height) return;
  m_mostHeight = height;
  relayout();
}

void Sentence::announce() {
  m_announced.start();
  if (!QAccessible::isActive()) return;
  QAccessibleEvent event(this, QAccessible::Alert);
  QAccessible::updateAccessibility(&event);
}

const SentenceLayout& Sentence::layoutFor(int width) const {
  auto& layout = m_layouts[width];
  if (!layout) layout = std::make_unique<SentenceLayout>(m_content, m_theme, width, m_mostHeight);
  return *layout;
}

const SentenceLayout& Sentence::layoutNow() const { return layoutFor(width()); }

void Sentence::relayout() {
  m_layouts.clear();
  updateGeometry();
  update();
}

int Sentence::heightForWidth(int width) const {
  return int(std::ceil(std::max(layoutFor(width).height(), m_theme.px(72))));
}

QSize Sentence::sizeHint() const {
  const int width = int(m_theme.px(800));
  return {width, heightForWidth(std::max(width, this->width()))};
}

QSize Sentence::minimumSizeHint() const { return {int(m_theme.px(320)), int(m_theme.px(72))}; }

/// The link before or after in reading order; −1 at the ends, and before the first.
int Sentence::stepped(int from, bool next) const {
  const auto& order = layoutNow().linkOrder();
  const auto at = std::ranges::find(order, from);
  if (at == order.end()) {
    if (order.empty()) return -1;
    return next ? order.front() : order.back();
  }
  if (next) return at + 1 == order.end() ? -1 : *(at + 1);
  return at == order.begin() ? -1 : *(at - 1);
}

void Sentence::focusLink(int link) {
  m_focusedLink = link;
  update();
  if (link >= 0 && QAccessible::isActive()) {
    QAccessibleEvent event(this, QAccessible::Focus);
    event.setChild(int(std::ranges::find(layoutNow().linkOrder(), link) - layoutNow().linkOrder().begin()));
    QAccessible::updateAccessibility(&event);
  }
}

void Sentence::activate(int link) {
  if (link < 0 || link >= m_content.links.size()) return;
  const SentenceLink target = m_content.links[link];  // a slot may set another content
  emit activated(target);
}

void Sentence::paintEvent(QPaintEvent*) {
  QPainter painter(this);
  const bool framed = hasFocus() && m_focusShown;
  layoutNow().paint(painter, QPointF(0, 0), framed ? m_focusedLink : -1);
  if (framed && m_focusedLink < 0) paintFocusFrame(painter, rect(), m_theme);
}

void Sentence::resizeEvent(QResizeEvent*) {
  std::erase_if(m_layouts, [this](const auto& layout) { return layout.first != width(); });
}

void Sentence::mousePressEvent(QMouseEvent* event) {
  m_pressedLink = event->button() == Qt::LeftButton ? layoutNow().linkAt(event->position()) : -1;
  if (m_pressedLink >= 0) focusLink(m_pressedLink);
}

void Sentence::mouseReleaseEvent(QMouseEvent* event) {
  const int link = std::exchange(m_pressedLink, -1);
  if (link >= 0 && layoutNow().linkAt(event->position()) == link) activate(link);
}

void Sentence::mouseMoveEvent(QMouseEvent* event) {
  setCursor(layoutNow().linkAt(event->position()) >= 0 ? Qt::PointingHandCursor : Qt::ArrowCursor);
}

void Sentence::keyPressEvent(QKeyEvent* event) {
  m_focusShown = true;
  update();
  const bool enter = event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter || event->key() == Qt::Key_Space;
  if (enter && m_focusedLink >= 0) return activate(m_focusedLink);
  QWidget::keyPressEvent(event);
}

void Sentence::focusInEvent(QFocusEvent* event) {
  using enum Qt::FocusReason;
  const auto reason = event->reason();
  if (reason == TabFocusReason || reason == BacktabFocusReason || reason == ShortcutFocusReason) m_focusShown = true;
  if (reason != MouseFocusReason) focusLink(stepped(-1, reason != BacktabFocusReason));
  update();
}

void Sentence::focusOutEvent(QFocusEvent*) { update(); }

bool Sentence::focusNextPrevChild(bool next) {
  if (hasFocus()) {
    m_focusShown = true;
    const int link =
        m_focusedLink < 0 && !layoutNow().linkOrder().empty() ? stepped(-1, next) : stepped(m_focusedLink, next);
    if (link >= 0) {
      focusLink(link);
      return true;
    }
  }
  m_focusedLink = -1;
  return QWidget::focusNextPrevChild(next);
}

void Sentence::changeEvent(QEvent* event) {
  QWidget::changeEvent(event);
  if (event->type() == QEvent::PaletteChange || event->type() == QEvent::FontChange) {
    m_theme = Theme::fromPalette(palette(), font());
    relayout();
  }
}

}  // namespace ovenwright::widgets
