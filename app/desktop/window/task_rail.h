#pragma once
#include <QWidget>

class QLabel;
class QListWidget;

namespace ovenwright::desktop {

/// The tasks at the left, one under the other, and a word on where a log can be dropped.
class TaskRail : public QWidget {
  Q_OBJECT
 public:
  explicit TaskRail(const QStringList& tasks, QWidget* parent = nullptr);
  void setTask(int task);
  /// In a low window its type is that of the body, so that it leaves more width to the page.
  void setLow(bool low);

 signals:
  void taskPressed(int task);

 protected:
  void changeEvent(QEvent* event) override;

 private:
  void style();

  QListWidget* m_list;
  QLabel* m_note;
  bool m_low = false, m_styling = false;
};

}  // namespace ovenwright::desktop
