#pragma once
#include <span>
#include <string>
#include <vector>

#include "core/check/check.h"
#include "core/check/measure_log.h"
#include "core/files/profiles.h"
#include "core/judge/judgement.h"

namespace ovenwright::report {

/// How much of a run is printed for people.
enum class Detail {
  kAll,      ///< every result, and how the log was read
  kOutside,  ///< the results that are no pass
  kSentence  ///< the verdict sentence alone
};

/// One run for people: the sentence first, then the table of results, what being outside risks and where it came from,
/// faults, what was assumed, what the log was read as and judged against. Numbers are rounded, but never so that a
/// failing value reads as its limit.
std::string check_run_text(const log::Reading& reading, const check::CheckedRun& run, const check::Request& request,
                           Detail detail);

/// One line of the overview of several runs.
struct OverviewLine {
  std::string name;  ///< "a.csv", "b.csv, run 2"
  judge::Verdict verdict = judge::Verdict::kUndetermined;
  std::string margin;
};
OverviewLine overview_line(const log::Reading& reading, const check::CheckedRun& run);
/// A sentence on all runs, then a line for each; `unread` logs could not be read.
std::string overview_text(std::span<const OverviewLine> lines, std::size_t unread);

/// Measures for people: a table, then warnings, faults and what the log was read as; kSentence: the table alone.
std::string measure_text(const check::MeasuredLog& measured, const check::MeasureRequest& request, Detail detail);
/// The table of measures with their parameters.
std::string measures_text();

/// What there is of a kind.
std::string list_text(files::Kind what, std::span<const files::Listed> listed);

}  // namespace ovenwright::report
