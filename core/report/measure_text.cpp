#include <fmt/format.h>

#include <algorithm>

#include "core/judge/decide.h"
#include "core/measure/parameter.h"
#include "core/report/table.h"
#include "core/report/text.h"
#include "core/report/text_parts.h"

namespace ovenwright::report {
namespace {

using Align = Table::Align;

std::string interval_text(const measure::Value& value) {
  if (!value.from_s || !value.to_s) return {};
  const auto from = judge::number_text(*value.from_s, 1);
  return *value.from_s == *value.to_s ? from : from + " to " + judge::number_text(*value.to_s, 1);
}

std::string names(const std::vector<std::string_view>& parameters, const std::vector<std::string_view>& required) {
  std::string text;
  for (const auto name : parameters) {
    const bool needed = std::ranges::find(required, name) != required.end();
    text += (text.empty() ? "" : ", ") + (needed ? std::string{name} : "[" + std::string{name} + "]");
  }
  return text;
}

}  // namespace

std::string measure_text(const check::MeasuredLog& measured, const check::MeasureRequest& request, Detail detail) {
  const auto& run = measured.run;
  const std::size_t traces = run.channels.size();
  std::string text =
      fmt::format("{}: {} {}, {} s long, uncertainty by the defaults.\n\n", run_name(measured.reading, run), traces,
                  traces == 1 ? "trace" : "traces", judge::number_text(run.to_s - run.from_s, 1));
  Table table({{"measure"}, {"on"}, {"value", Align::kRight}, {""}, {""}, {"at, s", Align::kRight}, {"note"}});
  for (const auto& result : measured.results) {
    const auto& description = measure::describe(result.measure.measure);
    const auto parameters = measure::parameters_text(result.measure);
    const auto& value = result.value;
    table.add({description.name + (parameters.empty() ? "" : ", " + parameters),
               result.channel ? run.channels[*result.channel].name : "board",
               value_text(result.measure, value, std::nullopt, std::nullopt), uncertainty_text(result.measure, value),
               value.value ? unit_symbol(value.unit) : "", interval_text(value),
               value.reason.empty() ? value.note : value.reason});
  }
  text += table.text();
  if (detail == Detail::kSentence) return text;
  std::vector<std::string> warnings;
  for (const auto& warning : measured.reading.warnings) warnings.push_back(warning.text());
  if (run.parts > 1 && !request.run) {
    warnings.push_back(fmt::format("the log holds {} runs, this is the first: --run picks another", run.parts));
  }
  return text + list_of("Warnings", warnings) + faults_text(run) + reading_text(measured.reading, run);
}

std::string measures_text() {
  const std::string sentence =
      fmt::format("{} measures; name and parameters go into --measure, as 'time above, level=217'.\n\n",
                  measure::descriptions().size());
  Table table({{"measure"}, {"parameters, optional ones in brackets"}, {"unit"}, {"what it is"}});
  for (const auto& description : measure::descriptions()) {
    table.add({description.name, names(description.parameters, description.required), unit_symbol(description.unit),
               description.definition});
  }
  return sentence + table.text();
}

std::string list_text(files::Kind what, std::span<const files::Listed> listed) {
  if (listed.empty()) return fmt::format("There are no {}.\n", files::kind_folder(what));
  Table table({{"name"}, {"title"}, {"revision"}, {""}, {""}});
  for (const auto& one : listed) {
    table.add({one.stem, one.title, one.revision.value_or(""), one.users ? "yours" : "",
               one.trouble ? "cannot be read: " + *one.trouble : ""});
  }
  const std::string kind = files::kind_folder(what);
  const std::string many = listed.size() == 1 ? files::kind_word(what) : kind;
  return fmt::format("{} {}; `ovenwright {} NAME` prints one.\n\n", listed.size(), many, kind) + table.text();
}

}  // namespace ovenwright::report
