#include "core/heat/model.h"

#include <ceres/jet.h>

#include <algorithm>
#include <cmath>

#include "core/heat/air.h"

namespace ovenwright::heat {
namespace {

constexpr double kReference_K = 473.15;

// The local inputs of one step of one placement, in the order of the dual part.
enum Input { kT, kU, kMean, kAir, kExchange, kPanel, kRho, kLnTau, kLnA, kKappa, kCapacity, kLatentHeat, kInputs };
using Jet = ceres::Jet<double, kInputs>;

template <class S>
S heat_capacity(const S& T, const S& slope, const S& latent, const S& melting_C) {
  using std::exp;
  const S x = (T - melting_C) / 3.0;
  return 1.0 + slope * (T - 150.0) / 100.0 + latent / 7.5 * exp(-0.5 * x * x);
}

/// T after 1 s. The rate is linearised about the start; heat capacity is taken at the middle of the step.
template <class S>
S stepped(const S (&q)[kInputs], double liquidus_C) {
  using std::exp;
  using std::tanh;
  const S& T = q[kT];
  const S kelvin = T + 273.15;
  const S cube = kelvin * kelvin * kelvin / (kReference_K * kReference_K * kReference_K);
  const S over_tau = exp(-q[kLnTau]), a = exp(q[kLnA]);
  const S drive = ((1.0 - q[kRho]) * q[kExchange] * (q[kAir] - T) + q[kRho] * (q[kPanel] - cube * kelvin / 4.0) +
                   q[kKappa] * (q[kMean] - T)) *
                      over_tau +
                  a * (q[kU] - T);
  const S stiffness = ((1.0 - q[kRho]) * q[kExchange] + q[kRho] * cube + q[kKappa]) * over_tau + a;
  // Melts just above the liquidus, freezes undercooled; the switch is smooth over 0.1 °C/s so that the fit sees no
  // jump.
  const S melting_C = liquidus_C - 3.5 + 5.5 * tanh(10.0 * drive);
  const auto change = [&](const S& capacity, double h) {
    const S k = stiffness / capacity;
    return drive / capacity * (1.0 - exp(-k * h)) / k;
  };
  const S half = T + change(heat_capacity(T, q[kCapacity], q[kLatentHeat], melting_C), 0.5);
  return T + change(heat_capacity(half, q[kCapacity], q[kLatentHeat], melting_C), 1.0);
}

AirParameters air_parameters(const Problem& problem, const ParameterMap& map, std::span<const double> theta) {
  using M = ParameterMap;
  AirParameters p;
  p.ln_mixing_upstream_mm = theta[M::kMixingUpstream];
  p.ln_mixing_downstream_mm = theta[M::kMixingDownstream];
  p.ln_tunnel_supply = theta[M::kTunnelSupply];
  p.exchange_slope = theta[M::kExchangeSlope];
  p.ln_exchange_cooling = theta[M::kExchangeCooling];
  p.ln_exchange_tunnel = theta[M::kExchangeTunnel];
  for (std::size_t z = 0; z < problem.oven.zones.size(); ++z) {
    p.zone_offset_C.push_back(theta[map.offset(z)]);
    p.zone_ln_exchange.push_back(theta[map.exchange(z)]);
  }
  return p;
}

/// The air one placement meets at a place; the derivatives in the columns of a gradient's row.
struct Met {
  double air_C = 0, exchange = 0, panel_K = 0;
  std::vector<double> air_d, exchange_d;
  double panel_entry_d = 0, panel_distance_d = 0;
};

class Meeting {
 public:
  Meeting(const ParameterMap& map, const GradientColumns& columns, std::span<const double> theta, const Drive& drive,
          const AirField& field, bool with_gradient)
      : map_(map),
        columns_(columns),
        theta_(theta),
        drive_(drive),
        field_(field),
        with_gradient_(with_gradient),
        air_(3 + map.zones),
        exchange_(3 + map.zones) {}

