#pragma once
#include <QString>
#include <array>
#include <optional>
#include <vector>

#include "app/desktop/widgets/channels.h"
#include "app/desktop/widgets/wording.h"
#include "core/judge/judgement.h"

namespace ovenwright::widgets {

/// One run of a group on a lane.
struct LaneTick {
  double s = 0;
  bool signal = false;  ///< fail or conditional fail of a required result
};

/// One result on its lane, in positions s of LaneScale.
struct LaneMark {
  enum class State { kValue, kNotReached, kUndetermined };
  std::size_t outcome = 0;             ///< index into Judgement::all(); in a comparison B's behind A's
  std::vector<std::size_t> covered;    ///< better results of the same thermocouple in this lane, not shown
  std::optional<std::size_t> channel;  ///< of the run; absent for the board and for a channel that the log lacks;
                                       ///< in a comparison an index into the thermocouples of both
  std::size_t style = 0;               ///< Theme::thermocouple()
  std::size_t track = 0;               ///< from the top; the same for a thermocouple in every lane
  std::size_t side = 0;                ///< in a comparison 0 for A, 1 for B
  QString place;                       ///< "U12 centre", "board"
  State state = State::kValue;
  std::optional<double> s;
  std::optional<std::array<double, 2>> whisker;  ///< v − U, v + U
  std::optional<std::array<double, 2>> range;    ///< of the three fills of a gap
  std::vector<LaneTick> ticks;                   ///< of a group's mean: its runs
  bool mean = false;                             ///< of a group: its verdict, the worst of the runs', rings no mark
  std::optional<double> measured;                ///< s of what was measured, where the lane shows a prediction
  bool atLeast = false;
  judge::Verdict verdict = judge::Verdict::kUndetermined;
  bool signal = false;  ///< fail or conditional fail of a required result
  bool hollow = false;  ///< conditional or informative
  bool caps = false;    ///< the whisker crosses a limit or is outside
  QString ownLimit;     ///< "upper limit 245, Tc" where the other marks of the lane have another; else empty
  QString tip, spoken;
};

/// The last column of a lane: its worst result.
struct LaneSummary {
  std::size_t mark = 0;  ///< index into Lane::marks
  QString value, uncertainty, unit, margin;
  bool bold = false;
};

/// The last columns of a lane that compares.
struct PairSummary {
  struct Worst {
    std::optional<std::size_t> mark;  ///< index into Lane::marks; absent where the side has no such result
    QString margin;                   ///< or why there is none; of a group the mean of its runs' smallest
    bool bold = false;
  };
  std::array<Worst, 2> worst;         ///< of A and of B: the smallest margin
  std::optional<std::size_t> change;  ///< the mark whose value changes most, on either side
  QString difference, uncertainty, unit;
  QString counts;  ///< of groups the values behind the change, "5, 4"
  QString more;    ///< which has more margin: "A", "B", "same"; empty where that cannot be said
};

/// Requirements of one measure with the same parameters, on all thermocouples.
struct Lane {
  QString title, note;
  QString lower, upper;        ///< "235", "by part"; "–" where the side is open
  QString lowerTip, upperTip;  ///< the limits by part, one a line; empty where there is one
  bool hasLower = false, hasUpper = false;
  bool board = false, informative = false;
  std::optional<std::array<double, 2>> lowerGuard, upperGuard;  ///< guard band in s; rule `guarded` only
  bool neverPasses = false;                                     ///< narrower than twice the guard band
  std::vector<LaneMark> marks;                                  ///< hottest first
  LaneSummary worst;
  PairSummary pair;  ///< of a table that compares, in place of `worst`
  QString rowText;   ///< the row as text, tab separated, for the clipboard
};

/// Everything the limit lanes show of a judgement; holds no reference to it.
struct LaneTable {
  std::vector<Lane> lanes;
  std::size_t tracks = 0;  ///< thermocouples that any requirement binds
  bool pair = false;       ///< two runs in each lane, A over B
  bool groups = false;     ///< two groups of runs are

  struct Position {
    std::size_t lane = 0, mark = 0;
  };
  /// Where an outcome stands, or the worse one of the same lane and thermocouple that covers it.
  std::optional<Position> find(std::size_t outcome) const;
  /// As a table: a column for each thermocouple by its track, one more for the board where it is judged; in a
  /// comparison all of A, then all of B.
  std::size_t columns() const;
  std::size_t column(const Lane& lane, const LaneMark& mark) const;
  const LaneMark& at(const Position& position) const { return lanes[position.lane].marks[position.mark]; }
};

/// Groups the results into lanes in the window's order, board requirements last. Of two results on one thermocouple in
/// one lane (a joint limit and a part limit) the worse one is shown.
LaneTable laneTable(const judge::Judgement& judgement, const Channels& channels, const Wording& wording = Wording());

/// Lanes of a prediction: each mark is tied to what was measured on the same thermocouple, and tells it.
/// @param measured  judged by the same windows
LaneTable predictedLaneTable(const judge::Judgement& predicted, const judge::Judgement& measured,
                             const Channels& channels, const Wording& wording = Wording());

/// Where a value would stand on the lane of an outcome, in s; empty where its lane has no scale.
std::optional<double> lanePosition(const judge::Outcome& outcome, double value);

/// "A", "B"
QString sideLetter(std::size_t side);

/// What a lane is about. A reference written as Tc differs by part as a number and is one lane all the same.
measure::Definition laneDefinition(const judge::Judgement& judgement, const judge::Outcome& outcome);

}  // namespace ovenwright::widgets
