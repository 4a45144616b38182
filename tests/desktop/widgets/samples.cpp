#include "tests/desktop/widgets/samples.h"

#include <cmath>

#include "core/judge/decide.h"
#include "core/judge/decide_run.h"
#include "core/judge/main_zones.h"
#include "core/judge/sentence.h"

namespace ovenwright::widgets::samples {
namespace {

using judge::Verdict;
using measure::Definition;
using measure::Measure;

Definition between(double low, double high) {
  measure::Parameters parameters;
  parameters.T1 = low;
  parameters.T2 = high;
  return {Measure::kTimeBetweenOnRise, parameters};
}

Definition over(Measure measure, double seconds) {
  measure::Parameters parameters;
  parameters.over = seconds;
  return {measure, parameters};
}

Definition withLevel(Measure measure, double level) {
  measure::Parameters parameters;
  parameters.level = level;
  return {measure, parameters};
}

Definition nearPeak() {
  measure::Parameters parameters;
  parameters.offset = 5;
  parameters.reference = measure::OwnPeak{};
  return {Measure::kTimeNearPeak, parameters};
}

std::vector<Given> row(std::initializer_list<double> values, double U, std::optional<double> lower,
                       std::optional<double> upper) {
  std::vector<Given> givens;
  for (const double value : values) givens.push_back({value, U, lower, upper, {}});
  return givens;
}

}  // namespace

Definition peak() { return {Measure::kPeak, {}}; }
Definition timeAbove(double level_C) { return withLevel(Measure::kTimeAbove, level_C); }

JudgementBuilder::JudgementBuilder(window::DecisionRule rule) {
  window::ProcessWindow window;
  window.identity.name = "Tern SAC305";
  window.decision_rule = rule;
  m_judgement.windows.push_back(window);
}

judge::Outcome JudgementBuilder::outcome(const std::string& name, const Definition& definition, Unit unit,
                                         const Given& given) {
  judge::Outcome outcome;
  outcome.requirement = m_judgement.windows[0].requirements.size() - 1;
  outcome.requirement_name = name;
  outcome.measure = definition;
  outcome.value.unit = unit;
  outcome.value.value = given.value;
  if (!given.value) outcome.value.no_value = measure::NoValue::kUndetermined;
  if (given.value && given.U > 0) outcome.value.expanded_uncertainty = given.U;
  outcome.lower = given.lower;
  outcome.upper = given.upper;
  outcome.target = given.target;
  judge::settle(outcome, m_judgement.windows[0].decision_rule);
  return outcome;
}

JudgementBuilder& JudgementBuilder::add(const std::string& name, const Definition& definition, Unit unit,
                                        const std::vector<Given>& channels, bool required) {
  window::Requirement requirement;
  requirement.name = name;
  requirement.measure = definition;
  requirement.required = required;
  m_judgement.windows[0].requirements.push_back(requirement);
  for (std::size_t i = 0; i < channels.size(); ++i) {
    judge::Outcome result = outcome(name, definition, unit, channels[i]);
    result.channel = i;
    result.trace = result.placement = "TC" + std::to_string(i + 1);
    result.required = required;
    m_judgement.results.push_back(result);
  }
  return *this;
}

JudgementBuilder& JudgementBuilder::addBoard(const std::string& name, const Definition& definition, Unit unit,
                                             const Given& given, bool required) {
  window::Requirement requirement;
  requirement.name = name;
  requirement.measure = definition;
  requirement.required = required;
  requirement.applies_to.kind = window::AppliesTo::Kind::kBoard;
  m_judgement.windows[0].requirements.push_back(requirement);
  judge::Outcome result = outcome(name, definition, unit, given);
  result.required = required;
  m_judgement.board_results.push_back(result);
  return *this;
}

Channels channels(std::size_t count) {
  Channels made;
  for (std::size_t i = 0; i < count; ++i) {
    made.looks.push_back({QStringLiteral("TC%1").arg(i + 1), i, 250.0 - double(i), i, false});
    made.hottestFirst.push_back(i);
  }
  return made;
}

Channels ternChannels() {
  Channels made;
  const char* const names[] = {"R118", "D7 lead", "U3 body", "J4 pin 1", "U12 corner", "U12 centre"};
  const double peaks[] = {247.4, 245.5, 239.7, 238.8, 236.0, 232.1};
  for (std::size_t i = 0; i < 6; ++i) {
    made.looks.push_back({QString::fromUtf8(names[i]), i, peaks[i], i, false});
    made.hottestFirst.push_back(i);
  }
  return made;
}

board::Board ternBoard() {
  board::Board board;
  board.identity.name = "Tern, main side";
  board.length_mm = 244;
  board.width_mm = 190;
  const auto place = [&](const char* label, double x, double y, board::Kind kind) {
    board::Placement placement;
    placement.channel = "TC" + std::to_string(board.placements.size() + 1);
    placement.label = label;
    placement.x_mm = x;
    placement.y_mm = y;
    placement.kind = kind;
    board.placements.push_back(placement);
  };
  place("R118", 38, 150, board::Kind::kJoint);
  place("D7 lead", 212, 40, board::Kind::kJoint);
  place("U3 body", 70, 52, board::Kind::kBody);
  place("J4 pin 1", 196, 148, board::Kind::kJoint);
  place("U12 corner", 104, 84, board::Kind::kJoint);
  place("U12 centre", 124, 100, board::Kind::kJoint);
  return board;
}

oven::Oven tenZoneOven() {
  oven::Oven oven;
  oven.identity.name = "Line 2";
  oven.entrance_mm = 300;
  oven.exit_mm = 400;
  for (int i = 1; i <= 12; ++i) {
    oven::Zone zone;
    zone.name = i <= 10 ? std::to_string(i) : "C" + std::to_string(i - 10);
    zone.kind = i <= 10 ? oven::ZoneKind::kHeat : oven::ZoneKind::kCool;
    zone.length_mm = 350;
    zone.gap_after_mm = 40;
    oven.zones.push_back(zone);
  }
  return oven;
}

oven::Recipe ternRecipe() {
  oven::Recipe recipe;
  recipe.identity.name = "LF main board";
  recipe.speed_mm_per_min = 810;
  recipe.top_C = recipe.bottom_C = {146, 150, 155, 165, 182, 192, 202, 234, 252, 258};
  recipe.cooling_C = {80, 45};
  return recipe;
}

oven::Entry ternEntry() { return {3.4, 0.6, oven::Entry::Source::kLog}; }

judge::Judgement tern() {
  JudgementBuilder builder;
  builder.add("steepest rise", over(Measure::kSteepestRise, 5), Unit::kCelsiusPerSecond,
              row({2.73, 2.44, 1.91, 1.85, 1.675, 1.467}, 0.07, {}, 2.5));
  builder.add("soak time", between(150, 200), Unit::kSecond, row({112.1, 108.6, 96.9, 96.1, 94.1, 91.9}, 2.2, 60, 120));
  builder.add("time above 217 °C", timeAbove(217), Unit::kSecond,
              row({73.9, 71.5, 64.3, 63.1, 59.3, 53.0}, 3.8, 45, 90));
  auto peaks = row({247.4, 245.5, 239.7, 238.8, 236.0, 232.1}, 2.1, 235, 250);
  peaks[2].upper = 245;
  builder.add("peak", peak(), Unit::kCelsius, peaks);
  builder.judgement().windows[0].requirements.back().upper = window::TcOffset{};
  builder.add("time near peak", nearPeak(), Unit::kSecond, row({24.2, 23.9, 24.3, 24.4, 25.1, 25.9}, 1.2, {}, 30));
  builder.add("steepest fall", over(Measure::kSteepestFall, 5), Unit::kCelsiusPerSecond,
              row({2.33, 2.07, 1.54, 1.48, 1.36, 1.22}, 0.08, {}, 4));
  builder.add("25 °C to peak", withLevel(Measure::kPeakTime, 25), Unit::kSecond,
              row({281, 282, 283, 284, 285, 286}, 2.9, {}, 480));
  builder.addBoard("lag at 217 °C", withLevel(Measure::kLag, 217), Unit::kSecond, {36.5, 2.4, {}, 50, {}});
  builder.addBoard("spread at 217 °C", withLevel(Measure::kSpreadWhenHottestReaches, 217), Unit::kCelsius,
                   {25.6, 2.0, {}, 35, {}});
  builder.addBoard("largest spread, soak", {Measure::kLargestSpread, {}}, Unit::kCelsius, {26.2, 2.0, {}, 40, {}});
  builder.addBoard("spread of peaks", {Measure::kSpreadOfPeaks, {}}, Unit::kCelsius, {15.3, 2.0, {}, 10, {}}, false);
  judge::Judgement judgement = std::move(builder.judgement());
  judgement.results[kTernRise].zone_shares = {{"1", {}, 0.96}, {"2", {}, 0.04}};
  judgement.results[kTernPeak].zone_shares = {{"7", {}, 0.05}, {"8", {}, 0.14}, {"9", {}, 0.37}, {"10", {}, 0.44}};
  for (judge::Outcome& result : judgement.results) result.zones = judge::main_zones(result.zone_shares);
  const Channels places = ternChannels();
  for (judge::Outcome& result : judgement.results) result.placement = places.looks[*result.channel].name.toStdString();
  judge::decide_run(judgement);
  judgement.sentence = judge::compose(judgement);
  return judgement;
}

judge::Judgement passing() {
  JudgementBuilder builder;
  builder.add("peak", peak(), Unit::kCelsius, {{239.3, 2.1, 235, 250, {}}});
  builder.add("time above 217 °C", timeAbove(217), Unit::kSecond, {{71.2, 3.0, 45, 90, {}}});
  judge::decide_run(builder.judgement());
  return std::move(builder.judgement());
}

judge::Judgement everyState() {
  JudgementBuilder builder;
  const auto one = [&](const char* name, const Given& given, bool required = true) -> judge::Outcome& {
    const auto level = double(builder.judgement().windows[0].requirements.size());  // keeps the lanes apart
    builder.add(name, timeAbove(level), Unit::kSecond, {given}, required);
    return builder.judgement().results.back();
  };
  one("pass", {78, 4, 60, 100, {}});
  one("conditional pass", {98, 4, 60, 100, {}});
  one("conditional fail", {102, 4, 60, 100, {}});
  one("fail", {108, 4, 60, 100, {}});
  one("fail, off the scale", {140, 4, 60, 100, {}});
  one("fail, off the scale below", {30, 4, 60, 100, {}});
  one("undetermined, range known", {std::nullopt, 4, 60, 100, {}}).value.range = {{74, 95}};
  one("undetermined, no range", {std::nullopt, 4, 60, 100, {}});
  one("upper limit only", {61, 3, {}, 100, {}});
  one("lower limit only", {66, 3, 60, {}, 80});
  judge::Outcome& notReached = one("not reached", {std::nullopt, 4, 60, 100, {}});
  notReached.value.no_value = measure::NoValue::kNotReached;
  notReached.verdict = Verdict::kFail;
  judge::Outcome& cut = one("at least, log cut short", {103, 3, 60, 100, {}});
  cut.value.at_least = true;
  cut.verdict = Verdict::kFail;
  cut.margin_bound = judge::MarginBound::kAtMost;
  judge::Outcome& open = one("at least, undetermined", {80, 3, 60, 100, {}});
  open.value.at_least = true;
  open.verdict = Verdict::kUndetermined;
  open.margin.reset();
  one("informative, over the limit", {107, 3, 60, 100, {}}, false);
  one("narrower than twice its guard band", {84, 25, 60, 100, {}});
  judge::decide_run(builder.judgement());
  return std::move(builder.judgement());
}

judge::Judgement manyChannels(std::size_t count) {
  JudgementBuilder builder;
  std::vector<Given> times, peaks;
  for (std::size_t i = 0; i < count; ++i) {
    const double share = count > 1 ? double(i) / double(count - 1) : 0.5;
    // Bunched here and there, as thermocouples on one board are.
    const double s = 0.86 - 1.7 * share + 0.12 * std::sin(17.0 * share);
    times.push_back({67.5 + 22.5 * s, 3.2, 45, 90, {}});
    peaks.push_back({242.5 + 7.5 * s, 1.3, 235, 250, {}});
  }
  builder.add("time above 217 °C", timeAbove(217), Unit::kSecond, times);
  builder.add("peak", peak(), Unit::kCelsius, peaks);
  judge::decide_run(builder.judgement());
  return std::move(builder.judgement());
}

}  // namespace ovenwright::widgets::samples
