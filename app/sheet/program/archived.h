#pragma once
#include "app/sheet/program/options.h"
#include "app/sheet/record.h"
#include "core/units/result.h"

namespace ovenwright::sheet {

/// Runs kept in an archive, each judged anew from its own bytes, with its record and the head of its chain.
/// Errors: those of the archive; kBadArgument where a lot has no runs.
Result<std::vector<RunRecord>> archivedRuns(const SheetOptions& options, const std::vector<std::string>& ids);
/// The ids of a lot's runs in order of time, each by its last judgement.
Result<std::vector<std::string>> runsOfLot(const SheetOptions& options, const std::string& lot);

}  // namespace ovenwright::sheet
