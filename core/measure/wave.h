#pragma once
#include <cstddef>
#include <optional>
#include <vector>

#include "core/measure/curve.h"

namespace ovenwright::measure {

/// One passage through solder: from the rise into it to the moment that the joint leaves it.
struct Contact {
  double from_s = 0, to_s = 0;
  bool cut_off = false;  ///< the log ends before the joint leaves the solder
};

/// A pass over a solder wave: where it starts, and the peaks and valleys from there on, parted by reversals of 10 °C
/// or more, so that two waves are two peaks even where the solder between them stays above the level.
struct Wave {
  struct Peak {
    std::size_t valley = 0;  ///< the lowest sample between the peak before, or the start, and this peak
    std::size_t peak = 0;
  };
  std::size_t start = 0;  ///< the last sample before the steep rise
  std::vector<Peak> peaks;
};

enum class WaveSearch { kFound, kNoneSeen, kStartNotShown };
struct FoundWave {
  WaveSearch search = WaveSearch::kNoneSeen;
  Wave wave;
};

/// Looks for the first rise of at least half the steepest slope (1 s windows, and 4 °C/s), and back to where the slope
/// was a fifth of the steepest or less (or 3 °C/s). None seen without a slope of 5 °C/s. Cost: O(n).
FoundWave find_wave(const Curve& curve);

/// A contact for each peak above the level: from the upward crossing of max(level, valley before + 5 °C) to the last
/// moment at max(level, peak − 5 °C) or above. Time above liquidus goes on while the joint cools in air; contact does
/// not.
std::vector<Contact> contacts(const Curve& curve, const Wave& wave, double level_C);

}  // namespace ovenwright::measure
