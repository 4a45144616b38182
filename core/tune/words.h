#pragma once
#include <string>

#include "core/tune/tune.h"

namespace ovenwright::tune {

/// Stands beside every suggestion, wherever it is shown.
inline constexpr const char* kCaution =
    "This is a prediction. A qualified person confirms it with an instrumented run before production, inside the "
    "ratings of the "
    "paste, the parts, the board and the oven; site safety rules, local codes and the makers' data sheets stand above "
    "it. The "
    "errors of one board's traces are mostly one error: if one reads high, all may.";

/// "Zones 8 and 9 up 7 °C, speed down 38 mm/min: U1 corner is predicted to reach 235 °C with 1.1 ± 0.9 °C in hand; R118
/// …": what and why.
/// `names`: by board, to tell several boards apart; else empty.
std::string suggestion_sentence(const oven::Oven& oven, const Suggestion& suggestion,
                                const std::vector<std::string>& names);
std::string infeasible_sentence(const Infeasible& infeasible, const std::vector<std::string>& names);
/// A chance of passing below it is said not to be sure.
inline constexpr double kDoubtfulChance = 0.9;
/// Of the first suggestion, where it is not sure to pass.
std::string doubtful_words();
/// Of the half width as it is: what counts as narrowed.
inline constexpr double kNarrows = 0.9;
/// "A run of the best recipe itself (zones 8 and 9 up 7 °C) is expected to narrow the peak of U1 from 236 ± 3.1 °C to ±
/// 1.2 °C.": `value`: predicted at the best recipe; `is_best`: the run is of that recipe.
/// `fails`: even the best recipe is predicted outside.
std::string next_run_sentence(const oven::Oven& oven, const NextRun& next_run, std::optional<double> value,
                              bool is_best, bool fails);
/// "Fastest: no recipe keeps a margin of 40 %, the most is 22 %."
std::string missed_margin_note(Aim aim, double margin, double best);
/// That what an aim comes to is far less likely to pass than another suggestion, and so is not shown.
std::string not_as_likely_note(Aim aim);
/// No suggestion is sure to pass, and no run that would tell more is known to be harmless.
std::string no_harmless_run_note();
/// A window's rule is guarded, and what is inside its limits lies within its uncertainty of one.
std::string guarded_note();
/// "Coolest: the present recipe is that already."
std::string present_recipe_note(Aim aim);
/// "Boards Tern and Plover share a recipe, Knot needs its own: …" for several boards that no recipe holds together.
/// `names`: by board.
std::string groups_sentence(const std::vector<Group>& groups, bool fewest, const std::vector<std::string>& names);

}  // namespace ovenwright::tune
