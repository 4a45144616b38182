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
  std::vector<Aim> also;  ///< further aims that come to the same recipe
  oven::Recipe recipe;
  std::vector<Change> changes;
  std::vector<Forecast> predicted;  ///< one for each board
  double sure = 0;                  ///< half widths between the prediction and the tightest limit
  bool doubtful = false;            ///< the likeliest of those found, and not sure to pass: its sentence says so
  std::string sentence, caution;
};

/// A limit that cannot hold together with the others, and how far it alone would have to give.
struct Conflict {
  std::size_t board = 0;
  std::string requirement, trace;
  bool upper = false;
  double give = 0;  ///< in the unit, positive: outwards
  Unit unit = Unit::kCelsius;
  double limit = 0;
  std::optional<double> value;  ///< predicted at the best recipe
  bool peak = false;            ///< a placement's peak
};

struct Infeasible {
  std::string sentence;
  std::vector<Conflict> conflicts;
  double best_margin = 0;
  bool ruled_out =
      true;  ///< the error of no recipe found leaves room for a pass; false: undetermined, a run may show one
  oven::Recipe best;
};

/// The run worth making next: of the harmless changes tried, the one whose run is expected to leave the least doubt.
struct NextRun {
  oven::Recipe recipe;
  std::vector<Change> changes;      ///< from the present recipe
  std::vector<Forecast> predicted;  ///< one for each board
  std::size_t board = 0;            ///< what is in doubt at the best recipe: the result nearest to its limit's far side
  std::string requirement, trace;   ///< trace: empty for the board
  double half_width = 0, half_width_then = 0;  ///< of that result at the best recipe, 95 %: now, and after this run
  Unit unit = Unit::kCelsius;
  std::string sentence;
};

/// Boards that one recipe holds, where no recipe holds all of them.
struct Group {
  std::vector<std::size_t> boards;
  oven::Recipe recipe;
  std::vector<Change> changes;
  std::vector<Forecast> predicted;  ///< one for each of `boards`
};

struct Request {
  Freedom freedom;
  std::optional<double> at_margin;  ///< that fastest and coolest keep; default: half of the best margin, at most 0.2
  /// False stops the search. Called from one thread at a time, not always the same.
  std::function<bool(double done)> progress;
};

struct Report {
  /// Least change first where the present recipe does not pass; where that is not sure, the surest.
  std::vector<Suggestion> suggestions;
  std::vector<std::string> notes;  ///< aims without a suggestion of their own, and why
  std::optional<Infeasible> infeasible;
  std::optional<NextRun> next_run;  ///< where no recipe is sure to pass, or it is not sure that none does
  std::vector<Group> groups;        ///< several boards and no recipe for all: the fewest recipes that hold them
  bool fewest_groups = true;        ///< false: more than kExactBoards boards, groups found one board after the other
  std::string groups_sentence;      ///< empty without groups
  bool nothing_judged = false;      ///< a board of which no required result can be predicted: a note says so, no more
  bool cut_short = false;
};

/// Up to so many boards the groups are the fewest possible; beyond, each board joins the first group that holds it.
inline constexpr std::size_t kExactBoards = 6;

/// `now_passes`: the present recipe passes without condition, so that no least change is looked for.
/// Up to four recipes that are predicted to hold every required result of every board, or what stands against it.
/// A suggestion passes at the unfavourable edge of its band where any does. Cost: some 200 predictions.
Report tune(const heat::HeatModel& model, std::vector<Subject> boards, const oven::Recipe& now, bool now_passes,
            const Request& request);

/// A recipe as it is suggested: whole °C on both sides where a zone is moved, named after the present one.
oven::Recipe suggested_recipe(const oven::Recipe& now, oven::Recipe recipe, const std::string& what);

const char* aim_name(Aim aim);  ///< "least change", "most margin", "fastest", "coolest"

}  // namespace ovenwright::tune
