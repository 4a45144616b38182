#pragma once
#include <span>
#include <string>

#include "app/sheet/record.h"

namespace ovenwright::sheet {

/// One row for each result of each run, with everything that identifies it; names in full. UTF-8, RFC 4180, C locale.
/// A text that a spreadsheet would take for a formula gets an apostrophe before it.
std::string toCsv(std::span<const RunRecord> runs);

/// ovenwright.sheet/1: what stands on the sheet besides the runs, and each run as `check` reports it.
std::string toJson(std::span<const RunRecord> runs, const Style& style);

/// One page that fetches nothing: pictures are drawn inside it, names from logs are text and never markup.
std::string toHtml(std::span<const RunRecord> runs, const Style& style);

/// A name for a file made from any text: letters, digits, dash, dot and underscore of it, 1 to 80 characters, no name
/// that any system keeps for itself.
QString safeFileName(const QString& text);

}  // namespace ovenwright::sheet
