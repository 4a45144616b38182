#pragma once
#include <QString>
#include <QStringList>

namespace ovenwright::desktop {

/// A cell as the clipboard's tab separated tables have it: one line, minus and space as a spreadsheet reads them, and
/// never the start of a formula: text that could be one is made text.
QString spreadsheetCell(QString text);
/// The cells as one row of such a table, without its end of line.
QString spreadsheetRow(QStringList cells);

}  // namespace ovenwright::desktop
