#include "core/report/kept_run.h"

#include <fmt/format.h>

#include <nlohmann/json.hpp>

#include "core/judge/verdict_named.h"
#include "core/measure/parameter.h"

namespace ovenwright::report {
namespace {

using Json = nlohmann::json;

std::optional<Unit> unit_named(std::string_view name) {
  for (const auto unit : {Unit::kCelsius, Unit::kSecond, Unit::kCelsiusPerSecond, Unit::kCelsiusSecond, Unit::kCount})
    if (name == unit_name(unit)) return unit;
  return std::nullopt;
}

Error no_report(const std::string& why) {
  return {ErrorCode::kParse, fmt::format("found no report of a check: {}", why), {}, {}, {}};
}

std::optional<double> number_at(const Json& json, const char* key) {
  const auto& value = json.at(key);
  return value.is_null() ? std::nullopt : std::optional(value.get<double>());
}

Result<lot::RunResult> result_of(const Json& json) {
  const auto measure = json.at("measure").get<std::string>(), unit = json.at("unit").get<std::string>(),
             verdict = json.at("verdict").get<std::string>();
  const auto* description = measure::find(measure);
  const auto its_unit = unit_named(unit);
  const auto its_verdict = judge::verdict_named(verdict);
  if (description == nullptr) return no_report("unknown measure \"" + measure + "\"");
  if (!its_unit) return no_report("unknown unit \"" + unit + "\"");
  if (!its_verdict) return no_report("unknown verdict \"" + verdict + "\"");
  lot::RunResult result;
  result.window = json.at("window").get<std::string>();
  result.requirement = json.at("requirement").get<std::string>();
  if (const auto& trace = json.at("trace"); !trace.is_null()) result.trace = trace.get<std::string>();
  result.measure = description->measure;
  measure::Definition definition{description->measure, {}};
  for (const auto& [name, value] : json.at("parameters").items()) {
    const auto given = value.is_string() ? measure::ParameterValue(value.get<std::string>())
                                         : measure::ParameterValue(value.get<double>());
    if (const auto error = measure::set_parameter(definition, name, given)) return no_report(error->message);
  }
  result.parameters = definition.parameters;
  result.unit = *its_unit;
  result.value = number_at(json, "value");
  result.at_least = json.contains("bound");
  result.lower = number_at(json, "lower");
  result.upper = number_at(json, "upper");
  result.required = json.at("required").get<bool>();
  result.verdict = *its_verdict;
  result.margin = number_at(json, "margin");
  result.target = number_at(json, "target");
  return result;
}

Result<lot::Run> run_of(std::string id, const Json& kept) {
  const auto verdict = kept.at("verdict").get<std::string>();
  const auto its_verdict = judge::verdict_named(verdict);
  if (!its_verdict) return no_report("unknown verdict \"" + verdict + "\"");
  lot::Run run{std::move(id), *its_verdict, number_at(kept, "margin")};
  if (const auto bound = kept.find("margin_bound"); bound != kept.end())
    run.margin_bound = *bound == "at most" ? judge::MarginBound::kAtMost : judge::MarginBound::kAtLeast;
  for (const char* list : {"results", "board_results"})
    for (const auto& json : kept.at(list)) {
      auto result = result_of(json);
      if (!result) return result.error();
      run.results.push_back(*std::move(result));
    }
  return run;
}

/// The required results outside, which stand in the run in the order of the report.
lot::RunTraces traces_of(const Json& kept, const lot::Run& run) {
  lot::RunTraces traces;
  std::size_t at = 0;
  for (const char* list : {"results", "board_results"})
    for (const auto& json : kept.at(list)) {
      const auto& result = run.results[at++];
      if (!result.required || !judge::is_out(result.verdict)) continue;
      traces.push_back({result.window, result.requirement, result.trace, {}});
      if (const auto zones = json.find("zones"); zones != json.end() && zones->is_array())
        traces.back().zones = zones->get<std::vector<std::string>>();
    }
  return traces;
}

}  // namespace

Result<lot::Run> kept_run(std::string id, std::string_view report) {
  try {
    return run_of(std::move(id), Json::parse(report).at("runs").at(0));
  } catch (const Json::exception& error) {
    return no_report(error.what());
  }
}

Result<KeptRun> kept_run_with_zones(std::string id, std::string_view report) {
  try {
    const auto parsed = Json::parse(report);
    const auto& kept = parsed.at("runs").at(0);
    auto run = run_of(std::move(id), kept);
    if (!run) return run.error();
    auto traces = traces_of(kept, *run);
    return KeptRun{*std::move(run), std::move(traces)};
  } catch (const Json::exception& error) {
    return no_report(error.what());
  }
}

}  // namespace ovenwright::report
