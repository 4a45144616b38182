#pragma once
#include <string>
#include <string_view>

#include "core/lot/lot.h"

namespace ovenwright::report {

/// What the statistics of a lot take of a run, from what `check` printed of it as JSON (ovenwright.check/1): so a
/// record of years ago counts by what was said then.
/// @param report  a check report of one run; its first run counts
/// Errors: kParse where it is no such report, or names a measure, unit or verdict that is not known.
Result<lot::Run> kept_run(std::string id, std::string_view report);

}  // namespace ovenwright::report
