#pragma once
#include <string>
#include <vector>

#include "core/lot/lot.h"

// Lots made by hand, for tests: one requirement on one trace, no log, no measuring.
namespace ovenwright::lot {

/// "peak" on "U1", limits 235 and 250.
inline RunResult peak(std::optional<double> value, judge::Verdict verdict = judge::Verdict::kPass) {
  RunResult result;
  result.window = "SAC305, general";
  result.requirement = "peak";
  result.trace = "U1";
  result.value = value;
  result.lower = 235;
  result.upper = 250;
  result.verdict = verdict;
  return result;
}

/// A run for each value: "r1", "r2", …, all passing with a margin of 40 %.
inline std::vector<Run> runs_of(const std::vector<double>& values) {
  std::vector<Run> runs;
  for (const double value : values)
    runs.push_back(
        {"r" + std::to_string(runs.size() + 1), judge::Verdict::kPass, 0.4, judge::MarginBound::kNone, {peak(value)}});
  return runs;
}

}  // namespace ovenwright::lot
