#pragma once
#include <optional>

#include "app/command/exit_status.h"

namespace ovenwright::command {

/// Hands the command line to the program that does this command, where it is not done here: `sheet` draws pages, and
/// what draws pages takes long to load, which `check` must not pay for. Returns only where the command is done here
/// (empty) or the other program cannot be run (kUnwritable, after saying so on standard error).
std::optional<ExitStatus> pass_on(int argc, char** argv);

}  // namespace ovenwright::command
