#pragma once
#include <QFutureWatcher>
#include <QObject>
#include <atomic>

#include "app/desktop/tune/tune_model.h"
#include "core/tune/tune.h"

namespace ovenwright::desktop {

/// Searches recipes that are predicted to pass, off the GUI thread.
class SearchJob : public QObject {
  Q_OBJECT
 public:
  explicit SearchJob(QObject* parent = nullptr);
  ~SearchJob() override;  ///< stops, then waits

  void start(std::shared_ptr<const TuneModel> model, tune::Request request);  ///< what runs before is abandoned
  /// What was found until then is reported as cut short.
  void stop();
  void abandon();  ///< no report is wanted any more
  bool isBusy() const { return m_busy; }

 signals:
  void progressChanged(double done);
  void found(std::shared_ptr<const ovenwright::tune::Report> report);

 private:
  using Outcome = std::shared_ptr<const tune::Report>;
  void conclude();

  std::shared_ptr<std::atomic<bool>> m_stop;
  bool m_busy = false, m_abandoned = false;
  QFutureWatcher<Outcome> m_watcher;
};

}  // namespace ovenwright::desktop
