#include "core/judge/decide_run.h"

#include <algorithm>

#include "core/judge/problems.h"

namespace ovenwright::judge {
namespace {

/// Neither a value nor a known limit to hold it against.
bool has_no_margin_yet(const Outcome& outcome) {
  return !outcome.value.value || outcome.cause.kind == Cause::Kind::kTcUnknown;
}

/// A bound that may lie on the far side of what it reads: at most, or below the target unknown altogether.
bool may_be_smaller(const Outcome& outcome) {
  return outcome.value.at_least && outcome.margin_bound != MarginBound::kAtLeast;
}

}  // namespace

void decide_run(Judgement& judgement) {
  judgement.verdict = Verdict::kPass;
  judgement.margin.reset();
  judgement.margin_bound = MarginBound::kNone;
  bool any = false, unknown = false, at_most = false;
  std::optional<double> certain, bound;  // smallest exact or at most, smallest at least
  for (std::size_t i = 0; i < judgement.all_size(); ++i) {
    const Outcome& outcome = judgement.all(i);
    if (!outcome.required) continue;
    any = true;
    judgement.verdict = std::max(judgement.verdict, outcome.verdict);
    unknown = unknown || has_no_margin_yet(outcome);
    at_most = at_most || may_be_smaller(outcome);
    if (!outcome.margin) continue;
    auto& smallest = outcome.margin_bound == MarginBound::kAtLeast ? bound : certain;
    smallest = std::min(smallest.value_or(*outcome.margin), *outcome.margin);
  }
  if (!any && (judgement.bodies_not_judged || judgement.sides_not_judged)) judgement.verdict = Verdict::kUndetermined;
  if (unknown) return;
  if (at_most) {
    judgement.margin = certain;
    if (certain) judgement.margin_bound = MarginBound::kAtMost;
  } else if (bound && (!certain || *bound < *certain)) {
    judgement.margin = bound;
    judgement.margin_bound = MarginBound::kAtLeast;
  } else {
    judgement.margin = certain;
  }
}

Summary summarise(const Judgement& judgement) {
  Summary summary;
  int without = 0;
  std::optional<std::size_t> smallest;
  for (std::size_t i = 0; i < judgement.all_size(); ++i) {
    const Outcome& outcome = judgement.all(i);
    if (!outcome.required) {
      if (is_out(outcome.verdict)) summary.informative_out.push_back(i);
      continue;
    }
    ++summary.required;
    switch (outcome.verdict) {
      case Verdict::kPass:
        ++summary.pass;
        break;
      case Verdict::kConditionalPass:
        ++summary.conditional_pass;
        break;
      case Verdict::kUndetermined:
        ++summary.undetermined;
        break;
      case Verdict::kConditionalFail:
        ++summary.conditional_fail;
        break;
      case Verdict::kFail:
        ++summary.fail;
        break;
    }
    if (has_no_margin_yet(outcome)) ++without;
    if (outcome.margin && (!smallest || *outcome.margin < *judgement.all(*smallest).margin)) smallest = i;
  }
  if (without > 0) summary.of_the_other = summary.required - without;
  if (!smallest) return summary;
  const auto add = [&](std::size_t i) {
    summary.smallest.push_back({i, *judgement.all(i).margin, judgement.all(i).margin_bound});
  };
  add(*smallest);
  if (judgement.margin_bound == MarginBound::kAtMost) summary.smallest[0].bound = MarginBound::kAtMost;
  for (const auto& problem : problems_of(judgement)) {
    if (problem.kind != Problem::Kind::kNeverReached || problem.peaks.empty()) continue;
    for (std::size_t i = 0; i < problem.peaks.size(); ++i) {
      if (problem.peaks[i] == *smallest && judgement.all(problem.outcomes[i]).margin) add(problem.outcomes[i]);
      if (problem.outcomes[i] == *smallest && judgement.all(problem.peaks[i]).margin) add(problem.peaks[i]);
    }
  }
  return summary;
}

}  // namespace ovenwright::judge
