#pragma once
#include <algorithm>
#include <functional>
#include <map>
#include <memory>
#include <mutex>
#include <optional>
#include <vector>

#include "core/tune/forecast.h"
#include "core/tune/recipe_space.h"

namespace ovenwright::tune {

enum class Aim { kLeastChange, kMostMargin, kFastest, kCoolest };

/// One limit of one required result on one board, as a number that must not be negative.
struct Limit {
  std::size_t board = 0, outcome = 0;
  bool upper = false;
  double scale = 1;     ///< |limit − target|: slack / scale is the margin
  bool common = false;  ///< a placement's peak or a time above a level: off by the error that its board's curves share
  /// Errors of rises and of falls are errors of their own.
  enum class Kind { kLevel, kRise, kFall } kind = Kind::kLevel;
  bool same(const Limit& other) const {
    return board == other.board && outcome == other.outcome && upper == other.upper;
  }
  double slack = 0;  ///< distance to the limit, positive inside
  double half_width =
      0;  ///< of the prediction, 95 %; under a guarded rule at least U, which a pass keeps off the limit
  double margin() const { return slack / scale; }
  /// The room that is left when so many half widths are taken off, as a margin.
  double room(double half_widths) const { return (slack - half_widths * half_width) / scale; }
  /// That at the unfavourable edge of the half width.
  double edge() const { return room(1); }
  /// How many half widths lie between the prediction and the limit.
  double sure() const { return slack / std::max(half_width, kLeastHalfWidth * scale); }
  static constexpr double kLeastHalfWidth = 1e-3;  // of the scale
};

/// A recipe with what it is predicted to do.
struct Point {
  std::vector<double> x;
  std::vector<Limit> limits;
  double margin = 0;  ///< smallest of the limits' margins; very negative where a required result has no value
  double edge = 0;    ///< smallest of their margins at the unfavourable edge
  double sure = 0;    ///< smallest number of half widths to a limit
  /// That all limits hold of the board that is least likely to: of each kind's by one common error, and the kinds'
  /// chances multiply.
  /// As Forecast::pass_probability states it, but for what a log does not show.
  double chance() const;
};

/// The multipliers at the best margin: which limits hold it down, and how hard.
struct Binding {
  Limit limit;
  double weight = 0;  ///< they sum to 1
};

/// What an aim must keep; for the most margin, what it is.
struct Goal {
  double edge = 0;         ///< room inside when `half_widths` are taken off
  double margin = 0;       ///< margin as predicted
  bool surest = false;     ///< kMostMargin: the most half widths to the nearest limit, in place of the most margin
  bool any_falls = false;  ///< kMostMargin: whatever zones do to each other, as where the most is to be proven
  double half_widths = 1;
};

struct Found {
  Point point;
  std::vector<Binding> binding;
  bool cut_short = false;
};

/// Searches recipes by a sequence of linear programs: predicted values are linearised in setpoints and speed (finite
/// differences over the model), limits are linear in the values, so the best margin within a trust region is exact; a
/// step is kept where the true prediction improves. Whole °C and mm/min at the end, mended one unit at a time.
/// Predictions and slopes are kept, so that aims which start at the same recipe share them; between bands worked out
/// every few °C of change a limit keeps its half width. Thread-safe.
class Search {
 public:
  /// What is searched for: recipes that pass by the windows' own rules, or whose values are inside the limits as they
  /// stand (a conditional pass, where a rule is guarded).
  enum class Limits { kByRule, kAsStated };

  /// `boards` and `space` must outlive the search.
  /// @param only  limits that count, by board, outcome and side; empty: all
  Search(std::vector<const Forecaster*> boards, const RecipeSpace& space, std::function<bool()> go_on,
         Limits limits = Limits::kByRule, std::vector<Limit> only = {});
  /// Whether some window's rule is guarded, and that is searched by.
  bool guards() const { return guards_; }
  /// The recipe for an aim, from `start`; `goal` does not matter to kMostMargin.
  Found run(Aim aim, const std::vector<double>& start, const std::vector<double>& now, const Goal& goal) const;
  /// What the aim minimises; a missed goal costs far more than anything else. A zone set below the one before it, where
  /// it is not now, costs a little in every aim: zones heat and do not cool, so such a recipe may not hold. Where being
  /// sure is the aim that only tells recipes apart that are equally sure.
  double cost(Aim aim, const Point& point, const std::vector<double>& now, const Goal& goal) const;
  Point at(const std::vector<double>& x, bool with_band) const;

 private:
  struct Linear;
  std::shared_ptr<const Linear> linearise(const Point& point) const;
  Point predicted(const std::vector<double>& x, bool with_band) const;
  bool needs_band(Aim aim, const Goal& goal) const;
  LinearSolution program(Aim aim, const Goal& goal, const Point& point, const Linear& linear,
                         const std::vector<double>& now, const std::vector<double>& reweight, double within) const;
  /// Whole numbers, then single steps of one unit while they help.
  Point whole(Aim aim, const Goal& goal, const Point& point, const Linear& linear,
              const std::vector<double>& now) const;
  std::vector<const Forecaster*> boards_;
  const RecipeSpace& space_;
  std::function<bool()> go_on_;
  bool guards_ = false;
  std::vector<Limit> only_;
  mutable std::mutex mutex_;
  mutable std::map<std::vector<double>, Point> points_[2];  ///< without and with band
  mutable std::map<std::vector<double>, std::shared_ptr<const Linear>> linear_;
};

}  // namespace ovenwright::tune
