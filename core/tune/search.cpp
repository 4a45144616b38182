#include "core/tune/search.h"

#include <algorithm>
#include <array>
#include <cmath>

#include "core/judge/judge.h"
#include "core/units/parallel.h"

namespace ovenwright::tune {
namespace {

constexpr double kNoValue = -20;   // margin of a required result without value
constexpr double kDifference = 1;  // step of the finite differences, variables' units
constexpr double kFirstRegion = 20, kLastRegion = 0.4, kMostRegion = 40;
constexpr int kMostSteps = 18, kMostPasses = 40;
constexpr std::size_t kTriesAPass = 5;
constexpr double kShortfall = 4000;   // cost of a margin below the floor, per unit of margin
constexpr double kZoneMoved = 2;      // least change: moving a zone at all costs as much as 2 °C
constexpr double kSmallMove = 3;      // least change: such a move is not worth a zone
constexpr double kBandReach = 4;      // how far a half width holds, variables' units
constexpr double kSlopeReach = 2;     // how far slopes hold
constexpr double kWorthwhile = 1e-4;  // of the cost
constexpr double kSureEnough = 2;     // half widths: four standard deviations

/// What a fall of 1 °C from one heating zone to the next costs, beyond the falls of the present recipe.
double fall_cost(Aim aim, const Goal& goal) {
  switch (aim) {
    case Aim::kMostMargin:
      if (goal.any_falls) return 0;
      return goal.surest ? 0.0005 : 0.002;  // half widths; of margin
    case Aim::kLeastChange:
      return 0.5;  // °C of change
    case Aim::kFastest:
      return 0.05;  // units of speed
    case Aim::kCoolest:
      return 0.5;  // °C of setpoints
  }
  return 0;
}

/// What may fall for nothing: as much as in the present recipe, and a little into the last zone, which has a hot
/// neighbour on one side alone.
double free_fall_C(const RecipeSpace::Neighbours& pair, const std::vector<double>& now) {
  constexpr double into_last_C = 20;
  return std::max(pair.last ? into_last_C : 0, now[pair.before] - now[pair.after]);
}

/// Falls along the oven beyond that, °C in all.
double falls(const RecipeSpace& space, const std::vector<double>& x, const std::vector<double>& now) {
  double sum = 0;
  for (const auto& pair : space.neighbours())
    sum += std::max(0.0, x[pair.before] - x[pair.after] - free_fall_C(pair, now));
  return sum;
}

double farthest(const std::vector<double>& a, const std::vector<double>& b) {
  double out = 0;
  for (std::size_t k = 0; k < a.size(); ++k) out = std::max(out, std::abs(a[k] - b[k]));
  return out;
}

/// Margin, edge and sureness by the limits.
Point weighed(Point point) {
  point.margin = point.edge = 1;
  point.sure = kSureEnough;
  for (const auto& limit : point.limits) {
    point.margin = std::min(point.margin, limit.margin());
    point.edge = std::min(point.edge, limit.edge());
    point.sure = std::min(point.sure, limit.sure());
  }
  return point;
}

/// The half widths of a point nearby.
Point with_widths(Point point, const Point& nearby) {
  if (point.limits.size() == nearby.limits.size())
    for (std::size_t i = 0; i < point.limits.size(); ++i) point.limits[i].half_width = nearby.limits[i].half_width;
  return weighed(std::move(point));
}

/// Whether a result moves one way with the error that all curves of a board share.
bool shares_the_error(const judge::Outcome& outcome) {
  using measure::Measure;
  const auto what = outcome.measure.measure;
  return outcome.channel && (what == Measure::kPeak || what == Measure::kTimeAbove || what == Measure::kAreaAbove);
}

Limit::Kind kind_of(const judge::Outcome& outcome) {
  if (outcome.value.unit != Unit::kCelsiusPerSecond) return Limit::Kind::kLevel;
  return is_fall(outcome) ? Limit::Kind::kFall : Limit::Kind::kRise;
}

bool is_guarded(const window::ProcessWindow& window) { return window.decision_rule == window::DecisionRule::kGuarded; }

}  // namespace

double Point::chance() const {
  std::map<std::pair<std::size_t, Limit::Kind>, std::array<double, 2>> rooms;  // below, above; standard deviations
  for (const auto& limit : limits) {
    auto& room =
        rooms.try_emplace({limit.board, limit.kind}, std::array{kFree, kFree}).first->second[limit.upper ? 1 : 0];
    room = std::min(room, kCoverage * limit.slack / std::max(limit.half_width, 1e-9));
  }
  std::map<std::size_t, double> boards;
  for (const auto& [key, room] : rooms)
    boards.try_emplace(key.first, 1.0).first->second *=
        std::max(0.0, normal_probability(room[0]) + normal_probability(room[1]) - 1);
  double out = 1;
  for (const auto& [board, chance] : boards) out = std::min(out, chance);
  return out;
}

/// Derivatives of the limits' slack with respect to the variables: [limit · variables + variable].
struct Search::Linear {
  std::vector<double> slope;
};

Search::Search(std::vector<const Forecaster*> boards, const RecipeSpace& space, std::function<bool()> go_on,
               Limits limits, std::vector<Limit> only)
    : boards_(std::move(boards)), space_(space), go_on_(std::move(go_on)), only_(std::move(only)) {
  guards_ = limits == Limits::kByRule && std::ranges::any_of(boards_, [](const Forecaster* board) {
              return std::ranges::any_of(board->subject().windows, is_guarded);
            });
}

/// The uncertainty that a guarded rule keeps off a limit is worked out where the band is.
bool Search::needs_band(Aim aim, const Goal& goal) const { return aim != Aim::kMostMargin || goal.surest || guards_; }

Point Search::at(const std::vector<double>& x, bool with_band) const {
  auto& known = points_[with_band ? 1 : 0];
  {
    const std::scoped_lock lock(mutex_);
    if (const auto found = known.find(x); found != known.end()) return found->second;
  }
  Point out = predicted(x, with_band);
  const std::scoped_lock lock(mutex_);
  return known.emplace(x, std::move(out)).first->second;
}

Point Search::predicted(const std::vector<double>& x, bool with_band) const {
  Point out;
  out.x = x;
  const auto recipe = space_.recipe(x);
  for (std::size_t b = 0; b < boards_.size(); ++b) {
    const Detail detail = !with_band ? Detail::kValues : guards_ ? Detail::kJudgedAndBand : Detail::kValuesAndBand;
    const Forecast forecast = boards_[b]->forecast(recipe, detail);
    for (std::size_t i = 0; i < forecast.judgement.all_size(); ++i) {
      const auto& outcome = forecast.judgement.all(i);
      if (!outcome.required || (!outcome.lower && !outcome.upper)) continue;
      const auto target =
          judge::effective_target(outcome.lower, outcome.upper, outcome.target, outcome.measure.measure);
      for (const bool upper : {false, true}) {
        const auto& limit = upper ? outcome.upper : outcome.lower;
        if (!limit || !target) continue;
        Limit item{b, i, upper, std::abs(*limit - *target), shares_the_error(outcome), kind_of(outcome)};
        if (!only_.empty() && std::ranges::none_of(only_, [&](const Limit& one) { return one.same(item); })) continue;
        if (with_band) item.half_width = forecast.half_width[i];
        // A pass by the rule keeps U off the limit, and a sure one the prediction's half width: the larger counts.
        if (guards_ && with_band && is_guarded(forecast.judgement.windows[outcome.window]))
          item.half_width = std::max(item.half_width, outcome.value.expanded_uncertainty.value_or(0));
        item.slack = outcome.value.value ? (upper ? *limit - *outcome.value.value : *outcome.value.value - *limit)
                                         : kNoValue * item.scale;
        out.limits.push_back(item);
      }
    }
  }
  return weighed(std::move(out));
}

std::shared_ptr<const Search::Linear> Search::linearise(const Point& point) const {
  {
    const std::scoped_lock lock(mutex_);
    if (const auto found = linear_.find(point.x); found != linear_.end()) return found->second;
  }
  const std::size_t n = space_.size();
  auto out = std::make_shared<Linear>();
  out->slope.assign(point.limits.size() * n, 0.0);
  for_each_index(n, std::min(2U, all_cores()), [&](std::size_t k) {
    if (space_.upper()[k] - space_.lower()[k] < 1e-9) return;
    auto x = point.x;
    const double step = x[k] + kDifference <= space_.upper()[k] ? kDifference : -kDifference;
    x[k] += step;
    const Point moved = predicted(x, false);
    if (moved.limits.size() != point.limits.size()) return;
    for (std::size_t i = 0; i < point.limits.size(); ++i)
      out->slope[i * n + k] = (moved.limits[i].slack - point.limits[i].slack) / step;
  });
  const std::scoped_lock lock(mutex_);
  return linear_.emplace(point.x, std::move(out)).first->second;
}

double Search::cost(Aim aim, const Point& point, const std::vector<double>& now, const Goal& goal) const {
  const double plain = fall_cost(aim, goal) * falls(space_, point.x, now);
  if (aim == Aim::kMostMargin) return plain - (goal.surest ? point.sure : std::min(point.margin, 1.0));
  double missing = std::max(0.0, goal.margin - point.margin);
  for (const auto& limit : point.limits) missing = std::max(missing, goal.edge - limit.room(goal.half_widths));
  double sum = plain + kShortfall * missing;
  for (std::size_t k = 0; k < point.x.size(); ++k) {
    const double move = std::abs(point.x[k] - now[k]);
    if (aim == Aim::kLeastChange) sum += move > 1e-6 ? move + kZoneMoved : 0;
    if (aim == Aim::kCoolest && k != space_.speed()) sum += point.x[k];
  }
  if (aim == Aim::kFastest) sum -= point.x[space_.speed()];
  return sum;
}

LinearSolution Search::program(Aim aim, const Goal& goal, const Point& point, const Linear& linear,
                               const std::vector<double>& now, const std::vector<double>& reweight,
                               double within) const {
  // Variables: steps d, margin or shortfall m, falls between neighbours, and for the least change the moves |x + d −
  // now|.
  const std::size_t n = space_.size();
  LinearProgram lp;
  const auto& neighbours = space_.neighbours();
  const std::size_t moves = aim == Aim::kLeastChange ? n : 0, columns = n + 1 + neighbours.size() + moves, m = n;
  const std::size_t first_fall = n + 1, first_move = first_fall + neighbours.size();
  lp.cost.assign(columns, 0.0);
  for (std::size_t k = 0; k < n; ++k) {
    lp.lower.push_back(std::clamp(space_.lower()[k] - point.x[k], -within, 0.0));
    lp.upper.push_back(std::clamp(space_.upper()[k] - point.x[k], 0.0, within));
  }
  if (aim == Aim::kMostMargin) {
    lp.lower.push_back(-kFree);
    lp.upper.push_back(goal.surest ? kSureEnough : 1);
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
  for (std::size_t i = 0; i < point.limits.size(); ++i) {
    const Limit& limit = point.limits[i];
    LinearProgram::Row row;
    row.weights.assign(columns, 0.0);
    for (std::size_t k = 0; k < n; ++k) row.weights[k] = linear.slope[i * n + k] / limit.scale;
    // margin: slack/scale + slope·d ≥ m, or m half widths; else room and margin + slope·d + m ≥ their goals
    if (aim != Aim::kMostMargin) {
      row.weights[m] = 1;
      row.lower = std::max(goal.edge - limit.room(goal.half_widths), goal.margin - limit.margin());
    } else if (goal.surest) {
      row.weights[m] = -std::max(limit.half_width / limit.scale, Limit::kLeastHalfWidth);
      row.lower = -limit.room(0);
    } else {
      row.weights[m] = -1;
      row.lower = -limit.margin();
    }
    lp.rows.push_back(std::move(row));
  }
  for (const auto& own : space_.rows()) {
    LinearProgram::Row row;
    row.weights.assign(columns, 0.0);
    double at_x = 0;
    for (std::size_t k = 0; k < n; ++k) row.weights[k] = own.weights[k], at_x += own.weights[k] * point.x[k];
    row.lower = own.lower - at_x;
    row.upper = own.upper - at_x;
    lp.rows.push_back(std::move(row));
  }
  for (std::size_t f = 0; f < neighbours.size(); ++f) {
    const auto& pair = neighbours[f];
    lp.lower.push_back(0);
    lp.upper.push_back(kFree);
    lp.cost[first_fall + f] = fall_cost(aim, goal);
    LinearProgram::Row row;  // fall ≥ (x + d)[a] − (x + d)[b] − what falls now
    row.weights.assign(columns, 0.0);
    row.weights[first_fall + f] = 1;
    row.weights[pair.before] = -1;
    row.weights[pair.after] = 1;
    row.lower = point.x[pair.before] - point.x[pair.after] - free_fall_C(pair, now);
    lp.rows.push_back(std::move(row));
  }
  for (std::size_t k = 0; k < moves; ++k) {
    lp.lower.push_back(0);
    lp.upper.push_back(kFree);
    lp.cost[first_move + k] = reweight[k];
    for (const double sign : {1.0, -1.0}) {  // move ≥ ±(x + d − now)
      LinearProgram::Row row;
      row.weights.assign(columns, 0.0);
      row.weights[first_move + k] = 1;
      row.weights[k] = -sign;
      row.lower = sign * (point.x[k] - now[k]);
      lp.rows.push_back(std::move(row));
    }
  }
  return solve(lp);
}

Point Search::whole(Aim aim, const Goal& goal, const Point& point, const Linear& linear,
                    const std::vector<double>& now) const {
  const std::size_t n = space_.size();
  const bool with_band = needs_band(aim, goal);
  Point out = at(space_.rounded(point.x), with_band);
  double value = cost(aim, out, now, goal);
  struct Step {
    std::vector<double> x;
    double guessed;
  };
  for (int pass = 0; pass < kMostPasses; ++pass) {
    // The linear model first: only steps that it calls better are predicted, the best of them first.
    std::vector<Step> steps;
    const auto consider = [&](std::initializer_list<std::pair<std::size_t, double>> moves) {
      Point guess = out;
      for (const auto& [k, by] : moves) {
        guess.x[k] += by;
        for (std::size_t i = 0; i < guess.limits.size(); ++i) guess.limits[i].slack += by * linear.slope[i * n + k];
      }
      if (!space_.allows(guess.x)) return;
      guess = weighed(std::move(guess));
      const double guessed = cost(aim, guess, now, goal);
      if (guessed < value - kWorthwhile) steps.push_back({std::move(guess.x), guessed});
    };
    for (std::size_t k = 0; k < n; ++k)
      for (const double sign : {1.0, -1.0}) {
        const auto unit = [&](std::size_t i) {
          return i == space_.speed() ? 1 / RecipeSpace::kSpeedUnit_mm_per_min : 1;
        };
        consider({{k, sign * unit(k)}});
        // A move that is hardly one goes, and another one takes its place.
        const double back = now[k] - out.x[k];
        if (aim != Aim::kLeastChange || back == 0 || std::abs(back) > kSmallMove) continue;
        for (std::size_t other = 0; other < n; ++other)
          if (other != k && out.x[other] != now[other]) consider({{k, back}, {other, sign * unit(other)}});
      }
    std::ranges::sort(steps, {}, &Step::guessed);
    if (steps.size() > kTriesAPass) steps.resize(kTriesAPass);
    const bool better = std::ranges::any_of(steps, [&](const Step& step) {
      Point tried = at(step.x, false);
      if (with_band) tried = with_widths(std::move(tried), out);
      const double reached = cost(aim, tried, now, goal);
      if (reached >= value - kWorthwhile) return false;
      value = reached;
      out = std::move(tried);
      return true;
    });
    if (better) continue;
    // The band where it has come to: it may have grown on the way.
    out = at(out.x, true);
    const double with_its_band = cost(aim, out, now, goal);
    if (with_its_band <= value + kWorthwhile) break;
    value = with_its_band;
  }
  out = at(out.x, true);
  if (aim != Aim::kLeastChange) return out;
  // What was moved by a degree or two goes back where the reserve is enough without it.
  for (std::size_t k = 0; k < n; ++k) {
    if (out.x[k] == now[k] || k == space_.speed() || std::abs(out.x[k] - now[k]) > kSmallMove) continue;
    auto x = out.x;
    x[k] = now[k];
    if (!space_.allows(x)) continue;
    Point without = at(x, true);
    // The reserve may give a little for it, the rest of the goal nothing.
    const auto room_of = [&](const Point& one) {
      double room = kFree;
      for (const auto& limit : one.limits) room = std::min(room, limit.room(goal.half_widths));
      return room;
    };
    if (room_of(without) >= std::min(0.0, room_of(out)) && without.margin >= goal.margin) out = std::move(without);
  }
  return out;
}

Found Search::run(Aim aim, const std::vector<double>& start, const std::vector<double>& now, const Goal& goal) const {
  const std::size_t n = space_.size();
  const bool with_band = needs_band(aim, goal);
  Found out;
  out.point = at(start, with_band);
  double best = cost(aim, out.point, now, goal), region = kFirstRegion;
  auto band_at = start, slopes_at = start;
  auto linear = linearise(out.point);
  std::vector<double> reweight(n, 1.0);

  for (int step = 0; step < kMostSteps && region > kLastRegion; ++step) {
    if (go_on_ && !go_on_()) {
      out.cut_short = true;
      return out;
    }
    const auto solution = program(aim, goal, out.point, *linear, now, reweight, region);
    if (!solution.optimal) {
      region /= 2;
      continue;
    }
    const auto stepped = [&](const LinearSolution& by) {
      auto x = out.point.x;
      for (std::size_t k = 0; k < n; ++k) x[k] += by.x[k];
      return x;
    };
    auto x = stepped(solution);
    bool new_band = with_band && farthest(x, band_at) > kBandReach;
    Point next = new_band ? at(x, true) : with_widths(at(x, false), out.point);
    double reached = cost(aim, next, now, goal);
    if (reached >= best - kWorthwhile && next.limits.size() == out.point.limits.size()) {
      // What bends on the way is put right by a second look at the same slopes (a second-order correction).
      Point bent = next;
      bent.x = out.point.x;
      for (std::size_t i = 0; i < bent.limits.size(); ++i)
        for (std::size_t k = 0; k < n; ++k) bent.limits[i].slack -= linear->slope[i * n + k] * solution.x[k];
      const auto again = program(aim, goal, bent, *linear, now, reweight, region);
      if (again.optimal) {
        auto corrected = stepped(again);
        const bool its_band = with_band && farthest(corrected, band_at) > kBandReach;
        Point other = its_band ? at(corrected, true) : with_widths(at(corrected, false), out.point);
        const double its_cost = cost(aim, other, now, goal);
        if (its_cost < reached) {
          x = std::move(corrected);
          new_band = its_band;
          next = std::move(other);
          reached = its_cost;
        }
      }
    }
    const double longest = farthest(x, out.point.x);
    if (reached < best - kWorthwhile) {
      out.point = std::move(next);
      best = reached;
      if (new_band) band_at = x;
      if (longest > 0.9 * region) region = std::min(kMostRegion, region * 1.5);
      if (farthest(x, slopes_at) > kSlopeReach) {
        linear = linearise(out.point);
        slopes_at = x;
      }
      // Few zones rather than many: what hardly moved is made dear (reweighted l1, Candès, Wakin and Boyd 2008).
      for (std::size_t k = 0; k < n; ++k) reweight[k] = 1 + kZoneMoved / (std::abs(out.point.x[k] - now[k]) + 0.5);
    } else if (slopes_at != out.point.x) {
      linear = linearise(out.point);
      slopes_at = out.point.x;
    } else {
      region /= 3;
    }
  }
  out.point = whole(aim, goal, out.point, *linear, now);

  if (aim == Aim::kMostMargin) {
    const auto solution = program(aim, goal, out.point, *linear, now, reweight, kLastRegion * 2);
    if (solution.optimal)
      for (std::size_t i = 0; i < out.point.limits.size(); ++i)
        if (solution.dual[i] > 1e-6) out.binding.push_back({out.point.limits[i], solution.dual[i]});
  }
  return out;
}

}  // namespace ovenwright::tune
