#pragma once
#include <functional>
#include <string>
#include <vector>

#include "app/archive/archive.h"
#include "app/sheet/record.h"

namespace ovenwright::sheet {

/// Runs kept in an archive, each judged anew from its own bytes, with its record and the head of its chain.
/// @param windows   in place of those that each was judged against, where there are some
/// @param progress  called after each run with the share done; false stops with kCancelled; may be empty
/// Errors: those of the archive and of reading and judging what it keeps; kCancelled.
Result<std::vector<RunRecord>> archivedRuns(archive::Archive& archive, const std::vector<std::string>& ids,
                                            const std::function<bool(double done)>& progress = {},
                                            const std::vector<window::ProcessWindow>& windows = {});
/// The ids of a lot's runs in order of time, each by its last judgement.
/// Errors: those of the archive; kBadArgument where the lot has no runs.
Result<std::vector<std::string>> idsOfLot(archive::Archive& archive, const std::string& lot);

}  // namespace ovenwright::sheet
