// Suggestions on invented lines whose truth is known: the model's own march with other parameters than the priors'.
#include "core/tune/tune.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <list>
#include <random>

#include "core/heat/build.h"
#include "core/heat/model.h"
#include "core/window/window_file.h"

namespace ovenwright::tune {
namespace {

using M = heat::ParameterMap;

oven::Oven six_zones() {
  oven::Oven oven;
  oven.entrance_mm = oven.exit_mm = 300;
  for (int z = 1; z <= 6; ++z) oven.zones.push_back({std::to_string(z), oven::ZoneKind::kHeat, 350, 25});
  oven.zones.push_back({"C1", oven::ZoneKind::kCool, 350, 0});
  oven.limits.setpoint_C = {50, 300};
  oven.limits.speed_mm_per_min = {400, 1200};
  oven.limits.step_between_zones_C = 60;
  return oven;
}

oven::Recipe first_recipe() {
  oven::Recipe recipe;
  recipe.identity.name = "first";
  recipe.top_C = recipe.bottom_C = {140, 165, 185, 205, 240, 255};
  recipe.cooling_C = {60};
  recipe.speed_mm_per_min = 620;
  return recipe;
}

window::ProcessWindow peak_window(double lower_C, double upper_C) {
  auto window = window::parse("window.toml",
                              "name = \"peaks\"\nliquidus_C = 217\n[[requirement]]\nname = \"peak\"\n"
                              "measure = \"peak\"\nlower = " +
                                  std::to_string(lower_C) + "\nupper = " + std::to_string(upper_C) + "\n");
  EXPECT_TRUE(window) << window.error().text();
  return *std::move(window);
}

/// Boards of three thermocouples that ran with the first recipe; the truth answers for any other.
struct Line {
  oven::Oven oven = six_zones();
  std::vector<std::vector<double>> tau_s;  ///< by board and thermocouple
  std::list<run::Run> runs;
  std::list<board::Board> boards;
  heat::Built built;
  heat::HeatModel model;

  /// `hot_C`: the log ends where all thermocouples have fallen below it; absent: after the tunnel.
  explicit Line(std::vector<std::vector<double>> time_constants_s, std::optional<double> hot_C = {})
      : tau_s(std::move(time_constants_s)) {
    std::mt19937_64 engine(11);
    std::normal_distribution<double> noise(0, 0.08);
    std::vector<heat::RunInput> inputs;
    for (std::size_t b = 0; b < tau_s.size(); ++b) {
      board::Board& board = boards.emplace_back();
      board.identity.name = "Board " + std::to_string(b + 1);
      run::Run& run = runs.emplace_back();
      auto curves = truth(b, first_recipe());
      if (hot_C) {
        std::size_t end = curves[0].size();
        while (std::ranges::all_of(curves, [&](const auto& T) { return T[end - 1] < *hot_C; })) --end;
        for (auto& T : curves) T.resize(end);
      }
      std::vector<double> time_s;
      for (std::size_t k = 0; k < curves[0].size(); ++k) time_s.push_back(static_cast<double>(k));
      const auto clock = *run::Clock::make(time_s);
      run.sample_interval_s = 1;
      run.to_s = time_s.back();
      for (std::size_t j = 0; j < curves.size(); ++j) {
        auto T = curves[j];
        for (double& t : T) t = std::round(10 * (t + noise(engine))) / 10;
        run::Channel channel;
        channel.name = name(j);
        channel.number = static_cast<int>(j + 1);
        channel.trace = *run::Trace::make(clock, T);
        channel.samples = T.size();
        channel.removed_end_from_s = run.to_s;
        run.channels.push_back(std::move(channel));
        board::Placement placement;
        placement.channel = name(j);
        placement.x_mm = 40.0 + 60 * static_cast<double>(j);
        board.placements.push_back(placement);
      }
      inputs.push_back({&run, first_recipe(), &board, b, {10, 0.5, oven::Entry::Source::kGiven}});
    }
    built = heat::build(oven, 217.0, inputs);
    model = *heat::identify(built.problem);
  }

