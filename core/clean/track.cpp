#include "core/clean/track.h"

#include <algorithm>
#include <limits>

namespace ovenwright::clean {

void Track::remove(run::FaultKind kind, std::size_t first, std::size_t last) {
  const auto from = temperature_C.begin() + static_cast<std::ptrdiff_t>(first);
  const auto to = temperature_C.begin() + static_cast<std::ptrdiff_t>(last) + 1;
  stretches.push_back({kind, first, last, run::FaultAction::kRemoved, {from, to}});
  std::fill(from, to, std::numeric_limits<double>::quiet_NaN());
}

double suspicious_step_C(const Track& track) { return std::max(5.0, 6.0 * track.clock->median_interval_s()); }

}  // namespace ovenwright::clean
