#pragma once
#include <QDateTime>
#include <QObject>
#include <QPointer>
#include <memory>
#include <optional>
#include <vector>

#include "app/archive/archive.h"
#include "app/archive/watch.h"

class QThread;

namespace ovenwright::desktop {

class ArchiveLink;
class WatchWorker;

/// Watches a folder while it is told to: each log that appears is judged by the rules and kept, on a thread with a
/// connection of its own. Goes on whatever is on screen; never starts by itself.
class WatchService : public QObject {
  Q_OBJECT
 public:
  /// What became of a run of a file, or of a file that could not be read.
  struct Line {
    QDateTime at;
    archive::Watched watched;
  };

  /// The one beside this archive, made at the first call; goes with the link.
  static WatchService* of(ArchiveLink* link);
  /// Stops, then waits for the log that is being judged.
  ~WatchService() override;

  /// Reads the rules and begins; where the rules or the archive cannot be used, trouble() says why and it stops.
  void start(const QString& folder, const QString& rules);
  void stop();
  bool isRunning() const { return m_running; }
  QString folder() const { return m_folder; }
  const std::vector<Line>& lines() const { return m_lines; }  ///< the oldest first, at most kMostLines
  int kept() const { return m_kept; }
  int failed() const { return m_failed; }
  bool isWaiting() const { return m_waiting; }  ///< for files that are still being written, or for the archive
  bool isRefused() const { return m_refused; }  ///< the archive cannot take files that are there: they wait for it
  /// Why it stopped, or what is wrong while it goes on, such as a folder that is away.
  const std::optional<Error>& trouble() const { return m_trouble; }

  static constexpr std::size_t kMostLines = 2000;

 signals:
  void linesAdded(int count);
  void stateChanged();

 private:
  explicit WatchService(ArchiveLink* link);
  friend class WatchWorker;
  struct Look {
    std::vector<archive::Watched> watched;
    std::vector<archive::Repeated> repeated;
    bool waiting = false, refused = false;
    std::optional<Error> trouble;
  };
  void take(const Look& look);
  void stopped(const Error& error);

  /// A thread that watches, and the patience of its connection.
  struct Watching {
    QPointer<QThread> thread;
    std::shared_ptr<archive::Patience> patience;
  };

  ArchiveLink* m_link;
  std::vector<Watching> m_threads;  // the one that watches last; those before it end with the log they judge
  QString m_folder, m_rules, m_where;
  std::vector<Line> m_lines;
  int m_kept = 0, m_failed = 0;
  int m_turn = 0;  // counts the starts: what an older one tells is dropped
  bool m_running = false, m_waiting = false, m_refused = false;
  std::optional<Error> m_trouble;
};

}  // namespace ovenwright::desktop
