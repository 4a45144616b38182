#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <functional>

#include "tests/property/measure/random_log.h"
#include "tests/unit/measure/subject.h"

namespace ovenwright::measure {
namespace {

constexpr unsigned kLogs = 200;
constexpr std::size_t kMostSamples = 120;

/// Values only; uncertainties follow temperatures themselves and are no invariants.
std::vector<Value> values(const Samples& samples, const std::vector<Definition>& definitions) {
  const Sampled sampled(samples.time_s, samples.temperature_C);
  return evaluate(sampled.subject(), definitions, std::nullopt, {false, 1});
}

Parameters with_levels(Parameters p, const std::function<double(double)>& change) {
  for (auto* level : {&p.level, &p.from, &p.to})
    if (*level) **level = change(**level);
  for (auto* level : {&p.T1, &p.T2, &p.reference})
    if (*level)
      if (auto* number = std::get_if<double>(&**level)) *number = change(*number);
  return p;
}

/// Runs `check` on random logs of every kind with random definitions of all measures of one trace.
void on_random_logs(const std::function<void(Random&, const Samples&, const std::vector<Definition>&)>& check) {
  for (const auto kind : {Kind::kReflow, Kind::kWave, Kind::kWalk})
    for (unsigned seed = 1; seed <= kLogs; ++seed) {
      Random random(seed);
      const auto samples = random_log(random, kind, kMostSamples);
      const auto definitions = random_definitions(random, samples, false);
      SCOPED_TRACE(testing::Message() << "kind " << static_cast<int>(kind) << ", seed " << seed);
      check(random, samples, definitions);
      if (testing::Test::HasFailure()) return;
    }
}

// Tolerances here: a crossing's time is good to some 1e-15 of the clock's largest time over the steepness of a segment,
// and values are sums of some hundred of such; 1e-6 of a value stands far above that and far below a real change.
void expect_near(const Value& got, const Value& want, double factor, double offset, const Definition& definition) {
  SCOPED_TRACE(std::string(describe(definition.measure).name) + " " + parameters_text(definition));
  ASSERT_EQ(got.value.has_value(), want.value.has_value()) << got.reason << want.reason;
  EXPECT_EQ(got.no_value, want.no_value);
  EXPECT_EQ(got.at_least, want.at_least);
  if (!want.value) return;
  const double expected = *want.value * factor + offset;
  EXPECT_NEAR(*got.value, expected, 1e-6 * (1 + std::abs(expected)));
}

TEST(Invariance, ShiftingTheClockShiftsMomentsAndNothingElse) {
  on_random_logs([](Random& random, const Samples& samples, const std::vector<Definition>& definitions) {
    const double shift_s = std::round(random.between(-1000, 1000));
    auto shifted = samples;
    for (auto& t : shifted.time_s) t += shift_s;
    auto moved = definitions;
    for (auto& definition : moved)
      if (definition.parameters.time) *definition.parameters.time += shift_s;
    const auto before = values(samples, definitions), after = values(shifted, moved);
    for (std::size_t k = 0; k < before.size(); ++k) {
      expect_near(after[k], before[k], 1, 0, definitions[k]);
      const bool windowed =
          definitions[k].measure == Measure::kSteepestRise || definitions[k].measure == Measure::kSteepestFall;
      if (!before[k].from_s || windowed) continue;
      EXPECT_NEAR(*after[k].from_s, *before[k].from_s + shift_s, 1e-6);
      EXPECT_NEAR(*after[k].to_s, *before[k].to_s + shift_s, 1e-6);
    }
  });
}

TEST(Invariance, AddingAConstantToCurveAndLevelsMovesTemperaturesOnly) {
  on_random_logs([](Random& random, const Samples& samples, const std::vector<Definition>& definitions) {
    const double shift_C = std::round(random.between(-100, 100));
    auto warmer = samples;
    for (auto& T : warmer.temperature_C) T += shift_C;
    auto moved = definitions;
    for (auto& definition : moved)
      definition.parameters = with_levels(definition.parameters, [&](double level) { return level + shift_C; });
    const auto before = values(samples, definitions), after = values(warmer, moved);
    for (std::size_t k = 0; k < before.size(); ++k) {
      const bool temperature =
          describe(definitions[k].measure).unit == Unit::kCelsius && definitions[k].measure != Measure::kWaveStep;
      expect_near(after[k], before[k], 1, temperature ? shift_C : 0, definitions[k]);
    }
  });
}

TEST(Invariance, StretchingTheClockStretchesTimesAndFlattensRates) {
  on_random_logs([](Random&, const Samples& samples, const std::vector<Definition>& definitions) {
    auto slower = samples;
    for (auto& t : slower.time_s) t *= 4;
    std::vector<Definition> same, stretched;
    for (const auto& definition : definitions) {
      // Excursions have a fixed second, waves a fixed window.
      if (definition.measure == Measure::kExcursionsAbove || describe(definition.measure).wave) continue;
      same.push_back(definition);
      stretched.push_back(definition);
      auto& p = stretched.back().parameters;
      if (p.over) *p.over *= 4;
      if (p.time) *p.time *= 4;
    }
    const auto before = values(samples, same), after = values(slower, stretched);
    for (std::size_t k = 0; k < before.size(); ++k) {
      const Unit unit = describe(same[k].measure).unit;
      const double factor = unit == Unit::kCelsius ? 1 : unit == Unit::kCelsiusPerSecond ? 0.25 : 4;
      expect_near(after[k], before[k], factor, 0, same[k]);
    }
  });
}

TEST(Invariance, SamplesAddedOnThePolylineChangeNoMeasureOfLevels) {
  on_random_logs([](Random& random, const Samples& samples, const std::vector<Definition>& definitions) {
    Samples finer;
    for (std::size_t i = 0; i < samples.time_s.size(); ++i) {
      if (i > 0 && random.one_in(2)) {
        finer.time_s.push_back((samples.time_s[i - 1] + samples.time_s[i]) / 2);
        finer.temperature_C.push_back((samples.temperature_C[i - 1] + samples.temperature_C[i]) / 2);
      }
      finer.time_s.push_back(samples.time_s[i]);
      finer.temperature_C.push_back(samples.temperature_C[i]);
    }
    std::vector<Definition> levels;
    for (const auto& definition : definitions)
      if (!describe(definition.measure).wave && !definition.parameters.over) levels.push_back(definition);
    const auto before = values(samples, levels), after = values(finer, levels);
    for (std::size_t k = 0; k < before.size(); ++k) expect_near(after[k], before[k], 1, 0, levels[k]);
  });
}

TEST(Invariance, PartsOfALogAddUpToTheWhole) {
  on_random_logs([](Random& random, const Samples& samples, const std::vector<Definition>& definitions) {
    const std::size_t n = samples.time_s.size();
    if (n < 6) return;
    const auto at = static_cast<std::ptrdiff_t>(2 + random.below(n - 5));
    const auto part = [&](std::ptrdiff_t first, std::ptrdiff_t end) {
      return Samples{{samples.time_s.begin() + first, samples.time_s.begin() + end},
                     {samples.temperature_C.begin() + first, samples.temperature_C.begin() + end}};
    };
    std::vector<Definition> additive;
    for (const auto& definition : definitions)
      if (definition.measure == Measure::kTimeAbove || definition.measure == Measure::kAreaAbove)
        additive.push_back(definition);
    const auto all = values(samples, additive);
    const auto first = values(part(0, at + 1), additive),
               second = values(part(at, static_cast<std::ptrdiff_t>(n)), additive);
    for (std::size_t k = 0; k < all.size(); ++k)
      EXPECT_NEAR(*first[k].value + *second[k].value, *all[k].value, 1e-6 * (1 + *all[k].value));
  });
}

TEST(Invariance, BackwardsARiseIsAFall) {
  on_random_logs([](Random& random, const Samples& samples, const std::vector<Definition>&) {
    const auto& T = samples.temperature_C;
    const double peak_C = *std::ranges::max_element(T);
    if (std::ranges::count(T, peak_C) != 1) return;  // the first of equal peaks would be the last
    Samples backwards = samples;
    for (auto& t : backwards.time_s) t = samples.time_s.front() + samples.time_s.back() - t;
    std::ranges::reverse(backwards.time_s);
    std::ranges::reverse(backwards.temperature_C);
    const double level = random.between(*std::ranges::min_element(T), peak_C);
    Definition rise{Measure::kMeanRise, {}}, fall{Measure::kMeanFall, {}};
    rise.parameters.T1 = level, rise.parameters.T2 = OwnPeak{};
    fall.parameters.T1 = OwnPeak{}, fall.parameters.T2 = level;
    Definition steep_rise{Measure::kSteepestRise, {}}, steep_fall{Measure::kSteepestFall, {}};
    steep_rise.parameters.over = steep_fall.parameters.over = 20;
    const auto up = values(samples, {rise, steep_rise}), down = values(backwards, {fall, steep_fall});
    for (const std::size_t k : {0, 1})
      if (up[k].value && down[k].value) {
        EXPECT_NEAR(*down[k].value, *up[k].value, 1e-6 * (1 + std::abs(*up[k].value)));
      }
  });
}

TEST(Invariance, BoardMeasuresDoNotDependOnTheOrderOfChannels) {
  for (unsigned seed = 1; seed <= kLogs; ++seed) {
    Random random(seed);
    std::vector<Sampled> sampled;
    Samples first;
    for (std::size_t k = 0; k < 4; ++k) {
      auto log = random_log(random, Kind::kReflow, kMostSamples);
      if (k == 0) first = log;
      const double shift_s = first.time_s.front() - log.time_s.front();
      for (auto& t : log.time_s) t += shift_s;
      for (auto& T : log.temperature_C) T += 0.001 * static_cast<double>(k);  // no two alike
      sampled.emplace_back(log.time_s, log.temperature_C);
    }
    std::vector<Subject> subjects;
    for (const auto& each : sampled) subjects.push_back(each.subject());
    const auto definitions = random_definitions(random, first, true);
    const auto forward = evaluate_board(subjects, definitions, std::nullopt);
    std::ranges::reverse(subjects);
    const auto backward = evaluate_board(subjects, definitions, std::nullopt);
    for (std::size_t k = 0; k < definitions.size(); ++k) {
      SCOPED_TRACE(testing::Message() << "seed " << seed);
      expect_near(backward[k], forward[k], 1, 0, definitions[k]);
      ASSERT_EQ(backward[k].expanded_uncertainty.has_value(), forward[k].expanded_uncertainty.has_value());
      const double U = forward[k].expanded_uncertainty.value_or(0);
      EXPECT_NEAR(backward[k].expanded_uncertainty.value_or(0), U, 1e-9 * (1 + U));
    }
  }
}

}  // namespace
}  // namespace ovenwright::measure
