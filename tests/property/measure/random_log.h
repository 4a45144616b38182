#pragma once
#include <random>
#include <string>
#include <vector>

#include "core/measure/measure.h"

namespace ovenwright::measure {

/// Where random logs come from; the seed is told with every failure.
class Random {
 public:
  explicit Random(unsigned seed) : engine_(seed) {}
  double between(double low, double high) { return low + (high - low) * std::generate_canonical<double, 53>(engine_); }
  std::size_t below(std::size_t count) { return static_cast<std::size_t>(engine_() % count); }
  bool one_in(std::size_t count) { return below(count) == 0; }
  double normal() { return normal_(engine_); }
  template <class T>
  const T& of(const std::vector<T>& choices) {
    return choices[below(choices.size())];
  }

 private:
  std::mt19937_64 engine_;
  std::normal_distribution<double> normal_;
};

enum class Kind { kReflow, kWave, kWalk, kSteps };

struct Samples {
  std::vector<double> time_s, temperature_C;
};

/// Times at a random interval: even, rounded to a coarse clock, jittered, or with gaps.
std::vector<double> random_clock(Random& random, std::size_t samples, double duration_s);

/// Temperatures on a clock: a reflow curve, a pass over one or two waves, a random walk, or whole-degree steps that lie
/// on levels; with or without noise, rounded or not, sometimes by way of °F.
std::vector<double> random_temperatures(Random& random, Kind kind, const std::vector<double>& time_s);

/// A log that is whole or cut at its start or end.
Samples random_log(Random& random, Kind kind, std::size_t most_samples);

/// Every measure of one trace (or of the board), with levels near what the samples hold, some exactly on one.
std::vector<Definition> random_definitions(Random& random, const Samples& samples, bool board);

}  // namespace ovenwright::measure
