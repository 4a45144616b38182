#include "app/archive/database.h"

#include <libpq-fe.h>

#include <QDeadlineTimer>
#include <QFile>
#include <QFileInfo>
#include <QSqlDriver>
#include <QThread>
#include <QUrl>
#include <QUrlQuery>
#include <QUuid>
#include <atomic>
#include <utility>

#include "app/archive/trouble.h"
#include "core/files/digest.h"

namespace ovenwright::archive {
namespace {

QString newConnectionName() {
  static std::atomic<unsigned> number = 0;
  return QStringLiteral("ovenwright-archive-%1").arg(number++);
}

Error refusedUrl(const std::string& url, const std::string& why) {
  return {ErrorCode::kBadArgument, why, {url, 0, 0}, {}, "postgresql://user@host:port/database"};
}

}  // namespace

/// While an answer of a server is waited for.
class Database::Waiting {
 public:
  explicit Waiting(const Database& database) : m_database(database) { again(); }
  Waiting(const Waiting&) = delete;
  Waiting& operator=(const Waiting&) = delete;
  ~Waiting() {
    if (m_database.m_patience) m_database.m_patience->stop();
  }
  /// A part of it has come, the next one is waited for.
  void again() {
    if (!m_database.m_patience) return;
    // The server itself gives up first, and says so.
    constexpr auto kAny = std::chrono::hours{24};
    const auto most = m_database.m_waitsLong
                          ? std::chrono::milliseconds{kAny}
                          : std::chrono::milliseconds{std::chrono::seconds{m_database.m_answer_s + 2}};
    m_database.m_patience->wait(m_database.m_socket, most);
  }

