#include <fmt/format.h>

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
  return out + list_of("Warnings:", fit.warnings);
}

std::string recipe_line(const char* name, const std::vector<double>& setpoints_C) {
  std::string out = fmt::format("  {:<8}", name);
  for (const double x : setpoints_C) out += fmt::format(" {:>4}", x);
  return out + "\n";
}

}  // namespace

std::string predict_text(const tune::Learned& learned, const tune::Forecast& forecast, bool judged) {
  std::string out;
  if (judged) {
    out = wrapped("Predicted: " + forecast.judgement.sentence.text) + "\n" + forecast_table(forecast, Rows::kAll);
  } else {
    Table table({{"on"}, {"peak, °C", Table::Align::kRight}, {"± (95 %)", Table::Align::kRight}});
    for (std::size_t c = 0; c < forecast.run.channels.size(); ++c) {
      const auto& channel = forecast.run.channels[c];
      if (!channel.trace) continue;
      const auto T = channel.trace->temperature_C();
      const auto peak = static_cast<std::size_t>(std::max_element(T.begin(), T.end()) - T.begin());
      table.add({channel.name, fmt::format("{:.1f}", T[peak]), fmt::format("{:.1f}", forecast.band_C[c][peak])});
    }
    out = "Predicted peaks:\n" + table.text();
  }
  return out + fit_text(learned.model.report) + "\n" + wrapped(tune::kCaution);
}

std::string tune_text(const tune::Learned& learned, const judge::Judgement& now, const tune::Report& report) {
  std::string out = wrapped("Now: " + now.sentence.text);
  if (report.infeasible) out += "\n" + wrapped(report.infeasible->sentence);
  if (report.cut_short) out += "\nThe search was stopped: undetermined.\n";
  for (const auto& suggestion : report.suggestions) {
    const auto& predicted = suggestion.predicted.front();
    std::string title = tune::aim_name(suggestion.aim);
    title[0] = static_cast<char>(std::toupper(static_cast<unsigned char>(title[0])));
    out += "\n" + title + ": " + forecast_summary(predicted) + "\n";
    out += wrapped("  " + suggestion.sentence, 2);
    out += recipe_line("top", suggestion.recipe.top_C);
    if (suggestion.recipe.bottom_C != suggestion.recipe.top_C) out += recipe_line("bottom", suggestion.recipe.bottom_C);
    out += fmt::format("  speed    {:g} mm/min\n", suggestion.recipe.speed_mm_per_min);
  }
  return out + fit_text(learned.model.report) + "\n" + wrapped(tune::kCaution);
}

}  // namespace ovenwright::report
