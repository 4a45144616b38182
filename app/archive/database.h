#pragma once
#include <QHash>
#include <QSqlDatabase>
#include <QSqlError>
#include <QSqlQuery>
#include <QString>
#include <QVariant>
#include <functional>
#include <memory>
#include <optional>
#include <string>

#include "app/archive/patience.h"
#include "app/archive/trouble.h"
#include "core/units/result.h"

namespace ovenwright::archive {

/// One connection to an SQLite file or a PostgreSQL server, and its prepared statements. Texts and numbers reach it as
/// parameters only. Belongs to the thread that opened it.
class Database {
 public:
  enum class Mode { kReadOnly, kReadWrite, kCreate };
  /// WAL, full synchronisation, foreign keys. Errors: kIo.
  static Result<std::unique_ptr<Database>> openFile(const std::string& path, Mode mode, int busyTimeout_ms);
  /// How long a server may take: to let this program in, and for each answer, after which it counts as away.
  struct Waits {
    int connect_s = 5;
    int answer_s = 30;
    std::shared_ptr<Patience> patience = std::make_shared<Patience>();
  };
  /// Errors: kIo; with `trouble` kAway where the server does not answer; kBadArgument where the URL is none, or holds a
  /// password.
  static Result<std::unique_ptr<Database>> openServer(const std::string& url, const Waits& waits, Trouble& trouble);
  Database(const Database&) = delete;
  Database& operator=(const Database&) = delete;
  ~Database();

  bool isServer() const { return m_isServer; }
  const std::string& where() const { return m_where; }

  /// Called for each row; false: no more of them.
  using Row = std::function<bool(const QSqlQuery& row)>;
  /// Prepares a statement, or takes it prepared, and runs it.
  std::optional<Error> run(const QString& sql, const QVariantList& values = {}, const Row& row = {});
  /// Statements without parameters and results, run as they are.
  std::optional<Error> execute(const QString& sql);
  /// The first value of the first row; a null value where there is none.
  Result<QVariant> value(const QString& sql, const QVariantList& values = {});

  /// Turns a file's write-ahead log on, for good. Errors: kIo where another process holds it for longer than the
  /// timeout, or the file's disk knows no shared memory.
  std::optional<Error> useWriteAheadLog();
  std::optional<Error> begin();
  std::optional<Error> commit();
  void rollback();

  /// Answers of this server may take any time from now on, or no longer than usual: work on all records at once.
  std::optional<Error> waitLong(bool any);

  Trouble trouble() const { return m_trouble; }
  const std::string& reason() const { return m_reason; }  ///< the message of the last error
  Error error(const std::string& message) const;          ///< with the place

 private:
  Database(QString connection, std::string where, bool isServer);
  Error failed(const QSqlError& error);
  class Waiting;

  QString m_connection;
  std::string m_where;
  bool m_isServer;
  int m_busyTimeout_ms = 0;
  Trouble m_trouble = Trouble::kNone;
  std::string m_reason;
  std::shared_ptr<Patience> m_patience;  // of a server
  int m_answer_s = 0, m_socket = -1;
  bool m_waitsLong = false;
  QSqlDatabase m_database;
  QHash<QString, std::shared_ptr<QSqlQuery>> m_prepared;
};

/// A transaction that is undone unless it was committed.
class Transaction {
 public:
  static Result<Transaction> begin(Database& database);
  Transaction(Transaction&& other) noexcept : m_database(std::exchange(other.m_database, nullptr)) {}
  Transaction& operator=(Transaction&&) = delete;
  ~Transaction();
  std::optional<Error> commit();

 private:
  explicit Transaction(Database& database) : m_database(&database) {}
  Database* m_database;
};

/// A text as databases of both kinds can keep it: valid Unicode without the character 0, for which U+FFFD stands.
QString storable(const std::string& text);
/// What is written to the archive of a name: of texts longer than 96 characters the first 64 and a digest, so that
/// every index can hold it. Equal texts give equal columns, different ones different.
QString column(const std::string& text);

}  // namespace ovenwright::archive