 private:
  const Database& m_database;
};

Database::Database(QString connection, std::string where, bool isServer)
    : m_connection(std::move(connection)), m_where(std::move(where)), m_isServer(isServer) {
  m_database = QSqlDatabase::addDatabase(isServer ? QStringLiteral("QPSQL") : QStringLiteral("QSQLITE"), m_connection);
}

Database::~Database() {
  const Waiting waiting(*this);  // the driver tells the server of each statement that it is no longer needed
  m_prepared.clear();
  m_database.close();
  m_database = {};
  QSqlDatabase::removeDatabase(m_connection);
}

Result<std::unique_ptr<Database>> Database::openFile(const std::string& path, Mode mode, int busyTimeout_ms) {
  std::unique_ptr<Database> database{new Database(newConnectionName(), path, false)};
  auto& connection = database->m_database;
  database->m_busyTimeout_ms = busyTimeout_ms;
  QString options = QStringLiteral("QSQLITE_BUSY_TIMEOUT=%1").arg(busyTimeout_ms);
  if (mode == Mode::kReadOnly) options += QStringLiteral(";QSQLITE_OPEN_READONLY");
  connection.setConnectOptions(options);
  connection.setDatabaseName(QFile::decodeName(path.c_str()));
  if (mode != Mode::kCreate && !QFile::exists(connection.databaseName())) return database->error("there is no archive");
  if (!connection.open()) return database->failed(connection.lastError());
  const auto prepare = [&database]() -> std::optional<Error> {
    for (const char* setting : {"pragma trusted_schema=off", "pragma foreign_keys=on", "pragma synchronous=full",
                                "pragma cell_size_check=on"}) {
      if (auto error = database->execute(QLatin1String(setting))) return error;
    }
    return database->run(QStringLiteral("select 1 from sqlite_master limit 1"));  // reads the file for the first time
  };
  auto error = prepare();
  if (!error) return database;
  // Where not even the files beside it can be written, such as on a read-only disk, it is read as one that nobody
  // changes: right as long as nothing waits in its write-ahead log.
  const QString name = connection.databaseName();
  if (mode != Mode::kReadOnly || database->m_trouble == Trouble::kDamaged ||
      QFileInfo(name + QStringLiteral("-wal")).size() > 0)
    return *error;
  database->m_prepared.clear();
  connection.close();
  connection.setConnectOptions(options + QStringLiteral(";QSQLITE_OPEN_URI"));
  connection.setDatabaseName(QString::fromLatin1(QUrl::fromLocalFile(QFileInfo(name).absoluteFilePath()).toEncoded()) +
                             QStringLiteral("?immutable=1"));
  if (!connection.open()) return database->failed(connection.lastError());
  if (prepare()) return *error;
  return database;
}

Result<std::unique_ptr<Database>> Database::openServer(const std::string& address, const Waits& waits,
                                                       Trouble& trouble) {
  const QUrl url(QString::fromStdString(address), QUrl::StrictMode);
  if (!url.isValid()) return refusedUrl(address, "found no URL, expected postgresql://user@host:port/database");
  if (!url.password().isEmpty()) {
    const auto shown = url.toDisplayString(QUrl::RemovePassword).toStdString();
    return refusedUrl(shown, "a password does not belong into the URL: put it into the server library's password file");
  }
  std::unique_ptr<Database> database{new Database(newConnectionName(), address, true)};
  database->m_patience = waits.patience;
  database->m_answer_s = waits.answer_s;
  if (waits.patience->hasLeft()) {
    trouble = Trouble::kAway;
    return database->error("the server was left");
  }
  auto& connection = database->m_database;
  if (!connection.isValid()) return database->error("the PostgreSQL driver of Qt is not installed");
  QString options =
      QStringLiteral("connect_timeout=%1;tcp_user_timeout=20000;application_name=ovenwright").arg(waits.connect_s);
  const QUrlQuery query(url);
  QString host = url.host();
  int port = url.port();
  for (const auto& [key, value] : query.queryItems(QUrl::FullyDecoded)) {
    if (key == QLatin1String("host")) {
      host = value;  // the folder of a socket
    } else if (key == QLatin1String("port")) {
      port = value.toInt();
    } else if (key == QLatin1String("service") || key == QLatin1String("sslmode") ||
               key == QLatin1String("sslrootcert")) {
      if (value.contains(QLatin1Char(';')) || value.contains(QLatin1Char(' ')))
        return refusedUrl(address, "found a blank or a semicolon in the URL's " + key.toStdString());
      options += QStringLiteral(";%1=%2").arg(key, value);
    } else {
      return refusedUrl(address, "found \"" + key.toStdString() +
                                     "\" in the URL, expected host, port, service, sslmode or sslrootcert");
    }
  }
  connection.setConnectOptions(options);
  connection.setHostName(host);
  if (port > 0) connection.setPort(port);
  connection.setUserName(url.userName());
  connection.setDatabaseName(url.path(QUrl::FullyDecoded).mid(1));
  if (!connection.open()) {
    const auto error = database->failed(connection.lastError());
    trouble = database->m_trouble;
    return error;
  }
  // Qt 6 names the type by its struct, Qt 5 by its typedef.
  if (const QVariant handle = connection.driver()->handle();
      handle.isValid() && (!qstrcmp(handle.typeName(), "pg_conn*") || !qstrcmp(handle.typeName(), "PGconn*")))
    database->m_socket = PQsocket(*static_cast<PGconn* const*>(handle.constData()));
  const QString settings[] = {QStringLiteral("set client_min_messages=warning"),
                              QStringLiteral("set search_path=ovenwright"),
                              QStringLiteral("set statement_timeout='%1s'").arg(waits.answer_s),
                              QStringLiteral("set lock_timeout='%1s'").arg(std::max(1, waits.answer_s / 2)),
                              QStringLiteral("set timezone='UTC'")};
  for (const auto& setting : settings) {
    if (auto error = database->execute(setting)) {
      trouble = database->m_trouble;
      return *error;
    }
  }
  return database;
}

Error Database::error(const std::string& message) const { return {ErrorCode::kIo, message, {m_where, 0, 0}, {}, {}}; }

Error Database::failed(const QSqlError& failure) {
  const QString code = failure.nativeErrorCode();
  NamedTrouble named =
      m_isServer ? serverTrouble(code, failure.databaseText()) : fileTrouble(code.toInt(), failure.databaseText());
  if (m_patience && m_patience->takeBrokenOff()) named = {Trouble::kAway, "the server takes too long to answer"};
  m_trouble = named.trouble;
  m_reason = named.what;
  Error error = this->error(m_reason);
  error.found = failure.databaseText().simplified().toStdString();
  if (!m_isServer) error.found += " [" + code.toStdString() + "]";
  return error;
}

std::optional<Error> Database::waitLong(bool any) {
  m_waitsLong = any;
  if (!m_isServer) return std::nullopt;
  return execute(QStringLiteral("set statement_timeout='%1s'").arg(any ? 0 : m_answer_s));
}

std::optional<Error> Database::execute(const QString& sql) {
  m_trouble = Trouble::kNone;
  const Waiting waiting(*this);
  QSqlQuery query(m_database);
  query.setForwardOnly(true);
  if (query.exec(sql)) return std::nullopt;
  return failed(query.lastError());
}

std::optional<Error> Database::run(const QString& sql, const QVariantList& values, const Row& row) {
  m_trouble = Trouble::kNone;
  Waiting waiting(*this);
  auto& query = m_prepared[sql];
  if (!query) {
    auto fresh = std::make_shared<QSqlQuery>(m_database);
    fresh->setForwardOnly(true);
    if (!fresh->prepare(sql)) {
      auto error = failed(fresh->lastError());
      m_prepared.remove(sql);
      return error;
    }
    query = std::move(fresh);
  }
  const auto held = query;  // `row` may run other statements
  for (int i = 0; i < values.size(); ++i) held->bindValue(i, values[i]);
  if (!held->exec()) {
    auto error = failed(held->lastError());
    m_prepared.remove(sql);
    return error;
  }
  if (row) {
    while (held->next() && row(*held)) waiting.again();
    if (held->lastError().isValid()) {
      auto error = failed(held->lastError());
      m_prepared.remove(sql);
      return error;
    }
  }
  held->finish();
  return std::nullopt;
}

Result<QVariant> Database::value(const QString& sql, const QVariantList& values) {
  QVariant value;
  auto error = run(sql, values, [&](const QSqlQuery& row) {
    value = row.value(0);
    return false;
  });
  if (error) return *error;
  return value;
}

std::optional<Error> Database::useWriteAheadLog() {
  // Two processes that turn it on at once do not wait for each other: SQLite refuses one of them at once.
  for (QDeadlineTimer patience(m_busyTimeout_ms);; QThread::msleep(20)) {
    const auto mode = value(QStringLiteral("pragma journal_mode=wal"));
    if (mode && mode->toString() == QLatin1String("wal")) return std::nullopt;
    if (mode) return error("the file's disk does not serve a write-ahead log");
    if (m_trouble != Trouble::kBusy || patience.hasExpired()) return mode.error();
  }
}

std::optional<Error> Database::begin() {
  return execute(m_isServer ? QStringLiteral("begin") : QStringLiteral("begin immediate"));
}

std::optional<Error> Database::commit() { return execute(QStringLiteral("commit")); }

void Database::rollback() {
  const auto trouble = m_trouble;
  execute(QStringLiteral("rollback"));
  m_trouble = trouble;
}

Result<Transaction> Transaction::begin(Database& database) {
  if (auto error = database.begin()) return *error;
  return Transaction(database);
}

Transaction::~Transaction() {
  if (m_database) m_database->rollback();
}

std::optional<Error> Transaction::commit() {
  if (auto error = m_database->commit()) return error;
  m_database = nullptr;
  return std::nullopt;
}

QString storable(const std::string& text) {
  QString kept = QString::fromUtf8(text.data(), static_cast<qsizetype>(text.size()));
  kept.replace(QChar(0), QChar(QChar::ReplacementCharacter));
  return kept;
}

QString column(const std::string& text) {
  constexpr int kLongest = 96, kShown = 64;
  const QString whole = storable(text);
  if (whole.size() <= kLongest) return whole;
  int end = kShown;
  if (whole[end - 1].isHighSurrogate()) --end;
  return whole.left(end) + QStringLiteral("… ") +
         QString::fromStdString(files::sha256_hex(whole.toStdString()).substr(0, 16));
}

}  // namespace ovenwright::archive
