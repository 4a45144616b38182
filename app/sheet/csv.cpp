#include <fmt/format.h>

#include <QFileInfo>

#include "app/sheet/compare_sheet.h"
#include "app/sheet/export.h"
#include "app/sheet/facts.h"
#include "core/report/spreadsheet.h"

namespace ovenwright::sheet {
namespace {

std::string text(const std::string& value) { return report::csv_cell(value); }
std::string text(const QString& value) { return text(value.toStdString()); }

std::string number(const std::optional<double>& value) { return value ? fmt::format("{}", *value) : std::string(); }

std::string date(const QDateTime& moment) {
  return moment.isValid() ? moment.toUTC().toString(Qt::ISODate).toStdString() : std::string();
}

/// A line of cells.
template <std::size_t n>
void addLine(std::string& csv, const std::string (&cells)[n]) {
  bool first = true;
  for (const std::string& cell : cells) {
    if (!first) csv += ',';
    first = false;
    csv += cell;
  }
  csv += "\r\n";
}

}  // namespace

std::string toCsv(std::span<const RunRecord> runs) {
  std::string csv =
      "lot,serial,operator,run_at,record,chain_head,log,log_part,log_sha256,window,window_revision,window_sha256,"
      "decision_rule,oven,recipe,recipe_revision,recipe_sha256,board,run_verdict,run_margin,requirement,trace,"
      "placement,"
      "value,bound,unit,expanded_uncertainty,lower,upper,target,margin,verdict,required,from_s,to_s,source,program,run_"
      "at_from\r\n";
  for (const RunRecord& record : runs) {
    const auto& request = *record.request;
    const auto& judgement = record.checked().judgement;
    const auto& file = record.reading().file;
    for (std::size_t i = 0; i < judgement.all_size(); ++i) {
      const auto& outcome = judgement.all(i);
      const auto& window = judgement.windows[outcome.window];
      const auto revision = [](const auto& profile) {
        return profile && profile->identity.revision ? text(*profile->identity.revision) : std::string();
      };
      const auto name = [](const auto& profile) { return profile ? text(profile->identity.name) : std::string(); };
      const std::string cells[] = {text(record.labels.lot),
                                   text(record.labels.serial),
                                   text(record.labels.operatorName),
                                   date(record.labels.runAt),
                                   record.archive ? text(record.archive->id) : std::string(),
                                   record.archive ? text(record.archive->headDigest) : std::string(),
                                   text(QFileInfo(QString::fromStdString(file.file)).fileName()),
                                   std::to_string(record.checked().run.part),
                                   file.sha256,
                                   text(window.identity.name),
                                   window.identity.revision ? text(*window.identity.revision) : std::string(),
                                   window.identity.sha256,
                                   window.decision_rule == window::DecisionRule::kGuarded ? "guarded" : "simple",
                                   name(request.oven),
                                   name(request.recipe),
                                   revision(request.recipe),
                                   request.recipe ? request.recipe->identity.sha256 : std::string(),
                                   name(request.board),
                                   judge::verdict_name(judgement.verdict),
                                   number(judgement.margin),
                                   text(outcome.requirement_name),
                                   text(outcome.trace),
                                   text(outcome.placement),
                                   number(outcome.value.value),
                                   outcome.value.at_least ? "at least" : "",
                                   unit_name(outcome.value.unit),
                                   number(outcome.value.expanded_uncertainty),
                                   number(outcome.lower),
                                   number(outcome.upper),
                                   number(outcome.target),
                                   number(outcome.margin),
                                   judge::verdict_name(outcome.verdict),
                                   outcome.required ? "true" : "false",
                                   number(outcome.value.from_s),
                                   number(outcome.value.to_s),
                                   text(outcome.source),
                                   text(programText()),
                                   runAtFromName(record.labels)};
      addLine(csv, cells);
    }
  }
  return csv;
}

std::string compareCsv(const ComparisonRecord& record) {
  const auto comparison = comparisonOf(record);
  // Of a group what its runs say, each thing once, joined.
  const auto joined = [](const std::vector<RunRecord>& runs, const auto& of) {
    QStringList all;
    for (const RunRecord& run : runs)
      if (const QString one = of(run); !one.isEmpty() && !all.contains(one)) all << one;
    return text(all.join(QStringLiteral("; ")));
  };
  const auto file = [](const RunRecord& run) {
    return QFileInfo(QString::fromStdString(run.reading().file.file)).fileName();
  };
  const auto digest = [](const RunRecord& run) { return QString::fromStdString(run.reading().file.sha256); };
  const auto recipe = [](const RunRecord& run) {
    return run.request->recipe ? QString::fromStdString(run.request->recipe->identity.name) : QString();
  };
  const auto revision = [](const RunRecord& run) {
    const bool known = run.request->recipe && run.request->recipe->identity.revision;
    return known ? QString::fromStdString(*run.request->recipe->identity.revision) : QString();
  };
  const auto verdict = [](const std::optional<judge::Verdict>& of) {
    return of ? std::string(judge::verdict_name(*of)) : std::string();
  };
  std::string csv =
      "a_log,a_log_sha256,a_recipe,a_recipe_revision,b_log,b_log_sha256,b_recipe,b_recipe_revision,window,requirement,"
      "trace,a,a_bound,b,b_bound,difference,unit,expanded_uncertainty,significant,same_thermocouples,lower,upper,"
      "a_verdict,b_verdict,required,reason,program,n_a,n_b\r\n";
  for (const auto& result : comparison.results) {
    const std::string cells[] = {joined(record.a, file),
                                 joined(record.a, digest),
                                 joined(record.a, recipe),
                                 joined(record.a, revision),
                                 joined(record.b, file),
                                 joined(record.b, digest),
                                 joined(record.b, recipe),
                                 joined(record.b, revision),
                                 text(result.window),
                                 text(result.requirement),
                                 text(result.trace),
                                 number(result.a),
                                 result.a_at_least ? "at least" : "",
                                 number(result.b),
                                 result.b_at_least ? "at least" : "",
                                 number(result.difference),
                                 unit_name(result.unit),
                                 number(result.expanded_uncertainty),
                                 !result.significant   ? ""
                                 : *result.significant ? "true"
                                                       : "false",
                                 comparison.same_thermocouples ? "true" : "false",
                                 number(result.lower),
                                 number(result.upper),
                                 verdict(result.verdict_a),
                                 verdict(result.verdict_b),
                                 result.required ? "true" : "false",
                                 text(result.reason),
                                 text(programText()),
                                 std::to_string(result.n_a),
                                 std::to_string(result.n_b)};
    addLine(csv, cells);
  }
  return csv;
}

}  // namespace ovenwright::sheet
