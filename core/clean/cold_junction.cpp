#include <algorithm>
#include <array>
#include <cmath>
#include <optional>
#include <span>
#include <string>

#include "core/clean/suspects.h"
#include "core/run/median.h"
#include "core/run/noise.h"
#include "core/units/parallel.h"
#include "core/units/phrase.h"

namespace ovenwright::clean {
namespace {

constexpr double kLeast_C = 1.5, kSigmas = 6, kAlike = 0.25, kOneSigmas = 3, kBends = 2, kBend_C_per_s2 = 0.5,
                 kEased = 0.2;
constexpr double kWorthALook = 1 - 1e-9;                               // what rounding may make of a bound
constexpr double kWaveStep_C = 40, kWaveRise_s = 2, kWaveNear_s = 15;  // as solder takes joints up, no reference does
constexpr std::size_t kSlopeSamples = 4;  // intervals before and behind from which the trend is taken

struct Step {
  double size_C = 0;
  double bend_C = 0;    ///< what the change of slope makes of the trend over the step
  double beside_C = 0;  ///< how far the intervals before and behind go beyond the trend, their mean
};

/// How far a trace steps between samples i and i + 2 beyond the trend of the samples before and behind.
Step step_at(const run::Trace& trace, std::size_t i) {
  const auto t = trace.time_s();
  const auto T = trace.temperature_C();
  const std::size_t j = i + 2;
  const double before = (T[i] - T[i - kSlopeSamples]) / (t[i] - t[i - kSlopeSamples]);
  const double behind = (T[j + kSlopeSamples] - T[j]) / (t[j + kSlopeSamples] - t[j]);
  const double over_s = t[j] - t[i];
  const double beside =
      (T[i] - T[i - 1] - before * (t[i] - t[i - 1]) + T[j + 1] - T[j] - behind * (t[j + 1] - t[j])) / 2;
  return {T[j] - T[i] - (before + behind) / 2 * over_s, std::abs(behind - before) * over_s, beside};
}

/// At least as much as step_at() gives anywhere on a trace, without its divisions.
class StepBound {
 public:
  explicit StepBound(const run::Trace& trace) : T_(trace.temperature_C()) {
    const auto& clock = *trace.clock();
    over_trend_ = 2 * clock.longest_interval_s() / (static_cast<double>(kSlopeSamples) * clock.shortest_interval_s());
  }
  double at(std::size_t i) const {
    const std::size_t j = i + 2;
    return std::abs(T_[j] - T_[i]) +
           over_trend_ / 2 * (std::abs(T_[i] - T_[i - kSlopeSamples]) + std::abs(T_[j + kSlopeSamples] - T_[j]));
  }

