#include "app/desktop/widgets/channels.h"

#include <algorithm>
#include <limits>
#include <numeric>

namespace ovenwright::widgets {

Channels channelsOf(const run::Run& run, const board::Board* board) {
  Channels channels;
  channels.looks.resize(run.channels.size());
  std::vector<std::size_t> unnamed;
  for (std::size_t i = 0; i < run.channels.size(); ++i) {
    const run::Channel& channel = run.channels[i];
    ChannelLook& look = channels.looks[i];
    look.name = QString::fromStdString(channel.name);
    const board::Placement* placement = board ? board->placement(channel.name, channel.number) : nullptr;
    if (placement) {
      look.placement = static_cast<std::size_t>(placement - board->placements.data());
      look.style = *look.placement;
      if (placement->label) look.name = QString::fromStdString(*placement->label);
      look.air = placement->kind == board::Kind::kAir;
    } else {
      unnamed.push_back(i);
    }
    if (channel.trace) look.peak_C = std::ranges::max(channel.trace->temperature_C());
  }
  std::size_t style = board ? board->placements.size() : 0;
  for (const std::size_t i : unnamed) channels.looks[i].style = style++;

  channels.hottestFirst.resize(channels.looks.size());
  std::iota(channels.hottestFirst.begin(), channels.hottestFirst.end(), std::size_t{0});
  std::ranges::stable_sort(channels.hottestFirst, std::ranges::greater{}, [&channels](std::size_t i) {
    return channels.looks[i].peak_C.value_or(-std::numeric_limits<double>::infinity());
  });
  return channels;
}

}  // namespace ovenwright::widgets
