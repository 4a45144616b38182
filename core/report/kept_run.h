#pragma once
#include <string>
#include <string_view>

#include "core/lot/lot.h"
#include "core/lot/zones.h"

namespace ovenwright::report {

/// What the statistics of a lot take of a run, from what `check` printed of it as JSON (ovenwright.check/1): so a
/// record of years ago counts by what was said then.
/// @param report  a check report of one run; its first run counts
/// Errors: kParse where it is no such report, or names a measure, unit or verdict that is not known.
Result<lot::Run> kept_run(std::string id, std::string_view report);

/// A run with the zones that its required results outside trace back to, as they were named when it was judged.
struct KeptRun {
  lot::Run run;
  lot::RunTraces traces;
};
/// Errors: those of kept_run().
Result<KeptRun> kept_run_with_zones(std::string id, std::string_view report);

}  // namespace ovenwright::report
