#include <algorithm>
#include <optional>

#include "core/files/profiles.h"
#include "core/files/text_file.h"
#include "core/files/toml.h"
#include "core/files/toml_edit.h"
#include "core/files/toml_fields.h"
#include "core/measure/parameter.h"
#include "core/window/classification.h"
#include "core/window/limit.h"
#include "core/window/window_file.h"

namespace ovenwright::window {
namespace {

using Fields = files::TomlFields;

void put_limit(Fields& fields, const char* key, const std::optional<Limit>& value) {
  if (value) fields.put(key, limit_text(*value));
}

Fields head_fields(const ProcessWindow& window) {
  Fields fields;
  fields.text("name", window.identity.name);
  fields.text("revision", window.identity.revision);
  if (window.process == Process::kWave) fields.put("process", "\"wave\"");
  fields.text("alloy", window.alloy);
  fields.number("liquidus_C", window.liquidus_C);
  fields.number("solidus_C", window.solidus_C);
  if (window.classification) {
    fields.text("classification", std::string{classification_name(*window.classification)});
  }
  fields.put("decision_rule", window.decision_rule == DecisionRule::kGuarded ? "\"guarded\"" : "\"simple\"");
  fields.text("source", window.identity.source);
  return fields;
}

Fields uncertainty_fields(const UncertaintyBudget& budget) {
  Fields fields;
  if (budget.defaulted) return fields;
  if (budget.tolerance_C) {
    fields.number("tolerance_C", budget.tolerance_C);
  } else {
    fields.text("thermocouple", budget.thermocouple);
  }
  fields.number("instrument_C", budget.instrument_C);
  return fields;
}

std::string applies_to_text(const AppliesTo& applies_to) {
  switch (applies_to.kind) {
    case AppliesTo::Kind::kAll:
      return "\"all\"";
    case AppliesTo::Kind::kJoint:
      return "\"joint\"";
    case AppliesTo::Kind::kBody:
      return "\"body\"";
    case AppliesTo::Kind::kBoard:
      return "\"board\"";
    case AppliesTo::Kind::kChannels:
      break;
  }
  std::string list;
  for (const auto& channel : applies_to.channels) list += (list.empty() ? "" : ", ") + files::toml_text(channel);
  return "[" + list + "]";
}

Fields requirement_fields(const Requirement& requirement) {
  Fields fields;
  fields.text("name", requirement.name);
  fields.text("measure", std::string{measure::describe(requirement.measure.measure).name});
  for (const auto& parameter : measure::parameters_of(requirement.measure)) {
    const auto* number = std::get_if<double>(&parameter.value);
    fields.put(parameter.name, number != nullptr ? files::toml_number(*number)
                                                 : files::toml_text(std::get<std::string>(parameter.value)));
  }
  if (requirement.side) fields.put("side", *requirement.side == board::Side::kTop ? "\"top\"" : "\"bottom\"");
  put_limit(fields, "lower", requirement.lower);
  put_limit(fields, "upper", requirement.upper);
  put_limit(fields, "target", requirement.target);
  fields.put("applies_to", applies_to_text(requirement.applies_to));
  if (!requirement.required) fields.put("required", "false");
  fields.text("source", requirement.source);
  fields.text("lower_source", requirement.lower_source);
  fields.text("upper_source", requirement.upper_source);
  return fields;
}

std::string written_anew(const ProcessWindow& window) {
  std::string text = head_fields(window).lines();
  const Fields uncertainty = uncertainty_fields(window.uncertainty);
  if (!uncertainty.empty()) text += "\n[uncertainty]\n" + uncertainty.lines();
  for (const auto& requirement : window.requirements) {
    text += "\n[[requirement]]\n" + requirement_fields(requirement).lines();
  }
  return text;
}

/// The original text with its values changed in place; empty where that cannot be done.
std::optional<std::string> changed_in_place(const ProcessWindow& window, std::string_view original) {
  const auto before = parse(window.identity.file, original);
  auto edit = files::TomlEdit::open(window.identity.file, std::string{original});
  if (!before || !edit) return std::nullopt;
  if (!files::change_fields(*edit, {}, head_fields(*before), head_fields(window))) return std::nullopt;
  if (!files::change_fields(*edit, {"uncertainty"}, uncertainty_fields(before->uncertainty),
                            uncertainty_fields(window.uncertainty))) {
    return std::nullopt;
  }
  for (std::size_t i = before->requirements.size(); i-- > 0;) {
    const auto& old = before->requirements[i];
    const auto kept = std::ranges::find(window.requirements, old.line, &Requirement::line);
    const bool done =
        kept == window.requirements.end()
            ? edit->erase_table({"requirement", i}).has_value()
            : files::change_fields(*edit, {"requirement", i}, requirement_fields(old), requirement_fields(*kept));
    if (!done) return std::nullopt;
  }
  for (const auto& requirement : window.requirements) {
    const bool is_new =
        std::ranges::find(before->requirements, requirement.line, &Requirement::line) == before->requirements.end();
    if (is_new && !edit->append("[[requirement]]\n" + requirement_fields(requirement).lines())) return std::nullopt;
  }
  const auto after = parse(window.identity.file, edit->text());
  if (!after || written_anew(*after) != written_anew(window)) return std::nullopt;
  return edit->text();
}

}  // namespace

std::string window_text(const ProcessWindow& window, std::string_view original) {
  if (!original.empty()) {
    if (auto text = changed_in_place(window, original)) return *std::move(text);
  }
  return written_anew(window);
}

std::string revision_path(const ProcessWindow& window, const std::string& revision) {
  return files::revision_path(files::Kind::kWindow, window.identity, revision);
}

Result<ProcessWindow> save_revision(ProcessWindow window, const std::string& revision, const std::string& path) {
  const files::Identity before = window.identity;
  window.identity.revision = revision;
  const auto original = before.file.empty() ? Result<std::string>{std::string{}} : files::read_text(before.file);
  const std::string text = window_text(window, original ? std::string_view{*original} : std::string_view{});
  // An empty revision is told of as such, by the one who writes.
  if (const auto checked = parse(path, text); !checked && !revision.empty()) return checked.error();
  const auto written = files::write_revision(files::Kind::kWindow, before, revision, path, text);
  if (!written) return written.error();
  return load(path);
}

}  // namespace ovenwright::window