 private:
  std::span<const double> T_;
  double over_trend_ = 0;  ///< the most that the time of a step can be of the time from which the trend is taken
};

/// Where a trace steps by half of what all must: the samples before, in the order of time.
std::vector<std::size_t> places_of_steps(const run::Trace& trace, unsigned threads) {
  constexpr std::size_t kTogether = 1U << 16;
  const std::size_t n = trace.size();
  if (n < 2 * kSlopeSamples + 3) return {};
  const StepBound bound(trace);
  const std::size_t first = kSlopeSamples, end = n - 2 - kSlopeSamples;
  std::vector<std::vector<std::size_t>> found((end - first + kTogether - 1) / kTogether);
  for_each_index(found.size(), threads, [&](std::size_t part) {
    const std::size_t from = first + part * kTogether, to = std::min(end, from + kTogether);
    for (std::size_t i = from; i < to; ++i) {
      if (bound.at(i) < kWorthALook * kLeast_C / 2 || std::abs(step_at(trace, i).size_C) < kLeast_C / 2) continue;
      found[part].push_back(i);
    }
  });
  std::vector<std::size_t> places;
  for (const auto& part : found) places.insert(places.end(), part.begin(), part.end());
  return places;
}

/// The sample i of a trace such that the step would lie between it and i + 2; absent at the ends.
std::optional<std::size_t> place_of(const run::Trace& trace, double time_s) {
  const auto t = trace.time_s();
  const auto after = std::ranges::upper_bound(t, time_s);
  const auto place = static_cast<std::size_t>(after - t.begin());
  if (place < kSlopeSamples + 1 || place + 1 + kSlopeSamples >= t.size()) return std::nullopt;
  return place - 1;
}

/// What all traces do behind a moment, by trace.
struct Steps {
  std::vector<double> sizes_C;
  double middle_C = 0;  ///< median of the sizes
};

/// Absent where they do not step far enough for any noise.
std::optional<Steps> steps_at(const std::vector<run::Channel*>& channels, double time_s) {
  Steps steps;
  std::vector<double> bends, beside;
  for (const auto* channel : channels) {
    const auto place = place_of(*channel->trace, time_s);
    if (!place) return std::nullopt;
    const auto step = step_at(*channel->trace, *place);
    steps.sizes_C.push_back(step.size_C);
    bends.push_back(step.bend_C);
    beside.push_back(step.beside_C);
  }
  auto sorted = steps.sizes_C;
  steps.middle_C = run::median(sorted);
  const double h = channels.front()->trace->median_interval_s();
  const double least = std::max({kLeast_C, kBends * run::median(bends), kBend_C_per_s2 * h * h});
  // A steep ramp that eases on both sides is as steep a moment before and behind; a step stands alone.
  const double eased = run::median(beside) * (steps.middle_C < 0 ? -1 : 1);
  if (eased > kEased * std::abs(steps.middle_C)) return std::nullopt;
  return std::abs(steps.middle_C) >= least ? std::optional(std::move(steps)) : std::nullopt;
}

bool alike(const Steps& steps, const std::vector<double>& noise) {
  auto sigmas = noise;
  if (std::abs(steps.middle_C) < kSigmas * run::median(sigmas)) return false;
  for (std::size_t k = 0; k < noise.size(); ++k) {
    const double along = steps.middle_C < 0 ? -steps.sizes_C[k] : steps.sizes_C[k];
    const double most = std::max(kAlike * std::abs(steps.middle_C), kSigmas * noise[k]);
    if (along < kOneSigmas * noise[k] || std::abs(steps.sizes_C[k] - steps.middle_C) > most) return false;
  }
  return true;
}

/// Whether a wave takes one of the traces up near a moment: joints in a row across the belt touch it all at once.
bool wave_near(const std::vector<run::Channel*>& channels, double time_s) {
  return std::ranges::any_of(channels, [&](const run::Channel* channel) {
    const auto t = channel->trace->time_s();
    const auto T = channel->trace->temperature_C();
    auto from = static_cast<std::size_t>(std::ranges::lower_bound(t, time_s - kWaveNear_s) - t.begin());
    for (std::size_t k = from; k < t.size() && t[k] <= time_s + kWaveNear_s; ++k) {
      while (t[k] - t[from] > std::max(kWaveRise_s, channel->trace->median_interval_s())) ++from;
      for (std::size_t i = from; i < k; ++i)
        if (T[k] - T[i] > kWaveStep_C) return true;
    }
    return false;
  });
}

}  // namespace

void flag_cold_junction_steps(run::Run& run, unsigned threads) {
  std::vector<run::Channel*> channels;
  for (auto& channel : run.channels)
    if (channel.trace) channels.push_back(&channel);
  if (channels.size() < 2) return;
  const auto& first = *channels.front()->trace;
  const auto t = first.time_s();
  std::vector<double> noise;  // of each trace, once one is needed
  double best = 0;
  for (const std::size_t i : places_of_steps(first, threads)) {
    const auto beside = [&](const run::Fault& fault) { return fault.from_s <= t[i + 2] && fault.to_s >= t[i]; };
    const auto steps = steps_at(channels, t[i]);
    if (!steps || std::ranges::any_of(run.faults, beside)) continue;
    if (noise.empty())
      for (const auto* channel : channels)
        noise.push_back(run::noise_C(channel->trace->time_s(), channel->trace->temperature_C()));
    if (!alike(*steps, noise) || wave_near(channels, t[i])) continue;
    const double middle = steps->middle_C;
    auto text = std::to_string(middle);
    text.resize(text.find('.') + 2);
    const run::Fault fault{run::FaultKind::kColdJunctionStep, t[i], t[i + 2], run::FaultAction::kFlagged,
                           say(Phrase::kStep, {text}),        {}};
    for (auto* channel : channels) {
      auto& faults = channel->faults;
      const bool again = !faults.empty() && faults.back().kind == fault.kind && t[i] <= faults.back().to_s;
      if (!again)
        faults.push_back(fault);
      else if (std::abs(middle) > best)
        faults.back() = fault;
    }
    best = std::abs(middle);
  }
}

}  // namespace ovenwright::clean
