#pragma once
#include <QWidget>
#include <optional>

#include "app/desktop/lots/lot_figures.h"
#include "app/desktop/text/format.h"

class QBoxLayout;
class QComboBox;
class QGridLayout;
class QLabel;
class QProgressBar;
class QPushButton;
class QStackedWidget;
class QTabBar;

namespace ovenwright::widgets {
class LotLane;
class RunChart;
}  // namespace ovenwright::widgets

namespace ovenwright::desktop {

class Settings;
class ZonesPane;

/// Under the list: control chart and trend of a chosen measure over the listed runs, the lane of the lot, and the
/// figures beside it; and which zones the results outside trace back to.
class FiguresPane : public QWidget {
  Q_OBJECT
 public:
  enum Tab { kControl, kTrend, kZones };

  FiguresPane(ArchiveLink* archive, Settings* settings, QWidget* parent = nullptr);

  void setFormat(const Format& format);
  void load(const archive::Filter& filter) { m_loader->load(filter); }
  LotFiguresLoader* loader() { return m_loader; }
  widgets::RunChart* chart() { return m_chart; }
  widgets::LotLane* lane() { return m_lane; }
  ZonesPane* zones() { return m_zones; }
  Tab tab() const;
  void showTab(Tab tab);
  QString sentence() const;
  /// The series that is shown; null: none.
  const lot::Series* series() const;
  /// By its subjectText(); kept while other runs are listed that have it.
  void chooseSeries(const QString& subject);
  QPixmap picture() const;
  QSize minimumSizeHint() const override;

 signals:
  void openWanted(const QString& id);
  void runChosen(const QString& id);
  /// Those of the chosen zone; none: no zone is chosen.
  void zoneRunsChosen(const std::vector<std::string>& ids);

 protected:
  bool event(QEvent* event) override;
  void changeEvent(QEvent* event) override;
  void resizeEvent(QResizeEvent* event) override;

 private:
  void build();
  QWidget* buildHead();
  void connectParts();
  void buildOptions();
  void refresh();
  void refreshChoosers();
  void refreshSeries();
  void refreshProgress();
  void placeRows();
  void keepHeight();
  void style();
  const FigureRun* runOf(std::size_t run) const;

  Settings* m_settings;
  LotFiguresLoader* m_loader;
  Format m_format;
  QTabBar* m_tabs;
  QWidget* m_head = nullptr;
  QBoxLayout* m_lower = nullptr;
  QComboBox *m_group, *m_measure;
  QLabel *m_groupLabel, *m_measureLabel;
  QPushButton* m_options;
  QLabel* m_sentence;
  QStackedWidget* m_body;
  QLabel* m_empty;
  ZonesPane* m_zones;
  widgets::RunChart* m_chart;
  widgets::LotLane* m_lane;
  QLabel* m_noScale;
  QGridLayout* m_rows;
  QList<std::pair<QLabel*, QLabel*>> m_figures;
  int m_shownRows = 0;  // of m_figures
  int m_rowsDown = 0;   // of them below each other; the rest stands beside
  QLabel* m_note;
  QProgressBar* m_progress;
  QPushButton* m_stop;
  QWidget* m_loading;
  QString m_subject;  // as it was chosen; empty: the weakest
};

}  // namespace ovenwright::desktop
