#pragma once
#include <optional>
#include <string>
#include <string_view>

#include "core/window/window.h"

namespace ovenwright::window {

/// "Tc", "Tc-5", "Tc + 2.5" as a limit; empty where the text is none of these.
std::optional<Limit> limit_of(std::string_view text);
/// A limit as a window file writes it: 250 or "Tc-5", the latter in quotes.
std::string limit_text(const Limit& limit);

/// Whether the half of an upper limit that stands alone serves as the target: for a rate, a time, an area, a spread or
/// a step, which cannot fall below 0. Not for a temperature, nor for a count, which has no margin.
bool counts_from_zero(measure::Measure measure);

/// What keeps a requirement's limits from being used, by the rules of the margin: no limit, limits crossed, a target
/// not strictly inside, no target where the margin needs one, Tc where it means nothing. Empty where they are sound.
/// The editor asks for it at every keystroke. Limits and targets of which one is Tc are compared only where both are.
struct LimitProblem {
  std::string key;      ///< "lower", "upper", "target", "applies_to", or empty for the requirement as a whole
  std::string message;  ///< a whole English sentence part
  std::string expected;
};
std::optional<LimitProblem> limit_problem(const ProcessWindow& window, const Requirement& requirement);

}  // namespace ovenwright::window
