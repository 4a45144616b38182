#include "core/tune/next_run.h"

#include <algorithm>
#include <cmath>

#include "core/tune/words.h"

namespace ovenwright::tune {
namespace {

constexpr double kAlternate_C = 12, kLastZones_C = 10, kFaster = 0.1;
constexpr double kClearlyBetter = 0.95;

/// Changes of recipe worth trying, the plainest first.
std::vector<std::vector<double>> candidates(const RecipeSpace& space, const std::vector<double>& now,
                                            const std::vector<double>& best) {
  std::vector<std::vector<double>> out = {best};
  const auto moved = [&](const std::vector<double>& from, const auto& by) {
    auto x = from;
    for (std::size_t k = 0; k < x.size(); ++k) x[k] = std::clamp(by(k, x[k]), space.lower()[k], space.upper()[k]);
    out.push_back(std::move(x));
  };
  moved(now, [&](std::size_t k, double x) { return (x + best[k]) / 2; });
  for (const double by : {-kFaster, kFaster})
    moved(now, [&](std::size_t k, double x) { return k == space.speed() ? x * (1 + by) : x; });
  for (const auto& from : {now, best})
    for (const double by : {-kAlternate_C, kAlternate_C})
      moved(from, [&](std::size_t k, double x) { return k == space.speed() ? x : x + (k % 2 == 0 ? by : -by); });
  for (const double by : {-kLastZones_C, kLastZones_C})
    moved(now, [&](std::size_t k, double x) { return k + 3 >= space.speed() && k != space.speed() ? x + by : x; });
  for (auto& x : out) x = space.rounded(x);
  std::erase_if(out, [&](const std::vector<double>& x) { return !space.allows(x) || x == now; });
  return out;
}

bool harmless(const Forecaster& board, const Forecast& forecast) {
  for (std::size_t i = 0; i < forecast.judgement.all_size(); ++i) {
    const auto& outcome = forecast.judgement.all(i);
    if (!outcome.upper || !outcome.value.value || !outcome.channel) continue;
    const auto& channel = board.subject().run->channels[*outcome.channel];
    const auto* placement =
        board.subject().board ? board.subject().board->placement(channel.name, channel.number) : nullptr;
    if (placement && placement->kind == board::Kind::kBody) {
      if (*outcome.value.value + forecast.half_width[i] > *outcome.upper) return false;
    } else if (outcome.measure.measure == measure::Measure::kPeak) {
      const double measured_C = channel.trace ? *std::ranges::max_element(channel.trace->temperature_C()) : 0;
      if (*outcome.value.value > std::max(*outcome.upper, measured_C)) return false;
    }
  }
  return true;
}

/// The half width that a result is expected to have at `best` once `candidate` has been run.
double expected_half_width(const heat::HeatModel& model, const Forecaster& board, const Forecast& candidate,
                           const oven::Recipe& recipe, const oven::Recipe& best, std::size_t outcome) {
  const auto expected = heat::expected_after(model, board.subject().model_run, recipe);
  Subject subject = board.subject();
  subject.model_run = expected.problem.runs.size() - 1;
  subject.run = &candidate.run;
  for (std::size_t j = 0; j < subject.traces.size(); ++j) {
    if (!subject.traces[j]) continue;
    const auto channel =
        std::ranges::find(candidate.run.channels, expected.problem.placements[j].name, &run::Channel::name);
    subject.traces[j] = channel != candidate.run.channels.end() && channel->trace ? &*channel->trace : nullptr;
  }
  return Forecaster(expected, std::move(subject)).forecast(best, Detail::kValuesAndBand).half_width[outcome];
}

}  // namespace

const Limit* in_doubt(const Point& point) {
  const auto found = std::ranges::min_element(point.limits, {}, &Limit::edge);
  return found == point.limits.end() ? nullptr : &*found;
}

std::optional<NextRun> next_run(const heat::HeatModel& model, const std::vector<const Forecaster*>& boards,
                                const RecipeSpace& space, const oven::Recipe& now, const Point& best,
                                const std::function<bool()>& go_on, bool& tried) {
  const Limit* limit = in_doubt(best);
  if (!limit || limit->half_width <= 0) return std::nullopt;
  const Forecaster& board = *boards[limit->board];
  const auto best_recipe = space.recipe(best.x);
  const auto plans = candidates(space, space.vector(now), best.x);
  std::optional<std::vector<double>> chosen;
  // Of the prediction alone: under a guarded rule the limit's own may be the measurement's.
  const double half_width_now = board.forecast(best_recipe, Detail::kValuesAndBand).half_width[limit->outcome];
  double narrowest = kFree;
  for (const auto& x : plans) {
    if (go_on && !go_on()) return std::nullopt;
    tried = true;
    const auto recipe = space.recipe(x);
    std::optional<Forecast> own;
    const bool safe = std::ranges::all_of(boards, [&](const Forecaster* each) {
      auto forecast = each->forecast(recipe, Detail::kValuesAndBand);
      const bool good = harmless(*each, forecast);
      if (each == &board) own = std::move(forecast);
      return good;
    });
    if (!safe) continue;
    const double half_width = expected_half_width(model, board, *own, recipe, best_recipe, limit->outcome);
    // A plainer plan stays unless a later one is clearly better, and one that narrows nothing gives way to any that
    // does.
    if (half_width < kClearlyBetter * narrowest ||
        (narrowest > kNarrows * half_width_now && half_width < std::min(narrowest, kNarrows * half_width_now))) {
      narrowest = half_width;
      chosen = x;
    }
  }
  if (!chosen) return std::nullopt;
  NextRun out;
  out.recipe = suggested_recipe(now, space.recipe(*chosen), "next run");
  out.changes = changes(model.problem.oven, now, out.recipe);
  for (const Forecaster* each : boards) out.predicted.push_back(each->forecast(out.recipe, true));
  out.board = limit->board;
  const auto forecast = board.forecast(best_recipe, true);
  const auto& outcome = forecast.judgement.all(limit->outcome);
  out.requirement = outcome.requirement_name;
  out.trace = outcome.trace;
  out.unit = outcome.value.unit;
  out.half_width = half_width_now;
  out.half_width_then = narrowest;
  const bool is_best = std::ranges::equal(*chosen, best.x, [](double a, double b) { return std::abs(a - b) < 1e-6; });
  out.sentence = next_run_sentence(model.problem.oven, out, outcome.value.value, is_best, best.margin < 0);
  return out;
}

}  // namespace ovenwright::tune
