#include <algorithm>
#include <cmath>

#include "core/heat/problem.h"

namespace ovenwright::heat {

namespace {

constexpr double kMolten_C = 2;  // above the liquidus

/// A heat of melting over a heat capacity, K. By geometry and 60 J/g (common practice, no source): paste of 0.12 mm,
/// half metal, on a fifth of a 1.6 mm board: 2 K; balls of 0.5 mm every 1 mm under a part as heavy as the board below
/// it: 4 to 5 K; simulated joints reach beyond 10 K. What stayed below the liquidus in a run that came out cold is the
/// heaviest of the board, and its curve says nothing.
struct Latent {
  double mean_K, sd_K;
};
constexpr Latent kMelted{2, 2}, kUnmolten{4, 4};

}  // namespace

bool has_melted(const Problem& problem, std::size_t placement) {
  return std::ranges::any_of(problem.runs, [&](const ModelRun& run) {
    return placement < run.mean_C.size() &&
           std::ranges::any_of(run.mean_C[placement], [&](double T) { return T > problem.liquidus_C + kMolten_C; });
  });
}

std::vector<Prior> priors(const Problem& problem) {
  const ParameterMap map = problem.map();
  std::vector<Prior> out(map.size());
  using M = ParameterMap;
  out[M::kMixingUpstream] = {"air mixing upstream, ln mm", std::log(30), 0.35};
  out[M::kMixingDownstream] = {"air mixing downstream, ln mm", std::log(38), 0.35};
  out[M::kTunnelSupply] = {"supply in the tunnels, ln", std::log(0.1), 0.6};
  out[M::kExchangeSlope] = {"exchange along the oven", 0, 0.10};
  out[M::kExchangeCooling] = {"exchange in cooling zones, ln", std::log(0.7), 0.4};
  out[M::kExchangeTunnel] = {"exchange in the tunnels, ln", std::log(0.3), 0.45};
  out[M::kRadiation] = {"share of radiation", 0.28, 0.06};
  out[M::kHeatCapacitySlope] = {"heat capacity with temperature, per 100 K", 0.20, 0.08};
  for (std::size_t z = 0; z < map.zones; ++z) {
    const bool heat = problem.oven.zones[z].kind == oven::ZoneKind::kHeat;
    out[map.offset(z)] = {"offset of zone " + problem.oven.zones[z].name + ", °C", 0, heat ? 2.0 : 5.0};
    out[map.exchange(z)] = {"exchange in zone " + problem.oven.zones[z].name + ", ln", 0, 0.12};
  }
  for (std::size_t r = 0; r < map.runs; ++r)
    out[map.entry(r)] = {"entry, s", problem.runs[r].entry.at_s,
                         problem.runs[r].entry.uncertainty_s > 0 ? problem.runs[r].entry.uncertainty_s / 1.96 : 0.2};
  for (std::size_t j = 0; j < map.placements; ++j) {
    const auto& placement = problem.placements[j];
    const auto set = [&](M::Placement which, const char* name, double mean, double sd) {
      out[map.placement(j, which)] = {placement.name + ": " + name, mean, sd};
    };
    set(M::kTimeConstant, "time constant, ln s", std::log(40), 0.5);
    set(M::kToSide, "heat to the part beside it, ln 1/s", std::log(0.01), 1.0);
    set(M::kFromSide, "heat from the part beside it, ln 1/s", std::log(0.1), 0.8);
    set(M::kSideShare, "share of the part in the reading", 0.5, 0.3);
    set(M::kAirShare, "share of the air in the reading", 0.01, 0.01);
    set(M::kBoard, "heat through the board", 0.2, 0.2);
    set(M::kShade, "less than the middle's air", 0, 0.05);
    set(M::kRadiationOwn, "its radiation", 0, 0.04);
    set(M::kHeatCapacityOwn, "its heat capacity with temperature", 0, 0.04);
    const bool ran = std::ranges::any_of(
        problem.runs, [&](const ModelRun& run) { return run.board == placement.board && !run.imagined; });
    const Latent latent = ran && !has_melted(problem, j) ? kUnmolten : kMelted;
    set(M::kLatent, "heat of melting, K", latent.mean_K, latent.sd_K);
    set(M::kDistance, "behind the leading edge, mm", placement.x_mm.value_or(80), placement.x_mm ? 0 : 60);
    set(M::kTopShare, "share of the top side", 0.5, 0.06);
  }
  return out;
}

}  // namespace ovenwright::heat
