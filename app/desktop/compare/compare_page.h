#pragma once
#include <QTimer>
#include <QWidget>

#include "app/desktop/compare/compare_scene.h"
#include "app/desktop/compare/compare_session.h"
#include "app/desktop/settings/settings.h"
#include "app/desktop/widgets/sentence_content.h"
#include "app/sheet/compare_sheet.h"

class QHBoxLayout;
class QLabel;
class QSplitter;
class QStackedWidget;
class QVBoxLayout;

namespace ovenwright::widgets {
class LimitLanes;
class ZoneStrip;
}  // namespace ovenwright::widgets

namespace ovenwright::desktop {

class CompareBar;
class CurvePlot;
class ProfileMenus;

/// Two runs, or two groups of runs, held against each other: their curves side by side or overlaid on one clock, their
/// recipes, and lanes in which both stand. Says what to do where there are not two.
class ComparePage : public QWidget {
  Q_OBJECT
 public:
  ComparePage(Document* document, Settings* settings, ProfileMenus* profiles, QWidget* parent = nullptr);
  ~ComparePage() override;

  void setFormat(const Format& format);
  CompareSession* session() { return m_session; }
  CompareBar* bar() { return m_bar; }  ///< of choosers, to stand above the sentence
  CurvePlot* plot(std::size_t side) { return m_plots[side]; }
  widgets::ZoneStrip* strip(std::size_t side) { return m_strips[side]; }
  widgets::LimitLanes* lanes() { return m_lanes; }
  /// The parts that F6 goes through, in order.
  QList<QWidget*> parts() const;
  CurvePlot* focusedPlot() const;  ///< A's unless B's has the focus
  QPixmap picture() const;
  QString copyText() const;  ///< the lanes as a table, with headings
  void stepProblem(int by);  ///< to the next or previous result of either that is not a pass
  void chooseNothing();
  std::optional<std::size_t> chosenResult() const { return m_focus.result; }
  /// In the place of the verdict while this page is shown.
  widgets::SentenceContent sentence() const;
  QString title() const;  ///< of the window
  QString statusText() const;
  bool isGuarded() const;  ///< by the rule that either is judged by
  void follow(const widgets::SentenceLink& link);
  void saveState();
  /// What its sheet is made of; empty while the present choice has no answer.
  std::optional<sheet::ComparisonRecord> sheetRecord() const;

 signals:
  void sentenceChanged();
  void openWanted();
  void demoWanted();
  void ovenWanted(std::size_t side);
  void entryWanted(std::size_t side);
  void resultWanted(std::size_t side, std::size_t run, std::size_t outcome);  ///< in the run's own page
  void undone();

 protected:
  void showEvent(QShowEvent* event) override;
  void hideEvent(QHideEvent* event) override;
  void changeEvent(QEvent* event) override;

 private:
  QWidget* buildEmpty();
  void build();
  void connectParts();
  void refresh();        // another comparison, or none
  void refreshChoice();  // another result is looked at
  void refreshScenes();
  void refreshStrips();
  void placePlots();
  void syncStrip(std::size_t side);
  void choose(std::optional<std::size_t> laneNumber);
  void chooseChannel(std::size_t side, std::size_t channel);
  void style();
  bool isOverlaid() const { return m_session->choice().curves == CompareCurves::kOverlaid; }
  const ComparedLogs* compared() const { return m_session->compared().get(); }

  Settings* m_settings;
  Format m_format;
  CompareSession* m_session;
  CompareBar* m_bar;
  CurvePlot* m_plots[2];
  widgets::ZoneStrip* m_strips[2];
  widgets::LimitLanes* m_lanes;
  QStackedWidget* m_pages;
  QWidget* m_columns[2];
  QSplitter* m_rows;
  QLabel *m_emptyTitle, *m_emptyText;
  QTimer m_slow;  // runs out when a comparison takes long enough to be seen
  CompareFocus m_focus;
  std::optional<std::size_t> m_number;  // the chosen mark of the lanes
  bool m_marked = false;                // the zones that differ stand out
};

}  // namespace ovenwright::desktop
