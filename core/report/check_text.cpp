#include <fmt/format.h>

#include <algorithm>
#include <array>

#include "core/judge/decide.h"
#include "core/report/table.h"
#include "core/report/text.h"
#include "core/report/text_parts.h"

namespace ovenwright::report {
namespace {

using Align = Table::Align;

std::string limits_text(const judge::Outcome& outcome) {
  const auto text = [](double limit) { return fmt::format("{}", limit); };
  if (outcome.lower && outcome.upper) return text(*outcome.lower) + " to " + text(*outcome.upper);
  if (outcome.lower) return "at least " + text(*outcome.lower);
  if (outcome.upper) return "at most " + text(*outcome.upper);
  return "not known";
}

std::string results_text(const judge::Judgement& judgement, Detail detail) {
  Table table({{"requirement"},
               {"on"},
               {"value", Align::kRight},
               {"", Align::kLeft},
               {"", Align::kLeft},
               {"limits"},
               {"margin", Align::kRight},
               {"verdict"},
               {""}});
  for (std::size_t i = 0; i < judgement.all_size(); ++i) {
    const auto& outcome = judgement.all(i);
    if (detail == Detail::kOutside && outcome.verdict == judge::Verdict::kPass) continue;
    table.add({outcome.requirement_name, outcome.placement.empty() ? "board" : outcome.placement,
               value_text(outcome.measure, outcome.value, outcome.lower, outcome.upper),
               uncertainty_text(outcome.measure, outcome.value),
               outcome.value.value ? unit_symbol(outcome.value.unit) : "", limits_text(outcome),
               margin_text(outcome.margin, outcome.margin_bound), judge::verdict_name(outcome.verdict),
               outcome.required ? "" : "informative"});
  }
  return table.empty() ? "" : "\n" + table.text();
}

std::string zones_text(const judge::Outcome& outcome) {
  if (outcome.zones.empty()) return {};
  std::string zones;
  for (const auto& name : outcome.zones) {
    double share = 0;
    for (const auto& side : outcome.zone_shares) share += side.zone == name ? side.share : 0;
    zones += (zones.empty() ? "" : ", ") + name + fmt::format(" ({:.0f} %)", share * 100);
  }
  return (outcome.zones.size() == 1 ? "Zone " : "Zones ") + zones + ". ";
}

/// Zones, reason and risk of a result that is no pass; may be empty.
std::string reason_text(const judge::Outcome& outcome) {
  std::string text = zones_text(outcome);
  if (!outcome.value.reason.empty()) text += "Not known further: " + outcome.value.reason + ". ";
  if (!outcome.risk.empty()) text += outcome.risk + " ";
  if (!outcome.risk_source.empty()) text += "[" + outcome.risk_source + "]";
  return text;
}

/// What is out, or has no value; results with the same text share an item.
std::string reasons_text(const judge::Judgement& judgement) {
  struct Item {
    std::string text, requirement, subjects;
  };
  std::vector<Item> items;
  for (std::size_t i = 0; i < judgement.all_size(); ++i) {
    const auto& outcome = judgement.all(i);
    if (outcome.verdict == judge::Verdict::kPass) continue;
    const std::string text = reason_text(outcome);
    if (text.empty()) continue;
    const std::string on = outcome.placement.empty() ? "board" : outcome.placement;
    const auto same = std::ranges::find(items, text, &Item::text);
    if (same == items.end()) {
      items.push_back({text, outcome.requirement_name, outcome.requirement_name + ": " + on});
    } else if (same->requirement == outcome.requirement_name) {
      same->subjects += ", " + on;
    } else {
      same->requirement = outcome.requirement_name;
      same->subjects += "; " + outcome.requirement_name + ": " + on;
    }
  }
  std::vector<std::string> lines;
  for (const auto& item : items) lines.push_back(item.subjects + ". " + item.text);
  return list_of("Why, and what it risks", lines);
}

std::string with_revision(const files::Identity& identity) {
  return identity.name + (identity.revision ? ", revision " + *identity.revision : "");
}

std::string window_text(const window::ProcessWindow& window, bool assumed) {
  std::string text = "window " + with_revision(window.identity);
  if (assumed) text += " (assumed)";
  text += window.decision_rule == window::DecisionRule::kGuarded ? "; rule guarded, w = U" : "; rule simple";
  const auto& budget = window.uncertainty;
  text += "; thermocouple " + (budget.tolerance_C ? fmt::format("± {} °C", *budget.tolerance_C) : budget.thermocouple);
  text += fmt::format(", instrument ± {} °C", budget.instrument_C);
  return text + (budget.defaulted ? " (defaults)" : "");
}

std::string judged_with_text(const check::CheckedRun& run, const check::Request& request) {
  std::vector<std::string> items;
  bool shipped = false;
  for (const auto& window : run.judgement.windows) {
    items.push_back(window_text(window, run.judgement.window_assumed));
    shipped = shipped || window.identity.file.starts_with(files::shipped_folder(files::Kind::kWindow));
  }
  if (request.board) items.push_back("board " + with_revision(request.board->identity));
  if (request.oven && request.recipe) {
    items.push_back("oven " + with_revision(request.oven->identity) + "; recipe " +
                    with_revision(request.recipe->identity));
    if (run.entry) {
      const bool found = run.entry->found_from == oven::Entry::Source::kLog;
      items.push_back("oven entry at " + judge::number_text(run.entry->at_s, 1) +
                      (found ? " ± " + judge::number_text(run.entry->uncertainty_s, 1) + " s, found from the log"
                             : " s, as given"));
    } else {
      items.push_back("oven entry not found in the log: give it with --entry to see zones");
    }
  }
  if (shipped) items.push_back("The window is a general one: the data sheet of the paste or flux is the authority.");
  return list_of("Judged with", items);
}

std::string plural(std::size_t n, const char* one, const char* more) {
  return fmt::format("{} {}", n, n == 1 ? one : more);
}

}  // namespace

std::string check_run_text(const log::Reading& reading, const check::CheckedRun& run, const check::Request& request,
                           Detail detail) {
  const auto& judgement = run.judgement;
  std::string text = wrapped(judgement.sentence.text);
  if (detail == Detail::kSentence) return text;
  text += results_text(judgement, detail) + reasons_text(judgement);
  std::vector<std::string> warnings = judgement.warnings;
  for (const auto& warning : reading.warnings) warnings.push_back(warning.text());
  text += list_of("Warnings", warnings) + faults_text(run.run);
  if (detail == Detail::kAll) text += reading_text(reading, run.run) + judged_with_text(run, request);
  return text;
}

OverviewLine overview_line(const log::Reading& reading, const check::CheckedRun& run) {
  return {run_name(reading, run.run), run.judgement.verdict,
          margin_text(run.judgement.margin, run.judgement.margin_bound)};
}

std::string overview_text(std::span<const OverviewLine> lines, std::size_t unread) {
  using judge::Verdict;
  constexpr std::array<Verdict, 5> kOrder{Verdict::kFail, Verdict::kConditionalFail, Verdict::kUndetermined,
                                          Verdict::kConditionalPass, Verdict::kPass};
  std::string sentence = plural(lines.size(), "run", "runs");
  std::string between = ": ";
  for (const auto verdict : kOrder) {
    const auto count = std::ranges::count(lines, verdict, &OverviewLine::verdict);
    if (count == 0) continue;
    sentence += between + fmt::format("{} {}", count, judge::verdict_name(verdict));
    between = ", ";
  }
  sentence += ".";
  if (unread > 0) sentence += " " + plural(unread, "log", "logs") + " could not be read.";
  Table table({{"log"}, {"verdict"}, {"margin", Align::kRight}});
  for (const auto& line : lines) table.add({line.name, judge::verdict_name(line.verdict), line.margin});
  return sentence + "\n" + (table.empty() ? "" : "\n" + table.text());
}

}  // namespace ovenwright::report
