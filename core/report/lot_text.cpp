#include <fmt/format.h>

#include "core/judge/decide.h"
#include "core/lot/sentence.h"
#include "core/report/lot_report.h"
#include "core/report/table.h"
#include "core/report/text_parts.h"

namespace ovenwright::report {
namespace {

using Align = Table::Align;

/// One digit more than single values have, or as many more as it takes not to read as a limit.
std::string figure(const std::optional<double>& value, const lot::Series& series) {
  if (!value) return {};
  return judge::number_text(*value, judge::usual_digits(series.measure) + 1, series.lower, series.upper);
}

std::string index(const std::optional<double>& value) { return value ? judge::number_text(*value, 2) : ""; }

std::string range(const std::string& from, const std::string& to) { return from.empty() ? "" : from + " to " + to; }

std::string runs_text(std::span<const lot::Run> runs) {
  Table table({{"run"}, {"verdict"}, {"margin", Align::kRight}});
  for (const auto& run : runs)
    if (run.verdict != judge::Verdict::kPass)
      table.add({run.id, judge::verdict_name(run.verdict), margin_text(run.margin, run.margin_bound)});
  return table.empty() ? "" : "\nRuns that are no pass:\n" + table.text();
}

std::string figures_text(const lot::Lot& lot) {
  Table table({{"requirement"},
               {"on"},
               {"n", Align::kRight},
               {"mean", Align::kRight},
               {"sd", Align::kRight},
               {"smallest to largest"},
               {""},
               {"Pp", Align::kRight},
               {"Ppk", Align::kRight},
               {"95 % limits"},
               {"Cp", Align::kRight},
               {"Cpk", Align::kRight},
               {"95 % of runs lie in"}});
  for (const auto& series : lot.series) {
    const auto& c = series.capability;
    const int digits = judge::usual_digits(series.measure);
    std::string interval;
    if (series.tolerance_interval)
      interval =
          range(figure((*series.tolerance_interval)[0], series), figure((*series.tolerance_interval)[1], series));
    table.add({lot::requirement_of(series), series.trace.empty() ? "board" : series.trace,
               fmt::format("{}", series.n()), figure(series.mean, series),
               series.sd ? judge::number_text(*series.sd, digits + 1) : "",
               series.minimum ? range(judge::number_text(*series.minimum, digits, series.lower, series.upper),
                                      judge::number_text(*series.maximum, digits, series.lower, series.upper))
                              : "",
               unit_symbol(series.unit), index(c.pp), index(c.ppk), range(index(c.ppk_low), index(c.ppk_high)),
               index(c.cp), index(c.cpk), interval});
  }
  return table.empty() ? "" : "\n" + table.text();
}

std::string notes_text(const lot::Lot& lot) {
  std::vector<std::string> signals, without;
  for (const auto& series : lot.series) {
    const std::string subject = lot::subject_of(series);
    for (const auto* chart : {&series.control, &series.spread}) {
      if (!*chart) continue;
      for (const auto& signal : (*chart)->signals_found)
        signals.push_back(fmt::format("{}, {} chart, at {}: {}", subject, lot::chart_name((*chart)->kind),
                                      lot.ids[signal.run], lot::signal_text(**chart, signal)));
    }
    if (!series.capability.ppk) without.push_back(subject + ": " + series.note);
  }
  return list_of("Signals of the control charts:", signals) + list_of("No index:", without);
}

constexpr const char* kMeaning =
    "Pp and Ppk are the lot's performance, by the standard deviation of all its runs; Cp and Cpk are the capability of "
    "a "
    "process held still, by the mean moving range. \"95 % of runs lie in\" holds with 95 % confidence. All three take "
    "the values as normally distributed.";

}  // namespace

std::string lot_text(const std::string& name, std::span<const lot::Run> runs, const lot::Lot& lot) {
  return wrapped("Lot " + name + ": " + lot.sentence) + runs_text(runs) + figures_text(lot) + notes_text(lot) +
         (lot.series.empty() ? "" : "\n" + wrapped(kMeaning));
}

}  // namespace ovenwright::report
