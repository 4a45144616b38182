#include <fmt/format.h>

#include <algorithm>

#include "core/report/fit_words.h"
#include "core/report/forecast_parts.h"
#include "core/report/table.h"
#include "core/report/text_parts.h"
#include "core/report/tune_json.h"
#include "core/tune/words.h"

namespace ovenwright::report {
namespace {

std::string fit_text(const heat::FitReport& fit) {
  std::string out = fmt::format("\nModel: {}, misfit {:.2f} °C over the log, {} iterations.\n", fit.termination,
                                fit.rmse_C, fit.iterations);
  if (!fit.not_determined.empty())
    out += wrapped("What the log does not tell, so that usual values stand in: " + not_told_words(fit.not_determined) +
                   ".");
  return out;
}

/// Before what is predicted: what of the fit to doubt it for.
std::string warnings_text(const heat::FitReport& fit) {
  return list_of(fit.contradicted
                     ? "To check first: no chance of passing is stated while the log contradicts the files."
                     : "Warnings:",
                 fit.warnings);
}

std::string recipe_line(const char* name, const std::vector<double>& setpoints_C) {
  std::string out = fmt::format("  {:<8}", name);
  for (const double x : setpoints_C) out += fmt::format(" {:>4}", x);
  return out + "\n";
}

std::string recipe_lines(const oven::Recipe& recipe) {
  std::string out = recipe_line("top", recipe.top_C);
  if (recipe.bottom_C != recipe.top_C) out += recipe_line("bottom", recipe.bottom_C);
  return out + fmt::format("  speed    {:g} mm/min\n", recipe.speed_mm_per_min);
}

std::string titled(std::string text) {
  if (!text.empty()) text[0] = static_cast<char>(std::toupper(static_cast<unsigned char>(text[0])));
  return text;
}

}  // namespace

std::string predict_text(const tune::Learned& learned, const tune::Forecast& forecast, bool judged) {
  std::string out;
  if (judged) {
    out = wrapped(forecast.judgement.sentence.text) + warnings_text(learned.model.report) + "\n" +
          forecast_table(forecast, Rows::kAll);
  } else {
    Table table({{"on"}, {"peak, °C", Table::Align::kRight}, {"± (95 %)", Table::Align::kRight}});
    for (std::size_t c = 0; c < forecast.run.channels.size(); ++c) {
      const auto& channel = forecast.run.channels[c];
      if (!channel.trace) continue;
      const auto T = channel.trace->temperature_C();
      const auto peak = static_cast<std::size_t>(std::max_element(T.begin(), T.end()) - T.begin());
      table.add({channel.name, fmt::format("{:.1f}", T[peak]), fmt::format("{:.1f}", forecast.band_C[c][peak])});
    }
    out = warnings_text(learned.model.report);
    if (!out.empty()) out = out.substr(1) + "\n";
    out += "Predicted peaks:\n" + table.text();
  }
  return out + fit_text(learned.model.report) + "\n" + wrapped(tune::kCaution);
}

std::string tune_text(const tune::Learned& learned, const Present& now, const tune::Report& report) {
  std::string out = wrapped((learned.boards > 1 ? "Now, worst of all boards " + learned.board_name(now.board) : "Now") +
                            ": " + now.judgement.sentence.text) +
                    warnings_text(learned.model.report);
  const auto& last = learned.runs.back().source.recipe;
  if (!report.suggestions.empty() && std::ranges::any_of(learned.runs, [&](const tune::MeasuredRun& run) {
        return !tune::changes(learned.model.problem.oven, run.source.recipe, last).empty();
      }))
    out += "\n" + wrapped("Changes count from the recipe of the last run, " + last.identity.name + ".");
  if (!learned.model.report.usable)
    return out + "\n" + wrapped("No suggestion is made: " + learned.model.report.message + ".");
  if (report.infeasible) out += "\n" + wrapped(report.infeasible->sentence);
  if (report.cut_short) out += "\nThe search was stopped: undetermined.\n";
  for (const auto& suggestion : report.suggestions) {
    std::string title = titled(tune::aim_name(suggestion.aim));
    for (const auto aim : suggestion.also) title += std::string{", "} + tune::aim_name(aim);
    out += "\n" + title + ":";
    if (suggestion.predicted.size() == 1) {
      out += " " + forecast_summary(suggestion.predicted.front()) + "\n";
    } else {
      out += "\n";
      for (std::size_t b = 0; b < suggestion.predicted.size(); ++b)
        out += "  " + learned.board_name(b) + ": " + forecast_summary(suggestion.predicted[b]) + "\n";
    }
    out += wrapped("  " + suggestion.sentence, 2) + recipe_lines(suggestion.recipe);
  }
  if (!report.groups_sentence.empty()) out += "\n" + wrapped(report.groups_sentence);
  for (const auto& group : report.groups) {
    out += "\n";
    for (std::size_t i = 0; i < group.boards.size(); ++i)
      out += learned.board_name(group.boards[i]) + ": " + forecast_summary(group.predicted[i]) + "\n";
    out += recipe_lines(group.recipe);
  }
  if (report.next_run)
    out += "\nNext run:\n" + wrapped("  " + report.next_run->sentence, 2) + recipe_lines(report.next_run->recipe);
  return out + list_of("Notes:", report.notes) + fit_text(learned.model.report) + "\n" + wrapped(tune::kCaution);
}

std::string start_text(const tune::Start& start) {
  return wrapped(start.sentence) + "\n" + recipe_lines(start.recipe) + "\n" +
         wrapped(titled(forecast_summary(start.predicted)) + ".") + "\n" + forecast_table(start.predicted, Rows::kAll) +
         list_of("Learned from:", start.learned_from) + list_of("Warnings:", start.warnings) + "\n" +
         wrapped(start.caution);
}

}  // namespace ovenwright::report
