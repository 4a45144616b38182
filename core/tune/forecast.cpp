#include "core/tune/forecast.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <limits>
#include <variant>

#include "core/judge/judge.h"
#include "core/judge/sentence.h"

namespace ovenwright::tune {

bool is_fall(const judge::Outcome& outcome) {
  return outcome.measure.measure == measure::Measure::kSteepestFall ||
         outcome.measure.measure == measure::Measure::kMeanFall;
}

double normal_probability(double z) { return std::erfc(-z / std::sqrt(2.0)) / 2; }

namespace {

// Slopes are off by errors of their own, whatever the level's: a share of the slope, of its change against the measured
// run (up to a share of the slope), and of the slope by the change of the belt (ln v/v₁). From four kinds of invented
// ovens; docs/heat_model.md has shares of three of them.
struct SlopeError {
  double own, change, most_by_change, belt;
};
constexpr SlopeError kRise{0.02, 0.14, 0.07, 0.25}, kFall{0.025, 0.85, 0.08, 0.3};
// Peaks lie behind the last zone, where air and melting solder change within seconds: off by more than other points.
constexpr double kPeak_C = 0.3;
constexpr double kTimeAboveChange = 0.08;  // of the change of a time above a level, in the same way
constexpr double kFallUnseen = 0.3;        // of a fall that the log hardly shows: a share of it
// Of a run that is only imagined, shares of the slope: in an oven that has run, and in one of which nothing is known.
// How sharply air changes at a zone's edge then stands at its prior, and light parts answer that
// (docs/first_recipe.md).
constexpr double kSlopeAlone = 0.15, kSlopeAnyOven = 0.4;

bool is_slope(const judge::Outcome& outcome) { return outcome.value.unit == Unit::kCelsiusPerSecond; }

/// The two levels that a result is taken between, where it is.
std::optional<std::array<double, 2>> between(const judge::Outcome& outcome) {
  const auto& p = outcome.measure.parameters;
  const auto* from = p.T1 ? std::get_if<double>(&*p.T1) : nullptr;
  const auto* to = p.T2 ? std::get_if<double>(&*p.T2) : nullptr;
  if (!from || !to) return std::nullopt;
  return std::array{*from, *to};
}

/// Whether a log ends before what a result is of has cooled: it then shows little of its fall.
bool ends_hot(const run::Run& run, const judge::Outcome& outcome) {
  constexpr double cooled = 0.7;  // of the rise
  const auto hot = [](const run::Channel& channel) {
    if (!channel.trace) return false;
    const auto T = channel.trace->temperature_C();
    return T.back() > std::lerp(T.front(), *std::ranges::max_element(T), cooled);
  };
  return outcome.channel ? hot(run.channels[*outcome.channel]) : std::ranges::any_of(run.channels, hot);
}

/// Whether a log that ends hot leaves a requirement open: it shows a part of the fall, or only a bound.
bool is_unseen(const judge::Outcome& outcome, const run::Run& measured) {
  const bool of_the_fall = is_fall(outcome) || (outcome.value.at_least && outcome.upper);
  return of_the_fall && outcome.value.value && ends_hot(measured, outcome);
}

enum class Pass {
  kByRule,
  kInside
};  // with the guard band of a guarded rule off the limits, or the limits as they stand

double guard_band(const judge::Outcome& outcome, const judge::Judgement& judgement) {
  const bool guarded = judgement.windows[outcome.window].decision_rule == window::DecisionRule::kGuarded;
  return guarded ? outcome.value.expanded_uncertainty.value_or(0) : 0;
}

/// The chance that every required result passes. Errors of a board's temperatures are mostly one error: all read high
/// or all read low, and times above a level with them. So of these the chance that all hold is that the common error
/// lies between the tightest limit above and the tightest below. Rises and falls have errors of their own: the chances
/// of the three kinds multiply.
std::optional<double> pass_probability(const judge::Judgement& judgement, const std::vector<double>& half_width,
                                       const run::Run& measured, Pass pass) {
  constexpr double free = std::numeric_limits<double>::infinity();
  struct Room {
    double above = free, below = free;
  };
  std::array<Room, 3> rooms;  // levels, rises, falls
  bool any = false, unseen = false;
  for (std::size_t i = 0; i < judgement.all_size(); ++i) {
    const auto& outcome = judgement.all(i);
    if (!outcome.required) continue;
    if (!outcome.value.value) {
      if (outcome.value.no_value == measure::NoValue::kNotReached) return 0.0;
      unseen = true;
      continue;
    }
    // What the log does not show to its end may be more: unknown against an upper limit.
    const bool bound = outcome.value.at_least && outcome.upper && *outcome.value.value < *outcome.upper;
    if (bound || is_unseen(outcome, measured)) unseen = true;
    const double u = std::max(half_width[i] / kCoverage, 1e-9),
                 guard = pass == Pass::kByRule ? guard_band(outcome, judgement) : 0;
    Room& room = rooms[!is_slope(outcome) ? 0 : is_fall(outcome) ? 2 : 1];
    if (outcome.upper) room.above = std::min(room.above, (*outcome.upper - guard - *outcome.value.value) / u);
    if (outcome.lower) room.below = std::min(room.below, (*outcome.value.value - guard - *outcome.lower) / u);
    any = any || outcome.upper || outcome.lower;
  }
  double chance = 1;
  for (const Room& room : rooms)
    chance *= std::max(0.0, normal_probability(room.above) + normal_probability(room.below) - 1);
  // What is not seen can only take from the chance of the rest.
  constexpr double none = 0.01;
  if (!any || (unseen && chance >= none)) return std::nullopt;
  return chance;
}

}  // namespace

judge::Judgement with_prediction_error(judge::Judgement judgement, const std::vector<double>& half_width) {
  std::size_t i = 0;
  for (auto* outcomes : {&judgement.results, &judgement.board_results})
    for (auto& outcome : *outcomes) {
      auto& U = outcome.value.expanded_uncertainty;
      if (U && i < half_width.size()) {
        U = std::hypot(*U, half_width[i] * 2 / kCoverage);
        if (outcome.conformance_probability)
          outcome.conformance_probability =
              judge::conformance_probability(*outcome.value.value, *U, outcome.lower, outcome.upper);
      }
      ++i;
    }
  return judgement;
}

Forecaster::Forecaster(const heat::HeatModel& model, Subject subject)
    : model_(model), subject_(std::move(subject)), predictor_(model, subject_.model_run, subject_.traces) {
  const auto measured = judge::judge(*subject_.run, subject_.windows, false, subject_.board, std::nullopt);
  for (std::size_t i = 0; i < measured.all_size(); ++i) {
    noise_.push_back(kCoverage * measured.all(i).value.terms.noise);
    measured_.push_back(measured.all(i).value.value);
  }
}

double Forecaster::slope_half_width(const judge::Outcome& outcome, std::size_t index,
                                    const oven::Recipe& recipe) const {
  const heat::ModelRun& run = model_.problem.runs[subject_.model_run];
  const double slope = *outcome.value.value;
  if (run.imagined || index >= measured_.size() || !measured_[index]) {
    const auto mixing = heat::ParameterMap::kMixingUpstream;
    const double unknown =
        std::min(1.0, model_.covariance[mixing * (model_.theta.size() + 1)]);  // of the prior's variance
    return kCoverage * std::lerp(kSlopeAlone, kSlopeAnyOven, unknown) * slope;
  }
  if (is_fall(outcome) && ends_hot(*subject_.run, outcome)) return kCoverage * kFallUnseen * slope;
  const SlopeError& error = is_fall(outcome) ? kFall : kRise;
  const double belt = std::log(recipe.speed_mm_per_min / run.recipe.speed_mm_per_min);
  const double by_change = std::min(error.change * std::abs(slope - *measured_[index]), error.most_by_change * slope);
  const double strange = std::sqrt(std::max(1.0, model_.strangeness));
  return kCoverage * strange * std::hypot(error.own * slope, by_change, error.belt * belt * slope);
}

template <class Shift>
run::Run Forecaster::predicted_run(const std::vector<heat::PredictedTrace>& traces, Shift shift) const {
  run::Run out;
  out.channels.reserve(subject_.run->channels.size());
  out.sample_interval_s = subject_.run->sample_interval_s;
  std::shared_ptr<const run::Clock> shared;  // channels of one log share one clock
  for (const auto& measured : subject_.run->channels) {
    run::Channel channel;
    channel.name = measured.name;
    channel.number = measured.number;
    const auto found = std::ranges::find_if(
        traces, [&](const auto& t) { return model_.problem.placements[t.placement].name == measured.name; });
    if (found != traces.end()) {
      if (!shared || !std::ranges::equal(shared->time_s(), found->time_s)) {
        auto clock = run::Clock::make(found->time_s);
        shared = clock ? *std::move(clock) : nullptr;
      }
      std::vector<double> temperature_C = found->temperature_C;
      if (!found->band_C.empty())
        for (std::size_t i = 0; i < temperature_C.size(); ++i)
          temperature_C[i] += shift(temperature_C[i]) * found->band_C[i];
      if (shared) {
        auto trace = run::Trace::make(shared, std::move(temperature_C));
        if (trace) channel.trace = *std::move(trace);
      }
      channel.samples = found->time_s.size();
      out.to_s = std::max(out.to_s, found->time_s.back());
      channel.removed_start_to_s = found->time_s.front();
      channel.removed_end_from_s = found->time_s.back();
    }
    out.channels.push_back(std::move(channel));
  }
  out.from_s = subject_.run->from_s;
  return out;
}

judge::Judgement Forecaster::judged(const run::Run& run, const oven::Recipe& recipe, bool values_only) const {
  measure::Place place;
  place.oven = &model_.problem.oven;
  place.recipe = &recipe;
  place.entry = model_.problem.runs[subject_.model_run].entry;
  place.entry.at_s = model_.theta[model_.problem.map().entry(subject_.model_run)];
  return values_only ? judge::values(run, subject_.windows, subject_.board, place)
                     : judge::judge(run, subject_.windows, false, subject_.board, place);
}

std::vector<double> Forecaster::half_widths(const std::vector<heat::PredictedTrace>& traces, const oven::Recipe& recipe,
                                            const judge::Judgement& judgement) const {
  std::vector<double> out(judgement.all_size());
  /// What a shift of the curves does to each result, the larger of both ways.
  const auto moved = [&](const auto& shift) {
    std::vector<double> by(judgement.all_size());
    for (const double sign : {1.0, -1.0}) {
      const auto other = judged(predicted_run(traces, [&](double T) { return sign * shift(T); }), recipe, true);
      for (std::size_t i = 0; i < std::min(by.size(), other.all_size()); ++i)
        if (judgement.all(i).value.value && other.all(i).value.value)
          by[i] = std::max(by[i], std::abs(*other.all(i).value.value - *judgement.all(i).value.value));
    }
    return by;
  };
  const bool imagined = model_.problem.runs[subject_.model_run].imagined;
  const auto level = moved([](double) { return 1.0; });
  // Errors at two levels are not one error: (a − b)² + (a + b)² = 2 (a² + b²).
  std::optional<std::array<double, 2>> levels;
  std::vector<double> tilt;
  double widest_C = 0;
  for (const auto& trace : traces)
    if (!trace.band_C.empty()) widest_C = std::max(widest_C, *std::ranges::max_element(trace.band_C));
  for (std::size_t i = 0; i < out.size(); ++i) {
    const auto& outcome = judgement.all(i);
    const double noise = i < noise_.size() ? noise_[i] : 0;
    double square = level[i] * level[i] + noise * noise;
    if (const auto own = between(outcome)) {
      if (own != levels) {
        levels = own;
        const double middle = ((*own)[0] + (*own)[1]) / 2, half = std::max(1e-6, ((*own)[1] - (*own)[0]) / 2);
        tilt = moved([&](double T) { return std::clamp((T - middle) / half, -1.0, 1.0); });
      }
      square = (level[i] * level[i] + tilt[i] * tilt[i]) / 2 + noise * noise;
    }
    if (outcome.measure.measure == measure::Measure::kPeak && !imagined) square += std::pow(kCoverage * kPeak_C, 2);
    const bool compares = outcome.value.value && i < measured_.size() && measured_[i];
    if (outcome.measure.measure == measure::Measure::kTimeAbove && compares && !imagined)
      square += std::pow(kCoverage * kTimeAboveChange * (*outcome.value.value - *measured_[i]), 2);
    if (is_slope(outcome) && outcome.value.value) square += std::pow(slope_half_width(outcome, i, recipe), 2);
    // Spreads see only what the traces' errors do not share: half of the level's error (docs/heat_model.md).
    if (!outcome.channel && outcome.value.unit == Unit::kCelsius) square = std::max(square, widest_C * widest_C / 4);
    out[i] = std::sqrt(square);
  }
  return out;
}

Forecast Forecaster::forecast(const oven::Recipe& recipe, Detail detail) const {
  const bool with_band = detail == Detail::kValuesAndBand || detail == Detail::kJudgedAndBand;
  const bool values_only = detail == Detail::kValues || detail == Detail::kValuesAndBand;
  Forecast out;
  const auto traces = predictor_.predict(recipe, with_band);
  out.run = predicted_run(traces, [](double) { return 0.0; });
  out.judgement = judged(out.run, recipe, values_only);
  if (!with_band) {
    if (!values_only) out.judgement.sentence = judge::compose(out.judgement, judge::Phrases(), {.predicted = true});
    return out;
  }

  for (const auto& channel : out.run.channels) {
    const auto found = std::ranges::find_if(
        traces, [&](const auto& t) { return model_.problem.placements[t.placement].name == channel.name; });
    out.band_C.push_back(found == traces.end() ? std::vector<double>{} : found->band_C);
  }
  out.half_width = half_widths(traces, recipe, out.judgement);
  double worst = std::numeric_limits<double>::infinity();
  for (std::size_t i = 0; i < out.judgement.all_size(); ++i) {
    const auto& outcome = out.judgement.all(i);
    const double half_width = out.half_width[i];
    if (!outcome.required || !outcome.value.value || !outcome.margin) continue;
    const auto target = judge::effective_target(outcome.lower, outcome.upper, outcome.target, outcome.measure.measure);
    const auto at = [&](double v) { return judge::margin(v, outcome.lower, outcome.upper, target); };
    for (double v : {*outcome.value.value - half_width, *outcome.value.value + half_width})
      if (const auto m = at(v)) worst = std::min(worst, *m);
  }
  if (out.judgement.margin && std::isfinite(worst)) out.margin_uncertainty = *out.judgement.margin - worst;
  if (values_only) return out;
  const bool contradicted = model_.report.contradicted;
  if (!contradicted)
    out.pass_probability = pass_probability(out.judgement, out.half_width, *subject_.run, Pass::kByRule);
  if (!contradicted && std::ranges::any_of(subject_.windows, [](const window::ProcessWindow& one) {
        return one.decision_rule == window::DecisionRule::kGuarded;
      }))
    out.inside_probability = pass_probability(out.judgement, out.half_width, *subject_.run, Pass::kInside);
  for (std::size_t i = 0; i < out.judgement.all_size(); ++i)
    out.fall_unseen =
        out.fall_unseen || (out.judgement.all(i).required && is_unseen(out.judgement.all(i), *subject_.run));
  const auto told = with_prediction_error(out.judgement, out.half_width);
  out.judgement.sentence =
      judge::compose(told, judge::Phrases(),
                     {.predicted = true, .pass_probability = out.pass_probability, .fall_unseen = out.fall_unseen});
  const auto take_over = [&](std::vector<judge::Outcome>& outcomes, const std::vector<judge::Outcome>& from) {
    for (std::size_t i = 0; i < outcomes.size(); ++i)
      outcomes[i].conformance_probability =
          is_unseen(outcomes[i], *subject_.run) ? std::nullopt : from[i].conformance_probability;
  };
  take_over(out.judgement.results, told.results);
  take_over(out.judgement.board_results, told.board_results);
  return out;
}

}  // namespace ovenwright::tune
