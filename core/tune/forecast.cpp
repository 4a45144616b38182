#include "core/tune/forecast.h"

#include <algorithm>
#include <cmath>

#include "core/judge/judge.h"

namespace ovenwright::tune {
namespace {

double normal_probability(double z) { return std::erfc(-z / std::sqrt(2.0)) / 2; }

/// Errors of a board's traces are mostly one error: all read high or all read low. So the chance that every requirement
/// holds is that the common error lies between the tightest limit above and the tightest below.
std::optional<double> pass_probability(const judge::Judgement& judgement, const std::vector<double>& half_width) {
  double above = std::numeric_limits<double>::infinity(), below = above;
  for (std::size_t i = 0; i < judgement.all_size(); ++i) {
    const auto& outcome = judgement.all(i);
    if (!outcome.required) continue;
    if (!outcome.value.value)
      return outcome.value.no_value == measure::NoValue::kNotReached ? std::optional(0.0) : std::nullopt;
    const double u = std::max(half_width[i] / 1.96, 1e-9);
    if (outcome.upper) above = std::min(above, (*outcome.upper - *outcome.value.value) / u);
    if (outcome.lower) below = std::min(below, (*outcome.value.value - *outcome.lower) / u);
  }
  return std::max(0.0, normal_probability(above) + normal_probability(below) - 1);
}

}  // namespace

Forecaster::Forecaster(const heat::HeatModel& model, Subject subject)
    : model_(model), subject_(std::move(subject)), predictor_(model, subject_.model_run, subject_.traces) {}

run::Run Forecaster::predicted_run(const std::vector<heat::PredictedTrace>& traces, double sign) const {
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
      if (sign != 0)
        for (std::size_t i = 0; i < temperature_C.size(); ++i) temperature_C[i] += sign * found->band_C[i];
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

Forecast Forecaster::forecast(const oven::Recipe& recipe, Detail detail) const {
  const bool with_band = detail == Detail::kValuesAndBand || detail == Detail::kJudgedAndBand;
  const bool values_only = detail == Detail::kValues || detail == Detail::kValuesAndBand;
  Forecast out;
  const auto traces = predictor_.predict(recipe, with_band);
  out.run = predicted_run(traces, 0);
  out.judgement = judged(out.run, recipe, values_only);
  if (!with_band) return out;

  for (const auto& channel : out.run.channels) {
    const auto found = std::ranges::find_if(
        traces, [&](const auto& t) { return model_.problem.placements[t.placement].name == channel.name; });
    out.band_C.push_back(found == traces.end() ? std::vector<double>{} : found->band_C);
  }
  const auto high = judged(predicted_run(traces, 1), recipe, true),
             low = judged(predicted_run(traces, -1), recipe, true);
  double worst = std::numeric_limits<double>::infinity();
  for (std::size_t i = 0; i < out.judgement.all_size(); ++i) {
    const auto& outcome = out.judgement.all(i);
    const auto value = [&](const judge::Judgement& j) {
      return i < j.all_size() ? j.all(i).value.value : std::nullopt;
    };
    double half_width = 0;
    if (outcome.value.value)
      for (const auto& other : {value(high), value(low)})
        if (other) half_width = std::max(half_width, std::abs(*other - *outcome.value.value));
    // Spreads see only what the traces' errors do not share: half of the level's error (docs/heat_model.md).
    if (!outcome.channel && outcome.value.unit == Unit::kCelsius) {
      double band_C = 0;
      for (const auto& band : out.band_C)
        if (!band.empty()) band_C = std::max(band_C, *std::ranges::max_element(band));
      half_width = std::max(half_width, band_C / 2);
    }
    out.half_width.push_back(half_width);
    if (!outcome.required || !outcome.value.value || !outcome.margin) continue;
    const auto target = judge::effective_target(outcome.lower, outcome.upper, outcome.target, outcome.measure.measure);
    const auto at = [&](double v) { return judge::margin(v, outcome.lower, outcome.upper, target); };
    for (double v : {*outcome.value.value - half_width, *outcome.value.value + half_width})
      if (const auto m = at(v)) worst = std::min(worst, *m);
  }
  if (out.judgement.margin && std::isfinite(worst)) out.margin_uncertainty = *out.judgement.margin - worst;
  out.pass_probability = pass_probability(out.judgement, out.half_width);
  return out;
}

}  // namespace ovenwright::tune
