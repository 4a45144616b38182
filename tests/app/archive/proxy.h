#pragma once
#include <atomic>
#include <chrono>
#include <string>
#include <thread>

namespace ovenwright {

/// A network in small between a station and the tests' server: a socket that passes everything on, and can be told to
/// fall silent, to be slow, or to break. Gone at the end.
class Proxy {
 public:
  /// @param url  of the server, with its host as the folder of a socket
  explicit Proxy(const std::string& url);
  Proxy(const Proxy&) = delete;
  Proxy& operator=(const Proxy&) = delete;
  ~Proxy();

  const std::string& url() const { return m_url; }  ///< the same server through this

  /// Takes connections and bytes, and passes nothing on.
  void setSilent(bool silent) {
    m_lastAnswer = -1;
    m_silent = silent;
  }
  /// Falls silent where the server's answer after so many more comes: what was asked is done, and nobody hears of it.
  void setSilentAfter(int answers) { m_lastAnswer = m_answers + answers; }
  bool isSilent() const { return m_silent; }
  /// That were passed on so far.
  int answers() const { return m_answers; }
  void setDelay(std::chrono::milliseconds delay) { m_delay_ms = delay.count(); }  ///< of each answer
  void setAway(bool away);                           ///< breaks all connections and takes no more; or takes them again
  int connections() const { return m_connections; }  ///< that were begun so far

 private:
  void serve();
  void listen();

  std::string m_folder, m_path, m_server, m_url;
  std::atomic<bool> m_silent = false, m_away = false, m_ends = false;
  std::atomic<long> m_delay_ms = 0;
  std::atomic<int> m_connections = 0, m_answers = 0, m_lastAnswer = -1;
  int m_listener = -1;
  std::thread m_thread;
};

}  // namespace ovenwright
