#pragma once
#include <span>

#include "app/desktop/widgets/sentence_content.h"
#include "app/sheet/record.h"
#include "app/sheet/table.h"

namespace ovenwright::lot {
struct Lot;
struct Series;
}  // namespace ovenwright::lot

namespace ovenwright::sheet {

/// A row for each run: verdict, margin, the result that decides, and what tells the run apart.
Table runsTable(std::span<const RunRecord> runs, const QLocale& locale);
/// Each log with its size and its whole SHA-256.
Table logsTable(std::span<const RunRecord> runs, const QLocale& locale);
/// Mean, standard deviation, Ppk and the rest of each requirement on each placement.
Table statisticsTable(const lot::Lot& lot, const QLocale& locale);
/// The lot's statistics over the runs.
lot::Lot statisticsOf(std::span<const RunRecord> runs);

/// "Lot QM-2298", else how many runs there are.
QString lotTitle(std::span<const RunRecord> runs);
/// How many runs, and from when to when.
QStringList lotAsides(std::span<const RunRecord> runs, const QLocale& locale);
/// "Conditional pass. 8 of 10 runs pass." and the smallest margin.
widgets::SentenceContent lotSentence(const lot::Lot& lot);
/// "Peak, U12 centre: run by run, the least capable of all"
QString lotChartTitle(const lot::Series& series);
/// What the statistics say at once: the least capable result, that the runs are few, signals, what has no index and
/// why, and what was not measured alike in all runs. Empty where there is nothing to say.
QString statisticsText(const lot::Lot& lot);

}  // namespace ovenwright::sheet
