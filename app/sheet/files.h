#pragma once
#include <QString>
#include <QStringList>
#include <optional>
#include <span>
#include <string>

#include "app/sheet/compare_sheet.h"
#include "app/sheet/record.h"

namespace ovenwright::sheet {

/// What a sheet is written as.
enum class FileKind { kPdf, kHtml, kCsv, kJson };

/// By the ending of a path, whatever its case; nothing where it is none of these.
std::optional<FileKind> fileKindOf(const QString& path);
/// "pdf"
QString fileEnding(FileKind kind);

/// The bytes of the file: the sheet of a lot, or of one run.
/// @param each  in a PDF, behind the page that sums several runs up, the sheet of each
std::string fileOf(std::span<const RunRecord> runs, const Style& style, FileKind kind, bool each);

/// The same of a comparison.
std::string fileOf(const ComparisonRecord& comparison, const Style& style, FileKind kind);

/// A safe name for the file of each title, in their order, no two the same whatever their case: a name that stands
/// already gets a number.
QStringList fileNames(const QStringList& titles, FileKind kind);

}  // namespace ovenwright::sheet
