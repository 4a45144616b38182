#include "core/measure/kinds.h"
#include "core/measure/level.h"

namespace ovenwright::measure {
namespace {

constexpr double kIdle_C = 3;         // peak time: the rise that ends idle time before the oven
constexpr double kStartsWarm_C = 15;  // peak time: a start this far above the level hides part of the way

bool starts_above(const Curve& curve, double level_C) { return above_by(curve.at(0), level_C) > 0; }
bool ends_above(const Curve& curve, double level_C) { return above_by(curve.at(curve.last()), level_C) > 0; }

Figure of(const Duration& duration) {
  if (duration.total_s == 0) return valued(0, std::nullopt, std::nullopt);
  return valued(duration.total_s, duration.from_s, duration.to_s);
}

void bound(Figure& figure, bool at_least, std::string reason) {
  if (!at_least || figure.at_least) return;
  figure.at_least = true;
  figure.reason = std::move(reason);
}

/// What is counted above a level is only part where the log starts or ends above it, or ends before it came to it.
void bound_above(Figure& figure, const Curve& curve, double level_C) {
  bound(figure, starts_above(curve, level_C), say(Phrase::kStartsAbove, {temperature_text(level_C)}));
  bound(figure, ends_above(curve, level_C), say(Phrase::kEndsAbove, {temperature_text(level_C)}));
  bound(figure, curve.ends_on_rise(), say(Phrase::kEndsOnRise));
}

}  // namespace

Figure peak_figure(const Curve& curve) {
  const double at_s = curve.time_s(curve.peak());
  auto figure = valued(curve.peak_C(), at_s, at_s);
  bound(figure, curve.ends_on_rise(), say(Phrase::kEndsOnRise));
  bound(figure, curve.starts_at_peak(), say(Phrase::kStartsAtPeak));
  return figure;
}

Figure peak_time_figure(const Curve& curve, const Parameters& parameters, const Moves& moves) {
  const double lowest_C = curve.lowest_on_rise_C();
  const double level_C = std::max(*parameters.level, lowest_C + kIdle_C) + moves.level_C;
  const auto from_s = last_upward_crossing_s(curve, rise(curve), level_C);
  if (!from_s) {
    if (curve.ends_on_rise()) return undetermined(Phrase::kEndsOnRise);
    if (curve.starts_at_peak()) return undetermined(Phrase::kStartsAtPeak);
    return not_reached(Phrase::kPeakNotAbove,
                       {temperature_text(curve.peak_C(), level_C), temperature_text(level_C, curve.peak_C())});
  }
  const double to_s = curve.time_s(curve.peak());
  auto figure = valued(to_s - *from_s, *from_s, to_s);
  figure.counts_to_peak = true;
  bound(figure, curve.ends_on_rise(), say(Phrase::kEndsOnRise));
  bound(figure, above_by(lowest_C, *parameters.level + kStartsWarm_C) > 0,
        say(Phrase::kStartsAt, {temperature_text(lowest_C, *parameters.level)}));
  return figure;
}

Figure time_above_figure(const Curve& curve, const Parameters& parameters, const Moves& moves) {
  const double level_C = *parameters.level + moves.level_C;
  auto figure = of(time_above(curve, whole(curve), level_C));
  bound_above(figure, curve, level_C);
  return figure;
}

Figure excursions_figure(const Curve& curve, const Parameters& parameters) {
  const auto found = excursions(curve, *parameters.level);
  auto figure = found.count == 0 ? valued(0, std::nullopt, std::nullopt)
                                 : valued(static_cast<double>(found.count), found.from_s, found.to_s);
  bound_above(figure, curve, *parameters.level);
  return figure;
}

Figure area_figure(const Curve& curve, const Parameters& parameters) {
  const double level_C = *parameters.level;
  auto figure = of(time_above(curve, whole(curve), level_C));
  figure.seconds = *figure.value;
  figure.value = area_above(curve, whole(curve), level_C);
  bound_above(figure, curve, level_C);
  return figure;
}

Figure time_between_figure(const Curve& curve, const Parameters& parameters, const Moves& moves) {
  const double T1_C = std::get<double>(*parameters.T1) + moves.T1_C;
  const double T2_C = std::get<double>(*parameters.T2) + moves.T2_C;
  auto figure = of(time_between(curve, rise(curve), T1_C, T2_C));
  const bool reached = above_by(curve.peak_C(), T2_C) >= 0;
  if (!reached) {
    figure.note = say(Phrase::kCountsToPeak, {temperature_text(T2_C)});
    figure.counts_to_peak = *figure.value > 0;
  }
  bound(figure, starts_above(curve, T1_C), say(Phrase::kStartsAbove, {temperature_text(T1_C)}));
  bound(figure, curve.ends_on_rise() && !reached, say(Phrase::kEndsOnRise));
  return figure;
}

Figure time_near_peak_figure(const Curve& curve, const Parameters& parameters, const Moves& moves) {
  const auto* given = std::get_if<double>(&*parameters.reference);
  const double reference_C = given ? *given : curve.peak_C();
  const double level_C = reference_C - *parameters.offset + moves.level_C;
  auto figure = of(time_at_or_above(curve, whole(curve), level_C));
  bound(figure, curve.ends_on_rise(), say(Phrase::kEndsOnRise));
  bound(figure, above_by(curve.at(0), level_C) >= 0, say(Phrase::kStartsAtOrAbove, {temperature_text(level_C)}));
  bound(figure, above_by(curve.at(curve.last()), level_C) >= 0,
        say(Phrase::kEndsAtOrAbove, {temperature_text(level_C)}));
  return figure;
}

}  // namespace ovenwright::measure
