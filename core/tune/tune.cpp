#include "core/tune/tune.h"

#include <algorithm>
#include <cmath>

#include "core/tune/words.h"

namespace ovenwright::tune {
namespace {

constexpr double kReserve = 0.02;  // margin beyond the band's edge, for what rounding of a recipe costs
constexpr double kDefaultMargin = 0.2;

std::vector<Forecaster> forecasters(const heat::HeatModel& model, std::vector<Subject> boards) {
  std::vector<Forecaster> out;
  for (auto& board : boards) out.emplace_back(model, std::move(board));
  return out;
}

std::vector<Conflict> conflicts_of(const Found& found, const std::vector<Forecast>& forecasts) {
  std::vector<Conflict> out;
  for (const auto& [limit, weight] : found.binding) {
    const auto& outcome = forecasts[limit.board].judgement.all(limit.outcome);
    // The multiplier says how much margin a unit of relief buys: from the best margin to none it takes −margin/weight.
    out.push_back({limit.board, outcome.requirement_name, outcome.trace, limit.upper,
                   -found.point.margin * limit.scale / weight, outcome.value.unit});
  }
  std::ranges::sort(out, {}, &Conflict::give);
  return out;
}

}  // namespace

const char* aim_name(Aim aim) {
  switch (aim) {
    case Aim::kLeastChange:
      return "least change";
    case Aim::kMostMargin:
      return "most margin";
    case Aim::kFastest:
      return "fastest";
    case Aim::kCoolest:
      return "coolest";
  }
  return "";
}

std::vector<Change> changes(const oven::Oven& oven, const oven::Recipe& from, const oven::Recipe& to) {
  std::vector<Change> out;
  std::size_t z = 0;
  for (const auto& zone : oven.zones) {
    if (zone.kind != oven::ZoneKind::kHeat) continue;
    if (from.top_C[z] != to.top_C[z]) out.push_back({zone.name, board::Side::kTop, from.top_C[z], to.top_C[z]});
    if (from.bottom_C[z] != to.bottom_C[z])
      out.push_back({zone.name, board::Side::kBottom, from.bottom_C[z], to.bottom_C[z]});
    ++z;
  }
  z = 0;
  for (const auto& zone : oven.zones) {
    if (zone.kind != oven::ZoneKind::kCool) continue;
    if (z < std::min(from.cooling_C.size(), to.cooling_C.size()) && from.cooling_C[z] != to.cooling_C[z])
      out.push_back({zone.name, std::nullopt, from.cooling_C[z], to.cooling_C[z]});
    ++z;
  }
  if (from.speed_mm_per_min != to.speed_mm_per_min)
    out.push_back({"", std::nullopt, from.speed_mm_per_min, to.speed_mm_per_min});
  return out;
}

Report tune(const heat::HeatModel& model, std::vector<Subject> boards, const oven::Recipe& now, bool now_passes,
            const Request& request) {
  Report report;
  const auto forecaster = forecasters(model, std::move(boards));
  const RecipeSpace space(model.problem.oven, now, request.freedom);
  double done = 0;
  bool stopped = false;
  const auto go_on = [&] { return !(stopped = stopped || (request.progress && !request.progress(done))); };
  const Search search(forecaster, space, go_on);

  const auto x_now = space.vector(now);
  auto start = x_now;
  start.back() = std::clamp(start.back(), space.lower().back(), space.upper().back());
  Found best = search.run(Aim::kMostMargin, start, x_now, {});
  // From elsewhere where this end is bad: the landscape has kinks where a trace stops reaching a level.
  for (const double speed : {0.8, 1.2}) {
    if (best.point.margin >= 0 || stopped) break;
    auto x = start;
    x.back() = std::clamp(x.back() * speed, space.lower().back(), space.upper().back());
    Found other = search.run(Aim::kMostMargin, x, x_now, {});
    if (other.point.margin > best.point.margin) best = std::move(other);
  }
  done = 0.4;
  if (stopped) {
    report.cut_short = true;
    return report;
  }

  const auto forecasts = [&](const oven::Recipe& recipe) {
    std::vector<Forecast> out;
    for (const auto& f : forecaster) out.push_back(f.forecast(recipe, true));
    return out;
  };
  if (best.point.margin < 0) {
    Infeasible infeasible;
    infeasible.best = space.recipe(best.point.x);
    infeasible.best_margin = best.point.margin;
    infeasible.conflicts = conflicts_of(best, forecasts(infeasible.best));
    infeasible.sentence = infeasible_sentence(infeasible);
    report.infeasible = std::move(infeasible);
    return report;
  }

  // A recipe that passes at the unfavourable edge of its band, where there is one, rather than the most margin as
  // predicted.
  if (best.point.edge < kReserve)
    for (const auto& from : {best.point.x, start}) {
      Found other = search.run(Aim::kMostMargin, from, x_now, {0, 0, true});
      if (!other.cut_short && other.point.margin >= 0 && other.point.edge > best.point.edge) best = std::move(other);
      if (best.point.edge >= kReserve) break;
    }

  const double kept = request.at_margin ? *request.at_margin : std::min(kDefaultMargin, best.point.margin / 2);
  const auto suggest = [&](Aim aim, const Found& found) {
    Suggestion suggestion;
    suggestion.aim = aim;
    suggestion.recipe = space.recipe(found.point.x);
    suggestion.recipe.identity = {};
    suggestion.recipe.identity.name = now.identity.name + ", " + aim_name(aim);
    suggestion.recipe.identity.source =
        "suggested from " + now.identity.name + "; a prediction, to be confirmed with an instrumented run";
    suggestion.changes = changes(model.problem.oven, now, suggestion.recipe);
    if (suggestion.changes.empty()) return;
    const bool known = std::ranges::any_of(report.suggestions, [&](const Suggestion& s) {
      return s.changes.size() == suggestion.changes.size() && s.recipe.top_C == suggestion.recipe.top_C &&
             s.recipe.bottom_C == suggestion.recipe.bottom_C &&
             s.recipe.speed_mm_per_min == suggestion.recipe.speed_mm_per_min;
    });
    if (known) return;
    suggestion.predicted = forecasts(suggestion.recipe);
    suggestion.sentence = suggestion_sentence(model.problem.oven, suggestion);
    suggestion.caution = kCaution;
    report.suggestions.push_back(std::move(suggestion));
  };
  for (const Aim aim : {Aim::kLeastChange, Aim::kMostMargin, Aim::kFastest, Aim::kCoolest}) {
    if (aim == Aim::kMostMargin) {
      suggest(aim, best);
      continue;
    }
    if (aim == Aim::kLeastChange && now_passes) continue;
    if (aim == Aim::kFastest && request.freedom.keep_speed) continue;
    const Goal goal{kReserve, aim == Aim::kLeastChange ? 0 : kept};
    // Both ends: from the present recipe a small change, from the best margin a feasible way.
    Found found = search.run(aim, start, x_now, goal);
    if (aim != Aim::kLeastChange || found.point.edge < goal.edge - 1e-6) {
      Found other = search.run(aim, best.point.x, x_now, goal);
      if (search.cost(aim, other.point, x_now, goal) < search.cost(aim, found.point, x_now, goal))
        found = std::move(other);
    }
    done += 0.2;
    if (stopped) {
      report.cut_short = true;
      break;
    }
    if (found.point.margin >= 0) suggest(aim, found);
  }
  return report;
}

}  // namespace ovenwright::tune
