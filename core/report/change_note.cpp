#include "core/report/change_note.h"

#include <fmt/format.h>

#include <algorithm>

#include "core/log/text.h"
#include "core/report/forecast_parts.h"
#include "core/report/table.h"
#include "core/report/text_parts.h"
#include "core/tune/tune.h"
#include "core/tune/words.h"

namespace ovenwright::report {
namespace {

constexpr std::size_t kColumns = 96;
constexpr std::size_t kNameBytes = 120;  // names longer than this are cut
constexpr const char* kSafety =
    "Hot surfaces, moving conveyor, flux fumes: site safety rules, local codes and the makers' data sheets stand above "
    "anything shown here.";
constexpr const char* kGeneralWindows =
    "Windows shipped with the program are general; the paste's own data sheet is the authority.";

/// A name from a file, on one line and not endless.
std::string name_text(const std::string& name) {
  const auto quoted = log::quoted_for_message(name, kNameBytes);
  return quoted.substr(1, quoted.size() - 2);
}

std::string identity_text(const files::Identity& identity) {
  std::string out = name_text(identity.name);
  if (identity.revision) out += ", revision " + name_text(*identity.revision);
  if (!identity.sha256.empty()) out += "\n  sha256 " + identity.sha256;
  return out;
}

std::string section(const char* title) { return std::string{"\n"} + title + "\n"; }

std::string indented(std::string_view text) { return wrapped("  " + std::string{text}, 2, kColumns); }

/// Both sides of a zone in one row where they change alike.
std::string changes_table(const ChangeNote& note) {
  const auto changes = tune::changes(*note.oven, *note.from, *note.to);
  if (changes.empty()) return "  Nothing: the recipe is the one that ran.\n";
  Table table({{"  zone"},
               {"side"},
               {"from", Table::Align::kRight},
               {"to", Table::Align::kRight},
               {"change", Table::Align::kRight},
               {""}});
  const auto add = [&](const std::string& zone, const std::string& side, const tune::Change& change, const char* unit) {
    const double by = change.to - change.from;
    table.add({"  " + zone, side, fmt::format("{:g}", change.from), fmt::format("{:g}", change.to),
               fmt::format("{}{:g}", by > 0 ? "+" : "\u2212", std::abs(by)), unit});
  };
  for (std::size_t i = 0; i < changes.size(); ++i) {
    const auto& change = changes[i];
    if (change.zone.empty()) {
      add("conveyor", "", change, "mm/min");
      continue;
    }
    const std::string zone = name_text(change.zone);
    const auto* next = i + 1 < changes.size() ? &changes[i + 1] : nullptr;
    if (next && next->zone == change.zone && next->from == change.from && next->to == change.to) {
      add(zone, "top and bottom", change, "°C");
      ++i;
    } else {
      add(zone, !change.side ? "" : *change.side == board::Side::kTop ? "top" : "bottom", change, "°C");
    }
  }
  return table.text();
}

std::string whole_recipe(const ChangeNote& note) {
  Table table({{"  zone"}, {"top, °C", Table::Align::kRight}, {"bottom, °C", Table::Align::kRight}});
  std::size_t heat = 0, cool = 0;
  for (const auto& zone : note.oven->zones) {
    const std::string name = "  " + name_text(zone.name);
    if (zone.kind == oven::ZoneKind::kHeat) {
      table.add({name, fmt::format("{:g}", note.to->top_C[heat]), fmt::format("{:g}", note.to->bottom_C[heat])});
      ++heat;
    } else if (cool < note.to->cooling_C.size()) {
      const auto setpoint = fmt::format("{:g}", note.to->cooling_C[cool++]);
      table.add({name, setpoint, setpoint});
    }
  }
  return table.text() + fmt::format("  Conveyor {:g} mm/min\n", note.to->speed_mm_per_min);
}

std::string predicted_text(const ChangeNote& note) {
  std::string out;
  for (std::size_t b = 0; b < note.predicted.size(); ++b) {
    const auto& forecast = note.predicted[b];
    std::string summary = forecast_summary(forecast);
    summary[0] = 'P';
    if (b < note.boards.size() && !note.boards[b].empty()) summary = name_text(note.boards[b]) + ": " + summary;
    out += indented(summary + ".");
    for (const auto& window : forecast.judgement.windows) out += "  Window " + identity_text(window.identity) + "\n";
    out += "\n" + forecast_table(forecast, Rows::kTightest) + "\n";
  }
  return out + indented(
                   "Of each requirement the tightest. ± is the half width of the prediction, 95 %; the thermocouples' "
                   "own uncertainty is not in it.");
}

bool predicted_to_pass(const ChangeNote& note) {
  return !note.predicted.empty() && std::ranges::all_of(note.predicted, [](const tune::Forecast& forecast) {
    return forecast.judgement.verdict <= judge::Verdict::kConditionalPass;
  });
}

/// What is to be known before anything else; empty where the prediction is sure.
const char* first_warning(const ChangeNote& note) {
  if (!predicted_to_pass(note))
    return "This recipe is not predicted to pass. It is for a test run only, not for production.";
  const bool sure = std::ranges::all_of(note.predicted, [](const tune::Forecast& forecast) {
    return forecast.pass_probability.value_or(0) >= tune::kDoubtfulChance;
  });
  return sure ? "" : "It is not sure to pass. Make a test run of it first.";
}

std::string learned_text(const ChangeNote& note) {
  std::string out;
  for (const auto& run : note.learned_from) {
    std::string line = name_text(run.log);
    if (run.parts > 1) line += fmt::format(", run {} of {}", run.part, run.parts);
    line += ", recipe " + name_text(run.recipe);
    if (!run.board.empty()) line += ", board " + name_text(run.board);
    out += indented(line);
    if (!run.sha256.empty()) out += "    sha256 " + run.sha256 + "\n";
  }
  if (note.sides_untold)
    out += indented(
        "Warning: top and bottom are set apart, and no run that was learned from had them apart: what each side does "
        "alone is not known.");
  if (!note.fit) return out;
  out += indented(
      fmt::format("The model follows these logs with a misfit of {:.2f} °C (root mean square).", note.fit->rmse_C));
  for (const auto& warning : note.fit->warnings) out += indented("Warning: " + warning);
  return out;
}

}  // namespace

std::string change_note_text(const ChangeNote& note) {
  std::string out = "CHANGE NOTE\n";
  if (const std::string_view warning = first_warning(note); !warning.empty())
    out += "\n" + wrapped(warning, 0, kColumns);
  out += section("Oven") + "  " + identity_text(note.oven->identity) + "\n";
  out += section("From the recipe") + "  " + identity_text(note.from->identity) + "\n";
  out += section("To the recipe") + "  " + identity_text(note.to->identity) + "\n";
  out += section("What changes") + changes_table(note);
  if (!note.reason.empty()) out += "\n" + indented(note.reason);
  out += section("The whole recipe") + whole_recipe(note);
  if (note.measured) out += section("Measured, as it ran") + indented(note.measured->sentence.text);
  if (!note.predicted.empty()) out += section("Predicted, with the change") + predicted_text(note);
  if (!note.learned_from.empty()) out += section("Learned from") + learned_text(note);
  out += section("Cautions") + indented(tune::kCaution) + indented(kSafety) + indented(kGeneralWindows);
  out += section("To be confirmed by an instrumented run, before production");
  out +=
      "\n  Log of the run      ______________________________  sha256 ____________________________\n"
      "\n  Verdict, margin     ______________________________\n"
      "\n  Changed at oven by  ______________________________  Date ______________  Signature ______________\n"
      "\n  Confirmed by        ______________________________  Date ______________  Signature ______________\n";
  return out;
}

std::vector<NoteRun> note_runs(const tune::Learned& learned) {
  std::vector<NoteRun> out;
  for (const auto& run : learned.runs)
    out.push_back({run.reading.file.file, run.reading.file.sha256, run.run.part, run.run.parts,
                   run.source.recipe.identity.name,
                   run.source.board ? run.source.board->identity.name : std::string{}});
  return out;
}

}  // namespace ovenwright::report
