#include "tests/app/archive/proxy.h"

#include <fcntl.h>
#include <gtest/gtest.h>
#include <poll.h>
#include <sys/socket.h>
#include <sys/stat.h>
#include <sys/un.h>
#include <unistd.h>

#include <algorithm>
#include <cstring>
#include <filesystem>
#include <vector>

namespace ovenwright {
namespace {

constexpr int kLook_ms = 20;

/// The value of a key in a URL's query.
std::string queryValue(const std::string& url, const std::string& key) {
  const auto at = url.find(key + "=");
  if (at == std::string::npos) return {};
  const auto begin = at + key.size() + 1;
  return url.substr(begin, url.find('&', begin) - begin);
}

sockaddr_un address(const std::string& path) {
  sockaddr_un where{};
  where.sun_family = AF_UNIX;
  std::strncpy(where.sun_path, path.c_str(), sizeof where.sun_path - 1);
  return where;
}

/// One connection: both ends, and when what came from the server may go on.
struct Pair {
  int station, server;
};

bool pass(int from, int to) {
  char bytes[16384];
  const ssize_t got = ::recv(from, bytes, sizeof bytes, 0);
  if (got <= 0) return false;
  for (ssize_t sent = 0; sent < got;) {
    const ssize_t some = ::send(to, bytes + sent, static_cast<std::size_t>(got - sent), MSG_NOSIGNAL);
    if (some <= 0) return false;
    sent += some;
  }
  return true;
}

}  // namespace

Proxy::Proxy(const std::string& url) {
  std::string name = "/tmp/owproxy_XXXXXX";  // short: the path of a socket may have 107 characters
  m_folder = ::mkdtemp(name.data());
  ::chmod(m_folder.c_str(), 0755);
  const std::string host = queryValue(url, "host"), port = queryValue(url, "port");
  const std::string socket = "/.s.PGSQL." + port;
  m_server = host + socket;
  m_path = m_folder + socket;
  m_url = url;
  m_url.replace(m_url.find(host), host.size(), m_folder);
  listen();
  m_thread = std::thread([this] { serve(); });
}

Proxy::~Proxy() {
  m_ends = true;
  m_thread.join();
  if (m_listener >= 0) ::close(m_listener);
  std::filesystem::remove_all(m_folder);
}

void Proxy::listen() {
  m_listener = ::socket(AF_UNIX, SOCK_STREAM | SOCK_CLOEXEC, 0);
  const auto where = address(m_path);
  EXPECT_EQ(::bind(m_listener, reinterpret_cast<const sockaddr*>(&where), sizeof where), 0) << m_path;
  EXPECT_EQ(::listen(m_listener, 16), 0);
  ::chmod(m_path.c_str(), 0777);
}

void Proxy::setAway(bool away) {
  m_away = away;
  // Until it is so: connections are broken, and the socket is gone or back.
  while (std::filesystem::exists(m_path) == away) std::this_thread::sleep_for(std::chrono::milliseconds{1});
}

void Proxy::serve() {
  std::vector<Pair> pairs;
  const auto drop = [&pairs](std::size_t i) {
    ::close(pairs[i].station);
    ::close(pairs[i].server);
    pairs.erase(pairs.begin() + static_cast<std::ptrdiff_t>(i));
  };
  while (!m_ends) {
    if (m_away && m_listener >= 0) {
      while (!pairs.empty()) drop(0);
      ::close(m_listener);
      m_listener = -1;
      ::unlink(m_path.c_str());
    } else if (!m_away && m_listener < 0) {
      listen();
    }
    std::vector<pollfd> polled{{m_listener, POLLIN, 0}};
    const bool silent = m_silent;
    for (const auto& pair : pairs) {
      polled.push_back({silent ? -1 : pair.station, POLLIN, 0});
      polled.push_back({silent ? -1 : pair.server, POLLIN, 0});
    }
    if (::poll(polled.data(), polled.size(), kLook_ms) <= 0) continue;
    for (std::size_t i = pairs.size(); i-- > 0;) {
      const auto& pair = pairs[i];
      bool stays = true;
      if (polled[1 + 2 * i].revents != 0) stays = pass(pair.station, pair.server);
      if (stays && polled[2 + 2 * i].revents != 0) {
        if (m_answers == m_lastAnswer) {
          m_silent = true;
          break;
        }
        if (const long delay = m_delay_ms) std::this_thread::sleep_for(std::chrono::milliseconds{delay});
        stays = pass(pair.server, pair.station);
        ++m_answers;
      }
      if (!stays) drop(i);
    }
    if ((polled[0].revents & POLLIN) == 0) continue;
    const int station = ::accept4(m_listener, nullptr, nullptr, SOCK_CLOEXEC);
    if (station < 0) continue;
    ++m_connections;
    const int server = ::socket(AF_UNIX, SOCK_STREAM | SOCK_CLOEXEC, 0);
    const auto where = address(m_server);
    if (::connect(server, reinterpret_cast<const sockaddr*>(&where), sizeof where) == 0) {
      pairs.push_back({station, server});
    } else {
      ::close(station);
      ::close(server);
    }
  }
  while (!pairs.empty()) drop(0);
}

}  // namespace ovenwright
