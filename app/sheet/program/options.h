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
  std::vector<std::string> lots;       ///< with logs: the one they belong to; else lots of the archive
  std::vector<std::string> ids;        ///< of runs in the archive
  std::optional<std::string> archive;  ///< a file or a URL; else the user's own
  std::string serial, operatorName, company;
  std::optional<std::string> runAt, logo;
  std::string paper = "A4", language = "en";
  bool compare = false;  ///< the two logs against each other, or two groups of runs of the archive
  std::vector<std::string> groupA, groupB;
  std::vector<std::string> recipes;  ///< of each of the two, or of both
  std::vector<double> entries_s;     ///< likewise
  std::vector<int> passes;           ///< likewise, of logs with several
  std::optional<double> align_C;     ///< a level to line them up at
  bool differentThermocouples = false, overlaid = false;
  std::optional<std::string> markPrinted;  ///< who prints: noted beside the records of the archive
  bool each = false;                       ///< a page for each run behind the one that sums them up
  std::optional<std::string> apart;        ///< a sheet for each log, run or lot, into a folder; the kind of file
};

/// The options; or, where help was asked for or the line is wrong, the exit status after printing it.
std::variant<SheetOptions, command::ExitStatus> parseOptions(int argc, char** argv);

}  // namespace ovenwright::sheet
