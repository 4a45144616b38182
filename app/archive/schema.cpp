#include "app/archive/schema.h"

#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <iterator>
#include <span>
#include <string>

#include "app/archive/body.h"
#include "app/archive/repeated.h"
#include "app/archive/roles.h"
#include "app/archive/store.h"
#include "core/files/text_file.h"

namespace ovenwright::archive {
namespace {

constexpr int kApplicationId = 0x4f76656e;  // "Oven", in the header of an SQLite file

// {blob}, {integer}, {real} and {clustered} stand for the words of the database at hand.
constexpr const char* kVersion1[] = {
    R"(create table archive(name text primary key, value text not null))",
    // Bytes by their SHA-256, each once: logs, windows, ovens, recipes, boards, layouts, pictures.
    R"(create table content(sha256 {blob} primary key, size {integer} not null, packed {blob} not null))",
    // `moved`: how many of a chain's records were moved out of an outbox.
    R"(create table chain(id text primary key, machine text not null, station text not null,
        count {integer} not null, head text not null, moved {integer} not null))",
    // The record itself: its body, the report and the text, packed as one. Never changed.
    R"(create table record(chain text not null references chain(id), number {integer} not null, digest text not null,
        packed {blob} not null, primary key(chain, number)))",
    // What lists and filters need of it; can be made again from the records.
    R"(create table run(chain text not null, number {integer} not null, run_at {integer} not null,
        added_at {integer} not null, lot text not null, serial text not null, board text not null, oven text not null,
        recipe text not null, window_name text not null, window_revision text not null, verdict text not null,
        margin {real}, log {blob} not null references content(sha256), log_name text not null, part {integer} not null,
        parts {integer} not null, operator text not null, judged_from text not null, origin text not null,
        primary key(chain, number), foreign key(chain, number) references record(chain, number)))",
    R"(create index run_by_time on run(run_at, chain, number))",
    R"(create index run_by_lot on run(lot, run_at, chain, number))",
    R"(create index run_by_serial on run(serial, run_at, chain, number))",
    R"(create index run_by_board on run(board, run_at, chain, number))",
    R"(create index run_by_oven on run(oven, run_at, chain, number))",
    R"(create index run_by_recipe on run(recipe, run_at, chain, number))",
    R"(create index run_by_window on run(window_name, run_at, chain, number))",
    R"(create index run_by_verdict on run(verdict, run_at, chain, number))",
    R"(create index run_by_log on run(log, part))",
    R"(create index run_by_origin on run(origin, chain, number))",
};

// The words of each run in one row, in the order of lists: a text search reads this and nothing else.
constexpr const char* kVersion2[] = {
    R"(create table search(run_at {integer} not null, chain text not null, number {integer} not null, words text not null,
        primary key(run_at, chain, number)){clustered})",
};

// Windows that lots may be judged by, with who said so and when; a release is never taken back, a newer one follows it.
constexpr const char* kVersion3[] = {
    R"(create table released_window(sha256 {blob} not null references content(sha256), name text not null,
        revision text not null, released_at {integer} not null, released_by text not null,
        primary key(sha256, released_at)))",
    // The last judgement of each run without looking at its row.
    R"(drop index if exists run_by_origin)",
    R"(create index run_by_origin on run(origin, added_at, chain, number))",
};

// That sheets were printed: beside the records, whose chains stay as they are. The notes of one writer form a chain of
// their own; `machine` is whose it is here, empty where it was moved from elsewhere.
constexpr const char* kVersion4[] = {
    R"(create table note(chain text not null, number {integer} not null, record_chain text not null,
        record_number {integer} not null, printed_at {integer} not null, printed_by text not null, station text not null,
        machine text not null, digest text not null, primary key(chain, number)))",
    R"(create index note_by_record on note(record_chain, record_number, printed_at))",
    R"(create index note_by_machine on note(machine, number))",
    // Where the time of a run comes from: RunAtFrom.
    R"(alter table run add column run_at_given {integer} not null default 0)",
    // Records that are no longer the last judgement of their run.
    R"(create table superseded(chain text not null, number {integer} not null, primary key(chain, number)){clustered})",
    R"(insert into superseded(chain, number) select chain, number from run where exists (select 1 from run later
        where later.origin = run.origin and
        (later.added_at, later.chain, later.number) > (run.added_at, run.chain, run.number)))",
    // In an outbox: the logs that the server keeps, as of when it answered last.
    R"(create table kept_by_server(log {blob} not null, part {integer} not null, chain text not null,
        number {integer} not null, primary key(log, part)))",
    R"(create index kept_by_server_in_order on kept_by_server(chain, number))",
};

// A run is a pass of a log, whoever kept it: the last judgement is found by that. Records that came when the same
// judgement of their run was kept already, see Repeated.
constexpr const char* kVersion5[] = {
    R"(create table repeated(chain text not null, number {integer} not null, of_chain text not null,
        of_number {integer} not null, primary key(chain, number)){clustered})",
    R"(drop index if exists run_by_origin)",
    R"(drop index if exists run_by_log)",
    R"(create index run_by_log on run(log, part, added_at, chain, number))",
};

