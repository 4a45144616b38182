#pragma once
#include <QList>
#include <QString>
#include <span>

#include "app/sheet/record.h"

namespace ovenwright::sheet {

/// One thing that a sheet says about a run: "Window", "SAC305, general, revision 1 (81c0…9e2d)".
struct Fact {
  QString label, value;
};

/// Window, decision rule, uncertainty, oven, recipe, board, serial, operator, entry, record: each by revision and
/// digest where it has them, what is not known left out.
QList<Fact> factsOf(const RunRecord& record, const QLocale& locale);

/// The file's name with its size, and its SHA-256 in groups that can be compared by eye.
struct LogFact {
  QString file, sha256;
};
LogFact logFactOf(const RunRecord& record, const QLocale& locale);

/// "Lot QM-2298", else the log's name; "Thermal profile, Tern, main side"; "Run 1 of 2, 11 March 2026".
QString titleOf(const RunRecord& record);
QString subjectOf(const RunRecord& record);
QStringList asidesOf(const RunRecord& record, const QLocale& locale);

/// The paragraphs in small print: what U and the decision rule mean, limits that differ by part, where limits come
/// from, how the log was read, what was assumed, faults and warnings.
QList<Fact> notesOf(const RunRecord& record, const QLocale& locale);

/// The facts that all runs share once, those in which they differ with every value there is, up to three.
QList<Fact> sharedFacts(std::span<const RunRecord> runs, const QLocale& locale);

/// All cautions, each a paragraph; they stand on every sheet in every form.
QStringList cautions();
QString cautionsTitle();

/// "11 March 2026" as the language writes it; the day is of the moment's own zone.
QString dateText(const QDateTime& moment, const QLocale& locale);
/// "11 March 2026, 13:22 UTC"
QString momentText(const QDateTime& moment, const QLocale& locale);
/// "11 Mar 2026 13:22", in UTC, for tables.
QString shortMomentText(const QDateTime& moment, const QLocale& locale);

/// "81c0…9e2d"
QString shortDigest(const QString& digest);
/// Of one decision rule: "Guarded, w = U (ILAC-G8:09/2019)".
QString decisionRuleText(window::DecisionRule rule);
/// "Ovenwright 0.1.0"
QString programText();

}  // namespace ovenwright::sheet
