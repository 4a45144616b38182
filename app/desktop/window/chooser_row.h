#pragma once
#include <QWidget>
#include <vector>

class QHBoxLayout;
class QLabel;
class QMenu;
class QPushButton;

namespace ovenwright::desktop {

class ChooserButton;

/// A row of labelled choosers under the menus with buttons at its right; in a narrow window the labels go before the
/// choosers' texts are cut, and the buttons before the choosers.
class ChooserRow : public QWidget {
  Q_OBJECT
 public:
  explicit ChooserRow(QWidget* parent = nullptr);
  QSize minimumSizeHint() const override;

 protected:
  ChooserButton* add(const QString& label, QMenu* menu);
  void addButton(QPushButton* button);
  QHBoxLayout* row() { return m_layout; }
  void fitLabels();  ///< to be called when a chooser shows another text
  void resizeEvent(QResizeEvent* event) override;

 private:
  void fitChoosers();  // into the room that labels and buttons leave

  QHBoxLayout* m_layout;
  std::vector<QLabel*> m_labels;
  std::vector<ChooserButton*> m_choosers;
  std::vector<QPushButton*> m_buttons;
};

}  // namespace ovenwright::desktop
