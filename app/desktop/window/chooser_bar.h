#pragma once
#include "app/desktop/document/document.h"
#include "app/desktop/widgets/theme.h"
#include "app/desktop/window/chooser_row.h"
#include "app/desktop/window/profile_menus.h"

class QPushButton;

namespace ovenwright::desktop {

class ChooserButton;

/// The bar of choosers: run, board, window, oven and recipe; undo and redo. Shows the document and edits it by menus.
class ChooserBar : public ChooserRow {
  Q_OBJECT
 public:
  ChooserBar(Document* document, ProfileMenus* menus, QAction* undo, QAction* redo, QWidget* parent = nullptr);
  void showRun();  ///< opens that chooser's menu, as a press on it does
  void showWindow();
  void showBoard();
  void showOven();
  QMenu* runs() { return m_runs; }
  void addButton(QAction* action);  ///< at the right; its data is the short word that stands on it

 signals:
  void openWanted();
  void closeWanted();  ///< of the log that is shown

 private:
  void fillRuns();
  void refresh();

  Document* m_document;
  QMenu* m_runs;
  ChooserButton *m_run, *m_board, *m_window, *m_oven;
};

/// "qm2291_run3.csv", with its pass where the log has several.
QString runTitle(const OpenLog& log, std::size_t run);

}  // namespace ovenwright::desktop
