#pragma once
#include <QByteArray>
#include <span>

#include "app/sheet/page.h"
#include "app/sheet/record.h"

namespace ovenwright::sheet {

/// The sheet of one run: one page up to 12 thermocouples where all fits; what does not goes on to further pages, and
/// both say so. Keeps what it paints: the record may go.
Document runSheet(const RunRecord& record, const Style& style);

/// The sheet of a lot, or of any runs that belong together: the first page sums them up with statistics and a control
/// chart, the tables go on as far as they need; behind them, where `each` says so, the sheet of each run. One run has
/// the sheet of a run; two runs that are alike have curves, lanes and results on one page where `each` is not asked
/// for.
/// @param runs  1 or more, in order of time
Document lotSheet(std::span<const RunRecord> runs, const Style& style, bool each);

/// The document as a PDF file: text is text, fonts are embedded, curves are vectors.
QByteArray toPdf(const Document& document);

}  // namespace ovenwright::sheet
