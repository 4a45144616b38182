#include "app/desktop/plot/accessible_chart.h"

#include <QAccessibleWidget>

#include "app/desktop/plot/curve_plot.h"

namespace ovenwright::desktop {
namespace {

class AccessibleChart : public QAccessibleWidget, public QAccessibleValueInterface {
 public:
  explicit AccessibleChart(CurvePlot* plot) : QAccessibleWidget(plot, QAccessible::Chart), m_plot(plot) {}

  void* interface_cast(QAccessible::InterfaceType type) override {
    if (type == QAccessible::ValueInterface) return static_cast<QAccessibleValueInterface*>(this);
    return QAccessibleWidget::interface_cast(type);
  }
  QString text(QAccessible::Text kind) const override {
    return kind == QAccessible::Value ? m_plot->cursorText() : QAccessibleWidget::text(kind);
  }
  int childCount() const override { return 0; }  // the plot inside has nothing to say of its own
  QAccessibleInterface* child(int) const override { return nullptr; }

  /// The cursor's time on the axis.
  QVariant currentValue() const override { return m_plot->cursor_s().value_or(m_plot->viewFrom_s()); }
  void setCurrentValue(const QVariant& value) override { m_plot->setCursor_s(value.toDouble()); }
  QVariant maximumValue() const override { return m_plot->viewTo_s(); }
  QVariant minimumValue() const override { return m_plot->viewFrom_s(); }
  QVariant minimumStepSize() const override {
    return m_plot->scene().view ? m_plot->scene().view->run().sample_interval_s : 0.0;
  }

 private:
  CurvePlot* m_plot;
};

QAccessibleInterface* makeInterface(const QString&, QObject* object) {
  auto* plot = qobject_cast<CurvePlot*>(object);
  return plot ? new AccessibleChart(plot) : nullptr;
}

}  // namespace

void installChartAccessibility() {
  [[maybe_unused]] static const bool installed = (QAccessible::installFactory(makeInterface), true);
}

}  // namespace ovenwright::desktop
