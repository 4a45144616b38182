#pragma once
#include <span>

#include "app/sheet/page.h"
#include "app/sheet/record.h"

namespace ovenwright::sheet {

/// Whether two runs are of one board, with the same thermocouples, against the same windows: then one page has both.
bool areAlike(const RunRecord& a, const RunRecord& b);

/// The sheet of a lot of two such runs: curves, lanes and results of the one that is nearer to a limit, and in the
/// table what the other one came to. @param runs  two, in order of time
Document lotOfTwoSheet(std::span<const RunRecord> runs, const Style& style);

}  // namespace ovenwright::sheet
