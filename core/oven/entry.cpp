#include "core/oven/entry.h"

#include <algorithm>
#include <cmath>
#include <utility>
#include <vector>

#include "core/run/means.h"
#include "core/run/median.h"
#include "core/run/noise.h"

namespace ovenwright::oven {
namespace {

// docs/entry.md says where these come from and what they were tried on.
constexpr double kBendOver_s = 6;       // before and behind the bend
constexpr double kRisen_C = 60;         // above the start: the first zone is behind
constexpr double kLeastHeat_C = 50;     // of some zone above ambient, to make a bend
constexpr double kMayBeCold_C = 30;     // of a zone beyond that rise: the board may enter the next before it has risen
constexpr double kSteep = 0.6;          // of the largest step: the first zone whose bend is sharp enough to be timed
constexpr double kLate_s = 0.5;         // the bend of joints and beads, behind the edge of the zone
constexpr double kModel_s = 0.6;        // standard deviation of one run's mean bend
constexpr double kCoarse_per_s = 0.04;  // times the sample interval squared: how well a coarse log places a bend
constexpr double kStartsMoving = 0.5;   // of the slope behind the bend: the bend may lie before the log
constexpr double kSigmas = 2.5;         // of the noise of a bend
constexpr double kCoarsest_s = 60;      // median interval: a coarser log shows no bend
constexpr double kLongest_s = 86400;    // of the rise, the time before the board enters included
constexpr double kUnusual = 3, kOneBoard_s = 20;
constexpr double kLoneTrace_mm = 50;  // behind the leading edge, where no board says

/// The moment at which a trace's slope grows most on its way into a zone.
struct Bend {
  double at_s = 0;
  double size_C = 0;  ///< T(t + w) − 2·T(t) + T(t − w)
};

/// The step of the air's temperature at the start of a heated zone.
struct Step {
  double begins_mm = 0;
  double size_C = 0;
};

/// The steps up of the heated zones, as long as a board may not have risen by 60 °C before it reaches them. Empty where
/// no zone is warm.
std::vector<Step> steps_of(const Oven& oven, const Recipe& recipe) {
  std::vector<Step> steps;
  std::size_t heated = 0;
  double before_C = oven.ambient_C;
  bool warm = false;
  for (std::size_t i = 0; i < oven.zones.size() && before_C < oven.ambient_C + kRisen_C + kMayBeCold_C; ++i) {
    if (oven.zones[i].kind != ZoneKind::kHeat) continue;
    double setpoint_C = oven.ambient_C;
    for (const auto* side : {&recipe.top_C, &recipe.bottom_C})
      if (heated < side->size()) setpoint_C = std::max(setpoint_C, (*side)[heated]);
    ++heated;
    if (setpoint_C > before_C) steps.push_back({oven.zone_start_mm(i), setpoint_C - before_C});
    warm = warm || setpoint_C >= oven.ambient_C + kLeastHeat_C;
    before_C = setpoint_C;
  }
  return warm ? steps : std::vector<Step>{};
}

/// Means over whole seconds from the start until the trace has risen by 60 °C and `more` seconds beyond; empty where it
/// never does.
std::vector<double> rise_by_seconds(const run::Trace& trace, std::size_t more) {
  const auto t = trace.time_s();
  const auto T = trace.temperature_C();
  const auto risen = std::ranges::find_if(T, [&](double value) { return value >= T[0] + kRisen_C; });
  if (risen == T.end()) return {};
  const double at_s = t[static_cast<std::size_t>(risen - T.begin())];
  const double seconds = std::min(at_s + static_cast<double>(more), t.back()) - t[0];
  if (seconds > kLongest_s) return {};
  return run::means_over(trace, t[0], 1, static_cast<std::size_t>(seconds));
}

/// The bend into one of the first zones, its time moved back to when the placement was at the mouth. Steps of the air
/// bend a trace in proportion, whatever its temperature, since slope is (air − board) / time constant: so the passage
/// is where the bends at all the steps, each times its step, sum to the most; it is timed by the first large one of
/// them. Absent where the trace begins on the move, does not rise, or bends no more than its noise does.
std::optional<Bend> bend_at_the_mouth(const run::Trace& trace, const std::vector<Step>& steps, double speed_mm_per_s) {
  const double h = trace.median_interval_s();
  if (h > kCoarsest_s) return std::nullopt;
  const auto over = static_cast<std::size_t>(std::ceil(std::max(kBendOver_s, 2 * h)));
  const auto T = rise_by_seconds(trace, over);
  if (T.size() <= 2 * over) return std::nullopt;
  const auto bend_at = [&](std::size_t k) { return T[k + over] - 2 * T[k] + T[k - over]; };
  // Rows of the means at which a placement is at each step when it is at the first one at `first`.
  const auto row = [&](std::size_t first, const Step& step) {
    return first + static_cast<std::size_t>(std::lround((step.begins_mm - steps[0].begins_mm) / speed_mm_per_s));
  };
  const auto in_sight = [&](std::size_t k) { return k + over < T.size(); };
  std::size_t passed = over;
  double most = -1;
  for (std::size_t k = over; in_sight(k); ++k) {
    double sum = 0;
    for (const Step& step : steps)
      if (const std::size_t at = row(k, step); in_sight(at)) sum += step.size_C * bend_at(at);
    if (sum > most) most = sum, passed = k;
  }
  double largest_C = 0;
  for (const Step& step : steps)
    if (in_sight(row(passed, step))) largest_C = std::max(largest_C, step.size_C);
  const auto timed = std::ranges::find_if(steps, [&](const Step& s) { return s.size_C >= kSteep * largest_C; });
  const std::size_t near = row(passed, *timed);
  std::size_t best = near;
  for (std::size_t k = std::max(over, near - std::min(near, over)); k <= near + over && in_sight(k); ++k)
    if (bend_at(k) > bend_at(best)) best = k;

  const double rise_C = T[best + over] - T[best];
  if (T[over] - T[0] > kStartsMoving * rise_C) return std::nullopt;  // the log begins in the heat
  Bend bend{trace.time_s()[0] + static_cast<double>(best) + 0.5, bend_at(best)};
  const double noise = run::noise_C(trace.time_s(), trace.temperature_C()) * std::sqrt(6 * std::min(1.0, h));
  if (!(bend.size_C > kSigmas * noise) || best == over) return std::nullopt;
  if (best + over + 1 < T.size()) {  // the top of the parabola through the three
    const double before = bend_at(best - 1), behind = bend_at(best + 1), curve = before - 2 * bend.size_C + behind;
    if (curve < 0) bend.at_s += std::clamp((before - behind) / (2 * curve), -1.0, 1.0);
  }
  bend.at_s -= timed->begins_mm / speed_mm_per_s;
  return bend;
}

double uncertainty_s(double interval_s, double more_s) {
  return 2 * std::hypot(kModel_s, kCoarse_per_s * interval_s * interval_s, more_s);
}

/// The value that splits the weights in half, between the middle of the weights on both sides of it.
double weighted_median(std::vector<std::pair<double, double>> values_and_weights) {
  std::ranges::sort(values_and_weights);
  double total = 0, sum = 0;
  for (const auto& [value, weight] : values_and_weights) total += weight;
  double last_value = values_and_weights.front().first, last_share = 0;
  for (const auto& [value, weight] : values_and_weights) {
    const double share = (sum + weight / 2) / total;
    if (share >= 0.5) {
      const double way = share > last_share ? (0.5 - last_share) / (share - last_share) : 1;
      return sum == 0 ? value : last_value + way * (value - last_value);
    }
    sum += weight;
    last_value = value;
    last_share = share;
  }
  return last_value;
}

/// The median of the bends, each with the square of its size as weight since a part with an inner mass bends late and
/// softly, and its standard error.
std::pair<double, double> middle_of(const std::vector<Bend>& bends) {
  std::vector<std::pair<double, double>> times, distances;
  double sum = 0, squares = 0;
  for (const auto& bend : bends) {
    const double weight = bend.size_C * bend.size_C;
    times.push_back({bend.at_s, weight});
    sum += weight;
    squares += weight * weight;
  }
  const double median_s = weighted_median(times);
  for (const auto& [time, weight] : times) distances.push_back({std::abs(time - median_s), weight});
  constexpr double kDeviations = 1.4826 * 1.2533;  // of a normal distribution's median, from its absolute deviations
  return {median_s, kDeviations * weighted_median(distances) * std::sqrt(squares) / sum};
}

/// Places unknown: n placements lie evenly on the board as far as anyone knows, so the leading edge is ahead of the
/// first by the mean distance between them.
std::pair<double, double> leading_edge(const std::vector<Bend>& bends, double speed_mm_per_s) {
  std::vector<double> sizes, times;
  for (const auto& bend : bends) {
    sizes.push_back(bend.size_C);
    times.push_back(bend.at_s);
  }
  const double usual_C = run::median(sizes), usual_s = run::median(times);
  double first_s = 0, last_s = 0;
  std::size_t n = 0;
  for (const auto& bend : bends) {
    const bool usual = bend.size_C >= usual_C / kUnusual && bend.size_C <= usual_C * kUnusual &&
                       std::abs(bend.at_s - usual_s) <= kOneBoard_s;
    if (!usual) continue;  // one in the air, say
    first_s = n == 0 ? bend.at_s : std::min(first_s, bend.at_s);
    last_s = n == 0 ? bend.at_s : std::max(last_s, bend.at_s);
    ++n;
  }
  const double ahead_s = n > 1 ? (last_s - first_s) / static_cast<double>(n - 1) : kLoneTrace_mm / speed_mm_per_s;
  return {first_s - ahead_s, ahead_s};
}

}  // namespace

std::optional<Entry> find_entry(const run::Run& run, const Oven& oven, const Recipe& recipe,
                                const board::Board* board) {
  const auto steps = steps_of(oven, recipe);
  if (steps.empty() || !(recipe.speed_mm_per_min > 0)) return std::nullopt;
  const double speed = recipe.speed_mm_per_min / 60;
  std::vector<Bend> placed, unplaced;
  for (const auto& channel : run.channels) {
    if (!channel.trace) continue;
    const auto* placement = board != nullptr ? board->placement(channel.name, channel.number) : nullptr;
    if (placement != nullptr && placement->kind == board::Kind::kAir) continue;
    auto bend = bend_at_the_mouth(*channel.trace, steps, speed);
    if (!bend) continue;
    if (placement != nullptr && placement->x_mm) {
      bend->at_s -= *placement->x_mm / speed;
      placed.push_back(*bend);
    } else {
      unplaced.push_back(*bend);
    }
  }
  if (placed.empty() && unplaced.empty()) return std::nullopt;
  const auto [edge_s, error_s] = placed.empty() ? leading_edge(unplaced, speed) : middle_of(placed);
  return Entry{edge_s - kLate_s, uncertainty_s(run.sample_interval_s, error_s), Entry::Source::kLog};
}

}  // namespace ovenwright::oven
