#include "app/desktop/window/sign_icon.h"

#include <QPainter>

#include "app/desktop/widgets/glyphs.h"

namespace ovenwright::desktop {

QIcon signIcon(judge::Verdict verdict, const widgets::Theme& theme, double devicePixelRatio) {
  const double height = theme.px(14), width = height * widgets::kSignAspect;
  QPixmap picture((QSizeF(width, height) * devicePixelRatio).toSize());
  picture.setDevicePixelRatio(devicePixelRatio);
  picture.fill(Qt::transparent);
  QPainter painter(&picture);
  painter.setRenderHint(QPainter::Antialiasing);
  widgets::paintVerdictSign(painter, QRectF(0, 0, width, height), verdict, theme);
  return QIcon(picture);
}

}  // namespace ovenwright::desktop