  static std::string name(std::size_t j) { return "TC" + std::to_string(j + 1); }

  /// Readings at every second.
  std::vector<std::vector<double>> truth(std::size_t board, const oven::Recipe& recipe) const {
    heat::Problem problem;
    problem.oven = oven;
    heat::ModelRun run;
    run.recipe = recipe;
    run.entry = {10, 0.5, oven::Entry::Source::kGiven};
    for (std::size_t j = 0; j < tau_s[board].size(); ++j) {
      problem.placements.push_back({name(j), 40.0 + 60 * static_cast<double>(j), 0});
      run.start_C.push_back(25);
    }
    problem.runs.push_back(run);
    std::vector<double> theta;
    std::size_t i = 0;
    for (const auto& prior : heat::priors(problem))
      theta.push_back(prior.mean + prior.sd * 0.5 * std::sin(1.7 * static_cast<double>(i++)));
    const auto map = problem.map();
    theta[map.entry(0)] = 10;
    for (std::size_t j = 0; j < problem.placements.size(); ++j) {
      // A board's own parameters do not hang on how many boards there are.
      for (std::size_t k = 0; k < M::kPlacementCount; ++k) {
        const auto own = map.placement(j, static_cast<M::Placement>(k));
        theta[own] = heat::priors(problem)[own].mean;
      }
      theta[map.placement(j, M::kTimeConstant)] = std::log(tau_s[board][j]);
    }
    const double end_s = 10 + (oven.length_mm() + 400) / recipe.speed_mm_per_min * 60;
    const auto march = heat::march(problem, theta, {&recipe, 0, 0, 0, end_s, 25, problem.runs[0].start_C}, false);
    std::vector<std::vector<double>> out(problem.placements.size());
    for (std::size_t j = 0; j < out.size(); ++j)
      for (double t = 0; t < end_s; ++t) out[j].push_back(march.at(j, t));
    return out;
  }

  bool truly_holds(std::size_t board, const oven::Recipe& recipe, double lower_C, double upper_C) const {
    return std::ranges::all_of(truth(board, recipe), [&](const std::vector<double>& T) {
      const double peak_C = *std::ranges::max_element(T);
      return peak_C >= lower_C && peak_C <= upper_C;
    });
  }