  void at(std::size_t j, double time_s, Met& met) {
    using M = ParameterMap;
    const double speed = drive_.recipe->speed_mm_per_min / 60;
    const double x = speed * (time_s - theta_[map_.entry(drive_.run)]) - theta_[map_.placement(j, M::kDistance)];
    const auto s = field_.at(x);
    const double top = theta_[map_.placement(j, M::kTopShare)] - 0.5, shade = theta_[map_.placement(j, M::kShade)];
    const double open = s.air_C + top * s.difference_C;
    met.air_C = open - shade * (open - drive_.ambient_C);
    met.exchange = s.exchange;
    met.panel_K = s.panel_K;
    if (!with_gradient_) return;
    const double keep = 1 - shade;
    met.air_d.resize(columns_.width());
    met.exchange_d.resize(columns_.width());
    field_.air_gradient(s, air_);
    field_.difference_gradient(s, difference_);
    field_.exchange_gradient(s, exchange_);
    for (std::size_t k = 0; k < 3; ++k) {
      met.air_d[M::kMixingUpstream + k] = keep * (air_[k] + top * difference_[k]);
      met.exchange_d[M::kExchangeSlope + k] = exchange_[k];
    }
    for (std::size_t z = 0; z < map_.zones; ++z) {
      met.air_d[map_.offset(z)] = keep * air_[3 + z];
      met.exchange_d[map_.exchange(z)] = exchange_[3 + z];
    }
    const double slope = keep * (s.air_slope + top * s.difference_slope);
    met.air_d[columns_.entry()] = -speed * slope;
    met.air_d[columns_.own(M::kDistance)] = -slope;
    met.air_d[columns_.own(M::kShade)] = -(open - drive_.ambient_C);
    met.air_d[columns_.own(M::kTopShare)] = keep * s.difference_C;
    met.exchange_d[columns_.entry()] = -speed * s.exchange_slope;
    met.exchange_d[columns_.own(M::kDistance)] = -s.exchange_slope;
    met.panel_entry_d = -speed * s.panel_slope;
    met.panel_distance_d = -s.panel_slope;
  }

