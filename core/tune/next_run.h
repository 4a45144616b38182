#pragma once
#include "core/tune/search.h"
#include "core/tune/tune.h"

namespace ovenwright::tune {

/// The limit whose far side decides whether a recipe is sure to pass: the smallest edge. Absent without limits.
const Limit* in_doubt(const Point& point);

/// The harmless change of recipe whose run is expected to leave the narrowest prediction of what is in doubt at `best`.
///
/// Tried: `best` itself, half the way to it, the belt 10 % slower and faster, the zones alternately up and down, the
/// last three hotter and colder; each inside the oven's limits. Harmless: no body passes its upper limits at the band's
/// edge, and no other placement its peak's upper limit as predicted (or what it was measured at, where that is more).
/// What a run would leave is the parameters' covariance with that run's information, by the model's sensitivities, and
/// a prediction that starts from that run. A simpler plan, earlier in that order, is kept unless a later one is
/// narrower by a twentieth, or is the first to narrow it by a tenth. Where none does, the plainest that is harmless is
/// still the next run: it shows whether it passes. Absent where none is harmless, or `go_on` says stop. Cost: a
/// forecast with its band, and a march with its gradient for each run, for each of some eight changes.
/// @param tried  set where some change was looked at: absent then means that none is harmless
std::optional<NextRun> next_run(const heat::HeatModel& model, const std::vector<const Forecaster*>& boards,
                                const RecipeSpace& space, const oven::Recipe& now, const Point& best,
                                const std::function<bool()>& go_on, bool& tried);

}  // namespace ovenwright::tune
