#pragma once
#include <qcustomplot.h>

#include <functional>

namespace ovenwright::desktop {

/// One kind of mark on a layer of its own: QCustomPlot orders and buffers it, a function paints it.
class PaintItem : public QCPAbstractItem {
 public:
  PaintItem(QCustomPlot* plot, const QString& layer, std::function<void(QPainter&)> paint)
      : QCPAbstractItem(plot), m_paint(std::move(paint)) {
    setLayer(layer);
    setClipToAxisRect(false);
  }
  double selectTest(const QPointF&, bool, QVariant*) const override { return -1; }

 protected:
  void draw(QCPPainter* painter) override {
    applyAntialiasingHint(painter, true, QCP::aeItems);  // none while the view is dragged
    m_paint(*painter);
  }

 private:
  std::function<void(QPainter&)> m_paint;
};

}  // namespace ovenwright::desktop
