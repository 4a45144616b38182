#pragma once
#include <functional>
#include <optional>
#include <span>
#include <vector>

#include "core/measure/value.h"
#include "core/oven/oven.h"
#include "core/run/run.h"
#include "core/units/result.h"

namespace ovenwright::measure {

/// How far a thermocouple of a type and class may be off: a(T) = max(floor_C, fraction·|T|), half width.
struct Tolerance {
  double floor_C = 1.5;
  double fraction = 0.004;
};

/// "K class 1", "T class 2", "J special", "K standard": new wire of IEC 60584-1 and ASTM E230/E230M-12.
/// Errors: kBadArgument naming what was found and what is known; class 3 (to 40 °C) and type B (from 600 °C) state no
/// tolerance at reflow temperatures and are refused.
Result<Tolerance> tolerance_of(std::string_view thermocouple);

/// One channel as the measures see it.
struct Subject {
  const run::Channel* channel = nullptr;
  Tolerance tolerance;
  double instrument_C = 1.0;  ///< half width
  double x_mm = 0;            ///< behind the leading edge
  bool air = false;           ///< left out of board measures
  bool bottom = false;        ///< known to sit on the bottom side
};

/// Where the board is, for the measures that need it; absent without oven and recipe.
struct Place {
  const oven::Oven* oven = nullptr;
  const oven::Recipe* recipe = nullptr;
  oven::Entry entry;
};

/// All values asked for of one channel, with uncertainties, in the order of `definitions`; work is shared between
/// the measures and the perturbations. Board measures in the list are a caller's bug.
std::vector<Value> evaluate(const Subject& subject, std::span<const Definition> definitions,
                            const std::optional<Place>& place);

/// The board measures asked for, over all channels that are valid and not air.
std::vector<Value> evaluate_board(std::span<const Subject> subjects, std::span<const Definition> definitions,
                                  const std::optional<Place>& place);

}  // namespace ovenwright::measure
