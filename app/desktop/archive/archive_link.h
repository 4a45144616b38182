#pragma once
#include <QObject>
#include <QPointer>
#include <QString>
#include <QThread>
#include <atomic>
#include <functional>
#include <map>
#include <memory>
#include <optional>
#include <utility>
#include <vector>

#include "app/archive/archive.h"

class QTimer;

namespace ovenwright::archive {
class Patience;
}

namespace ovenwright::desktop {

class ArchiveDesk;

/// What the last request found.
struct ArchiveStatus {
  enum class Reach {
    kNotLooked,  ///< nothing was asked yet
    kNone,       ///< the file does not exist: no run was kept yet, and looking makes none
    kOpen,       ///< a file, or a server that answers
    kAway,       ///< the server does not answer, or refuses; what is kept waits in the outbox
    kTrouble,    ///< damaged, refused, of a newer version: `error` says it
  } reach = Reach::kNotLooked;
  archive::State state;        ///< where it is, and how many records wait
  std::optional<Error> error;  ///< with kTrouble and kAway, and where what waits is refused
  std::size_t records = 0;     ///< all there are, as of the last look
  bool slow = false;           ///< the server has been asked for a while and has not answered yet
};

/// The archive of the settings, off the GUI thread: a thread with its own connection. Requests are done in their order;
/// their results come on the GUI thread. Where the same object asks to read the same kind again, the older request is
/// stopped and its result dropped. Opened at the first request.
class ArchiveLink : public QObject {
  Q_OBJECT
 public:
  /// Whether a request writes: only then a missing archive is made. Such a request is always carried out, whatever is
  /// asked or closed after it, and changed() follows it.
  enum class Need { kRead, kWrite };
  /// Asked by long work: whether its result is still wanted.
  class Stop {
   public:
    bool isWanted() const { return !*m_stopped; }

   private:
    friend class ArchiveLink;
    std::shared_ptr<std::atomic<bool>> m_stopped = std::make_shared<std::atomic<bool>>(false);
  };

  struct Pace {
    int again_ms = 30'000;     ///< how often a server that answers is looked at
    int againAway_ms = 7'000;  ///< likewise one that is away, or that records wait for
    int slow_ms = 2'000;       ///< a server that takes longer is said to be slow
    int answer_s = 10;         ///< after which a silent server counts as away
    int close_ms = 3'000;      ///< how long a server is waited for when the program closes; then records wait here
  };

  /// @param where  path or URL; empty: archive::defaultArchive()
  explicit ArchiveLink(const QString& where = {}, QObject* parent = nullptr);
  /// Stops what waits, then waits for what runs; a server that does not answer by then is left, and what was given to
  /// be kept waits in the outbox.
  ~ArchiveLink() override;
  void setPace(const Pace& pace);  ///< from the next setWhere() on
  const Pace& pace() const { return m_pace; }

  QString where() const { return m_where; }  ///< whole path or URL, never empty
  bool isAt(const QString& where) const;     ///< as the constructor takes it
  /// Another archive: what was asked of the old one is dropped.
  void setWhere(const QString& where);
  bool isServer() const;
  const ArchiveStatus& status() const { return m_status; }

  /// Work on the archive's thread; its result on this thread, unless `context` is gone or has asked for `kind` again.
  /// Where the archive cannot be opened, `then` gets the error without `work`: for a reader of a missing archive one
  /// for which isMissing() holds.
  template <class T>
  void ask(QObject* context, const QString& kind, std::function<Result<T>(archive::Archive&, const Stop&)> work,
           std::function<void(Result<T>)> then, Need need = Need::kRead) {
    auto result = std::make_shared<std::optional<Result<T>>>();
    post(
        context, kind, need,
        [result, work = std::move(work)](Result<archive::Archive*> archive, const Stop& stop) {
          *result = archive ? work(**archive, stop) : Result<T>(archive.error());
        },
        [result, then = std::move(then)] { then(*std::move(*result)); });
  }
  static bool isMissing(const Error& error);

  template <class T>
  using Then = std::function<void(Result<T>)>;
  void find(QObject* context, archive::Filter filter, std::size_t limit, std::optional<archive::Cursor> after,
            archive::Order order, Then<archive::Page> then);
  void count(QObject* context, archive::Filter filter, Then<std::size_t> then);
  void lots(QObject* context, archive::Filter filter, Then<std::vector<archive::LotSummary>> then);
  void runsOfLot(QObject* context, const std::string& lot, Then<std::vector<archive::Summary>> then);
  void load(QObject* context, const std::string& id, Then<archive::Record> then);
  void rawLog(QObject* context, const std::string& id, Then<std::string> then);
  /// Each call keeps its runs. changed() follows.
  void add(QObject* context, std::vector<archive::NewRun> runs, Then<std::vector<archive::Added>> then);
  /// Drops what this object asked for under the kind.
  void drop(QObject* context, const QString& kind);
  /// Looks whether the archive is there and how many records it has, and sends what waits.
  void look();
  /// The same, however short ago a server was found away: somebody asks for it.
  void tryAgain();

 signals:
  void statusChanged();
  /// Records were sent that turned out to be of runs which another station had kept already with the same judgement.
  void repeated(const std::vector<ovenwright::archive::Repeated>& records);
  void changed();  ///< records or notes were added from here, or another archive was chosen

 private:
  using Work = std::function<void(Result<archive::Archive*>, const Stop&)>;
  void post(QObject* context, const QString& kind, Need need, Work work, std::function<void()> then);
  struct Told {
    ArchiveStatus status;
    std::vector<archive::Repeated> repeated;
  };
  Told told();  // on the archive's thread
  void take(const Told& told);
  void take(const ArchiveStatus& status);
  void watchPatience();
  void setPlace(const QString& place);

  QString m_where;
  Pace m_pace;
  std::shared_ptr<archive::Patience> m_patience;
  std::shared_ptr<std::atomic<qint64>> m_busySince;  // 0: the archive's thread waits for work
  QTimer* m_slowness;
  ArchiveStatus m_status;
  QThread m_thread;
  ArchiveDesk* m_desk;  // lives on m_thread
  std::map<std::pair<const QObject*, QString>, Stop> m_asked;
  int m_era = 0;  // counts the archives that were chosen
  QTimer* m_again;
};

}  // namespace ovenwright::desktop
