#pragma once
#include <QLocale>
#include <QString>
#include <string>

namespace ovenwright::desktop {

/// What the reader or the cleaner said in English, in the language that is shown: the pattern is found in core and
/// translated, numbers among its arguments get the locale's decimal sign. A text that is none of them stays as it is.
QString inWords(const std::string& english, const QLocale& locale);

}  // namespace ovenwright::desktop
