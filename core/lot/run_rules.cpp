#include "core/lot/run_rules.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace ovenwright::lot {
namespace {

/// Where a point lies: bits of each line it is beyond, by side, with rounding in hand.
class Zones {
 public:
  Zones(std::span<const double> values, double centre, double sigma)
      : values_(values), centre_(centre), sigma_(sigma) {}

  std::size_t size() const { return values_.size(); }
  /// +1 above, −1 below, 0 on the centre or on the line at `sigmas` from it, or inside.
  int beyond(std::size_t i, int sigmas) const {
    const double off = values_[i] - centre_, line = sigmas * sigma_ + in_hand(values_[i]);
    return off > line ? 1 : off < -line ? -1 : 0;
  }
  /// +1 for a rise from the point before, −1 for a fall, 0 for a tie or at the first point.
  int step(std::size_t i) const {
    if (i == 0) return 0;
    const double change = values_[i] - values_[i - 1], tie = in_hand(values_[i]);
    return change > tie ? 1 : change < -tie ? -1 : 0;
  }

 private:
  double in_hand(double value) const {
    constexpr double rounding = 1e-12;
    return rounding * std::max({std::abs(value), std::abs(centre_), sigma_});
  }
  std::span<const double> values_;
  double centre_, sigma_;
};

bool beyond_three(const Zones& zones, std::size_t i) { return zones.beyond(i, 3) != 0; }

/// m of the last n points beyond the line on one side, this one among them.
template <int M, int N, int Sigmas>
bool m_of_n(const Zones& zones, std::size_t i) {
  const int side = zones.beyond(i, Sigmas);
  if (side == 0) return false;
  int beyond = 0;
  for (std::size_t k = 0; k < N && k <= i; ++k) beyond += zones.beyond(i - k, Sigmas) == side ? 1 : 0;
  return beyond >= M;
}

/// The last n points exist and all satisfy the test.
template <class Test>
bool all_of_last(std::size_t n, std::size_t i, Test test) {
  if (i + 1 < n) return false;
  for (std::size_t k = 0; k < n; ++k)
    if (!test(i - k)) return false;
  return true;
}

template <std::size_t N>
bool one_side(const Zones& zones, std::size_t i) {
  const int side = zones.beyond(i, 0);
  return side != 0 && all_of_last(N, i, [&](std::size_t p) { return zones.beyond(p, 0) == side; });
}

bool six_rising_or_falling(const Zones& zones, std::size_t i) {
  const int step = zones.step(i);
  return step != 0 && all_of_last(5, i, [&](std::size_t p) { return zones.step(p) == step; });
}

bool fourteen_alternating(const Zones& zones, std::size_t i) {
  const int step = zones.step(i);
  return step != 0 &&
         all_of_last(13, i, [&](std::size_t p) { return zones.step(p) == ((i - p) % 2 == 0 ? step : -step); });
}

bool fifteen_within_one(const Zones& zones, std::size_t i) {
  return all_of_last(15, i, [&](std::size_t p) { return zones.beyond(p, 1) == 0; });
}

bool eight_without_one(const Zones& zones, std::size_t i) {
  bool above = false, below = false;
  const bool all = all_of_last(8, i, [&](std::size_t p) {
    const int side = zones.beyond(p, 1);
    above = above || side > 0;
    below = below || side < 0;
    return side != 0;
  });
  return all && above && below;
}

struct Rule {
  const char* text;
  bool (*completes)(const Zones&, std::size_t);
};
constexpr Rule kBeyondThree{"1 point beyond 3 sigma", beyond_three};
constexpr Rule kTwoOfThree{"2 of 3 points in a row beyond 2 sigma on one side", m_of_n<2, 3, 2>};
constexpr Rule kFourOfFive{"4 of 5 points in a row beyond 1 sigma on one side", m_of_n<4, 5, 1>};
constexpr std::array kWestern{kBeyondThree, kTwoOfThree, kFourOfFive,
                              Rule{"8 points in a row on one side of the centre", one_side<8>}};
constexpr std::array kNelsons{kBeyondThree,
                              Rule{"9 points in a row on one side of the centre", one_side<9>},
                              Rule{"6 points in a row rising or falling", six_rising_or_falling},
                              Rule{"14 points in a row alternating up and down", fourteen_alternating},
                              kTwoOfThree,
                              kFourOfFive,
                              Rule{"15 points in a row within 1 sigma of the centre", fifteen_within_one},
                              Rule{"8 points in a row beyond 1 sigma, on both sides", eight_without_one}};

std::span<const Rule> rules_of(RuleSet set) {
  if (set == RuleSet::kNelson) return kNelsons;
  return kWestern;
}

}  // namespace

const char* rule_set_name(RuleSet set) { return set == RuleSet::kNelson ? "Nelson" : "Western Electric"; }
int rule_count(RuleSet set) { return static_cast<int>(rules_of(set).size()); }
const char* rule_text(RuleSet set, int rule) { return rules_of(set)[static_cast<std::size_t>(rule - 1)].text; }

std::vector<RuleHit> run_rule_hits(std::span<const double> values, double centre, double sigma, RuleSet set) {
  const Zones zones(values, centre, sigma);
  const auto rules = rules_of(set);
  std::vector<RuleHit> hits;
  for (std::size_t i = 0; i < zones.size(); ++i)
    for (std::size_t r = 0; r < rules.size(); ++r)
      if (rules[r].completes(zones, i)) hits.push_back({static_cast<int>(r) + 1, i});
  return hits;
}

}  // namespace ovenwright::lot
