#pragma once
#include <optional>
#include <span>
#include <string>
#include <vector>

#include "core/board/board.h"
#include "core/judge/judgement.h"
#include "core/measure/measure.h"
#include "core/run/run.h"
#include "core/window/window.h"

namespace ovenwright::judge {

/// What is to be judged: outcomes complete but for what measuring and judging adds.
struct Bound {
  std::vector<Outcome> results, board_results;
  std::vector<std::string> warnings;
  bool bodies_not_judged = false, sides_not_judged = false;
};

/// Which requirement binds which trace, with its limits as numbers.
///
/// - Without a board every trace is a joint and its side is not known; with one, a channel that the board does not name
///   is a joint too. "all" is every trace that is not of kind `air`; a list of channels binds what it names (by name,
///   else by number), air included; "body" binds only what a board calls so.
/// - A requirement for a side binds the placements known to be on it: by the placement, else by its part.
/// - A limit, target or reference written as Tc exists for bodies alone. A joint is held to the other limit of such a
///   requirement if it has one; where the measure's reference is Tc, or no limit is left, it is not bound at all. A
///   body whose part has no thickness, volume or table is bound with a cause of kTcUnknown that says what to enter.
/// - Contacts with a wave are a bottom-side measure: a placement known to be on top is not bound.
/// - Board measures bind the board once.
/// - A channel that a requirement names and the log lacks gives a result without value: never a silent pass.
Bound bind_requirements(const run::Run& run, std::span<const window::ProcessWindow> windows, const board::Board* board);

/// The kind, side and position of a channel: from its placement and part, else a joint on no known side. For people it
/// is called by its name in the log; where that says nothing ("TC3", "channel 3", "4") and the board has a label, by
/// that.
struct Seat {
  const board::Placement* placement = nullptr;
  board::Kind kind = board::Kind::kJoint;
  std::optional<board::Side> side;
  double x_mm = 0;   ///< its own, else the board's middle, else 0
  std::string name;  ///< for people, see seat_of()
};
Seat seat_of(const run::Channel& channel, const board::Board* board);

/// A channel as the measures see it, with the tolerance of its own thermocouple, else of the window's. Where that is
/// not known K class 1 is taken, and `warning` says so.
struct SeatedSubject {
  measure::Subject subject;
  std::string warning;
};
SeatedSubject subject_of(const run::Channel& channel, const Seat& seat, const window::UncertaintyBudget& uncertainty);

}  // namespace ovenwright::judge
