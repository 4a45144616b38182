#include "app/archive/database.h"

#include <QDeadlineTimer>
#include <QFile>
#include <QFileInfo>
#include <QThread>
#include <QUrl>
#include <QUrlQuery>
#include <QUuid>
#include <atomic>
#include <utility>

#include "core/files/digest.h"

namespace ovenwright::archive {
namespace {

QString newConnectionName() {
  static std::atomic<unsigned> number = 0;
  return QStringLiteral("ovenwright-archive-%1").arg(number++);
}

Trouble fileTrouble(int code) {
  switch (code & 0xff) {  // https://www.sqlite.org/rescode.html
    case 5:               // SQLITE_BUSY
    case 6:               // SQLITE_LOCKED
      return Trouble::kBusy;
    case 8:  // SQLITE_READONLY
      return Trouble::kReadOnly;
    case 13:  // SQLITE_FULL
      return Trouble::kFull;
    case 11:  // SQLITE_CORRUPT
    case 26:  // SQLITE_NOTADB
      return Trouble::kDamaged;
    default:
      return Trouble::kOther;
  }
}

Trouble serverTrouble(const QString& state, const QString& text) {
  // https://www.postgresql.org/docs/15/errcodes-appendix.html; a connection that broke has no state
  if (state.isEmpty()) {
    const bool answered = text.contains(QLatin1String("FATAL"));
    const bool passing = text.contains(QLatin1String("starting up")) || text.contains(QLatin1String("shutting down")) ||
                         text.contains(QLatin1String("recovery")) || text.contains(QLatin1String("too many clients"));
    const bool password = text.contains(QLatin1String("no password supplied"));
    return (answered && !passing) || password ? Trouble::kRefused : Trouble::kAway;
  }
  if (state.startsWith(QLatin1String("08")) || state.startsWith(QLatin1String("57P")) ||
      state == QLatin1String("53300")) {
    return Trouble::kAway;
  }
  if (state.startsWith(QLatin1String("28")) || state == QLatin1String("42501") || state == QLatin1String("25006"))
    return Trouble::kRefused;
  if (state == QLatin1String("40001") || state == QLatin1String("40P01")) return Trouble::kClash;
  if (state.startsWith(QLatin1String("53"))) return Trouble::kFull;
  return Trouble::kOther;
}

std::string words(Trouble trouble) {
  switch (trouble) {
    case Trouble::kAway:
      return "the server does not answer";
    case Trouble::kRefused:
      return "the server refuses";
    case Trouble::kClash:
      return "another transaction was in the way";
    case Trouble::kBusy:
      return "another program holds the archive";
    case Trouble::kFull:
      return "the disk is full";
    case Trouble::kReadOnly:
      return "it cannot be written";
    case Trouble::kDamaged:
      return "it is damaged, or no database";
    case Trouble::kNone:
    case Trouble::kOther:
      break;
  }
  return "the database reports an error";
}

Error refusedUrl(const std::string& url, const std::string& why) {
  return {ErrorCode::kBadArgument, why, {url, 0, 0}, {}, "postgresql://user@host:port/database"};
}

}  // namespace

Database::Database(QString connection, std::string where, bool isServer)
    : m_connection(std::move(connection)), m_where(std::move(where)), m_isServer(isServer) {
  m_database = QSqlDatabase::addDatabase(isServer ? QStringLiteral("QPSQL") : QStringLiteral("QSQLITE"), m_connection);
}

Database::~Database() {
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

Result<std::unique_ptr<Database>> Database::openServer(const std::string& address, int connectTimeout_s,
                                                       Trouble& trouble) {
  const QUrl url(QString::fromStdString(address), QUrl::StrictMode);
  if (!url.isValid()) return refusedUrl(address, "found no URL, expected postgresql://user@host:port/database");
  if (!url.password().isEmpty()) {
    const auto shown = url.toDisplayString(QUrl::RemovePassword).toStdString();
    return refusedUrl(shown, "a password does not belong into the URL: put it into the server library's password file");
  }
  std::unique_ptr<Database> database{new Database(newConnectionName(), address, true)};
  auto& connection = database->m_database;
  if (!connection.isValid()) return database->error("the PostgreSQL driver of Qt is not installed");
  QString options =
      QStringLiteral("connect_timeout=%1;tcp_user_timeout=20000;application_name=ovenwright").arg(connectTimeout_s);
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
  const char* settings[] = {"set client_min_messages=warning", "set search_path=ovenwright",
                            "set statement_timeout='120s'", "set lock_timeout='60s'", "set timezone='UTC'"};
  for (const char* setting : settings) {
    if (auto error = database->execute(QLatin1String(setting))) {
      trouble = database->m_trouble;
      return *error;
    }
  }
  return database;
}

Error Database::error(const std::string& message) const { return {ErrorCode::kIo, message, {m_where, 0, 0}, {}, {}}; }

Error Database::failed(const QSqlError& failure) {
  const QString code = failure.nativeErrorCode();
  m_trouble = m_isServer ? serverTrouble(code, failure.text()) : fileTrouble(code.toInt());
  // 14: the file cannot be opened. 10: the disk refuses to read or write.
  std::string what = words(m_trouble);
  if (!m_isServer && (code.toInt() & 0xff) == 14) what = "the file cannot be opened";
  if (!m_isServer && (code.toInt() & 0xff) == 10) what = "the disk does not read or write";
  QString detail = m_isServer ? failure.databaseText() : failure.databaseText() + QStringLiteral(" [%1]").arg(code);
  detail.replace(QLatin1Char('\n'), QLatin1Char(' '));
  return error(what + " (" + detail.simplified().toStdString() + ")");
}

std::optional<Error> Database::execute(const QString& sql) {
  m_trouble = Trouble::kNone;
  QSqlQuery query(m_database);
  query.setForwardOnly(true);
  if (query.exec(sql)) return std::nullopt;
  return failed(query.lastError());
}

std::optional<Error> Database::run(const QString& sql, const QVariantList& values, const Row& row) {
  m_trouble = Trouble::kNone;
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
    while (held->next() && row(*held)) {
    }
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
