#pragma once
#include <QMenu>
#include <QObject>
#include <functional>

#include "app/desktop/document/document.h"

namespace ovenwright::desktop {

struct Notice;

/// "SAC305, general, rev 1": name and revision of a file that people edit; "changed" where it was edited here.
QString titleOf(const files::Identity& identity);
QString titleOf(const std::vector<window::ProcessWindow>& windows);

/// The menus of windows, boards, ovens and recipes: what is shipped, what is the user's, and any file. Each choice is
/// one undoable edit of the document; a file that cannot be used changes nothing and becomes a notice.
class ProfileMenus : public QObject {
  Q_OBJECT
 public:
  ProfileMenus(Document* document, QWidget* window);

  QMenu* windows() { return m_windows; }
  QMenu* boards() { return m_boards; }
  QMenu* ovens() { return m_ovens; }

  /// The windows there are and any file into a menu; `choose` gets the one that is taken.
  void addWindows(QMenu* menu, const std::vector<window::ProcessWindow>& chosen,
                  const std::function<void(window::ProcessWindow)>& choose);

  void chooseWindow(const QString& nameOrPath, bool add = false);
  void chooseBoard(const QString& nameOrPath);                  ///< empty: none
  void chooseOven(const QString& oven, const QString& recipe);  ///< both empty: none

 signals:
  void troubled(const ovenwright::desktop::Notice& notice);
  void editWindowWanted();
  void editOvenWanted();

 private:
  void fillWindows();
  void fillBoards();
  void fillOvens();
  QString askForFile(const QString& title);
  void trouble(const QString& title, const Error& error);
  void dropWindow(std::size_t index);

  Document* m_document;
  QWidget* m_window;
  QMenu *m_windows, *m_boards, *m_ovens;
};

}  // namespace ovenwright::desktop
