#pragma once
#include <QStringList>
#include <QWidget>
#include <map>
#include <memory>
#include <string>

#include "app/desktop/document/document.h"
#include "app/desktop/editor/oven_model.h"
#include "app/desktop/text/format.h"

class QLabel;
class QLineEdit;
class QPushButton;
class QTableView;

namespace ovenwright::desktop {

/// Edits the oven of the run that is shown: where its zones lie and what its limits are, beside what the curves say of
/// it. Checked while it is typed, each sound change one step back by undo, saved as a new revision in a new file with
/// the comments of the old one.
class OvenPage : public QWidget {
  Q_OBJECT
 public:
  explicit OvenPage(Document* document, QWidget* parent = nullptr);
  /// @param doubts  what the model learned from the run holds against the files, each a sentence
  void show(const QStringList& doubts);
  void setFormat(const Format& format);
  QList<QWidget*> parts() const;
  OvenModel* model() { return m_model; }
  /// Whether the log's oven is half typed or breaks a rule here, so that no document has what was typed.
  bool isHeldBack(const Document::LogPointer& log) const;
  void saveTo(const QString& path);       ///< a file that is there stays as it is
  void goOnFrom(const OvenPage& before);  ///< with what is half typed, in another language

 signals:
  void done();
  void noted(const QString& text);
  void troubled(const QString& title, const ovenwright::Error& error);

 protected:
  void changeEvent(QEvent* event) override;

 private:
  QWidget* head();
  QWidget* foot();
  void refresh();
  void take(const oven::Oven& oven);
  void showProblem(const QString& problem);
  void showCurves();  ///< what they say of the oven
  void handOn(const QString& what, int mergeKey);
  std::string path() const;
  void saveAs();

  Document* m_document;
  OvenModel* m_model;
  Format m_format;
  QStringList m_doubts;
  std::weak_ptr<const RunView> m_doubted;  // whose doubts they are
  std::weak_ptr<OpenLog> m_of;             // whose oven the draft is
  std::string m_base;                      // text of the document's oven that the draft began with
  std::map<OvenField, QLineEdit*> m_fields;
  QLineEdit* m_revision;
  QTableView* m_table;
  QLabel *m_curves, *m_problem;
  QPushButton *m_save, *m_saveAs, *m_done;
};

}  // namespace ovenwright::desktop
