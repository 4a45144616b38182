#pragma once
#include <QWidget>
#include <functional>

#include "app/desktop/text/format.h"
#include "app/desktop/tune/tune_session.h"

class QCheckBox;
class QDoubleSpinBox;
class QLabel;
class QProgressBar;
class QPushButton;
class QScrollArea;
class QSpinBox;
class QVBoxLayout;

namespace ovenwright::desktop {

class SuggestionCard;

/// What a search may move, its suggestions or why there are none, which curves are laid over each other, and how well
/// the model fits.
class SuggestionsPanel : public QWidget {
  Q_OBJECT
 public:
  explicit SuggestionsPanel(TuneSession* session, QWidget* parent = nullptr);
  ~SuggestionsPanel() override;

  void setFormat(const Format& format);
  QPushButton* suggestButton() { return m_suggest; }
  const std::vector<SuggestionCard*>& cards() const { return m_cards; }
  void showSettings();  ///< what a search may move, after one has run

 protected:
  void changeEvent(QEvent* event) override;

 private:
  QWidget* buildSettings();
  void change(const QString& text, const std::function<void(TuneEdit&)>& edit, int mergeKey = -1);
  void refresh();
  void refreshSettings();
  void refreshReport();  // anew only where there is another one
  void refreshShown();   // which card stands in the strip
  void fillReport(QVBoxLayout* layout);
  void fillOverlays();  // anew only where others are kept
  void fillModel();
  void style();

  TuneSession* m_session;
  Format m_format;
  QLabel* m_heading;
  QPushButton* m_again;
  QScrollArea* m_scroll;
  QWidget* m_settings;
  QCheckBox *m_keepSpeed, *m_useLeastSpeed, *m_useMargin;
  QDoubleSpinBox* m_leastSpeed;
  QSpinBox* m_margin;
  QLabel* m_locked;
  QPushButton *m_suggest, *m_stop;
  QLabel* m_waiting;
  QProgressBar* m_progress;
  QWidget *m_report, *m_overlays, *m_model;
  std::vector<SuggestionCard*> m_cards;
  std::shared_ptr<const tune::Report> m_shownReport;
  const TuneBench *m_shownBench = nullptr, *m_overlaysBench = nullptr;
  std::vector<int> m_overlaysNumbers;
  std::shared_ptr<const TuneModel> m_shownModel;
  bool m_settingsWanted = false;
};

}  // namespace ovenwright::desktop
