#pragma once
#include <functional>
#include <optional>
#include <string>
#include <vector>

#include "core/tune/search.h"

namespace ovenwright::tune {

/// One setpoint or the speed, from the present recipe to the suggested one.
struct Change {
  std::string zone;                 ///< empty: the speed
  std::optional<board::Side> side;  ///< absent for the speed and for cooling zones
  double from = 0, to = 0;
};
std::vector<Change> changes(const oven::Oven& oven, const oven::Recipe& from, const oven::Recipe& to);

struct Suggestion {
  Aim aim = Aim::kLeastChange;
  oven::Recipe recipe;
  std::vector<Change> changes;
  std::vector<Forecast> predicted;  ///< one for each board
  std::string sentence, caution;
};

/// A limit that cannot hold together with the others, and how far it alone would have to give.
struct Conflict {
  std::size_t board = 0;
  std::string requirement, trace;
  bool upper = false;
  double give = 0;  ///< in the unit, positive: outwards
  Unit unit = Unit::kCelsius;
};

struct Infeasible {
  std::string sentence;
  std::vector<Conflict> conflicts;
  double best_margin = 0;
  oven::Recipe best;
};

struct Request {
  Freedom freedom;
  std::optional<double> at_margin;  ///< that fastest and coolest keep; default: half of the best margin, at most 0.2
  std::function<bool(double done)> progress;  ///< false stops the search
};

struct Report {
  std::vector<Suggestion> suggestions;  ///< least change first where the present recipe does not pass
  std::optional<Infeasible> infeasible;
  bool cut_short = false;
};

/// Up to four recipes that are predicted to hold every required result of every board, or what stands against it.
/// A suggestion passes at the unfavourable edge of its band where any does. Cost: some 200 predictions.
Report tune(const heat::HeatModel& model, std::vector<Subject> boards, const oven::Recipe& now, bool now_passes,
            const Request& request);

const char* aim_name(Aim aim);  ///< "least change", "most margin", "fastest", "coolest"

}  // namespace ovenwright::tune
