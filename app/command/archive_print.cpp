#include "app/command/archive_print.h"

#include <fmt/format.h>

#include <algorithm>
#include <nlohmann/json.hpp>

#include "core/log/text.h"
#include "core/report/json_parts.h"
#include "core/report/table.h"
#include "core/report/text_parts.h"

namespace ovenwright::command {
namespace {

using Json = nlohmann::ordered_json;

Json or_null(const std::string& text) { return text.empty() ? Json(nullptr) : Json(text); }

std::string margin_words(const std::optional<double>& margin) {
  return margin ? report::margin_text(margin, judge::MarginBound::kNone) : std::string{};
}

/// "2026-03-14 08:15": to the minute, UTC.
std::string minute(archive::Moment moment) {
  std::string text = archive::momentText(moment).substr(0, 16);
  text[10] = ' ';
  return text;
}

std::string from_words(archive::RunAtFrom from) {
  switch (from) {
    case archive::RunAtFrom::kGiven:
      return "as given";
    case archive::RunAtFrom::kLogClock:
      return "by the log's own clock";
    case archive::RunAtFrom::kFileTime:
      break;
  }
  return "time of the log's file";
}

std::string file_line(const char* what, const archive::KeptFile& file) {
  return fmt::format("{:<9}{}{}, SHA-256 {}\n", what, shown(file.name),
                     file.revision ? ", revision " + shown(*file.revision) : "", file.sha256);
}

}  // namespace

std::string shown(const std::string& name) {
  // Signs that turn the direction of what follows would turn the rest of the line (Unicode UAX #9): left out.
  std::string plain = name;
  for (const char* sign : {"\u202A", "\u202B", "\u202C", "\u202D", "\u202E", "\u2066", "\u2067", "\u2068", "\u2069"})
    for (std::size_t at = plain.find(sign); at != std::string::npos; at = plain.find(sign, at)) plain.erase(at, 3);
  const std::string quoted = log::quoted_for_message(plain, 80);
  return quoted.substr(1, quoted.size() - 2);
}

std::string json_text(const std::string& text) { return report::dumped(Json(text)); }
std::string json_text(const std::optional<std::string>& text) { return text ? json_text(*text) : "null"; }

std::string added_json(const AddedLine& line) {
  Json json = {{"id", line.id}, {"log", line.log}};
  if (!line.already) {
    json["sha256"] = line.sha256;
    json["verdict"] = judge::verdict_name(line.verdict);
    json["margin"] = report::number_part(line.margin);
    json["run_at"] = archive::momentText(line.time.at);
    json["run_at_from"] = archive::runAtFromName(line.time.from);
  }
  if (!line.judged_from.empty()) json["judged_from"] = line.judged_from;
  return report::dumped(json);
}

std::string added_text(const AddedLine& line) {
  if (line.already) return "already " + line.id + ": " + shown(line.log) + "\n";
  const std::string margin = margin_words(line.margin);
  return "kept " + line.id + ": " + shown(line.log) + ", " + judge::verdict_name(line.verdict) +
         (margin.empty() ? "" : ", margin " + margin) + ", run at " + archive::momentText(line.time.at) + " (" +
         from_words(line.time.from) + ")\n";
}

std::string watched_json(const archive::Watched& watched) {
  Json json = {{"schema", "ovenwright.watch/1"}, {"file", watched.file}};
  if (watched.error) {
    json["error"] = report::error_part(*watched.error);
  } else {
    json["id"] = watched.id;
    json["verdict"] = judge::verdict_name(watched.verdict);
    json["margin"] = report::number_part(watched.margin);
    json["already"] = watched.already;
    json["lot"] = or_null(watched.lot);
    if (watched.time) {
      json["run_at"] = archive::momentText(watched.time->at);
      json["run_at_from"] = archive::runAtFromName(watched.time->from);
    }
  }
  return report::dumped(json) + "\n";
}

std::string errors_json(std::span<const Error> errors) {
  Json all = Json::array();
  for (const auto& error : errors) all.push_back(report::error_part(error));
  return report::dumped(all);
}

std::string summary_json(const archive::Summary& summary) {
  Json json = {{"id", summary.id},
               {"run_at", archive::momentText(summary.runAt)},
               {"run_at_from", archive::runAtFromName(summary.runAtFrom)},
               {"added_at", archive::momentText(summary.addedAt)},
               {"lot", or_null(summary.lot)},
               {"serial", or_null(summary.serial)},
               {"board", or_null(summary.board)},
               {"oven", or_null(summary.oven)},
               {"recipe", or_null(summary.recipe)},
               {"window", or_null(summary.window)},
               {"window_revision", or_null(summary.windowRevision)},
               {"verdict", judge::verdict_name(summary.verdict)},
               {"margin", report::number_part(summary.margin)},
               {"sha256", summary.logSha256},
               {"operator", or_null(summary.operatorName)},
               {"log", summary.logName},
               {"part", nullptr},
               {"judged_from", or_null(summary.judgedFrom)},
               {"printed_at", summary.printedAt ? Json(archive::momentText(*summary.printedAt)) : Json(nullptr)}};
  if (summary.parts > 1) json["part"] = {{"index", summary.part}, {"of", summary.parts}};
  return report::dumped(json);
}

std::string list_text(std::span<const archive::Summary> runs, std::size_t total) {
  if (total == 0) return "No runs.\n";
  const auto is_file_time = [](const auto& run) { return run.runAtFrom == archive::RunAtFrom::kFileTime; };
  const bool any_file_time = std::ranges::any_of(runs, is_file_time);
  std::string text = fmt::format("{} {}, the newest first; times in UTC{}.\n\n", total, total == 1 ? "run" : "runs",
                                 any_file_time ? ", * that of the log's file" : "");
  using Column = report::Table::Column;
  report::Table table({Column{"Id"}, Column{"Run"}, Column{"Lot"}, Column{"Serial"}, Column{"Board"}, Column{"Recipe"},
                       Column{"Window"}, Column{"Verdict"}, Column{"Margin", report::Table::Align::kRight}});
  for (const auto& run : runs) {
    table.add({run.id, minute(run.runAt) + (is_file_time(run) ? " *" : ""), shown(run.lot), shown(run.serial),
               shown(run.board), shown(run.recipe), shown(run.window), judge::verdict_name(run.verdict),
               margin_words(run.margin)});
  }
  return text + table.text();
}

std::string record_text(const archive::Record& record, std::span<const archive::ReleasedWindow> released,
                        std::span<const archive::PrintedNote> printed) {
  const auto& summary = record.summary;
  const auto line = [](const char* what, const std::string& value) {
    return value.empty() ? std::string{} : fmt::format("{:<9}{}\n", what, value);
  };
  std::string text = "\nKept as " + summary.id + "\n";
  text += line("Lot", shown(summary.lot)) + line("Serial", shown(summary.serial)) +
          line("Operator", shown(summary.operatorName));
  text += line("Run", archive::momentText(summary.runAt) + ", " + from_words(summary.runAtFrom));
  text += line("Added",
               archive::momentText(summary.addedAt) + ", by " + shown(record.program) + " at " + shown(record.station));
  if (!summary.judgedFrom.empty()) text += line("Before", summary.judgedFrom + ", judged anew here");
  text += file_line("Log", record.log);
  for (const auto& window : record.windows) {
    text += file_line("Window", window);
    const auto at = std::ranges::find(released, window.sha256, [](const auto& one) { return one.window.sha256; });
    if (at != released.end())
      text += line("", "released " + archive::momentText(at->releasedAt) + " by " + shown(at->releasedBy));
  }
  if (record.oven) text += file_line("Oven", *record.oven);
  if (record.recipe) text += file_line("Recipe", *record.recipe);
  if (record.board) text += file_line("Board", *record.board);
  for (const auto& attachment : record.attachments) text += file_line("Picture", attachment);
  text += line("Digest", record.digest);
  for (const auto& note : printed) {
    text += line("Printed", archive::momentText(note.at) + (note.by.empty() ? "" : ", by " + shown(note.by)) + ", at " +
                                shown(note.station));
  }
  return text;
}

std::string released_json(std::span<const archive::ReleasedWindow> released) {
  Json all = Json::array();
  for (const auto& one : released) {
    all.push_back({{"name", one.window.name},
                   {"revision", one.window.revision ? Json(*one.window.revision) : Json(nullptr)},
                   {"sha256", one.window.sha256},
                   {"released_at", archive::momentText(one.releasedAt)},
                   {"released_by", or_null(one.releasedBy)}});
  }
  return report::dumped({{"schema", "ovenwright.archive/1"}, {"released", all}}) + "\n";
}

std::string released_text(std::span<const archive::ReleasedWindow> released) {
  if (released.empty()) return "No window was released.\n";
  using Column = report::Table::Column;
  report::Table table({Column{"Window"}, Column{"Revision"}, Column{"Released"}, Column{"By"}, Column{"SHA-256"}});
  for (const auto& one : released) {
    table.add({shown(one.window.name), shown(one.window.revision.value_or("")), minute(one.releasedAt),
               shown(one.releasedBy), one.window.sha256});
  }
  return table.text();
}

std::string heads_json(std::span<const archive::Head> heads) {
  Json all = Json::array();
  for (const auto& head : heads) {
    all.push_back({{"chain", head.chain}, {"station", head.station}, {"count", head.count}, {"digest", head.digest}});
  }
  return report::dumped(all);
}

std::string heads_text(std::span<const archive::Head> heads) {
  using Column = report::Table::Column;
  report::Table table(
      {Column{"Chain"}, Column{"Station"}, Column{"Records", report::Table::Align::kRight}, Column{"Head digest"}});
  for (const auto& head : heads) table.add({head.chain, shown(head.station), std::to_string(head.count), head.digest});
  return table.text();
}

}  // namespace ovenwright::command
