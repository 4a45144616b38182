#pragma once
#include <cstddef>
#include <span>
#include <string>
#include <vector>

#include "core/lot/run_rules.h"

namespace ovenwright::lot {

/// One value with the run it belongs to.
struct Point {
  std::size_t run = 0;  ///< index in order of time; of a subgroup its last
  double value = 0;
};

enum class ChartKind {
  kIndividuals,        ///< with a chart of moving ranges
  kXbarR,              ///< means of subgroups, with a chart of ranges
  kXbarS,              ///< means of subgroups, with a chart of standard deviations
  kEwma,               ///< exponentially weighted moving average
  kMovingRange,        ///< a chart of spread
  kRange,              ///< a chart of spread
  kStandardDeviation,  ///< a chart of spread
};
/// "individuals", "x-bar with R", "x-bar with S", "EWMA", "moving range", "range", "standard deviation".
const char* chart_name(ChartKind kind);

/// A pattern that the rules call a signal, at the point that completes it.
struct Signal {
  int rule = 1;           ///< number in the set of rules; rule_text() says what it is
  std::size_t point = 0;  ///< index into the chart's points
  std::size_t run = 0;    ///< of that point
};

/// A control chart with limits at three sigma.
struct Chart {
  ChartKind kind = ChartKind::kIndividuals;
  RuleSet rules = RuleSet::kWesternElectric;
  double centre = 0, lower = 0, upper = 0;
  std::vector<Point> points;
  std::vector<Signal> signals_found;  ///< in order of time, then of the rules' numbers; "signals" is a macro of Qt
};

/// "Western Electric 1: 1 point beyond 3 sigma"; where only the limits count, "beyond the limits".
std::string signal_text(const Chart& chart, const Signal& signal);

/// A chart of location and, but for the EWMA, one of spread.
struct ChartPair {
  Chart control, spread;
};

/// Individuals: centre the mean, limits mean ± 3·(mean moving range)/1.128; moving ranges of neighbouring points,
/// upper limit 3.267 × their mean. All run rules on the values, on the ranges only the limits.
/// @param points  2 or more
/// Source: NIST/SEMATECH e-Handbook 6.3.2.2.
ChartPair individuals_chart(std::span<const Point> points, RuleSet rules);

/// Means of each next `size` points, with ranges (A2, D3, D4) or standard deviations (A3, B3, B4); a rest at the end
/// that fills no subgroup is left out. All run rules on the means, on the spread only the limits.
/// @param points  2 subgroups or more
/// @param size    2 to 25
/// @param kind    kXbarR or kXbarS
/// Source: NIST/SEMATECH e-Handbook 6.3.2.1.
ChartPair xbar_chart(std::span<const Point> points, std::size_t size, ChartKind kind, RuleSet rules);

/// EWMA(i) = weight·x(i) + (1 − weight)·EWMA(i − 1) from the target on; limits target ± 3·sigma·√(weight/(2 − weight)),
/// those it tends to. Its points hang together, so only the limits count, rule 1 of the set.
/// @param weight  above 0, at most 1
/// Source: NIST/SEMATECH e-Handbook 6.3.2.4.
Chart ewma_chart(std::span<const Point> points, double target, double sigma, double weight, RuleSet rules);

/// Mean of the differences between neighbouring values, without sign; 0 with fewer than two.
double mean_moving_range(std::span<const Point> points);
/// Short-term standard deviation of values one by one: mean moving range / 1.128.
double short_term_sd(std::span<const Point> points);

}  // namespace ovenwright::lot
