#pragma once
#include <string>
#include <vector>

#include "app/desktop/archive/archive_link.h"
#include "app/desktop/lots/run_row.h"

namespace ovenwright::desktop {

/// What rows show once they are seen, in the order of `ids`. Belongs on the archive's thread. A record whose report is
/// not understood has details without a requirement.
/// Cost: about a millisecond for each run.
Result<std::vector<RunDetails>> runDetails(archive::Archive& archive, const std::vector<std::string>& ids,
                                           const ArchiveLink::Stop& stop);

}  // namespace ovenwright::desktop
