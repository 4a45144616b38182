#include "app/desktop/plot/backdrop.h"

#include <QPainter>
#include <utility>

namespace ovenwright::desktop {

void Backdrop::paint(QPainter& painter, const QSize& size, const Canvas& canvas, const Scene& scene,
                     const std::vector<bool>& hidden) {
  if (scene.behind.empty()) return;
  if (canvas.moving) return paintBehind(painter, canvas, scene, hidden);  // elsewhere each time
  const double ratio = painter.device()->devicePixelRatioF();
  Subject now{size * ratio, canvas.area, canvas.mapping, scene.behind, {}, hidden, scene.strong};
  for (const auto& channel : scene.view->channels()) now.styles.push_back(channel.look.style);
  if (m_picture.isNull() || now != m_subject) {
    m_subject = std::move(now);
    m_picture = QPixmap(m_subject.size_px);
    m_picture.setDevicePixelRatio(ratio);
    m_picture.fill(Qt::transparent);
    QPainter onto(&m_picture);
    onto.setRenderHints(painter.renderHints());
    paintBehind(onto, canvas, scene, hidden);
  }
  painter.drawPixmap(0, 0, m_picture);
}

}  // namespace ovenwright::desktop