QString typed(const char* sql, bool server) {
  QString text = QLatin1String(sql);
  text.replace(QLatin1String("{blob}"), QLatin1String(server ? "bytea" : "blob"));
  text.replace(QLatin1String("{integer}"), QLatin1String(server ? "bigint" : "integer"));
  text.replace(QLatin1String("{real}"), QLatin1String(server ? "double precision" : "real"));
  text.replace(QLatin1String("{clustered}"), QLatin1String(server ? "" : " without rowid"));
  return text;
}

std::optional<Error> execute(Database& database, std::span<const char* const> statements) {
  for (const char* sql : statements) {
    if (auto error = database.execute(typed(sql, database.isServer()))) return error;
  }
  return std::nullopt;
}

std::optional<Error> toVersion1(Database& database) {
  if (auto error = execute(database, kVersion1)) return error;
  if (!database.isServer()) return std::nullopt;
  // Packed bytes do not pack again.
  constexpr const char* kStorage[] = {"alter table content alter column packed set storage external",
                                      "alter table record alter column packed set storage external"};
  return execute(database, kStorage);
}

/// Does something with every record, in order.
std::optional<Error> forEveryRecord(Database& database, std::optional<Error> (*take)(Database&, const Record&)) {
  const auto all = chains(database);
  if (!all) return all.error();
  constexpr int kAtOnce = 500;
  for (const auto& chain : *all) {
    for (std::uint64_t last = chain.moved; last < chain.count;) {
      const auto records = recordsAfter(database, chain.id, last, kAtOnce);
      if (!records) return records.error();
      if (records->empty()) break;  // a cut tail: verify() tells of it
      for (const auto& stored : *records) {
        const auto parcel = unpackedParcel(stored.parcel);
        const auto record = parcel ? parseBody(parcel->body) : Result<Record>(parcel.error());
        if (!record) continue;  // damaged: verify() tells of it
        if (auto error = take(database, *record)) return error;
      }
      last = records->back().number;
    }
  }
  return std::nullopt;
}

std::optional<Error> toVersion2(Database& database) {
  if (auto error = execute(database, kVersion2)) return error;
  return forEveryRecord(database, insertWords);
}

std::optional<Error> toVersion3(Database& database) { return execute(database, kVersion3); }

/// What a server forbids by its grants a file forbids by itself, to whatever program opens it. An outbox gives away
/// what it has sent.
std::optional<Error> forbidChanges(Database& file, std::span<const char* const> tables) {
  for (const char* table : tables) {
    const QString name = QLatin1String(table);
    const bool grows = name == QLatin1String("chain");
    const QString update = QStringLiteral(
                               "create trigger %1_is_not_changed before update on %1%2 begin select "
                               "raise(abort, 'the archive changes nothing that it keeps'); end")
                               .arg(name, grows ? QStringLiteral(" when new.id <> old.id or new.count < old.count or "
                                                                 "new.moved < old.moved")
                                                : QString());
    const QString remove =
        QStringLiteral(
            "create trigger %1_is_not_removed before delete on %1%2 begin select "
            "raise(abort, 'the archive removes nothing that it keeps'); end")
            .arg(name,
                 grows ? QString() : QStringLiteral(" when not exists (select 1 from archive where name = 'outbox')"));
    auto error = file.execute(update);
    if (!error) error = file.execute(remove);
    if (error) return error;
  }
  return std::nullopt;
}

std::optional<Error> toVersion4(Database& database) {
  if (auto error = execute(database, kVersion4)) return error;
  const auto note = [](Database& at, const Record& record) -> std::optional<Error> {
    if (record.summary.runAtFrom == RunAtFrom::kFileTime) return std::nullopt;
    return at.run(QStringLiteral("update run set run_at_given = ? where chain = ? and number = ?"),
                  {static_cast<int>(record.summary.runAtFrom), storable(record.chain),
                   QVariant::fromValue(static_cast<qlonglong>(record.number))});
  };
  if (auto error = forEveryRecord(database, note)) return error;
  constexpr const char* kKept[] = {"content",    "record",          "run",  "search",
                                   "superseded", "released_window", "note", "chain"};
  return database.isServer() ? std::nullopt : forbidChanges(database, kKept);
}

std::optional<Error> toVersion5(Database& database) {
  if (auto error = execute(database, kVersion5)) return error;
  if (auto error = placeAllInRuns(database)) return error;
  constexpr const char* kKept[] = {"repeated"};
  return database.isServer() ? std::nullopt : forbidChanges(database, kKept);
}

using Step = std::optional<Error> (*)(Database& database);
constexpr Step kSteps[] = {toVersion1, toVersion2, toVersion3, toVersion4, toVersion5};

Error foreign(const Database& database) { return database.error("it is a database of another program, no archive"); }

Result<int> storedVersion(Database& database) {
  const auto value = database.value(QStringLiteral("select value from archive where name = 'schema'"));
  if (!value) return value.error();
  bool number = false;
  const int version = value->toString().toInt(&number);
  if (!number || version < 1) return foreign(database);
  if (version > newestSchema()) {
    return database.error("the archive has version " + std::to_string(version) + ", this program knows up to " +
                          std::to_string(newestSchema()) + ": it takes a newer program");
  }
  return version;
}

