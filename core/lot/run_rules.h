#pragma once
#include <cstddef>
#include <span>
#include <vector>

namespace ovenwright::lot {

enum class RuleSet { kWesternElectric, kNelson };
/// "Western Electric", "Nelson".
const char* rule_set_name(RuleSet set);
/// How many rules it has: 4, 8.
int rule_count(RuleSet set);
/// "1 point beyond 3 sigma", "9 points in a row on one side of the centre".
/// @param rule  1 to rule_count(set)
const char* rule_text(RuleSet set, int rule);

/// A pattern, at the point that completes it.
struct RuleHit {
  int rule = 1;
  std::size_t point = 0;
};

/// Every point that completes a pattern of the set, in order, then by the rule's number.
///
/// In "m of n" rules the completing point is itself beyond the line, and the series' start cuts the window short. A
/// point on a line is not beyond it, a point on the centre ends a run, a tie ends a rise, a fall or an alternation
/// (rounding: 1e-12 of the figures is "on"). Six rising are five rises; fourteen alternating are thirteen differences
/// of changing sign; "none within 1 sigma" needs points on both sides. A pattern that goes on is a hit at each further
/// point.
/// @param sigma  >= 0, the chart's: (upper limit − centre)/3, not a standard deviation of the values
/// Cost: O(n). Sources: Western Electric, Statistical Quality Control Handbook (1956); Nelson, Journal of Quality
/// Technology 16 (1984) 238.
std::vector<RuleHit> run_rule_hits(std::span<const double> values, double centre, double sigma, RuleSet set);

}  // namespace ovenwright::lot
