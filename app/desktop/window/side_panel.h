#pragma once
#include <QObject>

class QSplitter;
class QWidget;

namespace ovenwright::desktop {

/// The panel at the right of a page. In a wide window it stands beside the rest; below 1280 px it is closed, and opens
/// over a part of the page.
class SidePanel : public QObject {
  Q_OBJECT
 public:
  /// @param columns   the rest of the page, then the panel
  /// @param over      what it opens over in a narrow window
  /// @param width_px  at first, at a 13 px font
  SidePanel(QWidget* page, QSplitter* columns, QWidget* panel, QWidget* over, double width_px);

  /// What it opens over where that is too low for it to be read, and this is higher.
  void setInstead(QWidget* instead) { m_instead = instead; }

  bool isNarrow() const;
  bool isShown() const { return isNarrow() ? m_open : m_wanted; }
  void setShown(bool shown);
  bool needsLink() const { return isNarrow() || !m_wanted; }
  /// Whether it stands beside the rest in a wide window: as it was left.
  bool isWanted() const { return m_wanted; }
  void setWanted(bool wanted) { m_wanted = wanted; }
  double width_px() const { return m_width_px; }  ///< beside the rest, at a 13 px font: as it was set or moved to
  void setWidth_px(double width_px);              ///< within what design allows
  void place();                                   ///< once the page has another size

 signals:
  void placed();

 private:
  QWidget* m_page;
  QSplitter* m_columns;
  QWidget *m_panel, *m_over, *m_instead = nullptr;
  double m_width_px = 0;
  bool m_wanted = true, m_open = false;
};

}  // namespace ovenwright::desktop
