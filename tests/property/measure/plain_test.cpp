#include "tests/property/measure/plain.h"

#include <gtest/gtest.h>

#include <cmath>
#include <sstream>

#include "tests/property/measure/random_log.h"
#include "tests/unit/measure/subject.h"

namespace ovenwright::measure {
namespace {

std::string described(unsigned seed, const Definition& definition, const Samples& samples) {
  std::ostringstream text;
  text << "seed " << seed << ", " << samples.time_s.size() << " samples, " << describe(definition.measure).name << " "
       << parameters_text(definition);
  return text.str();
}

/// Tolerances: both sum some thousand products of numbers below 500 in double precision, in a different order; U is a
/// difference of two such values. The steepest of equal windows may be off by 1e-9 °C/s.
void expect_same(const Value& got, const plain::Answer& want, const std::string& what) {
  SCOPED_TRACE(what + "; " + got.reason);
  ASSERT_EQ(got.value.has_value(), want.value.has_value());
  EXPECT_EQ(got.no_value, want.no_value);
  EXPECT_EQ(got.at_least, want.at_least);
  if (!want.value) return;
  const double scale = 1 + std::abs(*want.value);
  EXPECT_NEAR(*got.value, *want.value, 1e-8 * scale);
  ASSERT_EQ(got.expanded_uncertainty.has_value(), want.U.has_value());
  if (want.U) {
    EXPECT_NEAR(*got.expanded_uncertainty, *want.U, 1e-6 * (*want.U + scale));
  }
  if (want.from_s) {
    ASSERT_TRUE(got.from_s && got.to_s);
    EXPECT_NEAR(*got.from_s, *want.from_s, 1e-6);
    EXPECT_NEAR(*got.to_s, *want.to_s, 1e-6);
  }
}

Tolerance random_tolerance(Random& random) {
  // K class 1, T class 1 (bent at 125 °C), and a floor alone.
  return random.of(std::vector<Tolerance>{{1.5, 0.004}, {1.5, 0.004}, {0.5, 0.004}, {2.0, 0}});
}

struct Case {
  const char* name;
  Kind kind;
  unsigned logs;
  std::size_t most_samples;
};
void PrintTo(const Case& c, std::ostream* os) { *os << c.name; }
class SharedWork : public testing::TestWithParam<Case> {};

TEST_P(SharedWork, GivesWhatThePlainDefinitionsGive) {
  for (unsigned seed = 1; seed <= GetParam().logs; ++seed) {
    Random random(seed);
    const auto samples = random_log(random, GetParam().kind, GetParam().most_samples);
    Sampled sampled(samples.time_s, samples.temperature_C);
    sampled.subject().tolerance = random_tolerance(random);
    const auto definitions = random_definitions(random, samples, false);
    const auto values = evaluate(sampled.subject(), definitions, std::nullopt);
    const auto trace = plain::trace_of(sampled.channel());
    for (std::size_t k = 0; k < definitions.size(); ++k) {
      auto want = plain::answer(trace, definitions[k], sampled.subject().tolerance, sampled.subject().instrument_C);
      expect_same(values[k], want, described(seed, definitions[k], samples));
      if (HasFailure()) return;
    }
  }
}

INSTANTIATE_TEST_SUITE_P(Random, SharedWork,
                         testing::Values(Case{"reflow", Kind::kReflow, 1000, 150},
                                         Case{"reflow_long", Kind::kReflow, 12, 1500},
                                         Case{"wave", Kind::kWave, 1000, 200}, Case{"walk", Kind::kWalk, 1000, 100},
                                         Case{"steps", Kind::kSteps, 1000, 100}),
                         [](const auto& each) { return std::string(each.param.name); });

class SharedWorkOnBoard : public testing::TestWithParam<Case> {};

TEST_P(SharedWorkOnBoard, GivesWhatThePlainDefinitionsGive) {
  for (unsigned seed = 1; seed <= GetParam().logs; ++seed) {
    Random random(seed);
    const auto first = random_log(random, GetParam().kind, GetParam().most_samples);
    const auto clock = run::Clock::make(first.time_s);
    ASSERT_TRUE(clock);
    const bool one_clock = random.one_in(2);
    std::vector<Sampled> sampled;
    for (std::size_t k = 1 + random.below(4); k > 0; --k) {
      if (one_clock) {
        sampled.push_back(Sampled::on(*clock, random_temperatures(random, GetParam().kind, first.time_s)));
      } else {
        auto other = random_log(random, GetParam().kind, GetParam().most_samples);
        const double shift_s = first.time_s.front() - other.time_s.front() + random.between(-5, 5);
        for (auto& t : other.time_s) t += shift_s;
        sampled.emplace_back(other.time_s, other.temperature_C);
      }
      sampled.back().subject().tolerance = random_tolerance(random);
    }
    std::vector<Subject> subjects;
    std::vector<plain::Trace> traces;
    std::vector<Tolerance> tolerances;
    for (auto& each : sampled) {
      subjects.push_back(each.subject());
      traces.push_back(plain::trace_of(each.channel()));
      tolerances.push_back(each.subject().tolerance);
    }
    const auto definitions = random_definitions(random, first, true);
    const auto values = evaluate_board(subjects, definitions, std::nullopt);
    for (std::size_t k = 0; k < definitions.size(); ++k) {
      expect_same(values[k], plain::board_answer(traces, definitions[k], tolerances, 1.0),
                  described(seed, definitions[k], first));
      if (HasFailure()) return;
    }
  }
}

INSTANTIATE_TEST_SUITE_P(Random, SharedWorkOnBoard,
                         testing::Values(Case{"reflow", Kind::kReflow, 400, 90},
                                         Case{"reflow_long", Kind::kReflow, 4, 500}, Case{"walk", Kind::kWalk, 400, 60},
                                         Case{"steps", Kind::kSteps, 400, 60}),
                         [](const auto& each) { return std::string(each.param.name); });

}  // namespace
}  // namespace ovenwright::measure
