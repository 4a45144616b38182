#pragma once
#include <QWidget>

#include "app/desktop/document/document.h"
#include "app/desktop/window/profile_menus.h"

class QLabel;
class QPushButton;

namespace ovenwright::desktop {

class ChooserButton;

/// What stands in the window before a run is open: how to get a log in, what it will be judged against, and where the
/// result will stand.
class EmptyPage : public QWidget {
  Q_OBJECT
 public:
  EmptyPage(Document* document, ProfileMenus* menus, QWidget* parent = nullptr);

 signals:
  void openWanted();
  void pasteWanted();
  void demoWanted();

 protected:
  void changeEvent(QEvent* event) override;
  void resizeEvent(QResizeEvent* event) override;

 private:
  class Preview;
  QWidget* dropBox();
  QWidget* judgedAgainst(ProfileMenus* menus);
  void refresh();
  void style();

  Document* m_document;
  QPushButton* m_open = nullptr;
  ChooserButton *m_window, *m_oven, *m_board;
  Preview* m_preview;
  std::vector<QLabel*> m_quiet;
};

}  // namespace ovenwright::desktop
