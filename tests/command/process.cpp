#include "tests/command/process.h"

#include <fcntl.h>
#include <sys/wait.h>
#include <unistd.h>

#include <algorithm>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <iterator>

namespace ovenwright {

Folder::Folder() {
  std::string name = (std::filesystem::temp_directory_path() / "ovenwright_command_XXXXXX").string();
  path_ = ::mkdtemp(name.data());
}

Folder::~Folder() { std::filesystem::remove_all(path_); }

std::vector<std::string> Folder::names() const {
  std::vector<std::string> names;
  for (const auto& entry : std::filesystem::directory_iterator{path_})
    names.push_back(entry.path().filename().string());
  std::ranges::sort(names);
  return names;
}

std::string contents(const std::string& path) {
  std::ifstream file{path, std::ios::binary};
  return {std::istreambuf_iterator<char>{file}, {}};
}

Finished ovenwright_program(const std::vector<std::string>& arguments, const std::string& output) {
  const Folder folder;
  const std::string out = output.empty() ? folder.path("out") : output, err = folder.path("err");
  std::vector<char*> argv{const_cast<char*>(OVENWRIGHT_PROGRAM)};
  for (const auto& argument : arguments) argv.push_back(const_cast<char*>(argument.c_str()));
  argv.push_back(nullptr);
  const pid_t child = ::fork();
  if (child == 0) {
    const int into_out = ::open(out.c_str(), O_WRONLY | O_CREAT, 0600), into_err = ::creat(err.c_str(), 0600);
    ::dup2(into_out, STDOUT_FILENO);
    ::dup2(into_err, STDERR_FILENO);
    ::setenv("OVENWRIGHT_PROFILES", "profiles", 1);
    const char* const kept = std::getenv("OVENWRIGHT_TEST_DATA_HOME");
    ::setenv("XDG_DATA_HOME", kept ? kept : folder.path().c_str(), 1);
    if (::chdir(OVENWRIGHT_SOURCE) == 0) ::execv(argv[0], argv.data());
    ::_exit(127);
  }
  int status = 0;
  ::waitpid(child, &status, 0);
  return {WIFEXITED(status) ? WEXITSTATUS(status) : 128 + WTERMSIG(status), output.empty() ? contents(out) : "",
          contents(err)};
}

}  // namespace ovenwright
