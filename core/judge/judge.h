#pragma once
#include <optional>
#include <span>
#include <vector>

#include "core/board/board.h"
#include "core/judge/judgement.h"
#include "core/measure/measure.h"
#include "core/run/run.h"

namespace ovenwright::judge {

/// Judges one run against one or several windows together. Never fails: what cannot be judged is undetermined and says why.
Judgement judge(const run::Run& run, std::vector<window::ProcessWindow> windows, bool window_assumed,
                const board::Board* board, const std::optional<measure::Place>& place);

/// measures.md, Margin: 1 at the target, 0 at a limit, negative outside. Empty where there is no limit or no target.
std::optional<double> margin(double value, std::optional<double> lower, std::optional<double> upper, std::optional<double> target);
/// The target that the margin uses: given, else the middle, else half of a lone upper limit for non-temperature measures.
std::optional<double> effective_target(std::optional<double> lower, std::optional<double> upper, std::optional<double> target, measure::Measure measure);
/// measures.md, Verdict: the decision rule on unrounded values with 1e-6 in hand.
Verdict decide(double value, double expanded_uncertainty, std::optional<double> lower, std::optional<double> upper, window::DecisionRule rule);
/// JCGM 106:2012: Φ((upper − v)/u) − Φ((lower − v)/u), u = U/2.
double conformance_probability(double value, double expanded_uncertainty, std::optional<double> lower, std::optional<double> upper);
/// A number as text, with enough digits that a failing value does not read as its limit. `minus` U+2212.
std::string number_text(double value, int digits, std::optional<double> lower, std::optional<double> upper);

}  // namespace ovenwright::judge
