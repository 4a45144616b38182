#include "app/desktop/widgets/verdict_sign.h"

#include <QEvent>
#include <QPainter>
#include <cmath>

#include "app/desktop/widgets/glyphs.h"
#include "app/desktop/widgets/wording.h"

namespace ovenwright::widgets {

VerdictSign::VerdictSign(QWidget* parent) : QWidget(parent), m_theme(Theme::fromPalette(palette(), font())) {
  setSizePolicy(QSizePolicy::Fixed, QSizePolicy::Fixed);
}

void VerdictSign::setVerdict(std::optional<judge::Verdict> verdict, bool informative) {
  m_verdict = verdict;
  m_informative = informative;
  setAccessibleName(verdict ? Wording::verdictTitle(*verdict) : QString());
  update();
}

void VerdictSign::setDesignHeight(qreal height_px) {
  m_height_px = height_px;
  updateGeometry();
  update();
}

QSize VerdictSign::sizeHint() const {
  const qreal height = m_theme.px(m_height_px);
  return {int(std::ceil(kSignAspect * height)), int(std::ceil(height))};
}

void VerdictSign::paintEvent(QPaintEvent*) {
  QPainter painter(this);
  const qreal height = m_theme.px(m_height_px);
  paintVerdictSign(painter, QRectF(0, (this->height() - height) / 2, kSignAspect * height, height), m_verdict, m_theme,
                   m_informative);
}

void VerdictSign::changeEvent(QEvent* event) {
  if (event->type() == QEvent::PaletteChange || event->type() == QEvent::FontChange) {
    m_theme = Theme::fromPalette(palette(), font());
    updateGeometry();
    update();
  }
  QWidget::changeEvent(event);
}

}  // namespace ovenwright::widgets
