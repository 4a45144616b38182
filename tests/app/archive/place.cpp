#include "tests/app/archive/place.h"

#include <gtest/gtest.h>
#include <unistd.h>

#include <QCoreApplication>
#include <QSqlDatabase>
#include <QSqlError>
#include <QSqlQuery>
#include <QVariant>
#include <atomic>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <functional>

namespace ovenwright {
namespace {

/// Qt's drivers are plugins and need an application.
class Application : public testing::Environment {
 public:
  void SetUp() override {
    if (QCoreApplication::instance()) return;  // tests of windows have one
    static int count = 1;
    static char name[] = "archive_test";
    static char* arguments[] = {name, nullptr};
    static QCoreApplication application(count, arguments);
  }
};
[[maybe_unused]] const auto* const kApplication = testing::AddGlobalTestEnvironment(new Application);

/// Folder of the server's socket and its port, as tests/app/archive/server wrote them.
struct Server {
  std::string folder, port;
};
Server server() {
  Server server;
  std::ifstream file(OVENWRIGHT_TEST_SERVER);
  file >> server.folder >> server.port;
  EXPECT_FALSE(server.port.empty()) << "no server: ctest starts it, or tests/app/archive/server start FILE";
  return server;
}

void withConnection(bool isServer, const std::string& name, const std::function<void(QSqlDatabase&)>& use) {
  const QString connection = QStringLiteral("tests");
  {
    auto database =
        QSqlDatabase::addDatabase(isServer ? QStringLiteral("QPSQL") : QStringLiteral("QSQLITE"), connection);
    database.setDatabaseName(QString::fromStdString(name));
    if (isServer) {
      const auto at = server();
      database.setHostName(QString::fromStdString(at.folder));
      database.setPort(std::stoi(at.port));
      database.setUserName(QStringLiteral("ow"));
    } else {
      database.setConnectOptions(QStringLiteral("QSQLITE_BUSY_TIMEOUT=30000"));
    }
    ASSERT_TRUE(database.open()) << database.lastError().text().toStdString();
    if (isServer)
      QSqlQuery(database).exec(QStringLiteral("set search_path=ovenwright; set client_min_messages=warning"));
    use(database);
    database.close();
  }
  QSqlDatabase::removeDatabase(connection);
}

std::string runSql(bool isServer, const std::string& name, const std::string& sql) {
  std::string value;
  withConnection(isServer, name, [&](QSqlDatabase& database) {
    QSqlQuery query(database);
    EXPECT_TRUE(query.exec(QString::fromStdString(sql))) << query.lastError().text().toStdString() << "\n" << sql;
    if (query.next()) value = query.value(0).toString().toStdString();
  });
  return value;
}

}  // namespace

TestPlace::TestPlace(Kind kind) : m_kind(kind) {
  std::string name = (std::filesystem::temp_directory_path() / "ovenwright_archive_XXXXXX").string();
  m_folder = ::mkdtemp(name.data());
  if (kind == Kind::kFile) {
    m_where = m_database = m_folder + "/archive.sqlite";
    return;
  }
  static std::atomic<int> number = 0;
  m_database = "t" + std::to_string(::getpid()) + "_" + std::to_string(number++);
  runSql(true, "postgres", "create database " + m_database);
  const auto at = server();
  m_where = "postgresql://ow@/" + m_database + "?host=" + at.folder + "&port=" + at.port;
}

TestPlace::~TestPlace() {
  if (m_kind == Kind::kServer) runSql(true, "postgres", "drop database " + m_database + " with (force)");
  std::filesystem::remove_all(m_folder);
}

archive::Options TestPlace::options(const std::string& station) const {
  archive::Options options;
  options.machine = station;
  options.outbox = m_folder + "/outbox of " + station;
  options.retryAfter_ms = 0;
  return options;
}

archive::Archive TestPlace::open(const std::string& station) const {
  auto opened = archive::Archive::open(m_where, options(station));
  if (!opened) {
    ADD_FAILURE() << opened.error().text();
    std::abort();
  }
  return *std::move(opened);
}

void TestPlace::execute(const std::string& sql) const { runSql(m_kind == Kind::kServer, m_database, sql); }
void TestPlace::unlock() const {
  if (m_kind == Kind::kServer) return;
  withConnection(false, m_database, [](QSqlDatabase& database) {
    QStringList names;
    QSqlQuery query(QStringLiteral("select name from sqlite_master where type = 'trigger'"), database);
    while (query.next()) names.append(query.value(0).toString());
    query.finish();
    for (const auto& name : names) EXPECT_TRUE(query.exec(QStringLiteral("drop trigger ") + name));
  });
}
std::string TestPlace::value(const std::string& sql) const { return runSql(m_kind == Kind::kServer, m_database, sql); }

}  // namespace ovenwright
