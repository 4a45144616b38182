#include "app/desktop/text/spreadsheet_text.h"

#include "core/report/spreadsheet.h"

namespace ovenwright::desktop {

QString spreadsheetCell(QString text) {
  text.replace(u'\t', u' ').replace(u'\n', u' ');
  text.replace(QChar(0x2212), u'-').replace(QChar(0x2009), u' ').replace(QChar(0x202F), u' ');
  const std::string plain = text.toStdString();
  if (!report::reads_as_number(plain)) text = QString::fromStdString(report::no_formula(plain));
  return text;
}

QString spreadsheetRow(QStringList cells) {
  for (QString& cell : cells) cell = spreadsheetCell(cell);
  return cells.join(u'\t');
}

}  // namespace ovenwright::desktop
