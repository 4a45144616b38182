#pragma once
#include <optional>
#include <string>
#include <variant>
#include <vector>

#include "app/command/exit_status.h"
#include "core/files/profiles.h"

namespace ovenwright::command {

enum class Format { kText, kJson };

/// What every command takes.
struct Common {
  Format format = Format::kText;
  std::optional<std::string> output;  ///< -o; else standard output
  bool quiet = false;                 ///< the sentence alone
};

/// What every command that reads a log may be told about it: names or paths, as typed.
struct LogOptions {
  std::optional<std::string> board, oven, recipe, layout;
  std::optional<int> run;
  std::optional<double> entry_s;
};

struct CheckOptions {
  Common common;
  std::vector<std::string> logs, windows;
  LogOptions log;
};

struct MeasureOptions {
  Common common;
  std::string log_file;  ///< empty with `list`
  std::vector<std::string> measures;
  LogOptions log;
  bool list = false;
};

struct ListOptions {
  Common common;
  files::Kind kind = files::Kind::kWindow;
  std::optional<std::string> name;
};

using Command = std::variant<CheckOptions, MeasureOptions, ListOptions>;

/// The command that was typed; or, where help or the version was asked for or the line is wrong, the exit status after
/// printing it. The parser's exceptions end here.
std::variant<Command, ExitStatus> parse_command_line(int argc, char** argv);

}  // namespace ovenwright::command
