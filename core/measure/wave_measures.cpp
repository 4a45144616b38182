#include "core/measure/kinds.h"
#include "core/measure/wave.h"

namespace ovenwright::measure {
namespace {

Figure preheat(const Curve& curve, const Wave& wave) {
  const double at_s = curve.time_s(wave.start);
  return valued(curve.at(wave.start), at_s, at_s);
}

Figure step(const Curve& curve, const Wave& wave) {
  if (wave.peaks.empty()) return undetermined(curve.ends_on_rise() ? Phrase::kEndsOnRise : Phrase::kNoPeakInWave);
  const std::size_t peak = wave.peaks.front().peak;
  auto figure = valued(curve.at(peak) - curve.at(wave.start), curve.time_s(wave.start), curve.time_s(peak));
  figure.at_least = peak == curve.last();
  if (figure.at_least) figure.reason = say(Phrase::kEndsOnRise);
  return figure;
}

Figure contact_time(const Curve& curve, const Wave& wave, double level_C, bool longest) {
  const auto found = contacts(curve, wave, level_C);
  Figure figure = valued(0, std::nullopt, std::nullopt);
  bool cut_off = curve.ends_on_rise();
  for (const auto& contact : found) {
    const double seconds = contact.to_s - contact.from_s;
    cut_off = cut_off || contact.cut_off;
    if (longest) {
      if (figure.contacts > 0 && !(seconds > *figure.value)) continue;
      figure.value = seconds;
      figure.from_s = contact.from_s;
      figure.contacts = 1;
    } else {
      *figure.value += seconds;
      if (!figure.from_s) figure.from_s = contact.from_s;
      ++figure.contacts;
    }
    figure.to_s = contact.to_s;
  }
  figure.at_least = cut_off;
  if (cut_off) figure.reason = say(Phrase::kStillInSolder);
  return figure;
}

}  // namespace

Figure wave_figure(const Curve& curve, const Definition& definition) {
  const auto found = find_wave(curve);
  if (found.search == WaveSearch::kNoneSeen) return undetermined(Phrase::kNoWave);
  if (found.search == WaveSearch::kStartNotShown) return undetermined(Phrase::kWaveStartNotShown);
  switch (definition.measure) {
    case Measure::kWavePreheatTemperature:
      return preheat(curve, found.wave);
    case Measure::kWaveStep:
      return step(curve, found.wave);
    default:
      return contact_time(curve, found.wave, *definition.parameters.level,
                          definition.measure == Measure::kWaveLongestContact);
  }
}

}  // namespace ovenwright::measure
