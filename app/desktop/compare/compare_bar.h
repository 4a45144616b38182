#pragma once
#include "app/desktop/compare/compare_session.h"
#include "app/desktop/text/format.h"
#include "app/desktop/window/chooser_row.h"

class QDoubleSpinBox;
class QPushButton;

namespace ovenwright::desktop {

class ProfileMenus;

/// Compare's choosers: A, B, the window, where the runs are lined up, how curves stand; Swap, Add a run, Print.
class CompareBar : public ChooserRow {
  Q_OBJECT
 public:
  CompareBar(CompareSession* session, ProfileMenus* profiles, QWidget* parent = nullptr);
  void setFormat(const Format& format);
  QMenu* addMenu() { return m_addMenu; }  ///< to be filled by who knows where runs come from
  void showAdd();                         ///< opens it, as a press on its button does
  /// The level that is lined up at, to be typed; hidden while the oven entry is.
  QDoubleSpinBox* level() { return m_level; }
  void setPrintActions(const QList<QAction*>& actions);

 signals:
  void groupsWanted();  ///< A and B of several runs

 private:
  void fillRuns(QMenu* menu, std::size_t side);
  void fillWindows();
  void fillAlign();
  void fillCurves();
  void refresh();
  void typeLevel(double shown);

  CompareSession* m_session;
  ProfileMenus* m_profiles;
  Format m_format;
  QMenu *m_windows, *m_alignMenu, *m_curvesMenu, *m_addMenu, *m_printMenu;
  ChooserButton *m_a, *m_b, *m_window, *m_align, *m_curves;
  QDoubleSpinBox* m_level;
  QPushButton *m_swap, *m_add, *m_print;
};

}  // namespace ovenwright::desktop
