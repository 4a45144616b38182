#pragma once
#include <string>
#include <vector>

namespace ovenwright {

/// A PostgreSQL server of its own, that can be stopped under a station's feet.
class OwnServer {
 public:
  OwnServer();
  OwnServer(const OwnServer&) = delete;
  OwnServer& operator=(const OwnServer&) = delete;
  ~OwnServer();

  void restart() { run("restart"); }
  void halt() { run("halt"); }      ///< as one that is switched off, its data stay
  void resume() { run("resume"); }  ///< after halt()
  const std::string& url() const { return m_url; }
  std::string outbox(int station) const { return m_folder + "/outbox" + std::to_string(station); }
  /// Statements of its administrator, by psql.
  void execute(const std::string& sql) const;
  /// Who may come in how, in place of the present rules: lines of pg_hba.conf.
  void setAccess(const std::string& lines) const;

 private:
  std::vector<std::string> psql(const std::string& sql) const;
  void run(const std::string& what) const;
  std::string m_folder, m_file, m_socket, m_url;
};

}  // namespace ovenwright
