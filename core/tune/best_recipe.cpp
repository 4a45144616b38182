#include "core/tune/best_recipe.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <utility>

#include "core/units/parallel.h"

namespace ovenwright::tune {
namespace {

constexpr std::size_t kFewStarts = 4;    // where one of them is sure
constexpr std::size_t kSurestFrom = 3;   // ends from which the surest is searched
constexpr double kBeltSetpoints_C = 60;  // what a belt twice as fast asks of every setpoint, or one that stands of none

/// How the rise of a start differs from the present recipe's.
enum class Shape { kAsNow, kLastLow, kFlatSoak };
struct Start {
  double speed;  // times the present one
  Shape shape;
};
// In the order in which they helped on invented ovens of three kinds (docs/suggestions.md).
constexpr std::array kStarts{Start{0.8, Shape::kLastLow},  Start{0.8, Shape::kFlatSoak}, Start{0.8, Shape::kAsNow},
                             Start{0.6, Shape::kLastLow},  Start{1.25, Shape::kLastLow}, Start{0.6, Shape::kFlatSoak},
                             Start{1.0, Shape::kLastLow},  Start{0.6, Shape::kAsNow},    Start{1.25, Shape::kFlatSoak},
                             Start{0.45, Shape::kLastLow}, Start{1.25, Shape::kAsNow},   Start{0.45, Shape::kFlatSoak}};
constexpr double kLastLower_C = 50, kBeforeLastHigher_C = 10;
constexpr double kSoakFrom_C = 90, kSoakTo_C = 160, kSoakZones = 0.6;  // of the heating zones

/// The setpoints of a side, in place.
void shape_side(Shape shape, double shift_C, std::vector<double>& x, std::size_t first, std::size_t zones) {
  const double last_C = x[first + zones - 1] + shift_C;
  for (std::size_t z = 0; z < zones; ++z) x[first + z] += shift_C;
  if (shape == Shape::kLastLow && zones > 1) {
    x[first + zones - 1] -= kLastLower_C;
    x[first + zones - 2] += kBeforeLastHigher_C;
  }
  if (shape == Shape::kFlatSoak && zones > 1)
    for (std::size_t z = 0; z < zones; ++z) {
      const double place = static_cast<double>(z) / static_cast<double>(zones - 1);
      x[first + z] = place < kSoakZones
                         ? std::lerp(kSoakFrom_C, kSoakTo_C, place / kSoakZones) + shift_C
                         : std::lerp(kSoakTo_C + shift_C, last_C, (place - kSoakZones) / (1 - kSoakZones));
    }
}

/// By the margin at the band's edge where one of them passes there, else by the chance, else by half widths.
bool surer(const Point& a, const Point& b) {
  if (a.edge >= 0 || b.edge >= 0) return a.edge > b.edge;
  return std::pair{a.chance(), a.sure} > std::pair{b.chance(), b.sure};
}

}  // namespace

std::vector<Found> run_all(const Search& search, const std::vector<Task>& tasks, const std::vector<double>& now) {
  std::vector<Found> out(tasks.size());
  for_each_index(tasks.size(), std::min(2U, all_cores()),
                 [&](std::size_t i) { out[i] = search.run(tasks[i].aim, tasks[i].start, now, tasks[i].goal); });
  return out;
}

bool may_pass(const Point& point) {
  constexpr double own = 0.5;   // of a half width: what results are off by besides their common error
  double least = -1, most = 1;  // of the common error, half widths
  for (const auto& limit : point.limits) {
    const double half_width = std::max(limit.half_width, 1e-9);
    if (!limit.common) {
      if (limit.slack + half_width < 0) return false;
    } else if (limit.upper) {
      most = std::min(most, limit.slack / half_width + own);
    } else {
      least = std::max(least, -limit.slack / half_width - own);
    }
  }
  return least <= most;
}

std::vector<double> clamped(const RecipeSpace& space, std::vector<double> x) {
  for (std::size_t k = 0; k < x.size(); ++k) x[k] = std::clamp(x[k], space.lower()[k], space.upper()[k]);
  return x;
}

std::vector<std::vector<double>> other_starts(const RecipeSpace& space, const std::vector<double>& x) {
  std::vector<std::vector<double>> out;
  const std::size_t zones = space.zones();
  for (const Start& start : kStarts) {
    auto other = x;
    double& speed = other[space.speed()];
    speed = std::clamp(speed * start.speed, space.lower()[space.speed()], space.upper()[space.speed()]);
    const double shift_C = kBeltSetpoints_C * (speed / x[space.speed()] - 1);
    for (std::size_t first = 0; first + zones <= space.speed(); first += zones)
      shape_side(start.shape, shift_C, other, first, zones);
    other = clamped(space, std::move(other));
    if (other != x && std::ranges::find(out, other) == out.end()) out.push_back(std::move(other));
  }
  return out;
}

Best best_recipe(const Search& search, const RecipeSpace& space, const std::vector<double>& start,
                 const std::vector<double>& now, const std::vector<std::vector<double>>& also, double reserve,
                 const std::function<bool(double)>& progress) {
  Best out;
  const auto stopped = [&](double done) { return out.cut_short = out.cut_short || !progress(done); };
  auto starts = also;
  starts.insert(starts.begin(), start);
  for (auto& other : other_starts(space, start)) starts.push_back(std::move(other));

  std::vector<Found> ends;
  bool sure = false;
  for (std::size_t k = 0; k < starts.size() && !(sure && ends.size() >= kFewStarts); k += 2) {
    if (stopped(0.7 * static_cast<double>(k) / static_cast<double>(starts.size()))) break;
    std::vector<Task> tasks;
    for (std::size_t i = k; i < std::min(k + 2, starts.size()); ++i) tasks.push_back({Aim::kMostMargin, starts[i], {}});
    for (Found& end : run_all(search, tasks, now)) {
      sure = sure || (end.point.edge >= reserve && space.allows(end.point.x));
      ends.push_back(std::move(end));
    }
  }
  const auto cost = [&](const Found& end) {
    // What the oven does not allow is no end: a start may lie outside its limits between zones.
    return space.allows(end.point.x) ? search.cost(Aim::kMostMargin, end.point, now, {}) : kFree;
  };
  // Where some are inside at their band's edge, the most margin of those.
  const auto rank = [&](const Found& end) { return std::pair{sure && end.point.edge < reserve, cost(end)}; };
  if (ends.empty())
    out.found.point = search.at(start, true);
  else
    out.found = *std::ranges::min_element(ends, {}, rank);
  out.most_margin = out.found.point;
  if (stopped(0.7)) return out;
  if (out.found.point.margin < 0) {
    Found any = search.run(Aim::kMostMargin, out.found.point.x, now, {.any_falls = true});
    if (!any.cut_short && space.allows(any.point.x) && any.point.margin > out.found.point.margin)
      out.found = std::move(any);
  }
  out.most_margin = out.found.point;
  if (out.found.point.edge >= reserve || stopped(0.75)) return out;

  // Not sure: the surest, from the surest ends.
  std::erase_if(ends, [&](const Found& end) { return !space.allows(end.point.x); });
  std::ranges::sort(ends, [](const Found& a, const Found& b) { return surer(a.point, b.point); });
  const Found most_margin = out.found;
  const auto may = [](const Found& end) { return may_pass(end.point); };
  bool hope = may(most_margin) || std::ranges::any_of(ends, may);
  const auto keep_if_surer = [&](Found other) {
    if (other.cut_short || !space.allows(other.point.x)) return;
    hope = hope || may(other);
    if (other.point.margin >= 0 && surer(other.point, out.found.point)) out.found = std::move(other);
  };
  for (const auto& end : ends) keep_if_surer(end);
  if (most_margin.point.margin >= 0) {
    const Goal least{reserve, 0};
    for (Found& end :
         run_all(search, {{Aim::kLeastChange, start, least}, {Aim::kLeastChange, most_margin.point.x, least}}, now))
      keep_if_surer(std::move(end));
  }
  std::vector<std::vector<double>> from{out.found.point.x};
  for (const auto& end : ends)
    if (from.size() < kSurestFrom && end.point.x != from.front()) from.push_back(end.point.x);
  from.push_back(start);
  for (std::size_t k = 0; k < from.size(); k += 2) {
    if (out.found.point.edge >= reserve ||
        stopped(std::lerp(0.75, 1.0, static_cast<double>(k) / static_cast<double>(from.size()))))
      break;
    std::vector<Task> tasks;
    for (std::size_t i = k; i < std::min(k + 2, from.size()); ++i)
      tasks.push_back({Aim::kMostMargin, from[i], {.surest = true}});
    for (Found& end : run_all(search, tasks, now)) keep_if_surer(std::move(end));
  }
  out.ruled_out = !hope;
  return out;
}

}  // namespace ovenwright::tune
