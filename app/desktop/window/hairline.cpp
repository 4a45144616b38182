#include "app/desktop/window/hairline.h"

#include <QPainter>

#include "app/desktop/widgets/theme.h"

namespace ovenwright::desktop {
namespace {

constexpr int kHandle_px = 5;

class HairlineHandle : public QSplitterHandle {
 public:
  using QSplitterHandle::QSplitterHandle;

 protected:
  void paintEvent(QPaintEvent*) override {
    const auto theme = widgets::Theme::fromPalette(palette(), font());
    QPainter painter(this);
    painter.fillRect(rect(), theme.window);
    if (orientation() == Qt::Horizontal) {
      painter.fillRect(QRect(0, 0, 1, height()), theme.frame);
    } else {
      painter.fillRect(QRect(0, 0, width(), 1), theme.frame);
    }
  }
};

}  // namespace

Hairline::Hairline(QWidget* parent) : QWidget(parent) { setFixedHeight(1); }

void Hairline::paintEvent(QPaintEvent*) {
  QPainter(this).fillRect(rect(), widgets::Theme::fromPalette(palette(), font()).frame);
}

HairlineSplitter::HairlineSplitter(Qt::Orientation orientation, QWidget* parent) : QSplitter(orientation, parent) {
  setHandleWidth(kHandle_px);
  setChildrenCollapsible(false);
}

QSplitterHandle* HairlineSplitter::createHandle() { return new HairlineHandle(orientation(), this); }

}  // namespace ovenwright::desktop
