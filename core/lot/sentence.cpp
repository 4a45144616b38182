#include "core/lot/sentence.h"

#include <fmt/format.h>

#include <algorithm>
#include <cctype>
#include <cmath>

#include "core/judge/decide.h"
#include "core/measure/parameter.h"

namespace ovenwright::lot {
namespace {

std::string per_cent(double fraction) {
  const std::string text = judge::number_text(100 * fraction, 0, 0.0);
  return text + " %";
}

std::string index_text(double index) { return judge::number_text(index, 2); }

std::string verdict_part(const Lot& lot) {
  const std::size_t runs = lot.ids.size(), out = lot.fail + lot.conditional_fail;
  std::string text = judge::verdict_name(lot.verdict);
  text[0] = static_cast<char>(std::toupper(static_cast<unsigned char>(text[0])));
  text += ". ";
  if (runs == 0) return text + "The lot has no run.";
  const std::string all = runs == 1 ? "The run" : fmt::format("All {} runs", runs);
  if (out > 0) {
    text += runs == 1 ? "The run is out" : fmt::format("{} of {} runs {} out", out, runs, out == 1 ? "is" : "are");
    if (lot.undetermined > 0)
      text += fmt::format(", {} {} undetermined", lot.undetermined, lot.undetermined == 1 ? "is" : "are");
  } else if (lot.undetermined > 0) {
    text += runs == 1 ? "The run is undetermined"
                      : fmt::format("{} of {} runs {} undetermined, none is out", lot.undetermined, runs,
                                    lot.undetermined == 1 ? "is" : "are");
  } else if (lot.conditional_pass > 0) {
    text += lot.conditional_pass == runs
                ? all + (runs == 1 ? " passes conditionally" : " pass conditionally")
                : fmt::format("{} of {} runs {} conditionally, the others pass", lot.conditional_pass, runs,
                              lot.conditional_pass == 1 ? "passes" : "pass");
  } else {
    text += all + (runs == 1 ? " passes" : " pass");
  }
  if (!lot.margin) return text + ".";
  const char* bound = lot.margin_bound == judge::MarginBound::kAtMost    ? "at most "
                      : lot.margin_bound == judge::MarginBound::kAtLeast ? "at least "
                                                                         : "";
  return text + fmt::format("; the smallest margin is {}{}.", bound, per_cent(*lot.margin));
}

std::string weakest_part(const Lot& lot) {
  if (!lot.weakest) return {};
  const auto& series = lot.series[*lot.weakest];
  const auto& c = series.capability;
  std::string text = fmt::format(" Least capable: {}, Ppk {} (95 % limits {} to {}) over {} runs", subject_of(series),
                                 index_text(*c.ppk), index_text(*c.ppk_low), index_text(*c.ppk_high), series.n());
  if (series.n() < kFew) text += ", which are few";
  return text + ".";
}

std::string signals_part(const Lot& lot) {
  std::size_t signals = 0;
  const Series* first = nullptr;
  const Chart* on = nullptr;
  for (const auto& series : lot.series)
    for (const auto* chart : {&series.control, &series.spread}) {
      if (!*chart) continue;
      signals += (*chart)->signals_found.size();
      if (on == nullptr && !(*chart)->signals_found.empty()) first = &series, on = &**chart;
    }
  if (on == nullptr) return {};
  const auto& signal = on->signals_found.front();
  const bool of_spread = first->spread && on == &*first->spread;
  std::string text = fmt::format(" The {} chart of {} signals at {}: {}", of_spread ? chart_name(on->kind) : "control",
                                 subject_of(*first), lot.ids[signal.run], signal_text(*on, signal));
  if (signals > 1) text += fmt::format("; {} more", signals - 1);
  return text + ".";
}

std::string measured_otherwise_part(const Lot& lot) {
  std::vector<std::string> names;
  for (const auto& series : lot.series)
    if (series.measured_otherwise > 0 && std::ranges::find(names, series.requirement) == names.end())
      names.push_back(series.requirement);
  if (names.empty()) return {};
  return fmt::format(" Not measured alike in all runs, with a row for each definition: {}.", fmt::join(names, ", "));
}

std::string without_index_part(const Lot& lot) {
  std::size_t without = 0;
  for (const auto& series : lot.series) without += series.capability.ppk ? 0 : 1;
  if (without == 0 || lot.series.empty()) return {};
  if (without == lot.series.size()) return fmt::format(" No result has an index: {}.", lot.series.front().note);
  return fmt::format(" {} of {} results {} no index.", without, lot.series.size(), without == 1 ? "has" : "have");
}

}  // namespace

std::string subject_of(const Series& series) {
  const std::string name = requirement_of(series);
  return series.trace.empty() ? name : name + " on " + series.trace;
}

std::string requirement_of(const Series& series) {
  if (series.measured_otherwise == 0) return series.requirement;
  const auto parameters = measure::parameters_text({series.measure, series.parameters});
  const std::string measured = measure::describe(series.measure).name;
  return series.requirement + " (" + (parameters.empty() ? measured : measured + ", " + parameters) + ")";
}

std::string sentence_of(const Lot& lot) {
  return verdict_part(lot) + weakest_part(lot) + signals_part(lot) + measured_otherwise_part(lot) +
         without_index_part(lot);
}

}  // namespace ovenwright::lot
