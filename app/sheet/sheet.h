#pragma once
#include <QByteArray>
#include <span>

#include "app/sheet/page.h"
#include "app/sheet/record.h"

class QPrinter;

namespace ovenwright::sheet {

/// The sheet of one run: one page up to 12 thermocouples where all fits; what does not goes on to further pages, and
/// both say so. Keeps what it paints: the record may go.
Document runSheet(const RunRecord& record, const Style& style);

/// The document as a PDF file: text is text, fonts are embedded, curves are vectors.
QByteArray toPdf(const Document& document);

}  // namespace ovenwright::sheet
