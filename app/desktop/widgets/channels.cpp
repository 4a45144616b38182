#include "app/desktop/widgets/channels.h"

#include <algorithm>
#include <limits>
#include <numeric>

#include "core/judge/bind.h"

namespace ovenwright::widgets {

Channels channelsOf(const run::Run& run, const board::Board* board) {
  Channels channels;
  channels.looks.resize(run.channels.size());
  std::vector<std::size_t> unnamed;
  for (std::size_t i = 0; i < run.channels.size(); ++i) {
    const run::Channel& channel = run.channels[i];
    const judge::Seat seat = judge::seat_of(channel, board);
    ChannelLook& look = channels.looks[i];
    look.name = QString::fromStdString(seat.name);
    look.air = seat.kind == board::Kind::kAir;
    if (seat.placement) {
      look.placement = static_cast<std::size_t>(seat.placement - board->placements.data());
      look.style = *look.placement;
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
