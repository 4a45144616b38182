#pragma once
#include <string_view>

#include "app/command/command_line.h"
#include "core/units/result.h"

namespace ovenwright::command {

/// Writes a command's whole output to its file, atomically, or to standard output. The given status, or kUnwritable
/// after saying why on standard error.
ExitStatus write_output(const Common& common, std::string_view text, ExitStatus status);

/// "ovenwright: run7.csv:18:3: found …" on standard error.
void report_error(const Error& error);

/// The exit status of an error that ended the command.
ExitStatus exit_status(const Error& error);

}  // namespace ovenwright::command
