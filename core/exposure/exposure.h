#pragma once
#include <cstddef>
#include <optional>
#include <span>
#include <string>
#include <vector>

#include "core/board/board.h"
#include "core/judge/judgement.h"
#include "core/measure/value.h"
#include "core/run/run.h"
#include "core/units/result.h"
#include "core/window/window.h"

namespace ovenwright::exposure {

/// One soldering pass of a board, in the order in which the board goes through them. Pointers are not owned.
struct Pass {
  std::string name;  ///< "under side, reflow"
  const run::Run* run = nullptr;
  const window::ProcessWindow* window = nullptr;  ///< process, liquidus, uncertainty and decision rule
  const board::Board* board = nullptr;            ///< as it lies in this pass; may be null
};

/// What a placement saw in one pass, against the liquidus of its own solder.
struct Heat {
  measure::Value peak, time_above, area_above;
};

/// A sum over passes.
struct Total {
  double value = 0;
  double expanded_uncertainty = 0;
  bool at_least = false;  ///< a pass shows only part of it, or was not measured
};

/// One placement over all passes: placements are the same where their channels have the same name.
struct Placement {
  std::string trace, name;               ///< the channel, and what people call it
  std::optional<std::string> part = {};  ///< the board file's part, by its name
  board::Kind kind = board::Kind::kJoint;
  std::size_t first = 0;                         ///< the pass in which it was first measured: it is soldered there
  std::vector<std::optional<Heat>> passes = {};  ///< of every pass; absent before `first` and where not measured
  double liquidus_C = 0, solidus_C = 0;          ///< of the solder of its first pass
  std::optional<Total> time_above_s = {}, area_above_Cs = {};  ///< absent where no pass has a value
  std::size_t heats = 0;                                       ///< passes from the first on
  int allowed = 3;                                             ///< of its part, else three (J-STD-020)
};

/// What several passes do that one pass does not show.
struct Finding {
  enum class Kind {
    kMeltsAgain,  ///< a joint made before is above its solidus on the wave
    kHangs,       ///< a part under the board is heavier than its wetted pads hold by the rule of thumb
    kTooMany      ///< more soldering heats than its part allows
  } kind = Kind::kMeltsAgain;
  judge::Verdict verdict = judge::Verdict::kPass;
  std::string name;                           ///< the placement, or the part
  std::optional<std::size_t> placement = {};  ///< index; absent for a part that no thermocouple sits on
  std::size_t pass = 0;                       ///< in which it happens; of kTooMany the first beyond
  std::optional<double> value = {};           ///< °C, mg/mm², or a count
  double limit = 0;
  std::optional<double> expanded_uncertainty = {};  ///< of a temperature
  std::string sentence = {};                        ///< English, with its rule's source
};

struct Exposure {
  std::vector<Placement> placements;               ///< in the order in which they are first measured
  std::vector<Finding> findings;                   ///< the worst first; also those that pass
  judge::Verdict verdict = judge::Verdict::kPass;  ///< the worst finding
  std::string sentence;                            ///< English: what is out, and the longest total above liquidus
  std::vector<std::string> warnings;
};

/// 30 g per square inch of wetted pad, in mg/mm². Source: rule of thumb of the trade for parts under the board.
inline constexpr double kHeaviest_mg_per_mm2 = 30 * 1000 / 645.16;

/// Adds up what each placement sees over several passes, and finds what only several passes do.
///
/// Peak, time and area above the liquidus are the measures of a single run. In a total the errors of thermocouple and
/// instrument add up, since they are the same in every pass; noise and sampling add in squares. No standard limits the
/// total: it is told, not judged. A joint soldered before melts again where a wave takes it above its solidus (the
/// liquidus where the window gives none), by that pass's decision rule; in a further reflow it melts by intention. A
/// part faces down in a second or later reflow by the pass's board file. Air is left out.
/// Errors: kBadArgument without a pass, and where a window gives no liquidus.
/// Cost: three measures for each trace.
Result<Exposure> add_up(std::span<const Pass> passes);

}  // namespace ovenwright::exposure
