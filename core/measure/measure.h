#pragma once
#include <optional>
#include <span>
#include <string_view>
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
  /// False: an oven is given, but the log does not show the entry, so that positions are undetermined.
  bool entry_known = true;
};

/// What to work out besides the values.
struct Effort {
  bool uncertainty = true;  ///< false: values only (a trace with a bridged gap still needs it); terms stay 0
  unsigned threads = 1;     ///< for evaluate_all()
};

/// All values asked for of one channel, with uncertainties, in the order of `definitions`, which must be sound (see
/// problem()) with their defaults filled in and Tc turned into a number. Board measures in the list are a caller's bug.
/// A channel without a trace gives undetermined values that name its fault. Work is shared between the measures and
/// the perturbations. Cost: O(n) once for a trace; each further measure and perturbation looks only at the samples near
/// its levels. Thread-safe.
/// Source: the definitions are those of the project; the uncertainty follows JCGM 100:2008 with U = 2u.
std::vector<Value> evaluate(const Subject& subject, std::span<const Definition> definitions,
                            const std::optional<Place>& place, const Effort& effort = {});

/// The board measures asked for, over all channels that are valid and not air; each is perturbed by itself, and the
/// squares are summed. Undetermined where no channel is left. Thread-safe.
std::vector<Value> evaluate_board(std::span<const Subject> subjects, std::span<const Definition> definitions,
                                  const std::optional<Place>& place, const Effort& effort = {});

/// What is asked for of one channel in evaluate_all().
struct Request {
  Subject subject;
  std::vector<Definition> definitions;
};
struct AllValues {
  std::vector<std::vector<Value>> by_request;  ///< in the order of the requests
  std::vector<Value> board;
};
/// evaluate() for every request and evaluate_board() over all their subjects, on effort.threads threads. What both need
/// of a trace is found once.
AllValues evaluate_all(std::span<const Request> requests, std::span<const Definition> board_definitions,
                       const std::optional<Place>& place, const Effort& effort = {});

}  // namespace ovenwright::measure
