#include <nlohmann/json.hpp>

#include "core/report/json_parts.h"
#include "core/report/lot_report.h"
#include "core/units/version.h"

namespace ovenwright::report {
namespace {

using Json = nlohmann::ordered_json;

Json chart_part(const std::optional<lot::Chart>& chart, const lot::Lot& lot) {
  if (!chart) return nullptr;
  Json signals = Json::array();
  for (const auto& signal : chart->signals_found)
    signals.push_back({{"rule", lot::signal_text(*chart, signal)}, {"run", lot.ids[signal.run]}});
  return {{"chart", lot::chart_name(chart->kind)},
          {"rules", lot::rule_set_name(chart->rules)},
          {"centre", chart->centre},
          {"lower", chart->lower},
          {"upper", chart->upper},
          {"signals", signals}};
}

Json series_part(const lot::Series& series, const lot::Lot& lot) {
  const auto& c = series.capability;
  Json interval(nullptr);
  if (series.tolerance_interval) interval = *series.tolerance_interval;
  return {{"requirement", series.requirement},
          {"window", series.window},
          {"measure", measure::describe(series.measure).name},
          {"parameters", parameters_part({series.measure, series.parameters})},
          {"trace", series.trace.empty() ? Json(nullptr) : Json(series.trace)},
          {"unit", unit_name(series.unit)},
          {"required", series.required},
          {"limit_lower", number_part(series.lower)},
          {"limit_upper", number_part(series.upper)},
          {"n", series.n()},
          {"without_value", series.without_value},
          {"measured_otherwise", series.measured_otherwise},
          {"at_least", series.bounds},
          {"mean", number_part(series.mean)},
          {"sd", number_part(series.sd)},
          {"minimum", number_part(series.minimum)},
          {"maximum", number_part(series.maximum)},
          {"pp", number_part(c.pp)},
          {"pp_low", number_part(c.pp_low)},
          {"pp_high", number_part(c.pp_high)},
          {"ppk", number_part(c.ppk)},
          {"ppk_low", number_part(c.ppk_low)},
          {"ppk_high", number_part(c.ppk_high)},
          {"sd_short_term", number_part(series.sd_short_term)},
          {"cp", number_part(c.cp)},
          {"cpk", number_part(c.cpk)},
          {"tolerance_interval", interval},
          {"note", series.note.empty() ? Json(nullptr) : Json(series.note)},
          {"control", chart_part(series.control, lot)},
          {"spread", chart_part(series.spread, lot)}};
}

}  // namespace

std::string lot_json(const std::string& name, const lot::Lot& lot) {
  Json results = Json::array();
  for (const auto& series : lot.series) results.push_back(series_part(series, lot));
  Json json = {{"schema", "ovenwright.lot/1"},
               {"program", std::string{"ovenwright "} + kVersion},
               {"lot", name},
               {"runs", lot.ids.size()},
               {"verdict", judge::verdict_name(lot.verdict)},
               {"margin", number_part(lot.margin)}};
  if (lot.margin_bound != judge::MarginBound::kNone) json["margin_bound"] = margin_bound_name(lot.margin_bound);
  json["verdicts"] = {{"pass", lot.pass},
                      {"conditional pass", lot.conditional_pass},
                      {"undetermined", lot.undetermined},
                      {"conditional fail", lot.conditional_fail},
                      {"fail", lot.fail}};
  json["sentence"] = lot.sentence;
  json["results"] = results;
  return dumped(json) + "\n";
}

}  // namespace ovenwright::report
