#include "app/desktop/window/focus_marker.h"

#include <QAbstractButton>
#include <QAbstractItemView>
#include <QAbstractSpinBox>
#include <QApplication>
#include <QComboBox>
#include <QFocusEvent>
#include <QFocusFrame>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QPainter>
#include <QTabBar>
#include <QTextEdit>

#include "app/desktop/widgets/glyphs.h"
#include "app/desktop/widgets/theme.h"

namespace ovenwright::desktop {
namespace {

/// Controls of the toolkit whose own sign of the focus is faint or none.
QWidget* stockControl(QWidget* widget) {
  if (qobject_cast<QAbstractSpinBox*>(widget->parentWidget()) || qobject_cast<QComboBox*>(widget->parentWidget()))
    widget = widget->parentWidget();  // the line inside
  const bool stock = qobject_cast<QAbstractButton*>(widget) || qobject_cast<QComboBox*>(widget) ||
                     qobject_cast<QAbstractSpinBox*>(widget) || qobject_cast<QLineEdit*>(widget) ||
                     qobject_cast<QTabBar*>(widget) || qobject_cast<QTextEdit*>(widget) ||
                     qobject_cast<QLabel*>(widget) ||
                     (qobject_cast<QAbstractItemView*>(widget) && !qobject_cast<QListWidget*>(widget));
  return stock ? widget : nullptr;
}

/// Lets the mouse through, and screen readers pass over it, as over any such frame.
class Frame : public QFocusFrame {
 public:
  explicit Frame(QWidget* control) : QFocusFrame(control) {
    setGeometry(control->rect());
    show();
    raise();
  }

 protected:
  void paintEvent(QPaintEvent*) override {
    QPainter painter(this);
    const auto theme = widgets::Theme::fromPalette(QApplication::palette(), QApplication::font());
    widgets::paintFocusFrame(painter, rect(), theme);
  }
};

}  // namespace

FocusMarker::FocusMarker(QObject* parent) : QObject(parent) { qApp->installEventFilter(this); }

QWidget* FocusMarker::framed() const { return m_frame ? m_frame->parentWidget() : nullptr; }

void FocusMarker::frame(QWidget* control) {
  if (control == framed()) return;
  delete m_frame;
  if (control) m_frame = new Frame(control);
}

bool FocusMarker::eventFilter(QObject* object, QEvent* event) {
  if (!object->isWidgetType()) return false;
  auto* widget = static_cast<QWidget*>(object);
  using enum Qt::FocusReason;
  if (event->type() == QEvent::FocusIn) {
    const auto reason = static_cast<QFocusEvent*>(event)->reason();
    const bool keys = reason == TabFocusReason || reason == BacktabFocusReason || reason == ShortcutFocusReason;
    const bool back = reason == PopupFocusReason || reason == ActiveWindowFocusReason;
    if (!back) frame(keys ? stockControl(widget) : nullptr);
  } else if (event->type() == QEvent::Resize && widget == framed()) {
    m_frame->setGeometry(widget->rect());
  }
  return false;
}

}  // namespace ovenwright::desktop
