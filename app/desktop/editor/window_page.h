#pragma once
#include <QPointer>
#include <QWidget>
#include <memory>

#include "app/desktop/document/document.h"
#include "app/desktop/editor/window_model.h"

class QComboBox;
class QDoubleSpinBox;
class QLabel;
class QLineEdit;
class QPushButton;
class QTableView;

namespace ovenwright::desktop {

/// Edits a process window beside its verdict: checked while it is typed, the run judged anew at every sound change,
/// each change one step back by undo, saved as a new revision in a new file.
class WindowPage : public QWidget {
  Q_OBJECT
 public:
  explicit WindowPage(Document* document, QWidget* parent = nullptr);
  /// @param window  index into the setup's windows; @param requirement  the row to look at, −1: none
  void show(std::size_t window, int requirement = -1);
  QList<QWidget*> parts() const;
  std::size_t window() const { return m_index; }
  /// Whether the log's window is half typed or breaks a rule here, so that no document has what was typed.
  bool isHeldBack(const Document::LogPointer& log, std::size_t window) const;
  /// What an undo or a redo brings back that no document has, as it broke a rule: the log it is of is shown then.
  /// False where that log is not open or has no such window.
  bool restore(const Document::LogPointer& log, std::size_t window, const WindowModel::State& state);
  void goOnFrom(const WindowPage& before);  ///< with what is half typed and its steps of undo, in another language

 signals:
  void restored();
  void done();
  void noted(const QString& text);
  void troubled(const QString& title, const ovenwright::Error& error);

 protected:
  void changeEvent(QEvent* event) override;

 private:
  QWidget* head();
  void refresh();
  void showProblem(const QString& problem);
  void take(const window::ProcessWindow& window);
  void handOn(const QString& what, int mergeKey);
  void judgeBy(check::Request setup, const QString& what, int mergeKey);
  void save();

  Document* m_document;
  WindowModel* m_model;
  std::shared_ptr<QPointer<WindowPage>> m_self;  // the page that the steps of undo are of
  std::size_t m_index = 0;
  std::weak_ptr<OpenLog> m_of;  // whose window the draft is
  std::string m_base;           // text of the document's window that the draft began with
  QComboBox *m_which, *m_rule, *m_classification;
  QLineEdit *m_name, *m_alloy, *m_liquidus, *m_solidus, *m_thermocouple, *m_instrument, *m_revision;
  QTableView* m_table;
  QLabel* m_problem;
  QPushButton *m_add, *m_remove, *m_save, *m_done;
};

}  // namespace ovenwright::desktop
