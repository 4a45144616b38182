#pragma once
#include <QWidget>

#include "app/desktop/document/document.h"
#include "app/desktop/window/profile_menus.h"

class QLabel;
class QPushButton;
class QVBoxLayout;

namespace ovenwright::desktop {

class ChooserButton;

/// What stands in the window before a run is open: how to get a log in, what it will be judged against, and where the
/// result will stand.
class EmptyPage : public QWidget {
  Q_OBJECT
 public:
  EmptyPage(Document* document, ProfileMenus* menus, QWidget* parent = nullptr);
  /// What the window has for the page: the sketch is the first to go, then what is free around the parts, then the
  /// choosers, which stand in the bar too, and the list of forms.
  void setRoom(const QSize& room);

 signals:
  void openWanted();
  void pasteWanted();
  void demoWanted();

 protected:
  void changeEvent(QEvent* event) override;

 private:
  class Preview;
  QWidget* dropBox();
  QWidget* judgedAgainst(ProfileMenus* menus);
  void refresh();
  void style();
  void leaveOut(int level);

  Document* m_document;
  QPushButton* m_open = nullptr;
  ChooserButton *m_window, *m_oven, *m_board;
  QWidget *m_drop, *m_any, *m_against;
  QVBoxLayout* m_left;
  Preview* m_preview;
  std::vector<QLabel*> m_quiet;
};

}  // namespace ovenwright::desktop
