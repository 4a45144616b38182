#include "core/window/window_file.h"

#include <array>

#include "core/files/nearest.h"
#include "core/files/profiles.h"
#include "core/files/text_file.h"
#include "core/files/toml.h"
#include "core/measure/measure.h"
#include "core/measure/parameter.h"
#include "core/window/limit.h"

namespace ovenwright::window {
namespace {

constexpr std::array<std::string_view, 11> kParameters{"level", "T1", "T2",   "reference",   "offset", "over",
                                                       "from",  "to", "time", "position_mm", "zone"};
constexpr std::array<std::string_view, 4> kGroups{"all", "joint", "body", "board"};
constexpr files::Range kLimit{-1e6, 1e6, false, "a number from -1000000 to 1000000"};
constexpr files::Range kHalfWidth{0, 100, false, "a number from 0 to 100"};

std::optional<Limit> take_limit(files::TomlTable& table, const char* key,
                                const std::optional<measure::Definition>& definition) {
  const auto value = table.number_or_text(key);
  if (!value) return std::nullopt;
  if (const auto* number = std::get_if<double>(&*value)) {
    const bool temperature = definition && measure::describe(definition->measure).unit == Unit::kCelsius &&
                             !counts_from_zero(definition->measure);
    const auto& range = temperature ? files::kTemperature : kLimit;
    if (*number >= range.lowest && *number <= range.highest) return *number;
    table.fail(key, "found " + table.written(key) + " for \"" + key + "\", expected " + range.words, table.written(key),
               range.words);
    return std::nullopt;
  }
  auto limit = limit_of(std::get<std::string>(*value));
  if (!limit) {
    table.fail(key, "found " + table.written(key) + " for \"" + key + "\", expected a number, \"Tc\" or \"Tc-5\"",
               table.written(key), "a number, \"Tc\" or \"Tc-5\"");
  }
  return limit;
}

/// The measure with its parameters; absent where it cannot be read, and then the error is kept.
std::optional<measure::Definition> take_measure(files::TomlTable& table, const ProcessWindow& window) {
  const std::string name = table.needed_text("measure");
  const measure::Description* description = measure::find(name);
  if (description == nullptr && table.type("measure") == "text") {
    std::vector<std::string_view> names;
    for (const auto& each : measure::descriptions()) names.emplace_back(each.name);
    const std::string_view meant = files::nearest(name, names);
    table.fail("measure", "found the unknown measure \"" + name + "\"" + files::suggestion(name, names), name,
               meant.empty() ? files::listed(names) : std::string{meant});
  }
  measure::Definition definition{description == nullptr ? measure::Measure::kPeak : description->measure, {}};
  bool sound = description != nullptr;
  for (const auto parameter : kParameters) {
    auto value = table.number_or_text(parameter);
    sound = sound && (value || !table.has(parameter));  // one of the wrong type is told itself, not as a missing one
    if (!value || description == nullptr) continue;
    if (parameter == "zone" && std::holds_alternative<double>(*value)) {
      value = files::toml_number(std::get<double>(*value));
    }
    if (auto error = measure::set_parameter(definition, parameter, *value)) {
      table.fail(parameter, std::move(error->message), std::move(error->found), std::move(error->expected));
      sound = false;
    }
  }
  if (!sound) return std::nullopt;
  if (auto error = measure::problem(measure::with_defaults(definition, window.liquidus_C))) {
    const bool level = error->message.ends_with(" level");
    const std::string first = error->message.substr(0, error->message.find(' '));  // "over must be more than 0 s"
    table.fail(table.has(first) ? first : "measure", error->message + (level ? ", or the window a \"liquidus_C\"" : ""),
               error->found, error->expected);
    return std::nullopt;
  }
  if (description->wave && window.process != Process::kWave) {
    table.fail("measure", "found \"" + name + "\" in a window for reflow, expected process = \"wave\"", name,
               "process = \"wave\"");
  }
  return definition;
}

AppliesTo take_applies_to(files::TomlTable& table, const std::optional<measure::Definition>& definition) {
  const bool board = definition && measure::describe(definition->measure).board;
  AppliesTo applies_to;
  applies_to.kind = board ? AppliesTo::Kind::kBoard : AppliesTo::Kind::kAll;
  if (table.type("applies_to") == "array") {
    applies_to.kind = AppliesTo::Kind::kChannels;
    applies_to.channels = table.texts("applies_to").value_or(std::vector<std::string>{});
    if (applies_to.channels.empty()) {
      table.fail("applies_to", "found no channel in \"applies_to\"", "no channel", "at least one channel");
    }
  } else if (const auto group = table.one_of("applies_to", kGroups)) {
    applies_to.kind = *group == "joint"   ? AppliesTo::Kind::kJoint
                      : *group == "body"  ? AppliesTo::Kind::kBody
                      : *group == "board" ? AppliesTo::Kind::kBoard
                                          : AppliesTo::Kind::kAll;
  }
  if (definition && board != (applies_to.kind == AppliesTo::Kind::kBoard)) {
    const std::string name = measure::describe(definition->measure).name;
    const std::string found = table.written("applies_to");
    const std::string expected = board ? "\"board\"" : "\"all\", \"joint\", \"body\" or a list of channels";
    table.fail("applies_to",
               "found " + found + " for \"applies_to\", expected " + expected + ": \"" + name + "\" is measured on " +
                   (board ? "the board as a whole" : "each trace"),
               found, expected);
  }
  return applies_to;
}

Requirement take_requirement(files::TomlTable& table, const ProcessWindow& window) {
  Requirement requirement;
  requirement.line = table.line();
  const auto definition = take_measure(table, window);
  if (definition) requirement.measure = *definition;
  requirement.name = table.text("name").value_or("");
  if (requirement.name.empty())
    requirement.name = definition ? measure::describe(definition->measure).name : std::string{"requirement"};
  requirement.lower = take_limit(table, "lower", definition);
  requirement.upper = take_limit(table, "upper", definition);
  requirement.target = take_limit(table, "target", definition);
  requirement.applies_to = take_applies_to(table, definition);
  constexpr std::array<std::string_view, 2> kSides{"top", "bottom"};
  if (const auto side = table.one_of("side", kSides)) {
    requirement.side = *side == "top" ? board::Side::kTop : board::Side::kBottom;
  }
  requirement.required = table.boolean("required").value_or(true);
  requirement.source = table.text("source").value_or("");
  requirement.lower_source = table.text("lower_source").value_or("");
  requirement.upper_source = table.text("upper_source").value_or("");
  return requirement;
}

void check_limits(files::TomlTable& table, const ProcessWindow& window, const Requirement& requirement) {
  const auto problem = limit_problem(window, requirement);
  if (!problem) return;
  if (problem->key.empty()) {
    table.fail("measure", "\"" + requirement.name + "\" " + problem->message + ", expected " + problem->expected,
               "no limit", problem->expected);
  } else {
    table.fail(problem->key, problem->message, table.written(problem->key), problem->expected);
  }
}

UncertaintyBudget take_uncertainty(files::TomlTable& table) {
  UncertaintyBudget budget;
  budget.defaulted = false;
  budget.tolerance_C = table.number("tolerance_C", kHalfWidth);
  budget.instrument_C = table.number("instrument_C", kHalfWidth).value_or(budget.instrument_C);
  if (const auto thermocouple = table.text("thermocouple")) {
    budget.thermocouple = *thermocouple;
    const auto tolerance = measure::tolerance_of(*thermocouple);
    if (!tolerance) {
      table.fail("thermocouple", tolerance.error().message, tolerance.error().found, tolerance.error().expected);
    } else if (budget.tolerance_C) {
      table.fail("tolerance_C", "found \"tolerance_C\" beside \"thermocouple\", expected one of the two", "tolerance_C",
                 "one of the two");
    }
  }
  return budget;
}

void take_head(files::TomlTable& root, ProcessWindow& window) {
  constexpr std::array<std::string_view, 2> kProcesses{"reflow", "wave"};
  window.process = root.one_of("process", kProcesses) == "wave" ? Process::kWave : Process::kReflow;
  window.alloy = root.text("alloy");
  window.liquidus_C = root.number("liquidus_C", files::kTemperature);
  window.solidus_C = root.number("solidus_C", files::kTemperature);
  if (window.solidus_C && window.liquidus_C && *window.solidus_C > *window.liquidus_C) {
    const std::string expected = "at most the liquidus, " + files::toml_number(*window.liquidus_C);
    root.fail("solidus_C", "found " + root.written("solidus_C") + " for \"solidus_C\", expected " + expected,
              root.written("solidus_C"), expected);
  }
  constexpr std::array<std::string_view, 2> kClassifications{"Pb-free", "SnPb"};
  if (const auto classification = root.one_of("classification", kClassifications)) {
    window.classification = *classification == "SnPb" ? Classification::kTinLead : Classification::kLeadFree;
  }
  constexpr std::array<std::string_view, 2> kRules{"simple", "guarded"};
  window.decision_rule =
      root.one_of("decision_rule", kRules) == "guarded" ? DecisionRule::kGuarded : DecisionRule::kSimple;
  if (auto uncertainty = root.table("uncertainty")) window.uncertainty = take_uncertainty(*uncertainty);
}

}  // namespace

Result<ProcessWindow> parse(const std::string& file, std::string_view text) {
  auto toml = files::TomlFile::parse(file, text);
  if (!toml) return toml.error();
  auto root = toml->root();
  ProcessWindow window;
  window.identity = files::take_identity(root, file, text);
  take_head(root, window);
  auto tables = root.tables("requirement");
  for (auto& table : tables) {
    window.requirements.push_back(take_requirement(table, window));
    // A value that could not be read leaves a limit or the measure open, and the rules would complain of that instead.
    if (!toml->failed()) check_limits(table, window, window.requirements.back());
  }
  if (!root.has("requirement")) root.missing("requirement", "at least one [[requirement]]");
  if (auto error = toml->finish()) return *error;
  return window;
}

Result<ProcessWindow> load(const std::string& path) {
  const auto text = files::read_text(path);
  if (!text) return text.error();
  return parse(path, *text);
}

Result<ProcessWindow> find(const std::string& name_or_path) {
  const auto path = files::find_profile(files::Kind::kWindow, name_or_path);
  if (!path) return path.error();
  return load(*path);
}

}  // namespace ovenwright::window
