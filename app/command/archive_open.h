#pragma once
#include <functional>
#include <optional>
#include <string>

#include "app/archive/archive.h"
#include "app/command/command_line.h"
#include "app/command/exit_status.h"

namespace ovenwright::command {

/// Opens the archive that a command line names, by default the user's own. Makes the application that Qt's drivers
/// need. Records for a server that is away are said on standard error to wait.
Result<archive::Archive> open_archive(const std::optional<std::string>& where, archive::Access access);

/// The one record that an id, or a digest from paper, names.
/// Errors: those of Archive::idsOf(); kBadArgument where a digest fits several, which are named.
Result<std::string> one_id(archive::Archive& archive, const std::string& id_or_digest);

/// Says on standard error which records another station had kept already, where records wait, and why.
void report_waiting(archive::Archive& archive);

/// For work on all records: after a second, and then every second, the share done on standard error, unless the command
/// is to be quiet.
std::function<bool(double)> told_progress(const Common& common, const std::string& what);

}  // namespace ovenwright::command
