#pragma once
#include <string>
#include <vector>

#include "app/sheet/page.h"
#include "app/sheet/record.h"
#include "core/compare/compare.h"

namespace ovenwright::sheet {

/// Two judged runs, or two groups of them, to be held against each other.
struct ComparisonRecord {
  std::vector<RunRecord> a, b;  ///< one or more each, judged against the same windows
  compare::Options options;
  bool overlaid = false;  ///< the curves in one picture

  bool isOfGroups() const { return a.size() + b.size() > 2; }
};
std::vector<compare::JudgedRun> judgedRuns(const std::vector<RunRecord>& records);
/// What `ovenwright compare` works out of them.
compare::Comparison comparisonOf(const ComparisonRecord& record);

/// The sheet of a comparison: sentence, what both were judged with, curves, recipes with their differences, lanes with
/// both, what the uncertainties hold; of groups, behind that, a row for each run and each log. One page where all of
/// two runs fits; keeps what it paints.
Document compareSheet(const ComparisonRecord& record, const Style& style);

/// One row for each result: both values, their difference with its U, limits and verdicts; of groups means, the
/// interval of the two samples, and how many values. As toCsv().
std::string compareCsv(const ComparisonRecord& record);
/// ovenwright.sheet/1 with the runs, A's before B's, and, as `comparison`, what `ovenwright compare` reports.
std::string compareJson(const ComparisonRecord& record, const Style& style);
/// One page that fetches nothing, as toHtml().
std::string compareHtml(const ComparisonRecord& record, const Style& style);

}  // namespace ovenwright::sheet
