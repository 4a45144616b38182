#include "core/judge/history.h"

#include <algorithm>
#include <cmath>

namespace ovenwright::judge {
namespace {

constexpr double kStep_mm = 5;
constexpr double kMixing_mm = 35;   // common practice, no source: air of one zone found in the next
constexpr double kMargin_mm = 500;  // of the grid beyond both mouths, where the mixing has died out
constexpr double kNoFit_C = 30;
constexpr double kUnsetCooling_C = 50;  // air of a cooling zone without a setpoint

/// Two-sided exponential mixing: the solution of A − l²·A″ = Σ on the grid, one pass each way.
void mix(std::vector<double>& values) {
  const double keep = std::exp(-kStep_mm / kMixing_mm);
  for (std::size_t i = 1; i < values.size(); ++i) values[i] += keep * (values[i - 1] - values[i]);
  for (std::size_t i = values.size() - 1; i-- > 0;) values[i] += keep * (values[i + 1] - values[i]);
}

double setpoint_C(const oven::Oven& oven, const oven::Recipe& recipe, std::size_t zone) {
  std::size_t heated = 0, cooled = 0;
  for (std::size_t i = 0; i < zone; ++i) ++(oven.zones[i].kind == oven::ZoneKind::kHeat ? heated : cooled);
  if (oven.zones[zone].kind == oven::ZoneKind::kCool)
    return cooled < recipe.cooling_C.size() ? recipe.cooling_C[cooled] : kUnsetCooling_C;
  const bool top = heated < recipe.top_C.size(), bottom = heated < recipe.bottom_C.size();
  if (top && bottom) return (recipe.top_C[heated] + recipe.bottom_C[heated]) / 2;
  return top ? recipe.top_C[heated] : bottom ? recipe.bottom_C[heated] : oven.ambient_C;
}

/// Sample indices to keep: at most some 500 evenly in the oven and 100 outside of it.
std::vector<std::size_t> thinned(std::span<const double> time_s, double in_s, double out_s) {
  const double inside_s = (out_s - in_s) / 500, outside_s = std::max(inside_s, (time_s.back() - time_s.front()) / 100);
  std::vector<std::size_t> kept{0};
  for (std::size_t i = 1; i < time_s.size(); ++i) {
    const bool inside = time_s[i] >= in_s && time_s[i] <= out_s;
    if (i + 1 == time_s.size() || time_s[i] - time_s[kept.back()] >= 0.999 * (inside ? inside_s : outside_s))
      kept.push_back(i);
  }
  return kept;
}

/// First-order steps with one time constant; a clock of even steps costs one exponential.
class Follower {
 public:
  explicit Follower(double tau_s) : tau_s_(tau_s) {}
  double step(double value, double target, double dt_s) {
    if (std::abs(dt_s - dt_s_) > 1e-9) {
      dt_s_ = dt_s;
      keep_ = std::exp(-dt_s / tau_s_);
    }
    return target + (value - target) * keep_;
  }

