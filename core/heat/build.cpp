#include "core/heat/build.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace ovenwright::heat {
namespace {

constexpr double kNone = std::numeric_limits<double>::quiet_NaN();
constexpr double kStart_s = 5;          // the mean over it is where the march begins
constexpr double kEntrySpread_s = 5.9;  // half width given to an entry that was found: the fit itself knows better

double suggested_liquidus_C(std::span<const RunInput> runs) {
  std::vector<double> peaks;
  for (const auto& input : runs)
    for (const auto& channel : input.run->channels)
      if (channel.trace) peaks.push_back(*std::ranges::max_element(channel.trace->temperature_C()));
  if (peaks.empty()) return 217;
  std::ranges::nth_element(peaks, peaks.begin() + static_cast<std::ptrdiff_t>(peaks.size() / 2));
  const double middle = peaks[peaks.size() / 2];
  return middle >= 225 ? 217 : middle >= 191 ? 183 : 138;
}

std::vector<double> bin_means(const run::Channel& channel, double start_s, double end_s) {
  const auto t = channel.trace->time_s(), T = channel.trace->temperature_C();
  const auto bins = static_cast<std::size_t>(std::floor((end_s - start_s) / kBin_s + 1e-9));
  std::vector<double> out(bins, kNone);
  std::size_t i = 0;
  for (std::size_t b = 0; b < bins; ++b) {
    const double from = start_s + kBin_s * static_cast<double>(b), to = from + kBin_s;
    while (i < t.size() && t[i] < from - 1e-9) ++i;
    double sum = 0;
    std::size_t n = 0;
    for (; i < t.size() && t[i] < to - 1e-9; ++i, ++n) sum += T[i];
    const bool gap =
        std::ranges::any_of(channel.gaps, [&](const run::Gap& g) { return g.from_s < to && g.to_s > from; });
    if (gap) continue;
    // Logs slower than the bins: the polyline at the bin's middle.
    out[b] = n > 0 ? sum / static_cast<double>(n) : channel.trace->at((from + to) / 2);
  }
  return out;
}

double start_mean(const run::Trace& trace) {
  double sum = 0;
  std::size_t n = 0;
  for (; n < trace.size() && (n == 0 || trace.time_s()[n] < trace.time_s().front() + kStart_s); ++n)
    sum += trace.temperature_C()[n];
  return sum / static_cast<double>(n);
}

}  // namespace

Built build(const oven::Oven& oven, std::optional<double> liquidus_C, std::span<const RunInput> runs) {
  Built out;
  out.problem.oven = oven;
  out.problem.liquidus_C = liquidus_C ? *liquidus_C : suggested_liquidus_C(runs);
  const auto kind = [](const RunInput& input, const run::Channel& channel) {
    const auto* placement = input.board ? input.board->placement(channel.name, channel.number) : nullptr;
    return placement ? placement->kind : board::Kind::kJoint;
  };
  for (const auto& input : runs)
    for (const auto& channel : input.run->channels) {
      if (!channel.trace || kind(input, channel) == board::Kind::kAir) continue;
      const bool known = std::ranges::any_of(out.problem.placements, [&](const ModelPlacement& p) {
        return p.board == input.board_index && p.name == channel.name;
      });
      if (known) continue;
      const auto* placement = input.board ? input.board->placement(channel.name, channel.number) : nullptr;
      out.problem.placements.push_back({channel.name, placement ? placement->x_mm : std::nullopt, input.board_index});
    }
  for (const auto& input : runs) {
    ModelRun run;
    run.recipe = input.recipe;
    run.board = input.board_index;
    run.start_s = input.run->from_s;
    run.end_s = input.run->to_s;
    run.entry = input.entry;
    run.entry_given = input.entry.found_from == oven::Entry::Source::kGiven;
    if (!run.entry_given) run.entry.uncertainty_s = std::max(run.entry.uncertainty_s, kEntrySpread_s);
    std::vector<const run::Trace*> traces;
    double sum = 0;
    std::size_t n = 0;
    for (const auto& placement : out.problem.placements) {
      const auto channel = std::ranges::find(input.run->channels, placement.name, &run::Channel::name);
      const bool here = placement.board == input.board_index && channel != input.run->channels.end() && channel->trace;
      traces.push_back(here ? &*channel->trace : nullptr);
      run.start_C.push_back(here ? start_mean(*channel->trace) : kNone);
      run.mean_C.push_back(here ? bin_means(*channel, run.start_s, run.end_s) : std::vector<double>{});
      if (here) sum += run.start_C.back(), ++n;
    }
    run.ambient_C = n ? sum / static_cast<double>(n) : oven.ambient_C;
    out.problem.runs.push_back(std::move(run));
    out.traces.push_back(std::move(traces));
  }
  return out;
}

}  // namespace ovenwright::heat
