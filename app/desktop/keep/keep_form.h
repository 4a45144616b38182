#pragma once
#include <QWidget>
#include <optional>
#include <vector>

#include "app/desktop/document/document.h"
#include "app/desktop/keep/keep_job.h"

class QComboBox;
class QDateTimeEdit;
class QLabel;
class QLineEdit;
class QPushButton;

namespace ovenwright::desktop {

class ArchiveLink;
class Settings;

/// The form that keeps what is on screen in the record: lot, board serial, operator, time of run. Stands under the
/// choosers while it is open; the document goes on as it is.
class KeepForm : public QWidget {
  Q_OBJECT
 public:
  KeepForm(Document* document, Settings* settings, ArchiveLink* link, QWidget* parent = nullptr);
  ~KeepForm() override;

  /// Shows it with what the log that is shown says of itself.
  void open();
  void close();
  /// Keeps what is chosen; says what is missing where something is.
  void keep();
  KeepJob* job() { return m_job; }

 signals:
  void noted(const QString& text);  ///< for the status line
  void closed();

 protected:
  bool event(QEvent* event) override;
  void keyPressEvent(QKeyEvent* event) override;
  void changeEvent(QEvent* event) override;

 private:
  enum class What { kRun, kLog, kAll };
  What what() const;
  /// The logs that would be kept; empty where one has no result for its present setup.
  std::vector<KeepJob::Log> logs() const;
  void fill();     ///< from the log that is shown
  void refresh();  ///< what can be kept
  void refreshTime();
  void say(const QString& text, bool trouble = false);
  void tell(const std::vector<KeepJob::Kept>& runs);
  void tellTrouble(const Error& error);
  void style();
  QString place() const;

  Document* m_document;
  Settings* m_settings;
  ArchiveLink* m_link;
  KeepJob* m_job;
  QLineEdit *m_lot, *m_serial, *m_operator;
  QDateTimeEdit* m_time;
  QLabel *m_timeFrom, *m_message;
  QComboBox* m_what;
  QWidget* m_whatPair = nullptr;  // with its label
  QPushButton *m_keep, *m_close;
  Document::LogPointer m_filledFrom;
  std::size_t m_filledRun = 0;
  bool m_timeTyped = false;
};

}  // namespace ovenwright::desktop
