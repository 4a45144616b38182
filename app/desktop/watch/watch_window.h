#pragma once
#include <QDialog>

class QLabel;
class QLineEdit;
class QPushButton;
class QTreeWidget;
class QTreeWidgetItem;

namespace ovenwright::desktop {

class ArchiveLink;
class Settings;
class WatchService;

/// Watching a folder on screen: folder and rules, start and stop, a line for each log that came. The watching goes on
/// when the window is closed.
class WatchWindow : public QDialog {
  Q_OBJECT
 public:
  WatchWindow(ArchiveLink* link, Settings* settings, QWidget* parent);

  void setFolder(const QString& folder);
  void setRules(const QString& path);
  void start();
  QTreeWidget* lines() { return m_lines; }
  QString stateText() const;

 protected:
  void changeEvent(QEvent* event) override;

 private:
  void buildLayout();
  void askFolder();
  void askRules();
  void addLines(int count);
  void showDetail(const QTreeWidgetItem* item);
  void refresh();
  void style();

  ArchiveLink* m_link;
  Settings* m_settings;
  WatchService* m_service;
  QLineEdit *m_folder, *m_rules;
  QPushButton *m_browseFolder, *m_browseRules, *m_start, *m_stop, *m_close;
  QLabel *m_state, *m_about;
  QTreeWidget* m_lines;
  QLabel* m_detail;  // of the line that is chosen, else of the newest error: in full
};

}  // namespace ovenwright::desktop
