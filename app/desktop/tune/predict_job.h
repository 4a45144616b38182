#pragma once
#include <QFutureWatcher>
#include <QObject>
#include <QThreadPool>
#include <QTimer>
#include <optional>

#include "app/desktop/tune/tune_model.h"

namespace ovenwright::desktop {

/// Predicts recipes one after the other off the GUI thread. Of those that are asked for while one is worked out only
/// the latest counts: its values first, and once nothing newer came for a moment its band too.
class PredictJob : public QObject {
  Q_OBJECT
 public:
  explicit PredictJob(QObject* parent = nullptr);
  ~PredictJob() override;  ///< waits for what runs: some milliseconds

  void ask(std::shared_ptr<const TuneModel> model, oven::Recipe recipe);
  void drop();  ///< nothing that was asked for is wanted any more
  bool isBusy() const { return m_busy; }

 signals:
  void predicted(std::shared_ptr<const ovenwright::desktop::Prediction> prediction);
  void failed(const ovenwright::Error& error);  ///< memory ran out for the recipe that is wanted

 private:
  using Outcome = Result<std::shared_ptr<const Prediction>>;
  struct Wanted {
    std::shared_ptr<const TuneModel> model;
    oven::Recipe recipe;
    bool withBand = false;
  };
  void next();
  void conclude();
  void askForBand();

  QThreadPool m_thread;  // of its own, so that a search that fills the common pool does not hold up the mouse
  std::optional<Wanted> m_wanted;
  Wanted m_running;
  bool m_busy = false, m_dropped = false;
  QTimer m_rest;  // runs between the values and their band
  QFutureWatcher<Outcome> m_watcher;
};

}  // namespace ovenwright::desktop
