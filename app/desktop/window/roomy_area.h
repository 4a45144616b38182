#pragma once
#include <QScrollArea>
#include <QStackedWidget>

namespace ovenwright::desktop {

/// Shows a widget, whose layout has its parts one under the other, as large as itself, and scrolls it where the
/// widget's least size does not fit: large text in a small window. Unlike QScrollArea, it leaves lines that wrap their
/// least height, not their wanted one. What the keyboard goes to is scrolled to, whatever key it was.
class RoomyArea : public QScrollArea {
 public:
  explicit RoomyArea(QWidget* content, QWidget* parent = nullptr);
  QSize sizeHint() const override { return widget()->sizeHint(); }
  QSize minimumSizeHint() const override { return {1, 1}; }
  void showTop();

 protected:
  void resizeEvent(QResizeEvent* event) override;
  bool eventFilter(QObject* watched, QEvent* event) override;

 private:
  void fit();
  void showWidget(const QWidget& inside);  ///< its top, where it is higher than there is room
};

/// Pages of which only the one that is shown asks for room, and only for its least height at the width that there is.
class RoomyPages : public QStackedWidget {
 public:
  using QStackedWidget::QStackedWidget;
  bool hasHeightForWidth() const override;
  int heightForWidth(int width) const override;
};

}  // namespace ovenwright::desktop
