#pragma once
#include <functional>
#include <vector>

#include "core/tune/search.h"

namespace ovenwright::tune {

/// Recipes to search from besides `x`, the likeliest to help first: other belts with setpoints that go with them, and
/// other shapes of the rise. The landscape has valleys of its own for each: on a slow belt a low rise does what a high
/// one does on a fast belt; where a fall is what binds, the heat comes in the zones before the last and the last is the
/// first to cool; a soak can be one flat stretch or a slope.
std::vector<std::vector<double>> other_starts(const RecipeSpace& space, const std::vector<double>& x);

/// Whether the prediction's error leaves room for a pass: some error that all curves share, within its half width,
/// brings every limit to be held, where each result is off by up to half of its half width besides; what does not share
/// that error may be off by all of its own. So a joint that is too cold beside another that is too hot rules a pass out
/// although each alone may be off by as much. Boards that ran in one oven count as one: what they share is the oven.
bool may_pass(const Point& point);

/// One search: an aim, from where, and its goal.
struct Task {
  Aim aim;
  std::vector<double> start;
  Goal goal;
};

/// Runs searches two at a time, since one alone keeps two cores busy for little more than half of its time; the ends
/// stand in the order of the tasks and do not hang on the order in which they were found.
std::vector<Found> run_all(const Search& search, const std::vector<Task>& tasks, const std::vector<double>& now);

/// The best recipe of several searches.
struct Best {
  Found found;             ///< the most margin; where that is not inside at its band's edge, the surest found
  Point most_margin;       ///< the most margin, sure or not
  bool ruled_out = false;  ///< no end of any search leaves room for a pass (may_pass)
  bool cut_short = false;
};

/// Searches for the most margin from `now`, from `also`, and from other_starts: from a few of them where an end is
/// inside at its band's edge, from all where none is. Then, where no end keeps `reserve` at its band's edge, for the
/// recipe that is the surest, from the surest of the ends. Cost: 0.1 s for each start of a ten-zone oven
/// (docs/suggestions.md).
/// @param start     within the bounds of `space`
/// @param now       what changes are counted from
/// @param progress  how far it is; false stops the search
Best best_recipe(const Search& search, const RecipeSpace& space, const std::vector<double>& start,
                 const std::vector<double>& now, const std::vector<std::vector<double>>& also, double reserve,
                 const std::function<bool(double done)>& progress);

/// `x` within the bounds.
std::vector<double> clamped(const RecipeSpace& space, std::vector<double> x);

}  // namespace ovenwright::tune
