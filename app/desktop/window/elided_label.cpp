#include "app/desktop/window/elided_label.h"

#include <QEvent>

namespace ovenwright::desktop {

ElidedLabel::ElidedLabel(QWidget* parent) : QLabel(parent) {}

void ElidedLabel::setWords(const QString& words, bool link) {
  m_words = words;
  m_link = link;
  setTextFormat(link ? Qt::RichText : Qt::PlainText);
  setAccessibleName(words);
  updateGeometry();
  fit();
}

void ElidedLabel::setTip(const QString& tip) {
  m_tip = tip;
  fit();
}

QSize ElidedLabel::sizeHint() const {
  const QMargins margins = contentsMargins();
  return {fontMetrics().horizontalAdvance(m_words) + margins.left() + margins.right() + 2 * margin() + 4,
          QLabel::sizeHint().height()};
}

QSize ElidedLabel::minimumSizeHint() const { return {1, QLabel::minimumSizeHint().height()}; }

void ElidedLabel::fit() {
  const int room = contentsRect().width() - 2 * margin();
  const bool enough = room >= m_leastShare * fontMetrics().horizontalAdvance(m_words);
  const QString shown = enough ? fontMetrics().elidedText(m_words, Qt::ElideRight, room) : QString();
  setText(m_link ? QStringLiteral("<a href=\"#\">%1</a>").arg(shown.toHtmlEscaped()) : shown);
  setToolTip(!m_tip.isEmpty() ? m_tip : shown == m_words ? QString() : m_words);
}

void ElidedLabel::resizeEvent(QResizeEvent* event) {
  QLabel::resizeEvent(event);
  fit();
}

void ElidedLabel::changeEvent(QEvent* event) {
  QLabel::changeEvent(event);
  if (event->type() != QEvent::FontChange) return;
  updateGeometry();
  fit();
}

}  // namespace ovenwright::desktop
