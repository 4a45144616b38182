#include "core/report/json_parts.h"

#include <nlohmann/json.hpp>
#include <string_view>
#include <vector>

#include "core/judge/bind.h"
#include "core/measure/parameter.h"

namespace ovenwright::report {
namespace {

using Json = nlohmann::ordered_json;

Json text_or_null(const std::string& text) { return text.empty() ? Json(nullptr) : Json(text); }
Json text_or_null(const std::optional<std::string>& text) { return text ? Json(*text) : Json(nullptr); }

Json faults_part(const std::vector<run::Fault>& faults) {
  Json all = Json::array();
  for (const auto& fault : faults) {
    all.push_back({{"kind", run::fault_name(fault.kind)},
                   {"from_s", fault.from_s},
                   {"to_s", fault.to_s},
                   {"action", fault.action == run::FaultAction::kRemoved ? "removed" : "flagged"},
                   {"detail", text_or_null(fault.detail)}});
  }
  return all;
}

Json tables_part(const std::vector<log::ListedTable>& tables) {
  Json all = Json::array();
  for (const auto& table : tables) {
    const auto number = [](auto value) { return value > 0 ? Json(value) : Json(nullptr); };
    all.push_back({{"index", all.size() + 1},
                   {"name", text_or_null(table.name())},
                   {"member", text_or_null(table.member)},
                   {"sheet", text_or_null(table.sheet)},
                   {"header_line", number(table.header_line)},
                   {"rows", number(table.rows)},
                   {"read", table.read}});
  }
  return all;
}

Json read_as_part(const log::ReadAs& read_as) {
  Json assumed = Json::array();
  for (const auto& assumption : read_as.assumed) assumed.push_back(assumption.text);
  Json part = {{"encoding", read_as.encoding},
               {"delimiter", text_or_null(read_as.delimiter)},
               {"decimal", text_or_null(read_as.decimal)},
               {"time", read_as.time},
               {"unit", read_as.unit},
               {"header_line", read_as.header_line > 0 ? Json(read_as.header_line) : Json(nullptr)},
               {"rows", read_as.rows},
               {"rows_skipped", read_as.rows_skipped},
               {"assumed", assumed},
               {"notes", read_as.notes}};
  if (!read_as.tables.empty()) part["tables"] = tables_part(read_as.tables);
  return part;
}

}  // namespace

const char* margin_bound_name(judge::MarginBound bound) {
  return bound == judge::MarginBound::kAtMost ? "at most" : "at least";
}

Json number_part(const std::optional<double>& value) { return value ? Json(*value) : Json(nullptr); }

Json log_part(const log::Reading& reading, const run::Run& run) {
  Json part(nullptr);
  if (run.parts > 1) part = {{"index", run.part}, {"of", run.parts}, {"from_s", run.from_s}, {"to_s", run.to_s}};
  return {{"file", reading.file.file},
          {"member", text_or_null(reading.file.member)},
          {"sha256", reading.file.sha256},
          {"bytes", reading.file.bytes},
          {"part", part},
          {"read_as", read_as_part(reading.read_as)},
          {"sample_interval_s", run.sample_interval_s},
          {"duration_s", run.to_s - run.from_s},
          {"faults", faults_part(run.faults)}};
}

Json entry_part(const std::optional<oven::Entry>& entry) {
  if (!entry) return nullptr;
  const bool found = entry->found_from == oven::Entry::Source::kLog;
  return {{"at_s", entry->at_s}, {"uncertainty_s", entry->uncertainty_s}, {"found_from", found ? "the log" : "given"}};
}

Json identity_part(const files::Identity* identity) {
  if (identity == nullptr) return nullptr;
  return {{"name", identity->name}, {"revision", text_or_null(identity->revision)}, {"sha256", identity->sha256}};
}

Json windows_part(const judge::Judgement& judgement) {
  Json windows = Json::array();
  for (const auto& window : judgement.windows) {
    Json part = identity_part(&window.identity);
    part["decision_rule"] = window.decision_rule == window::DecisionRule::kGuarded ? "guarded" : "simple";
    part["assumed"] = judgement.window_assumed;
    windows.push_back(std::move(part));
  }
  return windows;
}

Json traces_part(const run::Run& run, const board::Board* board) {
  Json traces = Json::array();
  for (const auto& channel : run.channels) {
    const auto seat = judge::seat_of(channel, board);
    traces.push_back({{"name", channel.name},
                      {"channel", channel.number},
                      {"kind", board::kind_name(seat.kind)},
                      {"label", seat.placement != nullptr ? text_or_null(seat.placement->label) : Json(nullptr)},
                      {"samples", channel.samples},
                      {"faults", faults_part(channel.faults)}});
  }
  return traces;
}

Json parameters_part(const measure::Definition& definition) {
  Json parameters = Json::object();
  for (const auto& parameter : measure::parameters_of(definition)) {
    std::visit([&](const auto& value) { parameters[parameter.name] = value; }, parameter.value);
  }
  return parameters;
}

void add_value(Json& result, const measure::Value& value) {
  result["value"] = number_part(value.value);
  result["unit"] = unit_name(value.unit);
  result["expanded_uncertainty"] = number_part(value.expanded_uncertainty);
  result["uncertainty_terms"] = nullptr;
  if (value.expanded_uncertainty) {
    result["uncertainty_terms"] = {{"thermocouple", value.terms.thermocouple},
                                   {"instrument", value.terms.instrument},
                                   {"noise", value.terms.noise},
                                   {"sampling", value.terms.sampling}};
  }
  if (value.at_least) result["bound"] = "at least";
  if (value.no_value) {
    result["no_value"] = *value.no_value == measure::NoValue::kNotReached ? "not reached" : "undetermined";
  }
  if (value.no_value || !value.reason.empty()) result["reason"] = value.reason;
  if (!value.note.empty()) result["note"] = value.note;
  if (value.range) result["range"] = {(*value.range)[0], (*value.range)[1]};
}

void add_interval(Json& result, const measure::Value& value) {
  result["from_s"] = number_part(value.from_s);
  result["to_s"] = number_part(value.to_s);
}

Json changes_part(const std::vector<tune::Change>& changes) {
  Json all = Json::array();
  for (const auto& change : changes) {
    if (change.zone.empty()) {
      all.push_back({{"speed_from_mm_per_min", change.from}, {"speed_to_mm_per_min", change.to}});
      continue;
    }
    all.push_back({{"zone", change.zone},
                   {"side", !change.side                          ? Json(nullptr)
                            : change.side == board::Side::kBottom ? Json("bottom")
                                                                  : Json("top")},
                   {"from_C", change.from},
                   {"to_C", change.to}});
  }
  return all;
}

Json error_part(const Error& error) {
  const auto number = [](int value) { return value > 0 ? Json(value) : Json(nullptr); };
  return {{"file", text_or_null(error.where.file)},   {"line", number(error.where.line)},
          {"column", number(error.where.column)},     {"found", text_or_null(error.found)},
          {"expected", text_or_null(error.expected)}, {"message", error.message}};
}

std::string dumped(const Json& json) { return json.dump(-1, ' ', false, Json::error_handler_t::replace); }

Json outcome_part(const judge::Outcome& outcome, const judge::Judgement& judgement) {
  Json result = {{"requirement", outcome.requirement_name},
                 {"window", judgement.windows[outcome.window].identity.name},
                 {"measure", measure::describe(outcome.measure.measure).name},
                 {"parameters", parameters_part(outcome.measure)},
                 {"trace", outcome.trace.empty() ? Json(nullptr) : Json(outcome.trace)}};
  add_value(result, outcome.value);
  result["lower"] = number_part(outcome.lower);
  result["upper"] = number_part(outcome.upper);
  result["target"] = number_part(outcome.target);
  result["source"] = outcome.source.empty() ? Json(nullptr) : Json(outcome.source);
  result["margin"] = number_part(outcome.margin);
  if (outcome.margin_bound != judge::MarginBound::kNone) {
    result["margin_bound"] = margin_bound_name(outcome.margin_bound);
  }
  result["verdict"] = judge::verdict_name(outcome.verdict);
  result["conformance_probability"] = number_part(outcome.conformance_probability);
  add_interval(result, outcome.value);
  result["zones"] = outcome.zones;
  Json shares = Json::array();
  for (const auto& share : outcome.zone_shares) {
    Json side(nullptr);
    if (share.side) side = *share.side == board::Side::kTop ? "top" : "bottom";
    shares.push_back({{"zone", share.zone}, {"side", side}, {"share", share.share}});
  }
  result["zone_shares"] = shares;
  if (outcome.speed_share) result["speed_share"] = *outcome.speed_share;
  result["risk"] = outcome.risk.empty() ? Json(nullptr) : Json(outcome.risk);
  if (!outcome.risk_source.empty()) result["risk_source"] = outcome.risk_source;
  result["required"] = outcome.required;
  return result;
}

}  // namespace ovenwright::report
