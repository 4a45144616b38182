#pragma once
#include <span>
#include <string>
#include <string_view>

#include "app/command/command_line.h"
#include "core/units/result.h"

namespace ovenwright::command {

/// Writes a command's whole output to its file, atomically, or to standard output. The given status, or kUnwritable
/// after saying why on standard error.
ExitStatus write_output(const Common& common, std::string_view text, ExitStatus status);

/// "ovenwright: run7.csv:18:3: found …" on standard error.
void report_error(const Error& error);

/// Whether the output file is one of the logs, after saying so on standard error: writing over a log that is being
/// judged would destroy the record.
bool output_is_a_log(const Common& common, std::span<const std::string> logs);

/// Whether one of the outputs, files or none, is one of the files that a command reads, after saying so on standard
/// error. Inputs that are no file count for nothing.
bool output_is_an_input(std::span<const std::string> outputs, std::span<const std::string> inputs);

/// The exit status of an error that ended the command.
ExitStatus exit_status(const Error& error);

/// Ends a command that an error keeps from its report: the error on standard error and, with JSON, as `errors` of the
/// report's schema ("ovenwright.tune/1") on standard output. A file for the report stays as it is: it may be
/// the very file that could not be read.
ExitStatus end_with(const Common& common, std::string_view schema, const Error& error);

}  // namespace ovenwright::command
