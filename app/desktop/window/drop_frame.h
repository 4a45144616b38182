#pragma once
#include <QWidget>

namespace ovenwright::desktop {

/// Over the window while something is dragged across it: an accent frame, and what a drop would do.
class DropFrame : public QWidget {
 public:
  explicit DropFrame(QWidget* parent);
  void showFor(int logs);

 protected:
  void paintEvent(QPaintEvent* event) override;

 private:
  QString m_text;
};

}  // namespace ovenwright::desktop
