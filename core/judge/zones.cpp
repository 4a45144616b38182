#include "core/judge/zones.h"

#include <algorithm>
#include <cmath>

namespace ovenwright::judge {
namespace {

constexpr double kMove_C = 3;       // by how much a zone is moved: a usual change, far above rounding
constexpr double kSmallest = 1e-3;  // shares below this are left out

/// One trace with its history, ready to be measured with a zone moved.
struct Movable {
  measure::Subject subject;
  run::Channel channel;  ///< thinned, without faults and gaps
  std::optional<History> history;

  Movable(const measure::Subject& of, const measure::Place& place, const AirProfile& air) : subject(of) {
    if (!of.channel->trace) return;
    channel.name = of.channel->name;
    channel.number = of.channel->number;
    history = history_of(*of.channel->trace, of.x_mm, place, air);
    if (history) channel.trace = history->trace;
  }

  /// As if a zone had been set `kMove_C` hotter; without a zone as it was.
  measure::Subject moved(std::optional<std::size_t> zone) {
    if (history && zone) {
      std::vector<double> temperature_C(history->trace.temperature_C().begin(), history->trace.temperature_C().end());
      for (std::size_t i = 0; i < temperature_C.size(); ++i) temperature_C[i] += kMove_C * history->response[*zone][i];
      auto trace = run::Trace::make(history->trace.clock(), std::move(temperature_C));
      if (trace) channel.trace = *std::move(trace);
    } else if (history) {
      channel.trace = history->trace;
    }
    if (channel.trace) {
      channel.removed_start_to_s = channel.trace->time_s().front();
      channel.removed_end_from_s = channel.trace->time_s().back();
      channel.samples = channel.trace->size();
    }
    subject.channel = &channel;
    return subject;
  }

  double response_at_peak(std::size_t zone) const {
    const auto T = history->trace.temperature_C();
    return history->response[zone][static_cast<std::size_t>(std::ranges::max_element(T) - T.begin())];
  }
};

std::vector<ZoneShare> shares_of(const std::vector<double>& weights, const oven::Oven& oven) {
  double sum = 0;
  for (const double weight : weights) sum += weight;
  if (!(sum > 0)) return {};
  double kept = 0;
  for (const double weight : weights)
    if (weight >= kSmallest * sum) kept += weight;
  std::vector<ZoneShare> shares;
  for (std::size_t z = 0; z < weights.size(); ++z)
    if (weights[z] >= kSmallest * sum) shares.push_back({oven.zones[z].name, {}, weights[z] / kept});
  return shares;
}

/// @param measure  values of the definitions with a zone moved, or with none
template <class Evaluate>
std::vector<std::vector<ZoneShare>> shares(std::span<const measure::Definition> definitions,
                                           std::span<const Movable> traces, const oven::Oven& oven,
                                           const Evaluate& evaluate) {
  const auto base = evaluate(std::nullopt);
  std::vector<std::vector<double>> weights(definitions.size(), std::vector<double>(oven.zones.size(), 0.0));
  for (std::size_t z = 0; z < oven.zones.size(); ++z) {
    const auto moved = evaluate(z);
    for (std::size_t d = 0; d < definitions.size(); ++d)
      if (base[d].value && moved[d].value && definitions[d].measure != measure::Measure::kPeakTime)
        weights[d][z] = std::abs(*moved[d].value - *base[d].value);
  }
  std::vector<std::vector<ZoneShare>> result;
  for (auto& weight : weights) {
    if (std::ranges::none_of(weight, [](double w) { return w > 0; }))
      for (std::size_t z = 0; z < oven.zones.size(); ++z)
        for (const auto& trace : traces)
          if (trace.history) weight[z] += trace.response_at_peak(z);
    result.push_back(shares_of(weight, oven));
  }
  return result;
}

}  // namespace

std::vector<std::vector<ZoneShare>> ZoneEstimate::of_trace(const measure::Subject& subject,
                                                           std::span<const measure::Definition> definitions) const {
  std::vector<Movable> trace{Movable(subject, place_, air_)};
  if (!trace[0].history) return std::vector<std::vector<ZoneShare>>(definitions.size());
  return shares(definitions, trace, *place_.oven, [&](std::optional<std::size_t> zone) {
    return measure::evaluate(trace[0].moved(zone), definitions, place_, {.uncertainty = false});
  });
}

std::vector<std::vector<ZoneShare>> ZoneEstimate::of_board(std::span<const measure::Subject> subjects,
                                                           std::span<const measure::Definition> definitions) const {
  std::vector<Movable> traces;
  traces.reserve(subjects.size());
  for (const auto& subject : subjects) traces.emplace_back(subject, place_, air_);
  std::erase_if(traces, [](const Movable& trace) { return !trace.history; });
  if (traces.empty()) return std::vector<std::vector<ZoneShare>>(definitions.size());
  return shares(definitions, traces, *place_.oven, [&](std::optional<std::size_t> zone) {
    std::vector<measure::Subject> moved;
    for (auto& trace : traces) moved.push_back(trace.moved(zone));
    return measure::evaluate_board(moved, definitions, place_, {.uncertainty = false});
  });
}

}  // namespace ovenwright::judge
