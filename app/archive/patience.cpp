#include "app/archive/patience.h"

#include <sys/socket.h>

#include <utility>

namespace ovenwright::archive {

using Clock = std::chrono::steady_clock;

Patience::~Patience() {
  {
    const std::lock_guard lock(m_mutex);
    m_ends = true;
  }
  m_wake.notify_one();
  if (m_thread.joinable()) m_thread.join();
}

void Patience::leave() {
  {
    const std::lock_guard lock(m_mutex);
    m_left = true;
  }
  m_wake.notify_one();
}

bool Patience::hasLeft() const {
  const std::lock_guard lock(m_mutex);
  return m_left;
}

void Patience::wait(int socket, std::chrono::milliseconds most) {
  bool wake = false;
  {
    const std::lock_guard lock(m_mutex);
    m_socket = socket;
    m_until = Clock::now() + most;
    wake = m_left || m_until < m_wakesAt;
    if (!m_thread.joinable()) m_thread = std::thread([this] { watch(); });
  }
  if (wake) m_wake.notify_one();  // else it looks again in time by itself: answers are many
}

void Patience::stop() {
  const std::lock_guard lock(m_mutex);
  m_socket = -1;
}

bool Patience::takeBrokenOff() {
  const std::lock_guard lock(m_mutex);
  return std::exchange(m_brokenOff, false);
}

void Patience::watch() {
  constexpr auto kIdle = std::chrono::hours{1};
  std::unique_lock lock(m_mutex);
  while (!m_ends) {
    if (m_socket >= 0 && (m_left || Clock::now() >= m_until)) {
      // The driver, which waits in poll(), then finds that the connection broke.
      ::shutdown(m_socket, SHUT_RDWR);
      m_socket = -1;
      m_brokenOff = true;
    }
    m_wakesAt = m_socket >= 0 ? m_until : Clock::now() + kIdle;
    m_wake.wait_until(lock, m_wakesAt);
  }
}

}  // namespace ovenwright::archive
