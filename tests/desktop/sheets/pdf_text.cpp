#include "tests/desktop/sheets/pdf_text.h"

#include <gtest/gtest.h>

#include <QProcess>

namespace ovenwright::desktop {
namespace {

QString printed(const QString& program, const QStringList& arguments) {
  QProcess process;
  process.start(program, arguments);
  EXPECT_TRUE(process.waitForFinished()) << program.toStdString();
  EXPECT_EQ(process.exitCode(), 0) << process.readAllStandardError().toStdString();
  return QString::fromUtf8(process.readAllStandardOutput());
}

}  // namespace

QString pdfText(const QString& file) {
  return printed(QStringLiteral("pdftotext"), {QStringLiteral("-layout"), file, QStringLiteral("-")}).simplified();
}

QString pdfInfo(const QString& file, const QString& key) {
  for (const QString& line : printed(QStringLiteral("pdfinfo"), {file}).split(u'\n'))
    if (line.startsWith(key + u':')) return line.mid(key.size() + 1).trimmed();
  return {};
}

}  // namespace ovenwright::desktop
