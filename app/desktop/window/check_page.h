#pragma once
#include <QWidget>

#include "app/desktop/document/document.h"
#include "app/desktop/plot/scene.h"
#include "app/desktop/settings/settings.h"
#include "app/desktop/widgets/theme.h"

class QComboBox;
class QLabel;
class QLineEdit;
class QSplitter;
class QStackedWidget;
class QTabBar;
class QToolButton;

namespace ovenwright::widgets {
class BoardPicture;
class LimitLanes;
class ZoneStrip;
}  // namespace ovenwright::widgets

namespace ovenwright::desktop {

class CurvePlot;
class DerivationPanel;
class ElidedLabel;
class ResultsTable;
class Settings;
class SidePanel;

/// The result of one run: curves and zone strip above; limit lanes, table and board below; the derivation of the
/// chosen result at the right. Where the page is too low for curves above lanes, the curves are a tab of their own.
/// Draws the document and tells it what was chosen.
class CheckPage : public QWidget {
  Q_OBJECT
 public:
  enum Tab { kLanes, kTable, kBoard, kCurves };

  CheckPage(Document* document, Settings* settings, QWidget* parent = nullptr);
  ~CheckPage() override;

  void setFormat(const Format& format);
  CurvePlot* plot() { return m_plot; }
  widgets::ZoneStrip* strip() { return m_strip; }
  widgets::LimitLanes* lanes() { return m_lanes; }
  ResultsTable* table() { return m_table; }
  widgets::BoardPicture* board() { return m_board; }
  DerivationPanel* panel() { return m_panel; }
  /// The parts that F6 goes through, in order.
  QList<QWidget*> parts() const;
  void showTab(Tab tab);
  Tab tab() const;
  bool isPanelShown() const;
  void setPanelShown(bool shown);
  void stepResult(int by);   ///< through all results
  void stepProblem(int by);  ///< to the next or previous that is not a pass
  void find();               ///< the table's filter
  QString copyText() const;  ///< of the tab that is shown
  QPixmap picture() const;   ///< of what has the focus: the plot, or the tab that is shown
  void saveState();
  bool isStacked() const { return m_stacked; }  ///< the curves are a tab
  QSize minimumSizeHint() const override;

 signals:
  void ovenWanted();
  void entryWanted();
  void boardWanted();
  void tuneWanted();
  void windowWanted(std::size_t window, std::size_t requirement);
  void panelShownChanged(bool shown);

 protected:
  void resizeEvent(QResizeEvent* event) override;
  void changeEvent(QEvent* event) override;

 private:
  void build();
  void connectParts();
  void refresh();        // another run, or a new result of it
  void refreshChoice();  // another result is looked at
  void syncStrip();
  void hover(std::optional<std::size_t> channel);
  void fillBoardLanes();
  void showBoardLane();
  void showCorner();
  void showPage();  // of the tab that was pressed
  void setStacked(bool stacked);
  void fitTabs();
  void shareHeight();
  void style();
  Scene scene() const;

  Document* m_document;
  Settings* m_settings;
  Format m_format;
  CurvePlot* m_plot;
  widgets::ZoneStrip* m_strip;
  widgets::LimitLanes* m_lanes;
  ResultsTable* m_table;
  widgets::BoardPicture* m_board;
  QComboBox* m_boardLane;  // which requirement the board shows
  DerivationPanel* m_panel;
  SidePanel* m_side = nullptr;
  QTabBar* m_tabs;
  QStackedWidget *m_pages, *m_corner;
  ElidedLabel* m_lanesNote;
  QLineEdit* m_filter;
  QToolButton* m_panelLink;
  QWidget *m_upper, *m_lower;
  QSplitter *m_columns, *m_rows;
  struct Shown {
    std::shared_ptr<const RunView> view;
    std::optional<std::size_t> outcome, channel;
  };
  Shown m_shown;
  bool m_rowsMoved = false;  // by hand: then the share of curves and lanes stays as it is
  std::optional<std::size_t> m_hovered;
  bool m_stacked = false;
  Tab m_lowerTab = kLanes;  // what is shown under the curves
};

}  // namespace ovenwright::desktop
