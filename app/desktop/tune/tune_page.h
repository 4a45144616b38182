#pragma once
#include <QTimer>
#include <QWidget>

#include "app/desktop/plot/scene.h"
#include "app/desktop/tune/tune_session.h"
#include "app/desktop/widgets/sentence_content.h"

class QCheckBox;
class QLabel;
class QPushButton;
class QSplitter;
class QToolButton;

namespace ovenwright::widgets {
class LimitLanes;
}

namespace ovenwright::desktop {

class CurvePlot;
class FlowRow;
class RecipeStrip;
class Settings;
class SidePanel;
class SuggestionsPanel;

/// The recipe of the run that is shown, to be edited: predicted curves over the measured ones, the zone strip with a
/// field for each setpoint, the predicted limit lanes, suggestions at the right.
class TunePage : public QWidget {
  Q_OBJECT
 public:
  TunePage(Document* document, Settings* settings, QWidget* parent = nullptr);
  ~TunePage() override;

  void setFormat(const Format& format);
  TuneSession* session() { return m_session; }
  CurvePlot* plot() { return m_plot; }
  RecipeStrip* strip() { return m_strip; }
  widgets::LimitLanes* lanes() { return m_lanes; }
  SuggestionsPanel* panel() { return m_panel; }
  void stepProblem(int by);  ///< to the next or previous result that is not predicted to pass
  /// The parts that F6 goes through, in order.
  QList<QWidget*> parts() const;
  bool isPanelShown() const;
  void setPanelShown(bool shown);
  void setAllCurvesShown(bool shown);
  QString copyText() const;  ///< the predicted lanes as rows, tab separated with headings
  QPixmap picture() const;
  /// In the place of the verdict while this page is shown.
  widgets::SentenceContent sentence() const;
  void follow(const widgets::SentenceLink& link);
  void saveRecipeTo(const QString& path);  ///< a file that is there stays as it is
  void saveNoteTo(const QString& path, bool pdf);
  void saveState();

 signals:
  void sentenceChanged();
  void ovenWanted();
  void entryWanted();
  void noted(const QString& text);
  void troubled(const QString& title, const ovenwright::Error& error);
  void panelShownChanged(bool shown);
  void undone();  ///< something of this page came or went by undo or redo

 protected:
  void showEvent(QShowEvent* event) override;
  void hideEvent(QHideEvent* event) override;
  void resizeEvent(QResizeEvent* event) override;
  void changeEvent(QEvent* event) override;

 private:
  QWidget* buildTools();
  void build();
  void connectParts();
  void refresh();
  void refreshScene();
  void refreshLanes();
  void refreshStrip();
  void refreshTools();
  void refreshNote();
  void keepTools();
  void shareHeight();
  void syncStrip();
  void style();
  Scene scene() const;
  std::vector<std::size_t> fewChannels() const;
  void saveRecipe();
  void saveNote(bool pdf);

  Document* m_document;
  Settings* m_settings;
  Format m_format;
  TuneSession* m_session;
  CurvePlot* m_plot;
  RecipeStrip* m_strip;
  widgets::LimitLanes* m_lanes;
  SuggestionsPanel* m_panel;
  QCheckBox *m_together, *m_allCurves;
  QLabel* m_togetherNote;
  QPushButton *m_keep, *m_back, *m_note, *m_save;
  QToolButton* m_panelLink;
  FlowRow* m_tools;
  QWidget* m_lower;
  QSplitter *m_columns, *m_rows;
  bool m_rowsMoved = false;
  SidePanel* m_side = nullptr;
  QTimer m_slow;  // runs out when a prediction takes long enough to be seen
  std::optional<std::size_t> m_hovered;
  std::vector<bool> m_wanted;  // by channel: whose curves are shown unless a key says otherwise
  std::weak_ptr<const RunView> m_wantedOf;
};

}  // namespace ovenwright::desktop
