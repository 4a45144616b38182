// The command as a whole process, started and ended each time, its files in the page cache: one demo log, 1 000 logs of
// the demo's size in one call, and, to compare with, an interpreter that imports the usual table library.
#include <benchmark/benchmark.h>
#include <fcntl.h>
#include <fmt/format.h>
#include <spawn.h>
#include <sys/wait.h>
#include <unistd.h>

#include <cerrno>
#include <filesystem>
#include <stdexcept>
#include <string>
#include <system_error>
#include <vector>

namespace ovenwright {
namespace {

const std::filesystem::path kDemo = std::filesystem::path(OVENWRIGHT_PROFILES) / "demo";

/// Runs a program found on PATH or by its path until it ends, its output thrown away. Returns its exit status; throws
/// std::system_error where it cannot be started, std::runtime_error where a signal ended it.
int Run(std::vector<std::string> words) {
  std::vector<char*> arguments;
  for (std::string& word : words) arguments.push_back(word.data());
  arguments.push_back(nullptr);
  posix_spawn_file_actions_t actions;
  posix_spawn_file_actions_init(&actions);
  posix_spawn_file_actions_addopen(&actions, STDOUT_FILENO, "/dev/null", O_WRONLY, 0);
  posix_spawn_file_actions_addopen(&actions, STDERR_FILENO, "/dev/null", O_WRONLY, 0);
  pid_t child = 0;
  const int failed = posix_spawnp(&child, arguments[0], &actions, nullptr, arguments.data(), environ);
  posix_spawn_file_actions_destroy(&actions);
  if (failed != 0) throw std::system_error(failed, std::generic_category(), words[0]);
  int status = 0;
  while (waitpid(child, &status, 0) < 0)
    if (errno != EINTR) throw std::system_error(errno, std::generic_category(), "waitpid");
  if (!WIFEXITED(status)) throw std::runtime_error(words[0] + " was ended by a signal");
  return WEXITSTATUS(status);
}

/// Times a program that ends with one of two exit statuses; anything else makes the benchmark an error, not a figure.
void TimeProcess(benchmark::State& state, const std::vector<std::string>& words, int expected) {
  for (auto _ : state) {
    int status = 0;
    try {
      status = Run(words);
    } catch (const std::exception& error) {
      state.SkipWithError(error.what());
      break;
    }
    if (status != expected) {
      state.SkipWithError(fmt::format("{} ended with {}, not with {}", words[0], status, expected).c_str());
      break;
    }
  }
}

/// A folder of so many copies of the demo log, gone at the end of the program.
class CopiedLogs {
 public:
  explicit CopiedLogs(int count)
      : folder_(std::filesystem::temp_directory_path() / fmt::format("ovenwright_command_bench_{}", getpid())) {
    std::filesystem::create_directory(folder_);
    for (int k = 0; k < count; ++k) {
      paths_.push_back(folder_ / fmt::format("log_{:04}.csv", k));
      std::filesystem::copy_file(kDemo / "tern_run1.csv", paths_.back());
    }
  }
  CopiedLogs(const CopiedLogs&) = delete;
  CopiedLogs& operator=(const CopiedLogs&) = delete;
  ~CopiedLogs() {
    std::error_code ignored;
    std::filesystem::remove_all(folder_, ignored);
  }
  const std::vector<std::string>& paths() const { return paths_; }

 private:
  std::filesystem::path folder_;
  std::vector<std::string> paths_;
};

constexpr int kOutside = 1;  // exit status of `check` where a result is outside: the first demo run

void CheckDemoLog(benchmark::State& state) {
  TimeProcess(state, {OVENWRIGHT_COMMAND, "check", kDemo / "tern_run1.csv", "--window", kDemo / "window.toml"},
              kOutside);
}
BENCHMARK(CheckDemoLog)->Unit(benchmark::kMillisecond)->UseRealTime();

void Check1000Logs(benchmark::State& state) {
  const CopiedLogs logs(1000);
  std::vector<std::string> words{OVENWRIGHT_COMMAND, "check", "--window", kDemo / "window.toml"};
  words.insert(words.end(), logs.paths().begin(), logs.paths().end());
  TimeProcess(state, words, kOutside);
}
BENCHMARK(Check1000Logs)->Unit(benchmark::kMillisecond)->UseRealTime();

void ImportTableLibrary(benchmark::State& state) { TimeProcess(state, {"/usr/bin/python3", "-c", "import pandas"}, 0); }
BENCHMARK(ImportTableLibrary)->Unit(benchmark::kMillisecond)->UseRealTime();

}  // namespace
}  // namespace ovenwright
