#pragma once
#include <functional>
#include <optional>

#include "app/desktop/archive/archive_link.h"
#include "app/desktop/text/format.h"
#include "app/desktop/window/notice.h"

namespace ovenwright::desktop {

/// What stands in place of the list of runs: nothing is kept yet, the server is away, the archive cannot be read.
/// Absent where there are runs to be shown, or nothing is known yet.
/// @param again  what "Try again" does
std::optional<Notice> archiveNotice(const ArchiveStatus& status, const std::function<void()>& again);

/// A list that could not be read, though the archive could be opened.
Notice failureNotice(const Error& error, const std::function<void()>& again);
/// No run passes the filter.
Notice nothingFoundNotice(const std::function<void()>& clear);

/// Which archive it is, for the status line: "Archive: this computer, 1 212 runs".
QString archiveText(const ArchiveStatus& status, const Format& format);

/// That records turned out to be of runs which another station had kept already.
QString repeatedText(const std::vector<archive::Repeated>& records);

}  // namespace ovenwright::desktop
