#pragma once
#include <QFutureWatcher>
#include <QObject>

#include "app/desktop/tune/tune_model.h"

namespace ovenwright::desktop {

/// Learns the model of a run off the GUI thread.
class LearnJob : public QObject {
  Q_OBJECT
 public:
  explicit LearnJob(QObject* parent = nullptr);
  ~LearnJob() override;  ///< cancels, then waits

  void start(TuneInput input);  ///< what runs before is abandoned
  void cancel() { m_watcher.cancel(); }
  bool isBusy() const { return m_busy; }

 signals:
  void progressChanged(double done);
  void learned(std::shared_ptr<const ovenwright::desktop::TuneModel> model);
  void failed(const ovenwright::Error& error);  ///< kCancelled where it was stopped

 private:
  using Outcome = Result<std::shared_ptr<const TuneModel>>;
  void conclude();

  bool m_busy = false;
  QFutureWatcher<Outcome> m_watcher;
};

}  // namespace ovenwright::desktop
