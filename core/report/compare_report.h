#pragma once
#include <string>
#include <vector>

#include "core/compare/compare.h"

namespace ovenwright::report {

/// What is compared, as a report names it: a log, or the archived runs of a group.
struct ComparedSide {
  std::string file, sha256;                ///< of a log; empty for a group
  std::vector<std::string> ids;            ///< of a group
  std::string recipe;                      ///< its name; may be empty
  std::vector<std::string> warnings = {};  ///< of reading and judging a log
};

/// A log that is compared.
ComparedSide compared_log(const log::Reading& reading, const check::CheckedRun& run, const check::Request& request);

/// "LF main board, revision 8"; empty without one.
std::string recipe_name(const std::optional<oven::Recipe>& recipe);

/// ovenwright.compare/1, a line of JSON.
std::string compare_json(const compare::Comparison& comparison, const ComparedSide& a, const ComparedSide& b);

/// The same for people: the sentence, a table of the differences, what differs in the recipes, and what the
/// uncertainties hold.
std::string compare_text(const compare::Comparison& comparison, const ComparedSide& a, const ComparedSide& b);

}  // namespace ovenwright::report