 private:
  const ParameterMap& map_;
  const GradientColumns& columns_;
  std::span<const double> theta_;
  const Drive& drive_;
  const AirField& field_;
  bool with_gradient_;
  std::vector<double> air_, exchange_;
  std::array<double, 3> difference_{};
};

}  // namespace

std::size_t GradientColumns::parameter(std::size_t column, std::size_t placement) const {
  if (column < shared()) return column;
  if (column == entry()) return map.entry(run);
  return map.placement(placement, static_cast<ParameterMap::Placement>(column - own(ParameterMap::kTimeConstant)));
}

March march(const Problem& problem, std::span<const double> theta, const Drive& drive, bool with_gradient) {
  using M = ParameterMap;
  const ParameterMap map = problem.map();
  March out;
  out.columns = {map, drive.run};
  const GradientColumns& columns = out.columns;
  const std::size_t W = columns.width(), common = columns.shared() + 1;
  out.start_s = drive.start_s;
  out.steps = static_cast<std::size_t>(std::max(1.0, std::ceil(drive.end_s - drive.start_s)));
  for (std::size_t j = 0; j < problem.placements.size(); ++j)
    if (problem.placements[j].board == drive.board && std::isfinite(drive.start_C[j])) out.placements.push_back(j);
  const std::size_t n = out.placements.size();
  const double each = 1 / static_cast<double>(n);

  const AirField field(problem.oven, zone_setpoints(problem.oven, *drive.recipe), drive.ambient_C,
                       air_parameters(problem, map, theta), with_gradient);
  Meeting meeting(map, columns, theta, drive, field, with_gradient);
  std::vector<double> T(n), U(n), next(n);
  std::vector<double> dT, dU, dNext, dMean;  // rows of W
  if (with_gradient) {
    dT.assign(n * W, 0.0);
    dU = dNext = dT;
    dMean.assign(common, 0.0);
    out.gradient.resize((out.steps + 1) * n * W);
  }
  out.reading_C.resize((out.steps + 1) * n);
  for (std::size_t k = 0; k < n; ++k) T[k] = U[k] = drive.start_C[out.placements[k]];

  Met met;
  const auto read = [&](std::size_t step) {
    for (std::size_t k = 0; k < n; ++k) {
      const std::size_t j = out.placements[k];
      meeting.at(j, drive.start_s + static_cast<double>(step), met);
      const double s = theta[map.placement(j, M::kSideShare)], f = theta[map.placement(j, M::kAirShare)];
      const double body = (1 - s) * T[k] + s * U[k];
      out.reading_C[step * n + k] = (1 - f) * body + f * met.air_C;
      if (!with_gradient) continue;
      double* row = &out.gradient[(step * n + k) * W];
      const double *t = &dT[k * W], *u = &dU[k * W], *a = met.air_d.data();
      const double of_t = (1 - f) * (1 - s), of_u = (1 - f) * s;
      for (std::size_t i = 0; i < W; ++i) row[i] = of_t * t[i] + of_u * u[i] + f * a[i];
      row[columns.own(M::kSideShare)] += (1 - f) * (U[k] - T[k]);
      row[columns.own(M::kAirShare)] += met.air_C - body;
    }
  };

  read(0);
  for (std::size_t step = 0; step < out.steps; ++step) {
    const double middle_s = drive.start_s + static_cast<double>(step) + 0.5;
    double mean = 0;
    for (double t : T) mean += t * each;
    if (with_gradient) {
      std::ranges::fill(dMean, 0.0);
      for (std::size_t k = 0; k < n; ++k)
        for (std::size_t i = 0; i < common; ++i) dMean[i] += each * dT[k * W + i];
    }
    for (std::size_t k = 0; k < n; ++k) {
      const std::size_t j = out.placements[k];
      meeting.at(j, middle_s, met);
      const auto own = [&](M::Placement which) { return theta[map.placement(j, which)]; };
      const double value[kInputs] = {T[k],
                                     U[k],
                                     mean,
                                     met.air_C,
                                     met.exchange,
                                     met.panel_K,
                                     theta[M::kRadiation] + own(M::kRadiationOwn),
                                     own(M::kTimeConstant),
                                     own(M::kToSide),
                                     own(M::kBoard),
                                     theta[M::kHeatCapacitySlope] + own(M::kHeatCapacityOwn),
                                     own(M::kLatent)};
      if (!with_gradient) {
        next[k] = stepped<double>(value, problem.liquidus_C);
        continue;
      }
      Jet q[kInputs];
      for (int i = 0; i < kInputs; ++i) q[i] = Jet(value[i], i);
      const Jet result = stepped<Jet>(q, problem.liquidus_C);
      next[k] = result.a;
      const auto& d = result.v;
      double* row = &dNext[k * W];
      const double *t = &dT[k * W], *u = &dU[k * W], *a = met.air_d.data(), *g = met.exchange_d.data();
      const double of_t = d[kT], of_u = d[kU], of_mean = d[kMean], of_air = d[kAir], of_exchange = d[kExchange];
      for (std::size_t i = 0; i < common; ++i)
        row[i] = of_t * t[i] + of_u * u[i] + of_mean * dMean[i] + of_air * a[i] + of_exchange * g[i];
      // Its own parameters move the board's mean by its own share.
      for (std::size_t i = common; i < W; ++i)
        row[i] = (of_t + of_mean * each) * t[i] + of_u * u[i] + of_air * a[i] + of_exchange * g[i];
      row[columns.entry()] += d[kPanel] * met.panel_entry_d;
      row[columns.own(M::kDistance)] += d[kPanel] * met.panel_distance_d;
      row[M::kRadiation] += d[kRho];
      row[columns.own(M::kRadiationOwn)] += d[kRho];
      row[columns.own(M::kTimeConstant)] += d[kLnTau];
      row[columns.own(M::kToSide)] += d[kLnA];
      row[columns.own(M::kBoard)] += d[kKappa];
      row[M::kHeatCapacitySlope] += d[kCapacity];
      row[columns.own(M::kHeatCapacityOwn)] += d[kCapacity];
      row[columns.own(M::kLatent)] += d[kLatentHeat];
    }
    for (std::size_t k = 0; k < n; ++k) {
      // The part beside it follows the mean of the step's two ends.
      const double rate = std::exp(theta[map.placement(out.placements[k], M::kFromSide)]);
      const double decay = std::exp(-rate), gain = 1 - decay;
      const double aim = (T[k] + next[k]) / 2 - U[k];
      if (with_gradient) {
        double* u = &dU[k * W];
        const double *t = &dT[k * W], *then = &dNext[k * W];
        for (std::size_t i = 0; i < W; ++i) u[i] = decay * u[i] + gain / 2 * (t[i] + then[i]);
        u[columns.own(M::kFromSide)] += aim * rate * decay;
      }
      U[k] += gain * aim;
    }
    T.swap(next);
    dT.swap(dNext);
    read(step + 1);
  }
  return out;
}

double March::at(std::size_t j, double time_s) const {
  const std::size_t n = placements.size();
  const double at = std::clamp(time_s - start_s, 0.0, static_cast<double>(steps));
  const std::size_t k = std::min(static_cast<std::size_t>(at), steps - 1);
  return std::lerp(reading_C[k * n + j], reading_C[(k + 1) * n + j], at - static_cast<double>(k));
}

void March::gradient_at(std::size_t j, double time_s, std::span<double> out) const {
  const std::size_t n = placements.size(), W = columns.width();
  const double at = std::clamp(time_s - start_s, 0.0, static_cast<double>(steps));
  const std::size_t k = std::min(static_cast<std::size_t>(at), steps - 1);
  const double share = at - static_cast<double>(k);
  const double* below = &gradient[(k * n + j) * W];
  const double* above = &gradient[((k + 1) * n + j) * W];
  for (std::size_t i = 0; i < W; ++i) out[i] = below[i] + share * (above[i] - below[i]);
}

}  // namespace ovenwright::heat
