#pragma once
#include <functional>
#include <vector>

#include "core/tune/search.h"
#include "core/tune/tune.h"

namespace ovenwright::tune {

/// Where recipes are searched for.
struct Ground {
  const std::vector<const Forecaster*>& boards;
  const RecipeSpace& space;
  const std::vector<double>&start, &now;
  std::function<bool()> go_on;  ///< false stops
};

/// The best recipe where only those limits count that cannot hold together: of the ones that bind at the best margin
/// each is left out in turn, the one that would have to give most first, and for good where the others still cannot
/// hold (a deletion filter, Chinneck and Dravnieks, ORSA Journal on Computing 3, 1991). By the same search, so a set is
/// smaller than it may be only where that misses a recipe. Cost: two searches for each limit that binds.
Found smallest_conflict(const Ground& ground, const Found& best);

/// The limits that bind, and how far each alone would have to give, the least first.
/// @param forecasts  of the best recipe, by board: what is predicted there
std::vector<Conflict> conflicts_of(const Found& found, const std::vector<Forecast>& forecasts);

}  // namespace ovenwright::tune
