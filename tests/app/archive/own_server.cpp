#include "tests/app/archive/own_server.h"

#include <gtest/gtest.h>
#include <unistd.h>

#include <filesystem>
#include <fstream>
#include <thread>

#include "tests/app/archive/child.h"

namespace ovenwright {

OwnServer::OwnServer() {
  std::string name = (std::filesystem::temp_directory_path() / "ovenwright_server_XXXXXX").string();
  m_folder = ::mkdtemp(name.data());
  m_file = m_folder + "/server";
  run("start");
  std::ifstream file(m_file);
  std::string port;
  file >> m_socket >> port;
  m_url = "postgresql://ow@/postgres?host=" + m_socket + "&port=" + port;
}

OwnServer::~OwnServer() {
  run("stop");
  std::filesystem::remove_all(m_folder);
}

void OwnServer::run(const std::string& what) const {
  Child child({OVENWRIGHT_TEST_SERVER_SCRIPT, what, m_file});
  EXPECT_EQ(child.wait(), 0) << what;
}

std::vector<std::string> OwnServer::psql(const std::string& sql) const {
  return {"psql", "-qAt", "-v", "ON_ERROR_STOP=1", "-h", m_socket, "-p", "54329",
          "-U",   "ow",   "-d", "postgres",        "-c", sql};
}

void OwnServer::execute(const std::string& sql) const {
  Child child(psql(sql));
  EXPECT_EQ(child.wait(), 0) << sql;
}

void OwnServer::setAccess(const std::string& lines) const {
  const auto read = psql("select pg_conf_load_time()");  // as a new connection finds it
  const auto before = linesOf(read);
  std::ofstream(m_socket + "/data/pg_hba.conf") << lines;
  execute("select pg_reload_conf()");
  while (linesOf(read) == before) std::this_thread::sleep_for(std::chrono::milliseconds{5});
}

}  // namespace ovenwright
