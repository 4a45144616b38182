#pragma once
#include <QString>
#include <optional>
#include <vector>

#include "core/board/board.h"
#include "core/run/run.h"

namespace ovenwright::widgets {

/// One thermocouple of a run as every part of a screen shows it.
struct ChannelLook {
  QString name;                          ///< as the verdict calls it: judge::seat_of()
  std::size_t style = 0;                 ///< Theme::thermocouple(): the order of the board file, then that of the log
  std::optional<double> peak_C;          ///< absent where the channel has no valid trace
  std::optional<std::size_t> placement;  ///< index into the board's placements
  bool air = false;
};

/// By channel index of the run.
struct Channels {
  std::vector<ChannelLook> looks;
  std::vector<std::size_t> hottestFirst;  ///< channel indexes; those without a trace last
};

/// Cost: O(samples). @param board  may be null
Channels channelsOf(const run::Run& run, const board::Board* board);

}  // namespace ovenwright::widgets
