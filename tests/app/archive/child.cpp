#include "tests/app/archive/child.h"

#include <fcntl.h>
#include <sys/wait.h>
#include <unistd.h>

#include <csignal>

namespace ovenwright {

Child::Child(const std::vector<std::string>& command) {
  int ends[2] = {-1, -1};
  if (::pipe2(ends, O_CLOEXEC) != 0) return;
  std::vector<char*> arguments;
  for (const auto& argument : command) arguments.push_back(const_cast<char*>(argument.c_str()));
  arguments.push_back(nullptr);
  m_process = ::fork();
  if (m_process == 0) {
    ::dup2(ends[1], STDOUT_FILENO);
    ::execvp(arguments[0], arguments.data());
    ::_exit(127);
  }
  ::close(ends[1]);
  m_output = ends[0];
}

Child::~Child() {
  kill();
  wait();
  if (m_output >= 0) ::close(m_output);
}

bool Child::readLine(std::string& line) {
  for (;;) {
    if (const auto end = m_held.find('\n'); end != std::string::npos) {
      line = m_held.substr(0, end);
      m_held.erase(0, end + 1);
      return true;
    }
    char bytes[4096];
    const ssize_t got = ::read(m_output, bytes, sizeof bytes);
    if (got <= 0) return false;
    m_held.append(bytes, static_cast<std::size_t>(got));
  }
}

void Child::kill() {
  if (m_process > 0) ::kill(m_process, SIGKILL);
}

int Child::wait() {
  if (m_process <= 0) return -1;
  int status = 0;
  ::waitpid(m_process, &status, 0);
  m_process = -1;
  return WIFEXITED(status) ? WEXITSTATUS(status) : 128 + WTERMSIG(status);
}

std::vector<std::string> linesOf(const std::vector<std::string>& command) {
  Child child(command);
  std::vector<std::string> lines;
  for (std::string line; child.readLine(line);) lines.push_back(line);
  child.wait();
  return lines;
}

std::vector<std::string> withoutPrivileges(std::vector<std::string> command) {
  if (::geteuid() != 0) return command;
  std::vector<std::string> whole{"setpriv", "--reuid=nobody", "--regid=nogroup", "--clear-groups", "--"};
  whole.insert(whole.end(), command.begin(), command.end());
  return whole;
}

}  // namespace ovenwright
