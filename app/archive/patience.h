#pragma once
#include <chrono>
#include <condition_variable>
#include <memory>
#include <mutex>
#include <thread>

namespace ovenwright::archive {

/// How long a server's answer is waited for. Its driver waits without end, so a connection that is silent for too long
/// is broken off from a thread of its own; that of a program which wants to end at once.
class Patience {
 public:
  Patience() = default;
  Patience(const Patience&) = delete;
  Patience& operator=(const Patience&) = delete;
  ~Patience();

  /// From any thread: what is waited for is broken off, and from now on the server counts as away.
  void leave();
  bool hasLeft() const;

  /// The answer on this socket is waited for until then. Of one connection at a time.
  void wait(int socket, std::chrono::milliseconds most);
  /// It came.
  void stop();
  /// Whether a connection was broken off since the last call.
  bool takeBrokenOff();

 private:
  void watch();

  mutable std::mutex m_mutex;
  std::condition_variable m_wake;
  std::thread m_thread;
  std::chrono::steady_clock::time_point m_until, m_wakesAt;
  int m_socket = -1;
  bool m_left = false, m_brokenOff = false, m_ends = false;
};

}  // namespace ovenwright::archive
