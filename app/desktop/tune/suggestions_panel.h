#pragma once
#include <QWidget>

#include "app/desktop/text/format.h"
#include "app/desktop/tune/tune_session.h"

class QLabel;
class QProgressBar;
class QPushButton;
class QScrollArea;
class QVBoxLayout;

namespace ovenwright::desktop {

class LearnedFrom;
class OverlayList;
class SearchSettings;
class SuggestionCard;

/// What a search may move, its suggestions or why there are none, which curves are laid over each other, and how well
/// the model fits.
class SuggestionsPanel : public QWidget {
  Q_OBJECT
 public:
  explicit SuggestionsPanel(TuneSession* session, QWidget* parent = nullptr);
  ~SuggestionsPanel() override;

  void setFormat(const Format& format);
  QPushButton* suggestButton();
  const std::vector<SuggestionCard*>& cards() const { return m_cards; }
  void showSettings();  ///< what a search may move, after one has run

 protected:
  void changeEvent(QEvent* event) override;

 private:
  void refresh();
  void refreshSettings();
  void refreshReport();  // anew only where there is another one
  void refreshShown();   // which card stands in the strip
  void fillReport(QVBoxLayout* layout);
  void refreshModel();
  void fillDoubts(const heat::FitReport& fit);  // before what is suggested: what of the fit to doubt it for
  void style();

  TuneSession* m_session;
  Format m_format;
  QLabel* m_heading;
  QPushButton* m_again;
  QScrollArea* m_scroll;
  SearchSettings* m_settings;
  QPushButton* m_stop;
  QWidget* m_doubts;
  QLabel* m_waiting;
  QProgressBar* m_progress;
  QWidget* m_report;
  OverlayList* m_overlays;
  LearnedFrom* m_model;
  std::vector<SuggestionCard*> m_cards;
  std::shared_ptr<const tune::Report> m_shownReport;
  const TuneBench* m_shownBench = nullptr;
  std::shared_ptr<const TuneModel> m_shownModel;
  bool m_settingsWanted = false;
};

}  // namespace ovenwright::desktop
