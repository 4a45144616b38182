#include <algorithm>

#include "core/measure/figure.h"
#include "core/measure/kinds.h"
#include "core/measure/level.h"
#include "core/measure/spread.h"

namespace ovenwright::measure {
namespace {

/// Whether the log shows that a trace turned around under a level.
bool turned_below(const Curve& curve, double level_C) {
  return above_by(curve.peak_C(), level_C) <= 0 && !curve.ends_on_rise() && !curve.starts_at_peak();
}

bool starts_above(const Curve& curve, double level_C) { return above_by(curve.at(0), level_C) > 0; }

Figure spread_of_peaks(std::span<const Curve> curves) {
  if (std::ranges::any_of(curves, &Curve::ends_on_rise)) return undetermined(Phrase::kATraceEndsOnRise);
  if (std::ranges::any_of(curves, &Curve::starts_at_peak)) return undetermined(Phrase::kATraceStartsAtPeak);
  const auto [coldest, hottest] = std::ranges::minmax_element(curves, {}, &Curve::peak_C);
  const double a_s = coldest->time_s(coldest->peak()), b_s = hottest->time_s(hottest->peak());
  return valued(hottest->peak_C() - coldest->peak_C(), std::min(a_s, b_s), std::max(a_s, b_s));
}

Figure spread_when_hottest_reaches(std::span<const Curve> curves, double level_C) {
  std::optional<double> earliest_s;
  for (const auto& curve : curves) {
    const auto crossing_s = first_upward_crossing_s(curve, whole(curve), level_C);
    if (crossing_s && (!earliest_s || *crossing_s < *earliest_s)) earliest_s = crossing_s;
  }
  const bool above_from_start = std::ranges::any_of(curves, [&](const Curve& c) { return starts_above(c, level_C); });
  if (!earliest_s) {
    if (above_from_start) return undetermined(Phrase::kATraceStartsAbove, {temperature_text(level_C)});
    if (std::ranges::all_of(curves, [&](const Curve& curve) { return turned_below(curve, level_C); }))
      return not_reached(Phrase::kNoTraceRisesAbove, {temperature_text(level_C)});
    return undetermined(Phrase::kNoTraceShownAbove, {temperature_text(level_C)});
  }
  const auto common = common_time(curves);
  if (!common || *earliest_s < common->from_s || *earliest_s > common->to_s)
    return undetermined(Phrase::kNotAllHaveData, {seconds_text(*earliest_s), temperature_text(level_C)});
  auto figure = valued(extent_at(curves, *earliest_s).spread_C(), earliest_s, earliest_s);
  if (above_from_start) figure.note = say(Phrase::kNoteStartsAbove, {temperature_text(level_C)});
  return figure;
}

Figure largest_spread(std::span<const Curve> curves, const Parameters& parameters) {
  auto lower_C = parameters.from, upper_C = parameters.to;
  if (lower_C && upper_C && *lower_C > *upper_C) std::swap(lower_C, upper_C);
  const double from_C = lower_C.value_or(-std::numeric_limits<double>::infinity());
  const double to_C = upper_C.value_or(std::numeric_limits<double>::infinity());
  const auto common = common_time(curves);
  if (!common) return undetermined(Phrase::kNoCommonTime);
  const auto at_start = extent_at(curves, common->from_s), at_end = extent_at(curves, common->to_s);
  const auto& coldest_at_end = curves[at_end.coldest];
  const bool cut_start = lower_C && above_by(at_start.lowest_C, from_C) > 0;
  const bool cut_end =
      common->to_s <= coldest_at_end.time_s(coldest_at_end.peak()) && above_by(at_end.lowest_C, to_C) <= 0;
  const auto largest = largest_extent(curves, *common, from_C, to_C);
  if (!largest) {
    if (cut_end) return undetermined(Phrase::kEndsOnRise);
    if (cut_start) return undetermined(Phrase::kStartsAbove, {temperature_text(from_C)});
    if (std::ranges::any_of(curves, [&](const Curve& curve) { return turned_below(curve, from_C); }))
      return not_reached(Phrase::kColdestNotReaching, {temperature_text(from_C)});
    return undetermined(Phrase::kColdestNotInRange);
  }
  auto figure = valued(largest->spread_C(), largest->time_s, largest->time_s);
  figure.at_least = cut_start || cut_end;
  if (cut_end) {
    figure.reason = say(Phrase::kEndsOnRise);
  } else if (cut_start) {
    figure.reason = say(Phrase::kStartsAbove, {temperature_text(from_C)});
  }
  return figure;
}

Figure lag(std::span<const Curve> curves, double level_C) {
  double first_s = std::numeric_limits<double>::infinity(), last_s = -first_s;
  bool all_cross = true, certain = false;
  for (const auto& curve : curves) {
    const auto crossing_s = first_upward_crossing_s(curve, whole(curve), level_C);
    if (crossing_s) {
      first_s = std::min(first_s, *crossing_s);
      last_s = std::max(last_s, *crossing_s);
    } else {
      all_cross = false;
      certain = certain || turned_below(curve, level_C);
    }
  }
  if (all_cross) return valued(last_s - first_s, first_s, last_s);
  if (certain) return not_reached(Phrase::kNotEveryRisesAbove, {temperature_text(level_C)});
  return undetermined(Phrase::kNotEveryShownAbove, {temperature_text(level_C)});
}

Figure on_board(std::span<const Curve> curves, const Definition& definition) {
  const auto& p = definition.parameters;
  switch (definition.measure) {
    case Measure::kSpreadOfPeaks:
      return spread_of_peaks(curves);
    case Measure::kSpreadWhenHottestReaches:
      return spread_when_hottest_reaches(curves, *p.level);
    case Measure::kLargestSpread:
      return largest_spread(curves, p);
    default:
      return lag(curves, *p.level);
  }
}

}  // namespace

Figure measured_on_board(std::span<const Curve> curves, const Definition& definition) {
  if (curves.empty()) return undetermined(Phrase::kNoTraces);
  auto figure = on_board(curves, definition);
  if (curves.size() == 1 && figure.value) figure.note = say(Phrase::kOneTraceOnly);
  return figure;
}

}  // namespace ovenwright::measure
