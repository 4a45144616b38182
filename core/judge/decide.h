#pragma once
#include <optional>
#include <string>

#include "core/judge/judgement.h"

namespace ovenwright::judge {

/// measures.md, Margin: 1 at the target, 0 at a limit, negative outside; 1 on a side without limit.
/// @param target  as effective_target() gives it
/// Empty where there is no limit or no target, or where the target does not lie strictly inside.
std::optional<double> margin(double value, std::optional<double> lower, std::optional<double> upper,
                             std::optional<double> target);

/// The target that the margin uses: given, else the middle of two limits, else half of a lone upper limit for a rate, a
/// time, an area, a spread or a step. Empty for counts and where measures.md asks for a stated target.
std::optional<double> effective_target(std::optional<double> lower, std::optional<double> upper,
                                       std::optional<double> target, measure::Measure measure);

/// measures.md, Verdict: the decision rule on unrounded values with 1e-6 in hand; a value on a boundary gets the better
/// of the two words. `guarded` is ILAC-G8:09/2019, 4.2.3, with the guard band w = U.
Verdict decide(double value, double expanded_uncertainty, std::optional<double> lower, std::optional<double> upper,
               window::DecisionRule rule);

/// JCGM 106:2012: Φ((upper − v)/u) − Φ((lower − v)/u), u = U/2; a missing limit gives 1 or 0.
/// With U = 0 it is 1 inside, limits included, and 0 outside.
double conformance_probability(double value, double expanded_uncertainty, std::optional<double> lower,
                               std::optional<double> upper);

/// Fills verdict, margin, margin_bound, conformance_probability and cannot_pass from the outcome's value, limits and
/// measure. A cause of kTcUnknown keeps it undetermined; without a value `not reached` is a fail.
void settle(Outcome& outcome, window::DecisionRule rule);

/// A number as text in the C locale, minus as U+2212, with `digits` decimals or as many more as it takes to stand on
/// the same side of its limits as the unrounded value: a failing value never reads as its limit.
std::string number_text(double value, int digits, std::optional<double> lower = {}, std::optional<double> upper = {});
/// The decimals that number_text() uses.
int digits_needed(double value, int digits, std::optional<double> lower, std::optional<double> upper);
/// The decimals that a measure is printed with unless a limit asks for more: 2 for rates, 0 for areas, counts and the
/// time to the peak, else 1.
int usual_digits(measure::Measure measure);

}  // namespace ovenwright::judge
