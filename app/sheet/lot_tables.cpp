#include "app/sheet/lot_tables.h"

#include <QCoreApplication>
#include <QFileInfo>
#include <algorithm>

#include "app/desktop/text/paragraph.h"
#include "app/desktop/widgets/wording.h"
#include "app/sheet/facts.h"
#include "app/sheet/legible.h"
#include "core/judge/decide.h"
#include "core/judge/decide_run.h"
#include "core/lot/lot.h"

namespace ovenwright::sheet {
namespace {

struct Words {
  Q_DECLARE_TR_FUNCTIONS(Sheet)
};

Cell cell(const QString& text) { return {text, {}, false, {}, {}, false}; }

/// "Peak, U12 centre": the result with the smallest margin, or the first without a value.
QString decidingText(const judge::Judgement& judgement) {
  const auto summary = judge::summarise(judgement);
  if (summary.smallest.empty()) return {};
  const auto& outcome = judgement.all(summary.smallest.front().outcome);
  const QString name = widgets::Wording::title(outcome.requirement_name);
  return outcome.placement.empty() ? name : name + QStringLiteral(", ") + QString::fromStdString(outcome.placement);
}

/// What the run is called in tables and in the statistics' sentence.
QString runName(const RunRecord& record) {
  QString name = QFileInfo(QString::fromStdString(record.reading().file.file)).fileName();
  if (record.checked().run.parts > 1)
    name = Words::tr("%1, run %2").arg(name, QString::number(record.checked().run.part));
  return record.archive ? record.archive->id + QStringLiteral(", ") + name : name;
}

/// Columns without a single text are left out.
Table withoutEmpty(const Table& table) {
  Table shown;
  shown.rows.resize(table.rows.size());
  for (qsizetype column = 0; column < table.columns.size(); ++column) {
    const bool any = std::ranges::any_of(table.rows, [&](const auto& row) { return !row[column].text.isEmpty(); });
    if (column > 0 && !any) continue;
    shown.columns << table.columns[column];
    for (qsizetype row = 0; row < table.rows.size(); ++row) shown.rows[row] << table.rows[row][column];
  }
  return shown;
}

/// "235 – 250", "≤ 2.5"
QString limitsText(const lot::Series& series, const widgets::Wording& wording) {
  if (series.lower && series.upper)
    return wording.limit(*series.lower) + QStringLiteral(" – ") + wording.limit(*series.upper);
  if (series.lower) return QStringLiteral("≥ ") + wording.limit(*series.lower);
  return series.upper ? QStringLiteral("≤ ") + wording.limit(*series.upper) : QString();
}

QString interval(const std::optional<double>& low, const std::optional<double>& high, const widgets::Wording& wording,
                 int digits) {
  if (!low || !high) return {};
  return wording.number(*low, digits) + QStringLiteral(" – ") + wording.number(*high, digits);
}

/// "Peak, U12 centre"; with its parameters where the lot has the requirement with others too.
QString placedName(const lot::Series& series) {
  QString name = widgets::Wording::title(series.requirement);
  if (series.measured_otherwise > 0) {
    judge::Outcome outcome;
    outcome.requirement_name = series.requirement;
    outcome.measure = {series.measure, series.parameters};
    const QString parameters = widgets::Wording().parameterNote(outcome);
    if (!parameters.isEmpty()) name += QStringLiteral(" (") + parameters + u')';
  }
  if (!series.trace.empty()) name += QStringLiteral(", ") + QString::fromStdString(series.trace);
  return name;
}

}  // namespace

Table runsTable(std::span<const RunRecord> runs, const QLocale& locale) {
  const widgets::Wording wording;
  Table table;
  table.columns = {Column{Words::tr("Run"), {}, true, 150},
                   Column{Words::tr("Serial number"), {}, true, 90},
                   Column{Words::tr("Run at"), QStringLiteral("UTC"), true, 100},
                   Column{Words::tr("Verdict"), {}, true, 110},
                   Column{Words::tr("Margin"), {}, false, 60},
                   Column{Words::tr("Smallest margin at"), {}, true, 170},
                   Column{Words::tr("SHA-256"), {}, true, 80}};
  for (const RunRecord& given : runs) {
    const RunRecord record = legible(given);
    const auto& judgement = record.checked().judgement;
    Cell verdict = cell(widgets::Wording::verdict(judgement.verdict));
    verdict.sign = judgement.verdict;
    verdict.bold = judgement.verdict != judge::Verdict::kPass;
    QString margin = judgement.margin ? wording.percent(*judgement.margin) : QStringLiteral("–");
    if (judgement.margin_bound == judge::MarginBound::kAtMost) margin = Words::tr("at most %1").arg(margin);
    if (judgement.margin_bound == judge::MarginBound::kAtLeast) margin = Words::tr("at least %1").arg(margin);
    const QString when = record.labels.runAt.isValid() ? shortMomentText(record.labels.runAt, locale) : QString();
    table.rows << QList<Cell>{cell(runName(record)),
                              cell(record.labels.serial),
                              cell(when),
                              verdict,
                              cell(margin),
                              cell(decidingText(judgement)),
                              cell(shortDigest(QString::fromStdString(record.reading().file.sha256)))};
  }
  return withoutEmpty(table);
}

Table logsTable(std::span<const RunRecord> runs, const QLocale& locale) {
  Table table;
  table.columns = {Column{Words::tr("Log"), {}, true, 230}, Column{QStringLiteral("SHA-256"), {}, true, 480}};
  QStringList seen;
  for (const RunRecord& given : runs) {
    const LogFact log = logFactOf(legible(given), locale);
    if (seen.contains(log.file + log.sha256)) continue;
    seen << log.file + log.sha256;
    table.rows << QList<Cell>{cell(log.file), cell(log.sha256)};
  }
  return table;
}

lot::Lot statisticsOf(std::span<const RunRecord> runs) {
  std::vector<lot::Run> each;
  for (const RunRecord& record : runs) {
    const RunRecord shown = legible(record);
    each.push_back(lot::run_of(runName(shown).toStdString(), shown.checked().judgement));
  }
  auto lot = lot::summarise(each);
  return lot ? *std::move(lot) : lot::Lot{};  // the default options are never refused
}

QString statisticsText(const lot::Lot& lot) {
  const widgets::Wording wording;
  QStringList texts;
  if (lot.weakest) {
    const lot::Series& weakest = lot.series[*lot.weakest];
    const auto& c = weakest.capability;
    texts << Words::tr("Least capable: %1, Ppk %2 (95 % limits %3 to %4) over %5 runs.")
                 .arg(placedName(weakest), wording.number(*c.ppk, 2), wording.number(*c.ppk_low, 2),
                      wording.number(*c.ppk_high, 2), QString::number(weakest.n()));
    if (weakest.n() < lot::kFew) texts << Words::tr("The runs are few: what they show is uncertain.");
  }
  std::size_t found = 0, without = 0;
  QStringList apart;
  for (const lot::Series& series : lot.series) {
    if (series.control) found += series.control->signals_found.size();
    without += series.capability.ppk ? 0 : 1;
    const QString name = widgets::Wording::title(series.requirement);
    if (series.measured_otherwise > 0 && !apart.contains(name)) apart << name;
  }
  if (found > 0) texts << Words::tr("%n signals of the control charts.", nullptr, int(found));
  if (lot.ids.size() < lot::kFewest)
    texts << Words::tr("No index: it takes %1 runs at least.").arg(lot::kFewest);
  else if (without > 0)
    texts << Words::tr("%1 of %2 results have no index, as a value or a limit is missing or all values are equal.")
                 .arg(without)
                 .arg(lot.series.size());
  if (!apart.isEmpty())
    texts << Words::tr("Not measured alike in all runs, with a row for each definition: %1.")
                 .arg(desktop::enumerated(apart));
  return desktop::paragraph(texts);
}

Table statisticsTable(const lot::Lot& lot, const QLocale&) {
  const widgets::Wording wording;
  Table table;
  table.columns = {Column{Words::tr("Requirement"), {}, true, 190},
                   Column{Words::tr("Limits"), {}, false, 80},
                   Column{QStringLiteral("n"), {}, false, 30},
                   Column{Words::tr("Mean"), {}, false, 60},
                   Column{Words::tr("St. dev."), {}, false, 50},
                   Column{Words::tr("Smallest, largest"), {}, false, 90},
                   Column{QStringLiteral("Ppk"), Words::tr("95 % interval"), false, 80},
                   Column{QStringLiteral("Cpk"), {}, false, 40},
                   Column{Words::tr("95 % of runs"), Words::tr("95 % confidence"), false, 90},
                   Column{Words::tr("Signals"), {}, false, 40}};
  for (const lot::Series& series : lot.series) {
    const int digits = judge::usual_digits(series.measure);
    const auto number = [&](const std::optional<double>& value, int decimals) {
      return value ? wording.number(*value, decimals) : QStringLiteral("–");
    };
    const QString name = placedName(series) + QStringLiteral(", ") + QString::fromUtf8(unit_symbol(series.unit));
    const auto& capability = series.capability;
    Cell ppk = cell(number(capability.ppk, 2));
    if (capability.ppk) ppk.minor = interval(capability.ppk_low, capability.ppk_high, wording, 2);
    const auto tolerance = series.tolerance_interval;
    table.rows << QList<Cell>{
        cell(name),
        cell(limitsText(series, wording)),
        cell(QString::number(series.n())),
        cell(number(series.mean, digits + 1)),
        cell(number(series.sd, digits + 1)),
        cell(interval(series.minimum, series.maximum, wording, digits)),
        ppk,
        cell(number(capability.cpk, 2)),
        cell(tolerance ? interval((*tolerance)[0], (*tolerance)[1], wording, digits) : QStringLiteral("–")),
        cell(series.control ? QString::number(series.control->signals_found.size()) : QStringLiteral("–"))};
  }
  return table;
}

}  // namespace ovenwright::sheet
