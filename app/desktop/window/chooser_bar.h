#pragma once
#include <QWidget>

#include "app/desktop/document/document.h"
#include "app/desktop/window/profile_menus.h"

class QHBoxLayout;
class QLabel;
class QMenu;
class QPushButton;

namespace ovenwright::desktop {

class ChooserButton;

/// The bar of choosers: run, board, window, oven and recipe; undo and redo. Shows the document and edits it by menus.
class ChooserBar : public QWidget {
  Q_OBJECT
 public:
  ChooserBar(Document* document, ProfileMenus* menus, QAction* undo, QAction* redo, QWidget* parent = nullptr);
  void showRun();  ///< opens that chooser's menu, as a press on it does
  void showWindow();
  void showBoard();
  void showOven();
  QMenu* runs() { return m_runs; }
  void addButton(QAction* action);  ///< at the right; its data is the short word that stands on it
  QSize minimumSizeHint() const override;

 signals:
  void openWanted();

 protected:
  void resizeEvent(QResizeEvent* event) override;

 private:
  ChooserButton* add(const QString& label, QMenu* menu);
  void fillRuns();
  void refresh();
  void fitLabels();

  Document* m_document;
  QMenu* m_runs;
  QHBoxLayout* m_layout;
  std::vector<QLabel*> m_labels;
  std::vector<QPushButton*> m_buttons;
  ChooserButton *m_run, *m_board, *m_window, *m_oven;
};

/// "qm2291_run3.csv", with its pass where the log has several.
QString runTitle(const OpenLog& log, std::size_t run);

}  // namespace ovenwright::desktop
