#pragma once
#include <optional>
#include <vector>

#include "core/board/board.h"
#include "core/log/reading.h"
#include "core/measure/measure.h"
#include "core/oven/oven.h"
#include "core/run/run.h"

namespace ovenwright::check {

/// What a run was made with: what every command that takes a log may be told about it.
struct Setting {
  const board::Board* board = nullptr;
  const oven::Oven* oven = nullptr;
  const oven::Recipe* recipe = nullptr;
  std::optional<double> entry_s;
  std::vector<int> keep_spikes = {};  ///< numbers of channels whose spikes are to stay as they are
};

/// The setting of a request; points into it.
template <class Request>
Setting setting_of(const Request& request) {
  const auto address = [](const auto& value) { return value ? &*value : nullptr; };
  return {address(request.board), address(request.oven), address(request.recipe), request.entry_s};
}

/// The runs of a reading, cleaned, the reading's channels moved out; only the `only`-th where that is given. What the
/// recipe breaks of the oven's limits is added to the reading's warnings.
/// Errors: as check::check.
Result<std::vector<run::Run>> passes(log::Reading& reading, const Setting& setting, std::optional<int> only);

/// Where the board is in a run: needs oven and recipe; the entry is the given one, else found from the curves.
std::optional<measure::Place> place_of(const run::Run& run, const Setting& setting);

}  // namespace ovenwright::check
