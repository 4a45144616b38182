#include <fmt/format.h>

#include <algorithm>

#include "core/compare/sentence.h"
#include "core/judge/decide.h"
#include "core/report/compare_report.h"
#include "core/report/table.h"
#include "core/report/text_parts.h"

namespace ovenwright::report {
namespace {

using Align = Table::Align;

std::string value_text(const std::optional<double>& value, bool at_least, int digits,
                       const compare::Difference& difference) {
  if (!value) return {};
  return (at_least ? "at least " : "") + judge::number_text(*value, digits, difference.lower, difference.upper);
}

std::string signed_text(double value, int digits) { return (value > 0 ? "+" : "") + judge::number_text(value, digits); }

/// A count has no uncertainty, so nothing is said of it.
std::string differs_text(const compare::Difference& difference) {
  if (!difference.significant) return difference.reason;
  return *difference.significant ? "differs" : "";
}

std::string differences_text(const compare::Comparison& comparison) {
  Table table({{"requirement"},
               {"on"},
               {"A", Align::kRight},
               {"n", Align::kRight},
               {"B", Align::kRight},
               {"n", Align::kRight},
               {"B − A", Align::kRight},
               {"±", Align::kRight},
               {""},
               {""}});
  for (const auto& difference : comparison.results) {
    const bool groups = comparison.of_groups;
    const int digits = judge::usual_digits(difference.measure) + (groups ? 1 : 0);
    table.add({difference.requirement, difference.trace.empty() ? "board" : difference.trace,
               value_text(difference.a, difference.a_at_least, digits, difference),
               groups ? fmt::format("{}", difference.n_a) : "",
               value_text(difference.b, difference.b_at_least, digits, difference),
               groups ? fmt::format("{}", difference.n_b) : "",
               difference.difference ? signed_text(*difference.difference, digits) : "",
               difference.expanded_uncertainty ? judge::number_text(*difference.expanded_uncertainty, digits + 1) : "",
               unit_symbol(difference.unit), differs_text(difference)});
  }
  return table.empty() ? "" : "\n" + table.text();
}

std::string recipes_text(const compare::Comparison& comparison) {
  if (!comparison.recipes_known) return {};
  if (comparison.recipe_changes.empty()) return "\nThe recipes are equal.\n";
  std::vector<std::string> items;
  const auto& changes = comparison.recipe_changes;
  for (std::size_t i = 0; i < changes.size(); ++i) {
    const auto& change = changes[i];
    if (change.zone.empty()) {
      items.push_back(fmt::format("speed {:g} to {:g} mm/min", change.from, change.to));
      continue;
    }
    const char* side = !change.side ? "" : *change.side == board::Side::kTop ? " top" : " bottom";
    const auto* next = i + 1 < changes.size() ? &changes[i + 1] : nullptr;
    if (next && next->zone == change.zone && next->from == change.from && next->to == change.to) {
      side = " top and bottom";
      ++i;
    }
    items.push_back(fmt::format("zone {}{} {:g} to {:g} °C", change.zone, side, change.from, change.to));
  }
  return list_of("From A to B:", items);
}

std::string side_text(const char* name, const ComparedSide& side, judge::Verdict verdict) {
  std::string what = side.file;
  for (const auto& id : side.ids) what += (what.empty() ? "" : ", ") + id;
  if (!side.recipe.empty()) what += ", recipe " + side.recipe;
  return wrapped(fmt::format("{}: {}: {}", name, what, judge::verdict_name(verdict)), 3);
}

/// "Against SAC305, general and J-STD-020 bodies."
std::string windows_text(const compare::Comparison& comparison) {
  std::vector<std::string> names;
  for (const auto& difference : comparison.results)
    if (std::ranges::find(names, difference.window) == names.end()) names.push_back(difference.window);
  std::string text;
  for (const auto& name : names) text += (text.empty() ? "Judged against " : " and ") + name;
  return text.empty() ? "" : wrapped(text + (comparison.window_assumed ? " (assumed)." : "."));
}

std::string meaning(const compare::Comparison& comparison) {
  if (comparison.of_groups)
    return "± is the half width of the 95 % interval for the difference of the means (Welch): it holds the scatter "
           "from "
           "run to run, not the errors that all runs of a group share.";
  if (comparison.same_thermocouples)
    return "± is U = 2u of the difference. Both runs are taken to be on the same thermocouples and instrument "
           "(channels "
           "and board of the same names), whose errors cancel. The oven's scatter from run to run is not in it.";
  return "± is U = 2u of the difference, with the errors of the thermocouples and the instrument of both runs. The "
         "oven's scatter from run to run is not in it.";
}

}  // namespace

std::string compare_text(const compare::Comparison& comparison, const ComparedSide& a, const ComparedSide& b) {
  std::string text = wrapped(comparison.sentence) + "\n";
  if (comparison.several_a || comparison.several_b) text += wrapped(compare::compose_note(comparison).text) + "\n";
  text += side_text("A", a, comparison.verdict_a) + side_text("B", b, comparison.verdict_b) + windows_text(comparison);
  if (!comparison.of_groups)
    text += comparison.alignment ? fmt::format("Lined up at {}: {} s on A's log, {} s on B's.\n",
                                               comparison.alignment->level_C
                                                   ? fmt::format("{} °C on rise", *comparison.alignment->level_C)
                                                   : "oven entry",
                                               judge::number_text(comparison.alignment->a_s, 1),
                                               judge::number_text(comparison.alignment->b_s, 1))
                                 : "The logs show no moment to line them up at.\n";
  return text + differences_text(comparison) + recipes_text(comparison) + list_of("Warnings of A:", a.warnings) +
         list_of("Warnings of B:", b.warnings) + "\n" + wrapped(meaning(comparison));
}

}  // namespace ovenwright::report
