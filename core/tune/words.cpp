#include "core/tune/words.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <map>

#include "core/judge/judge.h"

namespace ovenwright::tune {
namespace {

std::string listed(const std::vector<std::string>& names) {
  std::string out;
  for (std::size_t i = 0; i < names.size(); ++i)
    out += (i == 0 ? "" : i + 1 == names.size() ? " and " : ", ") + names[i];
  return out;
}

std::string number(double value) {
  const std::string text = fmt::format("{:.1f}", std::abs(value));
  return text.ends_with(".0") ? text.substr(0, text.size() - 2) : text;
}

/// "zones 8 and 9 up 7 °C, zone 1 down 14 °C, speed down 38 mm/min"
std::string what_changes(const oven::Oven& oven, const std::vector<Change>& changes) {
  // Both sides of a zone that move alike are one change; zones that move alike are named together.
  struct Move {
    double by;
    std::vector<std::string> zones;
  };
  std::vector<Move> moves;
  std::string speed;
  const auto add = [&](const std::string& name, double by) {
    const auto same = std::ranges::find_if(moves, [&](const Move& m) { return m.by == by; });
    if (same == moves.end())
      moves.push_back({by, {name}});
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
      add(zone.name, top->to - top->from);
      continue;
    }
    if (has_top) add(zone.name + " top", top->to - top->from);
    if (has_bottom) add(zone.name + " bottom", bottom->to - bottom->from);
  }
  std::vector<std::string> parts;
  for (const auto& move : moves)
    parts.push_back(fmt::format("zone{} {} {} {} °C", move.zones.size() > 1 ? "s" : "", listed(move.zones),
                                move.by > 0 ? "up" : "down", number(move.by)));
  for (const auto& change : changes)
    if (change.zone.empty())
      parts.push_back(
          fmt::format("speed {} {} mm/min", change.to > change.from ? "up" : "down", number(change.to - change.from)));
  std::string out;
  for (const auto& part : parts) out += (out.empty() ? "" : ", ") + part;
  if (!out.empty()) out[0] = static_cast<char>(std::toupper(static_cast<unsigned char>(out[0])));
  return out;
}

}  // namespace

std::string suggestion_sentence(const oven::Oven& oven, const Suggestion& suggestion) {
  // The tightest lower and the tightest upper limit say why.
  const judge::Outcome* tightest[2] = {nullptr, nullptr};
  double smallest[2] = {1e9, 1e9};
  for (const auto& forecast : suggestion.predicted)
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
        if (margin < smallest[upper]) smallest[upper] = margin, tightest[upper] = &outcome;
      }
    }
  std::string out = what_changes(oven, suggestion.changes) + ":";
  bool first = true;
  for (int upper = 0; upper < 2; ++upper) {
    const auto* outcome = tightest[upper];
    if (!outcome) continue;
    const double limit = upper ? *outcome->upper : *outcome->lower;
    const double in_hand = std::abs(*outcome->value.value - limit);
    const char* unit = unit_symbol(outcome->value.unit);
    const int digits = outcome->value.unit == Unit::kCelsiusPerSecond ? 2 : 1;
    out += fmt::format("{} {} of {} is {:.{}f} {}, {:.{}f} {} {} limit", first ? "" : ";", outcome->requirement_name,
                       outcome->trace.empty() ? "the board" : outcome->trace, *outcome->value.value, digits, unit,
                       in_hand, digits, unit, upper ? "below its upper" : "above its lower");
    first = false;
  }
  return out + ".";
}

std::string infeasible_sentence(const Infeasible& infeasible) {
  std::string out = fmt::format(
      "No recipe of this oven holds every requirement: the best margin that the model finds is \u2212{:.0f} %.",
      -100 * infeasible.best_margin);
  if (infeasible.conflicts.empty()) return out;
  out += " What stands against each other:";
  for (std::size_t i = 0; i < infeasible.conflicts.size(); ++i) {
    const auto& conflict = infeasible.conflicts[i];
    out +=
        fmt::format("{} the {} limit of {} at {} (alone it would have to give {:.2g} {})",
                    i == 0                                 ? ""
                    : i + 1 == infeasible.conflicts.size() ? " and"
                                                           : ",",
                    conflict.upper ? "upper" : "lower", conflict.requirement,
                    conflict.trace.empty() ? "the board" : conflict.trace, conflict.give, unit_symbol(conflict.unit));
  }
  return out + ".";
}

}  // namespace ovenwright::tune
