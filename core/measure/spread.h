#pragma once
#include <limits>
#include <optional>
#include <span>

#include "core/measure/curve.h"

namespace ovenwright::measure {

/// The coldest and the hottest of several curves at one moment.
struct Extent {
  double time_s = 0;
  std::size_t coldest = 0;  ///< index of the curve; of equal ones the first
  double lowest_C = 0, highest_C = 0;
  double spread_C() const { return highest_C - lowest_C; }
};

/// The time that all curves cover; empty where there is none.
struct Common {
  double from_s = 0, to_s = 0;
};
std::optional<Common> common_time(std::span<const Curve> curves);

/// At a moment that all curves cover, interpolated.
Extent extent_at(std::span<const Curve> curves, double time_s);

/// The largest extent over the sample times of all curves within the common time, counted where the coldest curve is
/// not past its own peak and its temperature lies within the range; of equal ones the first. Blocks that cannot hold it
/// are passed over. Empty where no moment counts.
std::optional<Extent> largest_extent(std::span<const Curve> curves, Common common,
                                     double lower_C = -std::numeric_limits<double>::infinity(),
                                     double upper_C = std::numeric_limits<double>::infinity());

}  // namespace ovenwright::measure
