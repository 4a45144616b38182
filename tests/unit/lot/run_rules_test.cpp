// Source of the rules: Western Electric, Statistical Quality Control Handbook (1956); Nelson, Journal of Quality
// Technology 16 (1984) 238. Each case is the shortest series that completes one pattern, and one that just does not.
// Centre 0, sigma 1.
#include "core/lot/run_rules.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <string>

namespace ovenwright::lot {
namespace {

struct Case {
  const char* name;
  RuleSet set;
  int rule;
  std::vector<double> values;
  std::vector<std::size_t> at;  ///< points that complete it
};
void PrintTo(const Case& c, std::ostream* os) { *os << c.name; }
class RunRules : public testing::TestWithParam<Case> {};

TEST_P(RunRules, SignalsAtThePointThatCompletesIt) {
  const auto& c = GetParam();
  std::vector<std::size_t> at;
  for (const auto& hit : run_rule_hits(c.values, 0, 1, c.set))
    if (hit.rule == c.rule) at.push_back(hit.point);
  EXPECT_EQ(at, c.at);
}

constexpr auto kWeco = RuleSet::kWesternElectric;
constexpr auto kNelson = RuleSet::kNelson;
const std::vector<Case> kCases{
    {"weco1", kWeco, 1, {0, 3.1, 0, -3.1}, {1, 3}},
    {"weco1_on_the_line", kWeco, 1, {3, -3}, {}},
    {"weco2", kWeco, 2, {0, 2.1, 0, 2.1}, {3}},
    {"weco2_cut_short_at_the_start", kWeco, 2, {2.1, 2.1}, {1}},
    {"weco2_other_sides", kWeco, 2, {2.1, -2.1, 0}, {}},
    {"weco2_the_last_point_is_beyond", kWeco, 2, {2.1, 2.1, 0, 0}, {1}},
    {"weco2_four_apart", kWeco, 2, {2.1, 0, 0, 2.1}, {}},
    {"weco3", kWeco, 3, {1.1, 1.1, 0, 1.1, 1.1}, {4}},
    {"weco3_three_are_not_enough", kWeco, 3, {1.1, 1.1, 0, 0, 1.1}, {}},
    {"weco3_on_the_line", kWeco, 3, {1, 1, 1, 1, 1}, {}},
    {"weco4", kWeco, 4, std::vector<double>(8, 0.1), {7}},
    {"weco4_below_goes_on", kWeco, 4, std::vector<double>(10, -0.1), {7, 8, 9}},
    {"weco4_seven", kWeco, 4, std::vector<double>(7, 0.1), {}},
    {"weco4_centre_ends_it", kWeco, 4, {.1, .1, .1, .1, 0, .1, .1, .1, .1}, {}},
    {"nelson1", kNelson, 1, {3.1}, {0}},
    {"nelson2_eight_are_not_enough", kNelson, 2, std::vector<double>(8, 0.1), {}},
    {"nelson2", kNelson, 2, std::vector<double>(9, 0.1), {8}},
    {"nelson3_rising", kNelson, 3, {-.3, -.2, -.1, 0, .1, .2}, {5}},
    {"nelson3_falling", kNelson, 3, {.3, .2, .1, 0, -.1, -.2}, {5}},
    {"nelson3_five_points", kNelson, 3, {-.3, -.2, -.1, 0, .1}, {}},
    {"nelson3_tie_ends_it", kNelson, 3, {-.3, -.2, -.1, -.1, 0, .1}, {}},
    {"nelson4", kNelson, 4, {1, 0, 1, 0, 1, 0, 1, 0, 1, 0, 1, 0, 1, 0}, {13}},
    {"nelson4_thirteen", kNelson, 4, {1, 0, 1, 0, 1, 0, 1, 0, 1, 0, 1, 0, 1}, {}},
    {"nelson4_tie_ends_it", kNelson, 4, {1, 0, 1, 0, 1, 0, 1, 1, 0, 1, 0, 1, 0, 1}, {}},
    {"nelson5", kNelson, 5, {2.1, 0, 2.1}, {2}},
    {"nelson6", kNelson, 6, {-1.1, -1.1, 0, -1.1, -1.1}, {4}},
    {"nelson7", kNelson, 7, std::vector<double>(15, 0.0), {14}},
    {"nelson7_on_the_line_is_within", kNelson, 7, std::vector<double>(15, 1.0), {14}},
    {"nelson7_fourteen", kNelson, 7, std::vector<double>(14, 0.0), {}},
    {"nelson8", kNelson, 8, {1.1, -1.1, 1.1, 1.1, -1.1, 1.1, 1.1, 1.1}, {7}},
    {"nelson8_one_side", kNelson, 8, std::vector<double>(8, 1.1), {}},
    {"nelson8_one_within", kNelson, 8, {1.1, -1.1, 1.1, 0.9, -1.1, 1.1, 1.1, 1.1}, {}},
};
INSTANTIATE_TEST_SUITE_P(Patterns, RunRules, testing::ValuesIn(kCases),
                         [](const auto& c) { return std::string{c.param.name}; });

TEST(RunRules, AreNamed) {
  EXPECT_EQ(rule_count(kWeco), 4);
  EXPECT_EQ(rule_count(kNelson), 8);
  EXPECT_STREQ(rule_text(kWeco, 4), "8 points in a row on one side of the centre");
  EXPECT_STREQ(rule_text(kNelson, 2), "9 points in a row on one side of the centre");
}

// Source: no spread, no line to be beyond; the mean of equal decimals may differ from them by rounding.
TEST(RunRules, EqualValuesGiveNoSignalOfAStepOrASide) {
  const std::vector<double> values(20, 0.1 + 0.2);
  EXPECT_TRUE(run_rule_hits(values, 0.3, 0, kWeco).empty());
}

}  // namespace
}  // namespace ovenwright::lot