  std::vector<Subject> subjects(const std::vector<window::ProcessWindow>& windows) const {
    std::vector<Subject> out;
    auto run = runs.begin();
    auto board = boards.begin();
    for (std::size_t b = 0; b < tau_s.size(); ++b, ++run, ++board)
      out.push_back({&*run, &*board, {windows[b]}, b, built.traces[b]});
    return out;
  }
};

const std::vector<double> kLight = {22, 25, 28}, kAlike = {23, 26, 27}, kHeavy = {34, 38, 41};

// Source: the truth that made the run. A suggestion passes there, keeps the oven's limits, and each aim is at least as
// good as the other suggestions in what it is for.
TEST(Tune, SuggestionsPassOnTheTruth) {
  const Line line({kHeavy});
  ASSERT_FALSE(line.truly_holds(0, first_recipe(), 235, 250));
  const auto report = tune(line.model, line.subjects({peak_window(235, 250)}), first_recipe(), false, {});
  ASSERT_FALSE(report.suggestions.empty());
  EXPECT_FALSE(report.infeasible);
  EXPECT_FALSE(report.cut_short);
  EXPECT_EQ(report.suggestions.front().aim, Aim::kLeastChange);
  for (const auto& suggestion : report.suggestions) {
    EXPECT_TRUE(line.truly_holds(0, suggestion.recipe, 235, 250)) << aim_name(suggestion.aim);
    EXPECT_FALSE(suggestion.sentence.empty());
    const auto& fast = suggestion.recipe.speed_mm_per_min;
    EXPECT_GE(fast, 400);
    EXPECT_LE(fast, 1200);
    if (suggestion.aim != Aim::kFastest) continue;
    for (const auto& other : report.suggestions)
      EXPECT_GE(fast + 1, other.recipe.speed_mm_per_min) << aim_name(other.aim);
  }
}

// Source: disjoint windows on boards that heat alike cannot be held together; a third window that overlaps both can be
// held with either: two recipes are the fewest.
TEST(Tune, BoardsThatCannotShareAreGrouped) {
  const Line line({kLight, kAlike, kLight});
  const std::vector<std::array<double, 2>> limits = {{226, 236}, {246, 256}, {228, 254}};
  std::vector<window::ProcessWindow> windows;
  for (const auto& [lower_C, upper_C] : limits) windows.push_back(peak_window(lower_C, upper_C));
  const auto report = tune(line.model, line.subjects(windows), first_recipe(), false, {});
  EXPECT_TRUE(report.suggestions.empty());
  ASSERT_TRUE(report.infeasible);
  // Without the first board's upper limit or the second's lower one the boards can share: those two, and no more.
  const auto& conflicts = report.infeasible->conflicts;
  ASSERT_EQ(conflicts.size(), 2u);
  for (const auto& conflict : conflicts) EXPECT_EQ(conflict.upper, conflict.board == 0) << conflict.board;
  EXPECT_NE(conflicts[0].board, conflicts[1].board);
  EXPECT_LT(std::max(conflicts[0].board, conflicts[1].board), 2u);
  ASSERT_EQ(report.groups.size(), 2u);
  EXPECT_TRUE(report.fewest_groups);
  std::vector<std::size_t> grouped;
  for (const auto& group : report.groups)
    for (const auto board : group.boards) {
      grouped.push_back(board);
      EXPECT_TRUE(line.truly_holds(board, group.recipe, limits[board][0], limits[board][1])) << "board " << board + 1;
    }
  std::ranges::sort(grouped);
  EXPECT_EQ(grouped, (std::vector<std::size_t>{0, 1, 2}));
  EXPECT_NE(report.groups_sentence.find("2 recipes are the fewest"), std::string::npos) << report.groups_sentence;
}

TEST(Tune, BoardsThatCanShareGetOneRecipe) {
  const Line line({kLight, kHeavy});
  const auto report =
      tune(line.model, line.subjects({peak_window(230, 255), peak_window(230, 255)}), first_recipe(), false, {});
  ASSERT_FALSE(report.suggestions.empty());
  EXPECT_TRUE(report.groups.empty());
  for (const auto& suggestion : report.suggestions) {
    ASSERT_EQ(suggestion.predicted.size(), 2u);
    for (std::size_t b = 0; b < 2; ++b) EXPECT_TRUE(line.truly_holds(b, suggestion.recipe, 230, 255));
  }
}

window::ProcessWindow window_of(const std::string& requirements) {
  auto window = window::parse("window.toml", "name = \"w\"\nliquidus_C = 217\n" + requirements);
  EXPECT_TRUE(window) << window.error().text();
  return *std::move(window);
}

double phi(double z) { return std::erfc(-z / std::sqrt(2.0)) / 2; }

// Source: algebra. A pass by a guarded rule keeps U off each limit (measures.md, Verdict), so its chance is that of the
// window drawn in by U; with one error for all peaks, that of the tightest limit above and the tightest below.
TEST(Forecast, TheChanceIsThatOfAPassByTheRule) {
  const Line line({kHeavy});
  auto recipe = first_recipe();
  for (auto* side : {&recipe.top_C, &recipe.bottom_C}) side->back() += 12, side->at(4) += 12;
  for (const bool guarded : {false, true}) {
    auto window = peak_window(235, 250);
    if (guarded) window.decision_rule = window::DecisionRule::kGuarded;
    const auto forecast = Forecaster(line.model, line.subjects({window})[0]).forecast(recipe, true);
    double above = 1e9, below = 1e9;
    for (std::size_t i = 0; i < forecast.judgement.all_size(); ++i) {
      const auto& value = forecast.judgement.all(i).value;
      const double guard = guarded ? *value.expanded_uncertainty : 0, u = forecast.half_width[i] / 1.96;
      above = std::min(above, (250 - guard - *value.value) / u);
      below = std::min(below, (*value.value - guard - 235) / u);
    }
    ASSERT_TRUE(forecast.pass_probability);
    EXPECT_NEAR(*forecast.pass_probability, std::max(0.0, phi(above) + phi(below) - 1), 1e-9) << guarded;
    EXPECT_GT(above + below, 0) << guarded;
  }
}

// Source: algebra. What a rise is off by has little to do with what a peak is off by: chances of both multiply.
TEST(Forecast, ChancesOfSlopesAndLevelsMultiply) {
  const Line line({kHeavy});
  const std::string rise = "[[requirement]]\nname = \"rise\"\nmeasure = \"steepest rise\"\nover = 5\nupper = 2.2\n";
  const std::string peak = "[[requirement]]\nname = \"peak\"\nmeasure = \"peak\"\nlower = 232\nupper = 250\n";
  const auto chance = [&](const std::string& requirements) {
    return *Forecaster(line.model, line.subjects({window_of(requirements)})[0])
                .forecast(first_recipe(), true)
                .pass_probability;
  };
  EXPECT_NEAR(chance(rise + peak), chance(rise) * chance(peak), 1e-9);
}

// A log that ends at 215 °C shows nothing of the fall: no chance is given where a fall is required, and that is said.
// What does not hang on the fall keeps its chance.
TEST(Forecast, AFallThatTheLogDoesNotShowLeavesTheChanceOpen) {
  const Line line({kHeavy}, 215.0);
  const std::string fall = "[[requirement]]\nname = \"fall\"\nmeasure = \"steepest fall\"\nover = 5\nupper = 9\n";
  const std::string peak = "[[requirement]]\nname = \"peak\"\nmeasure = \"peak\"\nlower = 200\nupper = 260\n";
  const auto forecast = [&](const std::string& requirements) {
    return Forecaster(line.model, line.subjects({window_of(requirements)})[0]).forecast(first_recipe(), true);
  };
  const auto open = forecast(peak + fall);
  EXPECT_FALSE(open.pass_probability);
  EXPECT_TRUE(open.fall_unseen);
  EXPECT_NE(open.judgement.sentence.text.find("ends before the board has cooled"), std::string::npos)
      << open.judgement.sentence.text;
  for (const auto& outcome : open.judgement.results)
    EXPECT_EQ(outcome.conformance_probability.has_value(), outcome.requirement_name == "peak");
  const auto known = forecast(peak);
  EXPECT_FALSE(known.fall_unseen);
  ASSERT_TRUE(known.pass_probability);
  EXPECT_GT(*known.pass_probability, 0.99);
  // A limit that is missed for sure is missed whatever the fall: 300 °C is 50 °C away.
  const auto missed =
      forecast("[[requirement]]\nname = \"peak\"\nmeasure = \"peak\"\nlower = 300\nupper = 310\n" + fall);
  ASSERT_TRUE(missed.pass_probability);
  EXPECT_LT(*missed.pass_probability, 0.01);
}

// What is shown first is sure, or no other is surer: in windows that leave little room, and in none.
TEST(Tune, TheFirstSuggestionIsSureOrTheSurest) {
  const Line line({kHeavy});
  for (const double upper_C : {239.0, 241.0, 244.0, 250.0}) {
    const auto report = tune(line.model, line.subjects({peak_window(235, upper_C)}), first_recipe(), false, {});
    if (upper_C >= 244) {
      ASSERT_FALSE(report.suggestions.empty()) << upper_C;  // room enough for the error that the run leaves
    }
    if (report.suggestions.empty()) continue;
    const double first = *report.suggestions.front().predicted[0].pass_probability;
    for (const auto& other : report.suggestions)
      EXPECT_GE(first + 0.011, std::min(0.97, *other.predicted[0].pass_probability)) << upper_C;
  }
}

// Source: a window narrower than what the instrumented run can tell: no recipe is sure to pass, so a next run is named;
// it is inside the oven's limits, hotter than no upper limit, and expected to narrow what is in doubt.
TEST(Tune, ADoubtfulPassNamesTheNextRun) {
  const Line line({kHeavy});
  const auto report = tune(line.model, line.subjects({peak_window(249, 252)}), first_recipe(), false, {});
  ASSERT_TRUE(report.next_run);
  EXPECT_LT(report.next_run->half_width_then, 0.9 * report.next_run->half_width);
  EXPECT_FALSE(report.next_run->changes.empty());
  EXPECT_NE(report.next_run->sentence.find("is expected to narrow"), std::string::npos);
  for (const auto& trace : line.truth(0, report.next_run->recipe))
    EXPECT_LE(*std::ranges::max_element(trace), 252 + 1.5);
}

// Source: algebra. Curves moved up or down as a whole keep their slopes, and the two crossings of a steady rise move
// alike; the errors of slopes and of times between levels are not that small.
TEST(Forecast, SlopesAndTimesBetweenLevelsHaveTheirOwnError) {
  const Line line({kHeavy});
  auto window = window::parse("window.toml",
                              "name = \"x\"\nliquidus_C = 217\n[[requirement]]\nname = \"rise\"\nmeasure = "
                              "\"steepest rise\"\nover = 5\nupper = 3\n[[requirement]]\nname = \"soak\"\nmeasure = "
                              "\"time between on rise\"\nT1 = 150\nT2 = 200\nlower = 40\nupper = 120\n");
  ASSERT_TRUE(window) << window.error().text();
  const Forecaster forecaster(line.model, line.subjects({*window})[0]);
  auto recipe = first_recipe();
  recipe.speed_mm_per_min = 560;
  const auto forecast = forecaster.forecast(recipe, true);
  double band_C = 0;
  for (const auto& band : forecast.band_C)
    for (const double b : band) band_C = std::max(band_C, b);
  for (std::size_t i = 0; i < forecast.judgement.all_size(); ++i) {
    const auto& outcome = forecast.judgement.all(i);
    ASSERT_TRUE(outcome.value.value);
    const bool slope = outcome.value.unit == Unit::kCelsiusPerSecond;
    // At most: both crossings off by the widest band at half the mean slope of the soak.
    EXPECT_GT(forecast.half_width[i], slope ? 0.05 * *outcome.value.value : 0.3);
    EXPECT_LT(forecast.half_width[i], slope ? 0.2 * *outcome.value.value : 4 * band_C * *outcome.value.value / 50);
  }
  // The values alone are the same, and the same as judged.
  const auto values = forecaster.forecast(recipe, Detail::kValues);
  const auto judged = forecaster.forecast(recipe, Detail::kJudged);
  ASSERT_EQ(values.judgement.all_size(), judged.judgement.all_size());
  for (std::size_t i = 0; i < values.judgement.all_size(); ++i) {
    EXPECT_EQ(values.judgement.all(i).value.value, judged.judgement.all(i).value.value);
    EXPECT_EQ(values.judgement.all(i).margin, judged.judgement.all(i).margin);
  }
  EXPECT_EQ(values.judgement.margin, judged.judgement.margin);
}

// Source: information adds. A further run leaves no parameter less certain (Loewner order of the normal equations).
TEST(ExpectedAfter, LeavesNothingLessCertain) {
  const Line line({kHeavy});
  auto recipe = first_recipe();
  recipe.speed_mm_per_min = 560;
  const auto after = heat::expected_after(line.model, 0, recipe);
  const std::size_t P = line.model.theta.size(), entry = line.model.problem.map().entry(1);
  ASSERT_EQ(after.theta.size(), P + 1);
  bool less = false;
  for (std::size_t p = 0; p < P; ++p) {
    const std::size_t q = p < entry ? p : p + 1;
    EXPECT_EQ(after.theta[q], line.model.theta[p]);
    const double then = after.covariance[q * (P + 1) + q], now = line.model.covariance[p * P + p];
    EXPECT_LE(then, now * (1 + 1e-6) + 1e-12) << p;
    less = less || then < 0.8 * now;
  }
  EXPECT_TRUE(less);
}

// Source: measures.md, Verdict: under `guarded` a pass keeps the expanded uncertainty off each limit, which is at least
// 2 √(1.5² + 1²)/√3 = 2.08 °C for a K thermocouple of class 1 with an instrument of ± 1 °C; the truth keeps it too.
TEST(Tune, UnderAGuardedRuleTheSearchKeepsOffTheLimits) {
  const Line line({kHeavy});
  auto window = peak_window(235, 250);
  window.decision_rule = window::DecisionRule::kGuarded;
  const auto report = tune(line.model, line.subjects({window}), first_recipe(), false, {});
  ASSERT_FALSE(report.suggestions.empty());
  constexpr double guard_C = 2.08;
  for (const auto& suggestion : report.suggestions) {
    const auto& predicted = suggestion.predicted.front();
    EXPECT_EQ(predicted.judgement.verdict, judge::Verdict::kPass) << aim_name(suggestion.aim);
    for (const auto& outcome : predicted.judgement.results) {
      EXPECT_GE(*outcome.value.value, 235 + guard_C) << aim_name(suggestion.aim);
      EXPECT_LE(*outcome.value.value, 250 - guard_C) << aim_name(suggestion.aim);
      // The margin is that of the limits as they stand (measures.md, Margin).
      EXPECT_NEAR(*outcome.margin, 1 - std::abs(*outcome.value.value - 242.5) / 7.5, 1e-9);
    }
    EXPECT_TRUE(line.truly_holds(0, suggestion.recipe, 235 + guard_C, 250 - guard_C)) << aim_name(suggestion.aim);
  }
}

// A window narrower than twice the uncertainty can never pass as guarded (measures.md, Verdict): what is inside it is
// suggested all the same, as a conditional pass, and that is said.
TEST(Tune, WhereNothingCanPassAsGuardedThatIsSaid) {
  const Line line({kAlike});
  auto window = peak_window(241, 245);
  window.decision_rule = window::DecisionRule::kGuarded;
  const auto report = tune(line.model, line.subjects({window}), first_recipe(), false, {});
  EXPECT_FALSE(report.infeasible);
  ASSERT_FALSE(report.suggestions.empty());
  for (const auto& suggestion : report.suggestions)
    EXPECT_EQ(suggestion.predicted.front().judgement.verdict, judge::Verdict::kConditionalPass);
  EXPECT_TRUE(std::ranges::any_of(
      report.notes, [](const std::string& note) { return note.find("guarded rule") != std::string::npos; }));
  // No chance of a pass by the rule: what to run next is named.
  EXPECT_LT(report.suggestions.front().predicted.front().pass_probability.value_or(1), 0.9);
  EXPECT_TRUE(report.next_run);
}

// Source: a margin of 100 % is every peak at the target, and three time constants do not peak alike.
TEST(Tune, AMarginThatNoRecipeKeepsIsSaid) {
  const Line line({kHeavy});
  Request request;
  request.at_margin = 1.0;
  const auto report = tune(line.model, line.subjects({peak_window(235, 250)}), first_recipe(), false, request);
  for (const auto& suggestion : report.suggestions) {
    EXPECT_NE(suggestion.aim, Aim::kFastest);
    EXPECT_NE(suggestion.aim, Aim::kCoolest);
  }
  EXPECT_EQ(report.notes.size(), 2u);
}

TEST(Tune, StoppedIsCutShort) {
  const Line line({kHeavy});
  Request request;
  int asked = 0;
  request.progress = [&](double) { return ++asked < 4; };
  const auto report = tune(line.model, line.subjects({peak_window(235, 250)}), first_recipe(), false, request);
  EXPECT_TRUE(report.cut_short);
  EXPECT_FALSE(report.infeasible);
}

}  // namespace
}  // namespace ovenwright::tune
