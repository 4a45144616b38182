#include "core/measure/wave.h"

#include "core/measure/level.h"
#include "core/measure/slope.h"

namespace ovenwright::measure {
namespace {

constexpr double kSlowestWave_per_s = 5;  // °C/s, the steepest slope that a wave has at least
constexpr double kSteepShare = 0.5, kSteep_per_s = 4;
constexpr double kGentleShare = 0.2, kGentle_per_s = 3;
constexpr double kReversal_C = 10;
constexpr double kContactEdge_C = 5;
constexpr double kRounding = 1e-9;

std::vector<Wave::Peak> peaks_from(const Curve& curve, std::size_t start) {
  std::vector<Wave::Peak> peaks;
  std::size_t lowest = start, highest = start;
  bool risen = false;
  for (std::size_t i = start + 1; i < curve.size(); ++i) {
    const double T = curve.at(i);
    if (risen) {
      if (T > curve.at(highest)) highest = i;
      if (T <= curve.at(highest) - kReversal_C + kOnLevel_C) {
        peaks.push_back({lowest, highest});
        risen = false;
        lowest = i;
      }
    } else {
      if (T < curve.at(lowest)) lowest = i;
      if (T >= curve.at(lowest) + kReversal_C - kOnLevel_C) {
        risen = true;
        highest = i;
      }
    }
  }
  if (risen) peaks.push_back({lowest, highest});
  return peaks;
}

}  // namespace

FoundWave find_wave(const Curve& curve) {
  const auto slopes = wave_slopes(curve);
  double steepest = -std::numeric_limits<double>::infinity();
  for (const double slope : slopes)
    if (slope > steepest) steepest = slope;
  if (!(steepest >= kSlowestWave_per_s - kRounding)) return {};
  const double steep = std::max(kSteepShare * steepest, kSteep_per_s) - kRounding;
  const double gentle = std::max(kGentleShare * steepest, kGentle_per_s) + kRounding;
  std::size_t i = 0;
  while (!(slopes[i] >= steep)) ++i;
  while (i > 0 && !(slopes[i - 1] <= gentle)) --i;
  if (i == 0) return {WaveSearch::kStartNotShown, {}};
  return {WaveSearch::kFound, {i - 1, peaks_from(curve, i - 1)}};
}

std::vector<Contact> contacts(const Curve& curve, const Wave& wave, double level_C) {
  std::vector<Contact> found;
  for (std::size_t k = 0; k < wave.peaks.size(); ++k) {
    const auto& [valley, peak] = wave.peaks[k];
    if (!(above_by(curve.at(peak), level_C) > 0)) continue;
    const double in_C = std::max(level_C, curve.at(valley) + kContactEdge_C);
    const double out_C = std::max(level_C, curve.at(peak) - kContactEdge_C);
    const std::size_t until = k + 1 < wave.peaks.size() ? wave.peaks[k + 1].valley : curve.last();
    const auto from_s = first_upward_crossing_s(curve, {valley, peak}, in_C);
    const auto to_s = last_at_or_above_s(curve, {peak, until}, out_C);
    if (from_s && to_s) found.push_back({*from_s, *to_s, *to_s == curve.end_s()});
  }
  return found;
}

}  // namespace ovenwright::measure
