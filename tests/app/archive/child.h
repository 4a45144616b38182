#pragma once
#include <sys/types.h>

#include <string>
#include <vector>

namespace ovenwright {

/// A program that runs beside the test, what it prints read line by line.
class Child {
 public:
  explicit Child(const std::vector<std::string>& command);
  Child(const Child&) = delete;
  Child& operator=(const Child&) = delete;
  ~Child();
  /// The next whole line without its end; false at the end of the output.
  bool readLine(std::string& line);
  void kill();  ///< with SIGKILL
  /// Waits for its end: the exit status, or 128 + signal.
  int wait();

 private:
  pid_t m_process = -1;
  int m_output = -1;
  std::string m_held;
};

/// All whole lines that a program prints until it ends.
std::vector<std::string> linesOf(const std::vector<std::string>& command);

/// The command that runs `command` where the rights of files hold: as another user where the test runs as root.
std::vector<std::string> withoutPrivileges(std::vector<std::string> command);

}  // namespace ovenwright
