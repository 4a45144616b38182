#include "core/report/tune_json.h"

#include <fmt/format.h>

#include <nlohmann/json.hpp>
#include <numeric>

#include "core/report/json_parts.h"
#include "core/report/spreadsheet.h"
#include "core/tune/words.h"
#include "core/units/version.h"

namespace ovenwright::report {
namespace {

using Json = nlohmann::ordered_json;

Json fit_part(const heat::FitReport& fit) {
  Json traces = Json::array();
  for (const auto& placement : fit.placements)
    traces.push_back({{"name", placement.name}, {"rmse_C", placement.rmse_C}, {"max_error_C", placement.max_error_C}});
  return {{"usable", fit.usable},
          {"message", fit.message.empty() ? Json(nullptr) : Json(fit.message)},
          {"rmse_C", fit.rmse_C},
          {"termination", fit.termination},
          {"iterations", fit.iterations},
          {"not_determined", fit.not_determined},
          {"warnings", fit.warnings},
          {"contradicted", fit.contradicted},
          {"traces", traces}};
}

/// Results of a forecast from the i-th of all to before the end-th, in the order of judgement.all.
Json results_part(const tune::Forecast& forecast, std::size_t i, std::size_t end) {
  Json results = Json::array();
  for (; i < end; ++i) {
    Json part = outcome_part(forecast.judgement.all(i), forecast.judgement);
    part["prediction_half_width"] = i < forecast.half_width.size() ? Json(forecast.half_width[i]) : Json(nullptr);
    results.push_back(std::move(part));
  }
  return results;
}

Json forecast_part(const tune::Forecast& forecast) {
  const auto& judgement = forecast.judgement;
  return {{"verdict", judge::verdict_name(judgement.verdict)},
          {"margin", number_part(judgement.margin)},
          {"margin_uncertainty", number_part(forecast.margin_uncertainty)},
          {"pass_probability", number_part(forecast.pass_probability)},
          {"inside_probability", number_part(forecast.inside_probability)},
          {"sentence", judgement.sentence.text},
          {"results", results_part(forecast, 0, judgement.all_size())}};
}

/// A predicted run as a run of the check report.
Json judged_part(const tune::Learned& learned, const tune::Forecast& forecast, const oven::Oven& oven,
                 const oven::Recipe& recipe) {
  const auto& judgement = forecast.judgement;
  const auto& last = learned.runs.back();
  const auto* board = last.source.board ? &*last.source.board : nullptr;
  Json part = {{"log", log_part(last.reading, forecast.run)},
               {"entry", entry_part(last.entry)},
               {"board", identity_part(board != nullptr ? &board->identity : nullptr)},
               {"oven", identity_part(&oven.identity)},
               {"recipe", identity_part(&recipe.identity)},
               {"traces", traces_part(forecast.run, board)},
               {"windows", windows_part(judgement)}};
  part.update(forecast_part(forecast));
  const std::size_t of_traces = judgement.results.size();
  part["results"] = results_part(forecast, 0, of_traces);
  part["board_results"] = results_part(forecast, of_traces, judgement.all_size());
  part["warnings"] = judgement.warnings;
  return part;
}

Json recipe_part(const oven::Recipe& recipe) {
  Json part = {{"name", recipe.identity.name}};
  if (recipe.oven) part["oven"] = *recipe.oven;
  part["speed_mm_per_min"] = recipe.speed_mm_per_min;
  part["top_C"] = recipe.top_C;
  part["bottom_C"] = recipe.bottom_C;
  if (!recipe.cooling_C.empty()) part["cooling_C"] = recipe.cooling_C;
  return part;
}

/// One forecast for each of `boards`, with the board's name.
Json boards_part(const tune::Learned& learned, const std::vector<std::size_t>& boards,
                 const std::vector<tune::Forecast>& predicted) {
  Json out = Json::array();
  for (std::size_t i = 0; i < predicted.size(); ++i) {
    Json part = {{"board", learned.board_name(boards[i])}};
    part.update(forecast_part(predicted[i]));
    out.push_back(std::move(part));
  }
  return out;
}

std::vector<std::size_t> all_boards(const tune::Learned& learned) {
  std::vector<std::size_t> out(learned.boards);
  std::iota(out.begin(), out.end(), std::size_t{0});
  return out;
}

Json suggestion_part(const tune::Learned& learned, const tune::Suggestion& suggestion) {
  Json also = Json::array();
  for (const auto aim : suggestion.also) also.push_back(tune::aim_name(aim));
  Json part = {{"aim", tune::aim_name(suggestion.aim)},
               {"also", also},
               {"recipe", recipe_part(suggestion.recipe)},
               {"changes", changes_part(suggestion.changes)},
               {"predicted", forecast_part(suggestion.predicted.front())}};
  if (suggestion.predicted.size() > 1) part["boards"] = boards_part(learned, all_boards(learned), suggestion.predicted);
  part["sentence"] = suggestion.sentence;
  part["caution"] = suggestion.caution;
  return part;
}

Json infeasible_part(const tune::Learned& learned, const std::optional<tune::Infeasible>& infeasible) {
  if (!infeasible) return nullptr;
  Json conflicts = Json::array();
  for (const auto& conflict : infeasible->conflicts)
    conflicts.push_back({{"board", learned.boards > 1 ? Json(learned.board_name(conflict.board)) : Json(nullptr)},
                         {"requirement", conflict.requirement},
                         {"trace", conflict.trace.empty() ? Json(nullptr) : Json(conflict.trace)},
                         {"limit", conflict.upper ? "upper" : "lower"},
                         {"at", conflict.limit},
                         {"predicted", number_part(conflict.value)},
                         {"give", conflict.give},
                         {"unit", unit_name(conflict.unit)}});
  return {{"sentence", infeasible->sentence},
          {"conflicts", conflicts},
          {"best_margin", infeasible->best_margin},
          {"best_recipe", recipe_part(infeasible->best)}};
}

Json next_run_part(const std::optional<tune::NextRun>& next_run) {
  if (!next_run) return nullptr;
  return {{"sentence", next_run->sentence},
          {"recipe", recipe_part(next_run->recipe)},
          {"changes", changes_part(next_run->changes)},
          {"requirement", next_run->requirement},
          {"trace", next_run->trace.empty() ? Json(nullptr) : Json(next_run->trace)},
          {"half_width", next_run->half_width},
          {"half_width_expected", next_run->half_width_then},
          {"unit", unit_name(next_run->unit)},
          {"caution", tune::kCaution}};
}

Json groups_part(const tune::Learned& learned, const tune::Report& report) {
  Json out = Json::array();
  for (const auto& group : report.groups) {
    Json boards = Json::array();
    for (const auto board : group.boards) boards.push_back(learned.board_name(board));
    out.push_back({{"boards", boards},
                   {"recipe", recipe_part(group.recipe)},
                   {"changes", changes_part(group.changes)},
                   {"predicted", boards_part(learned, group.boards, group.predicted)},
                   {"caution", tune::kCaution}});
  }
  return out;
}

}  // namespace

std::string predict_json(const tune::Learned& learned, const tune::Forecast& forecast, const oven::Oven& oven,
                         const oven::Recipe& recipe, bool judged) {
  Json traces = Json::array();
  for (std::size_t c = 0; c < forecast.run.channels.size(); ++c) {
    const auto& channel = forecast.run.channels[c];
    if (!channel.trace) continue;
    traces.push_back({{"name", channel.name},
                      {"time_s", channel.trace->time_s()},
                      {"temperature_C", channel.trace->temperature_C()},
                      {"band_C", forecast.band_C[c]}});
  }
  return dumped({{"schema", "ovenwright.predict/1"},
                 {"program", std::string{"ovenwright "} + kVersion},
                 {"fit", fit_part(learned.model.report)},
                 {"traces", traces},
                 {"judged", judged ? judged_part(learned, forecast, oven, recipe) : Json(nullptr)},
                 {"caution", tune::kCaution}}) +
         "\n";
}

std::string tune_json(const tune::Learned& learned, const Present& now, const tune::Report& report) {
  Json suggestions = Json::array();
  for (const auto& suggestion : report.suggestions) suggestions.push_back(suggestion_part(learned, suggestion));
  Json present = {{"verdict", judge::verdict_name(now.judgement.verdict)},
                  {"margin", number_part(now.judgement.margin)}};
  if (learned.boards > 1) present["board"] = learned.board_name(now.board);
  // Infeasible is a finding; where the prediction's error leaves room for a pass, it is open.
  const bool open = report.infeasible && !report.infeasible->ruled_out;
  Json out = {{"schema", "ovenwright.tune/1"},
              {"program", std::string{"ovenwright "} + kVersion},
              {"fit", fit_part(learned.model.report)},
              {"now", present},
              {"suggestions", suggestions},
              {"notes", report.notes},
              {"infeasible", open ? Json(nullptr) : infeasible_part(learned, report.infeasible)},
              {"undetermined", open ? infeasible_part(learned, report.infeasible) : Json(nullptr)},
              {"next_run", next_run_part(report.next_run)},
              {"cut_short", report.cut_short}};
  if (learned.boards > 1) {
    out["groups"] = groups_part(learned, report);
    out["groups_sentence"] = report.groups_sentence.empty() ? Json(nullptr) : Json(report.groups_sentence);
    out["fewest_groups"] = report.fewest_groups;
  }
  return dumped(out) + "\n";
}

std::string start_json(const tune::Start& start) {
  return dumped({{"schema", "ovenwright.start/1"},
                 {"program", std::string{"ovenwright "} + kVersion},
                 {"recipe", recipe_part(start.recipe)},
                 {"predicted", forecast_part(start.predicted)},
                 {"learned_from", start.learned_from},
                 {"warnings", start.warnings},
                 {"sentence", start.sentence},
                 {"caution", start.caution}}) +
         "\n";
}

std::string traces_csv(const tune::Forecast& forecast) {
  std::string out = "Time (s)";
  std::vector<std::size_t> channels;
  std::size_t rows = 0;
  for (std::size_t c = 0; c < forecast.run.channels.size(); ++c) {
    if (!forecast.run.channels[c].trace) continue;
    channels.push_back(c);
    rows = std::max(rows, forecast.run.channels[c].trace->size());
    const std::string& name = forecast.run.channels[c].name;
    out += "," + csv_cell(name + " (°C)") + "," + csv_cell(name + ", half width of the band (K)");
  }
  out += "\n";
  for (std::size_t i = 0; i < rows; ++i) {
    std::string line;
    for (const auto c : channels) {
      const auto& trace = *forecast.run.channels[c].trace;
      if (line.empty() && i < trace.size()) line = fmt::format("{}", trace.time_s()[i]);
      if (i < trace.size())
        line += fmt::format(",{:.3f},{:.3f}", trace.temperature_C()[i], forecast.band_C[c][i]);
      else
        line += ",,";
    }
    out += line + "\n";
  }
  return out;
}

}  // namespace ovenwright::report
