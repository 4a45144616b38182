#pragma once
#include <string>
#include <variant>
#include <vector>

#include "app/command/command_line.h"

namespace ovenwright::sheet {

/// What `ovenwright sheet` was told.
struct SheetOptions {
  command::Common common;  ///< its output is required
  std::vector<std::string> logs, windows;
  command::LogOptions log;
  std::string lot, serial, operatorName, company;
  std::optional<std::string> runAt, logo;
  std::string paper = "A4", language = "en";
  bool each = false;                 ///< a page for each run behind the one that sums them up
  std::optional<std::string> apart;  ///< a sheet for each log, into this folder; the kind of file
};

/// The options; or, where help was asked for or the line is wrong, the exit status after printing it.
std::variant<SheetOptions, command::ExitStatus> parseOptions(int argc, char** argv);

}  // namespace ovenwright::sheet
