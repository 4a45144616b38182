#pragma once
#include <optional>
#include <string>
#include <variant>
#include <vector>

#include "core/board/board.h"
#include "core/measure/value.h"
#include "core/run/fault.h"
#include "core/window/window.h"

namespace ovenwright::judge {

/// In order of severity, the worst last (measures.md, Verdict).
enum class Verdict { kPass, kConditionalPass, kUndetermined, kConditionalFail, kFail };
const char* verdict_name(Verdict verdict);  ///< "pass", "conditional pass", …
/// Conditional fail or fail.
constexpr bool is_out(Verdict verdict) { return verdict >= Verdict::kConditionalFail; }

enum class MarginBound { kNone, kAtMost, kAtLeast };

/// How much a zone's side, or the speed, contributed to a result outside.
struct ZoneShare {
  std::string zone;
  std::optional<board::Side> side;  ///< absent where the sides cannot be told apart
  double share = 0;                 ///< 0 to 1
};

/// Why a result is undetermined, or only a bound.
struct Cause {
  enum class Kind {
    kNone,
    kFault,          ///< a faulty stretch of the trace
    kLogEndsHot,     ///< the log ends before the trace has cooled
    kLogEndsRising,  ///< the last sample is the peak
    kLogStartsHot,   ///< the log starts above a level it needs
    kTcUnknown,      ///< a limit is Tc, and `detail` says what to enter
    kNoChannel,      ///< the window names a channel that the log lacks
    kOther           ///< `detail` is a sentence without its full stop
  } kind = Kind::kNone;
  std::optional<std::size_t> channel = {};  ///< whose log or fault it is; absent where it concerns no single one
  std::string placement = {};               ///< that channel's name for people
  run::FaultKind fault = run::FaultKind::kOpen;
  double from_s = 0, to_s = 0;  ///< of the fault, log's clock
  std::string detail = {};      ///< English
};

/// One requirement judged on one trace, or on the board.
struct Outcome {
  std::size_t window = 0;       ///< index into Judgement::windows
  std::size_t requirement = 0;  ///< index into that window's requirements
  std::string requirement_name;
  std::string source;                  ///< of the limit that decides (the nearer one), else of both
  measure::Definition measure;         ///< defaults and Tc filled in
  std::optional<std::size_t> channel;  ///< index into the run's channels; absent for board measures, and for a
                                       ///< channel that the window names and the log lacks
  std::string trace;                   ///< the channel's name; empty for board measures
  std::string placement;               ///< what sentences call it: the channel's name, or the board's label
                                       ///< where that name says nothing
  measure::Value value;
  std::optional<double> lower, upper, target;  ///< numbers, Tc resolved; target only where the window gives one
  std::optional<double> tc_C;  ///< the part's classification temperature where a limit or the measure uses it
  bool required = true;
  Verdict verdict = Verdict::kUndetermined;
  std::optional<double> margin;  ///< a fraction
  MarginBound margin_bound = MarginBound::kNone;
  std::optional<double> conformance_probability;
  bool cannot_pass = false;                 ///< under `guarded`: the limits are narrower than 2 U
  Cause cause;                              ///< why it is undetermined, or only a bound
  std::vector<std::string> not_reached_by;  ///< placements that never reached the level, for a value not reached
  std::vector<std::string> zones;           ///< share of 10 % or more, both sides together, in the oven's order
  std::vector<ZoneShare> zone_shares;       ///< in the oven's order; sum 1
  std::optional<double> speed_share;        ///< the speed's, over zones and speed; absent in a first estimate
  std::string risk;                         ///< what being outside risks; empty inside
  std::string risk_source;
};

/// A piece of the verdict sentence: text as it stands, and what it leads to.
struct SentencePart {
  enum class Link { kNone, kOutcome, kZones, kWindowChooser, kMore, kBoardChooser, kFault } link = Link::kNone;
  std::string text = {};                   ///< English
  int disc = 0;                            ///< number of the disc before it; 0: none
  bool strong = false;                     ///< the verdict word
  bool signal = false;                     ///< in the signal colour
  std::vector<std::size_t> outcomes = {};  ///< indexes into all(): results, then board_results
  std::vector<std::string> zones = {};
};

/// An argument of a sentence template: a number with its unit, a name, a moment, or zones.
struct Argument {
  /// A difference of temperatures converts to another scale without the offset; a moment counts on the log's clock.
  enum class Role { kPlain, kDifference, kMoment };
  std::string name;
  std::variant<std::string, double, int, std::vector<std::string>> value;
  std::optional<Unit> unit = {};
  int digits = 0;  ///< decimals to print a double with
  Role role = Role::kPlain;
};

/// A whole template by its id with its arguments: one sentence of the verdict (core/judge/phrases.h has the templates).
struct Clause {
  std::string id;
  std::vector<Argument> arguments;
};
struct Sentence {
  std::vector<Clause> clauses;
  std::vector<SentencePart> parts;  ///< concatenated they give `text`
  std::string text;
};

/// A fault that was flagged and left in, on a trace that is out: the trace may be wrong, not the process.
struct Suspicion {
  std::size_t channel = 0;
  std::string placement;
  run::FaultKind fault = run::FaultKind::kStuck;
  double from_s = 0, to_s = 0;  ///< log's clock
};

/// Everything that was judged about one run.
struct Judgement {
  std::vector<window::ProcessWindow> windows;
  bool window_assumed = false;
  std::vector<Outcome> results;  ///< window order, then requirement order, then channel order
  std::vector<Outcome> board_results;
  Verdict verdict = Verdict::kUndetermined;
  std::optional<double> margin;  ///< smallest of the required results; absent where one has no value
  MarginBound margin_bound = MarginBound::kNone;
  Sentence sentence;
  std::vector<std::string> warnings;  ///< "narrower than 2w: cannot pass as guarded", "enter the thickness of U3", …
  std::vector<Suspicion> suspicions;  ///< one for each trace that is out and has a flagged fault, in channel order
  bool bodies_not_judged = false;     ///< a window limits bodies, and no board says what is one
  bool sides_not_judged = false;      ///< a window limits one side, and no board says which traces are on it
  std::string better_window;          ///< an assumed window does not fit the peaks and this one does; else empty

  const Outcome& all(std::size_t index) const {
    return index < results.size() ? results[index] : board_results[index - results.size()];
  }
  std::size_t all_size() const { return results.size() + board_results.size(); }
};

}  // namespace ovenwright::judge
