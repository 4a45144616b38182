#pragma once
#include <QFutureWatcher>
#include <QObject>
#include <functional>

#include "app/desktop/document/checked.h"

namespace ovenwright::desktop {

/// Reads a log and judges it off the GUI thread; the only class of the desktop that knows threads.
class CheckJob : public QObject {
  Q_OBJECT
 public:
  struct Input {
    Source source;
    check::Request request;
    std::shared_ptr<const log::Reading> reading;  ///< read already: only judge anew
    /// Asked in the worker for the layout kept for logs of this shape; may be empty. Must be thread-safe.
    std::function<std::optional<log::Layout>(const log::Reading&)> remembered;
  };

  explicit CheckJob(QObject* parent = nullptr);
  /// Cancels, then waits.
  ~CheckJob() override;

  void start(Input input);  ///< by value: the worker owns its input
  void cancel();

 signals:
  void progressChanged(double done, qulonglong rows);
  void finished(std::shared_ptr<const ovenwright::desktop::Checked> checked);
  /// The view words and translates it. `tables`: those of the log, as far as it is known without reading it again
  /// for long; of a large file none.
  void failed(const ovenwright::Error& error, const std::vector<ovenwright::log::ListedTable>& tables);
  void cancelled();

 private:
  struct Outcome {
    Result<std::shared_ptr<const Checked>> checked;
    std::vector<log::ListedTable> tables;  ///< of a log that failed
  };
  void conclude();

  QFutureWatcher<Outcome> m_watcher;
};

}  // namespace ovenwright::desktop
