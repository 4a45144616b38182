#include "app/desktop/window/roomy_area.h"

#include <QApplication>
#include <QEvent>
#include <QLayout>
#include <QScrollBar>
#include <algorithm>

namespace ovenwright::desktop {
namespace {

/// Of parts one under the other. A layout takes the height for a width of stacked pages from all of them, also from
/// those that are hidden: the pages are asked themselves.
int leastHeight(const QLayout& layout, int width) {
  int sum = layout.contentsMargins().top() + layout.contentsMargins().bottom();
  for (int i = 0; i < layout.count(); ++i) {
    QLayoutItem* item = layout.itemAt(i);
    if (item->isEmpty()) continue;
    if (const auto* pages = dynamic_cast<const RoomyPages*>(item->widget()))
      sum += pages->heightForWidth(width);
    else
      sum += item->hasHeightForWidth() ? item->minimumHeightForWidth(width) : item->minimumSize().height();
  }
  return sum;
}

}  // namespace

RoomyArea::RoomyArea(QWidget* content, QWidget* parent) : QScrollArea(parent) {
  setFrameShape(QFrame::NoFrame);
  setFocusPolicy(Qt::NoFocus);  // what is inside has it, and is scrolled to
  setWidget(content);
  content->installEventFilter(this);
  // The toolkit scrolls to what Tab goes to and to nothing else. What is pressed stays under the mouse.
  connect(qApp, &QApplication::focusChanged, this, [this](const QWidget*, const QWidget* now) {
    if (now && widget()->isAncestorOf(now) && QApplication::mouseButtons() == Qt::NoButton) showWidget(*now);
  });
}

void RoomyArea::showWidget(const QWidget& inside) {
  const int top = inside.mapTo(widget(), QPoint(0, 0)).y(), bottom = top + inside.height();
  auto* bar = verticalScrollBar();
  const int room = viewport()->height();
  if (top < bar->value() || inside.height() > room)
    bar->setValue(top);
  else if (bottom > bar->value() + room)
    bar->setValue(bottom - room);
}

void RoomyArea::showTop() { verticalScrollBar()->setValue(0); }

void RoomyArea::fit() {
  const QLayout* layout = widget()->layout();
  const int width = std::max(maximumViewportSize().width(), layout->totalMinimumSize().width());
  const auto least = [layout](int w) { return leastHeight(*layout, w); };
  // A bar at the side takes from the width, and lines that wrap then take more of the height.
  const bool scrolls = least(width) > maximumViewportSize().height();
  const int shown = std::max(maximumViewportSize().width() - (scrolls ? verticalScrollBar()->sizeHint().width() : 0),
                             layout->totalMinimumSize().width());
  const bool sideways = shown > maximumViewportSize().width();
  const int height = maximumViewportSize().height() - (sideways ? horizontalScrollBar()->sizeHint().height() : 0);
  widget()->resize(shown, std::max(height, least(shown)));
}

void RoomyArea::resizeEvent(QResizeEvent* event) {
  fit();
  QScrollArea::resizeEvent(event);
}

bool RoomyArea::eventFilter(QObject* watched, QEvent* event) {
  const bool done = QScrollArea::eventFilter(watched, event);
  if (watched == widget() && event->type() == QEvent::LayoutRequest) fit();
  return done;
}

bool RoomyPages::hasHeightForWidth() const { return currentWidget() && currentWidget()->hasHeightForWidth(); }

int RoomyPages::heightForWidth(int width) const {
  const QLayout* page = currentWidget()->layout();
  if (!page) return currentWidget()->heightForWidth(width);
  // A page that can be lower than its layout says so itself.
  return page->hasHeightForWidth() ? page->totalMinimumHeightForWidth(width)
                                   : currentWidget()->minimumSizeHint().height();
}

}  // namespace ovenwright::desktop
