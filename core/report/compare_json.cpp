#include <nlohmann/json.hpp>

#include "core/compare/sentence.h"
#include "core/report/compare_report.h"
#include "core/report/json_parts.h"
#include "core/units/version.h"

namespace ovenwright::report {
namespace {

using Json = nlohmann::ordered_json;

Json text_or_null(const std::string& text) { return text.empty() ? Json(nullptr) : Json(text); }

Json side_part(const ComparedSide& side, judge::Verdict verdict, bool group) {
  Json part = Json::object();
  if (group) {
    part["ids"] = side.ids;
  } else {
    part["file"] = side.file;
    part["sha256"] = text_or_null(side.sha256);
  }
  part["recipe"] = text_or_null(side.recipe);
  if (!group) part["warnings"] = side.warnings;
  part["verdict"] = judge::verdict_name(verdict);
  return part;
}

Json name_of(const std::optional<compare::Side>& side) {
  if (!side) return nullptr;
  return *side == compare::Side::kA ? "a" : "b";
}

Json difference_part(const compare::Difference& difference, bool groups) {
  Json part = {{"requirement", difference.requirement},
               {"window", difference.window},
               {"measure", measure::describe(difference.measure).name},
               {"trace", text_or_null(difference.trace)},
               {"a", number_part(difference.a)},
               {"b", number_part(difference.b)}};
  if (difference.a_at_least) part["a_bound"] = "at least";
  if (difference.b_at_least) part["b_bound"] = "at least";
  if (groups) {
    part["n_a"] = difference.n_a;
    part["n_b"] = difference.n_b;
  }
  part["difference"] = number_part(difference.difference);
  part["unit"] = unit_name(difference.unit);
  part["expanded_uncertainty"] = number_part(difference.expanded_uncertainty);
  part["significant"] = difference.significant ? Json(*difference.significant) : Json(nullptr);
  if (!difference.reason.empty()) part["reason"] = difference.reason;
  return part;
}

Json margin_part(const compare::Comparison& comparison) {
  const auto& m = comparison.margins;
  Json part = {{"a", number_part(m.a)}, {"b", number_part(m.b)}};
  if (m.a_bound != judge::MarginBound::kNone) part["a_bound"] = margin_bound_name(m.a_bound);
  if (m.b_bound != judge::MarginBound::kNone) part["b_bound"] = margin_bound_name(m.b_bound);
  if (comparison.of_groups) {
    part["smallest_a"] = number_part(m.smallest_a);
    part["smallest_b"] = number_part(m.smallest_b);
  }
  part["expanded_uncertainty"] = number_part(m.expanded_uncertainty);
  part["more"] = name_of(m.more);
  return part;
}

}  // namespace

std::string recipe_name(const std::optional<oven::Recipe>& recipe) {
  if (!recipe) return {};
  const auto& identity = recipe->identity;
  return identity.name + (identity.revision ? ", revision " + *identity.revision : "");
}

ComparedSide compared_log(const log::Reading& reading, const check::CheckedRun& run, const check::Request& request) {
  std::vector<std::string> warnings = run.judgement.warnings;
  for (const auto& warning : reading.warnings) warnings.push_back(warning.text());
  return {reading.file.file, reading.file.sha256, {}, recipe_name(request.recipe), std::move(warnings)};
}

std::string compare_json(const compare::Comparison& comparison, const ComparedSide& a, const ComparedSide& b) {
  const bool groups = comparison.of_groups;
  Json results = Json::array();
  for (const auto& difference : comparison.results) results.push_back(difference_part(difference, groups));
  Json json = {
      {"schema", "ovenwright.compare/1"},
      {"program", std::string{"ovenwright "} + kVersion},
      {"runs", {{"a", side_part(a, comparison.verdict_a, groups)}, {"b", side_part(b, comparison.verdict_b, groups)}}}};
  if (groups) {
    json["n_a"] = comparison.runs_a;
    json["n_b"] = comparison.runs_b;
  }
  const auto& at = comparison.alignment;
  json["aligned_at"] = at ? Json(compare::alignment_name(*at)) : Json(nullptr);
  json["alignment"] = at ? Json({{"a_s", at->a_s}, {"b_s", at->b_s}}) : Json(nullptr);
  if (!groups) json["window_assumed"] = comparison.window_assumed;
  if (!groups) json["same_thermocouples"] = comparison.same_thermocouples;
  json["results"] = results;
  json["recipes"] = {{"changes", comparison.recipes_known ? changes_part(comparison.recipe_changes) : Json(nullptr)}};
  json["speed_mm_per_min"] = {{"a", number_part(comparison.speed_a_mm_per_min)},
                              {"b", number_part(comparison.speed_b_mm_per_min)}};
  json["faster"] = name_of(comparison.faster);
  json["margin"] = margin_part(comparison);
  json["sentence"] = comparison.sentence;
  if (comparison.several_a || comparison.several_b) json["note"] = compare::compose_note(comparison).text;
  return dumped(json) + "\n";
}

}  // namespace ovenwright::report
