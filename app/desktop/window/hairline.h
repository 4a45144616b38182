#pragma once
#include <QSplitter>
#include <QWidget>

namespace ovenwright::desktop {

/// A line of one pixel between two parts.
class Hairline : public QWidget {
 public:
  explicit Hairline(QWidget* parent = nullptr);

 protected:
  void paintEvent(QPaintEvent* event) override;
};

/// A splitter whose handle is a hairline with room around it to be taken hold of.
class HairlineSplitter : public QSplitter {
 public:
  explicit HairlineSplitter(Qt::Orientation orientation, QWidget* parent = nullptr);

 protected:
  QSplitterHandle* createHandle() override;
};

}  // namespace ovenwright::desktop
