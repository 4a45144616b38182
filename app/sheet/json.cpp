#include <nlohmann/json.hpp>

#include "app/sheet/compare_sheet.h"
#include "app/sheet/export.h"
#include "app/sheet/facts.h"
#include "core/compare/group.h"
#include "core/report/compare_report.h"
#include "core/report/json.h"
#include "core/report/json_parts.h"

namespace ovenwright::sheet {
namespace {

using nlohmann::ordered_json;

ordered_json textOrNull(const QString& text) {
  return text.isEmpty() ? ordered_json() : ordered_json(text.toStdString());
}

ordered_json momentOrNull(const QDateTime& moment) {
  return moment.isValid() ? ordered_json(moment.toUTC().toString(Qt::ISODate).toStdString()) : ordered_json();
}

ordered_json archivePart(const std::optional<ArchivePlace>& place) {
  if (!place) return {};
  return {{"id", place->id.toStdString()},           {"number", place->number},
          {"station", place->station.toStdString()}, {"chain_head", place->headDigest.toStdString()},
          {"chain_records", place->records},         {"program", place->program.toStdString()}};
}

/// As `ovenwright compare` names it; a run of a group that is in no archive by its log.
report::ComparedSide comparedSide(const std::vector<RunRecord>& runs, const oven::Recipe* recipe, bool groups) {
  if (!groups) return report::compared_log(runs.front().reading(), runs.front().checked(), *runs.front().request);
  report::ComparedSide side;
  for (const RunRecord& run : runs)
    side.ids.push_back(run.archive ? run.archive->id.toStdString() : run.reading().file.file);
  side.recipe = report::recipe_name(recipe ? std::optional(*recipe) : std::nullopt);
  return side;
}

/// What stands on every sheet besides its runs.
ordered_json headPart(const Style& style) {
  ordered_json sheet{{"schema", "ovenwright.sheet/1"},
                     {"program", "ovenwright " + programText().section(u' ', 1).toStdString()},
                     {"company", textOrNull(style.company)},
                     {"made_at", momentOrNull(style.printedAt)}};
  auto& statements = sheet["cautions"] = ordered_json::array();
  for (const QString& caution : cautions()) statements.push_back(caution.toStdString());
  return sheet;
}

ordered_json runPart(const RunRecord& record) {
  ordered_json run{{"lot", textOrNull(record.labels.lot)},
                   {"serial", textOrNull(record.labels.serial)},
                   {"operator", textOrNull(record.labels.operatorName)},
                   {"run_at", momentOrNull(record.labels.runAt)},
                   {"run_at_from", textOrNull(QString(runAtFromName(record.labels)))},
                   {"archive", archivePart(record.archive)}};
  run["check"] = ordered_json::parse(report::check_run_json(record.reading(), record.checked(), *record.request));
  return run;
}

}  // namespace

std::string toJson(std::span<const RunRecord> runs, const Style& style) {
  ordered_json sheet = headPart(style);
  auto& list = sheet["runs"] = ordered_json::array();
  for (const RunRecord& record : runs) list.push_back(runPart(record));
  return report::dumped(sheet);
}

std::string compareJson(const ComparisonRecord& record, const Style& style) {
  ordered_json sheet = headPart(style);
  const auto a = judgedRuns(record.a), b = judgedRuns(record.b);
  const auto recipes = compare::recipes_of(a, b);
  const bool groups = record.isOfGroups();
  sheet["comparison"] = ordered_json::parse(report::compare_json(
      comparisonOf(record), comparedSide(record.a, recipes.a, groups), comparedSide(record.b, recipes.b, groups)));
  auto& list = sheet["runs"] = ordered_json::array();
  for (const auto* side : {&record.a, &record.b})
    for (const RunRecord& run : *side) list.push_back(runPart(run));
  return report::dumped(sheet);
}

}  // namespace ovenwright::sheet
