#pragma once
#include <QPolygonF>
#include <QRectF>
#include <span>
#include <vector>

#include "app/desktop/plot/pyramid.h"

namespace ovenwright::desktop {

/// A picture's way from time and temperature to pixels: x = x0 + x_per_s·t, y = y0 + y_per_C·T.
struct Mapping {
  double x0 = 0, x_per_s = 1, y0 = 0, y_per_C = -1;
  double x(double time_s) const { return x0 + x_per_s * time_s; }
  double y(double temperature_C) const { return y0 + y_per_C * temperature_C; }
  double time_s(double px) const { return (px - x0) / x_per_s; }
  bool operator==(const Mapping&) const = default;
};

/// The course of a trace as it is to be drawn inside `clip`: no more points than its pixels need. Where there are
/// more samples than pixels, each pixel column keeps its first, lowest, highest and last value, so no extreme is lost;
/// points less than a quarter of a pixel off the line through their neighbours are left out. Clipped, never smoothed.
/// Several pieces where the course leaves `clip` and comes back.
/// Cost: O(pixels · log n).
std::vector<QPolygonF> visiblePolylines(std::span<const double> time_s, std::span<const double> temperature_C,
                                        const Pyramid& pyramid, const Mapping& mapping, const QRectF& clip);

}  // namespace ovenwright::desktop
