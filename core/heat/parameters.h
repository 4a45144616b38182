#pragma once
#include <cstddef>
#include <string>
#include <vector>

namespace ovenwright::heat {

/// A normal prior of one parameter; sd 0 holds it.
struct Prior {
  std::string name;
  double mean = 0, sd = 0;
};

/// Where each parameter stands in the vector: oven first, then runs, then placements of all boards.
struct ParameterMap {
  enum Oven : std::size_t {
    kMixingUpstream,
    kMixingDownstream,
    kTunnelSupply,
    kExchangeSlope,
    kExchangeCooling,
    kExchangeTunnel,
    kRadiation,
    kHeatCapacitySlope,
    kOvenCount
  };
  enum Placement : std::size_t {
    kTimeConstant,
    kToSide,
    kFromSide,
    kSideShare,
    kAirShare,
    kBoard,
    kShade,
    kRadiationOwn,
    kHeatCapacityOwn,
    kLatent,
    kDistance,
    kTopShare,
    kPlacementCount
  };

  std::size_t zones = 0, runs = 0, placements = 0;
  std::size_t offset(std::size_t zone) const { return kOvenCount + zone; }
  std::size_t exchange(std::size_t zone) const { return kOvenCount + zones + zone; }
  std::size_t entry(std::size_t run) const { return kOvenCount + 2 * zones + run; }
  std::size_t placement(std::size_t index, Placement which) const {
    return kOvenCount + 2 * zones + runs + index * kPlacementCount + which;
  }
  std::size_t size() const { return kOvenCount + 2 * zones + runs + placements * kPlacementCount; }
};

}  // namespace ovenwright::heat
