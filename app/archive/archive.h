#pragma once
#include <cstddef>
#include <functional>
#include <memory>
#include <optional>
#include <span>
#include <string>
#include <vector>

#include "app/archive/filter.h"
#include "app/archive/record.h"
#include "core/units/result.h"

namespace ovenwright::archive {

class Patience;
enum class Access { kReadOnly, kReadWrite };

/// How an archive is opened.
struct Options {
  Access access = Access::kReadWrite;
  std::string outbox;           ///< for a server: the file that keeps what could not be sent; empty: defaultOutbox()
  std::string machine;          ///< whose chain is added to; empty: this machine's own id and name
  int busyTimeout_ms = 30'000;  ///< how long another process may hold a file before that is an error
  int connectTimeout_s = 5;     ///< after which a server counts as away
  int answerTimeout_s = 30;     ///< likewise, for each of its answers
  int retryAfter_ms = 5'000;    ///< a server that was away is not tried again earlier: see tryAgain()
  std::shared_ptr<Patience> patience;  ///< for one who may have to leave a silent server from another thread; or none
};

/// What became of a run given to add().
struct Added {
  std::string id;
  bool already = false;  ///< this pass of this very log was there before: `id` is that record, nothing was added
};

/// A record that came to a server, or into another archive, after the same run was kept there by somebody who could not
/// know of it: judged from the same files with the same result. It stays in its chain, and lists show the first alone.
struct Repeated {
  std::string id;
  std::string of, lot, station;  ///< the record that was there first, its lot, and the machine that made it
};

/// Where records go at the moment.
struct State {
  enum class Kind {
    kFile,        ///< an SQLite file
    kServer,      ///< a server that answers
    kServerAway,  ///< it does not: records are kept in the outbox
  } kind = Kind::kFile;
  std::string where;        ///< path, or URL
  std::size_t waiting = 0;  ///< records in the outbox that the server does not have yet
  std::string message;      ///< why it is away, or why it refuses this user or what waits; else empty
  bool refused = false;     ///< it answers, and refuses
};

/// What verify() found.
struct Verification {
  std::size_t records = 0;
  std::size_t notes = 0;     ///< of printed sheets
  std::size_t repeated = 0;  ///< of the records: of runs that others among them keep, see Repeated
  std::vector<Head> heads;
  std::string firstBad;  ///< id of the first record that does not hold; empty: all hold
  std::string reason;    ///< one English sentence on it
  bool holds() const { return reason.empty(); }
};

/// Judged runs with their evidence in an SQLite file or on a PostgreSQL server. Records are added, never changed and
/// never removed: a new judgement is a new record. Belongs to the thread that opened it; other threads and processes
/// open their own. A QCoreApplication must exist.
class Archive {
 public:
  /// @param where  a path, or postgresql://user@host:port/database (no password: libpq's password and service files
  ///               serve). A missing file is made, with Access::kReadOnly it is an error. A schema of an older version
  ///               is brought forward either way, after a backup.
  /// Errors: kIo: no archive, damaged, of a newer version, cannot be opened or written, in use for longer than the
  /// timeout. A server that is away is no error: see state(). One that refuses is, unless this machine has added to it
  /// before: then what is kept waits in the outbox (but add() fails where the right to add is gone); state() says why.
  static Result<Archive> open(const std::string& where, const Options& options = {});
  Archive(Archive&&) noexcept;
  Archive& operator=(Archive&&) noexcept;
  ~Archive();

  /// Keeps the runs in one transaction: when it returns, all of them are on disk for good, or none is. With a server
  /// they are first on disk in the outbox, then sent. The result has the order of `runs`.
  /// Errors: kIo (disk full, read-only, no permission, in use); kBadArgument where judgedFrom names no record.
  Result<std::vector<Added>> add(std::span<const NewRun> runs);

