#pragma once
#include <QString>
#include <vector>

namespace ovenwright::desktop {

/// A language of the desktop. The command and JSON are always English.
struct Language {
  QString code;  ///< "en", "zh_TW": the ending of its files in resources/translations
  QString name;  ///< in itself
};

/// All that the program speaks, English first.
const std::vector<Language>& languages();

/// The best of languages() for what the system wants, English where none fits.
QString systemLanguage();

/// Loads the texts of the program and of Qt for a code of languages(), and makes its number formats those of new
/// QLocales; empty: as the system says. What is on screen already keeps its texts.
void useLanguage(const QString& code);

/// Code of the language that useLanguage() took last.
QString languageInUse();

/// A word of a list or a heading inside a sentence: nouns keep their capital in German.
QString insideSentence(const QString& word);

}  // namespace ovenwright::desktop
