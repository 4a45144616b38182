#pragma once
#include <QPushButton>

namespace ovenwright::desktop {

/// A button with a menu that shows what is chosen; a text that does not fit is cut in the middle, whole in the tool
/// tip.
class ChooserButton : public QPushButton {
  Q_OBJECT
 public:
  ChooserButton(const QString& what, QWidget* parent = nullptr);
  void setChosen(const QString& text);
  const QString& chosen() const { return m_chosen; }
  QSize sizeHint() const override;
  QSize minimumSizeHint() const override;

 protected:
  void resizeEvent(QResizeEvent* event) override;
  void changeEvent(QEvent* event) override;

 private:
  QSize sizeFor(const QString& text) const;
  void fit();
  QString m_what, m_chosen;
};

}  // namespace ovenwright::desktop
