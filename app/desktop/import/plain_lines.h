#pragma once
#include <vector>

#include "app/desktop/document/checked.h"

namespace ovenwright::desktop {

/// Lines of a log as they stand in it, whole and undivided, around one of them: for a log that could not be read.
/// Reads no more than the first 4 MB; empty where the file cannot be read or is no text.
std::vector<log::ShownLine> plainLines(const Source& source, std::size_t around_line);

}  // namespace ovenwright::desktop
