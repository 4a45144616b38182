#include "core/report/json.h"

#include <nlohmann/json.hpp>
#include <utility>

#include "core/report/json_parts.h"
#include "core/units/version.h"

namespace ovenwright::report {
namespace {

using Json = nlohmann::ordered_json;

/// A JSON object whose members stand on lines of their own, lists of objects with one element a line: a report can be
/// read, compared by line and streamed, and no whole document is held as a tree.
class Lines {
 public:
  void member(const char* key, const Json& value) { raw(key, dumped(value)); }
  void list(const char* key, std::span<const std::string> elements) {
    std::string text = "[";
    for (std::size_t i = 0; i < elements.size(); ++i) text += (i == 0 ? "\n " : ",\n ") + elements[i];
    raw(key, text + (elements.empty() ? "]" : "\n]"));
  }
  std::string take() { return text_.empty() ? "{}" : std::move(text_) + "}"; }

 private:
  void raw(const char* key, const std::string& value) {
    text_ += text_.empty() ? "{" : ",\n";
    text_ += "\"" + std::string{key} + "\": " + value;
  }
  std::string text_;
};

const files::Identity* identity_of(const auto& profile) { return profile ? &profile->identity : nullptr; }

std::vector<std::string> warnings_of(const log::Reading& reading, const judge::Judgement& judgement) {
  std::vector<std::string> warnings;
  for (const auto& warning : reading.warnings) warnings.push_back(warning.text());
  warnings.insert(warnings.end(), judgement.warnings.begin(), judgement.warnings.end());
  return warnings;
}

std::vector<std::string> error_lines(std::span<const Error> errors) {
  std::vector<std::string> lines;
  for (const auto& error : errors) lines.push_back(dumped(error_part(error)));
  return lines;
}

}  // namespace

std::string check_run_json(const log::Reading& reading, const check::CheckedRun& run, const check::Request& request) {
  const auto& judgement = run.judgement;
  Lines lines;
  lines.member("log", log_part(reading, run.run));
  lines.member("entry", entry_part(run.entry));
  lines.member("board", identity_part(identity_of(request.board)));
  lines.member("oven", identity_part(identity_of(request.oven)));
  lines.member("recipe", identity_part(identity_of(request.recipe)));
  lines.member("traces", traces_part(run.run, request.board ? &*request.board : nullptr));
  lines.member("windows", windows_part(judgement));
  lines.member("verdict", judge::verdict_name(judgement.verdict));
  lines.member("margin", number_part(judgement.margin));
  if (judgement.margin_bound != judge::MarginBound::kNone) {
    lines.member("margin_bound", margin_bound_name(judgement.margin_bound));
  }
  lines.member("sentence", judgement.sentence.text);
  const auto outcomes = [&](const std::vector<judge::Outcome>& from) {
    std::vector<std::string> parts;
    for (const auto& outcome : from) parts.push_back(dumped(outcome_part(outcome, judgement)));
    return parts;
  };
  lines.list("results", outcomes(judgement.results));
  lines.list("board_results", outcomes(judgement.board_results));
  lines.member("warnings", warnings_of(reading, judgement));
  return lines.take();
}

std::string check_json(std::span<const std::string> runs, std::span<const Error> errors) {
  Lines lines;
  lines.member("schema", "ovenwright.check/1");
  lines.member("program", std::string{"ovenwright "} + kVersion);
  lines.list("runs", runs);
  if (!errors.empty()) lines.list("errors", error_lines(errors));
  return lines.take() + "\n";
}

std::string errors_json(std::string_view schema, std::span<const Error> errors) {
  Lines lines;
  lines.member("schema", schema);
  lines.member("program", std::string{"ovenwright "} + kVersion);
  lines.list("errors", error_lines(errors));
  return lines.take() + "\n";
}

std::string measure_json(const check::MeasuredLog& measured, const check::MeasureRequest& request) {
  Lines lines;
  lines.member("schema", "ovenwright.measure/1");
  lines.member("program", std::string{"ovenwright "} + kVersion);
  lines.member("log", log_part(measured.reading, measured.run));
  lines.member("entry", entry_part(measured.entry));
  lines.member("board", identity_part(identity_of(request.board)));
  lines.member("oven", identity_part(identity_of(request.oven)));
  lines.member("recipe", identity_part(identity_of(request.recipe)));
  lines.member("traces", traces_part(measured.run, request.board ? &*request.board : nullptr));
  std::vector<std::string> results;
  for (const auto& one : measured.results) {
    Json result = {{"measure", measure::describe(one.measure.measure).name},
                   {"parameters", parameters_part(one.measure)},
                   {"trace", one.channel ? Json(measured.run.channels[*one.channel].name) : Json(nullptr)}};
    add_value(result, one.value);
    add_interval(result, one.value);
    results.push_back(dumped(result));
  }
  lines.list("results", results);
  std::vector<std::string> warnings;
  for (const auto& warning : measured.reading.warnings) warnings.push_back(warning.text());
  lines.member("warnings", warnings);
  return lines.take() + "\n";
}

std::string measures_json() {
  std::vector<std::string> measures;
  for (const auto& description : measure::descriptions()) {
    measures.push_back(dumped({{"name", description.name},
                               {"unit", unit_name(description.unit)},
                               {"parameters", description.parameters},
                               {"required", description.required},
                               {"board", description.board},
                               {"wave", description.wave},
                               {"definition", description.definition}}));
  }
  Lines lines;
  lines.member("schema", "ovenwright.measures/1");
  lines.list("measures", measures);
  return lines.take() + "\n";
}

std::string list_json(files::Kind kind, std::span<const files::Listed> listed) {
  const auto text = [](const std::optional<std::string>& value) { return value ? Json(*value) : Json(nullptr); };
  std::vector<std::string> entries;
  for (const auto& one : listed) {
    Json entry = {{"name", one.stem},
                  {"title", one.title},
                  {"revision", text(one.revision)},
                  {"file", one.file},
                  {"source", text(one.source)}};
    if (one.trouble) entry["error"] = *one.trouble;
    entries.push_back(dumped(entry));
  }
  Lines lines;
  lines.list(files::kind_folder(kind), entries);
  return lines.take() + "\n";
}

}  // namespace ovenwright::report
