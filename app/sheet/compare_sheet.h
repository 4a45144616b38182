#pragma once
#include <string>

#include "app/sheet/page.h"
#include "app/sheet/record.h"
#include "core/compare/compare.h"

namespace ovenwright::sheet {

/// Two judged runs to be held against each other.
struct ComparisonRecord {
  RunRecord a, b;
  compare::Options options;
  bool overlaid = false;  ///< the curves in one picture
};

/// The sheet of a comparison: sentence, what both were judged with, curves, recipes with their differences, lanes with
/// both, what the uncertainties hold. One page where all fits; keeps what it paints.
Document compareSheet(const ComparisonRecord& record, const Style& style);

/// One row for each result: both values, their difference with its U, limits and verdicts. As toCsv().
std::string compareCsv(const ComparisonRecord& record);
/// ovenwright.sheet/1 with the two runs and, as `comparison`, what `ovenwright compare` reports.
std::string compareJson(const ComparisonRecord& record, const Style& style);
/// One page that fetches nothing, as toHtml().
std::string compareHtml(const ComparisonRecord& record, const Style& style);

}  // namespace ovenwright::sheet
