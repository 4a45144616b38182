#include "app/archive/archive.h"

#include <QDir>
#include <QFileInfo>
#include <QStandardPaths>
#include <QSysInfo>
#include <algorithm>
#include <utility>

#include "app/archive/archive_data.h"
#include "app/archive/body.h"
#include "app/archive/copy.h"
#include "app/archive/notes.h"
#include "app/archive/pack.h"
#include "app/archive/schema.h"
#include "core/files/digest.h"
#include "core/files/text_file.h"

namespace ovenwright::archive {
namespace {

bool isUrl(const std::string& where) { return where.starts_with("postgresql://") || where.starts_with("postgres://"); }

QString dataFolder() {
  return QStandardPaths::writableLocation(QStandardPaths::GenericDataLocation) + QStringLiteral("/ovenwright");
}

/// This machine, told apart from others without giving its own id away.
std::string thisMachine() {
  const QByteArray id = QSysInfo::machineUniqueId();
  return files::sha256_hex("ovenwright station\n" + id.toStdString() + QSysInfo::machineHostName().toStdString())
      .substr(0, 32);
}

/// Makes the file and its tables where there are none, or brings them forward.
Result<std::unique_ptr<Database>> openArchiveFile(const std::string& path, const Options& options) {
  const QString name = QFile::decodeName(path.c_str());
  if (path == defaultArchive() || path == options.outbox) QDir().mkpath(QFileInfo(name).absolutePath());
  const bool reads = options.access == Access::kReadOnly;
  const auto mode = reads ? Database::Mode::kReadOnly : Database::Mode::kCreate;
  auto database = Database::openFile(path, mode, options.busyTimeout_ms);
  if (!database) return database.error();
  const auto version = schemaVersion(**database);
  if (!version) return version.error();
  if (reads && *version == newestSchema()) return database;
  if (reads && *version == 0) return (*database)->error("the file is empty, no archive");
  if (reads) {  // bringing it forward writes
    *database = nullptr;
    database = Database::openFile(path, Database::Mode::kReadWrite, options.busyTimeout_ms);
    if (!database) return database.error();
  }
  if (auto error = (*database)->useWriteAheadLog()) return *error;
  if (auto error = bringForward(**database)) return *error;
  if (*version == 0) files::sync_folder(QFileInfo(name).absolutePath().toStdString());
  if (path == options.outbox && !reads) {
    const auto marked = (*database)->value(QStringLiteral("select 1 from archive where name = 'outbox'"));
    if (!marked) return marked.error();
    if (marked->isNull()) {
      if (auto error = (*database)->execute(
              QStringLiteral("insert into archive(name, value) values('outbox', '1') on conflict(name) do nothing")))
        return *error;
    }
  }
  return database;
}

}  // namespace

std::string defaultArchive() { return (dataFolder() + QStringLiteral("/archive.sqlite")).toStdString(); }

std::string defaultOutbox(const std::string& url) {
  return (dataFolder() + QStringLiteral("/outbox-") + QString::fromStdString(files::sha256_hex(url).substr(0, 16)) +
          QStringLiteral(".sqlite"))
      .toStdString();
}

Archive::Archive(std::unique_ptr<Data> data) : m_data(std::move(data)) {}
Archive::Archive(Archive&&) noexcept = default;
Archive& Archive::operator=(Archive&&) noexcept = default;
Archive::~Archive() = default;

Result<Archive::Data::Found> Archive::Data::parcel(const std::string& id) {
  const auto key = parseRecordId(id);
  if (auto error = connect()) return *error;
  for (Database* database : key ? places() : std::vector<Database*>{}) {
    const auto stored = storedRecord(*database, key->chain, key->number);
    if (!stored) {
      auto error = stored.error();
      noteServer();
      return error;
    }
    if (!*stored) continue;
    auto parcel = unpackedParcel((*stored)->parcel);
    if (!parcel) return database->error(id + " is damaged");
    std::string previous = noPrevious();
    if (key->number > 1) {
      const auto before = storedRecord(*database, key->chain, key->number - 1);
      if (!before) return before.error();
      previous = *before ? (*before)->digest : std::string{};
    }
    std::string repeats;
    auto failed = database->run(
        QStringLiteral("select of_chain, of_number from repeated where chain = ? and number = ?"),
        {storable(key->chain), QVariant::fromValue(static_cast<qlonglong>(key->number))}, [&](const QSqlQuery& row) {
          repeats = recordId(row.value(0).toString().toStdString(), row.value(1).toULongLong());
          return false;
        });
    if (failed) return *failed;
    return Found{*std::move(parcel), (*stored)->digest, previous, repeats};
  }
  if (isServer && !server) return awayError();
  return Error{ErrorCode::kBadArgument, "there is no record " + id, {where, 0, 0}, id, "an id of the archive"};
}

Result<Archive> Archive::open(const std::string& where, const Options& options) {
  auto data = std::make_unique<Data>();
  data->where = where;
  data->options = options;
  data->isServer = isUrl(where);
  if (!data->isServer) data->options.outbox.clear();
  if (data->options.machine.empty()) data->options.machine = thisMachine();
  if (data->isServer && data->options.outbox.empty()) data->options.outbox = defaultOutbox(where);
  if (!data->options.patience) data->options.patience = std::make_shared<Patience>();
  const bool reads = options.access == Access::kReadOnly;
  if (!data->isServer || !reads) {
    auto file = openArchiveFile(data->isServer ? data->options.outbox : where, data->options);
    if (!file) return file.error();
    data->file = *std::move(file);
  }
  if (auto error = data->connect()) return *error;
  if (reads && data->isServer && QFile::exists(QFile::decodeName(data->options.outbox.c_str()))) {
    auto file = openArchiveFile(data->options.outbox, data->options);  // what waits here can be read too
    if (file) data->file = *std::move(file);
  }
  Archive archive{std::move(data)};
  // What the server refuses now stays in the outbox, and state() says why.
  if (archive.m_data->server && !reads) (void)archive.sendWaiting();
  return archive;
}

State Archive::state() const {
  State state;
  state.where = m_data->where;
  state.kind = !m_data->isServer ? State::Kind::kFile
               : m_data->server  ? State::Kind::kServer
                                 : State::Kind::kServerAway;
  state.message = m_data->message;
  state.refused = m_data->refused;
  if (m_data->isServer && m_data->file) {
    if (const auto waiting = m_data->file->value(QStringLiteral("select count(*) from record")))
      state.waiting = waiting->toULongLong();
  }
  return state;
}

Result<Record> Archive::load(const std::string& id) {
  const auto parcel = m_data->parcel(id);
  if (!parcel) return parcel.error();
  auto record = parseBody(parcel->parcel.body);
  if (!record) return record.error();
  record->digest = parcel->digest;
  record->previous = parcel->previous;
  record->repeats = parcel->repeats;
  return record;
}

Result<std::string> Archive::report(const std::string& id) {
  auto parcel = m_data->parcel(id);
  if (!parcel) return parcel.error();
  return std::move(parcel->parcel.report);
}

Result<std::string> Archive::text(const std::string& id) {
  auto parcel = m_data->parcel(id);
  if (!parcel) return parcel.error();
  return std::move(parcel->parcel.text);
}

Result<std::string> Archive::rawLog(const std::string& id) {
  const auto record = load(id);
  if (!record) return record.error();
  return content(record->log.sha256);
}

Result<std::string> Archive::content(const std::string& sha256) {
  for (Database* database : m_data->places()) {
    const auto found = packedContent(*database, sha256);
    if (!found) return found.error();
    if (!*found) continue;
    auto bytes = unpacked((*found)->packed);
    if (!bytes || files::sha256_hex(*bytes) != sha256)
      return database->error("the bytes kept as " + sha256 + " are damaged");
    return bytes;
  }
  return Error{ErrorCode::kBadArgument, "there are no bytes " + sha256, {m_data->where, 0, 0}, {}, {}};
}

Result<std::vector<Head>> Archive::heads() {
  const auto database = m_data->listing();
  if (!database) return database.error();
  const auto all = chains(**database);
  if (!all) return all.error();
  std::vector<Head> heads;
  for (const auto& chain : *all) heads.push_back({chain.id, chain.station, chain.count, chain.head});
  return heads;
}

}  // namespace ovenwright::archive
