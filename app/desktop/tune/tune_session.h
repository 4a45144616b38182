#pragma once
#include <QObject>
#include <set>

#include "app/desktop/document/document.h"
#include "app/desktop/tune/learn_job.h"
#include "app/desktop/tune/predict_job.h"
#include "app/desktop/tune/recipe_edit.h"
#include "app/desktop/tune/search_job.h"

namespace ovenwright::desktop {

/// A prediction that was kept to be held against others.
struct KeptPrediction {
  int number = 0;  ///< from 1: its letter is A, B, …
  std::shared_ptr<const Prediction> prediction;
  QString tag() const { return QString(QChar(u'A' + (number - 1) % 26)); }
};

/// What a person changes in Tune; undo goes from one to another.
struct TuneEdit {
  oven::Recipe recipe;
  bool together = true;                  ///< top and bottom of a zone move as one
  std::vector<std::string> lockedZones;  ///< that a search leaves as they are
  bool keepSpeed = false;
  std::optional<double> leastSpeed_mm_per_min;
  std::optional<double> marginToKeep;  ///< of the fastest and the coolest
  std::vector<int> learnedWith;        ///< numbers of other open logs that the model is learned from too
  std::vector<KeptPrediction> kept;
};

/// All that Tune knows about one run with one recipe. Stays while other runs are looked at.
struct TuneBench {
  std::weak_ptr<OpenLog> log;
  std::size_t run = 0;
  oven::Oven oven;
  oven::Recipe measured;  ///< that was run
  std::optional<RecipeLimits> limits;
  TuneEdit edit;
  std::vector<std::shared_ptr<const RunView>> learnedFrom;  ///< `model` or `error` is about these, the shown run last
  std::shared_ptr<const TuneModel> model;
  std::optional<Error> error;
  std::shared_ptr<const Prediction> prediction;  ///< the last one; of an older recipe until the next arrives
  std::optional<Error> notPredicted;             ///< why the recipe as it is now has no prediction
  std::shared_ptr<const Prediction> banded;      ///< the last one whose band is known
  std::shared_ptr<const tune::Report> report;
  std::set<int> hidden;  ///< numbers of kept predictions whose curves are off
  bool measuredHidden = false;
  int keptSoFar = 0;
  std::optional<oven::Recipe> saved;  ///< the last edit that went into a file

  /// Of the prediction by outcome. While an edit goes on that of the last recipe whose band is known: it changes slowly
  /// with the recipe, and its own follows once the edit rests.
  std::vector<double> halfWidths() const;
  /// Likewise by channel and sample; empty where the two runs are not as long.
  std::vector<std::vector<double>> band_C() const;
};

/// Holds Tune's work on the run that the document shows: learns its model once Tune is looked at, predicts what is
/// edited, searches. Views draw it; edits go through change().
class TuneSession : public QObject {
  Q_OBJECT
 public:
  enum class State { kNothing, kNeedsOven, kNeedsEntry, kLearning, kStopped, kFailed, kNotUsable, kReady };

  explicit TuneSession(Document* document, QObject* parent = nullptr);
  ~TuneSession() override;

  Document* document() const { return m_document; }
  void setActive(bool active);                                 ///< whether Tune is looked at
  void setFormat(const Format& format) { m_format = format; }  ///< of what is said about edits
  State state() const;
  double learningDone() const { return m_learningDone; }
  /// The bench of the run that is shown; null in kNothing, kNeedsOven and kNeedsEntry.
  const TuneBench* bench() const { return m_bench.get(); }
  /// The prediction is that of the recipe as it is edited now, with its band.
  bool isSettled() const;
  bool isBusy() const;  ///< learns, predicts or searches

  /// Puts `edit` in place of the present one, undoably. Edits of one mergeKey >= 0 that follow each other are one step.
  void change(const QString& text, TuneEdit edit, int mergeKey = -1);
  /// Puts a number into the recipe within the oven's limits, which are said by limitHit().
  /// @param gesture  edits of one gesture (a drag, some steps on one field) are one step back
  void setField(const RecipeField& field, double value, int gesture);
  void markSaved();  ///< the recipe as it is edited now stands in a file
  /// Runs whose recipe was edited and stands in no file, each with the recipe as it is now.
  std::vector<std::pair<Document::LogPointer, oven::Recipe>> unsaved() const;
  void backToMeasured();
  /// One number as it was run; where top and bottom move together, both of the zone.
  void backToMeasured(const RecipeField& field);
  /// Puts the setpoints and the speed of a recipe into the one that is edited.
  void takeOver(const QString& text, const oven::Recipe& recipe);
  void keepPrediction();
  void dropKept(int number);
  void setShown(int number, bool shown);  ///< of a kept prediction; 0: the measured run
  bool isShown(int number) const;

  /// Other open runs of the board in its oven, which the model can be learned from too.
  std::vector<Document::LogPointer> companions() const;
  bool learnsFrom(const OpenLog& log) const;
  void setLearnsFrom(const OpenLog& log, bool learns);

  tune::Request request() const;
  void suggest();
  void stop();  ///< learning or searching
  void learnAgain();
  bool isSearching() const { return m_searching; }
  double searchDone() const { return m_searchDone; }

 signals:
  void stateChanged();  ///< another run, or the model of it
  void editChanged();
  void predictionChanged();
  void shownChanged();   ///< which curves are laid over each other
  void searchChanged();  ///< a search began, went on or ended
  void limitHit(const QString& sentence);
  void undone();  ///< an edit came or went by undo or redo

 private:
  friend class TuneCommand;
  void refresh();
  void learn();
  QString stepText(const RecipeField& field, const oven::Recipe& recipe) const;  ///< of an edit, for undo
  void learnIfOthers();  ///< where the model is not of the runs that it is to be learned from
  std::vector<TuneRun> runsToLearnFrom() const;
  void predictEdit();
  void apply(const std::shared_ptr<TuneBench>& bench, const TuneEdit& edit);
  std::shared_ptr<TuneBench> benchOf(const Document::LogPointer& log, std::size_t run);

  Document* m_document;
  Format m_format = Format::inDefaultLocale();
  bool m_active = false;
  std::vector<std::shared_ptr<TuneBench>> m_benches;
  std::shared_ptr<TuneBench> m_bench, m_learningFor, m_searchingFor;
  std::vector<std::shared_ptr<const RunView>> m_learningFrom;
  LearnJob m_learn;
  PredictJob m_predict;
  SearchJob m_search;
  double m_learningDone = 0, m_searchDone = 0;
  bool m_searching = false;
};

}  // namespace ovenwright::desktop
