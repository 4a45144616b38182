#include "core/measure/spread.h"

#include <algorithm>

namespace ovenwright::measure {
namespace {

/// A stretch of time and what the spread in it can be at most.
struct Slice {
  double from_s, to_s, bound_C;
};

bool one_clock(std::span<const Curve> curves) {
  return std::ranges::all_of(curves, [&](const Curve& curve) {
    return curve.trace().time_s().data() == curves.front().trace().time_s().data();
  });
}

std::size_t first_at_or_after(const Curve& curve, double time_s) {
  const auto times = curve.trace().time_s();
  return static_cast<std::size_t>(std::ranges::lower_bound(times, time_s) - times.begin());
}

/// Extremes of a curve over a stretch of time, from its blocks: not tight, never too narrow.
void widen(const Curve& curve, double from_s, double to_s, double& lowest_C, double& highest_C) {
  const auto& blocks = curve.blocks();
  const std::size_t after = first_at_or_after(curve, from_s);
  std::size_t block = blocks.block_of(after > 0 ? after - 1 : 0);
  for (; block < blocks.count() && curve.time_s(blocks.begin(block)) <= to_s; ++block) {
    lowest_C = std::min(lowest_C, curve.block_lowest_C(block));
    highest_C = std::max(highest_C, curve.block_highest_C(block));
  }
}

std::vector<Slice> slices(std::span<const Curve> curves, Common common, double lower_C, double upper_C) {
  const auto finest = std::ranges::max_element(curves, {}, &Curve::size);
  double last_peak_s = common.from_s;
  for (const auto& curve : curves) last_peak_s = std::max(last_peak_s, curve.time_s(curve.peak()));
  std::vector<Slice> all;
  for (std::size_t block = 0; block < finest->blocks().count(); ++block) {
    const double from_s = std::max(common.from_s, finest->time_s(finest->blocks().begin(block)));
    const double to_s = std::min(common.to_s, finest->time_s(finest->blocks().end(block)));
    if (from_s > to_s || from_s > last_peak_s) continue;
    double lowest_C = std::numeric_limits<double>::infinity(), highest_C = -lowest_C, coldest_at_most_C = lowest_C;
    for (const auto& curve : curves) {
      double lowest = std::numeric_limits<double>::infinity(), highest = -lowest;
      widen(curve, from_s, to_s, lowest, highest);
      lowest_C = std::min(lowest_C, lowest);
      highest_C = std::max(highest_C, highest);
      coldest_at_most_C = std::min(coldest_at_most_C, highest);
    }
    if (above_by(lowest_C, upper_C) > 0 || above_by(coldest_at_most_C, lower_C) < 0) continue;
    all.push_back({from_s, to_s, highest_C - lowest_C});
  }
  return all;
}

/// Visits the extents at all sample times of a slice.
template <class Visit>
void each_extent(std::span<const Curve> curves, const Slice& slice, bool shared, Visit&& visit) {
  if (shared) {
    const auto& clock = curves.front();
    for (std::size_t i = first_at_or_after(clock, slice.from_s); i < clock.size() && clock.time_s(i) <= slice.to_s;
         ++i) {
      Extent extent{clock.time_s(i), 0, clock.at(i), clock.at(i)};
      for (std::size_t k = 1; k < curves.size(); ++k) {
        const double T = curves[k].at(i);
        if (T < extent.lowest_C) {
          extent.lowest_C = T;
          extent.coldest = k;
        }
        extent.highest_C = std::max(extent.highest_C, T);
      }
      visit(extent);
    }
    return;
  }
  std::vector<double> times;
  for (const auto& curve : curves)
    for (std::size_t i = first_at_or_after(curve, slice.from_s); i < curve.size() && curve.time_s(i) <= slice.to_s; ++i)
      times.push_back(curve.time_s(i));
  std::ranges::sort(times);
  times.erase(std::unique(times.begin(), times.end()), times.end());
  for (const double time_s : times) visit(extent_at(curves, time_s));
}

}  // namespace

std::optional<Common> common_time(std::span<const Curve> curves) {
  if (curves.empty()) return std::nullopt;
  Common common{curves.front().start_s(), curves.front().end_s()};
  for (const auto& curve : curves) {
    common.from_s = std::max(common.from_s, curve.start_s());
    common.to_s = std::min(common.to_s, curve.end_s());
  }
  if (common.from_s > common.to_s) return std::nullopt;
  return common;
}

Extent extent_at(std::span<const Curve> curves, double time_s) {
  Extent extent{time_s, 0, std::numeric_limits<double>::infinity(), -std::numeric_limits<double>::infinity()};
  for (std::size_t k = 0; k < curves.size(); ++k) {
    const double T = curves[k].interpolated(time_s);
    if (T < extent.lowest_C) {
      extent.lowest_C = T;
      extent.coldest = k;
    }
    extent.highest_C = std::max(extent.highest_C, T);
  }
  return extent;
}

std::optional<Extent> largest_extent(std::span<const Curve> curves, Common common, double lower_C, double upper_C) {
  auto all = slices(curves, common, lower_C, upper_C);
  std::ranges::sort(all, [](const Slice& a, const Slice& b) {
    return a.bound_C != b.bound_C ? a.bound_C > b.bound_C : a.from_s < b.from_s;
  });
  const bool shared = one_clock(curves);
  std::optional<Extent> best;
  for (const auto& slice : all) {
    if (best && slice.bound_C < best->spread_C()) break;
    each_extent(curves, slice, shared, [&](const Extent& extent) {
      const auto& coldest = curves[extent.coldest];
      if (extent.time_s > coldest.time_s(coldest.peak())) return;
      if (above_by(extent.lowest_C, lower_C) < 0 || above_by(extent.lowest_C, upper_C) > 0) return;
      if (!best || extent.spread_C() > best->spread_C() ||
          (extent.spread_C() == best->spread_C() && extent.time_s < best->time_s))
        best = extent;
    });
  }
  return best;
}

}  // namespace ovenwright::measure
