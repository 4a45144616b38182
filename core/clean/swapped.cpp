#include <algorithm>
#include <optional>
#include <string>
#include <vector>

#include "core/clean/suspects.h"
#include "core/units/phrase.h"

namespace ovenwright::clean {
namespace {

constexpr std::size_t kSlopeOver = 5;  // seconds
constexpr double kHeavier = 10, kSlower = 0.7;

/// What the mass of a part shows in its curve, wherever it sits on the board.
struct Weighed {
  run::Channel* channel = nullptr;
  std::string part;
  double mass_g = 0;
  std::optional<board::Side> side;  ///< the placement's, else the part's
  double steepest_rise = 0, steepest_fall = 0, peak_C = 0;
};

Weighed weighed(run::Channel& channel, const board::Placement& placement, const board::Part& part,
                const std::vector<double>& T) {
  const auto side = placement.side ? placement.side : part.side;
  Weighed trace{&channel, part.name, *part.mass_g, side, 0, 0, std::ranges::max(T)};
  for (std::size_t k = 0; k + kSlopeOver < T.size(); ++k) {
    trace.steepest_rise = std::max(trace.steepest_rise, T[k + kSlopeOver] - T[k]);
    trace.steepest_fall = std::max(trace.steepest_fall, T[k] - T[k + kSlopeOver]);
  }
  return trace;
}

/// How much slower the light part is than the heavy one, as a share of its rates; absent unless it is on all counts,
/// and where they face different sides, which may be heated differently: only one of them meets a wave.
std::optional<double> slower(const Weighed& light, const Weighed& heavy) {
  if (light.side && heavy.side && light.side != heavy.side) return std::nullopt;
  if (light.part == heavy.part || heavy.mass_g < kHeavier * light.mass_g || light.peak_C >= heavy.peak_C)
    return std::nullopt;
  const double rise = light.steepest_rise / heavy.steepest_rise, fall = light.steepest_fall / heavy.steepest_fall;
  const double worse = std::max(rise, fall);
  return worse < kSlower ? std::optional(worse) : std::nullopt;
}

}  // namespace

void flag_swapped(run::Run& run, const PassMeans& means, const board::Board& board) {
  std::vector<Weighed> traces;
  for (std::size_t k = 0; k < means.mean_C.size(); ++k) {
    auto& channel = run.channels[k];
    const auto* placement = board.placement(channel.name, channel.number);
    if (placement == nullptr || !placement->part || means.mean_C[k].size() <= kSlopeOver) continue;
    if (placement->kind != board::Kind::kJoint && placement->kind != board::Kind::kBody) continue;
    const auto* part = board.part(*placement->part);
    if (part != nullptr && part->mass_g) traces.push_back(weighed(channel, *placement, *part, means.mean_C[k]));
  }
  while (true) {  // the clearest pair first; each trace is of one pair
    double clearest = kSlower;
    std::size_t light = 0, heavy = 0;
    for (std::size_t i = 0; i < traces.size(); ++i) {
      for (std::size_t j = 0; j < traces.size(); ++j) {
        const auto how = slower(traces[i], traces[j]);
        if (!how || *how >= clearest) continue;
        clearest = *how;
        light = i;
        heavy = j;
      }
    }
    if (light == heavy) return;
    for (const auto& [one, other] : {std::pair(light, heavy), std::pair(heavy, light)}) {
      const auto trace = traces[one].channel->trace->time_s();
      traces[one].channel->faults.push_back({run::FaultKind::kSwappedPlacement,
                                             trace.front(),
                                             trace.back(),
                                             run::FaultAction::kFlagged,
                                             say(Phrase::kSwappedWith, {traces[other].channel->name}),
                                             {}});
    }
    const auto first = static_cast<std::ptrdiff_t>(std::max(light, heavy)),
               second = static_cast<std::ptrdiff_t>(std::min(light, heavy));
    traces.erase(traces.begin() + first);
    traces.erase(traces.begin() + second);
  }
}

}  // namespace ovenwright::clean
