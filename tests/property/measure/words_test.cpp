#include <gtest/gtest.h>

#include <set>

#include "core/measure/parameter.h"
#include "core/units/phrase.h"
#include "tests/property/measure/random_log.h"
#include "tests/unit/measure/subject.h"

// Why a measure has no value, or only a bound, is a phrase: another language finds it again.
namespace ovenwright::measure {
namespace {

class Words : public testing::TestWithParam<Kind> {};

TEST_P(Words, OfRandomLogsArePhrases) {
  std::set<std::string> unknown, seen;
  const auto look = [&](const std::string& text) {
    if (text.empty()) return;
    const auto found = said(text);
    (found ? seen : unknown).insert(found ? std::string(found->pattern) : text);
  };
  for (unsigned seed = 1; seed <= 400; ++seed) {
    Random random(seed);
    const auto samples = random_log(random, GetParam(), 60);
    Sampled one(samples.time_s, samples.temperature_C);
    const auto other =
        Sampled::on(one.channel().trace->clock(), random_temperatures(random, GetParam(), samples.time_s));
    if (random.one_in(3)) one.channel().gaps = {{samples.time_s.front(), samples.time_s.back()}};
    auto values = evaluate(one.subject(), random_definitions(random, samples, false), std::nullopt);
    const std::vector<Subject> board{one.subject(), other.subject()};
    for (auto& value : evaluate_board(board, random_definitions(random, samples, true), std::nullopt))
      values.push_back(std::move(value));
    for (const auto& value : values) {
      look(value.reason);
      look(value.note);
      // Source: contracts.md, JSON: what has no value says why.
      EXPECT_EQ(value.reason.empty(), !value.no_value && !value.at_least);
    }
  }
  std::string list;
  for (const auto& text : unknown) list += text + "\n";
  EXPECT_EQ(list, "");
  EXPECT_GE(seen.size(), 5u);
}

INSTANTIATE_TEST_SUITE_P(Random, Words, testing::Values(Kind::kReflow, Kind::kWave, Kind::kWalk, Kind::kSteps),
                         [](const auto& each) { return std::to_string(each.index); });

}  // namespace
}  // namespace ovenwright::measure
