#pragma once
#include <cstddef>
#include <limits>
#include <optional>

#include "core/measure/curve.h"

namespace ovenwright::measure {

/// A run of samples of a curve, both ends included: the whole log, its rise or its fall.
struct Stretch {
  std::size_t first = 0, last = 0;
};
inline Stretch whole(const Curve& curve) { return {0, curve.last()}; }
inline Stretch rise(const Curve& curve) { return {0, curve.peak()}; }
inline Stretch fall(const Curve& curve) { return {curve.peak(), curve.last()}; }

/// Total time that counted, and the first and last instant of it (both 0 where the total is).
struct Duration {
  double total_s = 0;
  double from_s = 0, to_s = 0;
};

/// Total time with T > level, exact on the polyline. Cost: O(√n), and O(n) only near the level.
Duration time_above(const Curve& curve, Stretch stretch, double level_C);
/// Total time with T >= level.
Duration time_at_or_above(const Curve& curve, Stretch stretch, double level_C);
/// Total time with lower < T <= upper; an upper of infinity is no bound, one that is not above lower
/// leaves nothing.
Duration time_between(const Curve& curve, Stretch stretch, double lower_C, double upper_C);
/// ∫ (T − level)⁺ dt, °C·s.
double area_above(const Curve& curve, Stretch stretch, double level_C);

/// The first and the last moment where the polyline goes from not above the level to above it; a curve that starts
/// above has not crossed.
std::optional<double> first_upward_crossing_s(const Curve& curve, Stretch stretch, double level_C);
std::optional<double> last_upward_crossing_s(const Curve& curve, Stretch stretch, double level_C);
/// The last moment with T >= level.
std::optional<double> last_at_or_above_s(const Curve& curve, Stretch stretch, double level_C);

/// Stretches with more than 1 s above the level, joined unless T falls to 2 °C under it or lower between them; and the
/// first and last instant above it of those that count (both 0 where none does).
struct Excursions {
  std::size_t count = 0;
  double from_s = 0, to_s = 0;
};
Excursions excursions(const Curve& curve, double level_C);

}  // namespace ovenwright::measure
