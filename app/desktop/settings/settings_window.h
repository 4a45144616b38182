#pragma once
#include <QDialog>

class QButtonGroup;
class QComboBox;
class QLabel;
class QLineEdit;
class QPushButton;
class QRadioButton;

namespace ovenwright::desktop {

class ArchiveLink;
class Settings;

/// Where runs are kept, and what stands on every sheet. Stays beside the main window; the sheets' part holds as it is
/// typed, another archive when it is chosen by its button.
class SettingsWindow : public QDialog {
  Q_OBJECT
 public:
  SettingsWindow(ArchiveLink* link, Settings* settings, QWidget* parent);

  void showArchive();  ///< with the focus on where runs are kept
  enum class Place { kThisComputer, kFile, kServer };
  void setPlace(Place place, const QString& where = {});
  /// Takes the archive that is chosen; says why where it is none.
  void takeArchive();
  QString archiveMessage() const;

 signals:
  void sheetsChanged();  ///< what stands on sheets, or their paper

 protected:
  void changeEvent(QEvent* event) override;

 private:
  QWidget* buildArchive();
  QWidget* buildSheets();
  Place place() const;
  QString chosenWhere() const;  ///< empty: this computer's own file
  /// Why it cannot be an archive; empty where it may be one.
  QString problem() const;
  void askFile();
  void askLogo();
  void takeLogo(const QString& path);  ///< where it is one; else says what is wrong with it
  void refresh();
  void style();

  ArchiveLink* m_link;
  Settings* m_settings;
  QButtonGroup* m_places;
  QLineEdit *m_file, *m_server;
  QPushButton *m_browse, *m_take;
  QLabel *m_archiveState, *m_passwordNote;
  QLineEdit *m_company, *m_operator, *m_logo;
  QComboBox* m_paper;
  QLabel* m_logoProblem;
  QList<QLabel*> m_notes;
};

}  // namespace ovenwright::desktop
