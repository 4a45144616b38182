#pragma once
#include <cstddef>
#include <memory>
#include <span>
#include <string>
#include <vector>

#include "core/run/fault.h"
#include "core/run/trace.h"

namespace ovenwright::clean {

/// Rows first..last (both included) of a channel that were taken out, or kept though they look like a fault.
struct Stretch {
  run::FaultKind kind = run::FaultKind::kOpen;
  std::size_t first = 0, last = 0;
  run::FaultAction action = run::FaultAction::kRemoved;
  std::vector<double> raw_C;  ///< what stood in rows first..last; empty where nothing was taken out
};

/// What one pass over the values of a channel finds.
struct Overview {
  bool all_finite = true;
  double lowest = 0, highest = 0;  ///< of no meaning unless all_finite
  double largest_step = 0;         ///< between neighbouring numbers
};

/// Cost: O(n), at the speed of memory.
Overview look_over(std::span<const double> values);

/// A channel while it is being cleaned: a value for each row of its clock, NaN in the rows that were taken out.
struct Track {
  std::string name;
  int number = 0;
  std::shared_ptr<const run::Clock> clock;
  std::vector<double> temperature_C;
  std::vector<Stretch> stretches;  ///< disjoint, in no order until clean() sorts them
  Overview overview;               ///< of the temperatures as logged

  /// Takes rows out and remembers what stood in them.
  void remove(run::FaultKind kind, std::size_t first, std::size_t last);
};

/// Steps of more than this between neighbours are looked at: slower changes are no fault of a reading.
/// Source: the rule for spikes without its noise term, the smallest that it can be: max(5 °C, 6 °C/s · h).
double suspicious_step_C(const Track& track);

}  // namespace ovenwright::clean
