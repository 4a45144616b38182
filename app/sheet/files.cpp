#include "app/sheet/files.h"

#include <QFileInfo>
#include <QSet>

#include "app/sheet/export.h"
#include "app/sheet/sheet.h"

namespace ovenwright::sheet {

QString fileEnding(FileKind kind) {
  switch (kind) {
    case FileKind::kHtml:
      return QStringLiteral("html");
    case FileKind::kCsv:
      return QStringLiteral("csv");
    case FileKind::kJson:
      return QStringLiteral("json");
    case FileKind::kPdf:
      break;
  }
  return QStringLiteral("pdf");
}

std::optional<FileKind> fileKindOf(const QString& path) {
  const QString ending = QFileInfo(path).suffix().toLower();
  for (const auto kind : {FileKind::kPdf, FileKind::kHtml, FileKind::kCsv, FileKind::kJson})
    if (ending == fileEnding(kind)) return kind;
  return std::nullopt;
}

std::string fileOf(std::span<const RunRecord> runs, const Style& style, FileKind kind, bool each) {
  switch (kind) {
    case FileKind::kHtml:
      return toHtml(runs, style);
    case FileKind::kCsv:
      return toCsv(runs);
    case FileKind::kJson:
      return toJson(runs, style) + "\n";
    case FileKind::kPdf:
      break;
  }
  return toPdf(lotSheet(runs, style, each)).toStdString();
}

std::string fileOf(const ComparisonRecord& comparison, const Style& style, FileKind kind) {
  switch (kind) {
    case FileKind::kHtml:
      return compareHtml(comparison, style);
    case FileKind::kCsv:
      return compareCsv(comparison);
    case FileKind::kJson:
      return compareJson(comparison, style) + "\n";
    case FileKind::kPdf:
      break;
  }
  return toPdf(compareSheet(comparison, style)).toStdString();
}

QStringList fileNames(const QStringList& titles, FileKind kind) {
  QSet<QString> taken;
  QStringList names;
  for (const QString& title : titles) {
    const QString stem = safeFileName(title);
    QString name = stem;
    for (int n = 2; taken.contains(name.toLower()); ++n) name = stem + u'-' + QString::number(n);
    taken.insert(name.toLower());
    names << name + u'.' + fileEnding(kind);
  }
  return names;
}

}  // namespace ovenwright::sheet
