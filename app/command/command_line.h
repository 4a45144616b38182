#pragma once
#include <optional>
#include <string>
#include <variant>
#include <vector>

#include "app/command/exit_status.h"
#include "core/files/profiles.h"
#include "core/lot/lot.h"

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
  std::optional<std::string> board, oven, recipe, layout, table;
  std::optional<int> run;
  std::optional<double> entry_s;
  bool leave_empty = false;
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

/// What predict and tune learn from: logs with their recipes in pairs, or a list of runs.
struct LearnOptions {
  std::vector<std::string> logs, recipes, windows;
  std::optional<std::string> board, oven, layout, table, runs;
  bool leave_empty = false;
  std::optional<int> run;
  std::optional<double> entry_s;
};

struct PredictOptions {
  Common common;
  LearnOptions learn;
  std::string new_recipe;
  std::optional<std::string> traces;  ///< a .csv for the predicted curves
};

struct TuneOptions {
  Common common;
  LearnOptions learn;
  bool keep_speed = false, split_sides = false;
  std::optional<double> min_speed_mm_per_min, at_margin;
  std::vector<std::string> locked_zones;
  std::optional<std::string> write_recipes;  ///< a folder
  std::optional<std::string> note;           ///< a file for the change note
  std::optional<std::string> note_for;       ///< which suggestion it is of: an aim's name; else the first
};

/// Two logs, of which what is given once holds for both, twice for A and B; or two groups of archived runs.
struct CompareOptions {
  Common common;
  std::vector<std::string> logs;          ///< two; none for groups
  std::vector<std::string> ids_a, ids_b;  ///< of the groups' records
  std::optional<std::string> archive;     ///< that holds them: a file or a URL; else the user's own
  std::vector<std::string> windows, recipes, tables;
  std::optional<std::string> board, oven, layout;
  std::vector<int> runs;
  std::vector<double> entries_s;
  std::optional<double> align_C;
  bool different_thermocouples = false;
  bool leave_empty = false;
};

struct LotOptions {
  Common common;
  std::optional<std::string> archive;  ///< a file or a URL; else the user's own
  std::string lot;
  lot::Options statistics;
};

struct StartOptions {
  Common common;
  std::string board, oven;
  std::vector<std::string> windows;
  std::optional<std::string> runs;
  std::optional<std::string> write_recipe;  ///< a file
};

struct ArchiveAddOptions {
  Common common;
  std::optional<std::string> archive;  ///< a file or a URL; else the user's own
  std::vector<std::string> logs, windows;
  LogOptions log;
  std::string lot, serial, operator_name;
  std::optional<std::string> run_at;
};

struct ArchiveListOptions {
  Common common;
  std::optional<std::string> archive, lot, board, oven, recipe, verdict, from, to, text;
};

struct ArchiveShowOptions {
  Common common;
  std::optional<std::string> archive;
  std::string id;
};

struct ArchiveJudgeOptions {
  Common common;
  std::optional<std::string> archive;
  std::vector<std::string> ids, windows;
};

struct ArchiveExportOptions {
  Common common;  ///< the output is a folder
  std::optional<std::string> archive;
  std::vector<std::string> ids;
};

struct ArchiveVerifyOptions {
  Common common;
  std::optional<std::string> archive, head;
};

struct ArchiveMoveOptions {
  Common common;
  std::optional<std::string> archive;
  std::string to;
};

struct ArchiveReleaseOptions {
  Common common;
  std::optional<std::string> archive;
  std::vector<std::string> windows;  ///< none: list what was released
  std::string by;
};

struct WatchOptions {
  Common common;
  std::optional<std::string> archive;
  std::string folder, rules;
  bool once = false;
};

using Command =
    std::variant<CheckOptions, MeasureOptions, ListOptions, PredictOptions, TuneOptions, StartOptions, CompareOptions,
                 LotOptions, ArchiveAddOptions, ArchiveListOptions, ArchiveShowOptions, ArchiveJudgeOptions,
                 ArchiveExportOptions, ArchiveVerifyOptions, ArchiveMoveOptions, ArchiveReleaseOptions, WatchOptions>;

/// The command that was typed; or, where help or the version was asked for or the line is wrong, the exit status after
/// printing it. The parser's exceptions end here.
std::variant<Command, ExitStatus> parse_command_line(int argc, char** argv);

}  // namespace ovenwright::command
