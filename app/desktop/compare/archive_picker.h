#pragma once
#include <QDialog>
#include <QTimer>
#include <string>
#include <vector>

#include "app/desktop/text/format.h"

class QLabel;
class QLineEdit;
class QPushButton;

namespace ovenwright::desktop {

class ArchiveLink;
class RunsModel;
class RunsTable;

/// Picks runs of the archive to be compared: found by words (a lot, a board, a log's name), some marked. Stays
/// open beside the window until it is closed.
class ArchivePicker : public QDialog {
  Q_OBJECT
 public:
  explicit ArchivePicker(ArchiveLink* archive, QWidget* parent = nullptr);

  void setFormat(const Format& format);
  void showAnew();  ///< with what the archive holds now
  QLineEdit* words() { return m_words; }
  RunsModel* model() { return m_model; }

 public slots:
  void take();  ///< as the button does

 signals:
  /// One run becomes B; of two the older becomes A; more are put into groups. The oldest first.
  void picked(const std::vector<std::string>& ids);

 private:
  void find();
  void refresh();
  std::vector<std::string> chosen() const;

  RunsModel* m_model;
  RunsTable* m_table;
  QLineEdit* m_words;
  QLabel* m_state;
  QPushButton* m_take;
  QString m_trouble;  // of the last search
  QTimer m_typing;    // runs out when typing pauses
};

}  // namespace ovenwright::desktop
