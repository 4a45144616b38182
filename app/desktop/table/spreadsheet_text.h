#pragma once
#include <QString>

namespace ovenwright::desktop {

/// A cell as the clipboard's tab separated tables have it: one line, minus and space as a spreadsheet reads them, and
/// never the start of a formula: text that could be one is made text.
QString spreadsheetCell(QString text);

}  // namespace ovenwright::desktop
