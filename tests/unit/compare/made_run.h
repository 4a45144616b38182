#pragma once
#include <algorithm>
#include <cmath>
#include <string>

#include "core/compare/compare.h"
#include "tests/unit/judge/sample.h"

// Judged runs made by hand: values with the terms of their uncertainty, no log.
namespace ovenwright::compare {

/// A run of the sample's judgement whose results all have the terms 3, 4, 1 and 0 (U = 2·√26), channels by its
/// placements.
inline check::CheckedRun run_of(judge::Sample& sample) {
  check::CheckedRun run;
  auto& judgement = sample.judgement();
  for (auto* outcomes : {&judgement.results, &judgement.board_results})
    for (auto& outcome : *outcomes) {
      outcome.value.terms = {3, 4, 1, 0};
      outcome.value.expanded_uncertainty = 2 * std::sqrt(26.0);
    }
  run.judgement = sample.judge();
  for (const auto& name : judge::kPlacements) {
    run.run.channels.emplace_back();
    run.run.channels.back().name = name;
  }
  return run;
}

inline const Difference& result_of(const Comparison& comparison, const std::string& requirement,
                                   const std::string& trace) {
  return *std::ranges::find_if(comparison.results,
                               [&](const Difference& d) { return d.requirement == requirement && d.trace == trace; });
}

}  // namespace ovenwright::compare
