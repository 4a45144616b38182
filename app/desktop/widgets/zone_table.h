#pragma once
#include <QString>
#include <optional>
#include <vector>

#include "app/desktop/text/format.h"
#include "core/judge/judgement.h"
#include "core/oven/oven.h"

namespace ovenwright::widgets {

/// One zone while a placement was in it.
struct ZoneCell {
  std::string id;  ///< the zone's name in the oven file
  QString name;    ///< "9", "C1"
  bool cooling = false;
  std::optional<double> top_C, bottom_C;              ///< a cooling zone has one setpoint, in top_C
  double from_s = 0, to_s = 0;                        ///< since the board's entry
  bool hatched = false;                               ///< a result that is out traces back here
  std::vector<int> discs;                             ///< numbers of the sentence's problems that do
  std::optional<double> topChange_C, bottomChange_C;  ///< against another recipe; absent where they are equal
  bool changed() const { return topChange_C || bottomChange_C; }
};

/// How a recipe is held against another one.
struct ZoneAgainst {
  bool together = false;                              ///< both sides are alike in both recipes: one row of setpoints
  bool framed = false;                                ///< changed setpoints are framed, and the differences stand below
  bool marked = false;                                ///< changed zones stand out
  std::optional<double> speedChange_mm_per_min = {};  ///< absent where it is equal
  QString side = {};                                  ///< "A" where strips stand under one plot
};

/// What the strip under the curves shows; holds no reference to what it was made from.
struct ZoneTable {
  enum class State { kZones, kNoOven, kNoEntry, kSeveral } state = State::kNoOven;  ///< kSeveral: recipes of a group
  std::vector<ZoneCell> cells;
  double speed_mm_per_min = 0;
  desktop::Format format;         ///< units of setpoints and speed
  QString placement;              ///< whose times they are: "U12 centre", "the leading edge", "the board's middle"
  std::optional<double> entry_s;  ///< on the log's clock, so that tool tips can give both
  std::optional<ZoneAgainst> against = {};  ///< in a comparison

  bool together() const { return against && against->together; }
  int setpointRows() const { return together() ? 1 : 2; }
};

/// Where a placement is behind the board's leading edge, and how it is called.
struct StripPlace {
  double x_mm = 0;
  QString name;
};

/// The chosen placement's place, else the board's middle, else (no board) the leading edge.
StripPlace stripPlace(const board::Board* board, const board::Placement* chosen, const QString& chosenName);

/// Zones with their times and with what traces back to them. `oven`, `recipe`, `judgement` may be null: without the
/// first two or the entry there are no zones. A zone that counts in any required result that is out is hatched.
ZoneTable zoneTable(const oven::Oven* oven, const oven::Recipe* recipe, const std::optional<oven::Entry>& entry,
                    const StripPlace& place, const judge::Judgement* judgement,
                    const desktop::Format& format = desktop::Format::inDefaultLocale());

/// Holds two strips against each other: what B changes is framed in it, with the differences under it. Strips whose
/// zones are not those of one oven stay as they are, in the rows that both need.
void holdAgainst(ZoneTable& a, ZoneTable& b, bool marked);

}  // namespace ovenwright::widgets
