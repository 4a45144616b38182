#pragma once
#include <optional>
#include <utility>
#include <vector>

#include "app/command/command_line.h"
#include "core/tune/learn.h"

namespace ovenwright::command {

/// The oven and the runs that a command line names, read; every run carries the windows given, else its own of the
/// list.
Result<tune::RunList> read_runs(const LearnOptions& options);

}  // namespace ovenwright::command
