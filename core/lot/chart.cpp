#include "core/lot/chart.h"

#include <fmt/format.h>

#include <cmath>

#include "core/lot/chart_constants.h"
#include "core/lot/statistics.h"

namespace ovenwright::lot {
namespace {

// As published, not recomputed: what the trade compares its charts with.
constexpr double kPairRange = 1.128;       // d2 of two values
constexpr double kPairRangeUpper = 3.267;  // D4 of two values

double mean_of(std::span<const Point> points) {
  return lot::mean_of(points.size(), [&](std::size_t i) { return points[i].value; });
}

/// All rules of the set, sigma a third of the way to the upper limit.
void add_signals(Chart& chart) {
  std::vector<double> values;
  for (const auto& point : chart.points) values.push_back(point.value);
  for (const auto& hit : run_rule_hits(values, chart.centre, (chart.upper - chart.centre) / 3, chart.rules))
    chart.signals_found.push_back({hit.rule, hit.point, chart.points[hit.point].run});
}

/// The limits alone: rule 1 of both sets. The lower one may be nearer than the upper.
void add_signals_beyond_limits(Chart& chart) {
  for (std::size_t i = 0; i < chart.points.size(); ++i) {
    const double value = chart.points[i].value;
    constexpr double rounding = 1e-12;
    const double in_hand = rounding * std::max(std::abs(value), std::abs(chart.upper));
    if (value > chart.upper + in_hand || value < chart.lower - in_hand)
      chart.signals_found.push_back({1, i, chart.points[i].run});
  }
}

}  // namespace

const char* chart_name(ChartKind kind) {
  switch (kind) {
    case ChartKind::kIndividuals:
      return "individuals";
    case ChartKind::kXbarR:
      return "x-bar with R";
    case ChartKind::kXbarS:
      return "x-bar with S";
    case ChartKind::kEwma:
      return "EWMA";
    case ChartKind::kMovingRange:
      return "moving range";
    case ChartKind::kRange:
      return "range";
    case ChartKind::kStandardDeviation:
      return "standard deviation";
  }
  return "";
}

std::string signal_text(const Chart& chart, const Signal& signal) {
  const bool all_rules =
      chart.kind == ChartKind::kIndividuals || chart.kind == ChartKind::kXbarR || chart.kind == ChartKind::kXbarS;
  if (!all_rules) return "beyond the limits";
  return fmt::format("{} {}: {}", rule_set_name(chart.rules), signal.rule, rule_text(chart.rules, signal.rule));
}

double mean_moving_range(std::span<const Point> points) {
  if (points.size() < 2) return 0;
  double sum = 0;
  for (std::size_t i = 1; i < points.size(); ++i) sum += std::abs(points[i].value - points[i - 1].value);
  return sum / static_cast<double>(points.size() - 1);
}

double short_term_sd(std::span<const Point> points) { return mean_moving_range(points) / kPairRange; }

ChartPair individuals_chart(std::span<const Point> points, RuleSet rules) {
  ChartPair pair;
  auto& [control, spread] = pair;
  control = {ChartKind::kIndividuals, rules, mean_of(points), 0, 0, {points.begin(), points.end()}, {}};
  const double half = 3 * short_term_sd(points);
  control.lower = control.centre - half;
  control.upper = control.centre + half;
  add_signals(control);

  spread = {ChartKind::kMovingRange, rules, mean_moving_range(points), 0, 0, {}, {}};
  spread.upper = kPairRangeUpper * spread.centre;
  for (std::size_t i = 1; i < points.size(); ++i)
    spread.points.push_back({points[i].run, std::abs(points[i].value - points[i - 1].value)});
  add_signals_beyond_limits(spread);
  return pair;
}

ChartPair xbar_chart(std::span<const Point> points, std::size_t size, ChartKind kind, RuleSet rules) {
  const bool by_range = kind == ChartKind::kXbarR;
  ChartPair pair;
  auto& [control, spread] = pair;
  control.kind = kind;
  spread.kind = by_range ? ChartKind::kRange : ChartKind::kStandardDeviation;
  control.rules = spread.rules = rules;
  for (std::size_t first = 0; first + size <= points.size(); first += size) {
    const auto value = [&](std::size_t i) { return points[first + i].value; };
    const std::size_t run = points[first + size - 1].run;
    control.points.push_back({run, lot::mean_of(size, value)});
    spread.points.push_back({run, by_range ? range_of(size, value) : sd_of(size, value)});
  }
  const auto constants = chart_constants(size);
  control.centre = mean_of(control.points);
  spread.centre = mean_of(spread.points);
  const double half = (by_range ? constants.A2 : constants.A3) * spread.centre;
  control.lower = control.centre - half;
  control.upper = control.centre + half;
  spread.lower = (by_range ? constants.D3 : constants.B3) * spread.centre;
  spread.upper = (by_range ? constants.D4 : constants.B4) * spread.centre;
  add_signals(control);
  add_signals_beyond_limits(spread);
  return pair;
}

Chart ewma_chart(std::span<const Point> points, double target, double sigma, double weight, RuleSet rules) {
  const double half = 3 * sigma * std::sqrt(weight / (2 - weight));
  Chart chart{ChartKind::kEwma, rules, target, target - half, target + half, {}, {}};
  double average = target;
  for (const auto& point : points) {
    average += weight * (point.value - average);
    chart.points.push_back({point.run, average});
  }
  add_signals_beyond_limits(chart);
  return chart;
}

}  // namespace ovenwright::lot
