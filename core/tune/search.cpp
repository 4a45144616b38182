#include "core/tune/search.h"

#include <algorithm>
#include <cmath>
#include <thread>

#include "core/judge/judge.h"

namespace ovenwright::tune {
namespace {

constexpr double kNoValue = -20;   // margin of a required result without value
constexpr double kDifference = 1;  // step of the finite differences, variables' units
constexpr double kFirstRegion = 20, kLastRegion = 0.4, kMostRegion = 40;
constexpr int kMostSteps = 14;
constexpr double kShortfall = 1000;  // cost of a margin below the floor, per unit of margin
constexpr double kZoneMoved = 2;     // least change: moving a zone at all costs as much as 2 °C

/// Runs f(0 … n−1) on two threads at most.
template <class F>
void for_each_index(std::size_t n, F f) {
  if (std::thread::hardware_concurrency() < 2 || n < 2) {
    for (std::size_t i = 0; i < n; ++i) f(i);
    return;
  }
  std::jthread other([&] {
    for (std::size_t i = 1; i < n; i += 2) f(i);
  });
  for (std::size_t i = 0; i < n; i += 2) f(i);
}

}  // namespace

/// Derivatives of the limits' slack with respect to the variables: [limit · variables + variable].
struct Search::Linear {
  std::vector<double> slope;
};

Search::Search(const std::vector<Forecaster>& boards, const RecipeSpace& space, std::function<bool()> go_on)
    : boards_(boards), space_(space), go_on_(std::move(go_on)) {}

Point Search::at(const std::vector<double>& x, bool with_band) const {
  Point out;
  out.x = x;
  out.margin = out.edge = 1;
  const auto recipe = space_.recipe(x);
  for (std::size_t b = 0; b < boards_.size(); ++b) {
    const Forecast forecast = boards_[b].forecast(recipe, with_band);
    for (std::size_t i = 0; i < forecast.judgement.all_size(); ++i) {
      const auto& outcome = forecast.judgement.all(i);
      if (!outcome.required || (!outcome.lower && !outcome.upper)) continue;
      const auto target =
          judge::effective_target(outcome.lower, outcome.upper, outcome.target, outcome.measure.measure);
      for (const bool upper : {false, true}) {
        const auto& limit = upper ? outcome.upper : outcome.lower;
        if (!limit || !target) continue;
        Limit item{b, i, upper, std::abs(*limit - *target), 0, with_band ? forecast.half_width[i] : 0};
        item.slack = outcome.value.value ? (upper ? *limit - *outcome.value.value : *outcome.value.value - *limit)
                                         : kNoValue * item.scale;
        out.limits.push_back(item);
        out.margin = std::min(out.margin, item.margin());
        out.edge = std::min(out.edge, item.edge());
      }
    }
  }
  return out;
}

Search::Linear Search::linearise(const Point& point) const {
  const std::size_t n = space_.size();
  Linear out;
  out.slope.assign(point.limits.size() * n, 0.0);
  for_each_index(n, [&](std::size_t k) {
    if (space_.upper()[k] - space_.lower()[k] < 1e-9) return;
    auto x = point.x;
    const double step = x[k] + kDifference <= space_.upper()[k] ? kDifference : -kDifference;
    x[k] += step;
    const Point moved = at(x, false);
    if (moved.limits.size() != point.limits.size()) return;
    for (std::size_t i = 0; i < point.limits.size(); ++i)
      out.slope[i * n + k] = (moved.limits[i].slack - point.limits[i].slack) / step;
  });
  return out;
}

double Search::cost(Aim aim, const Point& point, const std::vector<double>& now, const Goal& goal) const {
  if (aim == Aim::kMostMargin) return -std::min(goal.most_at_edge ? point.edge : point.margin, 1.0);
  double sum = kShortfall * std::max({0.0, goal.edge - point.edge, goal.margin - point.margin});
  for (std::size_t k = 0; k < point.x.size(); ++k) {
    const double move = std::abs(point.x[k] - now[k]);
    if (aim == Aim::kLeastChange) sum += move > 1e-6 ? move + kZoneMoved : 0;
    if (aim == Aim::kCoolest && k != space_.speed()) sum += point.x[k];
  }
  if (aim == Aim::kFastest) sum -= point.x[space_.speed()];
  return sum;
}

Found Search::run(Aim aim, const std::vector<double>& start, const std::vector<double>& now, const Goal& goal) const {
  const std::size_t n = space_.size();
  const bool with_band = aim != Aim::kMostMargin || goal.most_at_edge;
  Found out;
  out.point = at(start, true);
  double best = cost(aim, out.point, now, goal), region = kFirstRegion;
  Linear linear = linearise(out.point);
  std::vector<double> reweight(n, 1.0);

  const auto program = [&](double within, std::vector<Limit>& limits) {
    // Variables: steps d, margin or shortfall m, and for the least change the moves |x + d − now|.
    LinearProgram lp;
    const std::size_t moves = aim == Aim::kLeastChange ? n : 0, columns = n + 1 + moves, m = n;
    lp.cost.assign(columns, 0.0);
    for (std::size_t k = 0; k < n; ++k) {
      lp.lower.push_back(std::clamp(space_.lower()[k] - out.point.x[k], -within, 0.0));
      lp.upper.push_back(std::clamp(space_.upper()[k] - out.point.x[k], 0.0, within));
    }
    if (aim == Aim::kMostMargin) {
      lp.lower.push_back(-kFree);
      lp.upper.push_back(1);
      lp.cost[m] = -1;
    } else {
      lp.lower.push_back(0);
      lp.upper.push_back(kFree);
      lp.cost[m] = kShortfall;
    }
    for (std::size_t k = 0; k < n; ++k) {
      if (aim == Aim::kCoolest && k != space_.speed()) lp.cost[k] = 1;
      if (aim == Aim::kFastest && k == space_.speed()) lp.cost[k] = -1;
    }
    limits = out.point.limits;
    for (std::size_t i = 0; i < limits.size(); ++i) {
      LinearProgram::Row row;
      row.weights.assign(columns, 0.0);
      for (std::size_t k = 0; k < n; ++k) row.weights[k] = linear.slope[i * n + k] / limits[i].scale;
      // margin: slack/scale + slope·d ≥ m; else edge and margin + slope·d + m ≥ their goals
      row.weights[m] = aim == Aim::kMostMargin ? -1 : 1;
      row.lower = aim == Aim::kMostMargin ? -(goal.most_at_edge ? limits[i].edge() : limits[i].margin())
                                          : std::max(goal.edge - limits[i].edge(), goal.margin - limits[i].margin());
      lp.rows.push_back(std::move(row));
    }
    for (const auto& own : space_.rows()) {
      LinearProgram::Row row;
      row.weights.assign(columns, 0.0);
      double at_x = 0;
      for (std::size_t k = 0; k < n; ++k) row.weights[k] = own.weights[k], at_x += own.weights[k] * out.point.x[k];
      row.lower = own.lower - at_x;
      row.upper = own.upper - at_x;
      lp.rows.push_back(std::move(row));
    }
    for (std::size_t k = 0; k < moves; ++k) {
      lp.lower.push_back(0);
      lp.upper.push_back(kFree);
      lp.cost[n + 1 + k] = reweight[k];
      for (const double sign : {1.0, -1.0}) {  // move ≥ ±(x + d − now)
        LinearProgram::Row row;
        row.weights.assign(columns, 0.0);
        row.weights[n + 1 + k] = 1;
        row.weights[k] = -sign;
        row.lower = sign * (out.point.x[k] - now[k]);
        lp.rows.push_back(std::move(row));
      }
    }
    return solve(lp);
  };

  std::vector<Limit> limits;
  for (int step = 0; step < kMostSteps && region > kLastRegion; ++step) {
    if (go_on_ && !go_on_()) {
      out.cut_short = true;
      return out;
    }
    const auto solution = program(region, limits);
    if (!solution.optimal) {
      region /= 2;
      continue;
    }
    auto x = out.point.x;
    double longest = 0;
    for (std::size_t k = 0; k < n; ++k) x[k] += solution.x[k], longest = std::max(longest, std::abs(solution.x[k]));
    Point next = at(x, with_band);
    const double reached = cost(aim, next, now, goal);
    if (reached < best - 1e-4) {
      out.point = std::move(next);
      best = reached;
      if (longest > 0.9 * region) region = std::min(kMostRegion, region * 1.5);
      linear = linearise(out.point);
      // Few zones rather than many: what hardly moved is made dear (reweighted l1, Candès, Wakin and Boyd 2008).
      for (std::size_t k = 0; k < n; ++k) reweight[k] = 1 + kZoneMoved / (std::abs(out.point.x[k] - now[k]) + 0.5);
    } else {
      region /= 3;
    }
  }

  // Whole numbers, then single steps of one unit while they help.
  Point whole = at(space_.rounded(out.point.x), true);
  double value = cost(aim, whole, now, goal);
  for (int pass = 0; pass < 6; ++pass) {
    std::optional<Point> better;
    for (std::size_t k = 0; k < n; ++k) {
      const double unit = k == space_.speed() ? 1 / RecipeSpace::kSpeedUnit_mm_per_min : 1;
      for (const double sign : {1.0, -1.0}) {
        auto x = whole.x;
        x[k] += sign * unit;
        if (!space_.allows(x)) continue;
        // The linear model first: only a step that it calls better is predicted.
        Point guess = whole;
        guess.x = x;
        guess.margin = guess.edge = 1;
        for (std::size_t i = 0; i < guess.limits.size(); ++i) {
          guess.limits[i].slack += sign * unit * linear.slope[i * n + k];
          guess.margin = std::min(guess.margin, guess.limits[i].margin());
          guess.edge = std::min(guess.edge, guess.limits[i].edge());
        }
        if (cost(aim, guess, now, goal) >= value - 1e-4) continue;
        Point tried = at(x, with_band);
        if (const double reached = cost(aim, tried, now, goal); reached < value - 1e-4) {
          value = reached;
          better = std::move(tried);
        }
      }
    }
    if (!better) break;
    whole = std::move(*better);
  }
  out.point = aim == Aim::kMostMargin ? at(whole.x, true) : std::move(whole);

  if (aim == Aim::kMostMargin) {
    const auto solution = program(kLastRegion * 2, limits);
    if (solution.optimal)
      for (std::size_t i = 0; i < limits.size(); ++i)
        if (solution.dual[i] > 1e-6) out.binding.push_back({limits[i], solution.dual[i]});
  }
  return out;
}

}  // namespace ovenwright::tune
