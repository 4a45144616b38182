#pragma once
#include <QFutureWatcher>
#include <QObject>
#include <QThreadPool>

#include "app/desktop/compare/compare_model.h"

namespace ovenwright::desktop {

/// Compares off the GUI thread. Of what is asked for while one is worked out only the latest counts.
class CompareJob : public QObject {
  Q_OBJECT
 public:
  explicit CompareJob(QObject* parent = nullptr);
  ~CompareJob() override;  ///< waits for what runs

  void ask(CompareInput input);
  void drop();  ///< nothing that was asked for is wanted any more
  bool isBusy() const { return m_busy; }

 signals:
  void compared(std::shared_ptr<const ovenwright::desktop::ComparedLogs> compared);
  void failed(const ovenwright::Error& error);

 private:
  void next();
  void conclude();

  QThreadPool m_thread;  // of its own, so that logs being read do not hold it up
  std::optional<CompareInput> m_wanted;
  bool m_busy = false, m_dropped = false;
  QFutureWatcher<Result<std::shared_ptr<const ComparedLogs>>> m_watcher;
};

}  // namespace ovenwright::desktop
