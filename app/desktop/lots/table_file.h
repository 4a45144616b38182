#pragma once
#include <string>

#include "app/archive/archive.h"

namespace ovenwright::desktop {

/// Writes all runs that pass the filter, the newest first, as a CSV file: RFC 4180, UTF-8, C locale, UTC; texts that a
/// spreadsheet would take for a formula are made text. A file that is there is replaced once the new one is whole.
/// @return how many runs were written
/// Errors: those of the archive; kIo where the file cannot be written: then nothing is left behind.
Result<std::size_t> writeTable(archive::Archive& archive, const archive::Filter& filter, archive::Order order,
                               const std::string& path);

}  // namespace ovenwright::desktop
