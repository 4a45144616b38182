#include "tests/property/measure/random_log.h"

#include <algorithm>
#include <cmath>

namespace ovenwright::measure {
namespace {

double S(double x) { return 1 / (1 + std::exp(-x)); }

/// A curve made of soft steps, its size and times drawn at random.
std::vector<double> reflow(Random& random, const std::vector<double>& time_s) {
  const double soak = random.between(90, 150), slow = random.between(10, 60), top = random.between(30, 90);
  const double stretch = random.between(0.5, 1.3), start = random.between(15, 35);
  std::vector<double> T;
  for (const double at : time_s) {
    const double t = (at - time_s.front()) / stretch;
    T.push_back(start + soak * S((t - 70) / 16) + slow * S((t - 150) / 22) + top * S((t - 213) / 10) -
                (soak + slow + top) * S((t - 274) / random.between(13, 13.0001)));
  }
  return T;
}

/// Preheat, then one or two dips into solder with quick ends.
std::vector<double> wave(Random& random, const std::vector<double>& time_s) {
  const double duration_s = time_s.back() - time_s.front();
  const double preheat = random.between(60, 110), bath = random.between(230, 265), slow_per_s = random.between(0.2, 1);
  const double first_s = time_s.front() + duration_s * random.between(0.2, 0.6), contact_s = random.between(0.5, 4);
  const bool twice = !random.one_in(3);
  const double second_s = first_s + contact_s + random.between(0.5, 4), quick_s = random.between(0.1, 0.6);
  std::vector<double> T;
  double now = 25;
  for (std::size_t i = 0; i < time_s.size(); ++i) {
    const double t = time_s[i], step = i == 0 ? 0 : t - time_s[i - 1];
    const bool dipped =
        (t >= first_s && t < first_s + contact_s) || (twice && t >= second_s && t < second_s + contact_s);
    if (dipped) {
      now += (bath - now) * (1 - std::exp(-step / quick_s));
    } else if (t < first_s) {
      now = std::min(preheat + 25, now + slow_per_s * step * 3);
    } else {
      now += (60 - now) * (1 - std::exp(-step / 12));
    }
    T.push_back(now);
  }
  return T;
}

std::vector<double> walk(Random& random, const std::vector<double>& time_s) {
  std::vector<double> T{random.between(20, 250)};
  const double size = random.between(0.5, 30);
  while (T.size() < time_s.size()) T.push_back(std::clamp(T.back() + size * random.normal(), -40.0, 420.0));
  return T;
}

std::vector<double> steps(Random& random, const std::vector<double>& time_s) {
  static const std::vector<double> kHeights{25, 150, 200, 212, 215, 217, 219, 222, 240};
  std::vector<double> T;
  while (T.size() < time_s.size()) {
    const double height = random.of(kHeights);
    for (std::size_t k = 1 + random.below(4); k > 0 && T.size() < time_s.size(); --k) T.push_back(height);
  }
  return T;
}

double some_level(Random& random, const Samples& samples) {
  const auto [low, high] = std::ranges::minmax(samples.temperature_C);
  switch (random.below(4)) {
    case 0:
      return random.of(std::vector<double>{150, 183, 200, 217});
    case 1:
      return random.of(samples.temperature_C);
    default:
      return random.between(low - 5, high + 5);
  }
}

}  // namespace

std::vector<double> random_clock(Random& random, std::size_t samples, double duration_s) {
  const double interval_s = duration_s / static_cast<double>(samples);
  const std::size_t kind = random.below(4);
  std::vector<double> time_s;
  double at_s = random.one_in(2) ? 0 : random.between(-50, 1e5);
  for (std::size_t i = 0; i < samples; ++i) {
    double shown_s = at_s;
    if (kind == 1) shown_s = std::round(at_s * 10) / 10;
    if (!time_s.empty() && shown_s <= time_s.back()) shown_s = time_s.back() + interval_s / 3;
    time_s.push_back(shown_s);
    at_s += interval_s * (kind == 2 ? random.between(0.3, 1.7) : 1);
    if (kind == 3 && random.one_in(40)) at_s += interval_s * random.between(1, 6);
  }
  return time_s;
}

std::vector<double> random_temperatures(Random& random, Kind kind, const std::vector<double>& time_s) {
  auto T = kind == Kind::kReflow ? reflow(random, time_s)
           : kind == Kind::kWave ? wave(random, time_s)
           : kind == Kind::kWalk ? walk(random, time_s)
                                 : steps(random, time_s);
  const double noise_C = random.of(std::vector<double>{0, 0, 0.05, 0.3});
  const double digit_C = random.of(std::vector<double>{0, 0.01, 0.1, 1});
  const bool fahrenheit = random.one_in(4);
  for (auto& value : T) {
    value += noise_C * random.normal();
    if (fahrenheit) value = value * 9 / 5 + 32;
    if (digit_C > 0) value = std::round(value / digit_C) * digit_C;
    if (fahrenheit) value = (value - 32) * 5 / 9;
  }
  return T;
}

Samples random_log(Random& random, Kind kind, std::size_t most_samples) {
  const std::size_t samples = random.one_in(20) ? 3 + random.below(5) : 8 + random.below(most_samples - 7);
  const double duration_s = kind == Kind::kWave ? random.between(15, 80)
                            : kind == Kind::kSteps
                                ? static_cast<double>(samples) * random.of(std::vector<double>{0.25, 0.5, 1, 2})
                                : random.between(150, 450);
  Samples log;
  log.time_s = random_clock(random, samples, duration_s);
  log.temperature_C = random_temperatures(random, kind, log.time_s);
  if (random.one_in(3)) {  // cut at either end
    std::size_t first = random.one_in(2) ? random.below(samples) : 0;
    std::size_t last = random.one_in(2) ? random.below(samples) : samples;
    if (last < first + 3) first = 0, last = samples;
    for (auto* values : {&log.time_s, &log.temperature_C})
      *values =
          std::vector<double>(values->begin() + static_cast<long>(first), values->begin() + static_cast<long>(last));
  }
  return log;
}

std::vector<Definition> random_definitions(Random& random, const Samples& samples, bool board) {
  std::vector<Definition> all;
  for (const auto& description : descriptions()) {
    if (description.board != board) continue;
    Definition definition{description.measure, {}};
    auto& p = definition.parameters;
    const double a = some_level(random, samples), b = some_level(random, samples);
    const double low = std::min(a, b), high = std::max(a, b) + 0.5;
    const bool knows_range = description.measure == Measure::kSteepestRise ||
                             description.measure == Measure::kSteepestFall ||
                             description.measure == Measure::kLargestSpread;
    switch (description.measure) {
      case Measure::kPeakTime:
        p.level = random.one_in(2) ? 25 : a;
        break;
      case Measure::kTimeBetweenOnRise:
        p.T1 = low, p.T2 = high;
        break;
      case Measure::kMeanRise:
        p.T1 = low, p.T2 = random.one_in(2) ? Level(high) : Level(OwnPeak{});
        break;
      case Measure::kMeanFall:
        p.T1 = random.one_in(2) ? Level(high) : Level(OwnPeak{}), p.T2 = low;
        break;
      case Measure::kTimeNearPeak:
        p.offset = random.between(0, 8);
        p.reference = random.one_in(2) ? Level(a) : Level(OwnPeak{});
        break;
      case Measure::kSteepestRise:
      case Measure::kSteepestFall:
        p.over = random.of(std::vector<double>{2, 5, 5, 20});
        break;
      case Measure::kTemperatureAt:
        p.time = random.between(samples.time_s.front() - 5, samples.time_s.back() + 5);
        break;
      default:
        if (std::ranges::find(description.required, "level") != description.required.end()) p.level = a;
    }
    if (knows_range && random.one_in(2)) {
      if (!random.one_in(4)) p.from = a;
      if (!random.one_in(4)) p.to = b;
    }
    all.push_back(definition);
  }
  return all;
}

}  // namespace ovenwright::measure
