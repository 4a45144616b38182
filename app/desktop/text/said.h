#pragma once
#include <QLocale>
#include <QString>
#include <string>

#include "app/desktop/text/format.h"

namespace ovenwright::desktop {

/// What core said in English (of a log, a result, a file) in the language that is shown: the pattern is found in core
/// and translated, and so is what stands in its places where core knows it: other phrases, names of requirements,
/// lists. Numbers get the locale's decimal sign and temperatures the unit that was chosen. A text that is none of
/// these stays as it is.
QString inWords(const std::string& english, const Format& format);
QString inWords(const std::string& english, const QLocale& locale);

}  // namespace ovenwright::desktop
