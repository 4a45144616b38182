#pragma once
#include <optional>
#include <string>
#include <variant>
#include <vector>

#include "core/board/board.h"
#include "core/measure/value.h"
#include "core/window/window.h"

namespace ovenwright::judge {

/// In order of severity, the worst last (measures.md, Verdict).
enum class Verdict { kPass, kConditionalPass, kUndetermined, kConditionalFail, kFail };
const char* verdict_name(Verdict verdict);  ///< "pass", "conditional pass", …

enum class MarginBound { kNone, kAtMost, kAtLeast };

/// How much a zone's side, or the speed, contributed to a result outside.
struct ZoneShare {
  std::string zone;
  std::optional<board::Side> side;  ///< absent where the sides cannot be told apart
  double share = 0;                 ///< 0 to 1
};

/// One requirement judged on one trace, or on the board.
struct Outcome {
  std::size_t window = 0;                ///< index into Judgement::windows
  std::size_t requirement = 0;           ///< index into that window's requirements
  std::string requirement_name;
  std::string source;                    ///< of the limit that decides (the nearer one), else of both
  measure::Definition measure;           ///< defaults and Tc filled in
  std::optional<std::size_t> channel;    ///< index into the run's channels; absent for board measures
  std::string trace;                     ///< the channel's name; empty for board measures
  measure::Value value;
  std::optional<double> lower, upper, target;  ///< numbers, Tc resolved
  bool required = true;
  Verdict verdict = Verdict::kUndetermined;
  std::optional<double> margin;          ///< a fraction
  MarginBound margin_bound = MarginBound::kNone;
  std::optional<double> conformance_probability;
  std::vector<std::string> zones;        ///< share of 10 % or more, both sides together
  std::vector<ZoneShare> zone_shares;
  std::string risk;                      ///< what being outside risks; empty inside
  std::string risk_source;
};

/// A piece of the verdict sentence: text as it stands, and what it leads to.
struct SentencePart {
  enum class Link { kNone, kOutcome, kZones, kWindowChooser, kMore, kBoardChooser, kFault } link = Link::kNone;
  std::string text;                      ///< English
  int disc = 0;                          ///< number of the disc before it; 0: none
  bool strong = false;                   ///< the verdict word
  bool signal = false;                   ///< in the signal colour
  std::vector<std::size_t> outcomes;     ///< indexes into all(): results, then board_results
  std::vector<std::string> zones;
};

/// An argument of a sentence template: a number with its unit, or a name or time.
struct Argument {
  std::string name;
  std::variant<std::string, double, int> value;
  std::optional<Unit> unit;
};

/// A whole template by its id with its arguments, and the finished English text; the desktop translates by id.
struct Clause {
  std::string id;
  std::vector<Argument> arguments;
};
struct Sentence {
  std::vector<Clause> clauses;
  std::vector<SentencePart> parts;  ///< concatenated they give `text`
  std::string text;
};

/// Everything that was judged about one run.
struct Judgement {
  std::vector<window::ProcessWindow> windows;
  bool window_assumed = false;
  std::vector<Outcome> results;        ///< window order, then requirement order, then channel order
  std::vector<Outcome> board_results;
  Verdict verdict = Verdict::kUndetermined;
  std::optional<double> margin;        ///< smallest of the required results; absent where one has no value
  MarginBound margin_bound = MarginBound::kNone;
  Sentence sentence;
  std::vector<std::string> warnings;   ///< "narrower than 2w: cannot pass as guarded", "enter the thickness of U3", …
  bool bodies_not_judged = false;

  const Outcome& all(std::size_t index) const {
    return index < results.size() ? results[index] : board_results[index - results.size()];
  }
  std::size_t all_size() const { return results.size() + board_results.size(); }
};

}  // namespace ovenwright::judge
