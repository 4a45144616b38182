#include "core/judge/main_zones.h"

#include <algorithm>

namespace ovenwright::judge {

std::vector<std::string> main_zones(std::span<const ZoneShare> shares) {
  std::vector<std::string> names;
  std::vector<double> sums;
  for (const auto& share : shares) {
    const auto found = std::ranges::find(names, share.zone);
    if (found == names.end()) {
      names.push_back(share.zone);
      sums.push_back(share.share);
    } else {
      sums[static_cast<std::size_t>(found - names.begin())] += share.share;
    }
  }
  std::vector<std::string> main;
  for (std::size_t i = 0; i < names.size(); ++i)
    if (sums[i] >= 0.1) main.push_back(names[i]);
  return main;
}

}  // namespace ovenwright::judge
