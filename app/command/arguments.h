#pragma once
#include "app/command/command_line.h"

namespace CLI {
class App;
class Option;
class Validator;
}  // namespace CLI

namespace ovenwright::command {

/// Options that several commands take, worded once.

/// --format, -o, --quiet, --version and --help.
void add_common(CLI::App& app, Common& common);
/// --leave-empty.
void add_leave_empty(CLI::App& app, bool& leave_empty);

/// --board, --oven, --recipe, --layout, --leave-empty and --entry.
void add_setting(CLI::App& app, LogOptions& log);
/// The same and --run.
void add_log(CLI::App& app, LogOptions& log);
/// Each occurrence takes one value, so that a log may follow.
void repeatable(CLI::Option* option);
/// The parser takes "nan" and "inf" for numbers; this refuses them.
CLI::Validator finite();

}  // namespace ovenwright::command
