#pragma once
#include <QDialog>
#include <vector>

#include "app/archive/filter.h"
#include "app/desktop/sheets/sheet_files_job.h"

class QCheckBox;
class QComboBox;
class QLabel;
class QLineEdit;
class QProgressBar;
class QPushButton;
class QTreeWidget;

namespace ovenwright::desktop {

class ArchiveLink;
class Document;
class Settings;

/// Writes the sheets of many lots into a folder, a file for each lot. Stays beside the main window while it works; a
/// file that is there already is replaced only when that was said.
class SeveralLots : public QDialog {
  Q_OBJECT
 public:
  /// @param document  whose open logs no file takes the place of; may be null
  /// @param chosen    lots that are chosen at first, each with the runs that stand on its sheet
  SeveralLots(ArchiveLink* archive, Settings* settings, const Document* document,
              std::vector<SheetFilesJob::Item> chosen, QWidget* parent);
  ~SeveralLots() override;

  void setFolder(const QString& folder);
  void choose(const QStringList& lots);  ///< these and no others
  QStringList chosen() const;
  /// Begins; where files are there already, asks first.
  void start();
  enum class There { kReplace, kLeaveOut };
  void startWith(There there);
  SheetFilesJob* job() { return m_job; }
  bool isAsking() const;  ///< what is to become of files that are there already
  QString message() const;

 signals:
  void noted(const QString& text);

 protected:
  void changeEvent(QEvent* event) override;

 private:
  void buildLayout();
  void fill(const std::vector<archive::LotSummary>& lots);
  void filter(const QString& text);
  void checkShown(bool on);
  void askFolder();
  SheetFilesJob::Wish wish() const;
  void tell(const SheetFilesJob::Outcome& outcome);
  void say(const QString& text, bool trouble = false);
  void refresh();
  void style();

  ArchiveLink* m_archive;
  Settings* m_settings;
  const Document* m_document;
  std::vector<SheetFilesJob::Item> m_given;
  SheetFilesJob* m_job;
  QStringList m_toChoose;  // until the list is there
  QLineEdit *m_filter, *m_folder;
  QTreeWidget* m_lots;
  QPushButton *m_all, *m_none, *m_browse, *m_start, *m_stop, *m_close, *m_replace, *m_leaveOut, *m_back;
  QComboBox* m_kind;
  QCheckBox *m_each, *m_mark;
  QProgressBar* m_progress;
  QLabel* m_message;
  QWidget* m_question;
  bool m_listed = false;
};

}  // namespace ovenwright::desktop
