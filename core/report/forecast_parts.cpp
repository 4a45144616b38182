#include "core/report/forecast_parts.h"

#include <fmt/format.h>

#include "core/report/table.h"
#include "core/report/text_parts.h"

namespace ovenwright::report {
namespace {

std::string probability_text(double probability) {
  if (probability > 0.99) return "of more than 99 %";
  if (probability < 0.01) return "of less than 1 %";
  return fmt::format("of {:.0f} %", 100 * probability);
}

}  // namespace

std::string forecast_table(const tune::Forecast& forecast, Rows rows) {
  const auto& judgement = forecast.judgement;
  const auto looser = [&](const judge::Outcome& outcome) {
    if (rows == Rows::kAll || !outcome.margin) return false;
    for (std::size_t i = 0; i < judgement.all_size(); ++i) {
      const auto& other = judgement.all(i);
      if (other.window == outcome.window && other.requirement == outcome.requirement && other.margin &&
          (*other.margin < *outcome.margin || (*other.margin == *outcome.margin && &other < &outcome)))
        return true;
    }
    return false;
  };
  Table table({{"requirement"},
               {"on"},
               {"predicted", Table::Align::kRight},
               {"±", Table::Align::kRight},
               {"margin", Table::Align::kRight},
               {"verdict"}});
  for (std::size_t i = 0; i < judgement.all_size(); ++i) {
    const auto& outcome = judgement.all(i);
    if (looser(outcome)) continue;
    const int digits = outcome.value.unit == Unit::kCelsiusPerSecond ? 2 : 1;
    table.add({outcome.requirement_name, outcome.trace.empty() ? "board" : outcome.trace,
               value_text(outcome.measure, outcome.value, outcome.lower, outcome.upper) + " " +
                   unit_symbol(outcome.value.unit),
               i < forecast.half_width.size() ? fmt::format("{:.{}f}", forecast.half_width[i], digits) : "",
               margin_text(outcome.margin, outcome.margin_bound), judge::verdict_name(outcome.verdict)});
  }
  return table.text();
}

std::string forecast_summary(const tune::Forecast& forecast) {
  std::string out = std::string{"predicted "} + judge::verdict_name(forecast.judgement.verdict);
  if (forecast.judgement.margin)
    out += ", smallest margin " + margin_text(forecast.judgement.margin, forecast.judgement.margin_bound);
  if (forecast.judgement.margin && forecast.margin_uncertainty)
    out += *forecast.margin_uncertainty > 1 ? std::string{" ± more than 100 %"}
                                            : fmt::format(" ± {:.0f} %", 100 * *forecast.margin_uncertainty);
  if (forecast.pass_probability) out += ", passes with a probability " + probability_text(*forecast.pass_probability);
  if (forecast.inside_probability)
    out += ", stays inside the limits with a probability " + probability_text(*forecast.inside_probability);
  if (!forecast.pass_probability && forecast.fall_unseen)
    out += ", with a probability that the log, which ends hot, does not tell";
  return out;
}

}  // namespace ovenwright::report