  /// Up to `limit` records in `order`, from `after` on. Cost: by time the page, not the archive, except for text; in
  /// another order the keys of all records that pass the filter are sorted for each page.
  /// While a server is away this, count(), lots(), runsOfLot() and heads() give what waits in the outbox: state() says
  /// so.
  Result<Page> find(const Filter& filter, std::size_t limit, const std::optional<Cursor>& after = std::nullopt,
                    Order order = Order::kNewestFirst);
  Result<std::size_t> count(const Filter& filter);
  /// All lots with records that pass the filter, the one with the newest run first.
  Result<std::vector<LotSummary>> lots(const Filter& filter = {});
  /// What a name of the records has been so far, each once, in order of its text; without the empty one.
  enum class Name { kBoard, kOven };
  Result<std::vector<std::string>> names(Name which);
  /// The runs of a lot in order of time of run, each by its last judgement.
  Result<std::vector<Summary>> runsOfLot(const std::string& lot);

  /// The ids of the records that an id or a digest from paper names: the log's or the record's, whole, its beginning,
  /// or its short form "81c0…9e2d"; the oldest first. A log that was judged several times has several. Errors:
  /// kBadArgument where a digest fits none; kIo. Cost: for a digest a scan over the records.
  Result<std::vector<std::string>> idsOf(const std::string& idOrDigest);
  /// Errors: kBadArgument where there is no such record.
  Result<Record> load(const std::string& id);
  Result<std::string> report(const std::string& id);  ///< JSON as `check` printed it that day
  Result<std::string> text(const std::string& id);    ///< what it printed for people
  Result<std::string> rawLog(const std::string& id);  ///< byte for byte
  /// Bytes by their SHA-256, checked against it. Errors: kBadArgument (unknown), kIo (damaged).
  Result<std::string> content(const std::string& sha256);

  /// The end of every chain.
  Result<std::vector<Head>> heads();
  /// Every record against its digest, its chain, its bytes and its place in the lists.
  /// @param head      a digest from a printed sheet, as idsOf() takes it: it must be one of the records
  /// @param progress  called now and then with the share done; false stops with kCancelled; may be empty
  Result<Verification> verify(const std::optional<std::string>& head = std::nullopt,
                              const std::function<bool(double done)>& progress = {});
  /// All records into another archive, ids and chains kept, then the notes of printed sheets and of released windows;
  /// those it has already are left. This archive stays as it is. May be stopped and started again at any moment.
  /// Returns how many records were moved. Errors: kIo; kBadArgument where the other archive has another record of the
  /// same id, or another note. What waits in an outbox for this archive is moved too.
  Result<std::size_t> moveTo(Archive& other, const std::function<bool(double done)>& progress = {});

  /// Notes beside these records that their sheets were printed, by whom and now, in one transaction; with a server
  /// first on disk in the outbox, then sent. Notes are added and never changed or removed; the records stay as they
  /// are. Returns the time noted. Errors: kBadArgument where there is no such record; kIo, also where the server that
  /// has it is away.
  Result<Moment> notePrinted(std::span<const std::string> ids, const std::string& by);
  /// The notes of a record, the oldest first; Summary::printedAt is the newest one's time.
  Result<std::vector<PrintedNote>> printedNotes(const std::string& id);

  /// Notes that lots may be judged by a window. On a server this takes the role that may release windows, and the
  /// server itself: there is no outbox for it. Errors: kIo.
  Result<ReleasedWindow> release(const NewFile& window, const std::string& by);
  /// All releases, the newest first.
  Result<std::vector<ReleasedWindow>> releasedWindows();

  State state() const;
  /// Those of the records sent, added or moved here through this object that turned out to be of runs which were kept
  /// already, since the last call.
  std::vector<Repeated> takeRepeated();
  /// The next call tries a server again, however short ago it was found away.
  void tryAgain();
  /// Sends what waits in the outbox, in order, connecting again where the server was away; to be called now and then
  /// by a program that stays open. Returns how many records were sent, 0 where the server is away or is no server.
  /// Errors: kIo where the server refuses them: they stay in the outbox.
  Result<std::size_t> sendWaiting();

 private:
  struct Data;
  explicit Archive(std::unique_ptr<Data> data);
  std::unique_ptr<Data> m_data;
};

/// The file in the user's data folder that is used unless told otherwise.
std::string defaultArchive();
/// Where records for a server wait while it is away: a file in the user's data folder.
std::string defaultOutbox(const std::string& url);

}  // namespace ovenwright::archive
