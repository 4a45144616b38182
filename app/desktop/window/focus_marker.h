#pragma once
#include <QObject>
#include <QPointer>

class QFocusFrame;

namespace ovenwright::desktop {

/// A frame of two pixels in the accent inside the stock control that the keyboard went to; painted parts frame
/// themselves. One for the program: it listens to what gets the focus.
class FocusMarker : public QObject {
  Q_OBJECT
 public:
  explicit FocusMarker(QObject* parent = nullptr);
  /// The control that is framed; null: none.
  QWidget* framed() const;
  bool eventFilter(QObject* object, QEvent* event) override;

 private:
  void frame(QWidget* control);

  QPointer<QFocusFrame> m_frame;  // a child of the control, and gone with it
};

}  // namespace ovenwright::desktop
