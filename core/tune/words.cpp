#include "core/tune/words.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <map>

#include "core/judge/judge.h"
#include "core/units/listed.h"

namespace ovenwright::tune {
namespace {

std::string number(double value) {
  const std::string text = fmt::format("{:.1f}", std::abs(value));
  return text.ends_with(".0") ? text.substr(0, text.size() - 2) : text;
}

std::string titled(std::string text) {
  if (!text.empty()) text[0] = static_cast<char>(std::toupper(static_cast<unsigned char>(text[0])));
  return text;
}

/// "zones 8 and 9 up 7 °C, bottom of zone 1 down 14 °C, speed down 38 mm/min"
std::string what_changes(const oven::Oven& oven, const std::vector<Change>& changes) {
  // Both sides of a zone that move alike are one change; what moves alike is named together, each side for itself.
  struct Move {
    std::string side;  // "", "top of ", "bottom of "
    double by;
    std::vector<std::string> zones;
  };
  std::vector<Move> moves;
  const auto add = [&](const std::string& side, const std::string& name, double by) {
    const auto same = std::ranges::find_if(moves, [&](const Move& m) { return m.by == by && m.side == side; });
    if (same == moves.end())
      moves.push_back({side, by, {name}});
    else
      same->zones.push_back(name);
  };
  for (const auto& zone : oven.zones) {
    const auto side = [&](board::Side which) {
      return std::ranges::find_if(changes, [&](const Change& c) { return c.zone == zone.name && c.side == which; });
    };
    const auto top = side(board::Side::kTop), bottom = side(board::Side::kBottom);
    const bool has_top = top != changes.end(), has_bottom = bottom != changes.end();
    if (has_top && has_bottom && top->to - top->from == bottom->to - bottom->from) {
      add("", zone.name, top->to - top->from);
      continue;
    }
    if (has_top) add("top of ", zone.name, top->to - top->from);
    if (has_bottom) add("bottom of ", zone.name, bottom->to - bottom->from);
  }
  std::vector<std::string> parts;
  for (const auto& move : moves)
    parts.push_back(fmt::format("{}zone{} {} {} {} °C", move.side, move.zones.size() > 1 ? "s" : "", listed(move.zones),
                                move.by > 0 ? "up" : "down", number(move.by)));
  for (const auto& change : changes)
    if (change.zone.empty())
      parts.push_back(
          fmt::format("speed {} {} mm/min", change.to > change.from ? "up" : "down", number(change.to - change.from)));
  if (parts.empty()) return "No change";
  std::string out;
  for (const auto& part : parts) out += (out.empty() ? "" : ", ") + part;
  return titled(out);
}

/// "U1 corner is predicted to reach 235 °C with 3.2 ± 2.1 °C in hand", "R118 is predicted to stay 2.0 ± 1.8 °C below
/// 250 °C", "soak time of J1 is predicted at 75.9 s, 15.9 ± 4.2 s above the 60 s it needs".
std::string held(const judge::Outcome& outcome, std::optional<double> half_width, bool upper,
                 const std::string& board) {
  const double limit = upper ? *outcome.upper : *outcome.lower;
  const char* unit = unit_symbol(outcome.value.unit);
  const int digits = outcome.value.unit == Unit::kCelsiusPerSecond ? 2 : 1;
  std::string in_hand = fmt::format("{:.{}f}", std::abs(*outcome.value.value - limit), digits);
  if (half_width) in_hand += fmt::format(" ± {:.{}f}", *half_width, digits);
  in_hand += std::string{" "} + unit;
  const std::string at = number(limit) + " " + unit;
  const std::string on_board = board.empty() ? "" : " on " + board, trace = outcome.trace + on_board;
  if (outcome.measure.measure == measure::Measure::kPeak && outcome.channel)
    return upper ? fmt::format("{} is predicted to stay {} below {}", trace, in_hand, at)
                 : fmt::format("{} is predicted to reach {} with {} in hand", trace, at, in_hand);
  return fmt::format("{}{} is predicted at {:.{}f} {}, {} {}", outcome.requirement_name,
                     outcome.trace.empty() ? on_board : " of " + trace, *outcome.value.value, digits, unit, in_hand,
                     upper ? "below its limit of " + at : "above the " + at + " it needs");
}

const char* aim_words(Aim aim) {
  switch (aim) {
    case Aim::kLeastChange:
      return "the least change";
    case Aim::kMostMargin:
      return "the most margin";
    case Aim::kFastest:
      return "the fastest belt";
    case Aim::kCoolest:
      return "the lowest setpoints";
  }
  return "";
}

/// Two placements whose peaks lie further apart than the window leaves room, where the conflict is of that kind.
std::string spread_of_peaks(const std::vector<Conflict>& conflicts) {
  const auto low = std::ranges::find_if(conflicts, [](const Conflict& c) { return c.peak && !c.upper && c.value; });
  const auto high = std::ranges::find_if(conflicts, [](const Conflict& c) { return c.peak && c.upper && c.value; });
  if (low == conflicts.end() || high == conflicts.end() || low->trace == high->trace) return "";
  const double apart_C = *high->value - *low->value, room_C = high->limit - low->limit;
  if (apart_C <= room_C) return "";
  return fmt::format(
      " The peaks of {} and {} are {:.1f} °C apart at the best recipe, and the window leaves {:.1f} °C: that is more "
      "than setpoints and speed can bring together.",
      low->trace, high->trace, apart_C, room_C);
}

}  // namespace

std::string suggestion_sentence(const oven::Oven& oven, const Suggestion& suggestion,
                                const std::vector<std::string>& names) {
  // The tightest lower and the tightest upper limit say why.
  const judge::Outcome* tightest[2] = {nullptr, nullptr};
  std::optional<double> half_width[2];
  std::string on[2];
  double smallest[2] = {1e9, 1e9};
  for (std::size_t b = 0; b < suggestion.predicted.size(); ++b) {
    const auto& forecast = suggestion.predicted[b];
    for (std::size_t i = 0; i < forecast.judgement.all_size(); ++i) {
      const auto& outcome = forecast.judgement.all(i);
      if (!outcome.required || !outcome.value.value) continue;
      const auto target =
          judge::effective_target(outcome.lower, outcome.upper, outcome.target, outcome.measure.measure);
      for (int upper = 0; upper < 2; ++upper) {
        const auto& limit = upper ? outcome.upper : outcome.lower;
        if (!limit || !target) continue;
        const double margin =
            (upper ? *limit - *outcome.value.value : *outcome.value.value - *limit) / std::abs(*limit - *target);
        if (margin >= smallest[upper]) continue;
        smallest[upper] = margin;
        tightest[upper] = &outcome;
        half_width[upper] = i < forecast.half_width.size() ? std::optional(forecast.half_width[i]) : std::nullopt;
        on[upper] = b < names.size() ? names[b] : std::string{};
      }
    }
  }
  std::string out = what_changes(oven, suggestion.changes);
  bool first = true;
  for (int upper = 0; upper < 2; ++upper)
    if (tightest[upper]) {
      out += (first ? ": " : "; ") + held(*tightest[upper], half_width[upper], upper != 0, on[upper]);
      first = false;
    }
  out += ".";
  for (const Aim aim : suggestion.also) out += fmt::format(" The same recipe is what {} comes to.", aim_words(aim));
  return out;
}

std::string doubtful_words() { return " It is not sure to pass: of those found it is the likeliest."; }

std::string infeasible_sentence(const Infeasible& infeasible, const std::vector<std::string>& names) {
  std::string out = fmt::format(
      "No recipe of this oven {} every requirement: the best margin that the model finds is \u2212{:.0f} %, and its "
      "error "
      "{}.",
      infeasible.ruled_out ? "holds" : "is predicted to hold", -100 * infeasible.best_margin,
      infeasible.ruled_out ? "leaves no room for a pass" : "does not rule a pass out");
  if (infeasible.conflicts.empty()) return out;
  out += " What stands against each other:";
  for (std::size_t i = 0; i < infeasible.conflicts.size(); ++i) {
    const auto& conflict = infeasible.conflicts[i];
    const char* joint = i == 0 ? "" : i + 1 == infeasible.conflicts.size() ? " and" : ",";
    const std::string on_board = names.empty() ? "" : " on " + names[conflict.board];
    const int digits = conflict.give < 1 ? 2 : conflict.give < 20 ? 1 : 0;
    out += fmt::format("{} the {} limit of {}{}{}, at {} {} (alone it would have to give {:.{}f} {})", joint,
                       conflict.upper ? "upper" : "lower", conflict.requirement,
                       conflict.trace.empty() ? "" : " of " + conflict.trace, on_board, number(conflict.limit),
                       unit_symbol(conflict.unit), conflict.give, digits, unit_symbol(conflict.unit));
  }
  return out + "." + (infeasible.ruled_out ? spread_of_peaks(infeasible.conflicts) : "");
}

std::string next_run_sentence(const oven::Oven& oven, const NextRun& next_run, std::optional<double> value,
                              bool is_best, bool fails) {
  const char* unit = unit_symbol(next_run.unit);
  const int digits = next_run.unit == Unit::kCelsiusPerSecond ? 2 : 1;
  std::string what = what_changes(oven, next_run.changes);
  if (!what.empty()) what[0] = static_cast<char>(std::tolower(static_cast<unsigned char>(what[0])));
  std::string out = fmt::format(
      "The prediction is not sharp enough to {} a pass: {}{} is {}± {:.{}f} {} at the best recipe. An instrumented run "
      "of {} ",
      fails ? "rule out" : "promise", next_run.requirement, next_run.trace.empty() ? "" : " of " + next_run.trace,
      value ? fmt::format("{:.{}f} ", *value, digits) : "", next_run.half_width, digits, unit,
      is_best ? "that recipe itself" : "the present recipe with " + what);
  if (next_run.half_width_then < kNarrows * next_run.half_width)
    return out + fmt::format("is expected to narrow that to ± {:.{}f} {}.", next_run.half_width_then, digits, unit);
  return out + (is_best
                    ? "shows whether it passes, and what is suggested after it stands on that run."
                    : "is the nearest that is known to be harmless; what is suggested after it stands on that run.");
}

std::string missed_margin_note(Aim aim, double margin, double best) {
  if (aim == Aim::kLeastChange) return "Least change: no recipe closer to the present one was found that passes.";
  if (best >= margin)
    return fmt::format("{}: no recipe near the present one was found that keeps a margin of {:.0f} %.",
                       titled(aim_name(aim)), 100 * margin);
  return fmt::format("{}: no recipe was found that keeps a margin of {:.0f} %; the most is {:.0f} %.",
                     titled(aim_name(aim)), 100 * margin, 100 * best);
}

std::string not_as_likely_note(Aim aim) {
  return titled(aim_name(aim)) + ": none was found that passes about as likely as the other suggestions.";
}

std::string no_harmless_run_note() {
  return "No next run is named: of the changes of recipe that were tried none is known to keep every body inside its "
         "limits and every peak below its upper limit.";
}

std::string guarded_note() {
  return "No recipe was found that passes by the guarded rule of the window: what is suggested is inside the limits, "
         "and within its uncertainty of one.";
}

std::string present_recipe_note(Aim aim) {
  return fmt::format("{}: the present recipe is that already.", titled(aim_name(aim)));
}

std::string groups_sentence(const std::vector<Group>& groups, bool fewest, const std::vector<std::string>& names) {
  std::vector<bool> held(names.size(), false);
  std::vector<std::string> parts;
  for (const auto& group : groups) {
    std::vector<std::string> members;
    for (const auto board : group.boards) {
      members.push_back(names[board]);
      held[board] = true;
    }
    parts.push_back(members.size() > 1 ? listed(members) + " can share one" : members.front() + " needs its own");
  }
  std::vector<std::string> alone;
  for (std::size_t b = 0; b < names.size(); ++b)
    if (!held[b]) alone.push_back(names[b]);
  std::string out = "No recipe holds all boards.";
  if (!groups.empty())
    out += fmt::format(" {} recipe{} {}: {}.", groups.size(), groups.size() > 1 ? "s" : "",
                       fewest ? "are the fewest" : "were found, which may not be the fewest", listed(parts));
  if (!alone.empty()) out += " No recipe holds " + listed(alone) + " at all.";
  return out;
}

}  // namespace ovenwright::tune
