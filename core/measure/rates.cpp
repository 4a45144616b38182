#include <fmt/format.h>

#include "core/measure/kinds.h"
#include "core/measure/level.h"

namespace ovenwright::measure {
namespace {

constexpr double kInfinity = std::numeric_limits<double>::infinity();

/// The trace's peak lies below what the measure needs: a fact where the log shows the peak, else not known.
Figure never_reaches(const Curve& curve, double level_C) {
  if (curve.ends_on_rise()) return undetermined(Phrase::kEndsOnRise);
  if (curve.starts_at_peak()) return undetermined(Phrase::kStartsAtPeak);
  return not_reached(Phrase::kPeakNotReaching,
                     {temperature_text(curve.peak_C(), level_C), temperature_text(level_C, curve.peak_C())});
}

Figure mean_rate(double difference_C, const Duration& duration) {
  if (!(duration.total_s > 0) || !(difference_C > 0)) return undetermined(Phrase::kNoTimeBetween);
  auto figure = valued(difference_C / duration.total_s, duration.from_s, duration.to_s);
  figure.seconds = duration.total_s;
  return figure;
}

Figure no_window(const Curve& curve, const Parameters& parameters, bool falling) {
  const bool ranged = parameters.from || parameters.to;
  return undetermined(falling ? (ranged ? Phrase::kNoWindowOnFallInRange : Phrase::kNoWindowOnFall)
                              : (ranged ? Phrase::kNoWindowOnRiseInRange : Phrase::kNoWindowOnRise),
                      {fmt::format("{:.4g} s", *parameters.over), fmt::format("{:.3g} s", curve.interval_s())});
}

}  // namespace

Figure steepest_figure(const Curve& curve, const Parameters& parameters, bool falling) {
  if (falling && curve.ends_on_rise()) return undetermined(Phrase::kEndsOnRise);
  SlopeWindows windows;
  windows.over_s = *parameters.over;
  windows.stretch = falling ? fall(curve) : rise(curve);
  windows.fall = falling;
  std::optional<double> lower_C = parameters.from, upper_C = parameters.to;
  if (lower_C && upper_C && *lower_C > *upper_C) std::swap(lower_C, upper_C);
  if (lower_C) windows.lowest_C = *lower_C;
  if (upper_C) windows.highest_C = *upper_C;
  const auto slope = steepest(curve, windows);
  if (!slope) return no_window(curve, parameters, falling);
  auto figure = valued(falling ? -slope->per_s : slope->per_s, curve.time_s(slope->first), curve.time_s(slope->last));
  figure.slope = *slope;
  const double edge_C = curve.at(falling ? curve.last() : 0);
  if (!falling && curve.ends_on_rise()) {
    figure.at_least = true;
    figure.reason = say(Phrase::kEndsOnRise);
  } else if (lower_C && above_by(edge_C, *lower_C) > 0) {
    figure.at_least = true;
    figure.reason = say(falling ? Phrase::kEndsAbove : Phrase::kStartsAbove, {temperature_text(*lower_C)});
  }
  return figure;
}

Figure mean_rise_figure(const Curve& curve, const Parameters& parameters, const Moves& moves) {
  const double T1_C = std::get<double>(*parameters.T1) + moves.T1_C;
  const auto* given = std::get_if<double>(&*parameters.T2);
  const double T2_C = given ? *given + moves.T2_C : curve.peak_C();
  if (given && above_by(curve.peak_C(), T2_C) < 0) return never_reaches(curve, T2_C);
  if (!given && above_by(curve.peak_C(), T1_C) <= 0) return never_reaches(curve, T1_C);
  if (above_by(curve.at(0), T1_C) > 0) return undetermined(Phrase::kStartsAbove, {temperature_text(T1_C)});
  auto figure = mean_rate(T2_C - T1_C, time_between(curve, rise(curve), T1_C, given ? T2_C : kInfinity));
  if (!given && figure.value) {
    figure.counts_to_peak = true;
    figure.at_least = curve.ends_on_rise();
    if (figure.at_least) figure.reason = say(Phrase::kEndsOnRise);
  }
  return figure;
}

Figure mean_fall_figure(const Curve& curve, const Parameters& parameters, const Moves& moves) {
  if (curve.ends_on_rise()) return undetermined(Phrase::kEndsOnRise);
  const auto* given = std::get_if<double>(&*parameters.T1);
  const double T1_C = given ? *given + moves.T1_C : curve.peak_C();
  const double T2_C = std::get<double>(*parameters.T2) + moves.T2_C;
  if (given && above_by(curve.peak_C(), T1_C) < 0) return never_reaches(curve, T1_C);
  if (!given && above_by(curve.peak_C(), T2_C) <= 0) return never_reaches(curve, T2_C);
  if (above_by(curve.at(curve.last()), T2_C) > 0) return undetermined(Phrase::kEndsAbove, {temperature_text(T2_C)});
  auto figure = mean_rate(T1_C - T2_C, time_between(curve, fall(curve), T2_C, given ? T1_C : kInfinity));
  figure.counts_to_peak = !given && figure.value;
  return figure;
}

}  // namespace ovenwright::measure
