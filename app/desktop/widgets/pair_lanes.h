#pragma once
#include <QString>
#include <optional>
#include <span>
#include <string>
#include <vector>

#include "app/desktop/widgets/channels.h"
#include "app/desktop/widgets/lane_table.h"
#include "app/desktop/widgets/wording.h"
#include "core/compare/compare.h"
#include "core/compare/group.h"

namespace ovenwright::widgets {

/// A thermocouple of two runs: a channel of either or of both, by its name.
struct PairChannel {
  std::optional<std::size_t> a, b;  ///< channel indexes
};

/// Those of A in its order, then those that only B has. @param a, b  names of channels
std::vector<PairChannel> pairChannels(std::span<const std::string> a, std::span<const std::string> b);
/// The looks of B's channels with the styles of those of A that have their names; others get styles that A does not
/// use.
Channels matched(const Channels& b, const Channels& a, const std::vector<PairChannel>& pairs);

/// One side of a comparison as lanes show it.
struct PairSide {
  const judge::Judgement& judgement;      ///< a run's own, or that of a group's means
  const Channels& channels;               ///< of B matched to A's
  const compare::Group* group = nullptr;  ///< whose means they are; null for a run held against a run
};

/// Lanes with both sides in each, A over B, in the order of A's windows. Marks stand where they do in a run's own
/// lanes; those of groups are means, a tick for each run, and which group has more margin is decided by the means of
/// the runs' smallest margins on the requirement.
LaneTable pairLaneTable(const PairSide& a, const PairSide& b, const std::vector<PairChannel>& pairs,
                        const compare::Comparison& comparison, const Wording& wording = Wording());

/// "+3.6 ± 0.7 °C"; empty without a difference.
QString changeText(const compare::Difference& difference, const Wording& wording);

}  // namespace ovenwright::widgets