std::optional<Error> backUp(Database& database, int from) {
  if (database.isServer()) {
    const QString to = QStringLiteral("ovenwright_before_version_%1").arg(from + 1);
    if (auto error = database.execute(QStringLiteral("create schema ") + to)) return error;
    for (const char* table : {"archive", "chain", "record", "run"}) {
      const QString copy = QStringLiteral("create table %1.%2 as table ovenwright.%2").arg(to, QLatin1String(table));
      if (auto error = database.execute(copy)) return error;
    }
    return std::nullopt;
  }
  // Written under another name first: a backup that has its name is whole.
  const QString path = QFile::decodeName(database.where().c_str());
  const QString backup = path + QStringLiteral(".before-version-%1").arg(from + 1);
  if (QFile::exists(backup)) return std::nullopt;
  const QString part = backup + QStringLiteral(".part");
  QFile::remove(part);
  if (auto error = database.run(QStringLiteral("vacuum into ?"), {part})) return error;
  if (!QFile::rename(part, backup)) return database.error("the backup " + backup.toStdString() + " cannot be named");
  files::sync_folder(QFileInfo(path).absolutePath().toStdString());
  return std::nullopt;
}

}  // namespace

int newestSchema() { return static_cast<int>(std::size(kSteps)); }

Result<int> schemaVersion(Database& database) {
  if (database.isServer()) {
    // Not to_regclass(): that may remember from before another process made the table.
    const auto there = database.value(QStringLiteral(
        "select count(*) from pg_catalog.pg_tables where schemaname = 'ovenwright' and tablename = 'archive'"));
    if (!there) return there.error();
    return there->toInt() > 0 ? storedVersion(database) : Result<int>(0);
  }
  const auto id = database.value(QStringLiteral("pragma application_id"));
  if (!id) return id.error();
  if (id->toInt() == kApplicationId) return storedVersion(database);
  const auto objects = database.value(QStringLiteral("select count(*) from sqlite_master"));
  if (!objects) return objects.error();
  if (id->toInt() != 0 || objects->toInt() != 0) return foreign(database);
  return 0;
}

namespace {

/// Whether the roles of resources/archive/roles.sql may use this archive: they are given what newer tables need.
Result<bool> hasRoles(Database& server) {
  const auto role =
      server.value(QStringLiteral("select count(*) from pg_roles where rolname in ('ovenwright_read', "
                                  "'ovenwright_add', 'ovenwright_release')"));
  if (!role) return role.error();
  if (role->toInt() < 3) return false;
  const auto granted =
      server.value(QStringLiteral("select has_table_privilege('ovenwright_read', 'ovenwright.record', 'select')"));
  if (!granted) return granted.error();
  return granted->toBool();
}

std::optional<Error> bringTablesForward(Database& database, int to) {
  auto transaction = Transaction::begin(database);
  if (!transaction) return transaction.error();
  if (database.isServer()) {
    // One at a time; the number is any that nothing else uses.
    if (auto error = database.run(QStringLiteral("select pg_advisory_xact_lock(1331062126)"))) return error;
  }
  const auto version = schemaVersion(database);  // another process may have been faster
  if (!version) return version.error();
  if (*version >= to) return std::nullopt;
  bool grants = false;
  if (database.isServer()) {
    if (*version > 0) {
      const auto roles = hasRoles(database);
      if (!roles) return roles.error();
      grants = *roles;
      if (auto error = backUp(database, *version)) return error;
    } else if (auto error = database.execute(QStringLiteral("create schema if not exists ovenwright"))) {
      return error;
    }
  } else if (auto error = database.execute(QStringLiteral("pragma application_id=%1").arg(kApplicationId))) {
    return error;
  }
  for (int next = *version + 1; next <= to; ++next) {
    if (auto error = kSteps[next - 1](database)) return error;
  }
  const auto upsert = QStringLiteral(
      "insert into archive(name, value) values('schema', ?) on conflict(name) do update set value = excluded.value");
  if (auto error = database.run(upsert, {QString::number(to)})) return error;
  if (grants) {
    if (auto error = database.execute(QLatin1String(rolesSql()))) return error;
  }
  return transaction->commit();
}

}  // namespace

std::optional<Error> bringForward(Database& database, int to) {
  const auto before = schemaVersion(database);
  if (!before) return before.error();
  if (*before >= to) return std::nullopt;
  if (*before > 0 && !database.isServer()) {  // VACUUM cannot run inside a transaction
    if (auto error = backUp(database, *before)) return error;
  }
  if (auto error = database.waitLong(true)) return error;
  auto error = bringTablesForward(database, to);
  if (error && database.isServer() && *before > 0 && database.trouble() == Trouble::kRefused) {
    error->message = "the server's archive has version " + std::to_string(*before) + ", this program needs version " +
                     std::to_string(to) +
                     ": the owner of its tables brings it forward with the command ovenwright archive list";
  }
  if (error) return error;
  return database.waitLong(false);
}

}  // namespace ovenwright::archive
