#include "app/desktop/text/language.h"

#include <QCoreApplication>
#include <QLibraryInfo>
#include <QLocale>
#include <QTranslator>
#include <algorithm>
#include <memory>
#include <mutex>

namespace ovenwright::desktop {
namespace {

/// Its code. Another one may be chosen while sheets and comparisons are worded on other threads.
class InUse {
 public:
  QString code() const {
    const std::scoped_lock lock(m_mutex);
    return m_code;
  }
  void choose(const QString& code) {
    const std::scoped_lock lock(m_mutex);
    m_code = code;
  }

 private:
  mutable std::mutex m_mutex;
  QString m_code = QStringLiteral("en");
};

InUse& inUse() {
  static InUse language;
  return language;
}

/// The translators that are installed; gone with the application.
std::vector<std::unique_ptr<QTranslator>>& installed() {
  static std::vector<std::unique_ptr<QTranslator>> translators;
  return translators;
}

void install(const QString& file, const QString& folder) {
  auto translator = std::make_unique<QTranslator>();
  if (!translator->load(file, folder)) return;  // English has no file of texts from core
  QCoreApplication::installTranslator(translator.get());
  installed().push_back(std::move(translator));
}

/// The language that a name such as "zh-Hant-TW" or "de_AT" stands for; empty where there is none.
QString languageOf(const QString& name) {
  QString plain = name;
  plain.replace(u'-', u'_');
  const QString first = plain.section(u'_', 0, 0);
  if (first == u"zh") {
    const bool traditional =
        QStringList{QStringLiteral("Hant"), QStringLiteral("TW"), QStringLiteral("HK"), QStringLiteral("MO")}.contains(
            plain.section(u'_', 1, 1));
    return traditional ? QStringLiteral("zh_TW") : QStringLiteral("zh_CN");
  }
  const auto known = std::ranges::find(languages(), first, &Language::code);
  return known == languages().end() ? QString() : known->code;
}

}  // namespace

const std::vector<Language>& languages() {
  static const std::vector<Language> all{{QStringLiteral("en"), QStringLiteral("English")},
                                         {QStringLiteral("de"), QStringLiteral("Deutsch")},
                                         {QStringLiteral("es"), QStringLiteral("Español")},
                                         {QStringLiteral("zh_TW"), QStringLiteral("繁體中文")},
                                         {QStringLiteral("zh_CN"), QStringLiteral("简体中文")}};
  return all;
}

QString systemLanguage() {
  for (const QString& name : QLocale::system().uiLanguages())
    if (const QString code = languageOf(name); !code.isEmpty()) return code;
  return languages().front().code;
}

void useLanguage(const QString& code) {
  const bool known = std::ranges::find(languages(), code, &Language::code) != languages().end();
  const QString chosen = known ? code : systemLanguage();
  inUse().choose(chosen);
  for (const auto& translator : installed()) QCoreApplication::removeTranslator(translator.get());
  installed().clear();
  // The last one installed is asked first.
  install(QStringLiteral("qtbase_") + chosen, QLibraryInfo::path(QLibraryInfo::TranslationsPath));
  install(QStringLiteral("core_") + chosen, QStringLiteral(":/i18n"));
  install(QStringLiteral("ovenwright_") + chosen, QStringLiteral(":/i18n"));
  // A country's number format is kept where the language is the system's.
  const QLocale system = QLocale::system(), own(chosen);
  QLocale::setDefault(system.language() == own.language() ? system : own);
}

QString languageInUse() { return inUse().code(); }

QString insideSentence(const QString& word) { return languageInUse() == u"de" ? word : word.toLower(); }

}  // namespace ovenwright::desktop