 private:
  double tau_s_, dt_s_ = -1, keep_ = 0;
};

}  // namespace

AirProfile::AirProfile(const oven::Oven& oven, const oven::Recipe& recipe)
    : ambient_C_(oven.ambient_C), from_mm_(-kMargin_mm) {
  const auto points = static_cast<std::size_t>((oven.length_mm() + 2 * kMargin_mm) / kStep_mm) + 1;
  shares_.assign(oven.zones.size(), std::vector<double>(points, 0.0));
  air_C_.assign(points, ambient_C_);
  for (std::size_t z = 0; z < oven.zones.size(); ++z) {
    const double start_mm = oven.zone_start_mm(z), end_mm = oven.zone_end_mm(z);
    const double gap_before_mm = z > 0 ? oven.zones[z - 1].gap_after_mm : 0;
    const double gap_after_mm = z + 1 < oven.zones.size() ? oven.zones[z].gap_after_mm : 0;
    for (std::size_t i = 0; i < points; ++i) {
      const double x_mm = from_mm_ + kStep_mm * static_cast<double>(i);
      if (x_mm >= start_mm && x_mm < end_mm) shares_[z][i] = 1;
      if ((x_mm >= start_mm - gap_before_mm && x_mm < start_mm) || (x_mm >= end_mm && x_mm < end_mm + gap_after_mm))
        shares_[z][i] = 0.5;
    }
    mix(shares_[z]);
    const double set_C = setpoint_C(oven, recipe, z);
    for (std::size_t i = 0; i < points; ++i) air_C_[i] += shares_[z][i] * (set_C - ambient_C_);
  }
}

std::optional<AirProfile::Spot> AirProfile::spot(double position_mm) const {
  const double place = (position_mm - from_mm_) / kStep_mm;
  if (!(place >= 0) || place >= static_cast<double>(air_C_.size() - 1)) return {};
  const auto before = static_cast<std::size_t>(place);
  return Spot{before, place - static_cast<double>(before)};
}

double AirProfile::air_C(const std::optional<Spot>& spot) const {
  return spot ? air_C_[spot->before] + spot->beyond * (air_C_[spot->before + 1] - air_C_[spot->before]) : ambient_C_;
}

double AirProfile::share(std::size_t zone, const std::optional<Spot>& spot) const {
  const auto& shares = shares_[zone];
  return spot ? shares[spot->before] + spot->beyond * (shares[spot->before + 1] - shares[spot->before]) : 0;
}

std::optional<History> history_of(const run::Trace& trace, double x_mm, const measure::Place& place,
                                  const AirProfile& air) {
  const auto when_s = [&](double position_mm) {
    return oven::time_at_s(position_mm, place.entry, *place.recipe, x_mm);
  };
  const std::size_t heated = place.oven->heating_zones();
  if (heated == 0 || !(place.recipe->speed_mm_per_min > 0)) return {};
  const double in_s = when_s(0), out_s = when_s(place.oven->length_mm());
  double heated_to_s = in_s;
  for (std::size_t z = 0; z < place.oven->zones.size(); ++z)
    if (place.oven->zones[z].kind == oven::ZoneKind::kHeat) heated_to_s = when_s(place.oven->zone_end_mm(z));

  const auto kept = thinned(trace.time_s(), in_s, out_s);
  std::vector<double> time_s, temperature_C, air_C;
  for (const std::size_t i : kept) {
    time_s.push_back(trace.time_s()[i]);
    temperature_C.push_back(trace.temperature_C()[i]);
  }
  const auto inside = [&](double t) { return t >= in_s && t <= heated_to_s; };
  if (std::ranges::count_if(time_s, inside) < 10) return {};

  const std::size_t n = time_s.size();
  std::vector<std::optional<AirProfile::Spot>> spots(n);  // halfway through the step to each sample
  air_C.assign(n, 0);
  for (std::size_t i = 1; i < n; ++i) {
    spots[i] = air.spot(oven::position_mm((time_s[i - 1] + time_s[i]) / 2, place.entry, *place.recipe, x_mm));
    air_C[i] = air.air_C(spots[i]);
  }

  const auto first = static_cast<std::size_t>(std::ranges::find_if(time_s, inside) - time_s.begin());
  const auto misfit = [&](double log_tau) {  // mean square
    Follower follower(std::exp(log_tau));
    double model_C = temperature_C[first], sum = 0, count = 0;
    for (std::size_t i = first + 1; i < n && inside(time_s[i]); ++i) {
      model_C = follower.step(model_C, air_C[i], time_s[i] - time_s[i - 1]);
      sum += (model_C - temperature_C[i]) * (model_C - temperature_C[i]);
      ++count;
    }
    return sum / count;
  };
  // Golden section on ln τ; one minimum, as a slower body is later everywhere.
  constexpr double golden = 0.6180339887498949;
  double low = std::log(0.5), high = std::log(300.0);
  double a = high - golden * (high - low), b = low + golden * (high - low);
  double at_a = misfit(a), at_b = misfit(b);
  while (high - low > 0.01) {
    if (at_a < at_b) {
      high = b, b = a, at_b = at_a;
      at_a = misfit(a = high - golden * (high - low));
    } else {
      low = a, a = b, at_a = at_b;
      at_b = misfit(b = low + golden * (high - low));
    }
  }

  const double tau_s = std::exp((low + high) / 2), misfit_C = std::sqrt(misfit(std::log(tau_s)));
  if (!(misfit_C <= kNoFit_C)) return {};
  std::vector<std::vector<double>> response(air.zones(), std::vector<double>(n, 0.0));
  Follower follower(tau_s);
  for (std::size_t i = 1; i < n; ++i)
    for (std::size_t z = 0; z < air.zones(); ++z)
      response[z][i] = follower.step(response[z][i - 1], air.share(z, spots[i]), time_s[i] - time_s[i - 1]);

  auto clock = run::Clock::make(std::move(time_s));
  if (!clock) return {};
  auto thin = run::Trace::make(*clock, std::move(temperature_C));
  if (!thin) return {};
  return History{*std::move(thin), tau_s, misfit_C, std::move(response)};
}

}  // namespace ovenwright::judge
