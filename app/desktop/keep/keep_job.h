#pragma once
#include <QFutureWatcher>
#include <QObject>
#include <QString>
#include <memory>
#include <optional>
#include <vector>

#include "app/archive/record.h"
#include "app/desktop/document/open_log.h"

namespace ovenwright::desktop {

class ArchiveLink;

/// Keeps runs of open logs in the archive: their records are made off the GUI thread, from the very result that is on
/// screen and the bytes it came from, and added in one go. Nothing of the document changes.
class KeepJob : public QObject {
  Q_OBJECT
 public:
  /// A judged log, as it stands in the document.
  struct Log {
    Source source;
    std::shared_ptr<const Checked> checked;
    check::Request setup;
    std::optional<std::size_t> run;  ///< only this one of its runs
  };
  struct Wish {
    std::vector<Log> logs;
    archive::Labels labels;  ///< without the time, unless one was given for all
  };
  /// What became of a run.
  struct Kept {
    QString run;  ///< the log's name
    QString id, lot;
    bool already = false;  ///< it was kept before, in `lot`; nothing was added
  };

  explicit KeepJob(ArchiveLink* link, QObject* parent = nullptr);
  /// Waits: what was given to be kept is kept.
  ~KeepJob() override;

  /// One at a time.
  void start(Wish wish);
  bool isRunning() const { return m_running; }

 signals:
  void kept(const std::vector<ovenwright::desktop::KeepJob::Kept>& runs);
  void failed(const ovenwright::Error& error);  ///< nothing was kept

 private:
  using Records = Result<std::vector<archive::NewRun>>;
  void add(std::vector<archive::NewRun> runs);
  /// Where no records can be made of runs that are kept already, as of a run that was opened from the archive: tells
  /// of these. Else fails with the error.
  void lookForKept(const std::vector<Log>& logs, const Error& error);

  ArchiveLink* m_link;
  bool m_running = false;
  bool m_making = false;  // records that are not given to the archive yet
  Wish m_wish;            // while its records are made
  QFutureWatcher<Records> m_watcher;
};

}  // namespace ovenwright::desktop
